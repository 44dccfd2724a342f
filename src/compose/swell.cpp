// SPDX-License-Identifier: MIT
// The contour of a piece: a line that swells in the shade and opens in the light.
#include "compose/swell.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numbers>

#include "compose/brush.h"
#include "compose/chance.h"
#include "compose/curve.h"

namespace platewright {

namespace {

/// The line is at most so long between two places at which its width is set, in mm.
constexpr double kStep = 18;
/// Less than anyone sees in print at 1 : 7, in mm on the body.
constexpr double kUnseen = 0.12;
/// What turns by more than this, in radians, is a corner: there the graver sets in anew.
constexpr double kCorner = 0.6;
/// The line's width in full light, of that in full shade, and the share of it outside the edge.
constexpr double kLit = 0.14;
constexpr double kOutside = 0.45;
/// The line opens on lit edges longer than this, about so often, over so much of it, in mm.
constexpr double kOpenFrom = 70;
constexpr double kOpenEvery = 120;
constexpr double kOpen = 14;
constexpr int kMostOpen = 12;
/// Its tremble goes on over so many mm.
constexpr double kTremble = 46;
/// More pieces than any garment's edge has; a coast line of a drawing is not worth its tremble.
constexpr double kMostPieces = 1000;

/// One stretch of contour from corner to corner.
struct Stretch {
    std::vector<Point> points;
    /// Along it, up to each point.
    std::vector<double> run;
    /// +1 where what it bounds lies to the left of the way it runs, else -1.
    double out = 1;
    std::uint32_t key = 0;

    [[nodiscard]] double whole() const { return run.back(); }
};

/// How far along the chain each point lies.
std::vector<double> runs_of(const std::vector<Point>& chain) {
    std::vector<double> run{0};
    for (std::size_t i = 1; i < chain.size(); ++i) {
        run.push_back(run.back() + length(chain[i] - chain[i - 1]));
    }
    return run;
}

/// The same chain with no piece longer than `kStep`.
std::vector<Point> divided(const std::vector<Point>& chain) {
    const double step = std::max(kStep, runs_of(chain).back() / kMostPieces);
    std::vector<Point> all{chain.front()};
    for (std::size_t i = 1; i < chain.size(); ++i) {
        const Point way = chain[i] - chain[i - 1];
        const int pieces = std::max(1, static_cast<int>(std::ceil(length(way) / step)));
        for (int k = 1; k < pieces; ++k) {
            all.push_back(chain[i - 1] + way * (static_cast<double>(k) / pieces));
        }
        all.push_back(chain[i]);
    }
    return all;
}

double turn_at(const std::vector<Point>& chain, std::size_t i) {
    return turn(chain[i] - chain[i - 1], chain[i + 1] - chain[i]);
}

/// A closed chain begun at its sharpest corner.
std::vector<Point> from_a_corner(std::vector<Point> chain) {
    if (length(chain.front() - chain.back()) > 0.01 || chain.size() < 4) {
        return chain;
    }
    chain.pop_back();
    const std::size_t n = chain.size();
    const auto turned = [&](std::size_t i) {
        return turn(chain[i] - chain[(i + n - 1) % n], chain[(i + 1) % n] - chain[i]);
    };
    std::size_t sharpest = 0;
    for (std::size_t i = 1; i < n; ++i) {
        sharpest = turned(i) > turned(sharpest) ? i : sharpest;
    }
    std::rotate(chain.begin(), chain.begin() + static_cast<std::ptrdiff_t>(sharpest), chain.end());
    chain.push_back(chain.front());
    return chain;
}

/// Which side of the stretch is outside, asked at its longest piece.
double outer_side(const std::vector<Point>& points, const std::vector<Chain>& shape) {
    std::size_t longest = 1;
    for (std::size_t i = 1; i < points.size(); ++i) {
        if (length(points[i] - points[i - 1]) > length(points[longest] - points[longest - 1])) {
            longest = i;
        }
    }
    const Point along = unit(points[longest] - points[longest - 1]);
    const Point middle = (points[longest] + points[longest - 1]) * 0.5;
    // An edge drawn for itself may run a little beside the outline.
    for (const double aside : {0.4, 1.0, 2.0, 4.0}) {
        const bool right = inside(shape, middle + right_of(along) * aside);
        if (right != inside(shape, middle - right_of(along) * aside)) {
            return right ? -1 : 1;
        }
    }
    return 1;
}

Stretch stretch_of(const std::vector<Point>& points, const std::vector<Chain>& shape) {
    Stretch made;
    made.points = divided(points);
    made.run = runs_of(made.points);
    made.out = outer_side(points, shape);
    const Point begin = points.front();
    made.key = static_cast<std::uint32_t>(std::lround(begin.x * 3 + begin.y * 7) & 0xffff);
    return made;
}

std::vector<Stretch> stretches(const std::vector<Point>& chain, const std::vector<Chain>& shape) {
    std::vector<Stretch> all;
    std::vector<Point> open;
    for (std::size_t i = 0; i < chain.size(); ++i) {
        open.push_back(chain[i]);
        const bool last = i + 1 == chain.size();
        if (i > 0 && (last || turn_at(chain, i) > kCorner)) {
            all.push_back(stretch_of(open, shape));
            open.assign(1, chain[i]);
        }
    }
    return all;
}

Point along_at(const std::vector<Point>& points, std::size_t i) {
    const Point before = i > 0 ? unit(points[i] - points[i - 1]) : Point{};
    const Point after = i + 1 < points.size() ? unit(points[i + 1] - points[i]) : Point{};
    return unit(before + after);
}

/// How far what looks that way is turned from the light, 0 to 1.
double shade(Point outward) {
    const double away = -dot(outward, unit(kToLight));
    return eased(std::clamp((away + 0.35) / 1.15, 0.0, 1.0));
}

/// How open the line is at `at` mm of the stretch, 0 to 1.
double openness(const Stretch& stretch, double at) {
    const double whole = stretch.whole();
    if (whole < kOpenFrom) {
        return 0;
    }
    const int gaps = std::clamp(static_cast<int>(std::lround(whole / kOpenEvery)), 1, kMostOpen);
    double open = 0;
    for (int k = 0; k < gaps; ++k) {
        const double apart = scatter(stretch.key * 31U + static_cast<std::uint32_t>(k));
        const double place = (k + 0.22 + 0.56 * apart) / gaps * whole;
        open = std::max(open, 1 - std::abs(at - place) / kOpen);
    }
    return std::clamp(open * 1.6, 0.0, 1.0);
}

/// Of the full width, how much the line has at point `i`.
double fullness(const Stretch& stretch, std::size_t i, Point outward) {
    const double t = std::clamp(stretch.run[i] / stretch.whole(), 0.0, 1.0);
    // From corner to corner it swells and draws in again, on short edges hardly.
    const double drawn_in = 0.7 * std::clamp(stretch.whole() / 80, 0.0, 1.0);
    const double swell = 1 - drawn_in * (1 - std::sqrt(std::sin(std::numbers::pi * t)));
    const double dark = shade(outward);
    const double tremble = 0.7 + 0.6 * drift(stretch.key + stretch.run[i] / kTremble);
    const double lit = 1 - openness(stretch, stretch.run[i]) * std::clamp(1 - 3 * dark, 0.0, 1.0);
    return (kLit * lit + (1 - kLit) * dark) * swell * tremble;
}

Path ribbon(const Stretch& stretch, double width) {
    std::vector<Point> outer;
    std::vector<Point> inner;
    for (std::size_t i = 0; i < stretch.points.size(); ++i) {
        const Point outward = right_of(along_at(stretch.points, i)) * stretch.out;
        const double full = width * fullness(stretch, i, outward);
        const double out = full * kOutside;
        outer.push_back(stretch.points[i] + outward * out);
        inner.push_back(stretch.points[i] - outward * (full - out));
    }
    outer.insert(outer.end(), inner.rbegin(), inner.rend());
    return polygon(outer);
}

}  // namespace

Path swelling(const Path& contour, const std::vector<Chain>& shape, double width) {
    Path all;
    for (const Path& each : subpaths(contour)) {
        const std::vector<Point> chain = Curve(each).simplified(kUnseen);
        if (chain.size() < 2) {
            continue;
        }
        for (const Stretch& stretch : stretches(from_a_corner(chain), shape)) {
            all.append(ribbon(stretch, width));
        }
    }
    return all;
}

}  // namespace platewright
