// SPDX-License-Identifier: MIT
// Ids of groups.
#include "write/svg_ids.h"

#include <gtest/gtest.h>

namespace platewright {
namespace {

TEST(SvgIds, AreReadable) {
    SvgIds ids;
    EXPECT_EQ(ids.make("Coat, left", ""), "coat-left");
    EXPECT_EQ(ids.make("  lapel--outer ", ""), "lapel-outer");
    EXPECT_EQ(ids.make("Ärmel", ""), "rmel");
    EXPECT_EQ(ids.make("1st button", ""), "group-1st-button");
    EXPECT_EQ(ids.make("", ""), "group");
    EXPECT_EQ(ids.make("Шапка", ""), "group-2");
}

TEST(SvgIds, AreUsedOnce) {
    SvgIds ids;
    EXPECT_EQ(ids.make("coat", "front"), "coat");
    EXPECT_EQ(ids.make("coat", "back"), "back-coat");
    EXPECT_EQ(ids.make("coat", "back"), "back-coat-2");
    EXPECT_EQ(ids.make("coat", ""), "coat-2");
    EXPECT_EQ(ids.make("coat-2", ""), "coat-2-2");
}

TEST(ShortId, CountsWithLettersToo) {
    EXPECT_EQ(short_id('P', 0), "P0");
    EXPECT_EQ(short_id('P', 35), "Pz");
    EXPECT_EQ(short_id('C', 36), "C10");
    EXPECT_EQ(short_id('C', 36 * 36), "C100");
}

}  // namespace
}  // namespace platewright
