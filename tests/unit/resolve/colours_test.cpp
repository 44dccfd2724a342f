// SPDX-License-Identifier: MIT
// Looking colours up by name.
#include "resolve/colours.h"

#include <gtest/gtest.h>

namespace platewright {
namespace {

PaletteEntry entry(std::string name,
                   SubstanceKind kind,
                   Colour colour,
                   const std::vector<std::string>& other_names = {}) {
    PaletteEntry made;
    made.name.text = std::move(name);
    for (const std::string& other : other_names) {
        made.other_names.push_back({other, {}});
    }
    made.kind = kind;
    made.colour = colour;
    return made;
}

SpecifiedPalette palette(std::vector<PaletteEntry> entries) {
    SpecifiedPalette made;
    made.entries = std::move(entries);
    return made;
}

std::optional<Material> find(const std::vector<SpecifiedPalette>& palettes,
                             std::string_view key,
                             std::string_view name) {
    return ColourBook(palettes).find(property_id(key), name);
}

const std::vector<SpecifiedPalette> kTwo = {
    palette({entry("white", SubstanceKind::cloth, {1, 0, 0}),
             entry("white", SubstanceKind::leather, {2, 0, 0}),
             entry("white", SubstanceKind::metal, {3, 0, 0}, {"pewter"}),
             entry("tan", SubstanceKind::leather, {4, 0, 0}),
             entry("Sky Blue", SubstanceKind::cloth, {5, 0, 0}, {"celeste"}),
             entry("fair", SubstanceKind::hair, {6, 0, 0})}),
    palette({entry("celeste", SubstanceKind::cloth, {7, 0, 0}),
             entry("sky blue", SubstanceKind::cloth, {8, 0, 0})})};

TEST(ColourBook, LooksInThePropertysOwnSectionFirst) {
    EXPECT_EQ(find(kTwo, "coat.cloth", "white")->colour.red, 1);
    EXPECT_EQ(find(kTwo, "belts.leather", "white")->colour.red, 2);
    EXPECT_EQ(find(kTwo, "buttons.metal", "white")->colour.red, 3);
}

TEST(ColourBook, GivesClothAlsoMetalAndLeather) {
    EXPECT_TRUE(find(kTwo, "hat.tape", "pewter")->metal);
    EXPECT_FALSE(find(kTwo, "coat.cloth", "tan")->metal);
    EXPECT_FALSE(find(kTwo, "buttons.metal", "tan"));
    EXPECT_FALSE(find(kTwo, "belts.leather", "pewter"));
    EXPECT_EQ(find(kTwo, "belts.leather", "sky blue")->colour.red, 5);
}

TEST(ColourBook, NamesColoursInTheLanguageOfTheSheet) {
    PaletteEntry red = entry("red", SubstanceKind::cloth, {1, 0, 0});
    red.made_of = "madder";
    red.in[Language::german] = {WrittenText{"rot", {}}, "Krapp"};
    const std::vector<SpecifiedPalette> one = {palette({red})};
    const PropertyId coat = property_id("coat.cloth");
    const auto german = ColourBook(one, Language::german).find(coat, "rot");
    ASSERT_TRUE(german);
    EXPECT_EQ(german->name, "red");
    EXPECT_EQ(german->printed() + ", " + german->made_of, "rot, Krapp");
    const auto english = ColourBook(one).find(coat, "Rot");
    ASSERT_TRUE(english);
    EXPECT_EQ(english->printed() + ", " + english->made_of, "red, madder");
    EXPECT_EQ(ColourBook(one, Language::french).find(coat, "red")->printed(), "red");
}

TEST(ColourBook, KeepsSkinAndHairApart) {
    EXPECT_TRUE(find(kTwo, "figure.hair", "fair"));
    EXPECT_FALSE(find(kTwo, "figure.skin", "fair"));
    EXPECT_FALSE(find(kTwo, "figure.hair", "white"));
}

TEST(ColourBook, TakesTheFirstPaletteAndNamesBeforeOtherNames) {
    EXPECT_EQ(find(kTwo, "coat.cloth", "sky blue")->colour.red, 5);
    EXPECT_EQ(find(kTwo, "coat.cloth", "celeste")->colour.red, 7);
}

TEST(ColourBook, DoesNotMindCapitalsAndGivesThePalettesName) {
    EXPECT_EQ(find(kTwo, "coat.cloth", " SKY blue ")->name, "Sky Blue");
}

TEST(ColourBook, TakesTheColourItself) {
    const std::optional<Material> cloth = find(kTwo, "coat.cloth", "#28385F");
    ASSERT_TRUE(cloth);
    EXPECT_EQ(cloth->name, "#28385f");
    EXPECT_FALSE(cloth->metal);
    EXPECT_TRUE(find(kTwo, "buttons.metal", "#cccccc")->metal);
    EXPECT_FALSE(find(kTwo, "coat.cloth", "#28385"));
}

TEST(ColourBook, FindsTheNearestNameOfAllItMayUse) {
    const ColourBook book(kTwo);
    EXPECT_EQ(book.nearest(property_id("coat.cloth"), "celestte"), "celeste");
    EXPECT_EQ(book.nearest(property_id("hat.tape"), "pewtr"), "pewter");
    EXPECT_EQ(book.nearest(property_id("figure.hair"), "fiar"), "fair");
    EXPECT_FALSE(book.nearest(property_id("figure.hair"), "celestte"));
}

}  // namespace
}  // namespace platewright
