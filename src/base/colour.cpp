// SPDX-License-Identifier: MIT
// Colour arithmetic from the published equations.
#include "base/colour.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace platewright {

namespace {

struct Triple {
    double x = 0;
    double y = 0;
    double z = 0;
};

/// White points from xy (0.3127, 0.3290) and (0.3457, 0.3585).
constexpr Triple kD65{0.3127 / 0.3290, 1, (1 - 0.3127 - 0.3290) / 0.3290};
constexpr Triple kD50{0.3457 / 0.3585, 1, (1 - 0.3457 - 0.3585) / 0.3585};

// CIE 15: the exact fractions, not their roundings.
constexpr double kEpsilon = 216.0 / 24389.0;
constexpr double kKappa = 24389.0 / 27.0;

double decode(std::uint8_t channel) {
    const double v = channel / 255.0;
    return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
}

double encode(double linear) {
    return linear <= 0.0031308 ? linear * 12.92 : 1.055 * std::pow(linear, 1 / 2.4) - 0.055;
}

std::uint8_t to_byte(double encoded) {
    return static_cast<std::uint8_t>(std::lround(std::clamp(encoded, 0.0, 1.0) * 255));
}

Triple linear_of(Colour c) {
    return {decode(c.red), decode(c.green), decode(c.blue)};
}

bool in_gamut(Triple linear) {
    constexpr double slack = 1e-4;
    const auto inside = [](double v) { return v >= -slack && v <= 1 + slack; };
    return inside(linear.x) && inside(linear.y) && inside(linear.z);
}

Colour colour_of(Triple linear) {
    return {to_byte(encode(linear.x)), to_byte(encode(linear.y)), to_byte(encode(linear.z))};
}

Triple multiply(const std::array<double, 9>& m, Triple v) {
    return {m[0] * v.x + m[1] * v.y + m[2] * v.z,
            m[3] * v.x + m[4] * v.y + m[5] * v.z,
            m[6] * v.x + m[7] * v.y + m[8] * v.z};
}

// The sRGB matrix of CSS Color 4, exact for the white point above.
constexpr std::array<double, 9> kRgbToXyz{506752.0 / 1228815,
                                          87881.0 / 245763,
                                          12673.0 / 70218,
                                          87098.0 / 409605,
                                          175762.0 / 245763,
                                          12673.0 / 175545,
                                          7918.0 / 409605,
                                          87881.0 / 737289,
                                          1001167.0 / 1053270};
constexpr std::array<double, 9> kXyzToRgb{12831.0 / 3959,
                                          -329.0 / 214,
                                          -1974.0 / 3959,
                                          -851781.0 / 878810,
                                          1648619.0 / 878810,
                                          36519.0 / 878810,
                                          705.0 / 12673,
                                          -2585.0 / 12673,
                                          705.0 / 667};
// Bradford adaptation D65 to D50, as in CSS Color 4.
constexpr std::array<double, 9> kD65ToD50{1.0479297925449969,
                                          0.022946870601609652,
                                          -0.05019226628920524,
                                          0.02962780877005599,
                                          0.9904344267538799,
                                          -0.017073799063418826,
                                          -0.009243040646204504,
                                          0.015055191490298152,
                                          0.7518742814281371};

Lab lab_of(Triple xyz, Triple white) {
    const auto f = [](double t) { return t > kEpsilon ? std::cbrt(t) : (kKappa * t + 16) / 116; };
    const double fx = f(xyz.x / white.x);
    const double fy = f(xyz.y / white.y);
    const double fz = f(xyz.z / white.z);
    return {116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)};
}

double degrees(double radians) {
    return radians * 180 / std::numbers::pi;
}

double radians(double deg) {
    return deg * std::numbers::pi / 180;
}

/// Hue angle 0..360; 0 for greys, as the paper prescribes.
double hue(double a, double b) {
    if (a == 0 && b == 0) {
        return 0;
    }
    const double h = degrees(std::atan2(b, a));
    return h < 0 ? h + 360 : h;
}

double pow7(double v) {
    const double v2 = v * v;
    return v2 * v2 * v2 * v;
}

constexpr double k25To7 = 6103515625.0;

double hue_difference(double h1, double h2, bool grey) {
    if (grey) {
        return 0;
    }
    const double d = h2 - h1;
    if (std::abs(d) <= 180) {
        return d;
    }
    return d > 180 ? d - 360 : d + 360;
}

double hue_mean(double h1, double h2, bool grey) {
    if (grey) {
        return h1 + h2;
    }
    if (std::abs(h1 - h2) <= 180) {
        return (h1 + h2) / 2;
    }
    return h1 + h2 < 360 ? (h1 + h2 + 360) / 2 : (h1 + h2 - 360) / 2;
}

int hex_digit(char c) {
    if (c >= '0' && c <= '9') {
        return c - '0';
    }
    if (c >= 'a' && c <= 'f') {
        return c - 'a' + 10;
    }
    if (c >= 'A' && c <= 'F') {
        return c - 'A' + 10;
    }
    return -1;
}

Triple linear_of(OkLab lab) {
    const double l = lab.l + 0.3963377774 * lab.a + 0.2158037573 * lab.b;
    const double m = lab.l - 0.1055613458 * lab.a - 0.0638541728 * lab.b;
    const double s = lab.l - 0.0894841775 * lab.a - 1.2914855480 * lab.b;
    return multiply({4.0767416621,
                     -3.3077115913,
                     0.2309699292,
                     -1.2684380046,
                     2.6097574011,
                     -0.3413193965,
                     -0.0041960863,
                     -0.7034186147,
                     1.7076147010},
                    {l * l * l, m * m * m, s * s * s});
}

}  // namespace

std::optional<Colour> parse_hex(std::string_view text) {
    if (text.size() != 7 || text[0] != '#') {
        return std::nullopt;
    }
    std::array<int, 6> digits{};
    for (std::size_t i = 0; i < 6; ++i) {
        digits[i] = hex_digit(text[i + 1]);
        if (digits[i] < 0) {
            return std::nullopt;
        }
    }
    const auto byte = [&](std::size_t i) {
        return static_cast<std::uint8_t>(digits[i] * 16 + digits[i + 1]);
    };
    return Colour{byte(0), byte(2), byte(4)};
}

std::string to_hex(Colour colour) {
    constexpr std::string_view digits = "0123456789abcdef";
    std::string text = "#";
    for (const std::uint8_t channel : {colour.red, colour.green, colour.blue}) {
        text += digits[channel / 16];
        text += digits[channel % 16];
    }
    return text;
}

Light to_light(Colour colour) {
    return {decode(colour.red), decode(colour.green), decode(colour.blue)};
}

Colour from_light(Light light) {
    return colour_of({light.red, light.green, light.blue});
}

Lab to_lab_d65(Colour colour) {
    return lab_of(multiply(kRgbToXyz, linear_of(colour)), kD65);
}

Lab to_lab_d50(Colour colour) {
    return lab_of(multiply(kD65ToD50, multiply(kRgbToXyz, linear_of(colour))), kD50);
}

Colour from_lab_d65(Lab lab, bool* clipped) {
    const auto inverse = [](double f) {
        const double cube = f * f * f;
        return cube > kEpsilon ? cube : (116 * f - 16) / kKappa;
    };
    const double fy = (lab.l + 16) / 116;
    const Triple xyz{kD65.x * inverse(fy + lab.a / 500),
                     lab.l > kKappa * kEpsilon ? fy * fy * fy : lab.l / kKappa,
                     kD65.z * inverse(fy - lab.b / 200)};
    const Triple linear = multiply(kXyzToRgb, xyz);
    if (clipped != nullptr) {
        *clipped = !in_gamut(linear);
    }
    return colour_of(linear);
}

// NOLINTNEXTLINE(readability-function-size): one published formula, kept in the paper's order.
double delta_e_2000(Lab first, Lab second) {
    const double mean_c = (std::hypot(first.a, first.b) + std::hypot(second.a, second.b)) / 2;
    const double g = 0.5 * (1 - std::sqrt(pow7(mean_c) / (pow7(mean_c) + k25To7)));
    const double a1 = first.a * (1 + g);
    const double a2 = second.a * (1 + g);
    const double c1 = std::hypot(a1, first.b);
    const double c2 = std::hypot(a2, second.b);
    const double h1 = hue(a1, first.b);
    const double h2 = hue(a2, second.b);
    const bool grey = c1 * c2 == 0;

    const double dl = second.l - first.l;
    const double dc = c2 - c1;
    const double dh = 2 * std::sqrt(c1 * c2) * std::sin(radians(hue_difference(h1, h2, grey)) / 2);

    const double l = (first.l + second.l) / 2;
    const double c = (c1 + c2) / 2;
    const double h = hue_mean(h1, h2, grey);
    const double t = 1 - 0.17 * std::cos(radians(h - 30)) + 0.24 * std::cos(radians(2 * h)) +
                     0.32 * std::cos(radians(3 * h + 6)) - 0.20 * std::cos(radians(4 * h - 63));
    const double theta = 30 * std::exp(-std::pow((h - 275) / 25, 2));
    const double rc = 2 * std::sqrt(pow7(c) / (pow7(c) + k25To7));
    const double sl = 1 + 0.015 * std::pow(l - 50, 2) / std::sqrt(20 + std::pow(l - 50, 2));
    const double sc = 1 + 0.045 * c;
    const double sh = 1 + 0.015 * c * t;
    const double rt = -std::sin(radians(2 * theta)) * rc;
    return std::sqrt(std::pow(dl / sl, 2) + std::pow(dc / sc, 2) + std::pow(dh / sh, 2) +
                     rt * (dc / sc) * (dh / sh));
}

double relative_luminance(Colour colour) {
    const Triple linear = linear_of(colour);
    return 0.2126 * linear.x + 0.7152 * linear.y + 0.0722 * linear.z;
}

double contrast_ratio(Colour first, Colour second) {
    const double one = relative_luminance(first);
    const double two = relative_luminance(second);
    return (std::max(one, two) + 0.05) / (std::min(one, two) + 0.05);
}

OkLab to_oklab(Colour colour) {
    const Triple lms = multiply({0.4122214708,
                                 0.5363325363,
                                 0.0514459929,
                                 0.2119034982,
                                 0.6806995451,
                                 0.1073969566,
                                 0.0883024619,
                                 0.2817188376,
                                 0.6299787005},
                                linear_of(colour));
    const double l = std::cbrt(lms.x);
    const double m = std::cbrt(lms.y);
    const double s = std::cbrt(lms.z);
    return {0.2104542553 * l + 0.7936177850 * m - 0.0040720468 * s,
            1.9779984951 * l - 2.4285922050 * m + 0.4505937099 * s,
            0.0259040371 * l + 0.7827717662 * m - 0.8086757660 * s};
}

Colour from_oklab(OkLab lab) {
    lab.l = std::clamp(lab.l, 0.0, 1.0);
    Triple linear = linear_of(lab);
    if (!in_gamut(linear)) {
        double low = 0;
        double high = 1;
        // Sixteen halvings bring the chroma within one part in 65 000.
        for (int i = 0; i < 16; ++i) {
            const double middle = (low + high) / 2;
            const bool fits = in_gamut(linear_of(OkLab{lab.l, lab.a * middle, lab.b * middle}));
            (fits ? low : high) = middle;
        }
        linear = linear_of(OkLab{lab.l, lab.a * low, lab.b * low});
    }
    return colour_of(linear);
}

Colour mix(Colour bottom, Colour top, double alpha) {
    const auto channel = [alpha](std::uint8_t under, std::uint8_t over) {
        return static_cast<std::uint8_t>(std::lround(under + (over - under) * alpha));
    };
    return {channel(bottom.red, top.red),
            channel(bottom.green, top.green),
            channel(bottom.blue, top.blue)};
}

}  // namespace platewright
