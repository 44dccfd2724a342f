// SPDX-License-Identifier: MIT
// The pieces of a whole man: what is cut, how pieces meet, what is told of them.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "cli/tailor.h"
#include "pattern/seams.h"
#include "support.h"

namespace platewright::cli {
namespace {

std::vector<PatternPiece> pieces_of_a_man() {
    Bench bench;
    const FileId file =
        bench.sources.add(PLATEWRIGHT_SOURCE_DIR "/plates/trial.yaml",
                          "workshop: Trial\nman: tannbruck-corporal.yaml\nseam allowance: 10 mm\n");
    const auto job = prepare_tailor(bench.workshop, file, bench.problems, bench.timings);
    const Typesetter type;
    const auto work =
        job ? tailor_work(bench.workshop, *job, Paper{}, type, bench.problems) : std::nullopt;
    return work ? work->sheets.pieces : std::vector<PatternPiece>{};
}

const PatternPiece& piece(const std::vector<PatternPiece>& pieces,
                          const std::string& garment,
                          const std::string& name,
                          const std::string& stuff = "cloth") {
    const auto found = std::ranges::find_if(pieces, [&](const PatternPiece& each) {
        return each.garment == garment && each.name == name && each.stuff == stuff;
    });
    static const PatternPiece kNone;
    return found == pieces.end() ? kNone : *found;
}

Point middle_of_notch(const PatternPiece& of, std::size_t which) {
    return (of.notches[which].first + of.notches[which].second) * 0.5;
}

double height_of_notch(const PatternPiece& of, std::size_t which) {
    return middle_of_notch(of, which).y;
}

TEST(PiecesOfAMan, NotchesOfASeamMeet) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& back = piece(pieces, "coat", "back");
    const PatternPiece& fore = piece(pieces, "coat", "forepart");
    ASSERT_EQ(back.notches.size(), 2U);
    ASSERT_EQ(fore.notches.size(), 3U);
    const auto seam = [](const PatternPiece& of) {
        return length_between(of.outline, middle_of_notch(of, 0), middle_of_notch(of, 1));
    };
    EXPECT_NEAR(seam(back), seam(fore), 1);
    EXPECT_EQ(piece(pieces, "coat", "collar").notches.size(), 1U);
    for (const char* name : {"outer side", "inner side"}) {
        EXPECT_EQ(piece(pieces, "gaiters", name).notches.size(), 2U);
    }
    EXPECT_NEAR(height_of_notch(piece(pieces, "gaiters", "outer side"), 0),
                height_of_notch(piece(pieces, "gaiters", "inner side"), 0),
                25);
}

// The hem runs on without a step where the strip under the arm was joined to it.
TEST(PiecesOfAMan, HemHasNoSteps) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& of = piece(pieces, "coat", "forepart");
    double bottom = 0;
    for (const Point p : of.outline) {
        bottom = std::max(bottom, p.y);
    }
    for (std::size_t i = 1; i < of.outline.size(); ++i) {
        const Point a = of.outline[i - 1];
        const Point b = of.outline[i];
        const bool upright = std::abs(b.y - a.y) > 2 * std::abs(b.x - a.x);
        const bool step = length(b - a) > 3 && length(b - a) < 15;
        EXPECT_FALSE(std::max(a.y, b.y) > bottom - 50 && upright && step) << a.x << ", " << a.y;
    }
}

TEST(PiecesOfAMan, SleeveHeadTellsItsEase) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& upper = piece(pieces, "coat", "upper sleeve");
    EXPECT_NEAR(upper.ease, 25, 0.5);
    // At the shoulder, and twice at the elbow.
    EXPECT_EQ(upper.notches.size(), 3U);
}

// Two chevrons of 12 mm for the corporal: the tape is that wide square to itself, not down the
// sleeve.
TEST(PiecesOfAMan, ChevronsAreAsWideAsTheyAreOrdered) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& mark = piece(pieces, "coat", "rank mark");
    ASSERT_EQ(mark.outline.size(), 6U);
    const Point along = mark.outline[1] - mark.outline[0];
    const Point across = mark.outline[5] - mark.outline[0];
    EXPECT_NEAR(std::abs(along.x * across.y - along.y * across.x) / length(along), 12, 0.05);
    EXPECT_EQ(mark.number, 2);
    EXPECT_FALSE(mark.paired);
}

TEST(PiecesOfAMan, LiningsBagsAndStrapsAreCut) {
    const auto pieces = pieces_of_a_man();
    EXPECT_TRUE(piece(pieces, "coat", "forepart", "lining").repeats);
    EXPECT_EQ(piece(pieces, "coat", "forepart").lining_alike,
              piece(pieces, "coat", "forepart", "lining").number_in_list);
    const PatternPiece& sleeve = piece(pieces, "coat", "upper sleeve", "lining");
    EXPECT_FALSE(sleeve.repeats);
    EXPECT_LT(area_of(sleeve), area_of(piece(pieces, "coat", "upper sleeve")));
    EXPECT_EQ(piece(pieces, "coat", "pocket bag", "lining").number, 4);
    EXPECT_EQ(piece(pieces, "gaiters", "foot strap", "leather").number, 2);
}

TEST(Seams, LengthsRunTheShorterWayRound) {
    const Chain square{{0, 0}, {100, 0}, {100, 100}, {0, 100}};
    EXPECT_NEAR(length_between(square, {0, 30}, {20, 0}), 50, 1e-9);
    EXPECT_NEAR(length_between(square, {50, -3}, {100, 50}), 100, 1e-9);
    EXPECT_EQ(point_between(square, {0, 30}, {20, 0}, 40), (Point{10, 0}));
    EXPECT_EQ(point_between(square, {20, 0}, {0, 30}, 40), (Point{0, 20}));
}

}  // namespace
}  // namespace platewright::cli
