// SPDX-License-Identifier: MIT
// Tables: columns as wide as their words ask, heads repeated on every page.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "layout/block.h"
#include "layout/slab.h"

namespace platewright::sheet {

/// One field of a table. Whatever it has stands from left to right: tick box, sign, sample,
/// picture, words with the note beneath.
struct Cell {
    std::string words = {};
    std::string note = {};
    bool tick_box = false;
    /// A letter in a disc, as it stands beside a picture.
    std::string sign = {};
    /// Its size follows the type.
    std::optional<Swatch> swatch = {};
    std::optional<Picture> picture = {};
    Voice voice = Voice::body;
};

/// A column: its head, and how it takes part in the width.
struct TableColumn {
    std::string head;
    Align align = Align::start;
    /// Takes what width is left over.
    bool stretches = false;
};

/// A row; a heading has one field that goes across and stays with the next row.
struct TableRow {
    std::vector<Cell> cells;
    bool heading = false;
};

/// Rows under their heads.
struct Table {
    std::vector<TableColumn> columns;
    std::vector<TableRow> rows;
    /// Hairlines under the rows.
    bool row_rules = true;
    /// Rows stand closer, and two columns are parted where fewest lines are wrapped: long lists.
    bool close = false;
    /// Upright hairlines between the columns.
    bool column_rules = false;
};

/// The rows as slabs. Rows are never divided unless they are higher than a page.
std::vector<Slab> table_slabs(const Table& table, double width, Press& press);

}  // namespace platewright::sheet
