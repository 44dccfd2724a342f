// SPDX-License-Identifier: MIT
// Path data.
#include "write/svg_path.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace platewright {
namespace {

constexpr Grid kTenths = {10, 1, 1};
constexpr Grid kHundredths = {100, 2, 1};

TEST(SvgPathData, IsRelativeAndShort) {
    EXPECT_EQ(
        svg_path_data(polygon({{10, 10}, {12.5, 10}, {12.5, 11}, {10.25, 11.75}}), kHundredths),
        "m10 10h2.5v1l-2.25.75z");
}

TEST(SvgPathData, JoinsNumbersWhereTheyPart) {
    Path path;
    path.move_to({0.5, -0.5});
    path.line_to({1, 0.25});
    path.line_to({3, 1});
    EXPECT_EQ(svg_path_data(path, kHundredths), "m.5-.5.5.75 2 .75");
}

TEST(SvgPathData, SaysSmoothCurvesShorter) {
    Path path;
    path.move_to({0, 0});
    path.cubic_to({1, 0}, {2, 1}, {2, 2});
    path.cubic_to({2, 3}, {3, 4}, {4, 4});
    path.cubic_to({4, 3}, {3, 2}, {2, 2});
    EXPECT_EQ(svg_path_data(path, kHundredths), "m0 0c1 0 2 1 2 2s1 2 2 2c0-1-1-2-2-2");
}

TEST(SvgPathData, NeverTakesACornerForASmoothJoin) {
    Path path;
    path.move_to({0, 0});
    path.line_to({5, 0});
    path.cubic_to({5, 0}, {6, 1}, {6, 2});
    EXPECT_EQ(svg_path_data(path, kTenths), "m0 0h5c0 0 1 1 1 2");
}

TEST(SvgPathData, RoundingDoesNotAddUp) {
    Path path;
    path.move_to({0, 0});
    for (int i = 1; i <= 100; ++i) {
        path.line_to({i * 0.34, i % 2 == 0 ? 0.0 : 5.0});
    }
    const std::string data = svg_path_data(path, kTenths);
    EXPECT_EQ(data.substr(0, 25), "m0 0 .3 5 .4-5 .3 5 .4-5 ");
    // 100 steps of 3 or 4 tenths come to 34.0 if 40 of them are of 4.
    EXPECT_EQ(std::count(data.begin(), data.end(), '3'), 60);
    EXPECT_EQ(std::count(data.begin(), data.end(), '4'), 40);
}

TEST(SvgPathData, StartsEachStretchFromTheLast) {
    Path path = polygon({{0, 0}, {1, 0}, {1, 1}});
    path.move_to({5, 5});
    path.line_to({6, 6});
    EXPECT_EQ(svg_path_data(path, kTenths), "m0 0h1v1zm5 5 1 1");
}

TEST(SvgPathData, KeepsADot) {
    Path path;
    path.move_to({5, 5});
    path.line_to({5, 5});
    EXPECT_EQ(svg_path_data(path, kTenths), "m5 5h0");
    EXPECT_EQ(svg_path_data(Path(), kTenths), "");
}

}  // namespace
}  // namespace platewright
