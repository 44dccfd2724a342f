// SPDX-License-Identifier: MIT
// Who decides what, and what is said when it cannot be decided.
#include "resolve/resolve.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <sstream>

#include "support.h"

namespace platewright {
namespace {

/// The chain of a property as `reason: as written`, weakest first.
std::vector<std::string> chain(const Outcome& outcome, std::string_view key) {
    std::vector<std::string> lines;
    for (const Decision& decision : outcome.uniform->decided[property_id(key)].chain) {
        lines.push_back(decision.reason + ": " + decision.as_written);
    }
    return lines;
}

TEST(Resolve, DecidesEveryPropertyOfAnEmptyPlate) {
    const Outcome outcome = resolved("plate: Private\n");
    ASSERT_TRUE(outcome.uniform) << outcome.problem();
    ASSERT_EQ(outcome.uniform->decided.size(), properties().size());
    for (PropertyId id = 0; id < properties().size(); ++id) {
        EXPECT_FALSE(outcome.uniform->decided[id].chain.empty()) << properties()[id].key;
        EXPECT_NE(outcome.uniform->word(id), "") << properties()[id].key;
    }
    EXPECT_EQ(outcome.uniform->title, "Private");
    EXPECT_EQ(outcome.uniform->figure, "line-infantry");
    EXPECT_EQ(outcome.uniform->rank, "");
}

TEST(Resolve, GivesValuesOfTheirKind) {
    const Outcome outcome = resolved("plate: A\nmarks: {width: 1/2 in}\nbuttons: {number: 4}\n");
    ASSERT_TRUE(outcome.uniform) << outcome.problem();
    const Uniform& man = *outcome.uniform;
    EXPECT_EQ(man.count(property_id("cuffs.buttons")), 3);
    EXPECT_EQ(man.word(property_id("collar.shape")), "falling");
    EXPECT_EQ(man.word(property_id("buttons.number")), "4");
    EXPECT_EQ(std::get<Measure>(man.value(property_id("marks.width"))).mm, 12.7);
    EXPECT_EQ(man.material(property_id("hat.tuft")), nullptr);
    EXPECT_TRUE(man.material(property_id("buttons.metal"))->metal);
}

TEST(Resolve, TakesTheCaptionsOver) {
    const Outcome outcome = resolved(
        "plate: A\nsubtitle: B\nyear: 1784\ndrawn by: C\nsource: D\nnotes: [E, F]\nrank: "
        "CORPORAL\nfigure: other\n");
    ASSERT_TRUE(outcome.uniform) << outcome.problem();
    EXPECT_EQ(outcome.uniform->subtitle, "B");
    EXPECT_EQ(outcome.uniform->year, "1784");
    EXPECT_EQ(outcome.uniform->drawn_by, "C");
    EXPECT_EQ(outcome.uniform->source, "D");
    EXPECT_EQ(outcome.uniform->notes, (std::vector<std::string>{"E", "F"}));
    EXPECT_EQ(outcome.uniform->rank, "corporal");
    EXPECT_EQ(outcome.uniform->figure, "other");
}

TEST(Resolve, FollowsTheFacingsWhereNothingElseIsSaid) {
    EXPECT_EQ(resolved("plate: A\nlapels: buff\n").word("cuffs.cloth"), "buff");
    EXPECT_EQ(resolved("plate: A\nfacings: buff\n").word("collar.cloth"), "buff");
    const Outcome plain = resolved("plate: A\nlapels: none\nfacings: buff\n");
    EXPECT_EQ(plain.word("lapels.cloth"), "none");
    EXPECT_EQ(plain.word("cuffs.cloth"), "buff");
    EXPECT_EQ(resolved("plate: A\ncoat: {lining: buff}\n").word("turnbacks.cloth"), "buff");
    EXPECT_EQ(resolved("plate: A\nbuttons: white\n").word("belts.plate"), "white");
}

TEST(Resolve, KeepsTheChainOfDecisions) {
    const Outcome outcome =
        resolved("plate: A\nrank: corporal\nmarks: {number: 2}\nlapels: buff\n");
    ASSERT_TRUE(outcome.uniform) << outcome.problem();
    EXPECT_EQ(chain(outcome, "marks.number"),
              (std::vector<std::string>{
                  "built-in default: 1", "custom of the rank corporal: 1", "this plate: 2"}));
    EXPECT_EQ(
        chain(outcome, "marks.shape"),
        (std::vector<std::string>{"built-in default: none", "custom of the rank corporal: bars"}));
    EXPECT_EQ(chain(outcome, "cuffs.cloth"),
              (std::vector<std::string>{"built-in default: as lapels.cloth or facings.cloth",
                                        "as lapels.cloth: buff"}));
    EXPECT_EQ(chain(outcome, "hat.tuft"), (std::vector<std::string>{"built-in default: none"}));
}

TEST(Resolve, SaysInTheChainWhatWasSkippedForWhat) {
    const Outcome outcome = resolved("plate: A\nlapels: none\n");
    EXPECT_EQ(chain(outcome, "cuffs.cloth"),
              (std::vector<std::string>{"built-in default: as lapels.cloth or facings.cloth",
                                        "as facings.cloth: red"}));
}

TEST(Resolve, LetsThePlateOverruleTheRank) {
    const Outcome outcome = resolved("plate: A\nrank: sergeant\nmarks: none\n");
    EXPECT_EQ(outcome.word("marks.shape"), "none");
    EXPECT_EQ(outcome.word("marks.number"), "3");
}

TEST(Resolve, GivesMetalLace) {
    const Outcome outcome =
        resolved("plate: A\nrank: sergeant\nbuttons: white\nhat: {tape: brass}\n");
    ASSERT_TRUE(outcome.uniform) << outcome.problem();
    const Material& marks = *outcome.uniform->material(property_id("marks.cloth"));
    EXPECT_TRUE(marks.metal);
    EXPECT_EQ(to_hex(marks.colour), "#cccccc");
    const Material& tape = *outcome.uniform->material(property_id("hat.tape"));
    EXPECT_TRUE(tape.metal);
    EXPECT_EQ(tape.name, "yellow");
}

TEST(Resolve, LooksInThePropertysOwnSectionFirst) {
    const Outcome outcome = resolved("plate: A\n");
    ASSERT_TRUE(outcome.uniform) << outcome.problem();
    EXPECT_EQ(to_hex(outcome.uniform->material(property_id("belts.leather"))->colour), "#eeeecc");
    EXPECT_EQ(to_hex(outcome.uniform->material(property_id("shirt.cloth"))->colour), "#eeeeee");
}

TEST(Resolve, MakesACountOfNoneNought) {
    EXPECT_EQ(resolved("plate: A\ncuffs: {buttons: none}\n").word("cuffs.buttons"), "0");
}

TEST(Resolve, LetsAPlateFollowToo) {
    const Outcome outcome = resolved("plate: A\nwaistcoat: as facings.cloth\n");
    EXPECT_EQ(outcome.word("waistcoat.cloth"), "red");
    EXPECT_EQ(outcome.word("breeches.cloth"), "red");
    EXPECT_EQ(
        chain(outcome, "waistcoat.cloth"),
        (std::vector<std::string>{
            "built-in default: white", "this plate: as facings.cloth", "as facings.cloth: red"}));
    EXPECT_EQ(resolved("plate: A\nhat: {tuft: as lapels.cloth}\nlapels: none\n").word("hat.tuft"),
              "none");
}

TEST(Resolve, SuggestsColours) {
    EXPECT_EQ(
        resolved("plate: A\ncoat: dark bleu\n").problem(),
        "2:7: unknown colour 'dark bleu' [resolve.unknown-colour]\ndid you mean 'dark blue'?");
    EXPECT_EQ(resolved("plate: A\ncoat: {lining: maddr}\n").problem(),
              "2:16: unknown colour 'maddr' [resolve.unknown-colour]\ndid you mean 'madder'?");
    EXPECT_EQ(
        resolved("plate: A\ncoat: tartan\n").problem(),
        "2:7: unknown colour 'tartan' [resolve.unknown-colour]\nwrite a name of the palettes, "
        "such as 'red' or 'dark blue', or the colour itself in quotes, such as \"#28385f\"");
    EXPECT_EQ(resolved("plate: A\nfigure: {skin: blue}\n").problem(),
              "2:16: unknown colour 'blue' [resolve.unknown-colour]\nwrite a name of the palettes, "
              "such as 'fair' or 'brown', or the colour itself in quotes, such as \"#28385f\"");
}

TEST(Resolve, SuggestsMetals) {
    EXPECT_EQ(resolved("plate: A\nbuttons: yelow\n").problem(),
              "2:10: unknown metal 'yelow' [resolve.unknown-metal]\ndid you mean 'yellow'?");
    EXPECT_EQ(
        resolved("plate: A\nbuttons: red\n").problem(),
        "2:10: unknown metal 'red' [resolve.unknown-metal]\nwrite a name of the palettes, such "
        "as 'white' or 'yellow', or the colour itself in quotes, such as \"#28385f\"");
}

TEST(Resolve, ReportsEveryUnknownColour) {
    const Outcome outcome =
        resolved("plate: A\ncoat: {cloth: blu, lining: whit}\nhat: {tape: whte}\n");
    EXPECT_FALSE(outcome.uniform);
    EXPECT_EQ(outcome.problems.error_count(), 3U);
}

TEST(Resolve, ReportsAColourOnceHoweverManyFollowIt) {
    const Outcome outcome = resolved("plate: A\nfacings: blurple\n");
    EXPECT_FALSE(outcome.uniform);
    EXPECT_EQ(outcome.problems.error_count(), 1U);
}

TEST(Resolve, SaysThatAPaletteLacksADefault) {
    std::string palette = kPalette;
    palette.replace(palette.find("powdered"), 8, "grizzled");
    EXPECT_EQ(resolved("plate: A\n", palette).problem(),
              "the palettes have no colour 'powdered', the default of 'figure.hair' "
              "[resolve.unknown-colour]\nadd it to a palette, or write 'figure.hair' yourself");
    EXPECT_TRUE(resolved("plate: A\nfigure: {hair: grizzled}\n", palette).uniform);
}

TEST(Resolve, SuggestsRanks) {
    EXPECT_EQ(resolved("plate: A\nrank: corporl\n").problem(),
              "2:7: unknown rank 'corporl' [resolve.unknown-rank]\ndid you mean 'corporal'?\n"
              "a rank of your own needs its marks: write 'marks: none' or 'marks: {shape: bars, "
              "number: 2}'");
    EXPECT_EQ(resolved("plate: A\nrank: Feldwebel\n").problem(),
              "2:7: unknown rank 'Feldwebel' [resolve.unknown-rank]\nranks with a custom here are "
              "private, corporal or sergeant\n"
              "a rank of your own needs its marks: write 'marks: none' or 'marks: {shape: bars, "
              "number: 2}'");
}

TEST(Resolve, TakesARankOfYourOwnWithItsMarks) {
    const Outcome outcome = resolved("plate: A\nrank: Feldwebel\nmarks: slanted\n");
    ASSERT_TRUE(outcome.uniform) << outcome.problem();
    EXPECT_EQ(outcome.uniform->rank, "Feldwebel");
    EXPECT_EQ(outcome.word("marks.shape"), "slanted");
}

TEST(Resolve, SuggestsPropertiesToFollow) {
    EXPECT_EQ(resolved("plate: A\ncollar: as lapel.cloth\n").problem(),
              "2:9: 'lapel.cloth' is not a property that has a colour to follow "
              "[resolve.unknown-property]\ndid you mean 'as lapels.cloth'?");
    EXPECT_EQ(resolved("plate: A\ncollar: As facings\n").problem(),
              "2:9: 'facings' is not a property that has a colour to follow "
              "[resolve.unknown-property]\ndid you mean 'as facings.cloth'?");
    EXPECT_EQ(resolved("plate: A\ncollar: as the others\n").problem(),
              "2:9: 'the others' is not a property that has a colour to follow "
              "[resolve.unknown-property]\nwrite for instance 'as facings.cloth' or 'as "
              "buttons.metal'");
    EXPECT_EQ(
        resolved("plate: A\ncollar: as lapels.buttons\n").problem(),
        "2:9: 'lapels.buttons' is not a property that has a colour to follow "
        "[resolve.unknown-property]\nwrite for instance 'as facings.cloth' or 'as buttons.metal'");
}

TEST(Resolve, RefusesACircle) {
    EXPECT_EQ(resolved("plate: A\ncoat: {lining: as turnbacks.cloth}\n").problem(),
              "2:16: 'coat.lining' follows 'turnbacks.cloth', which follows 'coat.lining' "
              "[resolve.circle]\ngive one of them a colour of its own");
    EXPECT_EQ(
        resolved("plate: A\ncoat: as coat.cloth\n").problem(),
        "2:7: 'coat.cloth' follows 'coat.cloth' [resolve.circle]\ngive one of them a colour of "
        "its own");
    EXPECT_EQ(resolved("plate: A\ncoat: {lining: as turnbacks.cloth}\n").problems.error_count(),
              1U);
}

TEST(Resolve, RefusesClothWhereMetalMustBe) {
    EXPECT_EQ(resolved("plate: A\nbuttons: as lapels.cloth\n").problem(),
              "2:10: 'buttons.metal' must be a metal, and 'lapels.cloth' is 'red' "
              "[resolve.wrong-kind]\nwrite a metal, such as 'white' or 'yellow'");
}

TEST(Resolve, RefusesNothingWhereSomethingMustBe) {
    EXPECT_EQ(resolved("plate: A\nwaistcoat: as hat.tuft\n").problem(),
              "2:12: 'waistcoat.cloth' cannot be none, but it follows 'hat.tuft', which is "
              "[resolve.wrong-kind]\nwrite a colour, or a second property to follow: 'as "
              "lapels.cloth or facings.cloth'");
}

TEST(Resolve, GivesTheSameTwice) {
    const char* plate = "plate: A\nrank: sergeant\nlapels: buff\n";
    const Outcome first = resolved(plate);
    const Outcome second = resolved(plate);
    EXPECT_EQ(dump(*first.uniform, first.sources), dump(*second.uniform, second.sources));
}

std::string repository_file(const std::string& name) {
    std::ostringstream text;
    text << std::ifstream(std::string(PLATEWRIGHT_SOURCE_DIR) + "/" + name).rdbuf();
    return text.str();
}

class ShippedData : public testing::Test {
  protected:
    void SetUp() override {
        for (const char* name : {"cloth", "figure", "leather", "metals"}) {
            const std::string path = std::string("palettes/") + name + ".yaml";
            auto palette =
                read_palette(sources_, sources_.add(path, repository_file(path)), problems_);
            ASSERT_TRUE(palette) << path << ": " << problems_.all().back().message;
            palettes_.push_back(*std::move(palette));
        }
        const std::string path = "templates/line-infantry/customs.yaml";
        auto customs = read_customs(sources_, sources_.add(path, repository_file(path)), problems_);
        ASSERT_TRUE(customs) << problems_.all().back().message;
        customs_ = *std::move(customs);
    }

    SourceMap sources_;
    Diagnostics problems_;
    std::vector<SpecifiedPalette> palettes_;
    SpecifiedCustoms customs_;
};

TEST_F(ShippedData, HasEveryDefaultAndEveryRank) {
    for (const SpecifiedCustoms::Rank& rank : customs_.ranks) {
        SpecifiedPlate plate;
        plate.rank = rank.name;
        EXPECT_TRUE(resolve(plate, {}, customs_, palettes_, problems_)) << rank.name.text;
    }
    EXPECT_GE(customs_.ranks.size(), 5U);
    EXPECT_TRUE(problems_.all().empty());
}

TEST_F(ShippedData, TellsTheClothColoursApart) {
    // Two cloths nearer than this (CIEDE2000) would look the same on a printed plate.
    constexpr double least = 5;
    const auto& cloths = palettes_.front().entries;
    EXPECT_GE(cloths.size(), 40U);
    for (auto a = cloths.begin(); a != cloths.end(); ++a) {
        for (auto b = std::next(a); b != cloths.end(); ++b) {
            EXPECT_GE(delta_e_2000(to_lab_d65(a->colour), to_lab_d65(b->colour)), least)
                << a->name.text << " and " << b->name.text;
        }
    }
}

/// Hue angles of a family in P. Syme, Werner's Nomenclature of Colours, 2nd ed., 1821: CIE Lab,
/// D65, degrees, from the colours of the scanned plates.
struct Family {
    const char* name;
    double from;
    double to;
};

constexpr Family kFamilies[] = {{"green", 89, 199},
                                {"yellow", 66, 100},
                                {"orange", 43, 81},
                                {"red", 1, 47},
                                {"blue", 181, 305},
                                {"purple", 279, 327}};

TEST_F(ShippedData, NamesColoursAfterTheirFamilies) {
    int named = 0;
    for (const PaletteEntry& entry : palettes_.front().entries) {
        const Lab lab = to_lab_d65(entry.colour);
        const double degrees = std::atan2(lab.b, lab.a) * 180 / 3.141592653589793;
        const double hue = degrees < 0 ? degrees + 360 : degrees;
        for (const Family& family : kFamilies) {
            if (entry.name.text.ends_with(family.name)) {
                EXPECT_GE(hue, family.from) << entry.name.text;
                EXPECT_LE(hue, family.to) << entry.name.text;
                ++named;
            }
        }
    }
    EXPECT_GE(named, 15);
}

TEST_F(ShippedData, SaysHowSureEveryColourIs) {
    for (const SpecifiedPalette& palette : palettes_) {
        for (const PaletteEntry& entry : palette.entries) {
            EXPECT_TRUE(entry.certainty == "inferred" || entry.certainty == "conjectural")
                << entry.name.text << " has no published measurement";
        }
    }
}

}  // namespace
}  // namespace platewright
