// SPDX-License-Identifier: MIT
// A hint of ground under the feet: a flat wash and short strokes of the graver.
#pragma once

#include <vector>

#include "base/geometry.h"
#include "layout/layer.h"

namespace platewright::sheet {

/// Where one figure stands, in mm on paper.
struct Footing {
    double left = 0;
    double right = 0;
    /// Lowest point of the soles.
    double sole = 0;
    /// The lower edges of shoes and butt, each from left to right.
    std::vector<std::vector<Point>> edges;
};

/// Draws the ground under all feet; no stroke leaves `within`. `factor`: mm on paper for 1 mm on
/// the body.
void draw_ground(const std::vector<Footing>& feet, const Rect& within, double factor, Layer& on);

}  // namespace platewright::sheet
