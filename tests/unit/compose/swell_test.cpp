// SPDX-License-Identifier: MIT
// Contours that swell in the shade and open in the light.
#include "compose/swell.h"

#include <gtest/gtest.h>

#include <cmath>

#include "compose/curve.h"

namespace platewright {
namespace {

const Path kSquare = rectangle({0, 0, 200, 200});
const std::vector<Chain> kWithin = outlines(kSquare);

/// How broad the line is across an upright edge at that height, in mm.
double breadth_at(const std::vector<Chain>& line, double edge, double height) {
    constexpr double step = 0.02;
    double broad = 0;
    for (double x = edge - 6; x < edge + 6; x += step) {
        for (const Chain& each : line) {
            if (inside({each}, {x, height})) {
                broad += step;
                break;
            }
        }
    }
    return broad;
}

struct Breadths {
    double least = 1e9;
    double most = 0;
};

Breadths along(const std::vector<Chain>& line, double edge) {
    Breadths found;
    for (double height = 20.3; height < 180; height += 2) {
        const double broad = breadth_at(line, edge, height);
        found.least = std::min(found.least, broad);
        found.most = std::max(found.most, broad);
    }
    return found;
}

TEST(Swelling, IsBroadInTheShadeAndOpensInTheLight) {
    const auto line = outlines(swelling(kSquare, kWithin, 3));
    const Breadths lit = along(line, 0);
    const Breadths shaded = along(line, 200);
    EXPECT_LT(lit.least, 0.1);
    EXPECT_GT(lit.most, 0.4);
    EXPECT_LT(lit.most, 1.2);
    EXPECT_GT(shaded.least, 1);
    EXPECT_GT(shaded.most, 1.6);
    EXPECT_LE(shaded.most, 3.5);
}

TEST(Swelling, LiesMoreWithinTheEdgeThanOutsideWhicheverWayItRuns) {
    for (const Path& square : {kSquare, polygon({{0, 0}, {0, 200}, {200, 200}, {200, 0}})}) {
        Rect box;
        for (const Chain& each : outlines(swelling(square, outlines(square), 3))) {
            for (const Point p : each) {
                box.include(p);
            }
        }
        EXPECT_GT(box.right, 200.3);
        EXPECT_LT(box.right, 201.7);
        EXPECT_GT(box.left, -0.6);
    }
}

/// An edge drawn for itself, a millimetre off the outline it follows, is lit and shaded like it.
TEST(Swelling, AnEdgeBesideTheOutlineKnowsItsSide) {
    for (const double beside : {-1.0, 1.0}) {
        Path lit;
        lit.move_to({beside, 0});
        lit.line_to({beside, 200});
        Path shaded;
        shaded.move_to({200 + beside, 0});
        shaded.line_to({200 + beside, 200});
        EXPECT_LT(along(outlines(swelling(lit, kWithin, 3)), beside).most, 1.2);
        EXPECT_GT(along(outlines(swelling(shaded, kWithin, 3)), 200 + beside).most, 1.6);
    }
}

TEST(Swelling, IsTheSameEveryTime) {
    EXPECT_EQ(swelling(kSquare, kWithin, 3), swelling(kSquare, kWithin, 3));
}

TEST(Swelling, ACoastLineHasABoundedNumberOfPieces) {
    const Path vast = rectangle({0, 0, 1e9, 1e9});
    EXPECT_LT(swelling(vast, outlines(vast), 3).points.size(), 20'000U);
    EXPECT_TRUE(swelling({}, {}, 3).empty());
}

}  // namespace
}  // namespace platewright
