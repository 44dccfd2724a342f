// SPDX-License-Identifier: MIT
// Drawings side by side in rows, as many to a row as there is room for.
#pragma once

#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "layout/flow.h"

namespace platewright::sheet {

/// What is put on a page, in its order.
using Items = std::vector<Placed>;

/// A cell of that size, drawn with its corner at the place it is given; the row is that high.
/// Neighbours of one `group` are not parted for the sake of what stands before them.
struct RowItem {
    double width = 0;
    double height = 0;
    std::string group;
    std::function<void(Items& on, Point corner, double row)> draw;
};

/// Between cells of a row, mm.
inline constexpr double kCellsApart = 4;

/// Low cells one under the other, where they are no higher together than the highest cell.
std::vector<RowItem> stacked(std::vector<RowItem> cells);

/// How high the rows are in which cells will stand: each is drawn nowhere, for what it learns by
/// it.
void level_rows(const std::vector<RowItem>& cells, double room);

/// Cells in rows, each row in the middle of the page. `outline`: the first row's entry,
/// in its corner too where that is free, and then the rows keep their order; `head`: what stands
/// over rows on the next page.
void put_cells(const std::vector<RowItem>& cells,
               const std::string& outline,
               Flow& flow,
               const std::shared_ptr<const Slab>& head = nullptr);

}  // namespace platewright::sheet
