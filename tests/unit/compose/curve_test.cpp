// SPDX-License-Identifier: MIT
// Arc lengths, stations, outlines.
#include "compose/curve.h"

#include <2geom/path.h>
#include <2geom/pathvector.h>
#include <2geom/sbasis-geometric.h>
#include <2geom/svg-path-parser.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "base/outline.h"

namespace platewright {
namespace {

Path read(const std::string& data) {
    std::string problem;
    const auto path = parse_path_data(data, problem);
    EXPECT_TRUE(path) << problem;
    return path.value_or(Path{});
}

TEST(PathData, KeepsMovesLinesAndCurves) {
    const Path path = read("m 1 2 l 3 0 q 1 1 2 0 c 0 1 1 1 1 0 z");
    using enum Path::Verb;
    EXPECT_EQ(path.verbs, (std::vector{move, line, cubic, cubic, close}));
    EXPECT_EQ(path.points.front(), (Point{1, 2}));
    EXPECT_EQ(path.points.back(), (Point{7, 2}));
}

TEST(PathData, AnArcBecomesCurvesOfTheSameLength) {
    const Curve half(read("M -50 0 A 50 50 0 0 1 50 0"));
    EXPECT_NEAR(half.length(), 50 * std::numbers::pi, 0.1);
}

TEST(PathData, RefusesWhatIsNoPath) {
    for (const char* bad :
         {"", "M", "M 1 2", "hello", "M 0 0 L", "L 1 2 3", "M 0 0 L 1e9 0", "M 0 0 L nan 2"}) {
        std::string problem;
        EXPECT_FALSE(parse_path_data(bad, problem)) << bad;
        EXPECT_FALSE(problem.empty()) << bad;
    }
}

TEST(Curve, WalksByArcLength) {
    const Curve corner(std::vector<Point>{{0, 0}, {30, 0}, {30, 40}});
    EXPECT_DOUBLE_EQ(corner.length(), 70);
    EXPECT_EQ(corner.at(10).at, (Point{10, 0}));
    EXPECT_EQ(corner.at(50).at, (Point{30, 20}));
    EXPECT_EQ(corner.at(50).along, (Point{0, 1}));
}

TEST(Curve, IsProlongedStraightBeyondItsEnds) {
    const Curve line(std::vector<Point>{{0, 0}, {0, 10}});
    EXPECT_EQ(line.at(-5).at, (Point{0, -5}));
    EXPECT_EQ(line.at(12).at, (Point{0, 12}));
}

TEST(Curve, StationsAreEvenlySpacedAlongABentLine) {
    const Curve bent(read("M 0 0 C 40 0 60 20 60 80"));
    const auto stations = bent.stations(7, 5, 10);
    ASSERT_EQ(stations.size(), 7U);
    EXPECT_NEAR(length(stations.front().at - bent.at(5).at), 0, 1e-9);
    EXPECT_NEAR(length(stations.back().at - bent.at(bent.length() - 10).at), 0, 1e-9);
    const double step = (bent.length() - 15) / 6;
    for (std::size_t i = 1; i < stations.size(); ++i) {
        EXPECT_NEAR(
            length(stations[i].at - bent.at(5 + step * static_cast<double>(i)).at), 0, 1e-9);
    }
}

TEST(Curve, OneStationAloneSitsInTheMiddle) {
    const Curve line(std::vector<Point>{{0, 0}, {100, 0}});
    EXPECT_EQ(line.stations(1, 0, 0).front().at, (Point{50, 0}));
    EXPECT_TRUE(line.stations(0, 0, 0).empty());
    EXPECT_TRUE(line.stations(-3, 0, 0).empty());
}

TEST(Curve, ParallelCurveKeepsItsDistance) {
    const Curve down(std::vector<Point>{{0, 0}, {0, 50}, {0, 100}});
    // Walking down the page, the right-hand side is towards smaller x.
    const Curve beside = down.offset(11);
    for (const Point p : beside.chain()) {
        EXPECT_NEAR(p.x, -11, 1e-9);
    }
}

TEST(Curve, RoundACornerTheParallelCurveIsMitred) {
    const Curve corner(read("M0 0C0 30 0 70 0 100C30 100 70 100 100 100"));
    for (const double by : {-8.0, 8.0}) {
        const Curve beside = corner.offset(by);
        const Point mitre{-by, 100 + by};
        EXPECT_TRUE(std::ranges::any_of(beside.chain(), [&](Point p) {
            return length(p - mitre) < 0.01;
        })) << by;
        for (const Point p : beside.chain()) {
            EXPECT_NEAR(by < 0 ? std::min(p.x, 100 - p.y) : std::max(-p.x, p.y - 100), 8, 0.01);
        }
    }
    ASSERT_EQ(corner.corners(0.5).size(), 1U);
    EXPECT_LT(length(corner.corners(0.5).front().mitre - Point{-1, 1}), 0.01);
}

TEST(Curve, WithinABentCornerTheParallelCurveComesNoNearer) {
    const Curve corner(read("M0 0C10 30 10 70 0 100C30 90 70 90 100 100"));
    const Curve beside = corner.offset(-8);
    for (const Point p : beside.chain()) {
        for (double run = 0; run <= corner.length(); run += 0.5) {
            EXPECT_GT(length(p - corner.at(run).at), 7.8);
        }
    }
}

TEST(Curve, SimplifyingStaysWithinTheTolerance) {
    const Curve arc(read("M 0 0 C 55 0 100 45 100 100"));
    const Curve fewer(arc.simplified(0.5));
    EXPECT_LT(fewer.chain().size(), arc.chain().size());
    EXPECT_NEAR(fewer.length(), arc.length(), 0.5);
}

/// lib2geom integrates lengths and areas of the curves themselves; our chords must agree.
TEST(Curve, AgreesWithTheIntegralsOfTheGeometryLibrary) {
    for (const char* data :
         {"M 0 0 C 40 0 60 20 60 80 C 60 120 20 150 0 160 Z",
          "M 113 306 C 105 340 96 390 88 470 L 98 654 L 45 662 Q 10 540 0 318 Z",
          "M -200 770 A 60 25 10 0 1 -100 760 L -104 860 A 60 22 8 0 0 -196 868 Z"}) {
        const Geom::PathVector theirs = Geom::parse_svg_path(data);
        const auto pieces = theirs.front().toPwSb();
        const Curve ours(read(data));
        EXPECT_NEAR(ours.length(), Geom::length(pieces, 0.001), ours.length() * 2e-3) << data;
        Geom::Point centre;
        double area = 0;
        Geom::centroid(pieces, centre, area);
        EXPECT_NEAR(std::abs(signed_area(read(data))), std::abs(area), std::abs(area) * 1e-3)
            << data;
    }
}

TEST(Outline, ClockwiseTurnsOnlyWhatRunsTheOtherWay) {
    const Path right = read("M 0 0 L 10 0 L 10 10 Z");
    EXPECT_EQ(clockwise(right), right);
    const Path wrong = read("M 0 0 L 10 10 C 10 8 10 2 10 0 Z");
    const Path turned = clockwise(wrong);
    EXPECT_GT(signed_area(turned), 0);
    EXPECT_NEAR(signed_area(turned), -signed_area(wrong), 1e-9);
}

TEST(Outline, InsideIsEvenOdd) {
    const auto ring = outlines(read("M 0 0 H 30 V 30 H 0 Z M 10 10 H 20 V 20 H 10 Z"));
    EXPECT_TRUE(inside(ring, {5, 5}));
    EXPECT_FALSE(inside(ring, {15, 15}));
    EXPECT_FALSE(inside(ring, {35, 5}));
}

TEST(Outline, OuterEdgeLeavesOutWhatLiesInsideANeighbour) {
    const std::vector<Point> left{{0, 0}, {10, 0}, {10, 10}, {0, 10}};
    const std::vector<Point> right{{5, 2}, {20, 2}, {20, 8}, {5, 8}};
    const Path edge = outer_edge({left, right});
    for (const Point p : edge.points) {
        EXPECT_FALSE(p == (Point{5, 2}) || p == (Point{5, 8}));
    }
}

TEST(Outline, OuterEdgeRunsToWhereOutlinesCross) {
    const std::vector<Point> left{{0, 0}, {10, 0}, {10, 10}, {0, 10}};
    const std::vector<Point> right{{5, 5}, {15, 5}, {15, 15}, {5, 15}};
    const Path edge = outer_edge({left, right});
    for (const Point crossing : {Point{10, 5}, Point{5, 10}}) {
        const auto ends = std::ranges::count_if(
            edge.points, [&](Point p) { return length(p - crossing) < 0.01; });
        EXPECT_EQ(ends, 2) << "both outlines should end at " << crossing.x << ", " << crossing.y;
    }
}

TEST(Smooth, PassesThroughItsPointsWithoutOvershoot) {
    const Path path = smooth({{0, 0}, {10, 0}, {11, 0}, {40, 0}});
    for (const Point p : path.points) {
        EXPECT_NEAR(p.y, 0, 1e-9);
        EXPECT_GE(p.x, -1e-9);
        EXPECT_LE(p.x, 40 + 1e-9);
    }
    EXPECT_EQ(path.points.back(), (Point{40, 0}));
}

}  // namespace
}  // namespace platewright
