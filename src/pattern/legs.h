// SPDX-License-Identifier: MIT
// The legs of breeches and overalls on their flats, and their seams.
#pragma once

#include "compose/flat.h"

namespace platewright {

/// Breeches or overalls, whichever the flat shows; null if neither.
const FlatPart* legs_of(const Flat& flat);

/// The inner and the outer seam of the leg on that side of the flat's middle: 1 is the right of the
/// page, -1 its left. Null where the flat has no such guide.
const Chain* inner_seam_of(const Flat& flat, const FlatPart& legs, double side);
const Chain* side_seam_of(const Flat& flat, const FlatPart& legs, double side);

/// The waist's edge of a leg beside its side seam: from the level of the waist up to that seam,
/// which is drawn out so far that the edges of both legs run on straight when they are sewn.
Chain waist_at_side(const Chain& side_seam);

/// The waist's edge of a hind leg, from the side seam to the seat seam, in one curve. `middle`: the
/// height of the flat's waist at its middle.
Chain waist_behind(const Chain& side_seam, double middle);

/// How much of half the waist lies before the side seam, mm; 0 without that seam.
double side_at_waist(const Flat& front);

}  // namespace platewright
