// SPDX-License-Identifier: MIT
// Text services.
#include "base/text.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace platewright {
namespace {

std::optional<std::string> nearest(std::string_view word, const std::vector<std::string>& known) {
    return nearest_word(word, known);
}

// The ill-formed sequences are those of The Unicode Standard 15.0, section 3.9, tables 3-7 to 3-11.
TEST(InvalidUtf8, AcceptsWellFormedText) {
    EXPECT_FALSE(invalid_utf8(""));
    EXPECT_FALSE(invalid_utf8("Füsilier, ½ Zoll, \xF0\x9F\x8E\xA9"));
    EXPECT_FALSE(invalid_utf8("\xED\x9F\xBF\xEE\x80\x80\xF4\x8F\xBF\xBF"));
}

TEST(InvalidUtf8, FindsTheFirstBadByte) {
    EXPECT_EQ(invalid_utf8("ab\xFF"), 2U);
    EXPECT_EQ(invalid_utf8("a\x80"), 1U);
    EXPECT_EQ(invalid_utf8("ü\xC3"), 2U);
    EXPECT_EQ(invalid_utf8("\xE2\x82"), 0U);
}

TEST(InvalidUtf8, RefusesOverlongFormsSurrogatesAndTooLargeNumbers) {
    EXPECT_EQ(invalid_utf8("\xC0\xAF"), 0U);
    EXPECT_EQ(invalid_utf8("\xE0\x9F\xBF"), 0U);
    EXPECT_EQ(invalid_utf8("\xF0\x8F\xBF\xBF"), 0U);
    EXPECT_EQ(invalid_utf8("\xED\xA0\x80"), 0U);
    EXPECT_EQ(invalid_utf8("\xF4\x90\x80\x80"), 0U);
    EXPECT_EQ(invalid_utf8("\xF5\x80\x80\x80"), 0U);
}

TEST(CountCharacters, CountsCharactersAndNotBytes) {
    EXPECT_EQ(count_characters(""), 0U);
    EXPECT_EQ(count_characters("Fuß ½"), 5U);
}

TEST(NearestWord, FindsOneSlip) {
    const std::vector<std::string> colours = {"red", "scarlet", "dark blue"};
    EXPECT_EQ(nearest("scarlte", colours), "scarlet");
    EXPECT_EQ(nearest("SCARLETT", colours), "scarlet");
    EXPECT_EQ(nearest("dark bleu", colours), "dark blue");
    EXPECT_EQ(nearest("rde", colours), "red");
}

TEST(NearestWord, SaysNothingWhereNothingIsNear) {
    EXPECT_FALSE(nearest("mauve", {"red", "scarlet"}));
    EXPECT_FALSE(nearest("x", {"a", "b"}));
    EXPECT_FALSE(nearest("", {"a"}));
    EXPECT_FALSE(nearest("red", {}));
    EXPECT_FALSE(nearest(std::string(100'000, 'x'), {std::string(99'999, 'x')}));
}

TEST(NearestWord, TakesTheFirstOfEqualOnes) {
    EXPECT_EQ(nearest("cuff", {"cuffs", "cuffe"}), "cuffs");
    EXPECT_EQ(nearest("cuff", {"cuffe", "cuffs"}), "cuffe");
}

TEST(OrList, JoinsWithCommasAndOr) {
    EXPECT_EQ(or_list({}), "");
    EXPECT_EQ(or_list(std::vector<std::string>{"a"}), "a");
    EXPECT_EQ(or_list(std::vector<std::string>{"a", "b"}), "a or b");
    EXPECT_EQ(or_list(std::vector<std::string>{"a", "b", "c"}), "a, b or c");
}

TEST(FormatNumber, WritesNoMoreThanNeeded) {
    EXPECT_EQ(format_number(0, 3), "0");
    EXPECT_EQ(format_number(1.5, 3), "1.5");
    EXPECT_EQ(format_number(100, 3), "100");
    EXPECT_EQ(format_number(-2.25, 3), "-2.25");
    EXPECT_EQ(format_number(0.001, 3), "0.001");
    EXPECT_EQ(format_number(0.05, 2), "0.05");
    EXPECT_EQ(format_number(123456.789, 3), "123456.789");
    EXPECT_EQ(format_number(1.9996, 3), "2");
    EXPECT_EQ(format_number(2.5, 0), "3");
}

TEST(FormatNumber, NeverWritesAMinusBeforeNothing) {
    EXPECT_EQ(format_number(-0.0, 3), "0");
    EXPECT_EQ(format_number(-0.0004, 3), "0");
    EXPECT_EQ(format_number(-0.0006, 3), "-0.001");
}

TEST(FormatNumber, CopesWithNumbersOfAnySize) {
    EXPECT_EQ(format_number(1e18, 3), "1000000000000000000");
    EXPECT_EQ(format_number(-1e18, 3), "-1000000000000000000");
    EXPECT_EQ(format_number(std::numeric_limits<double>::max(), 9).size(), 309U);
    EXPECT_EQ(format_number(std::numeric_limits<double>::denorm_min(), 9), "0");
    EXPECT_EQ(format_number(std::numeric_limits<double>::infinity(), 3), "0");
    EXPECT_EQ(format_number(std::nan(""), 3), "0");
}

TEST(FormatNumber, ReadsBackAsTheRoundedNumber) {
    for (int i = -50'000; i < 50'000; ++i) {
        const double value = i / 1000.0;
        EXPECT_DOUBLE_EQ(std::stod(format_number(value, 3)), value);
    }
}

TEST(AppendNumber, Appends) {
    std::string text = "M ";
    append_number(text, 1.25, 2);
    EXPECT_EQ(text, "M 1.25");
}

TEST(Lower, ChangesOnlyAsciiLetters) {
    EXPECT_EQ(lower("Dark BLUE Ü"), "dark blue Ü");
}

TEST(Trim, TakesBlanksOffBothEnds) {
    EXPECT_EQ(trim(" \t a b\r\n"), "a b");
    EXPECT_EQ(trim(" \n"), "");
    EXPECT_EQ(trim(""), "");
}

TEST(Split, KeepsEmptyParts) {
    EXPECT_EQ(split("a|b", '|'), (std::vector<std::string_view>{"a", "b"}));
    EXPECT_EQ(split("|a||", '|'), (std::vector<std::string_view>{"", "a", "", ""}));
    EXPECT_EQ(split("", '|'), (std::vector<std::string_view>{""}));
}

TEST(WithCapital, KnowsLettersOfWesternEurope) {
    EXPECT_EQ(with_capital("gaiter"), "Gaiter");
    EXPECT_EQ(with_capital("écharpe"), "Écharpe");
    EXPECT_EQ(with_capital("ärmel"), "Ärmel");
    EXPECT_EQ(with_capital("÷"), "÷");
    EXPECT_EQ(with_capital("ÿ"), "ÿ");
    EXPECT_EQ(with_capital("3 coats"), "3 coats");
    EXPECT_EQ(with_capital(""), "");
}

}  // namespace
}  // namespace platewright
