// SPDX-License-Identifier: MIT
// A regulation: what is read, and every kind of mistake in what it says.
#include <gtest/gtest.h>

#include "support.h"
#include "vocabulary/schema.h"

namespace platewright {
namespace {

std::optional<SpecifiedRegulation> regulation_of(const std::string& text) {
    Reading reading(text);
    return read_regulation(reading.sources, reading.file, reading.problems);
}

Lines problems_of(const std::string& text) {
    Reading reading(text);
    static_cast<void>(read_regulation(reading.sources, reading.file, reading.problems));
    return reading.found();
}

std::string dump_of(const std::string& text) {
    Reading reading(text);
    const auto regulation = read_regulation(reading.sources, reading.file, reading.problems);
    return regulation ? dump(*regulation, reading.sources) : "";
}

TEST(ReadRegulation, ReadsTheShortest) {
    EXPECT_EQ(dump_of("regulation: R\n"), "regulation = R   @1:13\n");
}

TEST(ReadRegulation, AsksForATitle) {
    EXPECT_EQ(problems_of("everyone: {coat: red}\n"), Lines{"read.missing-key 1:1"});
    EXPECT_EQ(problems_of("regulation:\n"), Lines{"read.missing-value 1:1"});
}

TEST(ReadRegulation, KeepsGroundsWhereTheyAreWritten) {
    const auto it = regulation_of(
        "regulation: R\nsource: file\neveryone: {coat: {cloth: red, source: group}, source: "
        "block, certainty: conjectural}\n");
    ASSERT_TRUE(it);
    EXPECT_EQ(it->grounds.source->text, "file");
    EXPECT_EQ(it->everyone.grounds.source->text, "block");
    EXPECT_EQ(it->everyone.grounds.certainty, Certainty::conjectural);
    EXPECT_EQ(it->everyone.group_grounds.at("coat").source->text, "group");
    EXPECT_FALSE(it->everyone.group_grounds.at("coat").certainty);
}

TEST(ReadRegulation, GivesARulesGroundsToWhatIsWorn) {
    const auto it = regulation_of(
        "regulation: R\nrules: [{wear: {stock: red, why: near}, why: far, source: s}]\n");
    ASSERT_TRUE(it);
    EXPECT_EQ(it->rules.front().wear.grounds.why->text, "near");
    EXPECT_EQ(it->rules.front().wear.grounds.source->text, "s");
}

TEST(ReadRegulation, ReadsWhatARuleAsks) {
    const auto it = regulation_of(
        "regulation: R\nrules:\n  - when: {pockets: [long, cross], cuffs: {buttons: 3}, "
        "hat.cockade: none, rank: [private, corporal], years of service: more than 6}\n"
        "    wear: {stock: red}\n");
    ASSERT_TRUE(it);
    const std::vector<Asked>& when = it->rules.front().when;
    ASSERT_EQ(when.size(), 5U);
    EXPECT_EQ(when[0].words[0].text, "vertical");
    EXPECT_EQ(when[0].words[1].text, "horizontal");
    EXPECT_EQ(when[1].property, property_id("cuffs.buttons"));
    EXPECT_EQ(when[1].words[0].text, "3");
    EXPECT_EQ(when[2].words[0].text, "none");
    EXPECT_EQ(when[3].fact, Asked::Fact::rank);
    EXPECT_EQ(when[3].words.size(), 2U);
    EXPECT_TRUE(when[4].more_than);
}

TEST(ReadRegulation, RefusesQuestionsThatNobodyCanAnswer) {
    EXPECT_EQ(problems_of("regulation: R\nrules:\n  - when: {pockets.direction: upwards, rnk: a, "
                          "lapels.cloth: 7, years of service: 8}\n    wear: {stock: red}\n"),
              (Lines{"read.unknown-choice 3:31",
                     "read.unknown-key 3:40",
                     "read.wrong-kind 3:62",
                     "read.wrong-kind 3:83"}));
}

TEST(ReadRegulation, KnowsThePhrasesForColours) {
    const auto it = regulation_of(
        "regulation: R\nranks: {drummer: {coat: the regiment's facing colour, facings: the coat "
        "colour}}\n");
    ASSERT_TRUE(it);
    const WrittenValues& values = it->ranks.front().block.wear.values;
    EXPECT_EQ(std::get<std::string>(values.at(property_id("coat.cloth")).value),
              "as the regiment's facings.cloth");
    EXPECT_EQ(std::get<std::string>(values.at(property_id("facings.cloth")).value),
              "as coat.cloth");
    EXPECT_EQ(problems_of("regulation: R\neveryone: {coat: the facing hue}\n"),
              Lines{"read.unknown-phrase 2:18"});
}

TEST(ReadRegulation, TellsEveryMistakeOfTheFile) {
    EXPECT_EQ(problems_of("regulation: R\nin force from: 1784-02-30\ncertainty: sure\n"
                          "must decide: [coat.cloth, coat.clot]\ncoat: red\nclases: {}\n"
                          "companies: {a: {men: 0}}\nranks: {b: {officer: maybe}}\n"),
              (Lines{"read.bad-date 2:16",
                     "read.unknown-choice 3:12",
                     "read.unknown-property 4:27",
                     "read.unknown-key 5:1",
                     "read.unknown-key 6:1",
                     "read.out-of-range 7:22",
                     "read.wrong-kind 8:22"}));
}

TEST(ReadRegulation, FindsNamesThatAreGivenTwice) {
    EXPECT_EQ(problems_of("regulation: R\nclasses:\n  line: {}\n  Line: {}\nrules:\n"
                          "  - {name: a, wear: {stock: red}}\n  - {name: A, wear: {stock: red}}\n"
                          "battalions:\n  - {name: b, companies: {c: 1}}\n"
                          "  - {name: b, companies: {c: 1, C: 2}}\n"),
              (Lines{"read.duplicate-name 4:3",
                     "read.duplicate-name 7:12",
                     "read.duplicate-name 10:12",
                     "read.duplicate-name 10:33"}));
}

TEST(ReadRegulation, AsksForWhatARecordCannotBeWithout) {
    EXPECT_EQ(problems_of("regulation: R\nseries: [{regiments: [{name: a}]}]\nrules: [{name: a}]\n"
                          "battalions: [{}]\nservice:\n  - {service: {number: 1}}\n"
                          "  - {at least: 8, more than: 9, service: {number: 1}}\n"),
              (Lines{"read.missing-key 2:10",
                     "read.missing-key 2:23",
                     "read.missing-key 3:9",
                     "read.missing-key 4:14",
                     "read.missing-key 4:14",
                     "read.missing-key 6:5",
                     "read.missing-key 7:5"}));
}

TEST(ReadRegulation, RefusesFormsThatDoNotFit) {
    EXPECT_EQ(problems_of("regulation: [R]\neveryone: red\nclasses: [line]\nseries: crimson\n"
                          "rules:\n  -\n  - word\nranks:\nservice: [[]]\n"),
              (Lines{"read.wrong-kind 1:13",
                     "read.wrong-kind 2:11",
                     "read.wrong-kind 3:10",
                     "read.wrong-kind 4:9",
                     "read.missing-value 6:4",
                     "read.wrong-kind 7:5",
                     "read.missing-value 8:1",
                     "read.wrong-kind 9:11"}));
}

/// The files of the reference page's example.
Lines files_of_guide() {
    constexpr std::string_view fence = "```";
    const std::string page = reference_page();
    Lines files;
    std::size_t at = page.find("```yaml\n");
    while (at != std::string::npos) {
        const std::size_t begin = page.find('\n', at) + 1;
        const std::size_t end = page.find(fence, begin);
        files.push_back(page.substr(begin, end - begin));
        at = page.find("```yaml\n", end + fence.size());
    }
    return files;
}

TEST(ReadRegulation, UnderstandsTheExampleOfTheReferencePage) {
    std::vector<FileKind> kinds;
    for (const std::string& text : files_of_guide()) {
        kinds.push_back(kind_of_file(text));
        const Lines problems = kinds.back() == FileKind::regulation ? problems_of(text)
                               : kinds.back() == FileKind::regiment ? problems_of_regiment(text)
                                                                    : problems_of_plate(text);
        EXPECT_EQ(problems, Lines{}) << text;
    }
    EXPECT_EQ(
        kinds,
        (std::vector{
            FileKind::regulation, FileKind::regulation, FileKind::regiment, FileKind::plate}));
}

TEST(ReadRegulation, IsBounded) {
    std::string rules = "regulation: R\nrules:\n";
    std::string ranks = "regulation: R\nranks:\n";
    std::string series = "regulation: R\nseries:\n";
    for (int i = 0; i < 401; ++i) {
        const std::string number = std::to_string(i + 1);
        rules += "- {wear: {stock: red}}\n";
        ranks += "  r" + number + ": {}\n";
        series += "- {colour: red, regiments: [{number: " + number + "}]}\n";
    }
    EXPECT_EQ(problems_of(rules), Lines{"read.too-many 403:3"});
    EXPECT_EQ(problems_of(ranks), Lines{"read.too-many 403:3"});
    EXPECT_EQ(problems_of(series), Lines{"read.too-many 403:3"});
}

TEST(ReadRegulation, NamesCannotMeanSomethingElse) {
    EXPECT_EQ(problems_of("regulation: R\nranks: {none: {}, as before: {}, the colonel: {}}\n"),
              (Lines{"read.bad-name 2:9", "read.bad-name 2:19", "read.bad-name 2:34"}));
}

}  // namespace
}  // namespace platewright
