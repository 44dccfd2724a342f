// SPDX-License-Identifier: MIT
// Rows of drawings.
#include "layout/cells.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "layout/pen.h"

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

/// Two cells as one, which share what the row is higher.
RowItem one_over_other(RowItem above, RowItem below) {
    RowItem both;
    both.width = std::max(above.width, below.width);
    both.height = above.height + kCellsApart + below.height;
    both.group = above.group;
    both.draw = [above = std::move(above), below = std::move(below)](
                    Items& on, Point corner, double row) {
        const double width = std::max(above.width, below.width);
        const double more = (row - above.height - kCellsApart - below.height) / 2;
        const double lower = corner.y + row - below.height - more;
        above.draw(on, {corner.x + (width - above.width) / 2, corner.y}, above.height + more);
        below.draw(on, {corner.x + (width - below.width) / 2, lower}, below.height + more);
    };
    return both;
}

/// In the upper left corner of the row, on as many lines as its air asks for.
void put_heading(const std::string& words, double air, Flow& flow, Items& on) {
    constexpr double leading = 1.2;
    const Type type = small_capitals(flow.style().heading);
    Ruler& ruler = flow.press().ruler;
    if (ruler.least_width(words, type, "") > air) {
        return;
    }
    Pen pen("heading");
    double baseline = type.size * 0.8;
    for (const std::string& line : ruler.even_lines(words, type, air)) {
        pen.heading(line, {0, baseline}, type.size);
        baseline += type.size * leading;
    }
    std::move(pen).put_on(on);
}

}  // namespace

std::vector<RowItem> stacked(std::vector<RowItem> cells) {
    double highest = 0;
    for (const RowItem& cell : cells) {
        highest = std::max(highest, cell.height);
    }
    std::vector<RowItem> made;
    for (RowItem& cell : cells) {
        const auto grown = [&](const RowItem& over) {
            const bool fits = over.height + kCellsApart + cell.height <= highest + 0.01;
            return fits ? std::abs(over.width - cell.width) : cell.width / 2;
        };
        const auto nearest = std::ranges::min_element(made, {}, grown);
        if (nearest != made.end() && grown(*nearest) < cell.width / 2) {
            *nearest = one_over_other(std::move(*nearest), std::move(cell));
        } else {
            made.push_back(std::move(cell));
        }
    }
    return made;
}

void level_rows(const std::vector<RowItem>& cells, double room) {
    for (std::size_t first = 0; first < cells.size();) {
        const std::size_t end = end_of_row(cells, first, room);
        double height = 0;
        for (std::size_t i = first; i < end; ++i) {
            height = std::max(height, cells[i].height);
        }
        for (Items nowhere; first < end; ++first) {
            cells[first].draw(nowhere, {}, height);
        }
    }
}

void put_cells(const std::vector<RowItem>& cells,
               const std::string& outline,
               Flow& flow,
               const std::shared_ptr<const Slab>& head) {
    const double room = flow.width();
    const std::size_t shelf = outline.empty() ? flow.new_shelf() : 0;
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
        if (!slab.outline.empty()) {
            put_heading(outline, air, flow, slab.pictures);
        }
        for (; first < end; ++first) {
            cells[first].draw(slab.pictures, {x, 0}, slab.height);
            x += cells[first].width + kCellsApart + air;
        }
        slab.space_before = kCellsApart;
        slab.head = head;
        slab.shelf = shelf;
        slab.spread = !outline.empty();
        flow.slab(std::move(slab));
    }
}

}  // namespace platewright::sheet
