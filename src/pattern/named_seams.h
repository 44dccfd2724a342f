// SPDX-License-Identifier: MIT
// Seams by their names: which edges are sewn together, their letters and lengths; and words beside
// lines.
#pragma once

#include <string>
#include <vector>

#include "pattern/pieces.h"

namespace platewright {

/// The edge from one place of the outline to the other, the shorter way round, is sewn to those of
/// the same name.
void name_seam(
    PatternPiece& piece, const char* name, Point from, Point to, Join join = Join::neighbour);

/// Says in the middle of a line what it is, or of a place.
void say_along(PatternPiece& piece, const Chain& line, const char* word);
void say_at(PatternPiece& piece, Point at, const char* word);

/// One letter for all edges of a seam, `A` to `Z`, then `AA`, in the order of the pieces.
void letter_seams(std::vector<PatternPiece>& pieces);

/// A seam with the lengths of its two sides, mm.
struct PairedSeam {
    std::string garment;
    std::string letter;
    std::string name;
    /// Numbers in the cutting list.
    std::vector<int> here;
    std::vector<int> there;
    double length_here = 0;
    double length_there = 0;
};

/// In the order of their letters. What is set in stands here, what it is set into there.
std::vector<PairedSeam> paired_seams(std::vector<PatternPiece> pieces);

}  // namespace platewright
