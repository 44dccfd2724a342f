// SPDX-License-Identifier: MIT
// Seams: how long an outline is between two places, and marks at which two pieces meet.
#pragma once

#include "pattern/pieces.h"

namespace platewright {

/// The place so far from the beginning of a line or an outline, which runs on to where it began.
Point along(const Chain& chain, double walked);

/// Along a closed outline from one place to the other, the shorter way round; places beside it are
/// taken to the nearest point of it.
double length_between(const Chain& outline, Point from, Point to);

/// So far from `from` on that way.
Point point_between(const Chain& outline, Point from, Point to, double distance);

/// That part of the outline itself.
Chain seam_between(const Chain& outline, Point from, Point to);

/// The upper and the lower edge of what is wider than it is high, from its left end to its right.
Chain upper_edge(const Chain& outline);
Chain lower_edge(const Chain& outline);

/// The height of an edge that runs from left to right, held at its ends.
double level_at(const Chain& edge, double x);

/// The outline with its corner at that place rounded off, from `reach` mm before it to as far
/// behind.
Chain rounded_at(const Chain& outline, Point corner, double reach);

/// Which edges have one tick, and which two. Common practice, no source.
enum class Ticks { fore, hind };

/// A mark on the outline of the piece at the place nearest to `near`, for a mark of the same seam
/// on its neighbour.
void add_notch(PatternPiece& piece, Point near, Ticks ticks = Ticks::fore);

/// Marks on both sides of a piece at that height.
void add_notches_at(PatternPiece& piece,
                    double y,
                    Ticks left = Ticks::fore,
                    Ticks right = Ticks::fore);

/// Lets every mark reach where the piece is cut.
void draw_out_notches(PatternPiece& piece);

}  // namespace platewright
