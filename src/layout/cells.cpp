// SPDX-License-Identifier: MIT
// Rows of drawings.
#include "layout/cells.h"

#include <algorithm>
#include <utility>

namespace platewright::sheet {
namespace {

/// As many cells as there is room for, and of a group that is not the first all or none.
std::size_t end_of_row(const std::vector<RowItem>& cells, std::size_t first, double room) {
    double width = cells[first].width;
    std::size_t end = first + 1;
    std::size_t whole = end;
    for (; end < cells.size(); ++end) {
        width += kCellsApart + cells[end].width;
        if (width > room + 0.01) {
            break;
        }
        const bool last_of_group =
            end + 1 == cells.size() || cells[end + 1].group != cells[end].group ||
            cells[end].group.empty() || cells[end].group == cells[first].group;
        whole = last_of_group ? end + 1 : whole;
    }
    return whole;
}

}  // namespace

void put_cells(const std::vector<RowItem>& cells,
               const std::string& outline,
               Flow& flow,
               const std::shared_ptr<const Slab>& head) {
    const double room = flow.width();
    for (std::size_t first = 0; first < cells.size();) {
        double width = 0;
        Slab slab;
        if (first == 0 && !outline.empty()) {
            slab.outline = outline;
            slab.anchor = outline;
        }
        const std::size_t end = end_of_row(cells, first, room);
        for (std::size_t i = first; i < end; ++i) {
            width += cells[i].width + (i == first ? 0 : kCellsApart);
            slab.height = std::max(slab.height, cells[i].height);
        }
        // Space left over goes between the cells and beside them alike.
        const double air = std::max(0.0, room - width) / (static_cast<double>(end - first) + 1);
        double x = air;
        for (; first < end; ++first) {
            cells[first].draw(slab.pictures, {x, 0}, slab.height);
            x += cells[first].width + kCellsApart + air;
        }
        slab.space_before = kCellsApart;
        slab.head = head;
        flow.slab(std::move(slab));
    }
}

}  // namespace platewright::sheet
