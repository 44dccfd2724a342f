// SPDX-License-Identifier: MIT
// How the pieces of breeches and gaiters open and close.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "pattern/seams.h"
#include "pattern/shapes.h"
#include "tailored.h"

namespace platewright::cli {
namespace {

TEST(PiecesOfBreeches, AFallIsCutInOneWithTheForeLegsAndBearersLieBehind) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& leg = piece(pieces, "breeches", "fore leg");
    const PatternPiece& bearer = piece(pieces, "breeches", "fall bearer");
    EXPECT_TRUE(piece(pieces, "breeches", "fall").outline.empty());
    // The slit beside the fall, and the pocket's mouth.
    ASSERT_EQ(leg.slits.size(), 2U);
    const Chain& slit = leg.slits.front();
    // From the edge down into the leg.
    EXPECT_NEAR(
        slit.front().y, crossing(leg.outline, slit.front().y).found ? slit.front().y : 0, 1);
    EXPECT_TRUE(inside({leg.outline}, slit.back()));
    EXPECT_NEAR(length_of(slit), 175, 20);
    // The bearer is as wide as half the fall and its lap, and carries the button under its hole.
    const Rect box = shapes::box(bearer.outline);
    ASSERT_EQ(bearer.lines.size(), 1U);
    EXPECT_NEAR(bearer.lines.front().front().x, 25, 0.01);
    ASSERT_EQ(bearer.buttons.size(), 1U);
    const auto fall_hole = std::ranges::find_if(
        leg.holes, [&](const auto& hole) { return hole.first.y < slit.back().y; });
    ASSERT_NE(fall_hole, leg.holes.end());
    const double from_slit = slit.front().x - fall_hole->first.x;
    EXPECT_NEAR(box.right - bearer.buttons.front().x, from_slit + 12, 3);
}

TEST(PiecesOfBreeches, ABearerReachesBelowTheFootOfTheSlitAndItsCornerIsSquare) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& leg = piece(pieces, "breeches", "fore leg");
    const PatternPiece& bearer = piece(pieces, "breeches", "fall bearer");
    const Rect box = shapes::box(bearer.outline);
    const Chain& slit = leg.slits.front();
    const Point corner =
        *std::ranges::max_element(bearer.outline, {}, [](Point p) { return p.x - p.y; });
    EXPECT_NEAR(corner.x, box.right, 0.1);
    const double within = slit.back().x - slit.front().x;
    const Crossing foot = crossing(bearer.outline, corner.y + slit.back().y - slit.front().y);
    EXPECT_NEAR(foot.greatest, box.right + within, 2);
    EXPECT_NEAR(box.bottom - corner.y, slit.back().y - slit.front().y - 8 + 22, 3);
    // There it covers the slit from both sides.
    EXPECT_LT(crossing(bearer.outline, box.bottom - 0.5).least, foot.greatest - 20);
    const PatternPiece& facing = piece(pieces, "breeches", "slit facing");
    EXPECT_EQ(facing.number, 2);
    EXPECT_NEAR(shapes::box(facing.outline).height(), box.bottom - corner.y - 2, 1);
}

/// The angle within the outline at its corner nearest to that place, in degrees.
double angle_at(const Chain& outline, Point near) {
    const auto at =
        std::ranges::min_element(outline, {}, [&](Point p) { return dot(p - near, p - near); });
    constexpr double reach = 4;
    const Point corner = *at;
    const Point one = point_between(outline, corner, corner + Point{1, 300}, reach) - corner;
    const Point other = point_between(outline, corner, corner + Point{-300, 1}, reach) - corner;
    return std::acos(dot(unit(one), unit(other))) * 180 / 3.14159265;
}

TEST(PiecesOfBreeches, SewnTogetherTheWaistOfBothLegsRunsOnStraight) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& fore = piece(pieces, "breeches", "fore leg");
    const PatternPiece& hind = piece(pieces, "breeches", "hind leg");
    const Point before = *std::ranges::max_element(
        fore.outline, {}, [](Point p) { return p.y < 60 ? p.x - 2 * p.y : -1e6; });
    const Point behind = *std::ranges::max_element(
        hind.outline, {}, [](Point p) { return p.y < 60 ? -p.x - 2 * p.y : -1e6; });
    Chain mirrored;
    for (const Point p : hind.outline) {
        mirrored.push_back({-p.x, p.y});
    }
    EXPECT_NEAR(angle_at(fore.outline, before) + angle_at(mirrored, {-behind.x, behind.y}), 180, 6);
    // The waistband is as long as what is sewn to it, without what is gathered.
    const PatternPiece& band = piece(pieces, "breeches", "waistband");
    const double length = shapes::box(band.outline).height() - 25;
    const Chain& slit = fore.slits.front();
    const Point beside_slit{x_at(slit, before.y + 12), before.y + 12};
    const double front = length_between(fore.outline, {beside_slit.x + 1, beside_slit.y}, before);
    EXPECT_NEAR(height_of_notch(band, 0) - height_of_notch(band, 1), front, 2);
    const Point seat = hind.inlay_seam.front();
    EXPECT_NEAR(
        length_between(hind.outline, seat, behind), height_of_notch(band, 1) + hind.ease, 1);
    EXPECT_GT(hind.ease, 30);
    EXPECT_LT(height_of_notch(band, 0), length);
    // Between two marks, gathered to where the band has them.
    const double from = length_between(hind.outline, seat, middle_of_notch(hind, 3));
    const double to = length_between(hind.outline, seat, middle_of_notch(hind, 4));
    EXPECT_NEAR(height_of_notch(band, 2), from, 0.5);
    EXPECT_NEAR(height_of_notch(band, 3), to - hind.ease, 0.5);
}

TEST(PiecesOfBreeches, TheSeatSeamIsOpenAsFarAsTheGussetReachesAndHasItsInlay) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& hind = piece(pieces, "breeches", "hind leg");
    const PatternPiece& gusset = piece(pieces, "breeches", "gusset");
    const double band = shapes::box(piece(pieces, "breeches", "waistband").outline).width();
    const Point top = hind.inlay_seam.front();
    const double open = shapes::box(gusset.outline).height() - band;
    EXPECT_NEAR(length_between(hind.outline, top, middle_of_notch(hind, 2)), open, 0.5);
    ASSERT_EQ(gusset.notches.size(), 2U);
    EXPECT_NEAR(height_of_notch(gusset, 0), band, 0.1);
    // Cut 10 mm beyond the seams; at the waist 30 mm more of it, none at the fork.
    EXPECT_NEAR(shapes::box(hind.cut).top, shapes::box(hind.outline).top - 10, 0.5);
    EXPECT_NEAR(crossing(hind.cut, top.y + 1).greatest, top.x + 40, 2);
    const Point fork = hind.inlay_seam.back();
    EXPECT_NEAR(crossing(hind.cut, fork.y).greatest, fork.x + 10, 6);
}

TEST(PiecesOfBreeches, AtTheKneeTheForeLegLapsOverTheHindLeg) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& fore = piece(pieces, "breeches", "fore leg");
    const PatternPiece& hind = piece(pieces, "breeches", "hind leg");
    ASSERT_EQ(hind.buttons.size(), 4U);
    EXPECT_EQ(std::ranges::count_if(fore.holes, [](const auto& h) { return h.first.y > 400; }), 4);
    const double knee = hind.buttons[1].y;
    const double above = hind.buttons.front().y - 40;
    // Below the seam's end the fore leg is narrower, the hind leg wider.
    EXPECT_LT(crossing(fore.outline, knee).greatest, crossing(fore.outline, above).greatest - 10);
    EXPECT_LT(crossing(hind.outline, knee).least, crossing(hind.outline, above).least - 20);
    for (const Point button : hind.buttons) {
        EXPECT_NEAR(button.x - crossing(hind.outline, button.y).least, 20, 6);
    }
    // Buttoned, both legs are as wide there as without an opening.
    const double closed = width_at(fore, knee) + width_at(hind, knee);
    EXPECT_GT(closed, 2 * 180);
}

TEST(PiecesOfBreeches, LegsEndAtTheBandThatTheyAreSewnTo) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& fore = piece(pieces, "breeches", "fore leg");
    const PatternPiece& band = piece(pieces, "breeches", "knee band");
    const auto work = work_for("");
    ASSERT_TRUE(work);
    const auto view = std::ranges::find_if(work->sheets.flats, [](const MeasuredView& each) {
        return each.flat.part("fall") != nullptr;
    });
    ASSERT_NE(view, work->sheets.flats.end());
    const Rect drawn = shapes::box(shapes::joined(view->flat.part("knee-band-left")->outline));
    const double top = shapes::box(shapes::joined(view->flat.part("fall")->outline)).top;
    // Its middle hangs lower than its ends, and its side rises above the fall.
    EXPECT_NEAR(shapes::box(fore.outline).height(), drawn.top - top + 8, 5);
    // Never longer than they are: a leg can be eased into its band, a band not into its leg.
    const PatternPiece& hind = piece(pieces, "breeches", "hind leg");
    const double before = length_of(lower_edge(fore.outline));
    const double behind = length_of(lower_edge(hind.outline));
    const double sewn = shapes::box(band.outline).height() - 65;
    EXPECT_LE(sewn, before + behind);
    EXPECT_GT(sewn, 0.85 * (before + behind));
    EXPECT_LT(before + behind, 2 * drawn.width() + 47);
    // On both its long edges are the marks for the inner and the outer seam.
    ASSERT_EQ(band.notches.size(), 4U);
    const double share = sewn / (before + behind);
    EXPECT_NEAR(height_of_notch(band, 0), 65 + before * share, 0.01);
    EXPECT_NEAR(height_of_notch(band, 1), 65 + before * share, 0.01);
    // The hind leg passes under by 47 to 51 mm.
    EXPECT_NEAR(height_of_notch(band, 2), 65 + sewn - 49, 3);
    EXPECT_NEAR(height_of_notch(band, 3), height_of_notch(band, 2), 0.01);
}

TEST(PiecesOfBreeches, KneeBandClosesRoundTheLegBelowTheKnee) {
    for (const double leg : {320.0, 350.0}) {
        const auto pieces = pieces_of_a_man(
            "measures: {lower knee girth: " + std::to_string(static_cast<int>(leg)) + " mm}\n");
        const PatternPiece& band = piece(pieces, "breeches", "knee band");
        // Fold, tongue, end of the lap, buckle.
        ASSERT_EQ(band.lines.size(), 4U);
        const double closed = band.lines[2].front().y;
        EXPECT_NEAR(closed - 65, leg + 8, 0.01);
        // The middle of the tongue reaches the buckle.
        EXPECT_NEAR(closed - band.lines[3].front().y, 65.0 / 2, 0.01);
        ASSERT_FALSE(band.remarks.empty());
    }
}

TEST(PiecesOfBreeches, WaistbandTellsButtonsHolesAndFob) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& band = piece(pieces, "breeches", "waistband");
    const Rect box = shapes::box(band.outline);
    ASSERT_EQ(band.buttons.size(), 2U);
    EXPECT_EQ(band.holes.size(), 2U);
    ASSERT_EQ(band.slits.size(), 1U);
    for (const Point button : band.buttons) {
        // At the middle of the front, 25 mm from the end.
        EXPECT_NEAR(box.bottom - button.y, 25, 8);
        EXPECT_TRUE(inside({band.outline}, button));
    }
    EXPECT_TRUE(inside({band.outline}, band.slits.front().front()));
    EXPECT_TRUE(inside({band.outline}, band.slits.front().back()));
}

TEST(PiecesOfBreeches, PocketsLiningsAndGussetAreCut) {
    const auto pieces = pieces_of_a_man();
    EXPECT_TRUE(piece(pieces, "breeches", "fore leg", "lining").repeats);
    EXPECT_EQ(piece(pieces, "breeches", "pocket bag", "lining").number, 4);
    const PatternPiece& fob = piece(pieces, "breeches", "fob bag", "lining");
    EXPECT_EQ(fob.number, 4);
    // As round on the left as on the right, however narrow.
    const Rect box = shapes::box(fob.outline);
    for (const Point p : fob.outline) {
        const Crossing at = crossing(fob.outline, std::min(p.y, box.bottom - 0.1));
        EXPECT_NEAR(at.least + at.greatest, box.right, 1);
    }
    const PatternPiece& welt = piece(pieces, "breeches", "pocket welt");
    EXPECT_EQ(welt.number, 2);
    // Its mouth leaves cloth to sew to, beside the slit and beside the side seam.
    const PatternPiece& leg = piece(pieces, "breeches", "fore leg");
    ASSERT_EQ(leg.slits.size(), 2U);
    const Chain& slit = leg.slits[0];
    const Chain& mouth = leg.slits[1];
    EXPECT_NEAR(mouth.front().x - x_at(slit, mouth.front().y), 17.5, 2.5);
    EXPECT_NEAR(crossing(leg.outline, mouth.back().y).greatest - mouth.back().x, 17.5, 2.5);
    // The welt is longer by 12 mm at each end, its grain along the mouth.
    EXPECT_NEAR(shapes::box(welt.outline).height(), length_of(mouth) + 24, 0.01);
    EXPECT_LT(shapes::box(welt.outline).width(), 50);
    EXPECT_NEAR(shapes::box(piece(pieces, "breeches", "pocket bag", "lining").outline).width(),
                length_of(mouth) + 24,
                0.01);
    EXPECT_EQ(piece(pieces, "breeches", "gusset").number, 1);
}

TEST(PiecesOfGaiters, OpeningsAreFacedAndGartersAreLongEnough) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& fore = piece(pieces, "gaiters", "outer side, fore part");
    EXPECT_EQ(fore.holes.size(), 22U);
    for (const auto& [from, to] : fore.holes) {
        EXPECT_TRUE(inside({fore.outline}, from));
        EXPECT_TRUE(inside({fore.outline}, to));
    }
    const PatternPiece& holes = piece(pieces, "gaiters", "buttonhole facing", "lining");
    EXPECT_NEAR(width_at(holes, 200), 45 + 14, 3);
    const PatternPiece& buttons = piece(pieces, "gaiters", "button facing", "lining");
    EXPECT_NEAR(width_at(buttons, 200), 45 + 30, 4);
    // Once round below the knee, and its ends.
    EXPECT_GT(shapes::box(piece(pieces, "gaiters", "garter", "leather").outline).height(),
              362 + 100);
}

TEST(PiecesOfOveralls, HaveAFlapOverTheirOpeningAndNoKnee) {
    const auto work = work_for("", "overalls.yaml", "plate: Trial\nbreeches: overalls\n");
    ASSERT_TRUE(work);
    const auto& pieces = work->sheets.pieces;
    EXPECT_FALSE(piece(pieces, "breeches", "side flap").buttons.empty());
    EXPECT_TRUE(piece(pieces, "breeches", "hind leg").buttons.empty());
    EXPECT_TRUE(piece(pieces, "breeches", "knee band").outline.empty());
    EXPECT_FALSE(piece(pieces, "breeches", "fore leg").slits.empty());
}

}  // namespace
}  // namespace platewright::cli
