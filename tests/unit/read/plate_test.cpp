// SPDX-License-Identifier: MIT
// A plate: what is read, and every kind of mistake in what it says.
#include <gtest/gtest.h>

#include <set>

#include "support.h"

namespace platewright {
namespace {

TEST(ReadPlate, ReadsTheShortestDescription) {
    EXPECT_EQ(dump_of_plate("plate: Private\n"), "plate = Private   @1:8\n");
}

TEST(ReadPlate, ReadsBothFormsOfAGroup) {
    EXPECT_EQ(
        dump_of_plate(
            "plate: x\ncoat: dark green\nlapels: {cloth: buff, piping: white}\npockets: vertical\n"
            "collar: standing\nbelts: none\n"),
        "plate = x   @1:8\n"
        "coat.cloth = dark green   @2:7\n"
        "lapels.cloth = buff   @3:17\n"
        "lapels.piping = white   @3:31\n"
        "collar.shape = standing   @5:9\n"
        "pockets.direction = vertical   @4:10\n"
        "belts.worn = none   @6:8\n");
}

TEST(ReadPlate, ReadsItsOwnKeys) {
    EXPECT_EQ(
        dump_of_plate(
            "plate: x\nsubtitle: s\nyear: 1784\ndrawn by: me\nsource: book, p. 3\nrank: corporal\n"
            "notes:\n  - one\n  - \"two: three\"\nfigure: line-infantry\n"),
        "plate = x   @1:8\n"
        "subtitle = s   @2:11\n"
        "year = 1784   @3:7\n"
        "drawn by = me   @4:11\n"
        "source = book, p. 3   @5:9\n"
        "notes = one   @8:5\n"
        "notes = two: three   @9:5\n"
        "figure = line-infantry   @10:9\n"
        "rank = corporal   @6:7\n");
    EXPECT_EQ(dump_of_plate("plate: x\nnotes: one text\n"),
              "plate = x   @1:8\nnotes = one text   @2:8\n");
}

TEST(ReadPlate, ReadsAFigureThatIsAGroup) {
    EXPECT_EQ(dump_of_plate("plate: x\nfigure: {template: line-infantry, skin: dark}\n"),
              "plate = x   @1:8\nfigure = line-infantry   @2:20\nfigure.skin = dark   @2:41\n");
    EXPECT_EQ(dump_of_plate("plate: x\nfigure: {template: line-infantry}\n"),
              "plate = x   @1:8\nfigure = line-infantry   @2:20\n");
    EXPECT_EQ(problems_of_plate("plate: x\nfigure: ../line\n"), Lines{"read.bad-name 2:9"});
    EXPECT_EQ(problems_of_plate("plate: x\nfigure: {template: a/b}\n"),
              Lines{"read.bad-name 2:20"});
}

TEST(ReadPlate, StoresTheTablesOwnWordForAChoice) {
    EXPECT_EQ(
        dump_of_plate("plate: x\npockets: Long\ncuffs: {shape: SLIT}\n"),
        "plate = x   @1:8\ncuffs.shape = slashed   @3:16\npockets.direction = vertical   @2:10\n");
}

TEST(ReadPlate, ReadsCountsInDigitsOnly) {
    EXPECT_EQ(dump_of_plate("plate: x\ncuffs: {buttons: 0}\nlapels: {buttons: none}\nwaistcoat: "
                            "{buttons: \"10\"}\n"),
              "plate = x   @1:8\nwaistcoat.buttons = 10   @4:22\nlapels.buttons = none   @3:19\n"
              "cuffs.buttons = 0   @2:18\n");
    for (const char* wrong :
         {"010", "1e1", "3.0", "three", ".nan", "0x2", "1_0", "~", "yes", "''", "+"}) {
        EXPECT_EQ(problems_of_plate(std::string("plate: x\ncuffs: {buttons: ") + wrong + "}\n"),
                  Lines{"read.wrong-kind 2:18"})
            << wrong;
    }
    for (const char* wrong : {"7", "-1", "+3", "99999999999999999999"}) {
        EXPECT_EQ(problems_of_plate(std::string("plate: x\ncuffs: {buttons: ") + wrong + "}\n"),
                  Lines{"read.out-of-range 2:18"})
            << wrong;
    }
}

TEST(ReadPlate, ReadsLengthsWithTheirUnit) {
    EXPECT_EQ(dump_of_plate("plate: x\nmarks: {width: 1/2 in}\n"),
              "plate = x   @1:8\nmarks.width = 1/2 in (12.7 mm)   @2:16\n");
    EXPECT_EQ(problems_of_plate("plate: x\nmarks: {width: 12}\n"), Lines{"read.wrong-kind 2:16"});
    EXPECT_EQ(problems_of_plate("plate: x\nmarks: {width: 12 m}\n").size(), 1U);
    EXPECT_EQ(problems_of_plate("plate: x\nmarks: {width: 3 in}\n"),
              Lines{"read.out-of-range 2:16"});
}

TEST(ReadPlate, TakesNoNumberOrYesForAColour) {
    for (const char* wrong :
         {"12", "1e3", ".nan", "0x1F", "yes", "No", "off", "true", "~", "null", "\"#12345\""}) {
        EXPECT_EQ(problems_of_plate(std::string("plate: x\ncoat: ") + wrong + "\n"),
                  Lines{"read.wrong-kind 2:7"})
            << wrong;
    }
    EXPECT_EQ(problems_of_plate("plate: x\ncoat: \"#AA3344\"\nlapels: none\n"), Lines{});
}

TEST(ReadPlate, TakesANumberForAText) {
    EXPECT_EQ(dump_of_plate("plate: x\nyear: 010\nbuttons: {number: 04}\n"),
              "plate = x   @1:8\nyear = 010   @2:7\nbuttons.number = 04   @3:19\n");
}

TEST(ReadPlate, ExplainsAnUnquotedColour) {
    Reading reading("plate: x\ncoat: #aa3344\n");
    EXPECT_FALSE(read_plate(reading.sources, reading.file, reading.problems));
    ASSERT_EQ(reading.problems.all().size(), 1U);
    const Diagnostic& problem = reading.problems.all().front();
    EXPECT_EQ(reading.words(*problem.span), "#aa3344");
    EXPECT_EQ(problem.hints, std::vector<std::string>{"put it in quotes: coat: \"#aa3344\""});
}

TEST(ReadPlate, ReportsEveryProblemAtOnce) {
    EXPECT_EQ(problems_of_plate("plate: x\ncoot: red\ncuffs: {buttons: many, shape: "
                                "odd}\nlapels:\nnotes: [a, {b: c}]\n"),
              (Lines{"read.unknown-key 2:1",
                     "read.wrong-kind 3:18",
                     "read.unknown-choice 3:31",
                     "read.missing-value 4:1",
                     "read.wrong-kind 5:12"}));
}

TEST(ReadPlate, WantsATitle) {
    EXPECT_EQ(problems_of_plate("coat: red\n"), Lines{"read.missing-key 1:1"});
    // What cannot be read may have been the title.
    EXPECT_EQ(problems_of_plate("plate: a: b\ncoat: red\n"), Lines{"read.yaml 1:9"});
}

TEST(ReadPlate, BoundsTexts) {
    EXPECT_EQ(problems_of_plate("plate: " + std::string(200, 'x') + "\n"), Lines{});
    EXPECT_EQ(problems_of_plate("plate: " + std::string(201, 'x') + "\n"),
              Lines{"read.out-of-range 1:8"});
    EXPECT_EQ(problems_of_plate("plate: \"a\\x07b\"\n"), Lines{"read.control-character 1:8"});
    EXPECT_EQ(problems_of_plate("plate: a\tb\n"), Lines{"read.tab 1:9"});
}

TEST(ReadPlate, HasAHintForEveryProblem) {
    for (const char* text : {"plate: a: b\n",
                             "plate: x\ncoat: [a]\n",
                             "plate: x\ncoat: {q: r}\n",
                             "plate: x\ncoat\n",
                             "plate: x\ncoat:red\n",
                             "plate: x\n\tcoat: red\n",
                             "plate: x\ncoat: &a b\n",
                             "plate: x\nplate: y\n",
                             "plate: x\n---\n",
                             "coat: red\n",
                             "",
                             "plate: x\nmarks: {width: 3}\n"}) {
        Reading reading(text);
        EXPECT_FALSE(read_plate(reading.sources, reading.file, reading.problems)) << text;
        ASSERT_FALSE(reading.problems.all().empty()) << text;
        for (const Diagnostic& problem : reading.problems.all()) {
            EXPECT_FALSE(problem.hints.empty()) << text;
        }
    }
}

/// The first word of the row's kind that may be written.
std::string sample_of(PropertyId id) {
    const Property& row = properties()[id];
    switch (row.kind) {
        case Kind::choice:
            return std::string(choices_of(id).front().word);
        case Kind::count:
            return std::to_string(row.most);
        case Kind::measure:
            return std::to_string(row.most) + " mm";
        case Kind::ornament:
            return "star";
        case Kind::words:
            return "X";
        case Kind::cloth:
        case Kind::metal:
            break;
    }
    return "red";
}

TEST(ReadPlate, ReadsEveryPropertyOfTheTable) {
    for (PropertyId id = 0; id < properties().size(); ++id) {
        const Property& row = properties()[id];
        Reading reading("plate: x\n" + std::string(row.group()) + ": {" + std::string(row.name()) +
                        ": " + sample_of(id) + "}\n");
        const auto plate = read_plate(reading.sources, reading.file, reading.problems);
        ASSERT_TRUE(plate) << row.key;
        EXPECT_EQ(plate->values.size(), 1U) << row.key;
        EXPECT_TRUE(plate->values.contains(id)) << row.key;
    }
}

TEST(ReadPlate, GivesNothingExactlyWhenItAddedAnError) {
    Reading reading("plate: Company #3\n");
    EXPECT_TRUE(read_plate(reading.sources, reading.file, reading.problems));
    EXPECT_EQ(reading.found(), Lines{"read.remark-in-value 1:16"});
}

}  // namespace
}  // namespace platewright
