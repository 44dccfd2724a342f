// SPDX-License-Identifier: MIT
// What a chart shows of a regulation.
#include "cli/chart.h"

#include <gtest/gtest.h>

#include "support.h"

namespace platewright::cli {
namespace {

/// A chart in the folder of the demonstration plates.
class DrawnChart {
  public:
    explicit DrawnChart(const std::string& text) {
        const FileId file = bench_.sources.add(PLATEWRIGHT_SOURCE_DIR "/plates/chart.yaml", text);
        const auto sheet = prepare_sheet(bench_.workshop, file, bench_.problems, bench_.timings);
        if (sheet) {
            const Typesetter type;
            document_ = sheet->draw({Paper{}, Ink::colour}, type, bench_.problems, bench_.timings);
        }
    }

    /// The layout as text; empty after an error.
    [[nodiscard]] std::string text() const { return document_ ? dump(*document_) : ""; }

    [[nodiscard]] const Page& first_page() const { return document_->pages.front(); }

    [[nodiscard]] std::size_t pages() const { return document_ ? document_->pages.size() : 0; }

    [[nodiscard]] const Diagnostics& problems() const { return bench_.problems; }

  private:
    Bench bench_;
    std::optional<Document> document_;
};

std::size_t count_of(const std::string& text, const std::string& word) {
    std::size_t count = 0;
    for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word, at + 1)) {
        ++count;
    }
    return count;
}

TEST(ChartSheet, ShowsEveryRegimentWithItsNumberAndButton) {
    const DrawnChart chart("chart: A\nregulation: arvenholt/regulation-1784.yaml\nas of: 1785\n");
    const std::string text = chart.text();
    for (const char* regiment : {"1  Halmgard",
                                 "2  Seeholm",
                                 "3  Varrenau",
                                 "4  Tannbruck",
                                 "5  Ostrand",
                                 "6  Birkenfels",
                                 "7  Kaldermoor",
                                 "8  Wendelau"}) {
        EXPECT_EQ(count_of(text, regiment), 1U) << regiment;
    }
    EXPECT_NE(text.find("lapels and cuffs;"), std::string::npos);
    EXPECT_EQ(chart.pages(), 1U);
    EXPECT_TRUE(chart.problems().all().empty());
}

TEST(ChartSheet, NamesColoursInItsLanguage) {
    const DrawnChart chart(
        "chart: A\nregulation: arvenholt/regulation-1784.yaml\nas of: 1785\nlanguage: de\n");
    const std::string text = chart.text();
    EXPECT_NE(text.find("strohgelb"), std::string::npos);
    EXPECT_NE(text.find("weißes"), std::string::npos);
    EXPECT_EQ(text.find("straw"), std::string::npos);
    const DrawnChart colours("chart: A\nof: colours\nlanguage: fr\n");
    EXPECT_NE(colours.text().find("chamois"), std::string::npos);
    EXPECT_EQ(colours.text().find("gosling"), std::string::npos);
}

TEST(ChartSheet, TellsInWhatRanksDiffer) {
    const DrawnChart chart(
        "chart: A\nof: ranks\nregulation: arvenholt/regulation-1784.yaml\nas of: 1785\n");
    const std::string text = chart.text();
    EXPECT_NE(text.find("Feldwaybel"), std::string::npos);
    EXPECT_NE(text.find("3 bars"), std::string::npos);
}

TEST(ChartSheet, TellsStepsOfServiceAndTheirBadges) {
    const DrawnChart chart(
        "chart: A\nof: service\nregulation: arvenholt/regulation-1784.yaml\nas of: 1785\n");
    const std::string text = chart.text();
    EXPECT_NE(text.find("from 6 years"), std::string::npos);
    EXPECT_NE(text.find("more than 24 years"), std::string::npos);
    EXPECT_NE(text.find("oak leaf"), std::string::npos);
}

TEST(ChartSheet, TellsWhatARankPutsOnBesidesItsMarks) {
    const std::string text = DrawnChart(
                                 "chart: A\nof: ranks\nregulation: arvenholt/regulation-1784.yaml\n"
                                 "regiment: Seeholm\nas of: 1785\n")
                                 .text();
    EXPECT_NE(text.find("sash: green; "), std::string::npos);
    EXPECT_NE(text.find("sword hilt"), std::string::npos);
    EXPECT_NE(text.find("gorget: gold; sash"), std::string::npos);
    EXPECT_NE(text.find("epaulette without"), std::string::npos);
}

TEST(ChartSheet, EnlargesWhatTellsARankFromAPrivate) {
    const DrawnChart ranks(
        "chart: A\nof: ranks\nregulation: arvenholt/regulation-1784.yaml\nas of: 1785\n");
    // The private has nothing to be told by: his bare sleeve is shown.
    EXPECT_EQ(count_of(ranks.text(), "layer detail"), 13U);
    EXPECT_EQ(count_of(ranks.text(), "layer picture"), 13U);
    const DrawnChart regiments(
        "chart: A\nregulation: arvenholt/regulation-1784.yaml\nas of: 1785\n");
    EXPECT_EQ(count_of(regiments.text(), "layer detail"), 0U);
}

/// How large the first drawing of that name stands on the first page, for a body of size 1.
double factor_of(const DrawnChart& drawn, const std::string& name) {
    for (const Placed& item : drawn.first_page().items) {
        if (item.drawing.root.name == name) {
            return item.factor;
        }
    }
    return 0;
}

TEST(ChartSheet, AMarkIsClearlyLargerInItsLens) {
    const DrawnChart chart(
        "chart: A\nof: ranks\nregulation: arvenholt/regulation-1784.yaml\nas of: 1785\n");
    EXPECT_GT(factor_of(chart, "detail"), 2 * factor_of(chart, "picture"));
}

TEST(ChartSheet, ServiceIsShownOnWholeMenWithALens) {
    const DrawnChart service(
        "chart: A\nregulation: arvenholt/regulation-1784.yaml\nas of: 1785\nof: service\n");
    EXPECT_GT(count_of(service.text(), "layer detail"), 2U);
    EXPECT_GT(factor_of(service, "detail"), 2 * factor_of(service, "picture"));
}

TEST(ChartSheet, LeavesRoomForTheTallestHat) {
    const std::string chart =
        "chart: A\nregulation: arvenholt/regulation-1784.yaml\nas of: 1785\ncompany: ";
    const DrawnChart grenadiers(chart + "grenadiers\n");
    const DrawnChart musketeers(chart + "musketeers\n");
    EXPECT_LT(factor_of(grenadiers, "picture"), factor_of(musketeers, "picture"));
}

TEST(ChartSheet, ShowsThePalettesAskedFor) {
    const DrawnChart metals("chart: A\nof: colours\npalettes: Metals\n");
    EXPECT_NE(metals.text().find("brass"), std::string::npos);
    EXPECT_EQ(metals.text().find("scarlet"), std::string::npos);
}

TEST(ChartSheet, WhatTheMenCannotBeGivenIsTold) {
    const DrawnChart chart("chart: A\nregulation: arvenholt/nothing.yaml\n");
    ASSERT_EQ(chart.problems().all().size(), 1U);
    EXPECT_EQ(chart.problems().all().front().code, "cli.cannot-read");
}

}  // namespace
}  // namespace platewright::cli
