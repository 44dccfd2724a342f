// SPDX-License-Identifier: MIT
// Comparisons, handouts and charts as written.
#include <gtest/gtest.h>

#include "read/read.h"

namespace platewright {
namespace {

/// Codes and messages, in order.
using Lines = std::vector<std::string>;

template <typename T, typename Read>
Lines problems_of(const std::string& text, const Read& read) {
    SourceMap sources;
    Diagnostics problems;
    const std::optional<T> sheet = read(sources, sources.add("sheet.yaml", text), problems);
    EXPECT_EQ(sheet.has_value(), problems.error_count() == 0);
    Lines lines;
    for (const Diagnostic& problem : problems.all()) {
        lines.push_back(problem.code + ": " + problem.message);
    }
    return lines;
}

TEST(ReadSheets, TellsThemByTheirFirstKey) {
    EXPECT_EQ(kind_of_file("comparison: A\n"), FileKind::comparison);
    EXPECT_EQ(kind_of_file("handout: A\n"), FileKind::handout);
    EXPECT_EQ(kind_of_file("chart: A\nregulation: r.yaml\nregiment: T\n"), FileKind::chart);
}

TEST(ReadSheets, AComparisonIsOfTwoToSixMen) {
    const auto problems = [](const std::string& text) {
        return problems_of<SpecifiedComparison>(text, read_comparison);
    };
    EXPECT_EQ(problems("comparison: A\nmen: [a.yaml, b.yaml]\n"), Lines());
    EXPECT_EQ(problems("comparison: A\nmen: a.yaml\n"),
              Lines({"read.out-of-range: a comparison is of 2 to 6 men, and these are 1"}));
    EXPECT_EQ(problems("comparison: A\nmen: [a, b, c, d, e, f, g]\n"),
              Lines({"read.out-of-range: a comparison is of 2 to 6 men, and these are 7"}));
    EXPECT_EQ(problems("comparison: A\n"), Lines({"read.missing-key: a comparison has no 'men'"}));
}

TEST(ReadSheets, AHandoutTakesThingsByNameOrInFull) {
    SourceMap sources;
    Diagnostics problems;
    const auto sheet = read_handout(
        sources,
        sources.add("h.yaml",
                    "handout: A\nman: a.yaml\nunit: {name: U, contact: [x, y]}\n"
                    "kit: [shirt, {item: coat, when: season, way: make, quantity: 2}]\n"),
        problems);
    ASSERT_TRUE(sheet);
    EXPECT_EQ(sheet->man.text, "a.yaml");
    EXPECT_EQ(sheet->unit.contact.size(), 2U);
    ASSERT_EQ(sheet->kit.size(), 2U);
    EXPECT_EQ(sheet->kit[0].item.text, "shirt");
    EXPECT_FALSE(sheet->kit[0].way);
    EXPECT_EQ(sheet->kit[1].stage, KitStage::season);
    EXPECT_EQ(sheet->kit[1].way, KitWay::make);
    EXPECT_EQ(sheet->kit[1].quantity->first, 2);
}

TEST(ReadSheets, WordsThatAreNoneOfTheChoicesAreTold) {
    EXPECT_EQ(
        problems_of<SpecifiedHandout>(
            "handout: A\nman: a.yaml\nkit: [{item: hat, when: soon}, {way: buy}]\n", read_handout),
        Lines({"read.unknown-choice: 'when' cannot be 'soon'",
               "read.missing-key: kit has no 'item'"}));
    EXPECT_EQ(problems_of<SpecifiedChart>("chart: A\nof: horses\n", read_chart),
              Lines({"read.unknown-choice: 'of' cannot be 'horses'"}));
}

}  // namespace
}  // namespace platewright
