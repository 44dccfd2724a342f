// SPDX-License-Identifier: MIT
// What a cutter checks is measured between seams, and told clear of the piece.
#include "layout/piece_measures.h"

#include <gtest/gtest.h>

#include <map>

namespace platewright {
namespace {

PatternPiece piece_of(Chain outline) {
    PatternPiece piece;
    piece.outline = piece.cut = std::move(outline);
    return piece;
}

std::map<std::string, double> lengths_of(const PatternPiece& piece) {
    std::map<std::string, double> lengths;
    for (const Dimension& each : measures_of(piece)) {
        lengths[each.what] = each.mm();
    }
    return lengths;
}

using Lengths = std::map<std::string, double>;

TEST(PieceMeasures, ALegIsMeasuredAtItsForkAndItsFoot) {
    const PatternPiece leg =
        piece_of({{20, 0}, {200, 0}, {260, 250}, {180, 600}, {180, 650}, {40, 650}});
    const Lengths lengths = lengths_of(leg);
    EXPECT_DOUBLE_EQ(lengths.at("length"), 650);
    // The side runs 20 mm in over the 650 mm.
    EXPECT_NEAR(lengths.at("width"), 260 - (20 + 20 * 250.0 / 650), 1);
    EXPECT_DOUBLE_EQ(lengths.at("width below"), 140);
}

TEST(PieceMeasures, UnderTheHoleForAnArmTheWidthIsOfTheWholePiece) {
    const PatternPiece forepart = piece_of(
        {{0, 0}, {200, 0}, {200, 200}, {250, 200}, {250, 120}, {300, 120}, {420, 800}, {0, 800}});
    const Lengths lengths = lengths_of(forepart);
    EXPECT_NEAR(lengths.at("width"), 300 + 120 * 80.0 / 680, 1);
    EXPECT_DOUBLE_EQ(lengths.at("width below"), 420);
}

TEST(PieceMeasures, AStripHasOneWidthAndWhatIsAFingerHighHasNoMeasures) {
    EXPECT_EQ(lengths_of(piece_of({{0, 0}, {40, 0}, {40, 500}, {0, 500}})),
              (Lengths{{"length", 500}, {"width", 40}}));
    EXPECT_TRUE(measures_of(piece_of({{0, 0}, {40, 0}, {40, 20}, {0, 20}})).empty());
}

TEST(PieceMeasures, WhatOnlyWidensIsMeasuredAtItsFoot) {
    EXPECT_EQ(lengths_of(piece_of({{0, 0}, {10, 0}, {90, 460}, {0, 460}})),
              (Lengths{{"length", 460}, {"width below", 90}}));
}

TEST(PieceMeasures, WordsStandClearOfThePiece) {
    const PatternPiece strip = piece_of({{0, 0}, {40, 0}, {40, 500}, {0, 500}});
    const Typesetter type;
    sheet::Ruler ruler(type);
    const auto lines = measure_lines(strip, 10, Language::english, OwnUnit{}, ruler);
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0].words, "500 (19 5/8 in)");
    for (const sheet::DimensionLine& line : lines) {
        EXPECT_FALSE(sheet::meet(
            {line.ground.begin(), line.ground.end()}, {{0, 0}, {4, 0}, {4, 50}, {0, 50}}, 0));
    }
    const Rect reach = reach_of_piece(strip, 10, lines);
    EXPECT_LT(reach.left + reach.top, -4);
}

}  // namespace
}  // namespace platewright
