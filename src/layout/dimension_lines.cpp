// SPDX-License-Identifier: MIT
// Dimension lines where they were laid: how they meet, and how they are drawn.
#include <algorithm>

#include "layout/dimensioning.h"
#include "layout/style.h"

namespace platewright::sheet {
namespace {

/// Lighter than any seam that it crosses.
constexpr double kWitnessLine = 0.13;
/// From the middle of a line to the edge of the strip under it; broader, it would be a belt.
constexpr double kCasing = 0.19;
/// A point that is measured, and the paper round it.
constexpr double kPoint = 0.34;
constexpr double kPointCasing = 0.6;

/// Least and greatest of the outline along an axis.
std::pair<double, double> spread(const std::vector<Point>& outline, Point axis) {
    std::pair<double, double> all{1e9, -1e9};
    for (const Point p : outline) {
        all.first = std::min(all.first, dot(p, axis));
        all.second = std::max(all.second, dot(p, axis));
    }
    return all;
}

void draw_line(const DimensionLine& each, Point origin, Pen& pen) {
    for (const auto& [foot, end] : each.witnesses) {
        pen.line(origin + foot, origin + end, kWitnessLine);
    }
    for (const Point p : each.within) {
        pen.disc(origin + p, kPoint, kInk);
    }
    pen.line(origin + each.line.first, origin + each.line.second);
    const Point along = each.to - each.from;
    pen.arrow(origin + each.from, along * (each.arrows_outside ? 1 : -1));
    pen.arrow(origin + each.to, along * (each.arrows_outside ? -1 : 1));
}

/// A strip of paper under a line, so that it is read on dark cloth too.
void case_line(Point from, Point to, double half, Pen& pen) {
    const Point across = right_of(unit(to - from)) * half;
    pen.fill({from - across, to - across, to + across, from + across}, kPaper);
}

void case_lines(const DimensionLine& each, Point origin, Pen& pen) {
    for (const Point p : each.within) {
        pen.disc(origin + p, kPointCasing, kPaper);
    }
    for (const auto& [from, to] : each.on_cloth) {
        case_line(origin + from, origin + to, kCasing, pen);
    }
}

}  // namespace

Rect box_of(const DimensionLine& dimension) {
    Rect box;
    for (const Point p : dimension.ground) {
        box.include(p);
    }
    box.include(dimension.line.first);
    box.include(dimension.line.second);
    for (const auto& [foot, end] : dimension.witnesses) {
        box.include(foot);
        box.include(end);
    }
    return box;
}

bool meet(const std::vector<Point>& a, const std::vector<Point>& b, double clearance) {
    // Two convex outlines are apart exactly if they are so along the normal of one of their sides.
    for (const std::vector<Point>* outline : {&a, &b}) {
        for (std::size_t i = 0; i < outline->size(); ++i) {
            const Point side = (*outline)[(i + 1) % outline->size()] - (*outline)[i];
            if (length(side) < 1e-9) {
                continue;
            }
            // A line has no width: it is told from its prolongation along itself.
            for (const Point axis : {right_of(unit(side)), unit(side)}) {
                const auto [a_low, a_high] = spread(a, axis);
                const auto [b_low, b_high] = spread(b, axis);
                if (a_low > b_high + clearance || b_low > a_high + clearance) {
                    return false;
                }
            }
        }
    }
    return true;
}

void draw_dimensions(const std::vector<DimensionLine>& dimensions,
                     Point origin,
                     Pen& pen,
                     Casing casing) {
    for (const DimensionLine& each : dimensions) {
        if (casing == Casing::paper) {
            case_lines(each, origin, pen);
        }
    }
    for (const DimensionLine& each : dimensions) {
        draw_line(each, origin, pen);
    }
    for (const DimensionLine& each : dimensions) {
        Chain ground;
        for (const Point p : each.ground) {
            ground.push_back(origin + p);
        }
        // A strip of paper under the words, so that lines of the drawing do not run through them.
        pen.fill(ground, kPaper);
        pen.words(each.words, origin + each.words_at, kFigures, Align::middle, each.degrees);
    }
}

}  // namespace platewright::sheet
