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

/// How far an outline reaches in that direction.
double reach(const Chain& outline, Point way) {
    const auto [least, most] =
        std::ranges::minmax(outline, {}, [way](Point p) { return dot(p, way); });
    return dot(most, way) - dot(least, way);
}

/// What a dimension says where the coat's pockets are measured.
double said(const WorkshopSheets& sheets, const std::string& what) {
    const auto of = [&](const auto& views) {
        for (const auto& view : views) {
            for (const Dimension& each : view.dimensions) {
                if (each.what == what && view.flat.part("pocket-left") != nullptr) {
                    return each.mm();
                }
            }
        }
        return 0.0;
    };
    return std::max(of(sheets.flats), of(sheets.placements));
}

/// Width and depth as the flat says them, and as the piece is cut: along its mouth and square to
/// that. Of an upright flap the depth is the long way.
struct Flap {
    double width_said;
    double depth_said;
    double width_cut;
    double depth_cut;
};

Flap flap_of(const WorkshopSheets& sheets, bool upright) {
    const Chain& slit = piece(sheets.pieces, "coat", "forepart").slits.at(0);
    const Chain& cut = piece(sheets.pieces, "coat", "pocket flap").outline;
    const Point along = unit(slit.back() - slit.front());
    const double sewn = reach(cut, along);
    const double square = reach(cut, right_of(along));
    return {said(sheets, "pocket flap width"),
            said(sheets, "pocket flap depth"),
            upright ? square : sewn,
            upright ? sewn : square};
}

// A flap that lies tilted is not as large as the box round it.
TEST(PocketFlaps, AreMeasuredAsTheirPieceIsCut) {
    for (const std::string direction : {"horizontal", "vertical", "slanted"}) {
        for (const std::string shape : {"plain", "pointed", "scalloped"}) {
            for (const std::string size : {"usual", "large"}) {
                const std::string flap =
                    "{direction: " + direction + ", shape: " + shape + ", size: " + size + "}";
                const auto work =
                    work_for("", "pocket.yaml", "plate: Trial\npockets: " + flap + "\n");
                ASSERT_TRUE(work) << flap;
                const Flap found = flap_of(work->sheets, direction == "vertical");
                EXPECT_GT(found.width_cut, 80) << flap;
                EXPECT_NEAR(found.width_said, found.width_cut, 0.5) << flap;
                EXPECT_NEAR(found.depth_said, found.depth_cut, 0.5) << flap;
            }
        }
    }
}

TEST(PocketFlaps, AreAsLargeAsTheyAreOrdered) {
    for (const std::string direction : {"horizontal", "vertical", "slanted"}) {
        const auto work = work_for(
            "size: large\n",
            "pocket.yaml",
            "plate: Trial\npockets: {direction: " + direction + ", width: 5 in, depth: 7 in}\n");
        ASSERT_TRUE(work);
        const Flap found = flap_of(work->sheets, direction == "vertical");
        EXPECT_NEAR(found.width_said, 127, 0.2) << direction;
        EXPECT_NEAR(found.depth_said, 177.8, 0.2) << direction;
        EXPECT_NEAR(found.width_cut, 127, 0.5) << direction;
        EXPECT_NEAR(found.depth_cut, 177.8, 0.5) << direction;
        // The piece may be turned to the grain, but is as large.
        const Chain& cut = piece(work->sheets.pieces, "coat", "pocket flap").outline;
        EXPECT_NEAR(shapes::area(cut), shapes::area(drawn_flap(work->sheets)), 1) << direction;
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
