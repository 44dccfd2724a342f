// SPDX-License-Identifier: MIT
// Words on pattern pieces cross neither the outline nor the arrow of the grain.
#include "layout/room_in.h"

#include <gtest/gtest.h>

namespace platewright::sheet {
namespace {

const Chain kSquare{{0, 0}, {100, 0}, {100, 100}, {0, 100}};

TEST(RoomIn, IsInTheMiddleWhereNothingIsInTheWay) {
    const auto at = room_in(kSquare, 40, 10, {}, {});
    ASSERT_TRUE(at);
    EXPECT_NEAR(at->x, 50, 0.1);
    EXPECT_NEAR(at->y + 5, 50, 2);
}

TEST(RoomIn, KeepsBesideTheArrow) {
    const Rect arrow{48, 10, 52, 90};
    const auto at = room_in(kSquare, 40, 10, arrow, {});
    ASSERT_TRUE(at);
    EXPECT_TRUE(at->x + 20 <= arrow.left || at->x - 20 >= arrow.right);
}

TEST(RoomIn, KeepsClearOfButtons) {
    const Rect button{46, 46, 54, 54};
    const auto at = room_in(kSquare, 40, 10, {}, {button});
    ASSERT_TRUE(at);
    EXPECT_TRUE(at->y + 10 <= button.top || at->y >= button.bottom);
}

TEST(RoomIn, FollowsASlope) {
    const Chain triangle{{0, 0}, {60, 100}, {0, 100}};
    const auto at = room_in(triangle, 40, 10, {}, {});
    ASSERT_TRUE(at);
    EXPECT_GT(at->x - 20, 0);
    // The slope at the upper right corner of the block.
    EXPECT_LT(at->x + 20, at->y * 0.6);
}

TEST(RoomIn, IsNotBetweenTheArmsOfAChevron) {
    const Chain chevron{{0, 60}, {60, 0}, {120, 60}, {120, 72}, {60, 12}, {0, 72}};
    EXPECT_FALSE(room_in(chevron, 40, 8, {}, {}));
}

TEST(RoomIn, IsNothingWhereTheWordsAreTooLong) {
    EXPECT_FALSE(room_in(kSquare, 99, 10, {}, {}));
    EXPECT_FALSE(room_in(kSquare, 10, 99, {}, {}));
    EXPECT_FALSE(room_in({}, 10, 10, {}, {}));
}

}  // namespace
}  // namespace platewright::sheet
