// SPDX-License-Identifier: MIT
// What stands over drawings of pattern pieces: their scale, and a key to their lines.
#pragma once

#include <vector>

#include "base/language.h"
#include "layout/pen.h"
#include "layout/ruler.h"
#include "layout/slab.h"
#include "pattern/pieces.h"

namespace platewright {

/// The sides of the squares behind pieces, mm on the cloth.
inline constexpr double kGridSquare = 100;

/// Samples of the lines that occur on these pieces, each with its name, from `at` on in as many
/// rows as they need. Gives the height they take, mm.
double draw_line_key(const std::vector<PatternPiece>& pieces,
                     Language language,
                     Point at,
                     double width,
                     sheet::Ruler& ruler,
                     sheet::Pen& pen);

/// A bar of five squares at 1 : `scale`, told in mm, and what the squares behind pieces are: for
/// the head of a page.
sheet::Slab scale_bar(Language language, double scale, sheet::Ruler& ruler);

}  // namespace platewright
