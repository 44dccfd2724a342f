// SPDX-License-Identifier: MIT
// Line colours derived from the cloth.
#include "compose/inks.h"

#include <gtest/gtest.h>

#include <cmath>

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

TEST(Shaded, FactorOneChangesNothing) {
    EXPECT_EQ(shaded({1, 2, 3}, 1), (Colour{1, 2, 3}));
    EXPECT_LT(to_oklab(shaded({200, 100, 50}, 0.8)).l, to_oklab({200, 100, 50}).l);
}

}  // namespace
}  // namespace platewright
