// SPDX-License-Identifier: MIT
// Rows and pages are filled with what fits.
#include "layout/shelves.h"

#include <gtest/gtest.h>

namespace platewright::sheet {
namespace {

using Rows = std::vector<std::vector<std::size_t>>;

TEST(Shelves, ARowIsFilledWithLowerCellsThatFit) {
    EXPECT_EQ(shelves_of({{60, 50}, {60, 40}, {30, 10}}, {100, 4, 500, 500}), (Rows{{0, 2}, {1}}));
}

TEST(Shelves, APageIsFilledWithTheHighestRowThatFits) {
    // After 100 of 160 mm only the row of 40 mm has room.
    EXPECT_EQ(shelves_of({{90, 100}, {90, 90}, {90, 40}}, {100, 4, 160, 160}),
              (Rows{{0}, {2}, {1}}));
    // The first page has room for the low one alone.
    EXPECT_EQ(shelves_of({{90, 100}, {90, 40}}, {100, 4, 50, 160}), (Rows{{1}, {0}}));
}

TEST(Shelves, WhatIsTooHighForAnyPageIsNotKeptBack) {
    EXPECT_EQ(shelves_of({{90, 300}, {90, 40}}, {100, 4, 160, 160}), (Rows{{1}, {0}}));
    EXPECT_EQ(shelves_of({{200, 300}}, {100, 4, 160, 160}), (Rows{{0}}));
}

}  // namespace
}  // namespace platewright::sheet
