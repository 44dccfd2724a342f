// SPDX-License-Identifier: MIT
// What a cutter checks on a piece before he cuts: its length, its width, its width at the foot.
#pragma once

#include <vector>

#include "layout/dimensioning.h"
#include "pattern/dimensions.h"
#include "pattern/pieces.h"

namespace platewright {

/// Finished, from seam to seam: the length along the grain; the width across it, under the arm
/// where the piece has a hollow for one; the width between the lower corners if that is another.
/// None of small pieces, which placements measure and tiles print.
std::vector<Dimension> measures_of(const PatternPiece& piece);

/// Those measures laid round the piece, mm on paper from its origin.
std::vector<sheet::DimensionLine> measure_lines(const PatternPiece& piece,
                                                double scale,
                                                Language language,
                                                const OwnUnit& unit,
                                                sheet::Ruler& ruler);

/// What a piece, its inlay and its measures take, mm on paper from its origin.
Rect reach_of_piece(const PatternPiece& piece,
                    double scale,
                    const std::vector<sheet::DimensionLine>& lines);

}  // namespace platewright
