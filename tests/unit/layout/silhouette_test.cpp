// SPDX-License-Identifier: MIT
// How far a drawing reaches at each height.
#include "layout/silhouette.h"

#include <gtest/gtest.h>

#include "sample.h"

namespace platewright::sheet {
namespace {

TEST(Silhouette, FollowsTheBodyAndNotTheFrame) {
    const Figure man = sample::man("front", 10);
    const Silhouette silhouette(man.drawing, man.frame);
    const auto head = silhouette.reach(120, 140);
    ASSERT_TRUE(head);
    EXPECT_NEAR(head->second, 75, 3);
    const auto arms = silhouette.reach(690, 710);
    ASSERT_TRUE(arms);
    EXPECT_NEAR(arms->first, -300, 3);
    EXPECT_NEAR(arms->second, 300, 3);
}

TEST(Silhouette, TakesClippedShadingForItsClip) {
    const Figure man = sample::man("front", 10);
    const Silhouette silhouette(man.drawing, man.frame);
    EXPECT_NEAR(silhouette.box().left, -300, 1);
    EXPECT_NEAR(silhouette.box().top, -110, 1);
    EXPECT_NEAR(silhouette.box().bottom, 1770, 1);
}

TEST(Silhouette, IsEmptyWhereNothingIsPainted) {
    const Figure man = sample::man("front", 10);
    const Silhouette silhouette(man.drawing, man.frame);
    EXPECT_FALSE(silhouette.reach(1790, 1815));
    EXPECT_TRUE(Silhouette(Drawing{}, man.frame).box().empty());
    EXPECT_TRUE(Silhouette(man.drawing, Rect{}).box().empty());
}

TEST(Silhouette, CountsALineThatCrossesManyHeights) {
    Drawing drawing;
    Path line;
    line.move_to({0, 0});
    line.line_to({100, 100});
    drawing.root.children.emplace_back(
        Shape{drawing.add(line), {}, std::nullopt, Stroke{{0, 0, 0}, 1, 1, {}}});
    const Silhouette silhouette(drawing, {0, 0, 100, 100});
    const auto middle = silhouette.reach(50, 50.5);
    ASSERT_TRUE(middle);
    EXPECT_NEAR(middle->first, 50, 1.1);
    EXPECT_NEAR(middle->second, 51, 1.1);
}

TEST(Silhouette, PartsWhatStandsOnTheGroundWhereItIsBare) {
    Drawing drawing;
    for (const Rect& foot : {Rect{10, 20, 30, 90}, Rect{60, 20, 90, 96}, Rect{0, 0, 100, 40}}) {
        drawing.root.children.emplace_back(
            Shape{drawing.add(rectangle(foot)), {}, std::nullopt, Stroke{{0, 0, 0}, 1, 1, {}}});
    }
    const auto edges = Silhouette(drawing, {0, 0, 100, 100}).undersides(50);
    ASSERT_EQ(edges.size(), 2U);
    EXPECT_NEAR(edges[0].front().x, 10, 1);
    EXPECT_NEAR(edges[0].back().x, 30, 1);
    EXPECT_NEAR(edges[0][edges[0].size() / 2].y, 90, 0.01);
    EXPECT_NEAR(edges[1].back().y, 96, 0.01);
}

}  // namespace
}  // namespace platewright::sheet
