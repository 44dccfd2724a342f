// SPDX-License-Identifier: MIT
// The strip of ground under the feet of a plate.
#include "layout/ground.h"

#include <gtest/gtest.h>

#include "layout/layer.h"

namespace platewright::sheet {
namespace {

const Rect kWithin{20, 20, 190, 180};

Page ground_of(std::string_view name) {
    const std::vector<Footing> feet{{50, 70, 170, {}}, {120, 140, 169, {}}};
    Layer layer("ground");
    draw_ground(feet, kWithin, 1.0 / 12, name, layer);
    Page page;
    std::move(layer).put_on(page);
    return page;
}

Rect bounds_of(const Page& page) {
    Rect all;
    for (const Placed& placed : page.items) {
        for (const Path& path : placed.drawing.paths) {
            all.include(Point{path.bounds().left, path.bounds().top});
            all.include(Point{path.bounds().right, path.bounds().bottom});
        }
    }
    return all;
}

/// All points of all strokes, in their order.
std::vector<Point> strokes_of(const Page& page) {
    std::vector<Point> all;
    for (const Path& path : page.items.front().drawing.paths) {
        all.insert(all.end(), path.points.begin(), path.points.end());
    }
    return all;
}

TEST(Ground, IsAlwaysTheSameForTheSamePlateAndOfItsOwnForEach) {
    EXPECT_EQ(strokes_of(ground_of("Corporal")), strokes_of(ground_of("Corporal")));
    EXPECT_NE(strokes_of(ground_of("Corporal")), strokes_of(ground_of("Drummer")));
}

TEST(Ground, IsOneStripUnderAllFeetThatStaysWithinThePage) {
    const Rect all = bounds_of(ground_of("Corporal"));
    EXPECT_LT(all.left, 50);
    EXPECT_GT(all.right, 140);
    EXPECT_GT(all.left, kWithin.left - 1);
    EXPECT_LT(all.right, kWithin.right + 1);
    EXPECT_LT(all.bottom, kWithin.bottom);
    EXPECT_GT(all.top, 160);
}

TEST(Ground, IsNotDrawnWhereNobodyStands) {
    Layer layer("ground");
    draw_ground({}, kWithin, 1.0 / 12, "Nobody", layer);
    EXPECT_TRUE(layer.empty());
}

}  // namespace
}  // namespace platewright::sheet
