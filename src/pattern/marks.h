// SPDX-License-Identifier: MIT
// Marks of rank and service as they are sewn to the upper sleeve, from seam to seam.
#pragma once

#include <string>
#include <vector>

#include "compose/flat.h"

namespace platewright {

/// What lace is left at each end of a mark, to be caught in the sleeve's seam, mm. Common practice,
/// no source.
inline constexpr double kMarkEnd = 10;

/// The marks of one group on one sleeve. Lengths in mm.
struct PlacedMarks {
    /// `marks` or `service`.
    std::string group;
    /// Their lower edges on the sleeve's piece, the lowest first.
    std::vector<Chain> lines = {};
    /// The strip to be cut for each of them, as it lies on the sleeve, with both its ends.
    Chain strip = {};
};

/// Where the flat's marks lie on the outline of a left upper sleeve, the grain running down it; of
/// marks worn on both sleeves those of the left.
std::vector<PlacedMarks> marks_on_sleeve(const Flat& front, const Chain& upper_sleeve);

/// What a mark is measured from: the cuff's edge, also for marks high on the arm; the line it is
/// drawn along where the flat has no cuff.
const Chain& edge_below(const Flat& flat, const FlatMarks& marks);

/// The place of an edge that is nearest to another.
Point foot_on(const Chain& edge, Point from);

/// Where on that edge the middle of the lowest mark is measured from: its nearest place; where the
/// sleeve bends between them that is its corner, and its middle is better.
Point foot_below(const Flat& flat, const FlatMarks& marks);

/// Angle of a mark to the cuff's edge, in degrees, 0 for bars along it; measured from its first
/// half.
double angle_of(const FlatMarks::Band& band, const Chain& edge);

}  // namespace platewright
