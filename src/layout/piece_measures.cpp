// SPDX-License-Identifier: MIT
// The measures of a piece are found on its outline: pieces of every garment have them.
#include "layout/piece_measures.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <optional>
#include <utility>

#include "layout/piece.h"
#include "pattern/shapes.h"

namespace platewright {
namespace {

/// Shorter pieces are small parts, mm.
constexpr double kLeastLength = 25;
/// A width that differs by less is told once, mm.
constexpr double kSameWidth = 4;
/// Corners of the foot lie in this part of the piece, and turn by more than this (radians).
constexpr double kFoot = 0.1;
constexpr double kCorner = 0.6;
/// A hollow is at least so deep, mm.
constexpr double kHollow = 12;

/// How often the outline is crossed at that height.
int crossings(const Chain& outline, double y) {
    int number = 0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        number += (outline[i].y <= y) != (outline[(i + 1) % outline.size()].y <= y) ? 1 : 0;
    }
    return number;
}

/// The height just under the deepest hollow that the upper half has from above: an arm's hole, the
/// head of an under sleeve.
std::optional<double> under_hollow(const Chain& outline, const Rect& box) {
    constexpr double step = 2;
    std::optional<double> under;
    double deep = 0;
    for (double y = box.top + step; y < box.centre().y; y += step) {
        if (crossings(outline, y) > 2) {
            deep += step;
        } else {
            under = deep >= kHollow ? y : under;
            deep = 0;
        }
    }
    return under;
}

/// How far the outline turns at that point, radians.
double turn_at(const Chain& outline, std::size_t i) {
    const std::size_t n = outline.size();
    return turn(outline[i] - outline[(i + n - 1) % n], outline[(i + 1) % n] - outline[i]);
}

/// The outermost corners of the lower end; none if it is round.
std::optional<std::pair<Point, Point>> foot_of(const Chain& outline, const Rect& box) {
    Chain corners;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        if (outline[i].y > box.bottom - box.height() * kFoot && turn_at(outline, i) > kCorner) {
            corners.push_back(outline[i]);
        }
    }
    if (corners.size() < 2) {
        return std::nullopt;
    }
    const auto [left, right] =
        std::ranges::minmax_element(corners, {}, [](Point p) { return p.x; });
    return std::pair{*left, *right};
}

/// Level from edge to edge at that height.
std::pair<Point, Point> chord(const Chain& outline, double y) {
    const Crossing at = crossing(outline, y);
    return {{at.least, y}, {at.greatest, y}};
}

double width_of(const std::pair<Point, Point>& level) {
    return level.second.x - level.first.x;
}

/// Across the piece where it is widest above; none where it only widens to its foot.
std::optional<std::pair<Point, Point>> breadth_of(const Chain& outline, const Rect& box) {
    if (const std::optional<double> y = under_hollow(outline, box)) {
        return chord(outline, *y);
    }
    constexpr double above = 0.6;
    constexpr double step = 1;
    const double last = box.top + box.height() * above;
    double widest = box.top + step;
    for (double y = widest; y < last; y += step) {
        widest = width_of(chord(outline, y)) > width_of(chord(outline, widest)) + 0.01 ? y : widest;
    }
    return widest + 2 * step < last ? std::optional{chord(outline, widest)} : std::nullopt;
}

}  // namespace

std::vector<Dimension> measures_of(const PatternPiece& piece) {
    const Rect box = shapes::box(piece.outline);
    std::vector<Dimension> all;
    if (box.height() < kLeastLength) {
        return all;
    }
    const Point top = *std::ranges::min_element(piece.outline, {}, &Point::y);
    const Point bottom = *std::ranges::min_element(piece.outline, std::greater{}, &Point::y);
    all.push_back({"length", DimensionWay::down, top, bottom, {}, {}});
    const auto breadth = breadth_of(piece.outline, box);
    if (breadth) {
        all.push_back({"width", DimensionWay::across, breadth->first, breadth->second, {}, {}});
    }
    const auto foot = foot_of(piece.outline, box);
    if (foot && (!breadth || std::abs(width_of(*foot) - width_of(*breadth)) > kSameWidth)) {
        all.push_back({"width below", DimensionWay::across, foot->first, foot->second, {}, {}});
    }
    return all;
}

std::vector<sheet::DimensionLine> measure_lines(const PatternPiece& piece,
                                                double scale,
                                                Language language,
                                                const OwnUnit& unit,
                                                sheet::Ruler& ruler) {
    const std::vector<Dimension> measures = measures_of(piece);
    if (measures.empty()) {
        return {};
    }
    Flat flat;
    FlatPart& part = flat.parts.emplace_back();
    part.outline = {piece.cut};
    part.lines = piece.slits;
    const Rect grain = grain_of(Lettering(piece, 1 / scale, language));
    part.lines.push_back({{grain.centre().x, grain.top}, {grain.centre().x, grain.bottom}});
    const Rect cut = shapes::box(piece.cut);
    // For one line on each side, and for words beyond the end of a short one.
    constexpr double lane = 7;
    constexpr double words = 16;
    const Rect room{cut.left / scale - words,
                    cut.top / scale - lane,
                    cut.right / scale + words,
                    cut.bottom / scale + lane};
    return sheet::lay_dimensions(measures, {{flat, language, unit, ruler}, scale, room});
}

Rect reach_of_piece(const PatternPiece& piece,
                    double scale,
                    const std::vector<sheet::DimensionLine>& lines) {
    Rect reach;
    for (const Chain* chain : {&piece.cut, &piece.inlay_line}) {
        for (const Point p : *chain) {
            reach.include(p * (1 / scale));
        }
    }
    for (const sheet::DimensionLine& line : lines) {
        reach.include(box_of(line));
    }
    return reach;
}

}  // namespace platewright
