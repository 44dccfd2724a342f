// SPDX-License-Identifier: MIT
// Path data of an SVG.
#pragma once

#include <string>

#include "base/geometry.h"
#include "write/grid.h"

namespace platewright {

/// The `d` attribute, on the grid: relative commands. Rounding never adds up along the path.
std::string svg_path_data(const Path& path, const Grid& grid);

}  // namespace platewright
