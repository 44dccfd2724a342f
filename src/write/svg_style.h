// SPDX-License-Identifier: MIT
// How a shape is painted, as SVG attributes.
#pragma once

#include <string>

#include "base/drawing.h"
#include "write/grid.h"

namespace platewright {

/// The attributes of a shape, each with a space before it. The root sets no fill, no line, round
/// ends and corners.
std::string svg_style(const Shape& shape, const Grid& grid);

/// False if nothing of the shape is seen.
bool is_painted(const Shape& shape);

}  // namespace platewright
