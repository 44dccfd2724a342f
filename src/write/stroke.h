// SPDX-License-Identifier: MIT
// What the writers make of lines that make no sense.
#pragma once

#include <vector>

#include "base/drawing.h"

namespace platewright {

/// The dash pattern, or none (a whole line) where a part is negative or all are 0: cairo and PDF
/// viewers give up on those.
std::vector<double> usable_dash(const Stroke& stroke);

}  // namespace platewright
