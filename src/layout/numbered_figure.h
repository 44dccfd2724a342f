// SPDX-License-Identifier: MIT
// A figure with numbers beside it and what they mean.
#pragma once

#include <cstddef>
#include <vector>

#include "layout/handout.h"
#include "layout/slab.h"

namespace platewright::sheet {

/// The width of the figure with its list, and the first of its numbers.
struct Numbering {
    double width = 0;
    std::size_t first = 1;
};

/// The figure on the left with its numbers in small discs, the list of its parts on the right;
/// numbers go down the figure. Adds layout.too-many, a warning without a place, for parts there was
/// no room for; they stand in the list without a number.
Slab numbered_figure(const Figure& figure,
                     std::vector<HandoutPart> parts,
                     const Numbering& in,
                     Press& press);

/// Share of the width of a page that the figure and its numbers take.
inline constexpr double kFigureShare = 0.56;

}  // namespace platewright::sheet
