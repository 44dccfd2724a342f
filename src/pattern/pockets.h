// SPDX-License-Identifier: MIT
// Where pockets are cut into the cloth.
#pragma once

#include <optional>
#include <string_view>
#include <utility>
#include <vector>

#include "compose/flat.h"

namespace platewright {

/// How a flap is set: tilted with the edge by which it is sewn on, along which and square to which
/// it is measured.
struct FlapAxes {
    /// The middle of the sewn edge.
    Point origin;
    /// Units along the sewn edge and square to it, towards the free edge.
    Point along;
    Point away;

    /// Whether it stands upright, its width square to the sewn edge; else it hangs from that edge.
    [[nodiscard]] bool upright() const;

    /// The place of a point in these axes, `x` along and `y` away, and the point at such a place.
    [[nodiscard]] Point within(Point p) const;
    [[nodiscard]] Point at(Point place) const;

    /// The box of an outline in these axes.
    [[nodiscard]] Rect box(const Chain& outline) const;
};

/// The guide along the free edge of a flap, which begins and ends where that is sewn on; null if it
/// has none.
const Chain* free_edge_of(const Flat& flat, const FlatPart& flap);

/// The axes of a flap with that free edge; without one, those of the box round its outline.
FlapAxes axes_of(const Chain& outline, const Chain* free_edge);

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
