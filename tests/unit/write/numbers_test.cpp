// SPDX-License-Identifier: MIT
// Short numbers.
#include "write/numbers.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace platewright {
namespace {

std::string short_number(double value, int places) {
    std::string text;
    append_short(text, value, places);
    return text;
}

TEST(AppendShort, LeavesOutWhatSaysNothing) {
    EXPECT_EQ(short_number(0, 2), "0");
    EXPECT_EQ(short_number(-0.001, 2), "0");
    EXPECT_EQ(short_number(0.5, 2), ".5");
    EXPECT_EQ(short_number(-0.25, 2), "-.25");
    EXPECT_EQ(short_number(12, 2), "12");
    EXPECT_EQ(short_number(12.30, 2), "12.3");
    EXPECT_EQ(short_number(12.05, 2), "12.05");
    EXPECT_EQ(short_number(-103.999, 2), "-104");
    EXPECT_EQ(short_number(1234567.125, 6), "1234567.125");
}

TEST(AppendShort, WritesWhatIsNoNumberAsZero) {
    EXPECT_EQ(short_number(std::numeric_limits<double>::quiet_NaN(), 2), "0");
    EXPECT_EQ(short_number(std::numeric_limits<double>::infinity(), 2), "0");
    EXPECT_EQ(short_number(1e300, 2), "0");
}

}  // namespace
}  // namespace platewright
