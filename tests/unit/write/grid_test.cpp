// SPDX-License-Identifier: MIT
// Rounding and thinning paths.
#include "write/grid.h"

#include <gtest/gtest.h>

#include <cmath>

namespace platewright {
namespace {

TEST(GridFor, KeepsFurnitureInMmAndFiguresTrueToAHundredth) {
    EXPECT_EQ(grid_for(1).scale(), 1);
    EXPECT_EQ(grid_for(1).unit, 1);
    for (double factor = 0.01; factor < 20; factor *= 1.1) {
        const Grid grid = grid_for(factor);
        EXPECT_NEAR(grid.scale() * grid.unit, factor, 1e-12);
        EXPECT_LE(0.5 / grid.per_mm * factor, 0.01 + 1e-12);
    }
}

TEST(OnGrid, RoundsToWholeSteps) {
    EXPECT_EQ(on_grid(polygon({{0.004, -0.001}, {1.2345, 0}, {1, 3.006}}), {100, 2, 1}),
              polygon({{0, 0}, {123, 0}, {100, 301}}));
}

TEST(OnGrid, LeavesOutPointsOnALine) {
    Path path;
    path.move_to({0, 0});
    for (int i = 1; i <= 30; ++i) {
        path.line_to({i * 1.0, i * 2.0});
    }
    path.line_to({0, 60});
    path.close();
    EXPECT_EQ(on_grid(path, {10, 1, 1}), polygon({{0, 0}, {300, 600}, {0, 600}}));
}

TEST(OnGrid, KeepsAPointThatTurnsBack) {
    Path path;
    path.move_to({0, 0});
    path.line_to({10, 0});
    path.line_to({5, 0});
    EXPECT_EQ(on_grid(path, {1, 0, 1}), path);
}

TEST(OnGrid, NeverMovesTheLineByMoreThanAStep) {
    Path circle;
    circle.move_to({50, 0});
    for (int i = 1; i <= 2000; ++i) {
        const double turn = i * 2 * 3.14159265358979 / 2000;
        circle.line_to({50 * std::cos(turn), 50 * std::sin(turn)});
    }
    const Path thinned = on_grid(circle, {10, 1, 1});
    EXPECT_LT(thinned.points.size(), 200U);
    for (std::size_t i = 1; i < thinned.points.size(); ++i) {
        const Point middle = (thinned.points[i - 1] + thinned.points[i]) * 0.5;
        EXPECT_NEAR(length(middle), 500, 1.3);
    }
}

TEST(OnGrid, MakesLinesOfFlatCurves) {
    Path path;
    path.move_to({0, 0});
    path.cubic_to({10, 0.01}, {20, -0.01}, {30, 0});
    path.cubic_to({40, 10}, {50, 10}, {60, 0});
    const Path found = on_grid(path, {10, 1, 1});
    EXPECT_EQ(found.verbs, (std::vector{Path::Verb::move, Path::Verb::line, Path::Verb::cubic}));
}

TEST(OnGrid, KeepsDotsAndEmptyPaths) {
    Path dot;
    dot.move_to({1, 1});
    dot.line_to({1.001, 1});
    EXPECT_EQ(on_grid(dot, {1, 0, 1}).points.size(), 2U);
    EXPECT_TRUE(on_grid(Path(), {1, 0, 1}).empty());
}

}  // namespace
}  // namespace platewright
