// SPDX-License-Identifier: MIT
// Names and sizes of paper.
#include <gtest/gtest.h>

#include "layout/layout.h"

namespace platewright {
namespace {

void expect_size(const char* name, double width, double height) {
    const auto paper = parse_paper(name);
    ASSERT_TRUE(paper) << name;
    EXPECT_DOUBLE_EQ(paper->width, width) << name;
    EXPECT_DOUBLE_EQ(paper->height, height) << name;
}

// ISO 216:2007, tables 1 and 2, trimmed sizes.
TEST(Paper, HasTheSizesOfIso216) {
    expect_size("A3", 297, 420);
    expect_size("A4", 210, 297);
    expect_size("A5", 148, 210);
    expect_size("A6", 105, 148);
    expect_size("B4", 250, 353);
    expect_size("B5", 176, 250);
}

// ASME Y14.1: size A is 8.5 x 11 in, size B 11 x 17 in. Legal is the trade's 8.5 x 14 in.
TEST(Paper, HasTheAmericanSizesInInches) {
    constexpr double inch = 25.4;
    expect_size("letter", 8.5 * inch, 11 * inch);
    expect_size("legal", 8.5 * inch, 14 * inch);
    expect_size("tabloid", 11 * inch, 17 * inch);
    expect_size("ledger", 17 * inch, 11 * inch);
}

TEST(Paper, TurnsOnItsSide) {
    expect_size("A4-landscape", 297, 210);
    expect_size("A4-portrait", 210, 297);
    expect_size("ledger-portrait", 279.4, 431.8);
    expect_size("ledger-landscape", 431.8, 279.4);
}

TEST(Paper, DoesNotMindCapitals) {
    expect_size("a4-LANDSCAPE", 297, 210);
    expect_size("Letter", 215.9, 279.4);
}

TEST(Paper, TakesASizeInMillimetres) {
    expect_size("210x297mm", 210, 297);
    expect_size("215.9x279.4mm", 215.9, 279.4);
    expect_size("80x2000mm", 80, 2000);
}

TEST(Paper, RefusesWhatIsNoPaper) {
    for (const char* text : {"",
                             "A",
                             "A44",
                             "A4-",
                             "A4-sideways",
                             "-landscape",
                             "210x297",
                             "210x",
                             "x297mm",
                             "210x297 mm",
                             "210,5x297mm",
                             "-210x297mm",
                             "79.9x297mm",
                             "210x2001mm",
                             "nanxnanmm",
                             "infx297mm",
                             "210x297mmm",
                             "1e2x297mm",
                             "210x297mm-landscape"}) {
        EXPECT_FALSE(parse_paper(text)) << text;
    }
}

}  // namespace
}  // namespace platewright
