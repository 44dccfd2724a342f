// SPDX-License-Identifier: MIT
// Path data of an SVG.
#pragma once

#include <string>

#include "base/geometry.h"

namespace platewright {

/// The `d` attribute: relative commands, coordinates rounded to `places`. Rounding never adds up along the path.
std::string svg_path_data(const Path& path, int places);

}  // namespace platewright
