// SPDX-License-Identifier: MIT
// Words beside a picture: nothing overlaps, nothing crosses, whatever is to be pointed at.
#include "layout/callouts.h"

#include <gtest/gtest.h>

#include <random>

#include "layout/style.h"

namespace platewright::sheet {
namespace {

const CalloutColumns kColumns{{0, 0, 40, 200}, {140, 0, 180, 200}};

/// To be pointed at from either side.
Callout anywhere(std::string words, const std::vector<Point>& sites) {
    return {std::move(words), sites, sites};
}

/// Crossing in their inner parts.
bool cross_inside(Point a, Point b, Point c, Point d) {
    const auto side = [](Point p, Point q, Point r) { return cross(q - p, r - p); };
    return side(a, b, c) * side(a, b, d) < -1e-6 && side(c, d, a) * side(c, d, b) < -1e-6;
}

/// The same of two whole lines, each bent where its level stretch ends.
bool lines_cross_inside(const PlacedCallout& a, const PlacedCallout& b) {
    const auto meets = [&](Point from, Point to) {
        return cross_inside(from, to, b.bend, b.turn) || cross_inside(from, to, b.turn, b.site);
    };
    return meets(a.bend, a.turn) || meets(a.turn, a.site);
}

void expect_sound(const CalloutPlan& plan, const std::string& what) {
    for (std::size_t i = 0; i < plan.placed.size(); ++i) {
        const PlacedCallout& a = plan.placed[i];
        EXPECT_GE(a.box.top, -1e-9) << what;
        EXPECT_LE(a.box.bottom, 200 + 1e-9) << what;
        for (std::size_t k = i + 1; k < plan.placed.size(); ++k) {
            const PlacedCallout& b = plan.placed[k];
            const bool apart = a.box.right <= b.box.left || b.box.right <= a.box.left ||
                               a.box.bottom <= b.box.top || b.box.bottom <= a.box.top;
            EXPECT_TRUE(apart) << what << ": " << a.lines[0] << " and " << b.lines[0];
            EXPECT_TRUE(a.on_left != b.on_left || !lines_cross_inside(a, b))
                << what << ": " << a.lines[0] << " and " << b.lines[0];
        }
    }
}

TEST(Ruler, PartsLabelsAfterTheirComma) {
    const Typesetter type;
    Ruler ruler(type);
    const std::vector<std::string> parted{"collar: sea green,", "standing"};
    EXPECT_EQ(ruler.label_lines("collar: sea green, standing", italic(3), 24), parted);
    EXPECT_EQ(ruler.label_lines("coat: white", italic(3), 24).size(), 1U);
}

TEST(Ruler, GivesMeasuresAndScalesLiningFigures) {
    EXPECT_TRUE(with_figures("11 mm", roman(3)).lining);
    EXPECT_TRUE(with_figures("button, 3 : 2", roman(3)).lining);
    EXPECT_FALSE(with_figures("worn in 1784", roman(3)).lining);
    EXPECT_FALSE(with_figures("", roman(3)).lining);
}

TEST(Callouts, StandsLevelWithItsSiteWhereThereIsRoom) {
    const Typesetter type;
    Ruler ruler(type);
    const auto plan =
        place_callouts({anywhere("lapels", {{60, 50}}), anywhere("cuffs", {{120, 90}})},
                       kColumns,
                       roman(3),
                       ruler);
    ASSERT_EQ(plan.placed.size(), 2U);
    EXPECT_TRUE(plan.placed[0].on_left);
    EXPECT_FALSE(plan.placed[1].on_left);
    EXPECT_NEAR(plan.placed[0].bend.y, 50, 1e-9);
    EXPECT_NEAR(plan.placed[1].bend.y, 90, 1e-9);
    EXPECT_LT(plan.placed[0].start.x, plan.placed[0].bend.x);
    EXPECT_GT(plan.placed[0].start.x, kColumns.left.right);
}

TEST(Callouts, EvensTheColumnsOut) {
    const Typesetter type;
    Ruler ruler(type);
    std::vector<Callout> callouts;
    for (int i = 0; i < 9; ++i) {
        callouts.push_back(anywhere("word", {{50.0 + i, 10.0 * i}}));
    }
    const auto plan = place_callouts(callouts, kColumns, roman(3), ruler);
    const auto left = std::ranges::count(plan.placed, true, &PlacedCallout::on_left);
    EXPECT_EQ(left, 5);
    expect_sound(plan, "nine");
}

TEST(Callouts, CrossesLessRatherThanStandingNearer) {
    const Typesetter type;
    Ruler ruler(type);
    Callout coat = anywhere("coat", {{60, 50}, {120, 50}});
    coat.crossed_from_left = {3, 3};
    coat.crossed_from_right = {0, 0};
    const auto plan = place_callouts({coat}, kColumns, roman(3), ruler);
    EXPECT_FALSE(plan.placed.at(0).on_left);
}

TEST(Callouts, TakesTheNearerOfTwoSites) {
    const Typesetter type;
    Ruler ruler(type);
    const auto plan = place_callouts(
        {anywhere("cuffs", {{60, 50}, {120, 50}})}, {{}, {140, 0, 180, 200}}, roman(3), ruler);
    EXPECT_EQ(plan.placed.at(0).site, (Point{120, 50}));
}

TEST(Callouts, PointsOnlyFromWhereItMay) {
    const Typesetter type;
    Ruler ruler(type);
    std::vector<Callout> callouts(8, Callout{"word", {{130, 5}}, {}});
    callouts.push_back({"nowhere", {}, {}});
    const auto plan = place_callouts(callouts, kColumns, roman(3), ruler);
    EXPECT_EQ(std::ranges::count(plan.placed, true, &PlacedCallout::on_left), 8);
    EXPECT_EQ(plan.left_out, std::vector<std::size_t>{8});
    expect_sound(plan, "from the left alone");
}

TEST(Callouts, LeavesOutTheLastWhereThereIsNoRoom) {
    const Typesetter type;
    Ruler ruler(type);
    const std::vector<Callout> callouts(5, anywhere("word", {{100, 5}}));
    const auto plan = place_callouts(callouts, {{}, {140, 0, 180, 12}}, roman(3), ruler);
    EXPECT_EQ(plan.placed.size() + plan.left_out.size(), 5U);
    ASSERT_FALSE(plan.left_out.empty());
    EXPECT_EQ(plan.left_out.front(), 4U);
}

TEST(Callouts, NeverOverlapOrCrossOnThreeHundredPictures) {
    const Typesetter type;
    Ruler ruler(type);
    std::mt19937 chance(7);
    const auto number = [&chance](int least, int most) {
        return least + static_cast<int>(chance() % static_cast<unsigned>(most - least + 1));
    };
    for (int picture = 0; picture < 300; ++picture) {
        std::vector<Callout> callouts;
        for (int i = number(1, 24); i > 0; --i) {
            const std::string words =
                number(0, 3) == 0 ? "rank marks: two chevrons of yellow, point up" : "cuffs: buff";
            callouts.push_back({words, {}, {}});
            const int sides = number(0, 2);
            for (int k = number(1, 2); k > 0; --k) {
                const Point site{1.0 * number(50, 130), 1.0 * number(0, 200)};
                if (sides != 1) {
                    callouts.back().from_left.push_back(site);
                }
                if (sides != 0) {
                    callouts.back().from_right.push_back(site);
                }
            }
        }
        const auto plan = place_callouts(callouts, kColumns, roman(3), ruler);
        EXPECT_EQ(plan.placed.size() + plan.left_out.size(), callouts.size());
        expect_sound(plan, "picture " + std::to_string(picture));
    }
}

TEST(Callouts, AreDrawnWithTheirWords) {
    const Typesetter type;
    Ruler ruler(type);
    const auto plan = place_callouts({anywhere("lapels", {{60, 50}})}, kColumns, roman(3), ruler);
    Layer layer("callouts");
    draw_callouts(plan, roman(3), layer);
    Page page;
    std::move(layer).put_on(page);
    ASSERT_EQ(page.items.size(), 1U);
    EXPECT_EQ(page.items[0].drawing.root.children.size(), 4U);
}

}  // namespace
}  // namespace platewright::sheet
