// SPDX-License-Identifier: MIT
// The coordinates of a placed drawing in a file: whole steps, as coarse as the eye allows, and no
// more points than it needs.
#pragma once

#include "base/geometry.h"

namespace platewright {

/// How the lengths of one drawing are written. Page furniture (a factor of 1) keeps its mm, with
/// two decimal places, for those who edit the file; figures are written in whole steps of 0.02 mm
/// on paper, which makes them a third smaller and moves nothing by more than 0.01 mm: a tenth of a
/// pixel at 300 dpi.
struct Grid {
    /// Steps to one mm of the drawing.
    double per_mm = 100;
    /// A step is the last of so many decimal places.
    int places = 2;
    /// Size of a written unit on paper, mm.
    double unit = 1;

    /// Written units to one mm of the drawing.
    [[nodiscard]] double scale() const;
};

/// The grid of a drawing printed `factor` times its size.
Grid grid_for(double factor);

/// The path in whole steps. Curves as flat as lines become lines, and points are left out where the
/// line through their neighbours passes within half a step.
Path on_grid(const Path& path, const Grid& grid);

}  // namespace platewright
