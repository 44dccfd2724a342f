// SPDX-License-Identifier: MIT
// How the pieces of a waistcoat lie on one another.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "pattern/seams.h"
#include "pattern/shapes.h"
#include "tailored.h"

namespace platewright::cli {
namespace {

double from_line(const Chain& line, Point p) {
    double nearest = 1e9;
    for (std::size_t i = 1; i < line.size(); ++i) {
        const Point a = line[i - 1];
        const Point way = line[i] - a;
        const double share = std::clamp(dot(p - a, way) / std::max(1e-9, dot(way, way)), 0.0, 1.0);
        nearest = std::min(nearest, length(a + way * share - p));
    }
    return nearest;
}

TEST(PiecesOfAWaistcoat, TheVentIsMarkedWhereTheMiddleSeamEnds) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& back = piece(pieces, "waistcoat", "back");
    const Rect box = shapes::box(back.outline);
    ASSERT_GE(back.notches.size(), 2U);
    const Point vent = middle_of_notch(back, 1);
    EXPECT_NEAR(vent.x, box.right, 0.5);
    EXPECT_NEAR(box.bottom - vent.y, 90, 6);
    // Below it the edge leaves the middle.
    EXPECT_LT(crossing(back.outline, box.bottom - 12).greatest, box.right - 8);
    ASSERT_EQ(back.remarks.size(), 1U);
    EXPECT_NE(back.remarks.front().find("vent"), std::string::npos);
}

TEST(PiecesOfAWaistcoat, TheFacingIsAsWideEverywhereAndTheLiningBeginsBesideIt) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& fore = piece(pieces, "waistcoat", "forepart");
    const PatternPiece& facing = piece(pieces, "waistcoat", "front facing");
    const PatternPiece& lining = piece(pieces, "waistcoat", "forepart", "lining");
    EXPECT_FALSE(lining.repeats);
    EXPECT_NEAR(area_of(facing) + area_of(lining), area_of(fore), 20);
    // No point of its inner edge is nearer to neck and front than another.
    const Point neck = *std::ranges::min_element(fore.outline, {}, &Point::y);
    const Point corner =
        *std::ranges::max_element(fore.outline, {}, [](Point p) { return p.y - p.x; });
    const Chain front = seam_between(fore.outline, neck, corner);
    int within = 0;
    for (const Point p : facing.outline) {
        // Those on shoulder and hem are on the outline of the forepart.
        if (from_line(fore.outline, p) > 3) {
            EXPECT_NEAR(from_line(front, p), 55, 0.2);
            ++within;
        }
    }
    EXPECT_GT(within, 10);
    // Of the marks only that at the side is on the lining.
    ASSERT_EQ(lining.notches.size(), 1U);
    EXPECT_LT(from_line(lining.outline, middle_of_notch(lining, 0)), 0.5);
}

// Where shoulder and neck meet nothing stands out of either.
TEST(PiecesOfAWaistcoat, ShouldersHaveNoNibs) {
    const auto pieces = pieces_of_a_man();
    for (const char* name : {"forepart", "front facing"}) {
        const Chain& outline = piece(pieces, "waistcoat", name).outline;
        const std::size_t round = outline.size();
        for (std::size_t i = 0; i < round; ++i) {
            const Point in = outline[i] - outline[(i + round - 1) % round];
            const Point out = outline[(i + 1) % round] - outline[i];
            const double turn = std::abs(std::atan2(cross(in, out), dot(in, out)));
            EXPECT_FALSE(turn > 1.2 && length(in) < 1.6 && length(out) < 1.6)
                << name << " at " << outline[i].x << ", " << outline[i].y;
        }
    }
}

TEST(PiecesOfAWaistcoat, FrontsAreStiffenedAsFarAsTheyAreButtoned) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& fore = piece(pieces, "waistcoat", "forepart");
    const PatternPiece& stiff = piece(pieces, "waistcoat", "front canvas", "interlining");
    EXPECT_EQ(stiff.number, 2);
    EXPECT_TRUE(stiff.at_line);
    EXPECT_EQ(stiff.cut.size(), stiff.outline.size());
    const double last = std::ranges::max_element(fore.buttons, {}, &Point::y)->y;
    EXPECT_GT(shapes::box(stiff.outline).height(), last);
    EXPECT_LT(shapes::box(stiff.outline).height(), last + 40);
    EXPECT_TRUE(piece(pieces, "waistcoat", "front canvas", "lining").outline.empty());
}

}  // namespace
}  // namespace platewright::cli
