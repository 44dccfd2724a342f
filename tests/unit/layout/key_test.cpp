// SPDX-License-Identifier: MIT
// Columns of entries.
#include "layout/key.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "sample.h"

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

/// A key with two colours, of which one bears two marks, set in one column.
struct Keyed {
    Captions captions;
    Page page;

    Keyed() {
        captions.title = "Private";
        captions.key = {{"green", "", {1, 2, 3}, false, "coat", 0, {"coat.cloth"}},
                        {"buff", "", {9, 8, 7}, false, "cuffs*, collar**", 0, {"cuffs.cloth"}}};
        captions.particulars = {{"pockets", "upright*"}, {"cuffs", "round"}};
        captions.callouts = {{"coat.cloth", "coat: green"}};
        captions.footnotes = {{"*", "cuffs: inferred."}, {"**", "collar: a conjecture."}};
        const Typesetter type;
        Ruler ruler(type);
        Layer layer("key");
        key_block(captions, {remarks_of(captions), "", Language::english}, true, {1, 3}, 60, ruler)
            .draw({10, 10}, layer);
        std::move(layer).put_on(page);
    }

    [[nodiscard]] bool leads(const std::string& to) const {
        return std::ranges::find(page.links, to, &Link::to) != page.links.end();
    }

    [[nodiscard]] bool has(const std::string& place) const {
        return std::ranges::find(page.places, place, &NamedPlace::name) != page.places.end();
    }
};

TEST(KeyBlock, RowsLeadToCalloutsAndMarksToTheirFootnotes) {
    const Keyed keyed;
    for (const char* name : {"key-1", "key-2", "particular-1", "note-1", "note-2"}) {
        EXPECT_TRUE(keyed.has(name)) << name;
    }
    for (const char* to : {"callout-1", "callout-2", "note-1", "note-2", "key-2"}) {
        EXPECT_TRUE(keyed.leads(to)) << to;
    }
    // What bears no mark leads to no footnote, and needs no name.
    EXPECT_FALSE(keyed.has("particular-2"));
}

TEST(KeyBlock, LinksAreAsLargeAsTheirWords) {
    for (const Link& link : Keyed().page.links) {
        EXPECT_GE(link.area.left, 10);
        EXPECT_GT(link.area.width(), 3) << link.to;
        EXPECT_LE(link.area.right, 71) << link.to;
        EXPECT_GT(link.area.height(), 2) << link.to;
    }
}

TEST(KeyBlock, TheLongerMarkIsMeant) {
    const std::vector<Footnote> notes{{"*", ""}, {"**", ""}};
    EXPECT_EQ(footnote_in("collar**", notes), 1U);
    EXPECT_EQ(footnote_in("collar*", notes), 0U);
    EXPECT_EQ(footnote_in("collar", notes), std::nullopt);
}

}  // namespace
}  // namespace platewright::sheet
