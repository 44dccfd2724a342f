// SPDX-License-Identifier: MIT
// Plane geometry for the cutting table, on top of Clipper.
#include "pattern/shapes.h"

#include <algorithm>
#include <cmath>
#include <polyclipping/clipper.hpp>

namespace platewright::shapes {
namespace {

/// The library counts in whole numbers: thousandths of a millimetre.
constexpr double kGrain = 1000;
/// What belongs together is joined over gaps as wide as twice this.
constexpr double kGap = 0.25;

ClipperLib::Path to_library(const Chain& chain) {
    ClipperLib::Path path;
    for (const Point p : chain) {
        path.emplace_back(std::llround(p.x * kGrain), std::llround(p.y * kGrain));
    }
    if (ClipperLib::Area(path) < 0) {
        ClipperLib::ReversePath(path);
    }
    return path;
}

Chain from_library(const ClipperLib::Path& path) {
    Chain chain;
    for (const ClipperLib::IntPoint p : path) {
        chain.push_back({static_cast<double>(p.X) / kGrain, static_cast<double>(p.Y) / kGrain});
    }
    // Begins at its topmost point, so that the same outline is always the same chain.
    const auto first = std::ranges::min_element(
        chain, [](Point a, Point b) { return a.y != b.y ? a.y < b.y : a.x < b.x; });
    // Not std::ranges::rotate: its result type breaks clang 14 with this standard library.
    std::rotate(chain.begin(), first, chain.end());
    return chain;
}

Chain largest(const ClipperLib::Paths& paths) {
    const auto found =
        std::ranges::max_element(paths, [](const ClipperLib::Path& a, const ClipperLib::Path& b) {
            return ClipperLib::Area(a) < ClipperLib::Area(b);
        });
    return found == paths.end() ? Chain{} : from_library(*found);
}

ClipperLib::Paths grown(const ClipperLib::Paths& paths, double by) {
    ClipperLib::ClipperOffset offset(2);
    offset.AddPaths(paths, ClipperLib::jtMiter, ClipperLib::etClosedPolygon);
    ClipperLib::Paths result;
    offset.Execute(result, by * kGrain);
    return result;
}

}  // namespace

double area(const Chain& outline) {
    double twice = 0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        twice += cross(outline[i], outline[(i + 1) % outline.size()]);
    }
    return std::abs(twice) / 2;
}

Rect box(const Chain& outline) {
    Rect rect;
    for (const Point p : outline) {
        rect.include(p);
    }
    return rect;
}

Chain joined(const std::vector<Chain>& shapes) {
    ClipperLib::Clipper clipper;
    for (const Chain& shape : shapes) {
        clipper.AddPaths(grown({to_library(shape)}, kGap), ClipperLib::ptSubject, /*Closed=*/true);
    }
    ClipperLib::Paths result;
    clipper.Execute(ClipperLib::ctUnion, result, ClipperLib::pftNonZero, ClipperLib::pftNonZero);
    return simplified(largest(grown(result, -kGap)), 0.05);
}

Chain common(const std::vector<Chain>& a, const Chain& b) {
    ClipperLib::Clipper clipper;
    for (const Chain& shape : a) {
        clipper.AddPath(to_library(shape), ClipperLib::ptSubject, /*Closed=*/true);
    }
    clipper.AddPath(to_library(b), ClipperLib::ptClip, /*Closed=*/true);
    ClipperLib::Paths result;
    clipper.Execute(
        ClipperLib::ctIntersection, result, ClipperLib::pftNonZero, ClipperLib::pftNonZero);
    return largest(result);
}

Chain without(const Chain& a, const Chain& b) {
    ClipperLib::Clipper clipper;
    clipper.AddPath(to_library(a), ClipperLib::ptSubject, /*Closed=*/true);
    clipper.AddPath(to_library(b), ClipperLib::ptClip, /*Closed=*/true);
    ClipperLib::Paths result;
    clipper.Execute(
        ClipperLib::ctDifference, result, ClipperLib::pftNonZero, ClipperLib::pftNonZero);
    return largest(result);
}

Chain near_line(const Chain& line, double by) {
    // Chords of a rounded end may be that far from the round.
    constexpr double off = 0.05;
    ClipperLib::Path path;
    for (const Point p : line) {
        path.emplace_back(std::llround(p.x * kGrain), std::llround(p.y * kGrain));
    }
    ClipperLib::ClipperOffset offset(2, off * kGrain);
    offset.AddPath(path, ClipperLib::jtRound, ClipperLib::etOpenRound);
    ClipperLib::Paths result;
    offset.Execute(result, by * kGrain);
    return largest(result);
}

Chain within(const std::vector<Chain>& shapes, const Rect& of) {
    return common(
        shapes,
        {{of.left, of.top}, {of.right, of.top}, {of.right, of.bottom}, {of.left, of.bottom}});
}

Chain enlarged(const Chain& outline, double by) {
    return by > 0 ? largest(grown({to_library(outline)}, by)) : outline;
}

Chain without_points(const Chain& outline, double by) {
    const Chain left = largest(grown(grown({to_library(outline)}, -by), by));
    return left.empty() ? outline : left;
}

Chain mirrored(const Chain& chain, Point from, Point to) {
    const Point along = unit(to - from);
    Chain result;
    for (const Point p : chain) {
        const Point arm = p - from;
        const double across = dot(arm, right_of(along));
        result.push_back(p - right_of(along) * (2 * across));
    }
    return result;
}

Chain arc(Point middle, double across, double down, double from, double to) {
    constexpr double off = 0.04;
    const double radius = std::max({across, down, 2 * off});
    // The rise of a chord over the angle it spans.
    const double step = 2 * std::acos(1 - off / radius);
    const int steps = std::max(1, static_cast<int>(std::ceil(std::abs(to - from) / step)));
    Chain chain;
    for (int i = 0; i <= steps; ++i) {
        const double turn = from + (to - from) * i / steps;
        chain.push_back(middle + Point{across * std::cos(turn), down * std::sin(turn)});
    }
    return chain;
}

Chain at_origin(const Chain& chain) {
    const Rect all = box(chain);
    Chain result;
    for (const Point p : chain) {
        result.push_back(p - Point{all.left, all.top});
    }
    return result;
}

Chain turned_down(const Chain& chain, Point along) {
    const Point down = unit(along);
    Chain result;
    for (const Point p : chain) {
        result.push_back({-dot(p, right_of(down)), dot(p, down)});
    }
    return result;
}

Chain simplified(const Chain& outline, double tolerance) {
    ClipperLib::Path path = to_library(outline);
    if (path.size() < 4) {
        return outline;
    }
    ClipperLib::CleanPolygon(path, tolerance * kGrain);
    return path.size() < 3 ? outline : from_library(path);
}

}  // namespace platewright::shapes
