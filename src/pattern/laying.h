// SPDX-License-Identifier: MIT
// Pieces laid out on cloth, or on any table, so that they take little of its length.
#pragma once

#include <cstddef>
#include <vector>

#include "compose/flat.h"
#include "pattern/pieces.h"

namespace platewright {

/// One piece where it lies, mm from the upper left corner of the cloth; the grain runs down.
struct LaidPiece {
    /// Its place in the list that was laid out.
    std::size_t piece = 0;
    /// The line to cut; of a piece on the fold both halves.
    Chain outline = {};
    /// Where the piece's own origin has come to.
    Point at;
    bool mirrored = false;
    bool turned = false;
};

/// All of them, and how far they reach.
struct Laying {
    double width = 0;
    double length = 0;
    /// What the pieces cover, mm².
    double covered = 0;
    std::vector<LaidPiece> pieces;
};

/// How they are to be laid.
struct LayingRules {
    double width = 0;
    /// Between pieces, for chalk and shears.
    double between = 10;
    /// As many of each as are cut, half of the pairs mirrored, each either way along the grain;
    /// else one of each as it is drawn, with only its own half where it lies on the fold.
    bool as_cut = true;
    /// None is turned: all of the nap runs down.
    bool one_way = false;
    /// A corner that is kept free.
    Point corner;
};

/// Bottom-left filling: each piece is put at the first free place from the beginning of the cloth,
/// either way along the grain unless it has a nap, also into gaps that larger pieces have left. Of
/// three orders (the longest, the widest, the largest first) the one that takes least is kept. A
/// piece wider than the cloth is laid along it. Source: B. S. Baker, E. G. Coffman, R. L. Rivest,
/// Orthogonal Packings in Two Dimensions, SIAM J. Comput. 9, 1980 (for rectangles, from memory);
/// here with outlines in steps of 5 mm.
Laying laid_out(const std::vector<PatternPiece>& pieces, const LayingRules& rules);

}  // namespace platewright
