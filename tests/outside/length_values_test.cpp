// SPDX-License-Identifier: MIT
// Lengths and paper sizes against published values.
#include <gtest/gtest.h>

#include "layout/layout.h"
#include "table.h"
#include "vocabulary/measure.h"

namespace platewright::outside {
namespace {

TEST(Lengths, AgreeWithTheOrdinances) {
    for (const Row& row : published("lengths.csv")) {
        std::string problem;
        const std::optional<Measure> measure = parse_measure(row[0], problem);
        ASSERT_TRUE(measure) << row[0] << ": " << problem;
        EXPECT_NEAR(measure->mm, std::stod(row[1]), std::stod(row[2])) << row[0];
        EXPECT_EQ(measure->printed, row[0]);
    }
}

TEST(Paper, AgreesWithTheStandards) {
    for (const Row& row : published("paper.csv")) {
        const std::optional<Paper> paper = parse_paper(row[0]);
        ASSERT_TRUE(paper) << row[0];
        EXPECT_DOUBLE_EQ(paper->width, std::stod(row[1])) << row[0];
        EXPECT_DOUBLE_EQ(paper->height, std::stod(row[2])) << row[0];
    }
}

}  // namespace
}  // namespace platewright::outside
