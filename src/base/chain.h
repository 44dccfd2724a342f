// SPDX-License-Identifier: MIT
// Chains of points: what lies inside them, and where they cross a level line. All in mm.
#pragma once

#include <vector>

#include "base/geometry.h"

namespace platewright {

/// Points along a line that nobody can tell from the curve.
using Chain = std::vector<Point>;

/// Whether `p` lies inside closed chains, even-odd.
bool inside(const std::vector<Chain>& closed, Point p);

/// Where a closed chain crosses a height: the least and the greatest x; `found` is false for none.
struct Crossing {
    bool found = false;
    double least = 0;
    double greatest = 0;
};

/// Every crossing of that height, from the first to the last.
Crossing crossing(const Chain& closed, double y);

/// Without steps shorter than `least`, which no knife can follow; a closed one also where it
/// closes.
Chain without_steps(const Chain& chain, bool closed, double least = 0.01);

/// The x of an open chain at height `y`, held at its ends.
double x_at(const Chain& open, double y);

}  // namespace platewright
