// SPDX-License-Identifier: MIT
// The colours a piece is drawn with, all derived from its cloth.
#pragma once

#include <string_view>

#include "base/colour.h"

namespace platewright {

/// What a part is made of, as far as light is concerned.
enum class Surface { wool, linen, leather, felt, metal, skin, hair, braid, fur };

/// Derived so that lines take the hue of the cloth, and dark cloth shows its seams as lighter
/// lines.
struct Inks {
    Colour base;
    Colour contour;
    Colour seam;
    Colour shade;
    Colour light;
    /// Factors on the strength of shadow and light washes.
    double shade_factor = 1;
    double light_factor = 1;
    /// How strongly hatching is printed, 0..1.
    double hatch_alpha = 0.55;
    /// OKLab lightness of the cloth, 0..1.
    double lightness = 0;
    /// So dark that the contour needs a lighter lip inside.
    bool dark = false;
};

/// The colours that shade and outline that cloth.
Inks inks_for(Colour cloth, Surface surface);

/// The cloth made lighter or darker by a factor on its OKLab lightness.
Colour shaded(Colour cloth, double factor);

}  // namespace platewright
