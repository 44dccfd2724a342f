// SPDX-License-Identifier: MIT
// All pieces side by side at full size, for tiles and for cutters.
#pragma once

#include <vector>

#include "pattern/pieces.h"

namespace platewright {

/// A piece on the table.
struct Laid {
    const PatternPiece* piece = nullptr;
    /// Where its origin is on the table.
    Point at;
    Rect box;
};

/// All pieces on one table, the squares in its first corner.
struct CuttingTable {
    std::vector<Laid> pieces;
    double width = 0;
    double height = 0;
};

/// Each piece as it is drawn, one of each; `corner` is kept free.
CuttingTable lay_on_table(const std::vector<PatternPiece>& pieces,
                          double least_width,
                          Point corner);

}  // namespace platewright
