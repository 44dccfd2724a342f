// SPDX-License-Identifier: MIT
// Area and direction of paths.
#include "base/outline.h"

#include <gtest/gtest.h>

#include <numbers>

namespace platewright {
namespace {

TEST(SignedArea, IsPositiveClockwiseOnThePage) {
    EXPECT_DOUBLE_EQ(signed_area(polygon({{0, 0}, {4, 0}, {4, 3}, {0, 3}})), 12);
    EXPECT_DOUBLE_EQ(signed_area(polygon({{0, 0}, {0, 3}, {4, 3}, {4, 0}})), -12);
    EXPECT_DOUBLE_EQ(signed_area(Path()), 0);
}

TEST(SignedArea, KnowsCurves) {
    EXPECT_NEAR(std::abs(signed_area(ellipse({10, 20}, 3, 2))), std::numbers::pi * 6, 0.02);
}

TEST(SignedArea, ClosesWhatIsOpenAndAddsUpStretches) {
    Path path;
    path.move_to({0, 0});
    path.line_to({2, 0});
    path.line_to({2, 2});
    EXPECT_DOUBLE_EQ(signed_area(path), 2);
    path.move_to({10, 10});
    path.line_to({10, 12});
    path.line_to({12, 12});
    path.close();
    EXPECT_DOUBLE_EQ(signed_area(path), 0);
}

TEST(Reversed, TurnsTheAreaRoundAndKeepsThePlace) {
    const Path path = ellipse({1, 2}, 3, 4);
    const Path back = reversed(path);
    EXPECT_NEAR(signed_area(back), -signed_area(path), 1e-9);
    EXPECT_EQ(back.bounds().left, path.bounds().left);
    EXPECT_EQ(reversed(back), path);
}

TEST(Reversed, StartsAgainAfterAClosing) {
    Path path;
    path.move_to({0, 0});
    path.line_to({4, 0});
    path.line_to({4, 3});
    path.close();
    path.line_to({-4, 0});
    path.line_to({-4, -3});
    path.close();
    EXPECT_DOUBLE_EQ(signed_area(path), 12);
    EXPECT_DOUBLE_EQ(signed_area(reversed(path)), -12);
}

}  // namespace
}  // namespace platewright
