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

/// The part of the front view that a chart of that kind shows of each of its men, with room for
/// the tallest hat among them.
Rect chart_frame(ChartOf of, const Template& front, const std::vector<const Uniform*>& men);

/// That frame with the coat below it as far as its hem.
Rect to_the_hem(const Template& front, const Rect& frame);

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

/// A rectangle as seen from the upper left corner of a picture of `frame`, the picture's width
/// being 1.
Rect in_widths_of(const Rect& frame, const Rect& box);

/// The square about the middle of `box` that a round lens as wide as `lens` shows clearly larger
/// than the picture beside it.
Rect seen_through(const Rect& lens, const Rect& box);

}  // namespace platewright::cli
