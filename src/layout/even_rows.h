// SPDX-License-Identifier: MIT
// Pictures of several shapes in rows that all fill the width of the page.
#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

namespace platewright {

/// A picture that wants a place in a row.
struct RowPicture {
    /// Width to height.
    double aspect = 1;
    /// What it belongs to: rows rather end where that ends.
    std::string_view group;
};

/// What there is room for, mm.
struct RowRoom {
    double width = 0;
    double gap = 0;
    /// The width a picture has if nothing speaks against it, and the least that its words need.
    double usual = 0;
    double least = 0;
};

/// So many from `first` on side by side, of one size.
struct EvenRow {
    std::size_t first = 0;
    std::size_t count = 0;
    double width = 0;
    double height = 0;
};

/// All pictures in their order. Those of a row are of one size and fill the width together; how
/// many stand in each is chosen so that none is much larger or smaller than usual.
std::vector<EvenRow> even_rows(const std::vector<RowPicture>& pictures, const RowRoom& room);

}  // namespace platewright
