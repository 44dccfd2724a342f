// SPDX-License-Identifier: MIT
// What pieces are called on a tile.
#pragma once

#include "layout/cutting_table.h"
#include "layout/edge_map.h"
#include "layout/pen.h"
#include "layout/ruler.h"

namespace platewright {

/// The smallest type on a piece, mm.
inline constexpr double kLeastName = 2.5;

/// What a tile shows of the table, and where the table's corner lies on its page.
struct TileWindow {
    Rect seen;
    Point origin;
    Language language;
};

/// On a tile that shows enough of the piece, in the middle of what it shows: its words, or its
/// number where they have room on another tile; beneath a piece that has room for them nowhere.
void name_on_tile(const Laid& laid, const TileWindow& tile, sheet::Ruler& ruler, sheet::Pen& pen);

/// The middle of a piece's number on the map: clear of its arrow and of the first of the marks that
/// leave it room, or beside a piece that is too thin, where nothing is `taken`. Outline and marks
/// lie at `from`.
Point number_on_map(const Chain& outline,
                    Point from,
                    double wide,
                    const Rect& arrow,
                    const std::vector<std::vector<Rect>>& marks,
                    const sheet::EdgeMap& taken);

}  // namespace platewright
