// SPDX-License-Identifier: MIT
// Sleeves go into the hole of the arm and into their cuffs.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "pattern/draft.h"
#include "pattern/seams.h"
#include "pattern/shapes.h"
#include "tailored.h"

namespace platewright::cli {
namespace {

TEST(PiecesOfAMan, SleeveHeadTellsItsEase) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& upper = piece(pieces, "coat", "upper sleeve");
    EXPECT_NEAR(upper.ease, 25, 0.5);
    // At the shoulder, halfway behind and before it, and twice at the elbow.
    EXPECT_EQ(upper.notches.size(), 5U);
}

// Measured round the outlines themselves: both halves of the sleeve, forepart and back.
TEST(PiecesOfAMan, SleeveHeadIsAsMuchLongerThanItsHoleAsItSays) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& fore = piece(pieces, "coat", "forepart");
    const PatternPiece& back = piece(pieces, "coat", "back");
    const PatternPiece& upper = piece(pieces, "coat", "upper sleeve");
    const PatternPiece& under = piece(pieces, "coat", "under sleeve");
    const auto farthest = [](const Chain& outline, auto&& how_far) {
        return *std::ranges::max_element(outline, {}, how_far);
    };
    const double before =
        length_between(fore.outline,
                       farthest(fore.outline, [](Point p) { return p.y < 60 ? p.x : -1e6; }),
                       farthest(fore.outline, [](Point p) { return p.x > 280 ? -p.y : -1e6; }));
    const double behind = length_between(
        back.outline,
        farthest(back.outline, [](Point p) { return p.y < 140 ? -p.x - 0.8 * p.y : -1e6; }),
        farthest(back.outline, [](Point p) { return -p.x; }));
    const Point hind = *std::ranges::min_element(under.outline, {}, &Point::y);
    const Point front = farthest(under.outline, [](Point p) { return p.x < 20 ? -p.y : -1e6; });
    const double hollow = length_between(under.outline, front, hind);
    // The upper half's corners are as far above its hem.
    const Point crown = *std::ranges::min_element(upper.outline, {}, &Point::y);
    const auto corner = [&](Point of_under, double way) {
        const double seam =
            length_between(under.outline, of_under, outer_corner(under.outline, way));
        return point_between(upper.outline, outer_corner(upper.outline, way), crown, seam);
    };
    const double head = length_between(upper.outline, corner(front, -1), crown) +
                        length_between(upper.outline, crown, corner(hind, 1));
    EXPECT_NEAR(head + hollow - before - behind, upper.ease, 6);
    EXPECT_NEAR(upper.ease, 25, 0.5);
}

// The cuff goes round the sleeve, above as below.
TEST(PiecesOfAMan, SleevesGoIntoTheirCuffs) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& cuff = piece(pieces, "coat", "cuff");
    const double high = shapes::box(cuff.outline).bottom - 12;
    double round = 0;
    for (const char* half : {"upper sleeve", "under sleeve"}) {
        const PatternPiece& sleeve = piece(pieces, "coat", half);
        round += width_at(sleeve, shapes::box(sleeve.outline).bottom - high);
    }
    EXPECT_LT(round, width_at(cuff, 14));
}

}  // namespace
}  // namespace platewright::cli
