// SPDX-License-Identifier: MIT
// Pockets and the corners of skirts: what is cut, and what is told of them.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "pattern/shapes.h"
#include "tailored.h"

namespace platewright::cli {
namespace {

/// How far the side of a piece reaches that is straight and runs in that direction.
double straight_side(const Chain& outline, Point way) {
    const Point across = right_of(way);
    double best = 0;
    for (const double side : {-1.0, 1.0}) {
        double outermost = -1e9;
        for (const Point p : outline) {
            outermost = std::max(outermost, side * dot(p, across));
        }
        double first = 1e9;
        double last = -1e9;
        for (const Point p : outline) {
            if (side * dot(p, across) > outermost - 4) {
                first = std::min(first, dot(p, way));
                last = std::max(last, dot(p, way));
            }
        }
        best = std::max(best, last - first);
    }
    return best;
}

/// The flap that shows its buttons.
Chain drawn_flap(const WorkshopSheets& sheets) {
    for (const MeasuredView& view : sheets.flats) {
        for (const FlatPart& part : view.flat.parts) {
            if (part.name.starts_with("pocket-left") && !part.rows.empty()) {
                return shapes::joined(part.outline);
            }
        }
    }
    return {};
}

TEST(PiecesOfAMan, PocketsAreCutAndFrontsAreFaced) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& fore = piece(pieces, "waistcoat", "forepart");
    const Rect flap = shapes::box(piece(pieces, "waistcoat", "pocket flap").outline);
    ASSERT_EQ(fore.slits.size(), 1U);
    EXPECT_NEAR(length_of(fore.slits[0]), flap.width() - 2 * 10, 15);
    // The upright pocket is cut where the flat of the front shows it.
    const PatternPiece& coat = piece(pieces, "coat", "forepart");
    ASSERT_EQ(coat.slits.size(), 1U);
    const Chain& mouth = coat.slits.front();
    // The flap has the grain of the forepart and lies over the whole mouth.
    const double base = straight_side(piece(pieces, "coat", "pocket flap").outline,
                                      unit(mouth.back() - mouth.front()));
    EXPECT_NEAR(length_of(mouth), base - 20, 6);
    const PatternPiece& facing = piece(pieces, "waistcoat", "front facing");
    EXPECT_NEAR(width_at(facing, shapes::box(facing.outline).height() / 2), 55, 2);
    EXPECT_TRUE(piece(pieces, "waistcoat", "front facing", "lining").outline.empty());
}

TEST(PiecesOfAMan, PocketFlapsAreAsLargeAsTheyAreOrdered) {
    for (const char* direction : {"horizontal", "vertical"}) {
        const auto work = work_for("size: large\n",
                                   "pocket.yaml",
                                   "plate: Trial\npockets: {direction: " + std::string(direction) +
                                       ", width: 5 in, depth: 7 in}\n");
        ASSERT_TRUE(work);
        const Chain drawn = drawn_flap(work->sheets);
        EXPECT_NEAR(shapes::box(drawn).width(), 127, 0.2) << direction;
        EXPECT_NEAR(shapes::box(drawn).height(), 177.8, 0.2) << direction;
        // The piece may be turned to the grain, but is as large.
        const Chain& cut = piece(work->sheets.pieces, "coat", "pocket flap").outline;
        EXPECT_NEAR(shapes::area(cut), shapes::area(drawn), 1) << direction;
    }
}

/// What is told of a thing where buttons, holes and marks sit.
std::vector<std::string> told_of(const WorkshopSheets& sheets, const std::string& thing) {
    std::vector<std::string> words;
    for (const WorkshopTable& table : sheets.placement_tables) {
        for (const WorkshopRow& row : table.rows) {
            if (row.size() > 1 && row[0] == thing) {
                words.push_back(row[1]);
            }
        }
    }
    return words;
}

TEST(CornersOfSkirts, HookAndEyeAreTold) {
    const auto work = work_for("");
    ASSERT_TRUE(work);
    const auto words = told_of(work->sheets, "Turnback");
    ASSERT_EQ(words.size(), 2U);
    EXPECT_NE(words[0].find("beneath it the eye"), std::string::npos) << words[0];
    EXPECT_NE(words[1].find("1 hook, "), std::string::npos) << words[1];
    EXPECT_NE(words[1].find("mm of skirt between the corners"), std::string::npos) << words[1];
}

TEST(CornersOfSkirts, SewnDownTheyHaveNoHook) {
    const auto work = work_for("", "corners.yaml", "plate: Trial\nturnbacks: {held: sewn}\n");
    ASSERT_TRUE(work);
    const auto words = told_of(work->sheets, "Turnback");
    ASSERT_EQ(words.size(), 1U);
    EXPECT_NE(words[0].find("sewn through the corner"), std::string::npos) << words[0];
}

TEST(SumOfPieces, CountsWhatIsCutTwiceByOnePattern) {
    const auto work = work_for("");
    ASSERT_TRUE(work);
    const auto& rows = work->sheets.piece_sums.rows;
    ASSERT_GT(rows.size(), 2U);
    int again = 0;
    for (const PatternPiece& piece : work->sheets.pieces) {
        again += (piece.lined ? piece.number : 0) + times_stiffened(piece);
    }
    EXPECT_GT(again, 0);
    EXPECT_EQ(std::stoi(rows.back()[1]), std::stoi(rows[rows.size() - 2][1]) + again);
}

}  // namespace
}  // namespace platewright::cli
