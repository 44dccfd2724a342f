// SPDX-License-Identifier: MIT
// Strokes of the pen and the brush as filled shapes: lines that swell and fade, and hatching laid
// round a form.
#pragma once

#include <optional>
#include <utility>
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

/// From where to where such a band reaches, in mm to the right of its curve.
std::pair<double, double> reach_of(double width, Side side);

/// One stroke of the hatching, pointed at both ends: broadest near the dark one, or in the middle
/// where it falls.
struct HatchStroke {
    Path shape;
    Point begin;
    Point middle;
    Point end;
    double width = 0;

    /// The stroke as far as the fold, if it runs into it; nothing if hardly any of it is left.
    [[nodiscard]] std::optional<HatchStroke> up_to(const Curve& fold) const;
};

/// How a zone is hatched: how far apart the strokes are and how wide, in mm; how far the rings are
/// turned, 0 being square to the axis; and the share of the form's width that the longest strokes
/// cover.
struct HatchPen {
    double pitch = 5;
    double width = 1;
    double tilt = 0;
    double reach = 0.3;
    /// From the lit edge instead of the dark one: with white chalk, on black cloth.
    bool from_light = false;
};

/// Hatching laid across a zone like rings round a barrel, from the dark edge inwards (or the
/// lit one); or along it, where it falls. Empty without an axis.
std::vector<HatchStroke> hatch(const Zone& zone, const HatchPen& pen);

/// The light along the middle of a rounded form, towards the side it comes from: patches one within
/// the other, the broadest first. Empty without an axis.
std::vector<Path> glow(const Zone& zone, int steps);

}  // namespace platewright
