// SPDX-License-Identifier: MIT
// What of a figure can be seen, and where best.
#include "compose/visible.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "sample.h"

namespace platewright {
namespace {

std::vector<Point> box(double left, double top, double right, double bottom) {
    return {{left, top}, {right, top}, {right, bottom}, {left, bottom}};
}

TEST(Visible, MeasuresWhatIsLeftUncovered) {
    Visible visible({-100, 0, 100, 400});
    visible.lay({box(-80, 0, 80, 200)}, {}, property_id("coat.cloth"));
    visible.lay({box(-80, 0, 0, 200)}, {}, property_id("lapels.cloth"));
    const auto seen = visible.seen();
    ASSERT_EQ(seen.size(), 2U);
    EXPECT_NEAR(seen.at("coat.cloth").area, 80 * 200, 4 * 200);
    EXPECT_NEAR(seen.at("lapels.cloth").area, 80 * 200, 4 * 200);
}

TEST(Visible, FindsThePlaceFarthestFromEverythingElse) {
    Visible visible({-100, 0, 100, 400});
    visible.lay({box(0, 100, 80, 180)}, {}, property_id("coat.cloth"));
    const auto seen = visible.seen();
    const std::vector<Site>& sites = seen.at("coat.cloth").sites;
    ASSERT_EQ(sites.size(), 1U);
    EXPECT_NEAR(sites[0].at.x, 40, 4);
    EXPECT_NEAR(sites[0].at.y, 140, 4);
    EXPECT_NEAR(sites[0].room, 40, 4);
}

TEST(Visible, TellsWhatLiesBeneath) {
    Visible visible({-100, 0, 100, 400});
    visible.lay({box(-80, 0, 80, 200)}, {}, property_id("coat.cloth"));
    visible.lay({box(-80, 0, 0, 300)}, {}, property_id("haversack.cloth"));
    // Painted over itself it does not lie on itself.
    visible.lay({box(-60, 20, -20, 60)}, {}, property_id("haversack.cloth"));
    const auto seen = visible.seen();
    EXPECT_EQ(seen.at("haversack.cloth").beneath, "coat.cloth");
    EXPECT_EQ(seen.at("coat.cloth").beneath, "");
}

// A pocket of the coat's own cloth is no material, but its shape is seen.
TEST(Visible, FindsThePartsThatAChoiceShapes) {
    Visible visible({-100, 0, 100, 400});
    visible.lay({box(-80, 0, 80, 200)}, {}, property_id("coat.cloth"));
    visible.shape({box(-80, 0, 80, 200)}, {}, {property_id("coat.cut")});
    visible.shape({box(-60, 100, -20, 140)}, {}, {property_id("pockets.direction")});
    visible.shape({box(20, 100, 60, 120)}, {}, {property_id("pockets.direction")});
    const auto seen = visible.seen();
    const Seen& pockets = seen.at("pockets.direction");
    EXPECT_NEAR(pockets.area, 40 * 60, 4 * 60);
    ASSERT_EQ(pockets.sites.size(), 2U);
    EXPECT_NEAR(pockets.sites[0].at.x, -40, 4);
    EXPECT_NEAR(pockets.sites[1].at.y, 110, 4);
    EXPECT_TRUE(seen.contains("coat.cut"));
}

TEST(Visible, GivesAPlaceOnEachSide) {
    Visible visible({-100, 0, 100, 400});
    visible.lay({box(-80, 0, -40, 40), box(40, 200, 80, 240)}, {}, property_id("cuffs.cloth"));
    const std::vector<Site> sites = visible.seen().at("cuffs.cloth").sites;
    ASSERT_EQ(sites.size(), 2U);
    EXPECT_NEAR(sites[0].at.x, -60, 4);
    EXPECT_NEAR(sites[1].at.x, 60, 4);
}

// A chape of the hilt's own metal is no place to name the hilt at.
TEST(Visible, TellsTheOutermostPlacesOfEveryLevelButNotOfRemnants) {
    Visible visible({-100, 0, 100, 400});
    visible.lay({box(-80, 0, 80, 200)}, {}, property_id("coat.cloth"));
    visible.lay({box(-80, 300, -60, 320)}, {}, property_id("coat.cloth"));
    const std::vector<Site> levels = visible.seen().at("coat.cloth").levels;
    ASSERT_GE(levels.size(), 24U);
    for (const Site& site : levels) {
        EXPECT_LT(site.at.y, 200);
        EXPECT_GT(std::abs(site.at.x), 60);
        EXPECT_GE(site.room, 10);
    }
}

TEST(Visible, KeepsWithinTheClipAndTheFrame) {
    Visible visible({-100, 0, 100, 400});
    visible.lay({box(-500, -500, 500, 500)},
                visible.mask_of({box(0, 0, 40, 40)}),
                property_id("coat.cloth"));
    EXPECT_NEAR(visible.seen().at("coat.cloth").area, 40 * 40, 4 * 40);
    visible.lay({box(0, 0, 40, 40)}, {}, std::nullopt);
    EXPECT_TRUE(visible.seen().empty());
}

TEST(Visible, AHoleIsNotCovered) {
    Visible visible({-100, 0, 100, 400});
    std::vector<Point> hole = box(-20, 100, 20, 140);
    std::reverse(hole.begin(), hole.end());
    visible.lay({box(-40, 80, 40, 160), hole}, {}, property_id("coat.cloth"));
    EXPECT_NEAR(visible.seen().at("coat.cloth").area, 80 * 80 - 40 * 40, 4 * 160);
}

TEST(Visible, AFigureTellsWhatIsSeenOfItsPartsAndTrimmings) {
    const auto reading = read_text(template_with(
        R"(<g id="body" data-cloth="coat.cloth"><path class="shape" d="M -50 0 H 50 V 400 H -50 Z"/>
<path class="buttons" d="M 0 20 V 300" data-number="lapels.buttons" data-size="24"/></g>)"));
    ASSERT_TRUE(reading->made) << reading->problems.all().front().message;
    const Figure figure = compose(trial_uniform(), *reading->made, {}, 8);
    EXPECT_GT(figure.seen.at("coat.cloth").area, 0.9 * 100 * 400);
    EXPECT_NEAR(figure.seen.at("buttons.metal").area, 3 * 3.14 * 12 * 12, 500);
    EXPECT_TRUE(compose(trial_uniform(), *reading->made, {}, 8, Rect{0, 0, 9, 9}).seen.empty());
}

}  // namespace
}  // namespace platewright
