// SPDX-License-Identifier: MIT
// Windows of the placement drawings.
#pragma once

#include <vector>

#include "layout/layout.h"
#include "pattern/dimensions.h"

namespace platewright {

/// What a placement drawing shows, mm on the garment, and the denominator of its scale: 1, 2, 5 or
/// 10.
struct PlacementWindow {
    Rect frame;
    int scale = 1;
};

/// Those parts, and round them room for the lines and words of the dimensions.
PlacementWindow placement_window(const Rect& parts,
                                 const std::vector<Dimension>& shown,
                                 const Paper& paper);

}  // namespace platewright
