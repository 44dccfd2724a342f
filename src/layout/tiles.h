// SPDX-License-Identifier: MIT
// Pieces at full size: laid side by side, cut into tiles for the printer's paper, with the map that
// puts them together again.
#pragma once

#include <string>
#include <vector>

#include "layout/pen.h"
#include "layout/workshop.h"

namespace platewright {

/// The piece drawn with its origin at `at`, times `factor`: cutting line, seam line, folds, grain,
/// notches, buttons.
void draw_piece(const PatternPiece& piece, Point at, double factor, sheet::Pen& pen);

/// Name, number and cloth of a piece, a line each.
std::vector<std::string> cutting_words(const PatternPiece& piece, Language language);

/// The map of the tiles, then the tiles; the first carries the squares to check the printer by.
std::vector<Page> lay_out_tiles(const WorkshopSheets& sheets,
                                const Paper& paper,
                                sheet::Ruler& ruler);

}  // namespace platewright
