// SPDX-License-Identifier: MIT
// The choice among places of words: nothing meets, and others make way.
#include "layout/callout_choice.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace platewright::sheet {
namespace {

/// Words 20 mm wide whose level line ends 30 mm to the right of them.
CalloutOption at(double x, double y, double cost) {
    PlacedCallout placed;
    placed.on_left = true;
    placed.lines = {"words"};
    placed.box = {x, y - 1.5, x + 20, y + 1.5};
    placed.start = {x + 21, y};
    placed.bend = {x + 23, y};
    placed.turn = placed.bend;
    placed.site = {x + 50, y};
    return {placed, cost};
}

TEST(CalloutChoice, TakesTheCheapestOfWhatIsFree) {
    const auto chosen = choose_callouts({{at(0, 10, 1), at(0, 40, 3)}, {at(0, 20, 1)}}, 3);
    ASSERT_TRUE(chosen[0] && chosen[1]);
    EXPECT_EQ(chosen[0]->site.y, 10);
}

TEST(CalloutChoice, MovesAnotherThatIsInTheWay) {
    // The second has but one place, which the first took.
    const auto chosen = choose_callouts({{at(0, 10, 1), at(0, 40, 3)}, {at(0, 10.5, 1)}}, 3);
    ASSERT_TRUE(chosen[0] && chosen[1]);
    EXPECT_EQ(chosen[0]->site.y, 40);
}

TEST(CalloutChoice, LeavesOutWhatHasNoPlace) {
    const auto chosen = choose_callouts({{at(0, 10, 1)}, {at(0, 10, 1)}, {}}, 3);
    EXPECT_EQ(std::ranges::count_if(chosen, [](const auto& one) { return one.has_value(); }), 1);
}

TEST(CalloutChoice, SharesOutAmongRegions) {
    // All are a little cheaper in the first region; half of them go to the second for evenness.
    std::vector<std::vector<CalloutOption>> options;
    for (int i = 0; i < 6; ++i) {
        options.push_back({at(0, 10 + 10 * i, 1), at(200, 10 + 10 * i, 1.5 + i)});
        options.back().back().region = 1;
    }
    const auto chosen = share_out_callouts(options, 2, 3);
    EXPECT_EQ(std::ranges::count_if(chosen, [](const auto& one) { return one->box.left < 100; }),
              3);
}

TEST(CalloutChoice, KnowsWhenLinesRunThroughWords) {
    const CalloutOption words = at(30, 12, 0);
    EXPECT_TRUE(callouts_meet(at(0, 12.5, 0).placed, words.placed, 3));
    EXPECT_FALSE(callouts_meet(at(0, 20, 0).placed, words.placed, 3));
    PlacedCallout slanted = at(0, 0, 0).placed;
    slanted.site = {40, 30};
    EXPECT_TRUE(callouts_meet(slanted, words.placed, 3));
    EXPECT_TRUE(callouts_meet(words.placed, slanted, 3));
}

}  // namespace
}  // namespace platewright::sheet
