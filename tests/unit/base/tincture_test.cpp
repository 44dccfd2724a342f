// SPDX-License-Identifier: MIT
// Tinctures and their hatching; greys and other eyes where no table is published.
#include "base/tincture.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>
#include <string>
#include <tuple>

#include "base/vision.h"

namespace platewright {
namespace {

std::string_view nearest(std::string_view hex) {
    return tinctures()[nearest_tincture(*parse_hex(hex))].name;
}

TEST(Tincture, HasOneNameOneColourAndOneHatchingOfItsOwn) {
    std::set<std::string_view> words;
    std::set<std::tuple<int, double, double, double, double>> looks;
    for (TinctureId id = 0; id < tinctures().size(); ++id) {
        const Tincture& each = tinctures()[id];
        EXPECT_EQ(find_tincture(each.name), id);
        EXPECT_EQ(find_tincture(each.colour), id) << each.colour;
        EXPECT_TRUE(words.insert(each.name).second) << each.name;
        EXPECT_TRUE(looks
                        .insert({static_cast<int>(each.manner),
                                 each.first.x,
                                 each.first.y,
                                 each.second.x,
                                 each.second.y})
                        .second)
            << each.name;
    }
    EXPECT_FALSE(find_tincture("plaid"));
}

TEST(Tincture, IsThatOfTheNearestColour) {
    EXPECT_EQ(nearest("#ffffff"), "argent");
    EXPECT_EQ(nearest("#c8282c"), "gules");
    EXPECT_EQ(nearest("#31568e"), "azure");
    EXPECT_EQ(nearest("#28385f"), "deep blue");
    EXPECT_EQ(nearest("#2b2a2d"), "sable");
    EXPECT_EQ(nearest("#dbab38"), "or");
    EXPECT_EQ(nearest("#dec494"), "buff");
    EXPECT_EQ(nearest("#8f1f3f"), "sanguine");
    EXPECT_EQ(nearest("#d98d97"), "rose");
    EXPECT_EQ(nearest("#664836"), "marron");
    EXPECT_EQ(nearest("#c6c7c4"), "light grey");
    EXPECT_EQ(tinctures()[nearest_tincture_of_metal(*parse_hex("#c6c7c4"))].name, "argent");
    EXPECT_EQ(tinctures()[nearest_tincture_of_metal(*parse_hex("#cda24a"))].name, "or");
}

TEST(Tincture, RunsTheRightWayOnThePage) {
    const Hatching green = hatching_over({0, 0, 10, 10}, *find_tincture("vert"), 1);
    ASSERT_GE(green.path.points.size(), 2U);
    const Point way = green.path.points[1] - green.path.points[0];
    EXPECT_GT(way.x * way.y, 0) << "vert falls to the right";
    const Hatching purple = hatching_over({0, 0, 10, 10}, *find_tincture("purpure"), 1);
    const Point other = purple.path.points[1] - purple.path.points[0];
    EXPECT_LT(other.x * other.y, 0) << "purpure rises to the right";
}

TEST(Hatching, KeepsItsStepOnPaperAtAnyScale) {
    for (const double scale : {0.5, 1.0, 8.0}) {
        const Rect area{0, 0, 20 * scale, 20 * scale};
        const Hatching red = hatching_over(area, *find_tincture("gules"), scale);
        std::set<double> places;
        for (const Point p : red.path.points) {
            places.insert(std::round(p.x / scale * 1e6) / 1e6);
        }
        ASSERT_GT(places.size(), 10U);
        EXPECT_NEAR(*std::next(places.begin()) - *places.begin(), kHatchPitch, 1e-6);
        EXPECT_DOUBLE_EQ(red.width, kHatchLine * scale);
    }
}

TEST(Hatching, RunsOnFromPieceToPiece) {
    const TinctureId green = *find_tincture("green");
    const auto offsets = [&](const Rect& area) {
        std::set<long> all;
        const Hatching hatching = hatching_over(area, green, 7);
        for (const Point p : hatching.path.points) {
            const double across = (p.x - p.y) / std::sqrt(2.0) / (kHatchPitch * 7);
            EXPECT_NEAR(across, std::round(across), 1e-9);
            all.insert(std::lround(across));
        }
        return all;
    };
    EXPECT_FALSE(offsets({-37, 12, 55, 90}).empty());
    EXPECT_FALSE(offsets({101, -40, 230, 7}).empty());
}

TEST(Hatching, StaysOverItsArea) {
    const Rect area{-31, 17, 44, 60};
    for (TinctureId id = 0; id < tinctures().size(); ++id) {
        const Hatching hatching = hatching_over(area, id, 3);
        EXPECT_EQ(hatching.empty(), tinctures()[id].name == "argent");
        if (!hatching.empty()) {
            const Rect box = hatching.path.bounds();
            EXPECT_FALSE(box.left > area.left + 20 || box.right < area.right - 20);
            EXPECT_GT(box.left, area.left - 20);
            EXPECT_LT(box.right, area.right + 20);
        }
    }
    EXPECT_TRUE(hatching_over({}, *find_tincture("gules"), 1).path.points.size() < 10);
}

TEST(Grey, KeepsTheLightness) {
    for (const char* hex : {"#28385f", "#dec494", "#c8282c", "#ffffff", "#000000"}) {
        const Colour colour = *parse_hex(hex);
        const Colour grey = grey_of(colour);
        EXPECT_EQ(grey.red, grey.green);
        EXPECT_EQ(grey.green, grey.blue);
        EXPECT_NEAR(to_lab_d65(grey).l, to_lab_d65(colour).l, 0.3) << hex;
    }
}

TEST(OtherEyes, SeeGreysAsTheyAreAndNothingElseAtSeverityNought) {
    for (const Sight sight : kSights) {
        EXPECT_EQ(as_seen({128, 128, 128}, sight, 1), (Colour{128, 128, 128}));
        EXPECT_EQ(as_seen({200, 40, 44}, sight, 0), (Colour{200, 40, 44}));
        EXPECT_EQ(as_seen({200, 40, 44}, sight, -3), (Colour{200, 40, 44}));
        EXPECT_EQ(as_seen({200, 40, 44}, sight, 7), as_seen({200, 40, 44}, sight, 1));
    }
}

}  // namespace
}  // namespace platewright
