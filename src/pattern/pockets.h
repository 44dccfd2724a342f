// SPDX-License-Identifier: MIT
// Where pockets are cut into the cloth.
#pragma once

#include <optional>
#include <string_view>
#include <utility>
#include <vector>

#include "compose/flat.h"

namespace platewright {

/// The cut beneath a flap, from end to end.
using Mouth = std::pair<Point, Point>;

/// The mouth is so much shorter than the flap at either end, mm. Common practice, no source.
inline constexpr double kMouthWithinFlap = 10;

/// The mouths on the wearer's left, of the flaps whose parts begin so: each along the edge by which
/// its flap is sewn on.
std::vector<Mouth> mouths_of(const Flat& flat, std::string_view flap);

/// Whether a cut lies within the piece, as a pocket's mouth does; the slit of a fall begins at its
/// edge.
bool is_mouth(const Chain& slit, const Chain& outline);

/// A place of a flap, carried with the mouth that it belongs to.
Point carried(Point place, const Mouth& from, const Mouth& to);

/// The welt of the breeches' pocket is so much longer than its mouth at either end, mm. Common
/// practice, no source.
inline constexpr double kWeltBeyondMouth = 12;

/// The mouth of the breeches' pocket on the wearer's left: within the ends of the welt that is
/// drawn, so that there is cloth to sew to between it and slit and side seam. Nothing without one.
std::optional<Mouth> breeches_mouth(const Flat& front);

}  // namespace platewright
