// SPDX-License-Identifier: MIT
// The colours a piece is drawn with.
#include "compose/inks.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace platewright {

namespace {

/// Below this lightness seams are drawn lighter than the cloth; a dark line would vanish.
constexpr double kSeamTurns = 0.36;
constexpr double kLipBelow = 0.40;
constexpr double kBlackBelow = 0.32;

Colour contour_of(OkLab c) {
    const double l = c.l > 0.45 ? 0.155 + 0.25 * c.l * c.l : 0.085 + 0.27 * c.l;
    const double chroma = c.l >= 0.85 ? 1.0 : 0.85;
    // A little warmth, as printing ink has.
    return from_oklab({l, c.a * chroma + 0.004, c.b * chroma + 0.010});
}

/// Red-brown round fair skin; round dark skin, where that would glow, a deep brown.
Colour skin_contour_of(OkLab c) {
    const double fair = std::clamp((c.l - 0.45) / 0.3, 0.0, 1.0);
    return from_oklab({0.10 + 0.10 * fair + (0.22 - 0.04 * fair) * c.l,
                       c.a * (0.75 + 0.35 * fair) + 0.02 * fair,
                       c.b * (0.6 + 0.2 * fair) + 0.02 * fair});
}

Colour seam_of(OkLab c) {
    if (c.l < kSeamTurns) {
        return from_oklab({c.l + 0.17, c.a * 0.9, c.b * 0.9});
    }
    return from_oklab({0.16 + 0.40 * c.l * c.l, c.a * 0.85 + 0.003, c.b * 0.85 + 0.008});
}

Colour glow_of(OkLab c) {
    // Dyed cloth is more of its colour in the light; white only whiter.
    const double vivid = std::clamp(1.35 - 3.6 * (c.l - 0.68), 0.8, 1.35);
    return from_oklab({std::min(0.985, c.l + 0.27), c.a * vivid, c.b * vivid + 0.008});
}

Colour shade_of(OkLab c, Surface surface) {
    if (surface == Surface::skin) {
        return from_oklab({c.l * 0.42, c.a * 1.1 + 0.045, c.b * 0.8 + 0.02});
    }
    const double chroma = std::hypot(c.a, c.b);
    if (c.l > 0.8) {
        // White cloth is shaded with a cool violet grey, never with black; coloured light cloth
        // keeps its hue.
        const double own = std::clamp((chroma - 0.03) / 0.03, 0.0, 1.0);
        const OkLab cool = to_oklab({0x3c, 0x38, 0x48});
        // Yellow darkened in its own hue is olive; a painter shades it with umber. Buff, which has
        // red in it, needs little.
        const double yellow = std::clamp((c.b - 0.035) / 0.065, 0.0, 1.0);
        const double umber = 0.085 * yellow * std::clamp((0.02 - c.a) / 0.03, 0.0, 1.0);
        return from_oklab({cool.l + (c.l * 0.38 - cool.l) * own,
                           cool.a + (c.a * 0.75 + umber - cool.a) * own,
                           cool.b + (c.b * 0.75 - cool.b) * own});
    }
    return from_oklab({c.l * 0.24, c.a * 0.68, c.b * 0.68});
}

}  // namespace

Inks inks_for(Colour cloth, Surface surface) {
    const OkLab c = to_oklab(cloth);
    Inks inks;
    inks.base = cloth;
    inks.lightness = c.l;
    inks.contour = contour_of(c);
    inks.seam = seam_of(c);
    inks.shade = shade_of(c, surface);
    inks.light = {255, 255, 255};
    inks.glow = glow_of(c);
    inks.shade_factor = 1.75 - 0.95 * c.l;
    inks.light_factor = c.l < 0.6 ? 1.0 : 1.25;
    inks.dark = c.l < kLipBelow;
    inks.black = c.l <= kBlackBelow;
    // On white a full line would be grey mush; on skin it would be a beard.
    inks.hatch_alpha = c.l > 0.8 ? 0.42 : 0.68;
    switch (surface) {
        case Surface::metal:
            inks.shade_factor *= 1.35;
            inks.light_factor *= 2.0;
            break;
        case Surface::leather:
            inks.light_factor *= 1.35;
            break;
        case Surface::felt:
            inks.light_factor *= 0.85;
            break;
        case Surface::skin:
            inks.shade_factor *= 0.8;
            inks.hatch_alpha = 0.22;
            inks.contour = skin_contour_of(c);
            break;
        case Surface::hair:
        case Surface::fur:
            inks.hatch_alpha = 0.35;
            break;
        case Surface::wool:
        case Surface::linen:
        case Surface::braid:
            break;
    }
    return inks;
}

Inks line_inks(Colour paper) {
    constexpr Colour black{0, 0, 0};
    Inks inks;
    inks.base = paper;
    inks.lightness = to_oklab(paper).l;
    inks.contour = black;
    inks.seam = black;
    // Whatever is mixed with shade or light stays as it is.
    inks.shade = paper;
    inks.light = paper;
    inks.glow = paper;
    inks.shade_factor = 0;
    inks.light_factor = 0;
    inks.hatch_alpha = 0;
    return inks;
}

Colour settled(Colour wash, double alpha, int step) {
    const double kept = std::round(alpha * 255);
    if (kept < 1) {
        return wash;
    }
    const auto channel = [kept, step](std::uint8_t value) {
        // What so many washes should have laid by now, less what those before have.
        const double each = value * kept / 255;
        const double laid = std::round(each * step) - std::round(each * (step - 1));
        return static_cast<std::uint8_t>(std::min(255.0, std::round(laid * 255 / kept)));
    };
    return {channel(wash.red), channel(wash.green), channel(wash.blue)};
}

Colour shaded(Colour cloth, double factor) {
    if (factor == 1) {
        return cloth;
    }
    OkLab c = to_oklab(cloth);
    c.l = std::min(1.0, c.l * factor);
    c.a *= std::min(1.0, factor);
    c.b *= std::min(1.0, factor);
    return from_oklab(c);
}

}  // namespace platewright
