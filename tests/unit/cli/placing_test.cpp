// SPDX-License-Identifier: MIT
// What is sewn to a piece is marked on it.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "pattern/marks.h"
#include "pattern/seams.h"
#include "pattern/shapes.h"
#include "pattern/sleeves.h"
#include "tailored.h"

namespace platewright::cli {
namespace {

// A bar of the lance corporal is sewn in at both seams of the upper sleeve, 10 mm above the cuff.
TEST(Placing, MarksReachFromSeamToSeam) {
    const auto work = work_for("", "tannbruck-lance-corporal.yaml");
    ASSERT_TRUE(work);
    const PatternPiece& sleeve = piece(work->sheets.pieces, "coat", "upper sleeve");
    const PatternPiece& mark = piece(work->sheets.pieces, "coat", "rank mark");
    // Rank mark, service mark and the edge of the cuff.
    ASSERT_EQ(sleeve.lines.size(), 3U);
    const Chain& line = sleeve.lines.front();
    for (const Point end : {line.front(), line.back()}) {
        const Crossing seams = crossing(sleeve.outline, end.y);
        EXPECT_NEAR(std::min(end.x - seams.least, seams.greatest - end.x), 0, 0.1);
    }
    EXPECT_NEAR(
        shapes::box(mark.outline).width(), line.back().x - line.front().x + 2 * kMarkEnd, 0.5);
    EXPECT_NEAR(shapes::box(mark.outline).height(), 12, 0.5);
    const PatternPiece& cuff = piece(work->sheets.pieces, "coat", "cuff");
    const double high =
        width_at(cuff, 1) > 0 ? shapes::area(cuff.outline) / shapes::box(cuff.outline).width() : 0;
    EXPECT_NEAR(shapes::box(sleeve.outline).bottom - line[1].y, high + 10, 4);
}

// The marks of the corporal are chevrons: three corners, and as steep as on the flat's half.
TEST(Placing, ChevronsKeepTheirSlant) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& sleeve = piece(pieces, "coat", "upper sleeve");
    ASSERT_EQ(sleeve.lines.size(), 2U);
    const Chain& line = sleeve.lines.front();
    ASSERT_EQ(line.size(), 3U);
    const double rise = std::abs(line[0].y - line[1].y);
    EXPECT_NEAR(rise / (line[1].x - line[0].x), 2 * 0.38, 0.1);
}

TEST(Placing, LapelsAndTheirButtonsLieOnTheForepart) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& fore = piece(pieces, "coat", "forepart");
    const PatternPiece& lapel = piece(pieces, "coat", "lapel");
    EXPECT_EQ(lapel.holes.size(), 7U);
    EXPECT_TRUE(lapel.buttons.empty());
    EXPECT_GE(fore.buttons.size(), 7U);
    for (const PatternPiece& each : pieces) {
        for (const Point button : each.buttons) {
            EXPECT_TRUE(inside({each.outline}, button)) << each.garment << ' ' << each.name;
        }
    }
    // Its upper edge is the neckline.
    const double neck = shapes::box(fore.outline).height() - shapes::box(lapel.outline).height();
    EXPECT_GT(neck, 0);
}

TEST(Placing, HipButtonAndTapesAreMarkedBehind) {
    const auto pieces = pieces_of_a_man();
    EXPECT_EQ(piece(pieces, "coat", "back").buttons.size(), 1U);
    EXPECT_EQ(piece(pieces, "waistcoat", "back").lines.size(), 2U);
}

// Two seams of the sleeve below the folds of the cuff, on the half away from its buttons.
TEST(Placing, CuffIsMarkedForTheSeamsOfTheSleeve) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& cuff = piece(pieces, "coat", "cuff");
    ASSERT_EQ(cuff.notches.size(), 2U);
    const double middle = cuff.lines.front().front().x;
    EXPECT_NEAR(std::abs(middle_of_notch(cuff, 0).x - middle), kHalvesShift, 0.5);
    const bool right = middle_of_notch(cuff, 0).x > middle;
    EXPECT_NE(cuff.buttons.front().x > middle, right);
}

TEST(Placing, WaistbandTellsWhereFallAndSideSeamAre) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& band = piece(pieces, "breeches", "waistband");
    const PatternPiece& hind = piece(pieces, "breeches", "hind leg");
    // And between which marks the hind leg is gathered.
    ASSERT_EQ(band.notches.size(), 4U);
    EXPECT_EQ(band.eyelets.size(), 3U);
    EXPECT_TRUE(band.closes_in_front);
    // What lies behind the second mark takes the top of the hind leg, gathered.
    EXPECT_GT(hind.ease, 20);
    EXPECT_LT(hind.ease, 80);
}

// The forepart's pleat is sewn to the back's.
TEST(Placing, PleatsAreAlikeLong) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& fore = piece(pieces, "coat", "forepart");
    // The edge of the lapel stands behind it.
    ASSERT_GT(fore.lines.size(), 2U);
    const Chain& fold = fore.lines[fore.lines.size() - 2];
    const double hem = crossing(fore.outline, fold.back().y + 3).found
                           ? shapes::box(fore.outline).bottom
                           : fold.back().y;
    // The fold ends on the hem.
    EXPECT_TRUE(inside({fore.outline}, fold.back()));
    EXPECT_FALSE(inside({fore.outline}, fold.back() + Point{0, 3})) << hem;
}

TEST(Placing, ClothIsLaidWithItsNapOneWay) {
    const auto work = work_for("");
    ASSERT_TRUE(work);
    bool lining_turned = false;
    for (const MaterialLine& line : work->materials) {
        for (const LaidPiece& laid : line.lay.pieces) {
            EXPECT_FALSE(line.kind == "cloth" && laid.turned) << line.what;
            lining_turned = lining_turned || (line.kind != "cloth" && laid.turned);
        }
    }
    EXPECT_TRUE(lining_turned);
}

}  // namespace
}  // namespace platewright::cli
