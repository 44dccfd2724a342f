// SPDX-License-Identifier: MIT
// Dimensions on the flats and placement drawings of whole men keep clear of one another.
#include "layout/dimensioning.h"

#include <gtest/gtest.h>

#include <cmath>

#include "cli/tailor.h"
#include "support.h"

namespace platewright::cli {
namespace {

using sheet::DimensionLine;
using sheet::meet;

std::vector<Point> strip(const DimensionLine& each) {
    return {each.ground.begin(), each.ground.end()};
}

std::vector<Point> line(const DimensionLine& each) {
    return {each.line.first, each.line.second};
}

/// What is wrong between two dimensions of one drawing; nothing where all is well.
std::string conflict(const DimensionLine& a, const DimensionLine& b) {
    if (meet(strip(a), strip(b), 0)) {
        return "words on words";
    }
    if (meet(strip(a), line(b), 0) || meet(strip(b), line(a), 0)) {
        return "words on a dimension line";
    }
    for (const auto& [foot, end] : b.witnesses) {
        if (meet(strip(a), {foot, end}, 0)) {
            return "words on a witness line";
        }
    }
    return meet(line(a), line(b), -0.1) ? "dimension lines cross" : "";
}

std::string conflicts(const std::string& where, const std::vector<DimensionLine>& lines) {
    std::string told;
    for (const DimensionLine& a : lines) {
        for (const DimensionLine& b : lines) {
            const std::string wrong = &a == &b ? "" : conflict(a, b);
            if (!wrong.empty()) {
                told.append(where).append(", ").append(a.words).append(" and ").append(b.words);
                told.append(": ").append(wrong).append("\n");
            }
        }
    }
    return told;
}

/// Edges of the drawing that run through words which say that none does.
std::string crossed_edges(const Flat& flat, double scale, const std::vector<DimensionLine>& lines) {
    std::string told;
    for (const DimensionLine& each : lines) {
        for (const FlatPart& part : flat.parts) {
            for (const Chain& chain : part.outline) {
                for (std::size_t i = 1; i < chain.size() && !each.covers_edges; ++i) {
                    const std::vector<Point> edge{chain[i - 1] * (1 / scale),
                                                  chain[i] * (1 / scale)};
                    // The drawing is looked at in cells of half a millimetre.
                    told +=
                        meet(strip(each), edge, -0.5) ? each.words + " on " + part.name + "\n" : "";
                }
            }
        }
    }
    return told;
}

std::string all_conflicts(const std::string& man, const std::string& size, const Paper& paper) {
    Bench bench;
    const FileId file = bench.sources.add(PLATEWRIGHT_SOURCE_DIR "/plates/trial.yaml",
                                          "workshop: Trial\nman: " + man + ".yaml\nsize: " + size);
    const auto job = prepare_tailor(bench.workshop, file, bench.problems, bench.timings);
    const Typesetter type;
    const auto work =
        job ? tailor_work(bench.workshop, *job, paper, type, bench.problems) : std::nullopt;
    if (!work) {
        return man + " cannot be had";
    }
    std::string told;
    const auto count = [&told](const std::string& title, std::size_t drawn, std::size_t measured) {
        told += drawn == measured ? "" : title + ": not every dimension is drawn\n";
    };
    for (const MeasuredView& view : work->sheets.flats) {
        count(view.picture.title, view.lines.size(), view.dimensions.size());
        told += conflicts(view.picture.title, view.lines);
        told += crossed_edges(view.flat, view.picture.scale, view.lines);
    }
    for (const PlacementView& view : work->sheets.placements) {
        count(view.title, view.lines.size(), view.dimensions.size());
        told += conflicts(view.title, view.lines);
        told += crossed_edges(view.flat, view.picture.scale, view.lines);
    }
    return told;
}

TEST(Dimensioning, KeepsClearOnEveryFlatInEverySize) {
    for (const char* man : {"tannbruck-corporal", "halmgard-grenadier", "varrenau-corporal"}) {
        for (const char* size : {"small", "medium", "large"}) {
            EXPECT_EQ(all_conflicts(man, size, {}), "") << man << ", " << size;
        }
    }
}

TEST(Dimensioning, KeepsClearOnSmallPaper) {
    EXPECT_EQ(all_conflicts("tannbruck-corporal", "large", {148, 210}), "");
}

TEST(Dimensioning, ConvexOutlinesMeetOrDoNot) {
    const std::vector<Point> square{{0, 0}, {10, 0}, {10, 10}, {0, 10}};
    EXPECT_TRUE(meet(square, {{5, 5}, {20, 20}}, 0));
    EXPECT_FALSE(meet(square, {{11, 0}, {11, 10}}, 0));
    EXPECT_TRUE(meet(square, {{11, 0}, {11, 10}}, 1.5));
    EXPECT_FALSE(meet(square, {{9.8, 0}, {30, 0}}, -0.5));
    // Past a corner, though the boxes overlap.
    EXPECT_FALSE(meet(square, {{8, 14}, {14, 8}}, 0));
}

// The shorter of two that begin alike stands nearer to the drawing.
TEST(Dimensioning, ShortOnesStandNearest) {
    Flat flat;
    FlatPart part;
    part.outline = {{{0, 0}, {100, 0}, {100, 60}, {0, 60}}};
    flat.parts.push_back(part);
    const std::vector<Dimension> both{
        {"length", DimensionWay::across, {0, 60}, {100, 60}, "", std::nullopt},
        {"length", DimensionWay::across, {0, 60}, {50, 60}, "", std::nullopt}};
    const Typesetter type;
    sheet::Ruler ruler(type);
    const OwnUnit unit;
    const auto laid = sheet::lay_dimensions(
        both, {{flat, Language::english, unit, ruler}, 1, {-50, -50, 150, 120}});
    EXPECT_GT(laid[1].from.y, 60);
    EXPECT_GE(laid[0].from.y, laid[1].from.y + 5);
    EXPECT_EQ(conflicts("", laid), "");
}

/// What lies on a sheet of its own, laid out 1 : 1.
std::vector<DimensionLine> laid_on(const Flat& flat, const std::vector<Dimension>& dimensions) {
    const Typesetter type;
    sheet::Ruler ruler(type);
    const OwnUnit unit;
    return sheet::lay_dimensions(dimensions,
                                 {{flat, Language::english, unit, ruler}, 1, {-50, -50, 150, 120}});
}

// A line that runs along an edge of the drawing is told from it, and so are its words.
TEST(Dimensioning, StandsOffTheEdgesItRunsAlong) {
    Flat flat;
    FlatPart part;
    part.outline = {{{0, 0}, {60, 0}, {60, 60}, {0, 60}}};
    flat.parts.push_back(part);
    // A neighbour whose upper edge lies 12 mm below.
    part.outline = {{{0, 72}, {60, 72}, {60, 90}, {0, 90}}};
    flat.parts.push_back(part);
    const auto laid =
        laid_on(flat, {{"length", DimensionWay::across, {0, 60}, {60, 60}, "", std::nullopt}});
    for (const double edge : {0.0, 60.0, 72.0, 90.0}) {
        EXPECT_GT(std::abs(laid[0].from.y - edge), 2) << edge;
        EXPECT_FALSE(meet(strip(laid[0]), {{0, edge}, {60, edge}}, 0.5)) << edge;
    }
}

// Words between two buttons would stand on the seam that is drawn there.
TEST(Dimensioning, WordsDoNotStandOnSeams) {
    Flat flat;
    FlatPart part;
    part.outline = {{{-40, -20}, {40, -20}, {40, 50}, {-40, 50}}};
    part.lines = {{{0, -20}, {0, 50}}};
    flat.parts.push_back(part);
    const auto laid =
        laid_on(flat, {{"length", DimensionWay::across, {-15, 0}, {15, 0}, "", std::nullopt}});
    EXPECT_FALSE(meet(strip(laid[0]), part.lines.front(), 0.2));
}

// An arrow's head is seen only clear of a button.
TEST(Dimensioning, ArrowsKeepClearOfButtons) {
    Flat flat;
    FlatPart part;
    part.outline = {{{0, 0}, {60, 0}, {60, 60}, {0, 60}}};
    part.rows = {{FlatRow::Kind::buttons, {}, {{62, 10}}, 5, {}}};
    flat.parts.push_back(part);
    const auto laid = laid_on(
        flat, {{"rank mark width", DimensionWay::down, {60, 16}, {60, 20}, "", std::nullopt}});
    ASSERT_TRUE(laid[0].arrows_outside);
    const double away = std::hypot(laid[0].from.x - 62, laid[0].from.y - 2.4 - 10);
    EXPECT_GT(std::min(away, std::hypot(laid[0].to.x - 62, laid[0].to.y - 2.4 - 10)), 3);
}

}  // namespace
}  // namespace platewright::cli
