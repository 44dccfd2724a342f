// SPDX-License-Identifier: MIT
// Where words can stand within an outline without crossing it.
#pragma once

#include <optional>
#include <vector>

#include "compose/flat.h"

namespace platewright::sheet {

/// The middle of the upper edge of a block of that size, in mm, as near the middle of the outline
/// as there is room for it beside the arrow (which may be empty) and clear of marks; nothing where
/// it does not fit.
std::optional<Point> room_in(const Chain& outline,
                             double width,
                             double height,
                             const Rect& arrow,
                             const std::vector<Rect>& marks);

/// The middle of a word of that half size, as near `near` as it stands within the outline with so
/// much free around it, and clear of marks; nothing where it does not fit.
std::optional<Point> word_place(
    const Chain& outline, Point near, Point half, double free, const std::vector<Rect>& marks);

}  // namespace platewright::sheet
