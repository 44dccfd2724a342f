// SPDX-License-Identifier: MIT
// Plane geometry for the cutting table: joining, cutting and enlarging outlines. All in mm.
#pragma once

#include <vector>

#include "compose/flat.h"

namespace platewright::shapes {

/// Area inside one closed chain, mm², whichever way it runs.
double area(const Chain& outline);

/// The box round it.
Rect box(const Chain& outline);

/// The largest outline of the shapes laid together; gaps under half a millimetre are closed.
Chain joined(const std::vector<Chain>& shapes);

/// The largest outline that `a` and `b` have in common; empty if they have none.
Chain common(const std::vector<Chain>& a, const Chain& b);

/// The largest outline of `a` that lies outside `b`; empty if nothing does.
Chain without(const Chain& a, const Chain& b);

/// Everything that is nearer than `by` mm to an open line.
Chain near_line(const Chain& line, double by);

/// Farther than any garment reaches, mm.
inline constexpr double kBeyondAll = 5000;

/// The largest outline of the shapes that lies in the rectangle; empty if none does.
Chain within(const std::vector<Chain>& shapes, const Rect& of);

/// The outline moved outward by `by` mm, corners kept sharp up to twice that.
Chain enlarged(const Chain& outline, double by);

/// Without what is thinner than twice `by` mm: a thin point is cut off square.
Chain without_points(const Chain& outline, double by);

/// The chain mirrored about the line through two points.
Chain mirrored(const Chain& chain, Point from, Point to);

/// Part of an ellipse, from one angle to the other in radians, clockwise on the page from its right
/// end; no chord is farther than 0.05 mm from it.
Chain arc(Point middle, double across, double down, double from, double to);

/// Moved so that the box begins at (0, 0).
Chain at_origin(const Chain& chain);

/// With `along` turned to point down the page, about the origin.
Chain turned_down(const Chain& chain, Point along);

/// As few points as keep the outline within `tolerance` mm.
Chain simplified(const Chain& outline, double tolerance);

}  // namespace platewright::shapes
