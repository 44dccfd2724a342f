// SPDX-License-Identifier: MIT
// The colours a piece is drawn with, all derived from its cloth.
#pragma once

#include <optional>
#include <string_view>

#include "base/colour.h"
#include "base/tincture.h"

namespace platewright {

/// What a part is made of, as far as light is concerned.
enum class Surface { wool, linen, leather, felt, metal, skin, hair, braid, fur };

/// What a piece is painted with: its colour, or on a sheet without colour its hatching.
struct Paint {
    Colour colour;
    std::optional<TinctureId> hatch;
};

/// Derived so that lines take the hue of the cloth, and dark cloth shows its seams as lighter
/// lines.
struct Inks {
    Colour base;
    Colour contour;
    Colour seam;
    Colour shade;
    Colour light;
    /// The cloth's own colour in full light.
    Colour glow;
    /// Factors on the strength of shadow and light washes.
    double shade_factor = 1;
    double light_factor = 1;
    /// How strongly hatching is printed, 0..1.
    double hatch_alpha = 0.55;
    /// OKLab lightness of the cloth, 0..1.
    double lightness = 0;
    /// So dark that the contour needs a lighter lip inside.
    bool dark = false;
    /// So dark that no dark stroke could be seen on it.
    bool black = false;
};

/// The colours that shade and outline that cloth.
Inks inks_for(Colour cloth, Surface surface);

/// Black lines on white paper, without light and shade: for hatched pieces, and for what is dark
/// whatever the cloth, such as the pupil of an eye.
Inks line_inks(Colour paper);

/// The colour of the wash of that number, from 1, of many equal ones laid over one another:
/// programs that draw a file keep eight bits of a colour already multiplied by its alpha, and what
/// they round away at one wash adds up to another hue at eight. These take turns, so that nothing
/// is lost.
Colour settled(Colour wash, double alpha, int step);

/// The cloth made lighter or darker by a factor on its OKLab lightness.
Colour shaded(Colour cloth, double factor);

}  // namespace platewright
