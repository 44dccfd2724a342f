// SPDX-License-Identifier: MIT
// Hatching beside the edges of what lies on a table.
#include "compose/edge_hatch.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace platewright {
namespace {

/// Edges turned away from the light less than this have no shade, as a cosine.
constexpr double kLeastTurned = 0.12;
/// Strokes shorter than this share of the longest would be specks.
constexpr double kLeastStroke = 0.3;
/// The strokes lean from the square of the edge towards the light, so that those of one garment
/// look drawn by one hand.
constexpr double kLean = 0.55;

/// More than any garment has; a coast line of a drawing is not worth its strokes.
constexpr int kMostAlongEdge = 4000;

double signed_area(const std::vector<Point>& chain) {
    double twice = 0;
    for (std::size_t i = 0, j = chain.size() - 1; i < chain.size(); j = i++) {
        twice += cross(chain[j], chain[i]);
    }
    return twice / 2;
}

/// The way strokes run from a fold: to its side away from the light, leaning like those of edges.
Point shaded_side(Point along) {
    const Point away = unit(kToLight) * -1;
    const Point side = right_of(along) * (dot(right_of(along), away) > 0 ? 1 : -1);
    return unit(side * (1 - kLean) + away * kLean);
}

/// Drawn out to a point; straight sides are enough at this size.
HatchStroke stroke_from(Point begin, Point end, double width) {
    const Point middle = (begin + end) * 0.5;
    const Point aside = right_of(unit(end - begin)) * (width / 2);
    const Point belly = aside * 0.8;
    return {polygon({begin - aside, middle - belly, end, middle + belly, begin + aside}),
            begin,
            middle,
            end};
}

}  // namespace

double breadth_of(const Path& shape) {
    double area = 0;
    double round = 0;
    for (const std::vector<Point>& chain : outlines(shape)) {
        area += std::abs(signed_area(chain));
        round += Curve(chain).length();
    }
    return round > 0 ? 2 * area / round : 0;
}

std::vector<HatchStroke> edge_hatch(const Path& shape, const HatchPen& pen, FromEdge way) {
    const Point away = unit(kToLight) * -1;
    std::vector<HatchStroke> strokes;
    for (const std::vector<Point>& chain : outlines(shape)) {
        if (chain.size() < 3) {
            continue;
        }
        const double outer_side = signed_area(chain) > 0 ? -1 : 1;
        const Curve edge(chain);
        for (int i = 0; i < kMostAlongEdge && (i + 0.5) * pen.pitch < edge.length(); ++i) {
            const double place = (i + 0.5) * pen.pitch;
            const Curve::Station station = edge.at(place);
            const Point outwards = right_of(station.along) * outer_side;
            const double turned = dot(outwards, away);
            if (turned < kLeastTurned) {
                continue;
            }
            // Long and short by turns, so that the tone ends softly; a hand's wander over that.
            const double turn = i % 2 == 0 ? 1.0 : 0.74;
            const double wander = 1 + 0.1 * std::sin(place / pen.reach * std::numbers::pi / 3);
            const double share = std::sqrt(turned) * turn * wander;
            if (share < kLeastStroke) {
                continue;
            }
            const Point lean = unit(outwards * (1 - kLean) + away * kLean);
            const Point run = way == FromEdge::outwards ? lean : lean * -1;
            strokes.push_back(
                stroke_from(station.at, station.at + run * (pen.reach * share), pen.width));
        }
    }
    return strokes;
}

std::vector<HatchStroke> fold_hatch(const Curve& fold, const HatchPen& pen) {
    std::vector<HatchStroke> strokes;
    for (int i = 0; i < kMostAlongEdge && (i + 0.5) * pen.pitch < fold.length(); ++i) {
        const double place = (i + 0.5) * pen.pitch;
        const Curve::Station station = fold.at(place);
        const double share =
            std::sin(std::numbers::pi * place / fold.length()) * (i % 2 == 0 ? 1.0 : 0.74);
        if (share >= kLeastStroke) {
            const Point end = station.at + shaded_side(station.along) * (pen.reach * share);
            strokes.push_back(stroke_from(station.at, end, pen.width));
        }
    }
    return strokes;
}

std::vector<HatchStroke> fall_hatch(const Curve& fold, const HatchPen& pen, FoldSide side) {
    // Each line begins lower and ends higher than the one before, at its own place, so that the
    // shade opens with the fold and runs out. A long deep fold has more of them than a wrinkle.
    struct Companion {
        double from;
        double to;
        double width;
    };

    constexpr std::array companions{Companion{0.05, 0.95, 1.0},
                                    Companion{0.15, 0.82, 0.85},
                                    Companion{0.10, 0.90, 0.8},
                                    Companion{0.26, 0.72, 0.7},
                                    Companion{0.19, 0.85, 0.7},
                                    Companion{0.34, 0.76, 0.6},
                                    Companion{0.24, 0.66, 0.6},
                                    Companion{0.40, 0.80, 0.5},
                                    Companion{0.33, 0.62, 0.45}};
    constexpr double length_a_line = 44;
    constexpr double fewest = 3;
    const auto number = static_cast<std::size_t>(
        std::clamp(fold.length() / length_a_line, fewest, static_cast<double>(companions.size())));
    constexpr int points = 5;
    const double pitch = side == FoldSide::shaded ? pen.pitch : -pen.pitch;
    std::vector<HatchStroke> strokes;
    for (std::size_t k = 0; k < number; ++k) {
        const Companion& line = companions[k];
        // Closest beside the fold, where the shade is deepest.
        const double place = static_cast<double>(k + 1) * (0.8 + 0.05 * static_cast<double>(k));
        std::vector<Point> through;
        for (int i = 0; i < points; ++i) {
            const double share = line.from + (line.to - line.from) * i / (points - 1);
            const Curve::Station station = fold.at(fold.length() * share);
            // Closer together where the fold begins: it opens as it falls.
            const double aside =
                pitch * place * (0.35 + 0.65 * std::sin(std::numbers::pi * (0.12 + 0.6 * share)));
            through.push_back(station.at + shaded_side(station.along) * aside);
        }
        constexpr double unseen = 0.4;
        strokes.push_back({tapered(Curve(smooth(through)), pen.width * line.width, unseen),
                           through.front(),
                           through[points / 2],
                           through.back()});
    }
    return strokes;
}

}  // namespace platewright
