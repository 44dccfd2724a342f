// SPDX-License-Identifier: MIT
// An etched strip of ground under the feet: patches of level strokes on a thin wash, closest where
// something rests on it, with here and there a stone or some grass.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "base/geometry.h"
#include "layout/layer.h"
#include "layout/silhouette.h"

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

/// Where a figure stands whose origin lies at `at`; nothing if it has no feet.
std::optional<Footing> footing_of(const Silhouette& silhouette, Point at, double factor);

/// Draws one common ground under all feet; no stroke leaves `within`. `factor`: mm on paper for
/// 1 mm on the body. `name`: of the plate; what lies and grows there is always the same for it.
void draw_ground(const std::vector<Footing>& feet,
                 const Rect& within,
                 double factor,
                 std::string_view name,
                 Layer& on);

/// Under one small figure among words: what its feet cast, and a few level strokes about them.
void draw_footing(const Footing& feet, double factor, std::string_view name, Layer& on);

}  // namespace platewright::sheet
