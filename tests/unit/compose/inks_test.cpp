// SPDX-License-Identifier: MIT
// Line colours derived from the cloth.
#include "compose/inks.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <cstdint>
#include <numbers>

namespace platewright {
namespace {

Colour grey_of_lightness(double l) {
    return from_oklab({l, 0, 0});
}

TEST(Inks, TheContourIsAlwaysDarkerThanTheClothAndNeverBlack) {
    for (double l = 0.15; l <= 1; l += 0.05) {
        const Inks inks = inks_for(grey_of_lightness(l), Surface::wool);
        EXPECT_LT(to_oklab(inks.contour).l, l) << l;
        EXPECT_NE(inks.contour, (Colour{0, 0, 0})) << l;
    }
}

// The lightnesses at which a derivation changes its branch, on both sides of each.
TEST(Inks, SeamsCanBeSeenOnEveryCloth) {
    for (const double l : {0.05, 0.28, 0.35, 0.37, 0.40, 0.45, 0.46, 0.80, 0.81, 0.85, 0.97}) {
        const Inks inks = inks_for(grey_of_lightness(l), Surface::wool);
        EXPECT_GT(std::abs(to_oklab(inks.seam).l - l), 0.10) << l;
    }
}

TEST(Inks, DarkClothTakesLighterSeamsAndALip) {
    const Inks black = inks_for({0x2b, 0x2a, 0x2d}, Surface::wool);
    EXPECT_TRUE(black.dark);
    EXPECT_GT(to_oklab(black.seam).l, black.lightness);
    const Inks red = inks_for({0xb2, 0x32, 0x30}, Surface::wool);
    EXPECT_FALSE(red.dark);
    EXPECT_LT(to_oklab(red.seam).l, red.lightness);
}

TEST(Inks, LinesTakeTheHueOfTheCloth) {
    const OkLab contour = to_oklab(inks_for({0xb2, 0x32, 0x30}, Surface::wool).contour);
    EXPECT_GT(contour.a, 0.02);
}

TEST(Inks, WhiteClothIsShadedCool) {
    const OkLab shade = to_oklab(inks_for({0xef, 0xea, 0xdd}, Surface::wool).shade);
    EXPECT_LT(shade.b, 0);
    EXPECT_GT(shade.l, 0.25);
}

TEST(Inks, YellowClothIsNotShadedViolet) {
    const OkLab shade = to_oklab(inks_for({0xe4, 0xc4, 0x6a}, Surface::wool).shade);
    EXPECT_GT(shade.b, 0);
}

/// Straw had turned pink in the light: its red was at the end of its scale and its green was not.
TEST(Inks, ClothInFullLightIsLighterAndKeepsItsHue) {
    for (const Colour cloth : {Colour{0xe8, 0xd8, 0x95},
                               Colour{0xb2, 0x32, 0x30},
                               Colour{0x2f, 0x5a, 0x3f},
                               Colour{0x28, 0x38, 0x5f}}) {
        const OkLab plain = to_oklab(cloth);
        const OkLab lit = to_oklab(inks_for(cloth, Surface::wool).glow);
        EXPECT_GT(lit.l, plain.l + 0.03);
        const double turned = std::atan2(lit.b, lit.a) - std::atan2(plain.b, plain.a);
        EXPECT_LT(std::abs(std::remainder(turned, 2 * std::numbers::pi)), 0.3);
    }
}

TEST(Shaded, FactorOneChangesNothing) {
    EXPECT_EQ(shaded({1, 2, 3}, 1), (Colour{1, 2, 3}));
    EXPECT_LT(to_oklab(shaded({200, 100, 50}, 0.8)).l, to_oklab({200, 100, 50}).l);
}

/// Nine faint washes over off-white, with eight bits kept of each and of the colour multiplied by
/// its alpha, as renderers do.
template <typename ColourOf>
OkLab washed(double alpha, const ColourOf& colour_of) {
    const double share = std::round(alpha * 255) / 255;
    std::array<double, 3> cloth{0xef, 0xea, 0xdd};
    for (int step = 1; step <= 9; ++step) {
        const Colour wash = colour_of(step);
        const std::array<double, 3> over{static_cast<double>(wash.red),
                                         static_cast<double>(wash.green),
                                         static_cast<double>(wash.blue)};
        for (std::size_t i = 0; i < 3; ++i) {
            cloth[i] = std::round(cloth[i] * (1 - share)) + std::round(over[i] * share);
        }
    }
    const auto byte = [](double value) { return static_cast<std::uint8_t>(value); };
    return to_oklab({byte(cloth[0]), byte(cloth[1]), byte(cloth[2])});
}

double apart(const OkLab& one, const OkLab& other) {
    return std::hypot(one.a - other.a, one.b - other.b);
}

TEST(Inks, FaintWashesOfShadeKeepTheirHue) {
    for (const Colour cloth : {Colour{0xef, 0xea, 0xdd}, Colour{0xe8, 0xd8, 0x95}}) {
        const Colour shade = inks_for(cloth, Surface::wool).shade;
        const double alpha = 0.0216;
        const double all = 1 - std::pow(1 - std::round(alpha * 255) / 255, 9);
        const OkLab wanted = to_oklab(mix({0xef, 0xea, 0xdd}, shade, all));
        const OkLab taken = washed(alpha, [&](int step) { return settled(shade, alpha, step); });
        const OkLab as_it_is = washed(alpha, [&](int) { return shade; });
        EXPECT_LT(apart(taken, wanted), 0.006);
        EXPECT_LT(apart(taken, wanted), apart(as_it_is, wanted) + 0.001);
    }
    EXPECT_EQ(settled({10, 200, 30}, 1, 3), (Colour{10, 200, 30}));
}

}  // namespace
}  // namespace platewright
