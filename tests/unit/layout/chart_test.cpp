// SPDX-License-Identifier: MIT
// Charts of any size keep to their pages, and groups keep together.
#include "layout/chart.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>
#include <vector>

#include "sample.h"

namespace platewright {
namespace {

Chart chart_of(const std::vector<std::size_t>& groups) {
    Chart chart;
    chart.title = "The Regiments";
    chart.aspect = 1.7;
    for (const std::size_t size : groups) {
        ChartGroup group;
        group.title = "crimson";
        group.colour = KeyEntry{"crimson", "", {0x8f, 0x1f, 0x3f}, false, ""};
        for (std::size_t i = 0; i < size; ++i) {
            group.entries.push_back(
                {"12  Tannbruck", {"lapels and cuffs; white buttons"}, {}, {}, {}});
        }
        chart.groups.push_back(std::move(group));
    }
    return chart;
}

/// The same with its pictures.
Chart drawn(Chart chart, const Paper& paper, const Typesetter& type) {
    const double scale = chart_scale(chart, 880, paper, type);
    for (ChartGroup& group : chart.groups) {
        for (ChartEntry& entry : group.entries) {
            entry.picture = sample::man("front", scale);
        }
    }
    return chart;
}

Document laid_out(const Chart& chart, const Paper& paper, Diagnostics& problems) {
    const Typesetter type;
    return lay_out_chart(drawn(chart, paper, type), paper, type, problems);
}

/// Every line of words on a page.
std::vector<Text> texts_of(const Page& page) {
    std::vector<Text> texts;
    const std::function<void(const Group&)> walk = [&](const Group& group) {
        for (const Node& node : group.children) {
            if (const auto* text = std::get_if<Text>(&node)) {
                texts.push_back(*text);
            } else if (const auto* inner = std::get_if<Group>(&node)) {
                walk(*inner);
            }
        }
    };
    for (const Placed& item : page.items) {
        walk(item.drawing.root);
    }
    return texts;
}

std::size_t pictures_of(const Page& page) {
    std::size_t pictures = 0;
    for (const Placed& item : page.items) {
        pictures += item.drawing.root.name == "picture" ? 1U : 0U;
    }
    return pictures;
}

/// Where the pictures of each row begin, row by row from the top.
std::map<double, std::vector<double>> rows_of_pictures(const Page& page) {
    std::map<double, std::vector<double>> rows;
    for (const Placed& item : page.items) {
        if (item.drawing.root.name == "picture") {
            rows[std::round(item.at.y * 1000) / 1000].push_back(item.at.x);
        }
    }
    return rows;
}

double mean_of(const std::vector<double>& numbers) {
    double sum = 0;
    for (const double number : numbers) {
        sum += number;
    }
    return sum / static_cast<double>(numbers.size());
}

TEST(Chart, CentresALastRowThatIsNotFull) {
    Chart chart = chart_of({13});
    chart.groups[0].title.clear();
    chart.groups[0].colour.reset();
    Diagnostics problems;
    const Document document = laid_out(chart, Paper{}, problems);
    ASSERT_EQ(document.pages.size(), 1U);
    const auto rows = rows_of_pictures(document.pages[0]);
    ASSERT_GT(rows.size(), 1U);
    ASSERT_LT(rows.rbegin()->second.size(), rows.begin()->second.size());
    EXPECT_NEAR(mean_of(rows.rbegin()->second), mean_of(rows.begin()->second), 1e-6);
}

TEST(Chart, LeavesALastRowUnderItsName) {
    Diagnostics problems;
    const Document document = laid_out(chart_of({13}), Paper{}, problems);
    const auto rows = rows_of_pictures(document.pages[0]);
    ASSERT_GT(rows.size(), 1U);
    EXPECT_NEAR(rows.rbegin()->second.front(), rows.begin()->second.front(), 1e-6);
}

TEST(Chart, PutsAFewRegimentsOnOnePage) {
    Diagnostics problems;
    const Document document = laid_out(chart_of({2, 2, 2, 2}), Paper{}, problems);
    ASSERT_EQ(document.pages.size(), 1U);
    EXPECT_EQ(pictures_of(document.pages[0]), 8U);
    EXPECT_TRUE(problems.all().empty());
}

TEST(Chart, HundredsBreakIntoPagesThatHoldAll) {
    Diagnostics problems;
    const Document document = laid_out(chart_of({3, 140, 7, 1, 60}), Paper{}, problems);
    ASSERT_GT(document.pages.size(), 1U);
    std::size_t pictures = 0;
    for (const Page& page : document.pages) {
        pictures += pictures_of(page);
        for (const Text& text : texts_of(page)) {
            EXPECT_GE(text.at.y, 0);
            EXPECT_LE(text.at.y, page.height);
            EXPECT_GE(text.size, 2.469) << text.words;
        }
    }
    EXPECT_EQ(pictures, 211U);
    EXPECT_TRUE(problems.all().empty());
}

TEST(Chart, NamesAGroupOverItsFirstRowAndOnEveryNewPage) {
    Diagnostics problems;
    const Document document = laid_out(chart_of({140}), Paper{}, problems);
    for (const Page& page : document.pages) {
        std::size_t headings = 0;
        for (const Text& text : texts_of(page)) {
            headings += text.words == "crimson" ? 1U : 0U;
        }
        EXPECT_EQ(headings, 1U);
    }
}

TEST(Chart, SharesItsRowsAmongThePages) {
    for (const std::size_t size : {100U, 137U, 141U, 200U}) {
        Diagnostics problems;
        const Document document = laid_out(chart_of({size}), Paper{}, problems);
        ASSERT_GT(document.pages.size(), 1U);
        EXPECT_GE(3 * pictures_of(document.pages.back()), pictures_of(document.pages.front()))
            << size;
    }
}

TEST(Chart, LeavesNobodyAloneInTheLastRow) {
    Diagnostics problems;
    const Document document = laid_out(chart_of({13}), Paper{}, problems);
    ASSERT_EQ(document.pages.size(), 1U);
    std::map<double, int> rows;
    for (const Placed& item : document.pages[0].items) {
        if (item.drawing.root.name == "picture") {
            ++rows[item.at.y];
        }
    }
    EXPECT_GT(rows.rbegin()->second, 1);
}

TEST(Chart, MakesMenSmallerRatherThanTakeAnotherPage) {
    Chart chart = chart_of({13});
    chart.aspect = 3;
    chart.standing = true;
    chart.groups[0].title.clear();
    Diagnostics problems;
    const Document document = laid_out(chart, Paper{}, problems);
    ASSERT_EQ(document.pages.size(), 1U);
    EXPECT_EQ(pictures_of(document.pages[0]), 13U);
    std::size_t most = 0;
    std::size_t least = 13;
    for (const auto& [y, row] : rows_of_pictures(document.pages[0])) {
        most = std::max(most, row.size());
        least = std::min(least, row.size());
    }
    EXPECT_LE(most - least, 1U);
}

TEST(Chart, MenStandOnOneStripOfGroundARow) {
    Chart chart = chart_of({13});
    chart.aspect = 3;
    chart.standing = true;
    Diagnostics problems;
    const Document document = laid_out(chart, Paper{}, problems);
    std::size_t strips = 0;
    for (const Placed& item : document.pages[0].items) {
        strips += item.drawing.root.name == "ground" ? 1U : 0U;
    }
    EXPECT_EQ(strips, rows_of_pictures(document.pages[0]).size());
}

TEST(Chart, MenWithRingsBesideThemStandInTheMiddleOfTheSheet) {
    Chart chart = chart_of({5});
    chart.groups[0].title.clear();
    chart.groups[0].colour.reset();
    chart.aspect = 3;
    chart.standing = true;
    for (ChartEntry& entry : chart.groups[0].entries) {
        entry.detail = sample::man("front", 10);
        entry.has_detail = true;
    }
    const Paper paper;
    Diagnostics problems;
    const Document document = laid_out(chart, paper, problems);
    ASSERT_EQ(document.pages.size(), 1U);
    const auto rows = rows_of_pictures(document.pages[0]);
    ASSERT_EQ(rows.size(), 2U);
    // They are left of it by half a ring.
    EXPECT_NEAR(mean_of(rows.rbegin()->second), mean_of(rows.begin()->second), 1e-6);
    EXPECT_LT(mean_of(rows.begin()->second), paper.width / 2);
    std::map<double, std::size_t> levels;
    for (const Placed& item : document.pages[0].items) {
        levels[std::round(item.at.y * 1000)] += item.drawing.root.name == "detail" ? 1U : 0U;
    }
    std::erase_if(levels, [](const auto& level) { return level.second == 0; });
    EXPECT_EQ(levels.size(), 2U);
}

TEST(Chart, WarnsWhereWordsLeaveNoRoom) {
    Chart chart = chart_of({2});
    chart.notes.assign(300, "A remark of no great length that fills the sheet with many others.");
    Diagnostics problems;
    const Document document = laid_out(chart, Paper{}, problems);
    ASSERT_EQ(problems.all().size(), 1U);
    EXPECT_EQ(problems.all().front().code, "layout.too-long");
}

}  // namespace
}  // namespace platewright
