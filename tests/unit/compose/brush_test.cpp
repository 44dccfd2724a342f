// SPDX-License-Identifier: MIT
// Tapered lines, bands and hatching.
#include "compose/brush.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace platewright {
namespace {

const Curve kDown(std::vector<Point>{{0, 0}, {0, 200}});

TEST(Tapered, IsFullInTheMiddleAndThinAtTheEnds) {
    const auto chain = outlines(tapered(kDown, 4, 0.2));
    Rect box;
    for (const Point p : chain.front()) {
        box.include(p);
    }
    EXPECT_NEAR(box.width(), 4, 0.1);
    EXPECT_NEAR(box.height(), 200, 1e-6);
    EXPECT_TRUE(inside(chain, {1.8, 100}));
    EXPECT_FALSE(inside(chain, {1.0, 2}));
}

TEST(Band, LiesOnTheSideAskedFor) {
    EXPECT_NEAR(band(kDown, 20, Side::right).bounds().left, -20, 1e-6);
    EXPECT_NEAR(band(kDown, 20, Side::right).bounds().right, 0, 1e-6);
    EXPECT_NEAR(band(kDown, 20, Side::left).bounds().right, 20, 1e-6);
    EXPECT_NEAR(band(kDown, 20, Side::both).bounds().left, -10, 1e-6);
}

Zone barrel(bool mirrored) {
    Zone zone;
    const double k = mirrored ? -1 : 1;
    zone.path = clockwise(polygon({{k * 10, 0}, {k * 110, 0}, {k * 110, 200}, {k * 10, 200}}));
    zone.axis = Curve(std::vector<Point>{{k * 60, 0}, {k * 60, 200}});
    zone.bulge = 12;
    return zone;
}

/// The light is never mirrored: on either arm the hatching lies on the right.
TEST(Hatch, StartsAtTheEdgeAwayFromTheLightOnBothSides) {
    for (const bool mirrored : {false, true}) {
        const double dark_edge = mirrored ? -10 : 110;
        const auto strokes = hatch(barrel(mirrored), {5, 1, 0, 0.3});
        ASSERT_GT(strokes.size(), 20U);
        for (const HatchStroke& stroke : strokes) {
            // The very edge is free: light is thrown back there.
            EXPECT_LT(stroke.begin.x, dark_edge);
            EXPECT_GT(stroke.begin.x, dark_edge - 2.5);
            EXPECT_LT(stroke.end.x, stroke.begin.x - 2);
            // Every fourth runs on into the half shade.
            EXPECT_GT(stroke.end.x, dark_edge - 70);
        }
    }
}

TEST(Hatch, SagsInTheMiddleOfTheForm) {
    for (const HatchStroke& stroke : hatch(barrel(false), {5, 1, 0, 0.3})) {
        EXPECT_GT(stroke.end.y, stroke.begin.y);
    }
}

/// A stroke runs into a fold and ends there; what lies before it is left as it is.
TEST(Hatch, EndsAtAFold) {
    const auto strokes = hatch(barrel(false), {5, 1, 0, 0.3});
    const Curve fold(std::vector<Point>{{100, -10}, {100, 300}});
    const Curve elsewhere(std::vector<Point>{{20, -10}, {20, 300}});
    std::size_t cut = 0;
    for (const HatchStroke& stroke : strokes) {
        EXPECT_EQ(stroke.up_to(elsewhere)->shape, stroke.shape);
        const auto left = stroke.up_to(fold);
        if (left && stroke.end.x < 100) {
            EXPECT_GT(left->end.x, 99.9);
            EXPECT_EQ(left->begin, stroke.begin);
            ++cut;
        }
    }
    EXPECT_GT(cut, 20U);
    EXPECT_FALSE(strokes.front().up_to(Curve(std::vector<Point>{{106, -10}, {106, 300}})));
}

TEST(Hatch, NoTwoNeighboursAreAlike) {
    const auto strokes = hatch(barrel(false), {5, 1, 0, 0.3});
    for (std::size_t i = 1; i < strokes.size(); ++i) {
        const auto long_is = [](const HatchStroke& stroke) {
            return length(stroke.end - stroke.begin);
        };
        EXPECT_GT(std::abs(long_is(strokes[i]) - long_is(strokes[i - 1])), 0.5);
    }
}

TEST(Hatch, FallsAlongTheAxisBesideTheDarkEdge) {
    Zone zone = barrel(false);
    zone.falls = true;
    const auto strokes = hatch(zone, {5, 1, 0, 0.3});
    ASSERT_GT(strokes.size(), 5U);
    for (const HatchStroke& stroke : strokes) {
        EXPECT_GT(stroke.end.y, stroke.begin.y + 2);
        EXPECT_LT(std::abs(stroke.end.x - stroke.begin.x), 15);
        EXPECT_GT(stroke.begin.x, 110 - 57);
        EXPECT_LT(stroke.begin.x, 110);
    }
}

TEST(Hatch, NeedsAnAxis) {
    Zone zone = barrel(false);
    zone.axis.reset();
    EXPECT_TRUE(hatch(zone, {5, 1, 0, 0.3}).empty());
}

TEST(Hatch, AVeryLongAxisIsBounded) {
    Zone zone = barrel(false);
    zone.axis = Curve(std::vector<Point>{{60, -90000}, {60, 90000}});
    EXPECT_LT(hatch(zone, {0.01, 1, 0, 0.3}).size(), 2000U);
}

/// On either arm the light lies left of the middle, within the form, each patch within the last.
TEST(Glow, LiesTowardsTheLightOnBothSides) {
    for (const bool mirrored : {false, true}) {
        const std::vector<Path> patches = glow(barrel(mirrored), 5);
        ASSERT_EQ(patches.size(), 5U);
        const double left = mirrored ? -110 : 10;
        Rect last = patches.front().bounds().grown(1);
        for (const Path& patch : patches) {
            const Rect box = patch.bounds();
            EXPECT_GT(box.left, left);
            EXPECT_LT(box.right, left + 70);
            EXPECT_LT((box.left + box.right) / 2, left + 45);
            EXPECT_LT(box.width(), last.width());
            EXPECT_LT(box.height(), last.height());
            last = box;
        }
    }
}

TEST(Glow, NeedsAnAxis) {
    Zone zone = barrel(false);
    zone.axis.reset();
    EXPECT_TRUE(glow(zone, 5).empty());
}

}  // namespace
}  // namespace platewright
