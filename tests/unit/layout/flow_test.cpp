// SPDX-License-Identifier: MIT
// Pages of running text: where they end, what stays together, what is repeated, where links lead.
#include "layout/flow.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "layout/cells.h"
#include "sample.h"

namespace platewright::sheet {
namespace {

/// A document of one flow with what was complained of.
struct Made {
    Document document;
    Diagnostics problems;
};

template <typename Fill>
Made made(const Paper& paper, Fill fill, const std::string& language = "en") {
    Made result;
    const Typesetter type;
    Ruler ruler(type);
    Flow flow({paper, language, "Tannbruck Company", "Handout", "by post"}, ruler, result.problems);
    fill(flow);
    flow.finish(result.document);
    return result;
}

/// All words of a page, in the order they are painted.
std::vector<Text> texts(const Page& page) {
    std::vector<Text> found;
    for (const Placed& placed : page.items) {
        for (const Node& node : placed.drawing.root.children) {
            if (const auto* text = std::get_if<Text>(&node)) {
                found.push_back(*text);
            }
        }
    }
    return found;
}

std::size_t count(const Page& page, const std::string& words) {
    return static_cast<std::size_t>(
        std::ranges::count(texts(page), words, [](const Text& text) { return text.words; }));
}

const Text& find(const std::vector<Text>& all, const std::string& words) {
    const auto at = std::ranges::find(all, words, &Text::words);
    EXPECT_NE(at, all.end()) << words;
    return *at;
}

std::string long_words(std::size_t count) {
    std::string words;
    for (std::size_t i = 0; i < count; ++i) {
        words += (i == 0 ? "" : " ") + std::string("lapel") + std::to_string(i);
    }
    return words;
}

Table table_of(std::size_t rows) {
    Table table;
    table.columns = {{"Item", Align::start, true}, {"Quantity", Align::end, false}};
    for (std::size_t i = 0; i < rows; ++i) {
        table.rows.push_back({{{"coat " + std::to_string(i), "of green cloth"}, {"1"}}});
    }
    return table;
}

TEST(Flow, BreaksPagesAndNumbersThem) {
    const Made result = made({}, [](Flow& flow) { flow.paragraph(long_words(1500)); });
    ASSERT_GE(result.document.pages.size(), 2U);
    const std::string total = std::to_string(result.document.pages.size());
    EXPECT_EQ(count(result.document.pages[1], "2 / " + total), 1U);
    EXPECT_EQ(count(result.document.pages[0], "Handout"), 0U);
    EXPECT_EQ(count(result.document.pages[1], "Handout"), 1U);
    EXPECT_TRUE(result.problems.all().empty());
}

TEST(Flow, StaysWithinThePageAndAboveSevenPoint) {
    for (const Paper& paper : {Paper{210, 297}, Paper{297, 210}, Paper{105, 148}, Paper{80, 80}}) {
        const Made result = made(paper, [](Flow& flow) {
            flow.title("Handout of the Tannbruck Company", "for a recruit");
            flow.heading("What to get");
            flow.table(table_of(60));
            flow.columns(2);
            flow.paragraph(long_words(300));
        });
        for (const Page& page : result.document.pages) {
            for (const Text& text : texts(page)) {
                EXPECT_GE(text.size, kSevenPoint - 1e-9);
                EXPECT_GE(text.at.y, 0);
                EXPECT_LE(text.at.y, paper.height);
                EXPECT_GE(text.at.x, 0);
                EXPECT_LE(text.at.x, paper.width);
            }
        }
    }
}

TEST(Flow, RepeatsTheHeadOfATable) {
    const Made result = made({}, [](Flow& flow) { flow.table(table_of(70)); });
    ASSERT_GE(result.document.pages.size(), 2U);
    for (const Page& page : result.document.pages) {
        EXPECT_EQ(count(page, "Item"), 1U);
        EXPECT_EQ(count(page, "Quantity"), 1U);
    }
}

TEST(Flow, HatchedSamplesStandWhereTheirRowIs) {
    const Made result = made({}, [](Flow& flow) {
        flow.paragraph("first");
        Table table = table_of(1);
        table.rows[0].cells[0].swatch = Swatch{{0, 0, 0}, nearest_tincture({0, 0, 0}), false, 0, 0};
        flow.table(table);
    });
    const Drawing& text = result.document.pages.at(0).items.at(0).drawing;
    const double row = find(texts(result.document.pages[0]), "coat 0").at.y;
    std::size_t groups = 0;
    for (const Node& node : text.root.children) {
        if (const auto* group = std::get_if<Group>(&node)) {
            ++groups;
            ASSERT_EQ(group->clip.size(), 1U);
            EXPECT_NEAR(text.paths[group->clip[0]].bounds().bottom, row, 1);
            EXPECT_FALSE(group->children.empty());
        }
    }
    EXPECT_EQ(groups, 1U);
}

TEST(Flow, NeverDividesARow) {
    const Made result = made({}, [](Flow& flow) { flow.table(table_of(70)); });
    for (const Page& page : result.document.pages) {
        const std::vector<Text> all = texts(page);
        EXPECT_EQ(
            std::ranges::count_if(all, [](const Text& t) { return t.words.starts_with("coat "); }),
            std::ranges::count(all, "of green cloth", &Text::words));
    }
}

TEST(Flow, ARowHigherThanAPageIsGoneOnWith) {
    const Made result = made({105, 148}, [](Flow& flow) {
        Table table = table_of(1);
        table.rows[0].cells[0].words = long_words(1000);
        flow.table(table);
    });
    EXPECT_GE(result.document.pages.size(), 2U);
    std::string all;
    for (const Page& page : result.document.pages) {
        for (const Text& text : texts(page)) {
            all += text.words + " ";
        }
    }
    EXPECT_NE(all.find("lapel999"), std::string::npos);
}

TEST(Flow, AHeadingStaysWithWhatFollows) {
    for (int lines = 30; lines < 60; ++lines) {
        const Made result = made({}, [&](Flow& flow) {
            for (int i = 0; i < lines; ++i) {
                flow.paragraph("line");
            }
            flow.heading("Cautions");
            flow.paragraph("Blades stay sheathed.");
        });
        for (const Page& page : result.document.pages) {
            EXPECT_EQ(count(page, "Cautions"), count(page, "Blades stay sheathed.")) << lines;
        }
    }
}

TEST(Flow, AHeadingStaysWithTheColumnsUnderIt) {
    for (int lines = 30; lines < 60; ++lines) {
        const Made result = made({}, [&](Flow& flow) {
            for (int i = 0; i < lines; ++i) {
                flow.paragraph("line");
            }
            flow.heading("Cautions");
            flow.columns(2);
            flow.paragraph("Blades stay sheathed.");
        });
        for (const Page& page : result.document.pages) {
            EXPECT_EQ(count(page, "Cautions"), count(page, "Blades stay sheathed.")) << lines;
        }
    }
}

TEST(Flow, ColumnsAreEven) {
    const Made result = made({}, [](Flow& flow) {
        flow.columns(2);
        for (int i = 0; i < 20; ++i) {
            flow.paragraph("line " + std::to_string(i));
        }
    });
    const std::vector<Text> all = texts(result.document.pages.at(0));
    EXPECT_EQ(find(all, "line 0").at.y, find(all, "line 10").at.y);
    EXPECT_LT(find(all, "line 0").at.x, find(all, "line 10").at.x);
}

TEST(Flow, OutlineAndContentsLeadToTheHeadings) {
    const Made result = made({}, [](Flow& flow) {
        flow.contents();
        flow.heading("What to get");
        flow.new_page();
        flow.heading("Where the marks go");
        flow.heading("Chevrons", 2);
        flow.paragraph("Both sleeves.");
    });
    ASSERT_EQ(result.document.outline.size(), 3U);
    EXPECT_EQ(result.document.outline[1].page, 1U);
    EXPECT_EQ(result.document.outline[2].level, 2);
    ASSERT_EQ(result.document.pages[0].links.size(), 2U);
    EXPECT_EQ(result.document.pages[0].links[1].page, 1U);
    EXPECT_DOUBLE_EQ(result.document.pages[0].links[1].y, result.document.outline[1].y);
    EXPECT_EQ(count(result.document.pages[0], "2"), 1U);
}

TEST(Flow, WordsFromRightToLeftBeginAtTheRight) {
    const Made result = made({}, [](Flow& flow) {
        flow.paragraph("חייל רגלים");
        flow.paragraph("Рядовой");
    });
    const std::vector<Text> all = texts(result.document.pages.at(0));
    EXPECT_EQ(find(all, "חייל רגלים").align, Align::end);
    EXPECT_NEAR(find(all, "חייל רגלים").at.x, 210 - 21, 1e-9);
    EXPECT_EQ(find(all, "Рядовой").align, Align::start);
}

TEST(Flow, TellsOfAWordThatIsBroken) {
    const std::string word(200, 'w');
    const Made result = made({}, [&](Flow& flow) { flow.paragraph("a " + word); });
    ASSERT_EQ(result.problems.all().size(), 1U);
    const Diagnostic& warning = result.problems.all()[0];
    EXPECT_EQ(warning.severity, Severity::warning);
    EXPECT_EQ(warning.code, "layout.too-wide");
    EXPECT_EQ(warning.message, "'" + word + "' is wider than its column and is broken inside");
}

TEST(Flow, TellsOfAPictureThatIsMadeSmaller) {
    const Made result = made({}, [](Flow& flow) {
        const Figure man = sample::man("front", 8);
        flow.pictures({{man.drawing, man.frame, 0.1, "parade", ""},
                       {man.drawing, man.frame, 1, "fatigue", ""}});
    });
    ASSERT_EQ(result.problems.all().size(), 1U);
    EXPECT_EQ(result.problems.all()[0].code, "layout.too-large");
    EXPECT_EQ(result.problems.all()[0].message,
              "the picture 'fatigue' is larger than the page and is drawn smaller");
}

TEST(Flow, AppendixStandsInTheContentsBehindAllPages) {
    const Made result = made({}, [](Flow& flow) {
        flow.contents();
        flow.heading("What to get");
        flow.new_page();
        flow.paragraph("Both sleeves.");
        flow.appendix("Tiles", 3);
    });
    ASSERT_EQ(result.document.pages.size(), 2U);
    ASSERT_EQ(result.document.pages[0].links.size(), 2U);
    EXPECT_EQ(result.document.pages[0].links[1].page, 2U);
    EXPECT_EQ(count(result.document.pages[0], "3"), 1U);
    EXPECT_EQ(result.document.outline.back().title, "Tiles");
}

TEST(Flow, OfNothingIsAPageOfNothing) {
    const Made result = made({}, [](Flow&) {});
    EXPECT_EQ(result.document.pages.size(), 1U);
    const Made blank = made({}, [](Flow& flow) {
        flow.table({});
        flow.heading("");
        flow.paragraph("");
        flow.pictures({});
        flow.contents();
    });
    EXPECT_EQ(blank.document.pages.size(), 1U);
}

/// Rows that high with their number on them, on one shelf or on none.
Made rows_of(const std::vector<double>& heights, bool on_shelf) {
    return made({}, [&](Flow& flow) {
        const std::size_t shelf = on_shelf ? flow.new_shelf() : 0;
        for (std::size_t i = 0; i < heights.size(); ++i) {
            Slab slab;
            slab.height = heights[i];
            slab.shelf = shelf;
            const Speech speech = speech_of(Voice::body, flow.style());
            flow.press().put_line("row " + std::to_string(i),
                                  {0, 0, 40, speech.leading},
                                  speech.type.size,
                                  speech,
                                  Align::start,
                                  slab.content);
            flow.slab(std::move(slab));
        }
    });
}

TEST(Flow, ARowOfAShelfThatFillsThePageComesFirst) {
    const Made result = rows_of({150, 150, 50}, true);
    ASSERT_EQ(result.document.pages.size(), 2U);
    EXPECT_EQ(count(result.document.pages[0], "row 2"), 1U);
    EXPECT_EQ(count(result.document.pages[1], "row 1"), 1U);
    const Made in_order = rows_of({150, 150, 50}, false);
    EXPECT_EQ(count(in_order.document.pages[1], "row 2"), 1U);
}

TEST(Flow, RowsOfAShelfShareTheRoomThatIsLeft) {
    const auto second = [](bool on_shelf) {
        const Made made = rows_of({90, 90, 90}, on_shelf);
        EXPECT_EQ(made.document.pages.size(), 2U);
        return find(texts(made.document.pages[0]), "row 1").at.y;
    };
    EXPECT_GT(second(true), second(false) + 5);
}

TEST(Cells, LowOnesStandUnderOneAnother) {
    const auto cell = [](double width, double height) {
        return RowItem{width, height, {}, [](Items&, Point, double) {}};
    };
    const std::vector<RowItem> made = stacked({cell(40, 100), cell(60, 45), cell(55, 40)});
    ASSERT_EQ(made.size(), 2U);
    EXPECT_EQ(made[1].height, 45 + kCellsApart + 40);
    EXPECT_EQ(made[1].width, 60);
    EXPECT_EQ(stacked({cell(40, 100), cell(60, 70), cell(55, 40)}).size(), 3U);
    EXPECT_EQ(stacked({cell(40, 100), cell(20, 45), cell(55, 40)}).size(), 3U);
}

}  // namespace
}  // namespace platewright::sheet
