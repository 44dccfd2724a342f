// SPDX-License-Identifier: MIT
// The pieces of a whole man: what is cut, how pieces meet, what is told of them.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <vector>

#include "pattern/fit.h"
#include "pattern/seams.h"
#include "pattern/shapes.h"
#include "tailored.h"

namespace platewright::cli {
namespace {

TEST(PiecesOfAMan, NotchesOfASeamMeet) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& back = piece(pieces, "coat", "back");
    const PatternPiece& fore = piece(pieces, "coat", "forepart");
    ASSERT_EQ(back.notches.size(), 6U);
    ASSERT_EQ(fore.notches.size(), 7U);
    const auto seam = [](const PatternPiece& of) {
        return length_between(of.outline, middle_of_notch(of, 0), middle_of_notch(of, 1));
    };
    EXPECT_NEAR(seam(back), seam(fore), 1);
    EXPECT_EQ(piece(pieces, "coat", "collar").notches.size(), 1U);
    EXPECT_EQ(piece(pieces, "gaiters", "inner side").notches.size(), 2U);
    EXPECT_NEAR(height_of_notch(piece(pieces, "gaiters", "outer side, fore part"), 0),
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

/// A slight man, a usual one and a stout one, in the order of `BodyMeasure`.
constexpr std::array kMen = {
    Body{{1640, 880, 760, 900, 360, 398, 575, 745, 275, 350, 322, 345, 217}},
    Body{{1730, 960, 853, 970, 385, 416, 610, 790, 310, 375, 345, 370, 232}},
    Body{{1760, 1180, 1200, 1160, 440, 430, 620, 790, 380, 430, 395, 430, 270}},
};

std::string measures_of(const Body& body) {
    std::string written = "measures: {";
    for (const BodyRow& row : body_rows()) {
        written += std::string(row.name) + ": " + std::to_string(body.of(row.measure)) + " mm, ";
    }
    return written + "}\n";
}

// Measured on the graded flats of the whole man, from the outlines.
TEST(PiecesOfAMan, GarmentsAreAsWideAsHeIsAndTheirEase) {
    for (const Body& body : kMen) {
        const auto work = work_for(measures_of(body));
        ASSERT_TRUE(work);
        std::set<std::string> measured;
        for (const MeasuredView& view : work->sheets.flats) {
            for (const FinishedGirth& girth : finished_girths(view.flat, body)) {
                const std::string what =
                    girth.garment + std::to_string(static_cast<int>(girth.measure));
                measured.insert(what);
                EXPECT_NEAR(girth.finished, girth.body + girth.ease, 3) << what;
            }
        }
        // Coat: neck, chest, waist, hip, arm; waistcoat two, breeches and gaiters four and three.
        EXPECT_EQ(measured.size(), 14U);
    }
}

// Measured on the pieces: the waistcoat closed over its buttons, the legs at the seat.
TEST(PiecesOfAMan, PiecesGoRoundHim) {
    const auto pieces = pieces_of_a_man(measures_of(kMen[1]));
    const PatternPiece& fore = piece(pieces, "waistcoat", "forepart");
    const PatternPiece& back = piece(pieces, "waistcoat", "back");
    ASSERT_FALSE(fore.notches.empty());
    ASSERT_FALSE(fore.buttons.empty());
    constexpr double below_chest = 416 - 242;
    const double girth =
        2 * (crossing(fore.outline, height_of_notch(fore, 0) - below_chest).greatest -
             fore.buttons.front().x + width_at(back, height_of_notch(back, 0) - below_chest));
    EXPECT_NEAR(girth, 960 + 50, 8);
    const PatternPiece& fore_leg = piece(pieces, "breeches", "fore leg");
    const PatternPiece& hind_leg = piece(pieces, "breeches", "hind leg");
    constexpr double below_seat = 292 + 270 - 200;
    EXPECT_NEAR(2 * (width_at(fore_leg, height_of_notch(fore_leg, 0) - below_seat) +
                     width_at(hind_leg, height_of_notch(hind_leg, 0) - below_seat)),
                970 + 110,
                45);
    // The waistband: both halves without the lap of each.
    const PatternPiece& band = piece(pieces, "breeches", "waistband");
    EXPECT_NEAR(2 * (shapes::box(band.outline).height() - 25), 853 + 20, 2.5);
}

TEST(PiecesOfAMan, OuterSideOfAGaiterOpensAndLapsOver) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& fore = piece(pieces, "gaiters", "outer side, fore part");
    const PatternPiece& hind = piece(pieces, "gaiters", "outer side, hind part");
    const PatternPiece& inner = piece(pieces, "gaiters", "inner side");
    const double calf = height_of_notch(inner, 0);
    EXPECT_NEAR(width_at(fore, calf) + width_at(hind, calf) - 14 - 30, width_at(inner, calf), 4);
    EXPECT_TRUE(fore.buttons.empty() && hind.buttons.size() > 5);
    // All along the opening but one: the foot strap is buttoned farther in, at the hem.
    const Point strap = *std::ranges::max_element(hind.buttons, {}, &Point::y);
    for (const Point at : hind.buttons) {
        EXPECT_NEAR(at.x - crossing(hind.outline, at.y).least, at == strap ? 59 : 30, 3);
    }
}

TEST(PiecesOfAMan, InnerSeamsOfTheLegsAreAsLong) {
    const auto pieces = pieces_of_a_man();
    const auto inner_seam = [&](const char* name, double side) {
        const PatternPiece& leg = piece(pieces, "breeches", name);
        // The fork is farthest towards the other leg.
        const Point fork = *std::ranges::max_element(
            leg.outline, {}, [&](Point p) { return side * p.x - (p.y < 200 ? 1000 : 0); });
        const Point foot = middle_of_notch(leg, side < 0 ? 0 : 1);
        return length_between(leg.outline, fork, foot);
    };
    EXPECT_NEAR(inner_seam("fore leg", -1), inner_seam("hind leg", 1), 2);
    EXPECT_GT(inner_seam("fore leg", -1), 150);
}

// The pleats of back and forepart are sewn together below the hip.
TEST(PiecesOfAMan, PleatsAreAsLong) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& fore = piece(pieces, "coat", "forepart");
    const Rect box = shapes::box(fore.outline);
    const Point end =
        *std::ranges::max_element(fore.outline, {}, [](Point p) { return p.x + p.y * 0.001; });
    const Point waist = middle_of_notch(fore, 0);
    // The pleat stands out beyond the waist.
    Point begin{0, 0};
    for (const Point p : fore.outline) {
        const bool beyond = p.x > waist.x + 50 && p.y > waist.y;
        begin = beyond && (begin.y == 0 || p.y < begin.y) ? p : begin;
    }
    const PatternPiece& back = piece(pieces, "coat", "back");
    const Chain& fold = back.lines.front();
    EXPECT_NEAR(end.x, box.right, 1);
    EXPECT_NEAR(length_between(fore.outline, begin, end), length_of(fold), 12);
}

// At the hem the back is wider, up to the fold of its pleat, than what is turned back of it.
TEST(PiecesOfAMan, HindTurnbackCanBeFolded) {
    const auto pieces = pieces_of_a_man();
    const Chain& fold = piece(pieces, "coat", "back").lines.front();
    const Rect back = shapes::box(piece(pieces, "coat", "back").outline);
    const Rect turnback = shapes::box(piece(pieces, "coat", "hind turnback").outline);
    EXPECT_GT(back.right - fold.back().x, 93);
    EXPECT_LT(back.right - fold.back().x, turnback.width() + 60);
}

// The cuff goes round the hem of the sleeve.
TEST(PiecesOfAMan, SleevesFitTheirCuffs) {
    const auto pieces = pieces_of_a_man();
    const auto at_hem = [&](const char* name) {
        const PatternPiece& half = piece(pieces, "coat", name);
        return width_at(half, shapes::box(half.outline).bottom - 1);
    };
    const double hem = at_hem("upper sleeve") + at_hem("under sleeve");
    const PatternPiece& cuff = piece(pieces, "coat", "cuff");
    EXPECT_NEAR(shapes::box(cuff.outline).width(), hem, 12);
}

TEST(PiecesOfAMan, SleeveHasRoomForTheArm) {
    const auto pieces = pieces_of_a_man(measures_of(kMen[1]));
    const PatternPiece& upper = piece(pieces, "coat", "upper sleeve");
    const PatternPiece& under = piece(pieces, "coat", "under sleeve");
    double widest = 0;
    for (double y = 20; y < 300; y += 5) {
        widest = std::max(widest, width_at(upper, y));
    }
    double under_arm = 0;
    for (double y = 5; y < 100; y += 5) {
        under_arm = std::max(under_arm, width_at(under, y));
    }
    EXPECT_NEAR(widest + under_arm, 310 + 45, 3);
}

// What is seen of a turned-down collar covers the seam of the neck: it stands first, then falls.
TEST(PiecesOfAMan, CollarThatFallsIsCutHigherThanItIsSeen) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& collar = piece(pieces, "coat", "collar");
    ASSERT_EQ(collar.lines.size(), 1U);
    const double fold = collar.lines.front().front().y;
    const double high = shapes::box(collar.outline).bottom;
    EXPECT_NEAR(high - fold, 40, 0.1);
    EXPECT_GT(fold, high - fold);
}

// The collar is sewn to back and foreparts: as long as their necks together.
TEST(PiecesOfAMan, CollarIsAsLongAsTheNeckline) {
    const auto work = work_for(measures_of(kMen[0]));
    ASSERT_TRUE(work);
    const PatternPiece& collar = piece(work->sheets.pieces, "coat", "collar");
    // Half of it, from the fold: the lower corner in front.
    const Rect box = shapes::box(collar.outline);
    Point corner;
    for (const Point p : collar.outline) {
        corner = p.y > box.centre().y && p.x > corner.x ? p : corner;
    }
    EXPECT_NEAR(2 * length_between(collar.outline, {0, box.bottom}, corner), 360 + 20, 4);
}

/// The largest angle between neighbouring chords of a part of an outline that is meant to be round,
/// in degrees.
double roughest(const Chain& outline, const Rect& within) {
    double most = 0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point at = outline[i];
        const Point before = at - outline[(i + outline.size() - 1) % outline.size()];
        const Point after = outline[(i + 1) % outline.size()] - at;
        if (at.x > within.left && at.x < within.right && at.y > within.top &&
            at.y < within.bottom) {
            most = std::max(most,
                            std::abs(std::atan2(before.x * after.y - before.y * after.x,
                                                before.x * after.x + before.y * after.y)));
        }
    }
    return most * 57.29578;
}

// At full size nobody cuts a strap or a bag with corners where it is round.
TEST(PiecesOfAMan, RoundEdgesAreRoundAtFullSize) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& strap = piece(pieces, "coat", "shoulder strap");
    ASSERT_GT(strap.outline.size(), 20U);
    EXPECT_LT(roughest(strap.outline, {-1, -1, 60, 60}), 10);
    const PatternPiece& bag = piece(pieces, "coat", "pocket bag", "lining");
    EXPECT_LT(roughest(bag.outline, {-1, 100, 1000, 1000}), 8);
    const PatternPiece& sleeve = piece(pieces, "coat", "upper sleeve");
    EXPECT_LT(roughest(sleeve.outline, {20, -1, 200, 80}), 8);
}

// The seam lies behind the shoulder, as it is drawn: what is above it is cut with the forepart.
TEST(PiecesOfAMan, ShoulderSeamsLieBehindAndAreAsLong) {
    const auto work = work_for("");
    ASSERT_TRUE(work);
    int parted = 0;
    for (const MeasuredView& view : work->sheets.flats) {
        const Chain* seam = view.flat.guide("shoulder-seam-left");
        if (seam == nullptr) {
            continue;
        }
        ++parted;
        const std::string garment = view.flat.title.substr(0, 4) == "Coat" ? "coat" : "waistcoat";
        const PatternPiece& back = piece(work->sheets.pieces, garment, "back");
        const PatternPiece& fore = piece(work->sheets.pieces, garment, "forepart");
        const Point across = seam->back() - seam->front();
        // Behind: from the corner at the neck as far across and down as it is drawn.
        EXPECT_TRUE(std::ranges::any_of(back.outline, [&](Point neck) {
            return neck.y < 30 && std::ranges::any_of(back.outline, [&](Point end) {
                       return length(end - neck - across) < 1.5;
                   });
        })) << garment;
        EXPECT_GT(across.y, 60);
        // Before: the edge between neck and hole is as long, and no longer falls as far.
        const Point neck = *std::ranges::min_element(fore.outline, {}, &Point::y);
        const Point end = *std::ranges::max_element(
            fore.outline, {}, [](Point p) { return p.y < 60 ? p.x : -1e6; });
        EXPECT_NEAR(length(end - neck), length(across), 3) << garment;
        EXPECT_LT(std::abs(end.y - neck.y), 40) << garment;
    }
    EXPECT_EQ(parted, 2);
}

TEST(PiecesOfAMan, SideOfTheSkirtIsFoldedWhereItsPleatBegins) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& fore = piece(pieces, "coat", "forepart");
    // The fold of the turnback, the pleat, the lapel's edge.
    ASSERT_EQ(fore.lines.size(), 3U);
    const Chain& pleat = fore.lines[1];
    // Its last stretch goes on to the hem.
    for (const Point p : std::span(pleat).first(pleat.size() - 1)) {
        EXPECT_NEAR(crossing(fore.outline, p.y).greatest - p.x, 65, 0.5);
    }
    EXPECT_GT(length_of(pleat), 500);
}

TEST(PiecesOfAMan, CanvasStiffensTheBreast) {
    const auto pieces = pieces_of_a_man();
    const PatternPiece& canvas = piece(pieces, "coat", "canvas", "interlining");
    const PatternPiece& fore = piece(pieces, "coat", "forepart");
    ASSERT_FALSE(canvas.outline.empty());
    EXPECT_EQ(canvas.cut, canvas.outline);
    // From the shoulder to below the waist, and narrower there.
    const Rect box = shapes::box(canvas.outline);
    EXPECT_NEAR(box.height(), height_of_notch(fore, 0) + 150, 8);
    EXPECT_GT(width_at(canvas, 200), 2 * width_at(canvas, box.bottom - 10));
    EXPECT_LT(area_of(canvas), area_of(fore) / 2);
}

TEST(PiecesOfAMan, AStrapIsAsItIsDrawn) {
    const auto work = work_for("", "tannbruck-lance-corporal.yaml");
    ASSERT_TRUE(work);
    const PatternPiece& strap = piece(work->sheets.pieces, "coat", "shoulder strap");
    ASSERT_EQ(strap.holes.size(), 1U);
    // The button shows at a fifth of its hole.
    const double button = strap.holes.front().first.y + kStrapHole / 5;
    EXPECT_FALSE(piece(work->sheets.pieces, "coat", "forepart").buttons.empty());
    const auto view = std::ranges::find_if(work->sheets.flats, [](const MeasuredView& each) {
        return each.flat.part("strap-left") != nullptr;
    });
    ASSERT_NE(view, work->sheets.flats.end());
    // From the button to the sleeve, on the drawing and on the piece.
    const FlatPart& drawn = *view->flat.part("strap-left");
    double farthest = 0;
    for (const Point p : drawn.outline.front()) {
        farthest = std::max(farthest, length(p - drawn.rows.back().at.front()));
    }
    const Rect box = shapes::box(strap.outline);
    EXPECT_NEAR(box.bottom - button, farthest, 9);
    EXPECT_GT(box.right, 40);
}

TEST(PiecesOfAMan, ButtonsStandClearOfTheEdge) {
    const auto pieces = pieces_of_a_man();
    for (const Point button : piece(pieces, "waistcoat", "forepart").buttons) {
        const auto& outline = piece(pieces, "waistcoat", "forepart").outline;
        // Half a button, and a little cloth.
        EXPECT_GT(button.x - crossing(outline, button.y).least, 10);
    }
}

// Without its inlay the edge would be cut away that is to be let out later.
TEST(PiecesOfAMan, InlaysAreCutWithTheirPiece) {
    const auto pieces = pieces_of_a_man();
    for (const auto& [garment, name] : {std::pair{"coat", "forepart"},
                                        {"coat", "back"},
                                        {"waistcoat", "back"},
                                        {"breeches", "hind leg"}}) {
        const PatternPiece& of = piece(pieces, garment, name);
        ASSERT_GT(of.inlay_seam.size(), 2U) << garment << " " << name;
        // The seam allowance of 10 mm round everything, and the inlay more beside the seam.
        const double usual = shapes::area(shapes::enlarged(of.outline, 10));
        const double wanted = (of.inlay_runs_out ? 15 : 25) * length_of(of.inlay_seam);
        EXPECT_NEAR((shapes::area(of.cut) - usual) / wanted, 1, 0.12) << garment << " " << name;
        EXPECT_EQ(of.inlay_line.size(), of.inlay_seam.size());
        for (std::size_t i = 0; i < of.inlay_line.size(); ++i) {
            EXPECT_NEAR(length(of.inlay_line[i] - of.inlay_seam[i]), 10, 0.01);
        }
    }
}

// The order's flap is that of the tailor's sheets, wherever it is set and whoever wears it.
TEST(Shapes, AnArcKeepsToItsEllipse) {
    const Chain arc = shapes::arc({0, 0}, 100, 60, 0, 3.14159265);
    EXPECT_NEAR(arc.front().x, 100, 1e-6);
    EXPECT_NEAR(arc.back().x, -100, 1e-6);
    for (std::size_t i = 1; i < arc.size(); ++i) {
        const Point middle = (arc[i - 1] + arc[i]) * 0.5;
        EXPECT_GT(std::hypot(middle.x / 100, middle.y / 60), 1 - 0.05 / 60);
    }
}

TEST(Seams, LengthsRunTheShorterWayRound) {
    const Chain square{{0, 0}, {100, 0}, {100, 100}, {0, 100}};
    EXPECT_NEAR(length_between(square, {0, 30}, {20, 0}), 50, 1e-9);
    EXPECT_NEAR(length_between(square, {50, -3}, {100, 50}), 100, 1e-9);
    EXPECT_EQ(point_between(square, {0, 30}, {20, 0}, 40), (Point{10, 0}));
    EXPECT_EQ(point_between(square, {20, 0}, {0, 30}, 40), (Point{0, 20}));
    EXPECT_EQ(seam_between(square, {0, 30}, {20, 0}), (Chain{{0, 30}, {0, 0}, {20, 0}}));
    EXPECT_EQ(seam_between(square, {20, 0}, {0, 30}), (Chain{{20, 0}, {0, 0}, {0, 30}}));
    EXPECT_EQ(seam_between(square, {20, 0}, {70, 0}), (Chain{{20, 0}, {70, 0}}));
}

TEST(Seams, ACornerIsRoundedAndNothingElseMoves) {
    const Chain square{{0, 0}, {100, 0}, {100, 100}, {0, 100}};
    const Chain round = rounded_at(square, {100, 100}, 20);
    EXPECT_EQ(round.front(), (Point{100, 80}));
    EXPECT_EQ(std::ranges::count(round, Point{100, 100}), 0);
    for (const Point corner : {Point{0, 0}, {100, 0}, {0, 100}}) {
        EXPECT_EQ(std::ranges::count(round, corner), 1);
    }
    const double area = shapes::area(round);
    EXPECT_LT(area, 10000);
    EXPECT_GT(area, 10000 - 20 * 20 / 2.0);
}

}  // namespace
}  // namespace platewright::cli
