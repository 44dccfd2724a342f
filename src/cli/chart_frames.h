// SPDX-License-Identifier: MIT
// What of its men a chart shows, and what of them enlarged.
#pragma once

#include <optional>
#include <vector>

#include "base/geometry.h"
#include "compose/compose.h"
#include "read/specified_sheets.h"
#include "resolve/uniform.h"

namespace platewright::cli {

/// The part of the front view that a chart of that kind shows of each of its men, with room for
/// the tallest hat among them.
Rect chart_frame(ChartOf of, const Template& front, const std::vector<const Uniform*>& men);

/// The square of the front view that shows best how the rank or the years of `man` are told from
/// those of `ordinary`; nothing where he wears nothing for it that could be enlarged.
std::optional<Rect> box_of_difference(const Uniform& ordinary,
                                      const Uniform& man,
                                      const Template& front);

}  // namespace platewright::cli
