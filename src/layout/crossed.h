// SPDX-License-Identifier: MIT
// What a line across a figure crosses on its way.
#pragma once

#include <vector>

#include "base/geometry.h"
#include "compose/figure.h"

namespace platewright::sheet {

/// How many things other than the one at its beginning a line crosses, skin counted as more; its
/// corners in mm on the body, the first within the thing it leads to.
int crossed(const Tops& tops, const std::vector<Point>& line);

}  // namespace platewright::sheet
