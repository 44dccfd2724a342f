// SPDX-License-Identifier: MIT
// What turns one man into another.
#include "resolve/change.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "support.h"

namespace platewright {
namespace {

using Lines = std::vector<std::string>;

Uniform man(const std::string& lines) {
    const Outcome outcome = resolved("plate: A\n" + lines);
    EXPECT_TRUE(outcome.uniform) << outcome.problem();
    return outcome.uniform.value_or(Uniform{});
}

/// The changes as `deed thing`, with ` on coat` where they come or go with it.
Lines changes(const std::string& before, const std::string& after) {
    Lines lines;
    for (const Change& each : compare(man(before), man(after)).changes) {
        std::string line(deed_name(each.deed));
        line += " " + std::string(each.thing);
        line += each.comes_with.empty() ? "" : " on " + std::string(each.comes_with);
        lines.push_back(line);
    }
    return lines;
}

bool stays(const std::string& before, const std::string& after, std::string_view thing) {
    const Comparison found = compare(man(before), man(after));
    return std::ranges::find(found.stays, thing, &Kept::thing) != found.stays.end();
}

TEST(Compare, FindsNothingBetweenAManAndHimself) {
    const Comparison found = compare(man("rank: sergeant\n"), man("rank: sergeant\n"));
    EXPECT_TRUE(found.changes.empty());
    EXPECT_FALSE(found.stays.empty());
}

TEST(Compare, APromotionNeedsLaceAndNoNewCoat) {
    EXPECT_EQ(changes("rank: private\n", "rank: sergeant\n"), Lines{"sew on rank marks"});
    EXPECT_TRUE(stays("rank: private\n", "rank: sergeant\n", "coat"));
    EXPECT_EQ(changes("rank: sergeant\n", "rank: private\n"), Lines{"take off rank marks"});
}

TEST(Compare, MoreOfTheSameIsSewnOnAndFewerTakenOff) {
    const std::string one = "marks: {shape: bars, number: 1}\n";
    const std::string two = "marks: {shape: bars, number: 2}\n";
    EXPECT_EQ(changes(one, two), Lines{"sew on rank marks"});
    EXPECT_EQ(changes(two, one), Lines{"take off rank marks"});
    const Comparison found = compare(man(one), man(two));
    EXPECT_EQ(found.changes[0].properties, std::vector{property_id("marks.number")});
    EXPECT_EQ(changes("cuffs: {buttons: 3}\n", "cuffs: {buttons: 4}\n"),
              Lines{"sew on cuff buttons"});
}

TEST(Compare, MarksOfAnotherKindComeOffFirst) {
    EXPECT_EQ(changes("marks: {shape: bars, number: 1}\n", "marks: {shape: slanted, number: 1}\n"),
              (Lines{"sew on rank marks", "take off rank marks"}));
}

TEST(Compare, SewnThingsAreSwappedOnTheOldCoat) {
    EXPECT_EQ(changes("", "lapels: white\ncuffs: {shape: slashed}\ncollar: as lapels.cloth\n"),
              (Lines{"swap lapels", "swap collar", "swap cuffs"}));
    EXPECT_EQ(changes("", "buttons: white\n").front(), "swap shoe buckles");
}

TEST(Compare, ANewCoatComesWithWhatIsOnIt) {
    EXPECT_EQ(changes("lapels: red\nmarks: {shape: bars}\n",
                      "coat: red\nlapels: white\ncollar: red\nstraps: none\n"),
              (Lines{"buy coat",
                     "take off shoulder straps on coat",
                     "take off rank marks on coat",
                     "swap lapels on coat",
                     "swap cuffs on coat",
                     "lay aside coat"}));
    const Comparison found = compare(man(""), man("coat: red\nstraps: dark blue\n"));
    const auto collar = std::ranges::find(found.stays, "collar", &Kept::thing);
    ASSERT_NE(collar, found.stays.end());
    EXPECT_EQ(collar->on_new, "coat");
}

TEST(Compare, AnotherCutOfLapelsIsAnotherCoat) {
    EXPECT_EQ(changes("", "lapels: {shape: half}\n"),
              (Lines{"buy coat", "swap lapels on coat", "lay aside coat"}));
}

TEST(Compare, ThingsAreTakenUpAndLaidAside) {
    EXPECT_EQ(changes("", "sword: {worn: hanger}\n"), Lines{"buy sword"});
    EXPECT_EQ(changes("musket: beside\n", ""),
              (Lines{"lay aside musket", "lay aside musket sling on musket"}));
    EXPECT_EQ(changes("", "hat: {plume: white}\n"), Lines{"sew on plume"});
    EXPECT_EQ(changes("", "belts: black\n"), Lines{"swap belts"});
}

TEST(Compare, WhatIsNotSeenDoesNotChange) {
    EXPECT_EQ(changes("", "marks: {cloth: red, width: 20 mm}\nfigure: {hair: powdered}\n"),
              Lines{});
    EXPECT_EQ(changes("", "facings: red\nlace: white\n"), Lines{});
    EXPECT_EQ(
        changes("marks: {shape: bars, width: 12 mm}\n", "marks: {shape: bars, width: 1.2 cm}\n"),
        Lines{});
}

std::vector<std::string_view> renewed(const std::string& before,
                                      const std::string& after,
                                      std::string_view thing) {
    const Comparison found = compare(man(before), man(after));
    const auto kept = std::ranges::find(found.stays, thing, &Kept::thing);
    return kept == found.stays.end() ? std::vector<std::string_view>{"not kept"} : kept->renewed;
}

TEST(Compare, WhatStaysTellsWhatOnItDoesNot) {
    using Things = std::vector<std::string_view>;
    EXPECT_EQ(renewed("", "lapels: white\n", "coat"), (Things{"lapels", "collar", "cuffs"}));
    EXPECT_EQ(renewed("", "lapels: white\n", "waistcoat"), Things{});
    EXPECT_EQ(renewed("", "buttons: white\n", "waistcoat"), Things{"buttons"});
    EXPECT_EQ(renewed("", "buttons: white\n", "garters"), Things{"buckles"});
    EXPECT_FALSE(stays("", "buttons: white\n", "waistcoat buttons"));
    EXPECT_FALSE(stays("", "buttons: white\n", "lapel buttons"));
    EXPECT_TRUE(stays("", "lapels: white\n", "waistcoat buttons"));
}

TEST(SharedThings, PassAmongThoseWhoHaveThemAlike) {
    const Uniform red = man("waistcoat: red\n");
    const Uniform white = man("waistcoat: white\n");
    const Uniform white_metal = man("waistcoat: white\nbuttons: white\n");
    const auto parties = [](const std::vector<const Uniform*>& men, std::string_view thing) {
        const std::vector<Shared> all = shared_things(men);
        const auto found = std::ranges::find(all, thing, &Shared::thing);
        return found == all.end() ? std::vector<std::vector<std::size_t>>{} : found->parties;
    };
    using Parties = std::vector<std::vector<std::size_t>>;
    EXPECT_EQ(parties({&red, &white, &red, &white}, "waistcoat"), (Parties{{0, 2}, {1, 3}}));
    EXPECT_EQ(parties({&red, &white, &white}, "waistcoat"), (Parties{{1, 2}}));
    EXPECT_EQ(parties({&white, &white_metal}, "waistcoat"), Parties{});
    EXPECT_EQ(parties({&white, &white_metal}, "breeches"), (Parties{{0, 1}}));
}

TEST(NumberOf, CountsBothSides) {
    const Uniform one =
        man("marks: {shape: bars, number: 2}\nservice: {number: 3}\nrings: {number: 1}\n"
            "waistcoat: {cut: double, buttons: 6}\n");
    EXPECT_EQ(number_of(one, property_id("marks.cloth")), 4);
    EXPECT_EQ(number_of(one, property_id("service.cloth")), 3);
    EXPECT_EQ(number_of(one, property_id("rings.cloth")), 2);
    EXPECT_EQ(number_of(one, property_id("lapels.buttons")), 14);
    EXPECT_EQ(number_of(one, property_id("waistcoat.buttons")), 12);
    EXPECT_EQ(number_of(one, property_id("coat.cloth")), 0);
    EXPECT_EQ(number_of(man("coat: {cut: none}\n"), property_id("lapels.buttons")), 0);
}

}  // namespace
}  // namespace platewright
