// SPDX-License-Identifier: MIT
// Curves walked by arc length, on top of lib2geom. Lengths in mm.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/chain.h"
#include "base/geometry.h"

namespace platewright {

/// Reads SVG path data (SVG 1.1, 8.3); arcs and quadratic curves become cubic ones. On failure
/// `problem` says why.
std::optional<Path> parse_path_data(const std::string& data, std::string& problem);

/// One subpath as a chain of short chords, near enough to the curve (0.05 mm) that nobody could cut
/// the difference.
class Curve {
  public:
    Curve() = default;

    /// The first subpath of `path`; a closed one ends where it began.
    explicit Curve(const Path& path);

    /// A chain through given points.
    explicit Curve(const std::vector<Point>& chain);

    struct Station {
        Point at;
        /// Unit vector the way the curve runs.
        Point along;
    };

    [[nodiscard]] bool empty() const { return chain_.size() < 2; }

    [[nodiscard]] double length() const { return empty() ? 0 : run_.back(); }

    /// All turns added up, in radians, whichever way.
    [[nodiscard]] double turning() const;

    [[nodiscard]] const std::vector<Point>& chain() const { return chain_; }

    /// The place `distance` mm from the start; outside, the curve is prolonged straight.
    [[nodiscard]] Station at(double distance) const;

    /// `count` places at equal steps from `start` mm after the beginning to `end` mm before the
    /// end; one alone sits in the middle.
    [[nodiscard]] std::vector<Station> stations(int count, double start, double end) const;

    struct Corner {
        Point at;
        /// From the corner to that of the parallel curve one mm to the right.
        Point mitre;
    };

    /// Where the curve turns by more than `least` radians at once.
    [[nodiscard]] std::vector<Corner> corners(double least) const;

    /// The parallel curve `by` mm to the right of the way it runs, its corners mitred.
    [[nodiscard]] Curve offset(double by) const;

    /// As few points as keep the curve within `tolerance` mm.
    [[nodiscard]] std::vector<Point> simplified(double tolerance) const;

  private:
    std::vector<Point> chain_;
    std::vector<double> run_;
};

/// One cubic curve.
struct Cubic {
    Point begin;
    Point first;
    Point second;
    Point end;

    /// The place at that share of its parameter.
    [[nodiscard]] Point at(double share) const {
        const double rest = 1 - share;
        return begin * (rest * rest * rest) + first * (3 * rest * rest * share) +
               second * (3 * rest * share * share) + end * (share * share * share);
    }
};

/// All subpaths of `path` as closed chains.
std::vector<std::vector<Point>> outlines(const Path& path);

/// The edges of closed shapes laid together that lie inside none of the others: the outline of the
/// whole.
Path outer_edge(const std::vector<std::vector<Point>>& shapes);

/// Each subpath of a path for itself.
std::vector<Path> subpaths(const Path& path);

/// `path` with every subpath running clockwise on the page, so that several may be joined into one
/// clip.
Path clockwise(const Path& path);

/// A smooth path through `through` (centripetal Catmull-Rom, as cubic curves): no overshoot at
/// uneven steps.
Path smooth(const std::vector<Point>& through);

}  // namespace platewright
