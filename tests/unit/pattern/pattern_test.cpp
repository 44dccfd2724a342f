// SPDX-License-Identifier: MIT
// Measures, grading, outlines and layouts of the workshop.
#include <gtest/gtest.h>

#include <algorithm>

#include "pattern/fit.h"
#include "pattern/grading.h"
#include "pattern/laying.h"
#include "pattern/seams.h"
#include "pattern/shapes.h"

namespace platewright {
namespace {

TEST(Body, ReferenceIsBelieved) {
    EXPECT_TRUE(doubts_about(reference_body()).empty());
}

TEST(Body, ShortBackOfTallManIsDoubted) {
    Body body = reference_body();
    body.of(BodyMeasure::nape_to_waist) = 340;
    const auto doubts = doubts_about(body);
    ASSERT_EQ(doubts.size(), 1U);
    EXPECT_EQ(doubts[0].about, BodyMeasure::nape_to_waist);
    EXPECT_NE(doubts[0].rule.find("Rosenfeld"), std::string::npos);
}

// Rosenfeld, The Practical Designer (1918): at 66 in the nape to waist is 15 1/2 in.
TEST(Body, RosenfeldsOwnExampleIsBelieved) {
    std::array<std::optional<double>, kBodyMeasures> known;
    known[static_cast<std::size_t>(BodyMeasure::height)] = 66 * 25.4;
    known[static_cast<std::size_t>(BodyMeasure::nape_to_waist)] = 15.5 * 25.4;
    EXPECT_TRUE(doubts_about(completed(reference_body(), known)).empty());
}

TEST(Body, WhatIsNotMeasuredFollowsHeightAndChest) {
    std::array<std::optional<double>, kBodyMeasures> known;
    known[static_cast<std::size_t>(BodyMeasure::chest)] = 1056;
    const Body body = completed(reference_body(), known);
    EXPECT_DOUBLE_EQ(body.of(BodyMeasure::chest), 1056);
    EXPECT_DOUBLE_EQ(body.of(BodyMeasure::waist), 853 * 1.1);
    EXPECT_DOUBLE_EQ(body.of(BodyMeasure::arm), 610);
}

/// A coat of which half lies flat: its side, and where it is measured.
Flat coat_to_the_side(double chest, double waist) {
    Flat flat;
    FlatPart part;
    part.name = "coat-left";
    part.outline = {
        {{0, 0}, {184, 46}, {chest, 200}, {chest, 300}, {waist, 380}, {waist, 700}, {0, 700}}};
    flat.parts = {part};
    flat.guides["girth-chest"] = {{-8, 242}, {8, 242}};
    flat.guides["girth-waist"] = {{-8, 400}, {8, 400}};
    return flat;
}

TEST(Grading, MovesNothingWhereTheGarmentFitsAlready) {
    const Body& man = reference_body();
    const auto eased = finished_girths(coat_to_the_side(1, 1), man);
    const Flat flat = coat_to_the_side((man.of(BodyMeasure::chest) + eased[0].ease) / 4,
                                       (man.of(BodyMeasure::waist) + eased[1].ease) / 4);
    const Moving moving = grading_of(Hang::trunk, man, {}, flat);
    for (const Point p : {Point{0, 0}, {120, 300}, {-190, 700}, {-184, 46}}) {
        EXPECT_NEAR(length(moving("coat-left", p) - p), 0, 1e-9);
    }
}

TEST(Grading, GarmentIsAsWideAsTheManAndItsEase) {
    Body body = reference_body();
    body.of(BodyMeasure::waist) *= 1.2;
    body.of(BodyMeasure::nape_to_waist) += 20;
    const Flat flat = coat_to_the_side(240, 220);
    const Moving moving = grading_of(Hang::trunk, body, {}, flat);
    const Point at = moving("coat-left", {220, 400});
    const auto girths = finished_girths(flat, body);
    ASSERT_EQ(girths.size(), 2U);
    EXPECT_DOUBLE_EQ(girths[0].finished, 960);
    EXPECT_DOUBLE_EQ(girths[1].finished, 880);
    EXPECT_NEAR(4 * at.x, body.of(BodyMeasure::waist) + girths[1].ease, 1e-9);
    EXPECT_NEAR(at.y, 400 * 436.0 / 416, 1e-9);
}

// A wide neck that is cut deeper in front bends the coat under the strap, not the strap.
TEST(Grading, AShoulderStrapKeepsItsShape) {
    Body body = reference_body();
    body.of(BodyMeasure::neck) += 40;
    body.of(BodyMeasure::chest) += 120;
    Flat flat = coat_to_the_side(240, 220);
    flat.guides["neckline-before"] = {{74, -4}, {60, 40}, {0, 80}};
    flat.guides["neckline-behind"] = {{0, 2}, {74, -4}};
    const Moving moving = grading_of(Hang::trunk, body, {}, flat);
    for (const double side : {1.0, -1.0}) {
        const Point from = moving("strap-left", {side * 84, 20});
        const Point middle = moving("strap-left", {side * 129, 42});
        const Point to = moving("strap-left", {side * 174, 64});
        EXPECT_NEAR(cross(unit(middle - from), unit(to - from)), 0, 1e-9);
        EXPECT_NEAR(length(middle - from), length(to - middle), 1e-9);
    }
    // Its seam is that of the sleeve.
    EXPECT_NEAR(length(moving("strap-left", {184, 46}) - moving("coat-left", {184, 46})), 0, 1e-6);
}

TEST(Grading, StatedLapelIsThatWideAtEveryHeight) {
    Flat flat;
    flat.guides["lapel-left-inner"] = {{10, 60}, {40, 400}};
    flat.guides["lapel-left-outer"] = {{110, 60}, {100, 400}};
    StatedMeasures stated;
    stated.lapel_width = Measure{76.2, "3 in"};
    const Moving moving = grading_of(Hang::trunk, reference_body(), stated, flat);
    for (const double y : {60.0, 230.0, 400.0}) {
        const double inner =
            moving("lapel-left-inner", {x_at(flat.guides["lapel-left-inner"], y), y}).x;
        const double outer =
            moving("lapel-left-outer", {x_at(flat.guides["lapel-left-outer"], y), y}).x;
        EXPECT_NEAR(outer - inner, 76.2, 1e-6);
    }
}

TEST(Shapes, AllowanceOfASquare) {
    const Chain square{{0, 0}, {100, 0}, {100, 100}, {0, 100}};
    EXPECT_DOUBLE_EQ(shapes::area(square), 10000);
    EXPECT_NEAR(shapes::area(shapes::enlarged(square, 10)), 14400, 1);
    EXPECT_NEAR(shapes::area(shapes::joined({square, {{99, 0}, {150, 0}, {150, 100}, {99, 100}}})),
                15000,
                30);
    EXPECT_TRUE(shapes::common({square}, {{200, 0}, {300, 0}, {300, 100}}).empty());
}

PatternPiece cut_piece(Chain outline, int number, bool paired) {
    PatternPiece piece;
    piece.outline = piece.cut = std::move(outline);
    piece.number = number;
    piece.paired = paired;
    return piece;
}

TEST(Laying, PiecesGoSideBySideAsLongAsTheWidthLasts) {
    const Chain oblong{{0, 0}, {400, 0}, {400, 600}, {0, 600}};
    LayingRules rules;
    rules.width = 1371.6;
    // Three of 410 mm beside each other on 1371.6 mm, the fourth behind them.
    EXPECT_NEAR(laid_out({cut_piece(oblong, 3, false)}, rules).length, 600, 0.1);
    EXPECT_NEAR(laid_out({cut_piece(oblong, 4, false)}, rules).length, 1210, 10);
}

TEST(Laying, TwoWedgesLieHeadToFoot) {
    const Chain wedge{{0, 0}, {40, 0}, {200, 600}, {0, 600}};
    LayingRules rules;
    rules.width = 280;
    const Laying laid = laid_out({cut_piece(wedge, 2, false)}, rules);
    EXPECT_NEAR(laid.length, 600, 0.1);
    EXPECT_NE(laid.pieces[0].turned, laid.pieces[1].turned);
}

TEST(Laying, SmallPiecesFillGapsAndNothingOverlaps) {
    const Chain large{{0, 0}, {600, 0}, {600, 500}, {300, 900}, {0, 900}};
    const Chain small{{0, 0}, {150, 0}, {150, 150}, {0, 150}};
    LayingRules rules;
    rules.width = 1371.6;
    const Laying laid =
        laid_out({cut_piece(small, 6, false), cut_piece(large, 2, /*paired=*/true)}, rules);
    EXPECT_NEAR(laid.length, 900, 0.1);
    EXPECT_EQ(std::ranges::count(laid.pieces, true, &LaidPiece::mirrored), 1);
    for (const LaidPiece& a : laid.pieces) {
        for (const LaidPiece& b : laid.pieces) {
            EXPECT_TRUE(&a == &b || shapes::common({a.outline}, b.outline).empty());
        }
    }
}

TEST(Laying, PieceWiderThanTheClothLiesAlongIt) {
    LayingRules rules;
    rules.width = 500;
    const Chain band{{0, 0}, {900, 0}, {900, 80}, {0, 80}};
    EXPECT_NEAR(laid_out({cut_piece(band, 1, false)}, rules).length, 900, 0.1);
}

}  // namespace
}  // namespace platewright
