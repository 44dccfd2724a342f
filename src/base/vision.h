// SPDX-License-Identifier: MIT
// How colours look to other eyes, and on a sheet without colour.
#pragma once

#include <array>
#include <string_view>

#include "base/colour.h"

namespace platewright {

/// Which cones are amiss: those for long, for middling or for short waves.
enum class Sight { protan, deutan, tritan };

/// All of them.
inline constexpr std::array<Sight, 3> kSights{Sight::protan, Sight::deutan, Sight::tritan};

/// `protan`, `deutan`, `tritan`.
std::string_view sight_name(Sight sight);

/// The colour as such eyes see it; `severity` from 0 (all eyes) to 1 (the cone is missing), other
/// values are cut off. Source: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, "A
/// Physiologically-based Model for Simulation of Color Vision Deficiency", IEEE Transactions on
/// Visualization and Computer Graphics 15(6), 2009.
Colour as_seen(Colour colour, Sight sight, double severity);

/// The grey of the same lightness (CIE L*), so that contrasts stay what they are.
Colour grey_of(Colour colour);

}  // namespace platewright
