// SPDX-License-Identifier: MIT
// Columns of entries.
#include "layout/key.h"

#include <gtest/gtest.h>

#include <set>

namespace platewright::sheet {
namespace {

/// Entries of so many rows, each row 10 mm high.
std::vector<Entry> entries(const std::vector<int>& rows) {
    std::vector<Entry> all;
    for (const int count : rows) {
        Row row;
        row.height = 10;
        all.emplace_back(static_cast<std::size_t>(count), row);
    }
    return all;
}

TEST(Pour, FillsColumnsEvenly) {
    const Block block = pour(entries({1, 1, 1, 1, 1, 1}), {3, 50, 2});
    EXPECT_DOUBLE_EQ(block.height, 22);
    std::set<double> columns;
    for (const Block::Place& place : block.rows) {
        columns.insert(place.at.x);
    }
    EXPECT_EQ(columns, (std::set<double>{0, 50, 100}));
}

TEST(Pour, KeepsAShortEntryTogether) {
    const Block block = pour(entries({3, 3}), {3, 50, 2});
    EXPECT_DOUBLE_EQ(block.height, 30);
}

TEST(Pour, DividesALongEntryButNotAfterItsFirstRow) {
    const Block block = pour(entries({12}), {3, 50, 2});
    EXPECT_LT(block.height, 60);
    EXPECT_EQ(block.rows[1].at.x, block.rows[0].at.x);
}

TEST(Pour, LosesNoRow) {
    for (std::size_t columns = 1; columns <= 3; ++columns) {
        EXPECT_EQ(pour(entries({1, 9, 2, 30, 1, 1}), {columns, 50, 2}).rows.size(), 44U);
    }
    EXPECT_TRUE(pour({}, {3, 50, 2}).empty());
}

TEST(SetInGrid, PutsEntriesInLineAcrossTheColumns) {
    const Block block = set_in_grid(entries({2, 1, 2, 2}), {2, 50, 2});
    ASSERT_EQ(block.rows.size(), 7U);
    // Third entry: head of the second column; fourth: in line with the second.
    std::set<double> heads;
    for (const Block::Place& place : block.rows) {
        heads.insert(place.at.y);
    }
    EXPECT_EQ(heads, (std::set<double>{0, 10, 22, 32}));
}

TEST(SetInGrid, PoursWhereAGridWouldWasteHeight) {
    const std::vector<Entry> uneven = entries({9, 1, 1, 1, 1, 9});
    EXPECT_DOUBLE_EQ(set_in_grid(uneven, {2, 50, 0}).height, pour(uneven, {2, 50, 0}).height);
}

TEST(SetInGrid, TakesMoreColumnsThanEntries) {
    EXPECT_EQ(set_in_grid(entries({1, 1}), {3, 50, 2}).rows.size(), 2U);
    EXPECT_TRUE(set_in_grid({}, {3, 50, 2}).empty());
}

}  // namespace
}  // namespace platewright::sheet
