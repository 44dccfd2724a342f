// SPDX-License-Identifier: MIT
// Colour arithmetic against published values.
#include <gtest/gtest.h>

#include "base/colour.h"
#include "table.h"

namespace platewright::outside {
namespace {

Lab lab_at(const Row& row, std::size_t column) {
    return {std::stod(row[column]), std::stod(row[column + 1]), std::stod(row[column + 2])};
}

TEST(ColourDifference, AgreesWithTheThirtyFourPublishedPairs) {
    const std::vector<Row> pairs = published("ciede2000.csv");
    ASSERT_EQ(pairs.size(), 34U);
    for (const Row& pair : pairs) {
        const Lab first = lab_at(pair, 1);
        const Lab second = lab_at(pair, 4);
        // Published to four decimals.
        EXPECT_NEAR(delta_e_2000(first, second), std::stod(pair[7]), 0.00005) << "pair " << pair[0];
        EXPECT_NEAR(delta_e_2000(second, first), std::stod(pair[7]), 0.00005)
            << "pair " << pair[0] << " turned";
    }
}

TEST(Lab, AgreesWithTheStandardsForBothWhites) {
    for (const Row& row : published("srgb_lab.csv")) {
        const std::optional<Colour> colour = parse_hex(row[0]);
        ASSERT_TRUE(colour) << row[0];
        const Lab d65 = to_lab_d65(*colour);
        const Lab d50 = to_lab_d50(*colour);
        const Lab wanted_d65 = lab_at(row, 4);
        const Lab wanted_d50 = lab_at(row, 7);
        // The published matrices carry four to seven digits; a hundredth of a unit is far below
        // what an eye can see.
        constexpr double near = 0.01;
        EXPECT_NEAR(d65.l, wanted_d65.l, near) << row[0];
        EXPECT_NEAR(d65.a, wanted_d65.a, near) << row[0];
        EXPECT_NEAR(d65.b, wanted_d65.b, near) << row[0];
        EXPECT_NEAR(d50.l, wanted_d50.l, near) << row[0];
        EXPECT_NEAR(d50.a, wanted_d50.a, near) << row[0];
        EXPECT_NEAR(d50.b, wanted_d50.b, near) << row[0];
        EXPECT_NEAR(relative_luminance(*colour), std::stod(row[10]), 0.0001) << row[0];
    }
}

TEST(Lab, ComesBackToTheSameColour) {
    for (const Row& row : published("srgb_lab.csv")) {
        const Lab lab = lab_at(row, 4);
        EXPECT_EQ(to_hex(from_lab_d65(lab)), row[0]);
    }
}

TEST(Contrast, AgreesWithTheGuidelines) {
    for (const Row& row : published("wcag_contrast.csv")) {
        const std::optional<Colour> first = parse_hex(row[0]);
        const std::optional<Colour> second = parse_hex(row[1]);
        ASSERT_TRUE(first && second);
        EXPECT_NEAR(contrast_ratio(*first, *second), std::stod(row[2]), 0.0001)
            << row[0] << " on " << row[1];
        EXPECT_NEAR(contrast_ratio(*second, *first), std::stod(row[2]), 0.0001)
            << row[1] << " on " << row[0];
    }
}

}  // namespace
}  // namespace platewright::outside
