// SPDX-License-Identifier: MIT
// Strokes of the pen and the brush as filled shapes: lines that swell and fade, and hatching laid
// round a form.
#pragma once

#include <vector>

#include "base/geometry.h"
#include "compose/curve.h"
#include "compose/template.h"

namespace platewright {

/// Towards the light, along the page: everything is lit from the upper left.
inline constexpr Point kToLight{-1, -0.45};

/// A line `peak` mm wide in the middle and fading towards both ends, as a closed shape with
/// straight sides; bends of less than `unseen` mm are left out.
Path tapered(const Curve& along, double peak, double unseen);

/// A band `width` mm wide along a curve, on the given side of the way it runs, as a closed shape.
Path band(const Curve& along, double width, Side side);

/// One stroke of the hatching: from the dark edge of the form inwards, swelling at the edge and
/// fading out.
struct HatchStroke {
    Path shape;
    Point begin;
    Point middle;
    Point end;
};

/// Hatching laid across a zone like rings round a barrel. `pitch` and `width` in mm; `tilt` turns
/// the rings (0 square to the axis); `reach` is the share of the form's width that the longest
/// strokes cover. Empty without an axis.
std::vector<HatchStroke> hatch(
    const Zone& zone, double pitch, double width, double tilt, double reach);

}  // namespace platewright
