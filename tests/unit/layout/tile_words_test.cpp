// SPDX-License-Identifier: MIT
// The map of the tiles tells which pieces are on them, and where the others are had.
#include "layout/tile_words.h"

#include <gtest/gtest.h>

namespace platewright {
namespace {

WorkshopSheets sheets_of(int pieces) {
    WorkshopSheets sheets;
    for (int i = 1; i <= pieces; ++i) {
        PatternPiece& piece = sheets.pieces.emplace_back();
        piece.number_in_list = i;
    }
    return sheets;
}

TEST(TileWords, TilesAreNamedLikeCellsOfATable) {
    EXPECT_EQ(tile_name(0, 0), "A1");
    EXPECT_EQ(tile_name(25, 3), "Z4");
    EXPECT_EQ(tile_name(26, 0), "AA1");
}

TEST(TileWords, NumbersInARowAreARange) {
    EXPECT_EQ(number_ranges({}), "");
    EXPECT_EQ(number_ranges({4}), "4");
    EXPECT_EQ(number_ranges({4, 5, 7, 8, 9, 12}), "4, 5, 7–9, 12");
}

TEST(TileWords, NamesWhatIsNotOnTheTiles) {
    WorkshopSheets sheets = sheets_of(6);
    sheets.full_size = {sheets.pieces[3], sheets.pieces[4]};
    // The lining that is cut by another pattern is missed by nobody.
    sheets.pieces[5].repeats = true;
    const auto words = words_of_map(sheets, 12);
    ASSERT_EQ(words.size(), 4U);
    EXPECT_NE(words[2].find("hold the pieces 4, 5 of"), std::string::npos);
    EXPECT_NE(words[2].find("The pieces 1–3 belong to whole garments"), std::string::npos);
    EXPECT_NE(words[2].find("pieces.dxf"), std::string::npos);
}

TEST(TileWords, SaysNothingOfOthersWhereAllAreThere) {
    WorkshopSheets sheets = sheets_of(3);
    sheets.full_size = sheets.pieces;
    EXPECT_EQ(words_of_map(sheets, 12).size(), 3U);
}

}  // namespace
}  // namespace platewright
