// SPDX-License-Identifier: MIT
// Stiff linen that has a shape of its own, in waistcoats and breeches.
#pragma once

#include <optional>
#include <string>

#include "pattern/pieces.h"

namespace platewright {

/// A pair of pieces of stiff linen, cut at the line; their outline is still to be drawn. Named like
/// `front canvas`.
PatternPiece canvas_of(const PatternSource& source,
                       const PatternPiece& stiffened,
                       const char* name);

/// Behind holes and buttons of a waistcoat: its front facing as far down as it is buttoned. `last`:
/// height of the last button on the facing as that is drawn.
PatternPiece front_canvas(const PatternSource& source, const PatternPiece& facing, double last);

/// Throughout a waistband; in the outer half of a knee band, up to its fold.
PatternPiece waistband_canvas(const PatternSource& source, const PatternPiece& band);
PatternPiece knee_band_canvas(const PatternSource& source, const PatternPiece& band);

/// Along the upper edge of each half of the fall, behind its holes. Nothing where none is drawn.
std::optional<PatternPiece> fall_canvas(const PatternSource& source, const PatternPiece& fore_leg);

}  // namespace platewright
