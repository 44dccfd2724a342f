// SPDX-License-Identifier: MIT
// Turns, and where a straight line meets an edge.
#include "base/geometry.h"

#include <gtest/gtest.h>

#include <numbers>

namespace platewright {
namespace {

TEST(Turn, IsTheSameToEitherSideWhateverTheLengths) {
    EXPECT_NEAR(turn({5, 0}, {0, 2}), std::numbers::pi / 2, 1e-12);
    EXPECT_NEAR(turn({5, 0}, {0, -2}), std::numbers::pi / 2, 1e-12);
    EXPECT_NEAR(turn({1, 1}, {-3, -3}), std::numbers::pi, 1e-12);
    EXPECT_NEAR(turn({1, 1}, {7, 7}), 0, 1e-12);
}

TEST(Meeting, TellsHowFarAlongAndBehind) {
    EXPECT_NEAR(*meeting({1, 2}, {1, 0}, {5, 0}, {5, 10}), 4, 1e-12);
    EXPECT_NEAR(*meeting({1, 2}, {1, 0}, {0, 0}, {-2, 4}), -2, 1e-12);
}

TEST(Meeting, IsNothingWhereTheLinePassesTheEdgeBy) {
    EXPECT_FALSE(meeting({1, 2}, {1, 0}, {5, 3}, {5, 10}));
    EXPECT_FALSE(meeting({1, 2}, {1, 0}, {3, 4}, {9, 4}));
}

TEST(Eased, IsSlowAtBothEnds) {
    EXPECT_DOUBLE_EQ(eased(0), 0);
    EXPECT_DOUBLE_EQ(eased(0.5), 0.5);
    EXPECT_DOUBLE_EQ(eased(1), 1);
    EXPECT_LT(eased(0.1), 0.05);
    EXPECT_GT(eased(0.9), 0.95);
}

}  // namespace
}  // namespace platewright
