// SPDX-License-Identifier: MIT
// Palettes and customs, made for the test and as shipped.
#include "base/files.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

#include "base/limits.h"
#include "support.h"

namespace platewright {
namespace {

Lines problems_of_palette(const std::string& text) {
    Reading reading(text);
    static_cast<void>(read_palette(reading.sources, reading.file, reading.problems));
    return reading.found();
}

Lines problems_of_customs(const std::string& text) {
    Reading reading(text);
    static_cast<void>(read_customs(reading.sources, reading.file, reading.problems));
    return reading.found();
}

TEST(ReadPalette, ReadsNamesAndColours) {
    Reading reading(
        "palette: Test\ncloth:\n  - name: red\n    colour: \"#AA2233\"\n    other names: [rot, "
        "rouge]\n"
        "    made of: madder\n    source: book\n    certainty: inferred\nmetal:\n  - {name: white, "
        "colour: {L: 80, a: 0, b: 0}}\n");
    const auto palette = read_palette(reading.sources, reading.file, reading.problems);
    ASSERT_TRUE(palette) << testing::PrintToString(reading.found());
    EXPECT_EQ(palette->name, "Test");
    ASSERT_EQ(palette->entries.size(), 2U);
    const PaletteEntry& red = palette->entries[0];
    EXPECT_EQ(red.name.text, "red");
    EXPECT_EQ(red.kind, SubstanceKind::cloth);
    EXPECT_EQ(to_hex(red.colour), "#aa2233");
    ASSERT_EQ(red.other_names.size(), 2U);
    EXPECT_EQ(red.other_names[1].text, "rouge");
    EXPECT_EQ(red.made_of + red.source + red.certainty, "madderbookinferred");
    EXPECT_EQ(palette->entries[1].kind, SubstanceKind::metal);
    EXPECT_EQ(to_hex(palette->entries[1].colour), "#c6c6c6");
}

TEST(ReadPalette, ReadsWhatColoursAreCalledInOtherLanguages) {
    Reading reading(
        "palette: Test\ncloth:\n  - {name: red, colour: \"#aa2233\", made of: madder, fr: rouge, "
        "de: "
        "{name: rot, made of: Krapp}}\n  - {name: orange, colour: \"#d1662f\", fr: orange, de: "
        "orange}\n");
    const auto palette = read_palette(reading.sources, reading.file, reading.problems);
    ASSERT_TRUE(palette) << testing::PrintToString(reading.found());
    const PaletteEntry& red = palette->entries[0];
    EXPECT_EQ(red.name_in(Language::english) + red.made_of_in(Language::english), "redmadder");
    EXPECT_EQ(red.name_in(Language::french) + red.made_of_in(Language::french), "rougemadder");
    EXPECT_EQ(red.name_in(Language::german) + red.made_of_in(Language::german), "rotKrapp");

    const std::string head = "palette: Test\ncloth:\n  - {name: red, colour: \"#aa2233\"";
    EXPECT_EQ(problems_of_palette(head + ", en: x}\n"), Lines{"read.unknown-key 3:36"});
    EXPECT_EQ(problems_of_palette(head + ", de: {dye: x}}\n"), Lines{"read.unknown-key 3:41"});
    EXPECT_EQ(problems_of_palette(head + ", de: [x]}\n"), Lines{"read.wrong-kind 3:40"});
    EXPECT_EQ(problems_of_palette(head + ", de: none}\n"), Lines{"read.bad-name 3:40"});
    EXPECT_EQ(problems_of_palette(head + ", de: rot}\n  - {name: rot, colour: \"#aa2234\"}\n"),
              Lines{"read.duplicate-name 4:12"});
}

// A French or German sheet has no English names among its colours.
TEST(ReadPalette, OurOwnAreNamedInEveryLanguage) {
    for (const char* name : {"cloth", "leather", "metals"}) {
        std::ifstream file(std::string(PLATEWRIGHT_SOURCE_DIR "/palettes/") + name + ".yaml");
        std::ostringstream text;
        text << file.rdbuf();
        Reading reading(text.str());
        const auto palette = read_palette(reading.sources, reading.file, reading.problems);
        ASSERT_TRUE(palette) << name;
        for (const PaletteEntry& entry : palette->entries) {
            for (const Language language : {Language::french, Language::german}) {
                const auto words = entry.in.find(language);
                ASSERT_NE(words, entry.in.end()) << entry.name.text;
                EXPECT_TRUE(words->second.name && !words->second.made_of.empty())
                    << entry.name.text;
            }
        }
    }
}

TEST(ReadPalette, TakesATinctureByNameOrColour) {
    const std::string head = "palette: Test\ncloth:\n  - {name: red, colour: \"#aa2233\", hatch: ";
    for (const char* word : {"gules", "Gules", "red"}) {
        Reading reading(head + word + "}\n");
        const auto palette = read_palette(reading.sources, reading.file, reading.problems);
        ASSERT_TRUE(palette) << word;
        EXPECT_EQ(palette->entries[0].hatch, find_tincture("gules"));
    }
    EXPECT_EQ(problems_of_palette(head + "guls}\n"), Lines{"read.unknown-choice 3:43"});
}

TEST(ReadPalette, RefusesWhatIsWrong) {
    const std::string head = "palette: Test\ncloth:\n  - {name: red, colour: \"#aa2233\"";
    EXPECT_EQ(problems_of_palette(head + "}\n  - {name: RED, colour: \"#aa2234\"}\n"),
              Lines{"read.duplicate-name 4:12"});
    EXPECT_EQ(problems_of_palette(head + ", other names: red}\n"),
              Lines{"read.duplicate-name 3:49"});
    EXPECT_EQ(problems_of_palette(head + ", dye: x}\n"), Lines{"read.unknown-key 3:36"});
    EXPECT_EQ(problems_of_palette(head + ", certainty: sure}\n"),
              Lines{"read.unknown-choice 3:47"});
    EXPECT_EQ(problems_of_palette(head + ", hatch: mauve}\n"), Lines{"read.unknown-choice 3:43"});
    EXPECT_EQ(problems_of_palette("cloth: [{name: a, colour: \"#aa2233\"}]\n"),
              Lines{"read.missing-key 1:1"});
    EXPECT_EQ(problems_of_palette("palette: x\n"), Lines{"read.missing-key 1:1"});
    EXPECT_EQ(problems_of_palette("palette: x\ncloth: red\n"), Lines{"read.wrong-kind 2:8"});
    EXPECT_EQ(problems_of_palette("palette: x\ncloth: [red]\n"), Lines{"read.wrong-kind 2:9"});
    EXPECT_EQ(problems_of_palette("palette: x\ncloth: [{name: a}]\n"),
              Lines{"read.missing-key 2:9"});
    for (const char* bad : {"none", "as red", "\"#123456\""}) {
        EXPECT_EQ(problems_of_palette(std::string("palette: x\ncloth: [{name: ") + bad +
                                      ", colour: \"#aa2233\"}]\n"),
                  Lines{"read.bad-name 2:16"})
            << bad;
    }
}

TEST(ReadPalette, ReadsLabInPlainDecimalsOnly) {
    const auto with = [](const std::string& l) {
        return problems_of_palette("palette: x\ncloth: [{name: a, colour: {L: " + l +
                                   ", a: 1, b: -1.5}}]\n");
    };
    EXPECT_EQ(with("50.25"), Lines{});
    for (const char* wrong : {"1e1", ".nan", "5O", "1..2", "0x10", "50,5"}) {
        EXPECT_FALSE(with(wrong).empty()) << wrong;
    }
    EXPECT_EQ(with("101"), Lines{"read.out-of-range 2:31"});
}

TEST(ReadPalette, WarnsOfColoursNoScreenShows) {
    EXPECT_EQ(
        problems_of_palette("palette: x\ncloth: [{name: a, colour: {L: 50, a: 120, b: 0}}]\n"),
        Lines{"read.outside-srgb 2:27"});
}

TEST(ReadCustoms, ReadsRanksInOrder) {
    Reading reading("ranks:\n  private: {}\n  corporal: {marks: {shape: bars, number: 1}}\n");
    const auto customs = read_customs(reading.sources, reading.file, reading.problems);
    ASSERT_TRUE(customs);
    ASSERT_EQ(customs->ranks.size(), 2U);
    EXPECT_EQ(customs->ranks[0].name.text, "private");
    EXPECT_TRUE(customs->ranks[0].values.empty());
    EXPECT_EQ(customs->ranks[1].values.size(), 2U);
}

TEST(ReadCustoms, RefusesWhatIsWrong) {
    EXPECT_EQ(problems_of_customs("rank: x\n"),
              (Lines{"read.missing-key 1:1", "read.unknown-key 1:1"}));
    EXPECT_EQ(problems_of_customs("ranks: [a]\n"), Lines{"read.wrong-kind 1:8"});
    EXPECT_EQ(problems_of_customs("ranks:\n  a:\n"), Lines{"read.missing-value 2:3"});
    EXPECT_EQ(problems_of_customs("ranks:\n  a: {sosh: red}\n"), Lines{"read.unknown-key 2:7"});
    EXPECT_EQ(problems_of_customs("ranks:\n  a: {}\n  A: {}\n"), Lines{"read.duplicate-name 3:3"});
    EXPECT_EQ(problems_of_customs("ranks:\n  none: {}\n"), Lines{"read.bad-name 2:3"});
}

TEST(ReadShippedFiles, AreInOrder) {
    const DiskReader files;
    const std::string palettes = std::string(PLATEWRIGHT_SOURCE_DIR) + "/palettes/";
    const auto names = files.list(palettes, ".yaml");
    EXPECT_FALSE(names.empty());
    for (const std::string& name : names) {
        EXPECT_EQ(problems_of_palette(files.read(palettes + name, limits::kYamlBytes).text),
                  Lines{})
            << name;
    }
    const std::string customs =
        std::string(PLATEWRIGHT_SOURCE_DIR) + "/templates/line-infantry/customs.yaml";
    EXPECT_EQ(problems_of_customs(files.read(customs, limits::kYamlBytes).text), Lines{});
}

}  // namespace
}  // namespace platewright
