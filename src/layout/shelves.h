// SPDX-License-Identifier: MIT
// Drawings of unlike size in rows, so that neither rows nor pages stay half empty.
#pragma once

#include <cstddef>
#include <vector>

#include "base/geometry.h"

namespace platewright::sheet {

/// What rows are put on, mm.
struct ShelfRoom {
    double width = 0;
    /// Between neighbours, and between rows.
    double apart = 0;
    /// For rows on the first page, and on each one after it.
    double first_page = 0;
    double page = 0;
};

/// Rows of indices into `sizes`, in the order they are to be printed. The highest come first; a row
/// is filled with lower ones as far as they fit, and a page with the highest rows that still fit.
std::vector<std::vector<std::size_t>> shelves_of(const std::vector<Point>& sizes,
                                                 const ShelfRoom& room);

}  // namespace platewright::sheet
