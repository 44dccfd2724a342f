// SPDX-License-Identifier: MIT
// Rows of words and samples, and blocks of rows in columns: all the stacking a plate needs.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "base/colour.h"
#include "base/tincture.h"
#include "layout/layer.h"
#include "text/typesetter.h"

namespace platewright::sheet {

/// Words at `x` from the left edge of the row.
struct Piece {
    std::string words;
    double x = 0;
    Type type;
    Colour colour;
};

/// A sample of cloth or metal whose top left corner is the row's.
struct Swatch {
    Colour colour;
    /// Hatched instead of coloured.
    std::optional<TinctureId> hatch;
    bool metal = false;
    double width = 0;
    double height = 0;
};

/// The line round a sample of that colour; it stands out from the paper (contrast above 3).
Colour swatch_edge(Colour of);

/// A square of cloth or a round of metal, its corner at `at`.
void draw_swatch(const Swatch& swatch, Point at, Layer& on);

/// One row of a column. All in mm.
struct Row {
    double height = 0;
    /// From the top of the row.
    double baseline = 0;
    std::vector<Piece> pieces;
    std::optional<Swatch> swatch;
    /// What the row is called by links, and where it leads; empty if none. Rows of one entry that
    /// lead to one place are one link.
    std::string anchor = {};
    std::string leads_to = {};
    /// How far its words reach.
    double width = 0;
};

/// Rows that belong together: one colour of the key, one note.
using Entry = std::vector<Row>;

/// Rows put in place, from the upper left corner of the block.
struct Block {
    struct Place {
        Point at;
        Row row;
    };

    std::vector<Place> rows;
    double height = 0;

    [[nodiscard]] bool empty() const { return rows.empty(); }

    /// Adds `part` with its corner at `at`; the block grows to hold it.
    void join(Block part, Point at);

    void draw(Point at, Layer& on) const;

  private:
    /// Up to where the rows from `first` on are one link.
    [[nodiscard]] std::size_t end_of_link(std::size_t first) const;
    void draw_rows(std::size_t first, std::size_t end, Point at, Layer& on) const;
};

/// Columns `pitch` mm from left edge to left edge, entries `gap` mm apart.
struct Grid {
    std::size_t columns = 1;
    double pitch = 0;
    double gap = 0;
    /// How much wider gaps may become so that a column ends with the longest, or at `height`.
    double stretch = 0;
    double height = 0;
};

/// Entries down the columns, in even heights, long entries divided where that helps.
Block pour(const std::vector<Entry>& entries, const Grid& grid);

}  // namespace platewright::sheet
