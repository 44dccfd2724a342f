// SPDX-License-Identifier: MIT
// Looking things up in the table.
#include "vocabulary/property.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <stdexcept>

namespace platewright {
namespace {

std::string_view key_of_word(std::string_view group, std::string_view word) {
    const std::optional<PropertyId> id = property_of_word(group, word);
    return id ? properties()[*id].key : "";
}

TEST(FindProperty, FindsEveryRow) {
    for (PropertyId id = 0; id < properties().size(); ++id) {
        EXPECT_EQ(find_property(properties()[id].key), id);
    }
}

TEST(FindProperty, FindsNothingElse) {
    EXPECT_FALSE(find_property(""));
    EXPECT_FALSE(find_property("lapels"));
    EXPECT_FALSE(find_property("Lapels.cloth"));
    EXPECT_FALSE(find_property("zzz.zzz"));
}

TEST(PropertyIdOf, ThrowsOnASlipOfOurs) {
    EXPECT_EQ(properties()[property_id("lapels.cloth")].key, "lapels.cloth");
    EXPECT_THROW(property_id("lapels.clot"), std::logic_error);
}

TEST(Property, HasAGroupAndAName) {
    const Property& row = properties()[property_id("turnbacks.ornament-cloth")];
    EXPECT_EQ(row.group(), "turnbacks");
    EXPECT_EQ(row.name(), "ornament-cloth");
}

TEST(NearestProperty, KnowsSlipsAndGroups) {
    EXPECT_EQ(nearest_property("lapel.cloth"), "lapels.cloth");
    EXPECT_EQ(nearest_property("collar"), "collar.cloth");
    EXPECT_EQ(nearest_property("pockets"), "pockets.direction");
    EXPECT_FALSE(nearest_property("weather"));
}

TEST(Groups, AreNamedOnceInTableOrder) {
    std::vector<std::string_view> seen;
    for (const Property& row : properties()) {
        if (seen.empty() || seen.back() != row.group()) {
            EXPECT_EQ(std::ranges::count(seen, row.group()), 0) << row.group() << " is torn apart";
            seen.push_back(row.group());
        }
    }
    EXPECT_TRUE(std::ranges::equal(groups(), seen));
}

TEST(PropertyOfWord, PrefersAChoiceThatKnowsTheWord) {
    EXPECT_EQ(key_of_word("collar", "standing"), "collar.shape");
    EXPECT_EQ(key_of_word("collar", "Upright"), "collar.shape");
    EXPECT_EQ(key_of_word("collar", "red"), "collar.cloth");
    EXPECT_EQ(key_of_word("belts", "crossed"), "belts.worn");
    EXPECT_EQ(key_of_word("belts", "buff"), "belts.leather");
}

TEST(PropertyOfWord, GivesNoneToWhatMayBeNone) {
    EXPECT_EQ(key_of_word("collar", "none"), "collar.shape");
    EXPECT_EQ(key_of_word("belts", "None"), "belts.worn");
    EXPECT_EQ(key_of_word("lapels", "none"), "lapels.cloth");
    EXPECT_EQ(key_of_word("marks", "none"), "marks.shape");
}

TEST(PropertyOfWord, LeavesAWordNobodyKnowsToTheOneThatWillSaySo) {
    EXPECT_EQ(key_of_word("pockets", "sideways"), "pockets.direction");
    EXPECT_EQ(key_of_word("coat", "blu"), "coat.cloth");
}

TEST(PropertyOfWord, IsEmptyWhereAGroupHasNoShortForm) {
    EXPECT_EQ(key_of_word("figure", "black"), "");
    EXPECT_EQ(key_of_word("nothing", "black"), "");
}

TEST(Choices, AreInTableOrderWithOtherNames) {
    const auto choices = choices_of(property_id("pockets.direction"));
    ASSERT_EQ(choices.size(), 3U);
    EXPECT_EQ(choices[0].word, "horizontal");
    EXPECT_EQ(choices[0].other_name, "cross");
    EXPECT_EQ(choices[1].word, "vertical");
    EXPECT_TRUE(choices_of(property_id("coat.cloth")).empty());
    EXPECT_EQ(choices_of(property_id("marks.shape"))[2].other_name, "");
}

TEST(FindChoice, AcceptsOtherNamesAndCapitals) {
    const PropertyId pockets = property_id("pockets.direction");
    EXPECT_EQ(find_choice(pockets, " Cross "), "horizontal");
    EXPECT_EQ(find_choice(pockets, "vertical"), "vertical");
    EXPECT_FALSE(find_choice(pockets, "none"));
    EXPECT_FALSE(find_choice(pockets, ""));
    EXPECT_FALSE(find_choice(property_id("turnbacks.shape"), ""));
}

TEST(Expectation, SaysWhatMayBeWritten) {
    const auto of = [](std::string_view key) { return expectation(property_id(key)); };
    EXPECT_EQ(of("coat.cloth"), "a colour by its name or as \"#rrggbb\"");
    EXPECT_EQ(of("lapels.cloth"), "a colour by its name or as \"#rrggbb\", or none");
    EXPECT_EQ(of("buttons.metal"), "a metal by its name or as \"#rrggbb\"");
    EXPECT_EQ(of("collar.shape"), "falling, standing, stand-and-fall or none");
    EXPECT_EQ(of("cuffs.buttons"), "a whole number from 0 to 6");
    EXPECT_EQ(of("marks.width"), "a length with its unit from 2 to 60 mm, such as '12 mm'");
    EXPECT_EQ(of("buttons.number"), "a text of at most 6 characters, or none");
}

TEST(Substances, AreFoundByTheirSection) {
    EXPECT_EQ(substance_name(SubstanceKind::leather), "leather");
    for (const std::string_view section : {"cloth", "metal", "leather", "skin", "hair"}) {
        const std::optional<SubstanceKind> kind = find_substance(section);
        ASSERT_TRUE(kind) << section;
        EXPECT_EQ(substance_name(*kind), section);
    }
    EXPECT_FALSE(find_substance("paper"));
}

TEST(Followed, TakesTheKeysApart) {
    EXPECT_EQ(followed("as coat.lining"), (std::vector<std::string_view>{"coat.lining"}));
    EXPECT_EQ(followed(" as lapels.cloth or facings.cloth "),
              (std::vector<std::string_view>{"lapels.cloth", "facings.cloth"}));
    EXPECT_EQ(followed("As coat.lining"), (std::vector<std::string_view>{"coat.lining"}));
    EXPECT_TRUE(followed("red").empty());
    EXPECT_TRUE(followed("ash grey").empty());
}

}  // namespace
}  // namespace platewright
