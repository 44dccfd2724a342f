// SPDX-License-Identifier: MIT
// Source lines under messages: the underline stands where it must, whatever the line holds.
#include "cli/excerpt.h"

#include <gtest/gtest.h>

#include <string>

namespace platewright::cli {
namespace {

TEST(Excerpt, UnderlinesTheBytes) {
    EXPECT_EQ(excerpt("coat: red", 6, 9, 2), "  coat: red\n        ^^^\n");
}

TEST(Excerpt, UnderlinesAtLeastOneColumn) {
    EXPECT_EQ(excerpt("coat:", 5, 5, 0), "coat:\n     ^\n");
    EXPECT_EQ(excerpt("", 0, 0, 0), "\n^\n");
    EXPECT_EQ(excerpt("x", 99, 120, 0), "x\n ^\n");
}

TEST(Excerpt, CountsColumnsNotBytes) {
    EXPECT_EQ(excerpt("é: rød", 4, 8, 0), "é: rød\n   ^^^\n");
    EXPECT_EQ(excerpt("漢字: x", 8, 9, 0), "漢字: x\n      ^\n");
    EXPECT_EQ(excerpt("e\u0301: x", 5, 6, 0), "e\u0301: x\n   ^\n");
}

TEST(Excerpt, ShowsTabsAndHiddenCharacters) {
    EXPECT_EQ(excerpt("\ta: b", 1, 2, 0), "→   a: b\n    ^\n");
    EXPECT_EQ(excerpt(std::string("a\0b\x1B\x7F", 5), 2, 3, 0), "a␀b␛␡\n  ^\n");
    EXPECT_EQ(excerpt("a\u202Eb", 4, 5, 0), "a<U+202E>b\n         ^\n");
    EXPECT_EQ(excerpt("a\xFF"
                      "b",
                      2,
                      3,
                      0),
              "a\uFFFDb\n  ^\n");
}

TEST(Excerpt, CutsLongLines) {
    const std::string line = std::string(200, 'a') + "HERE" + std::string(200, 'b');
    EXPECT_EQ(excerpt(line, 200, 204, 0),
              "…" + std::string(40, 'a') + "HERE" + std::string(56, 'b') + "…\n" +
                  std::string(41, ' ') + "^^^^\n");
    const std::string start = "HERE" + std::string(200, 'b');
    EXPECT_EQ(excerpt(start, 0, 4, 0), "HERE" + std::string(96, 'b') + "…\n^^^^\n");
}

TEST(Excerpt, LooksAtALittleOfAHugeLineOnly) {
    const std::string line(50'000'000, 'a');
    EXPECT_LT(excerpt(line, 25'000'000, 50'000'000, 0).size(), 400U);
}

TEST(Visible, LeavesOrdinaryTextAsItIs) {
    std::size_t columns = 0;
    EXPECT_EQ(visible("Zoë 漢 'x'", &columns), "Zoë 漢 'x'");
    EXPECT_EQ(columns, 10U);
}

TEST(Visible, MakesOneLineOfAny) {
    EXPECT_EQ(visible("a\nb\x1B[31m"), "a␊b␛[31m");
}

}  // namespace
}  // namespace platewright::cli
