// SPDX-License-Identifier: MIT
// Colours in SVG attributes.
#pragma once

#include <string>

#include "base/colour.h"

namespace platewright {

/// `#rgb` where that says it all, else `#rrggbb`.
std::string colour_name(Colour colour);

}  // namespace platewright
