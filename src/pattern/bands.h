// SPDX-License-Identifier: MIT
// The bands that the legs of breeches are sewn to: at the waist and below the knee.
#pragma once

#include <optional>

#include "pattern/pieces.h"

namespace platewright {

/// One half each side, from the lacing behind to its lap in front: straight, as deep as drawn. Its
/// upper edge is the left one. Nothing where no waistband is drawn.
std::optional<PatternPiece> waistband_of(const PatternSource& source);

/// Cut double and folded along its middle, the grain along it: a tongue for the buckle, and then as
/// long as the hems of the two finished legs. Nothing where no band is drawn.
std::optional<PatternPiece> knee_band_of(const PatternSource& source,
                                         const PatternPiece& fore_leg,
                                         const PatternPiece& hind_leg);

}  // namespace platewright
