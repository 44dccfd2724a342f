// SPDX-License-Identifier: MIT
// What an eye makes out from afar, against the standard of visual acuity.
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "cli/from_afar.h"

namespace platewright::outside {
namespace {

// ISO 8596, "Visual acuity testing - Standard optotype and its presentation", edition of 1994,
// clause 3: grade 1 is a ring whose gap subtends 1' at the viewing distance; clause 4: grades are
// the reciprocal of the gap in minutes of arc. Text as printed at jvinstitute.net/iso.htm.
TEST(FromAfar, AMinuteOfArcIsTheDetailThatAcuityOneMakesOut) {
    constexpr double gap_of_grade_one = 1;
    const double radians = gap_of_grade_one / 60 * std::numbers::pi / 180;
    const double subtended = 2 * cli::kAfar * std::tan(radians / 2);
    // The sheets print it to half a millimetre.
    EXPECT_NEAR(cli::kMinuteOfArc, subtended, 0.05);
}

// That ten such squares make an area is common practice, no source.
TEST(FromAfar, AnAreaIsTenSquaresOfAMinute) {
    EXPECT_DOUBLE_EQ(cli::kLeastSeen, 10 * cli::kMinuteOfArc * cli::kMinuteOfArc);
}

}  // namespace
}  // namespace platewright::outside
