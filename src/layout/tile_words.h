// SPDX-License-Identifier: MIT
// What tiles and their map say.
#pragma once

#include <string>
#include <vector>

#include "layout/workshop.h"

namespace platewright {

/// `A1`, `A2` … `B1`; both from 0.
std::string tile_name(int row, int column);

/// What the tiles hold, as a heading.
std::string words_of_tiles(const WorkshopSheets& sheets);

/// Whether anything is added for seams, and how much.
std::string allowance_words(const WorkshopSheets& sheets);

/// Each a paragraph: how to print and paste, which pieces the tiles hold and where the others are
/// had. `overlap`: of the tiles, mm.
std::vector<std::string> words_of_map(const WorkshopSheets& sheets, double overlap);

/// `1–13, 26`; ascending numbers.
std::string number_ranges(const std::vector<int>& numbers);

}  // namespace platewright
