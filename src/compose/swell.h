// SPDX-License-Identifier: MIT
// The contour of a piece as the graver cuts it: thin and here and there open where the light falls,
// swelling along every edge that turns away from it.
#pragma once

#include <vector>

#include "base/chain.h"
#include "base/geometry.h"

namespace platewright {

/// `contour` as closed shapes: `width` mm where an edge in full shade swells most. `shape` is what
/// the contour bounds, all round or in part.
Path swelling(const Path& contour, const std::vector<Chain>& shape, double width);

}  // namespace platewright
