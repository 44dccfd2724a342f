// SPDX-License-Identifier: MIT
// Notches: each is as far along its edge as that of the neighbour.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "pattern/named_seams.h"
#include "pattern/seams.h"
#include "pattern/shapes.h"
#include "tailored.h"

namespace platewright::cli {
namespace {

/// The middle of the neck behind, on the back's straight edge.
Point nape_of(const PatternPiece& back) {
    return *std::ranges::max_element(
        back.outline, {}, [](Point p) { return p.y < 100 ? p.x - p.y * 0.01 : -1e6; });
}

// Sewn together mark on mark: as far from the seam's end on both pieces.
TEST(Notches, MarksAreAsFarAlongBothEdges) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& back = piece(pieces, "coat", "back");
    const PatternPiece& fore = piece(pieces, "coat", "forepart");
    const PatternPiece& upper = piece(pieces, "coat", "upper sleeve");
    const PatternPiece& collar = piece(pieces, "coat", "collar");
    const auto between = [](const PatternPiece& of, std::size_t one, std::size_t other) {
        return length_between(of.outline, middle_of_notch(of, one), middle_of_notch(of, other));
    };
    // Before, the head between shoulder and middle is as full as the rest of it.
    const double fuller = between(upper, 0, 2) / between(fore, 5, 6);
    EXPECT_GT(fuller, 1.02);
    EXPECT_LT(fuller, 1.12);
    const Point hole = middle_of_notch(back, 4);
    const Point side = back.inlay_seam.front();
    EXPECT_NEAR(between(upper, 0, 1), length_between(back.outline, hole, side) * fuller, 1);
    // From the middle behind along the neck to the shoulder.
    const Point neck = *std::ranges::min_element(back.outline, {}, &Point::y);
    const Point nape = nape_of(back);
    const double high = shapes::box(collar.outline).bottom;
    EXPECT_NEAR(length_between(collar.outline, {0, high}, middle_of_notch(collar, 0)),
                length_between(back.outline, nape, neck),
                1);
}

TEST(Notches, WaistIsMarkedWhereTheManHasIt) {
    const auto pieces = pieces_of_a_man("size: medium\n");
    const PatternPiece& back = piece(pieces, "coat", "back");
    const Point nape = nape_of(back);
    EXPECT_NEAR(height_of_notch(back, 2) - nape.y, 416, 3);
    const PatternPiece& fore = piece(pieces, "waistcoat", "forepart");
    const PatternPiece& facing = piece(pieces, "waistcoat", "front facing");
    EXPECT_NEAR(height_of_notch(fore, 0), height_of_notch(fore, 1), 0.01);
    EXPECT_NEAR(height_of_notch(fore, 1), height_of_notch(facing, 0), 1);
    // The side seams of forepart and back, from the arm down.
    const auto side = [](const PatternPiece& of, double way) {
        const Point arm = *std::ranges::max_element(of.outline, {}, [&](Point p) {
            return p.y < height_of_notch(of, 0) - 60 ? way * p.x : -1e6;
        });
        return length_between(of.outline, arm, middle_of_notch(of, 0));
    };
    EXPECT_NEAR(side(fore, 1), side(piece(pieces, "waistcoat", "back"), -1), 2);
}

// The sheet's back length is that of the piece.
TEST(Notches, BackIsAsLongAsTheSheetSays) {
    const auto work = work_for("");
    ASSERT_TRUE(work);
    const PatternPiece& back = piece(work->sheets.pieces, "coat", "back");
    const Point nape = nape_of(back);
    int told = 0;
    for (const MeasuredView& view : work->sheets.flats) {
        for (const Dimension& each : view.dimensions) {
            if (each.what == "back length") {
                ++told;
                EXPECT_NEAR(each.mm(), shapes::box(back.outline).bottom - nape.y, 3);
            }
        }
    }
    EXPECT_EQ(told, 1);
}

TEST(Notches, PleatsAreMarkedHalfwayDown) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& fore = piece(pieces, "coat", "forepart");
    const PatternPiece& back = piece(pieces, "coat", "back");
    const Point fore_top = *std::ranges::max_element(fore.outline, {}, [&](Point p) {
        return p.y < height_of_notch(fore, 0) + 24 ? p.x : -1e6;
    });
    const Point back_top = *std::ranges::min_element(back.outline, {}, [&](Point p) {
        return std::abs(p.y - height_of_notch(back, 0) - 16) < 2 ? p.x : 1e6;
    });
    EXPECT_NEAR(length_between(fore.outline, fore_top, middle_of_notch(fore, 3)),
                length_between(back.outline, back_top, middle_of_notch(back, 3)),
                1);
}

// Every letter stands at two edges that fit: an ease is eased in, never stretched.
TEST(Notches, LetteredSeamsFitOneAnother) {
    const auto pieces = pieces_of_a_man();
    const auto seams = paired_seams(pieces);
    EXPECT_GT(seams.size(), 14U);
    for (const PairedSeam& seam : seams) {
        // The legs of breeches are eased into bands that fit below the knee.
        const double most = seam.name == "knee band"           ? 60
                            : seam.name == "armhole"           ? 30
                            : seam.name == "hem of the sleeve" ? 15
                                                               : 2;
        EXPECT_GT(seam.length_here - seam.length_there, -2) << seam.garment << seam.letter;
        EXPECT_LT(seam.length_here - seam.length_there, most) << seam.garment << seam.letter;
        EXPECT_FALSE(seam.letter.empty()) << seam.name;
    }
}

TEST(Notches, ALiningHasTheLettersOfItsCloth) {
    const auto pieces = pieces_of_a_man();
    for (const char* garment : {"coat", "waistcoat"}) {
        const PatternPiece& cloth = piece(pieces, garment, "forepart");
        const PatternPiece& lining = piece(pieces, garment, "forepart", "lining");
        ASSERT_FALSE(lining.seams.empty()) << garment;
        for (const Seam& seam : lining.seams) {
            const auto alike = std::ranges::find(cloth.seams, seam.name, &Seam::name);
            ASSERT_NE(alike, cloth.seams.end()) << seam.name;
            EXPECT_EQ(seam.letter, alike->letter) << seam.name;
        }
        EXPECT_TRUE(
            std::ranges::any_of(lining.seams, [](const Seam& s) { return !s.letter.empty(); }));
    }
}

double away_from(const Chain& outline, Point from) {
    double least = 1e9;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point a = outline[i];
        const Point way = outline[(i + 1) % outline.size()] - a;
        const double share =
            std::clamp(dot(from - a, way) / std::max(1e-9, dot(way, way)), 0.0, 1.0);
        least = std::min(least, length(a + way * share - from));
    }
    return least;
}

// Whoever has cut the piece out still sees them, over an inlay too.
TEST(Notches, ReachFromTheSeamToTheCut) {
    double longest = 0;
    for (const PatternPiece& each : pieces_of_a_man()) {
        for (const Notch& notch : each.notches) {
            EXPECT_LT(away_from(each.outline, notch.at), 0.02) << each.name;
            EXPECT_LT(away_from(each.cut, notch.out), 0.02) << each.name;
            longest = std::max(longest, length(notch.out - notch.at));
        }
    }
    EXPECT_GT(longest, 34);
}

// A sleeve is not set into the wrong hole, nor its halves turned round.
TEST(Notches, HindEdgesHaveTwoTicks) {
    const auto pieces = pieces_of_a_man();
    const auto hind = [&](const char* name) {
        return std::ranges::count_if(piece(pieces, "coat", name).notches,
                                     [](const Notch& notch) { return notch.hind; });
    };
    EXPECT_EQ(hind("back"), 1);
    EXPECT_EQ(hind("forepart"), 0);
    EXPECT_EQ(hind("upper sleeve"), 2);
    EXPECT_EQ(hind("under sleeve"), 1);
    for (const char* half : {"upper sleeve", "under sleeve"}) {
        for (const Notch& notch : piece(pieces, "coat", half).notches) {
            const double middle = shapes::box(piece(pieces, "coat", half).outline).centre().x;
            EXPECT_TRUE(!notch.hind || notch.at.x > middle) << half;
        }
    }
}

}  // namespace
}  // namespace platewright::cli
