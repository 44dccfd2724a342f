// SPDX-License-Identifier: MIT
// The bands that the legs of breeches are sewn to: at the waist and below the knee.
#pragma once

#include <optional>

#include "pattern/pieces.h"

namespace platewright {

/// How deep the waistband is, mm; 0 where none is drawn.
double waistband_depth(const Flat& front);

/// From so far beside the seat seam the top of a hind leg is gathered, to so far, mm. Common
/// practice, no source.
inline constexpr double kGatherFrom = 60;
inline constexpr double kGatherTo = 200;

/// One half each side, from the lacing behind to its lap in front: straight, as deep as drawn. Its
/// upper edge is the left one. `gathered`: how much of a hind leg's top is gathered into it, mm.
/// Nothing where no waistband is drawn.
std::optional<PatternPiece> waistband_of(const PatternSource& source, double gathered);

/// Cut double and folded along its middle, the grain along it: a tongue for the buckle, and then as
/// long as the hems of the two finished legs. Nothing where no band is drawn.
std::optional<PatternPiece> knee_band_of(const PatternSource& source,
                                         const PatternPiece& fore_leg,
                                         const PatternPiece& hind_leg);

}  // namespace platewright
