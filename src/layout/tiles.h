// SPDX-License-Identifier: MIT
// Pieces at full size: laid side by side, cut into tiles for the printer's paper, with the map that
// puts them together again.
#pragma once

#include <vector>

#include "layout/pen.h"
#include "layout/ruler.h"
#include "layout/workshop.h"

namespace platewright {

/// The map of the tiles, then the tiles; the first carries the squares to check the printer by.
std::vector<Page> lay_out_tiles(const WorkshopSheets& sheets,
                                const Paper& paper,
                                sheet::Ruler& ruler);

/// Their places among all pages of the document; `before`: how many lie before them.
void number_tiles(std::vector<Page>& tiles, std::size_t before);

}  // namespace platewright
