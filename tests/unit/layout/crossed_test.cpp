// SPDX-License-Identifier: MIT
// What lines across a figure cross.
#include "layout/crossed.h"

#include <gtest/gtest.h>

namespace platewright::sheet {
namespace {

/// One row of cells of 4 mm: paper, coat, skin, coat, paper.
Tops one_row() {
    return {{0, 0, 20, 4}, 4, 5, {0, 7, -2, 7, 0}};
}

TEST(Crossed, NothingOnPaperOrInTheThingItself) {
    EXPECT_EQ(crossed(one_row(), {{6, 2}, {2, 2}}), 0);
    EXPECT_EQ(crossed({}, {{6, 2}, {2, 2}}), 0);
}

TEST(Crossed, AHandCountsForMoreThanCloth) {
    const int past_the_hand = crossed(one_row(), {{6, 2}, {18, 2}});
    const int past_cloth = crossed(one_row(), {{10, 2}, {18, 2}});
    EXPECT_EQ(past_cloth, 1);
    EXPECT_GT(past_the_hand, 3 * past_cloth);
}

TEST(Crossed, ABentLineIsFollowedRoundItsCorner) {
    EXPECT_EQ(crossed(one_row(), {{6, 2}, {6, 9}, {18, 9}}), 0);
}

}  // namespace
}  // namespace platewright::sheet
