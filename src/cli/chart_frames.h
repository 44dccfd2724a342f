// SPDX-License-Identifier: MIT
// What of its men a chart shows, what of them enlarged, and what it tells of them.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/geometry.h"
#include "compose/compose.h"
#include "read/specified_sheets.h"
#include "resolve/change.h"
#include "resolve/uniform.h"

namespace platewright::cli {

/// The whole man in the front view, with room for the tallest hat among them.
Rect chart_frame(const Template& front, const std::vector<const Uniform*>& men);

/// Of that frame the width of a coat: so near men stand to each other in a row.
Rect between_elbows(const Template& front, const Rect& frame);

/// The part of the front view that shows best how the rank or the years of `man` are told from
/// those of `ordinary`; nothing where he wears nothing for it that could be enlarged.
std::optional<Rect> box_of_difference(const Uniform& ordinary,
                                      const Uniform& man,
                                      const Template& front);

/// Sashes, gorgets, knots: what the ordinary man does not wear at all, in the words of `callouts`.
/// Marks, service and epaulettes are among the particulars, with their measures.
std::vector<std::string> what_is_put_on(const std::vector<Change>& changes,
                                        const std::vector<CalloutWords>& callouts);

/// The man as a lens shows him: a hilt that stands into it would be taken for a mark.
Uniform without_a_sword(Uniform man);

/// The square about the middle of `box` that is shown enlarged.
Rect seen_through_lens(const Rect& box);

}  // namespace platewright::cli
