// SPDX-License-Identifier: MIT
// Path arithmetic: the area a path encloses and which way round it runs.
#pragma once

#include "base/geometry.h"

namespace platewright {

/// Area enclosed by the path in mm², open subpaths taken as closed; positive if it runs clockwise
/// on the page.
double signed_area(const Path& path);

/// The path run the other way; looks the same.
Path reversed(const Path& path);

}  // namespace platewright
