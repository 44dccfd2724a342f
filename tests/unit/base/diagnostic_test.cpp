// SPDX-License-Identifier: MIT
// Collecting problems; places in the text.
#include "base/diagnostic.h"

#include <gtest/gtest.h>

namespace platewright {
namespace {

TEST(Diagnostics, CountsErrorsOnly) {
    Diagnostics all;
    all.error("read.yaml", {0, 1, 2}, "wrong").hints.push_back("do it right");
    all.warning("layout.too-long", {0, 1, 2}, "long");
    all.file_error("read.file", "plate.yaml", "no such file");
    EXPECT_EQ(all.error_count(), 2U);
    ASSERT_EQ(all.all().size(), 3U);
    EXPECT_EQ(all.all()[0].hints, std::vector<std::string>{"do it right"});
    EXPECT_EQ(all.all()[1].severity, Severity::warning);
    EXPECT_EQ(all.all()[2].path, "plate.yaml");
    EXPECT_FALSE(all.all()[2].span);
}

std::vector<std::string> messages(const Diagnostics& all) {
    std::vector<std::string> list;
    for (const Diagnostic& each : all.all()) {
        list.push_back(each.message);
    }
    return list;
}

TEST(Diagnostics, SortsByFileAndPlaceWithWholeFilesFirst) {
    Diagnostics all;
    all.error("b", {1, 0, 1}, "second file");
    all.error("b", {0, 9, 10}, "further down");
    all.error("b", {0, 3, 4}, "first file");
    all.file_error("a", "z.yaml", "file z");
    all.file_error("a", "a.yaml", "file a");
    all.sort();
    EXPECT_EQ(messages(all),
              (std::vector<std::string>{
                  "file a", "file z", "first file", "further down", "second file"}));
}

TEST(Diagnostics, DropsExactRepetitionsAndCountsAgain) {
    Diagnostics all;
    all.error("b", {0, 3, 4}, "same");
    all.error("a", {0, 3, 4}, "other code");
    all.error("b", {0, 3, 4}, "same");
    all.error("b", {0, 3, 4}, "same").labels.push_back({{0, 0, 1}, "but with a label"});
    all.sort();
    EXPECT_EQ(messages(all), (std::vector<std::string>{"other code", "same", "same"}));
    EXPECT_EQ(all.error_count(), 3U);
}

SourceMap::Place place(const std::string& text, std::size_t offset) {
    SourceMap sources;
    return sources.place(sources.add("plate.yaml", text), offset);
}

TEST(SourceMap, CountsLinesFromOne) {
    EXPECT_EQ(place("", 0).line, 1U);
    EXPECT_EQ(place("a\nb", 0).line, 1U);
    EXPECT_EQ(place("a\nb", 1).line, 1U);
    EXPECT_EQ(place("a\nb", 2).line, 2U);
    EXPECT_EQ(place("a\n", 2).line, 2U);
}

TEST(SourceMap, CountsColumnsInCharacters) {
    EXPECT_EQ(place("Fuß x", 0).column, 1U);
    EXPECT_EQ(place("Fuß x", 5).column, 5U);
    EXPECT_EQ(place("a\nüb", 4).column, 2U);
}

TEST(SourceMap, TakesAnOffsetBeyondTheEndAsTheEnd) {
    EXPECT_EQ(place("a\nbc", 1000).line, 2U);
    EXPECT_EQ(place("a\nbc", 1000).column, 3U);
}

TEST(SourceMap, GivesTheLineWithoutItsEnd) {
    SourceMap sources;
    const FileId file = sources.add("plate.yaml", "one\r\ntwo\n\nlast");
    EXPECT_EQ(sources.line_at(file, 0), "one");
    EXPECT_EQ(sources.line_at(file, 3), "one");
    EXPECT_EQ(sources.line_at(file, 5), "two");
    EXPECT_EQ(sources.line_at(file, 9), "");
    EXPECT_EQ(sources.line_at(file, 10), "last");
    EXPECT_EQ(sources.line_at(file, 1000), "last");
}

TEST(SourceMap, KeepsTextWhereItIsWhileFilesAreAdded) {
    SourceMap sources;
    const std::string* first = &sources.text(sources.add("a", "short"));
    for (int i = 0; i < 1000; ++i) {
        sources.add("b", "other");
    }
    EXPECT_EQ(first, &sources.text(0));
    EXPECT_EQ(*first, "short");
    EXPECT_EQ(sources.name(1000), "b");
}

}  // namespace
}  // namespace platewright
