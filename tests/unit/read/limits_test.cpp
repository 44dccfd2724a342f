// SPDX-License-Identifier: MIT
// Size, depth and number are bounded, and so is the time for the worst input we know.
#include "base/limits.h"

#include <gtest/gtest.h>

#include <ctime>
#include <string>
#include <utility>

#include "support.h"

namespace platewright {
namespace {

std::string repeated(std::string_view unit, std::size_t bytes) {
    std::string text;
    while (text.size() + unit.size() <= bytes) {
        text += unit;
    }
    return text;
}

TEST(ReadLimits, RefusesALargeFile) {
    EXPECT_EQ(problems_of_plate("plate: x\n" + repeated("# remark\n", limits::kYamlBytes)),
              Lines{"read.too-large 1:1"});
    EXPECT_EQ(problems_of_plate("plate: x\n" + repeated("# remark\n", limits::kYamlBytes - 9)),
              Lines{});
}

TEST(ReadLimits, RefusesTooManyValues) {
    EXPECT_EQ(problems_of_plate("plate: x\nnotes: [" + repeated("a,", 2 * limits::kYamlNodes + 10) +
                                "]\n"),
              Lines{"read.too-large 2:99999"});
}

TEST(ReadLimits, RefusesDeepNesting) {
    const std::string open(limits::kYamlDepth - 1, '[');
    const std::string close(limits::kYamlDepth - 1, ']');
    EXPECT_EQ(problems_of_plate("plate: x\nnotes: " + open + close + "\n"),
              Lines{"read.wrong-kind 2:9"});
    EXPECT_EQ(problems_of_plate("plate: x\nnotes: [" + open + close + "]\n"),
              Lines{"read.too-deep 2:31"});
}

TEST(ReadLimits, AnswersTheWorstInputsInTime) {
    const std::pair<const char*, std::string_view> units[] = {{"", "["},
                                                              {"", "{"},
                                                              {"", "[a,"},
                                                              {"", "{a: "},
                                                              {"", "- "},
                                                              {"", "? "},
                                                              {"", "a: "},
                                                              {"a: \"", "x "},
                                                              {"a: '", "''"},
                                                              {"", "\"\""},
                                                              {"a: ", "word "},
                                                              {"", "k: v\n"},
                                                              {"", "a\n"},
                                                              {"a: [", "a\n"},
                                                              {"", "[{"},
                                                              {"", "- ["},
                                                              {"", "&a "},
                                                              {"", "*a "},
                                                              {"", "! "},
                                                              {"", "!<a"},
                                                              {"", ": "},
                                                              {"", ":\n"},
                                                              {"a: [", "x,"},
                                                              {"a: {", "x: y,"},
                                                              {"a: |\n", "  x\n"},
                                                              {"a: >\n", "  x\n\n"},
                                                              {"a: \"", "\\n"},
                                                              {"", "%A b\n"},
                                                              {"", "---\n"},
                                                              {"a:", "\n"},
                                                              {"a:", " "},
                                                              {"", "a: \"\n"},
                                                              {"", "a: {\n"},
                                                              {"", "a: b: c\n"},
                                                              {"", "x: #aabbcc\n"},
                                                              {"a: x", " #"}};
    for (const auto& [head, unit] : units) {
        const std::string text = head + repeated(unit, limits::kYamlBytes / 3);
        // Of the processor, so that a busy machine does not decide.
        const std::clock_t start = std::clock();
        EXPECT_FALSE(problems_of_plate(text).empty()) << head << unit;
        const double took = static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
        // A quarter of a second optimised; the rest is for slow machines and for the sanitizers.
        EXPECT_LT(took, 20) << head << unit;
    }
}

}  // namespace
}  // namespace platewright
