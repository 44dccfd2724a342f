// SPDX-License-Identifier: MIT
// Colours: sRGB, CIE Lab, OKLab, differences and contrast, written from the published equations.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace platewright {

/// An sRGB colour of 8 bits a channel (IEC 61966-2-1).
struct Colour {
    std::uint8_t red = 0;
    std::uint8_t green = 0;
    std::uint8_t blue = 0;

    friend bool operator==(const Colour&, const Colour&) = default;
};

/// The colour written `#rrggbb` (either case); nothing else is accepted.
std::optional<Colour> parse_hex(std::string_view text);

/// `#rrggbb`, lower case.
std::string to_hex(Colour colour);

/// The channels as amounts of light, 0..1 (IEC 61966-2-1).
struct Light {
    double red = 0;
    double green = 0;
    double blue = 0;
};

/// The light a screen gives for a colour of sRGB, linear, 0 to 1.
Light to_light(Colour colour);

/// The nearest colour; amounts below 0 and above 1 are cut off.
Colour from_light(Light light);

/// CIE L*a*b* (CIE 15). The white point is named by the function that makes it.
struct Lab {
    double l = 0;
    double a = 0;
    double b = 0;
};

/// Lab relative to D65. Source: IEC 61966-2-1 and CIE 15.
Lab to_lab_d65(Colour colour);

/// Lab relative to D50, by Bradford adaptation, as colour instruments print it.
Lab to_lab_d50(Colour colour);

/// The nearest sRGB colour to a Lab value relative to D65. `clipped`, if given, tells whether the
/// value lay outside sRGB.
Colour from_lab_d65(Lab lab, bool* clipped = nullptr);

/// CIEDE2000 with kL = kC = kH = 1.
/// Source: Sharma, Wu, Dalal, Color Research and Application 30(1), 2005.
double delta_e_2000(Lab first, Lab second);

/// Relative luminance 0..1 and contrast ratio 1..21 (WCAG 2.x).
double relative_luminance(Colour colour);
double contrast_ratio(Colour first, Colour second);

/// OKLab: l 0..1. Source: B. Ottosson, "A perceptual color space for image processing", 2020.
struct OkLab {
    double l = 0;
    double a = 0;
    double b = 0;
};

/// OKLab of an sRGB colour.
OkLab to_oklab(Colour colour);

/// The sRGB colour of that lightness and hue; where sRGB has none so strong, the chroma is reduced,
/// never the hue.
Colour from_oklab(OkLab lab);

/// `top` at `alpha` (0..1) over `bottom`, mixed as printers and SVG do, in encoded sRGB.
Colour mix(Colour bottom, Colour top, double alpha);

}  // namespace platewright
