// SPDX-License-Identifier: MIT
// How large a window is, so that its dimensions lie within it, and at which scale it is drawn.
#include "layout/placement.h"

#include <cmath>

#include "layout/slab.h"

namespace platewright {
namespace {

/// The largest scale of ISO 5455 at which two drawings of that size stand beside one another.
int placement_scale(const Rect& frame, const Paper& paper) {
    const Rect area = sheet::TextStyle(paper).area;
    constexpr double apart = 4;
    const double half = (area.width() - apart) / 2;
    for (const int scale : {1, 2, 5}) {
        if (frame.width() / scale <= half && frame.height() / scale <= area.height() * 0.45) {
            return scale;
        }
    }
    return 10;
}

/// Takes in the lines of a dimension and its words, as `Pen::dimension` draws them at that scale.
void include_dimension(const Dimension& each, int scale, Rect& frame) {
    constexpr double words = 19;
    constexpr double arrows_outside = 6;
    constexpr double above_line = 4;
    Point a = each.from;
    Point b = each.to;
    if (each.way == DimensionWay::across) {
        b.y = a.y;
    } else if (each.way == DimensionWay::down) {
        b.x = a.x;
    }
    const Point along = unit(b - a);
    const Point out{-along.y, along.x};
    const double lane = (each.aside + (each.aside < 0 ? -above_line : above_line)) * scale;
    const bool narrow = length(b - a) / scale < words;
    const double beyond = narrow ? (words + arrows_outside) * scale : 0;
    const bool to_first = std::abs(along.y) > std::abs(along.x) ? a.y < b.y : along.x < 0;
    for (const Point p : {a, b}) {
        frame.include(p);
        frame.include(p + out * lane);
    }
    const Point end = to_first ? a - along * beyond : b + along * beyond;
    frame.include(end + out * (each.aside * scale));
}

}  // namespace

PlacementWindow placement_window(const Rect& parts,
                                 const std::vector<Dimension>& shown,
                                 const Paper& paper) {
    constexpr double air = 5;
    PlacementWindow window{parts, 0};
    for (int tried = placement_scale(parts, paper); tried > window.scale;
         tried = placement_scale(window.frame, paper)) {
        window = {parts, tried};
        for (const Dimension& each : shown) {
            include_dimension(each, tried, window.frame);
        }
        window.frame = window.frame.grown(air * tried / 2);
    }
    return window;
}

}  // namespace platewright
