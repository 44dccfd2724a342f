// SPDX-License-Identifier: MIT
// Grading: how the points of a flat move when it is drawn for another man, and when an order states
// a measure. Piecewise linear between landmarks of the body, so that every seam stays a seam.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "compose/flat.h"
#include "vocabulary/body.h"
#include "vocabulary/measure.h"

namespace platewright {

/// A garment by how it hangs: what is cut to the trunk, to the legs, or to the calf.
enum class Hang { trunk, legs, calf };

/// By the name of the view: `flat-coat-front` hangs from the trunk.
Hang hang_of(std::string_view view);

/// Moves a flat drawn for the reference man to this one. Girths: the neck by the neck girth, the
/// shoulders by the chest; from the chest down the garment has the man's girths and their ease
/// (`pattern/fit.h`). Lengths:
/// above the waist by the nape to waist, sleeves by the arm, what hangs below by the inside leg.
/// Facings keep their own width and height, which are ordered and not grown; a stated one is taken
/// over. `flat`: the same view before it is moved.
Moving grading_of(Hang hang, const Body& body, const StatedMeasures& stated, const Flat& flat);

}  // namespace platewright
