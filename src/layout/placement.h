// SPDX-License-Identifier: MIT
// Windows of the placement drawings.
#pragma once

#include <vector>

#include "layout/layout.h"
#include "pattern/dimensions.h"

namespace platewright {

/// What a placement drawing shows, mm on the garment: those parts, and round them room for the
/// lines and words of the dimensions. `scale` is set to the denominator of its scale: 1, 2, 5
/// or 10.
Rect placement_frame(const Rect& parts,
                     const std::vector<Dimension>& shown,
                     const Paper& paper,
                     int& scale);

}  // namespace platewright
