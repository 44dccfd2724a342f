// SPDX-License-Identifier: MIT
// The table itself: every row is whole and its default is among what it allows.
#include <gtest/gtest.h>

#include <algorithm>
#include <charconv>
#include <set>
#include <string>

#include "base/text.h"
#include "vocabulary/measure.h"
#include "vocabulary/property.h"

namespace platewright {
namespace {

bool is_colour(const Property& row) {
    return row.kind == Kind::cloth || row.kind == Kind::metal;
}

/// Follows the defaults from `id`; false if they go in a circle.
bool comes_to_an_end(PropertyId id, std::size_t steps_left) {
    if (steps_left == 0) {
        return false;
    }
    for (const std::string_view key : followed(properties()[id].initial)) {
        if (!comes_to_an_end(property_id(key), steps_left - 1)) {
            return false;
        }
    }
    return true;
}

TEST(Table, HasPlainKeys) {
    std::set<std::string_view> keys;
    for (const Property& row : properties()) {
        EXPECT_TRUE(keys.insert(row.key).second) << row.key << " stands twice";
        EXPECT_EQ(row.key.find_first_not_of("abcdefghijklmnopqrstuvwxyz-."), std::string::npos)
            << row.key;
        EXPECT_EQ(split(row.key, '.').size(), 2U) << row.key;
        EXPECT_FALSE(row.group().empty()) << row.key;
        EXPECT_FALSE(row.name().empty()) << row.key;
    }
}

TEST(Table, HasAMeaningOfOneLineForEveryRow) {
    for (const Property& row : properties()) {
        EXPECT_GT(row.meaning.size(), 5U) << row.key;
        EXPECT_EQ(row.meaning.find_first_of("\n|"), std::string::npos) << row.key;
        EXPECT_FALSE(row.meaning.ends_with('.')) << row.key;
    }
}

TEST(Table, HasChoicesForChoicesOnly) {
    for (PropertyId id = 0; id < properties().size(); ++id) {
        EXPECT_EQ(properties()[id].kind == Kind::choice, !choices_of(id).empty())
            << properties()[id].key;
    }
}

TEST(Table, NeverListsNoneOrTheSameWordTwiceAmongChoices) {
    for (PropertyId id = 0; id < properties().size(); ++id) {
        std::set<std::string_view> words;
        for (const Choice& choice : choices_of(id)) {
            EXPECT_NE(choice.word, "none") << properties()[id].key;
            EXPECT_TRUE(words.insert(choice.word).second) << choice.word;
            EXPECT_TRUE(choice.other_name.empty() || words.insert(choice.other_name).second)
                << choice.other_name;
        }
    }
}

TEST(Table, HasRangesForNumbers) {
    for (const Property& row : properties()) {
        if (row.kind == Kind::count || row.kind == Kind::measure) {
            EXPECT_LT(row.least, row.most) << row.key;
            EXPECT_GE(row.least, 0) << row.key;
        }
        EXPECT_TRUE(row.kind != Kind::words || row.most > 0) << row.key;
    }
}

TEST(Table, LooksMetalsUpAmongMetals) {
    for (const Property& row : properties()) {
        EXPECT_EQ(row.kind == Kind::metal, row.substance == SubstanceKind::metal) << row.key;
    }
}

TEST(Table, HasDefaultsItAllowsItself) {
    for (PropertyId id = 0; id < properties().size(); ++id) {
        const Property& row = properties()[id];
        if (row.initial == "none") {
            EXPECT_TRUE(row.may_be_none) << row.key;
        } else if (row.kind == Kind::choice) {
            EXPECT_EQ(find_choice(id, row.initial), row.initial) << row.key;
        } else if (row.kind == Kind::count) {
            int number = -1;
            std::from_chars(row.initial.data(), row.initial.data() + row.initial.size(), number);
            EXPECT_EQ(std::to_string(number), row.initial) << row.key;
            EXPECT_GE(number, row.least) << row.key;
            EXPECT_LE(number, row.most) << row.key;
        } else if (row.kind == Kind::measure) {
            std::string problem;
            const std::optional<Measure> length = parse_measure(row.initial, problem);
            ASSERT_TRUE(length) << row.key << ": " << problem;
            EXPECT_GE(length->mm, row.least) << row.key;
            EXPECT_LE(length->mm, row.most) << row.key;
        }
        EXPECT_FALSE(row.initial.empty()) << row.key;
    }
}

TEST(Table, FollowsColoursOnlyAndNeverInACircle) {
    for (PropertyId id = 0; id < properties().size(); ++id) {
        const Property& row = properties()[id];
        for (const std::string_view key : followed(row.initial)) {
            const std::optional<PropertyId> other = find_property(key);
            ASSERT_TRUE(other) << row.key << " follows " << key;
            EXPECT_TRUE(is_colour(row) && is_colour(properties()[*other])) << row.key;
            EXPECT_TRUE(row.kind == Kind::cloth || properties()[*other].kind == Kind::metal)
                << row.key << " must be a metal";
        }
        EXPECT_TRUE(comes_to_an_end(id, properties().size())) << row.key;
    }
}

TEST(Table, EndsWithSomethingWornWhereNoneIsNotAllowed) {
    for (const Property& row : properties()) {
        const auto keys = followed(row.initial);
        if (!keys.empty() && !row.may_be_none) {
            EXPECT_FALSE(properties()[property_id(keys.back())].may_be_none) << row.key;
        }
    }
}

}  // namespace
}  // namespace platewright
