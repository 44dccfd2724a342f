// SPDX-License-Identifier: MIT
// Where breeches and overalls open: the fall in front, and the outer seam at the knee.
#pragma once

#include <optional>

#include "pattern/pieces.h"

namespace platewright {

/// By so much each half of what opens in front passes its middle, for buttons and holes, mm. Common
/// practice, no source.
inline constexpr double kFrontLap = 25;

/// Opens the fore leg of the wearer's left for the fall, half of which is cut in one with it: a
/// slit down its side, and its buttonholes. Nothing where no fall is drawn.
void open_fall(PatternPiece& fore_leg, const Flat& front);

/// What lies behind each half of the fall, from the slit to the front's middle and its lap: it
/// carries the waistband across, and the fall's buttons.
std::optional<PatternPiece> fall_bearer(const Flat& front);

/// A strip laid over each slit beside the fall and cut with it: turned in, it faces both its edges.
std::optional<PatternPiece> slit_facing(const Flat& front);

/// The outer seam of the fore leg ends where the knee's opening begins; below, its finished edge is
/// the one that is drawn, and laps over the hind leg. Nothing where no opening is drawn.
void open_fore_knee(PatternPiece& fore_leg, const Flat& front);

/// The hind leg passes under that edge and carries its buttons. Its outer side lies to the left.
void open_hind_knee(PatternPiece& hind_leg, const Flat& front, const Chain& side_seam);

/// How far the hind leg passes under there, at most; 0 without an opening.
double knee_underlap(const Flat& front);

/// Where the opening at the knee begins; nothing without one.
std::optional<Point> knee_opening(const Flat& front);

}  // namespace platewright
