// SPDX-License-Identifier: MIT
// The index of the wardrobe: even rows, full pages, nothing left out.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <string>
#include <vector>

#include "layout/even_rows.h"
#include "layout/layout.h"

namespace platewright {
namespace {

/// A picture of that frame, drawn as wide as the index may want it.
WardrobeSample sample(const std::string& words, const Rect& frame) {
    WardrobeSample made{words, frame, {}};
    made.picture.frame = room_round(frame);
    made.picture.drawing.root.children.emplace_back(
        Shape{made.picture.drawing.add(rectangle(made.picture.frame)), {}, Fill{}, {}});
    return made;
}

/// Tall, square and broad things by turns.
WardrobeIndex index_of(std::size_t number) {
    WardrobeIndex index;
    index.title = "Wardrobe";
    for (const char* title : {"Upper", "Lower"}) {
        WardrobeSection section{title, {}};
        for (std::size_t i = 0; i < number; ++i) {
            const double width = 300 + 100 * static_cast<double>(i % 3);
            section.samples.push_back(
                sample(title + std::string(": ") + std::to_string(i), {0, 0, width, 440}));
        }
        index.sections.push_back(std::move(section));
    }
    return index;
}

/// The grounds of the pictures, which fill their boxes, by their upper edges.
std::map<double, std::vector<Rect>> rows_of(const Page& page) {
    std::map<double, std::vector<Rect>> rows;
    for (const Placed& item : page.items) {
        if (item.drawing.root.name == "ground") {
            const Rect box = item.drawing.paths.front().bounds();
            rows[box.top].push_back(box);
        }
    }
    return rows;
}

/// Whatever their number and shapes, no row leaves a hole at its side.
TEST(WardrobePages, EveryRowFillsTheWidth) {
    const Typesetter type;
    for (const std::size_t number : {7U, 13U, 23U}) {
        const Document document = lay_out_wardrobe(index_of(number), {}, type);
        std::size_t pictures = 0;
        for (const Page& page : document.pages) {
            for (const auto& [top, row] : rows_of(page)) {
                EXPECT_NEAR(row.front().left, 13, 0.01) << number;
                EXPECT_NEAR(row.back().right, 210 - 13, 0.01) << number;
                for (const Rect& box : row) {
                    EXPECT_NEAR(box.height(), row.front().height(), 0.01);
                    ++pictures;
                }
            }
        }
        EXPECT_EQ(pictures, 2 * number);
    }
}

/// What is asked about together stands in rows of its own, where that is no worse.
TEST(WardrobePages, RowsEndWithTheirGroup) {
    std::vector<RowPicture> pictures(10);
    for (std::size_t i = 0; i < pictures.size(); ++i) {
        pictures[i].group = i < 4 ? "collar" : "cuffs";
    }
    const std::vector<EvenRow> rows = even_rows(pictures, {184, 3.2, 34.2, 24});
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows.back().first, 4U);
    // Four are not much larger than six, they have more beside them.
    EXPECT_LT(rows.front().height, 1.4 * rows.back().height);
}

TEST(WardrobePages, EveryPageButTheLastIsFull) {
    const Typesetter type;
    const Document document = lay_out_wardrobe(index_of(40), {}, type);
    ASSERT_GT(document.pages.size(), 2U);
    for (std::size_t i = 0; i + 1 < document.pages.size(); ++i) {
        EXPECT_GT(rows_of(document.pages[i]).rbegin()->second.front().bottom, 268) << i;
    }
}

/// One alone at the end of a section looks left over.
TEST(WardrobePages, NoTileStandsAlone) {
    const Typesetter type;
    for (const std::size_t number : {6U, 11U, 16U, 21U}) {
        const Document document = lay_out_wardrobe(index_of(number), {}, type);
        for (const Page& page : document.pages) {
            for (const auto& [top, row] : rows_of(page)) {
                EXPECT_GT(row.size(), 1U) << number;
            }
        }
    }
}

TEST(WardrobePages, RowsStandEquallyFarApart) {
    const Typesetter type;
    const Document document = lay_out_wardrobe(index_of(65), {}, type);
    std::map<int, std::size_t> gaps;
    for (std::size_t i = 0; i + 1 < document.pages.size(); ++i) {
        double bottom = 0;
        for (const auto& [top, row] : rows_of(document.pages[i])) {
            gaps[static_cast<int>(std::lround(top - bottom))] += bottom > 0 ? 1U : 0U;
            bottom = row.front().bottom;
        }
    }
    gaps.erase(gaps.begin(), gaps.lower_bound(2));
    std::erase_if(gaps, [](const auto& gap) { return gap.second == 0; });
    ASSERT_FALSE(gaps.empty());
    // Under a heading it is more.
    EXPECT_LE(gaps.rbegin()->first - gaps.begin()->first, 11);
}

TEST(WardrobePages, SaysWhatTheTradeCallsItAboveWhatToWrite) {
    const Typesetter type;
    WardrobeIndex index = index_of(1);
    index.sections.front().samples.front().called = "cuff piping: white";
    const std::string text = dump(lay_out_wardrobe(index, {}, type));
    const std::size_t name = text.find("cuff piping: white");
    ASSERT_NE(name, std::string::npos);
    EXPECT_LT(name, text.find("Upper: 0"));
}

TEST(WardrobePages, PicturesAreCutToTheirBoxes) {
    const Typesetter type;
    const Document document = lay_out_wardrobe(index_of(5), {}, type);
    Rect box;
    for (const Placed& item : document.pages.front().items) {
        if (item.drawing.root.name == "ground") {
            box = item.drawing.paths.front().bounds();
        } else if (item.drawing.root.name == "picture") {
            ASSERT_EQ(item.drawing.root.clip.size(), 1U);
            const Rect cut = item.drawing.paths[item.drawing.root.clip.front()].bounds();
            EXPECT_NEAR(item.at.x + cut.left * item.factor, box.left, 0.01);
            EXPECT_NEAR(item.at.x + cut.right * item.factor, box.right, 0.01);
            EXPECT_NEAR(item.at.y + cut.top * item.factor, box.top, 0.01);
        }
    }
}

/// Whole coats and men would be too small to show anything in a row of the usual height.
TEST(WardrobePages, TallThingsStandInHigherRows) {
    const Typesetter type;
    WardrobeIndex index = index_of(12);
    for (WardrobeSample& tall : index.sections.front().samples) {
        tall = sample(tall.words, {0, 0, 640, 1000});
    }
    const Document document = lay_out_wardrobe(index, {}, type);
    double highest = 0;
    double lowest = 1000;
    for (const Page& page : document.pages) {
        for (const auto& [top, row] : rows_of(page)) {
            highest = std::max(highest, row.front().height());
            lowest = std::min(lowest, row.front().height());
        }
    }
    EXPECT_GT(highest, 1.3 * lowest);
}

}  // namespace
}  // namespace platewright
