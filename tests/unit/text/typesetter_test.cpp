// SPDX-License-Identifier: MIT
// Measuring and breaking lines. Expected widths are sums of the advances in the font files (1000
// units to the em).
#include "text/typesetter.h"

#include <gtest/gtest.h>

#include <clocale>
#include <cmath>
#include <limits>
#include <thread>

namespace platewright {
namespace {

constexpr Type kRoman = {Face::roman, 4, 0};

TEST(Width, IsProportionalToTheSize) {
    const Typesetter type;
    for (const Face face : {Face::roman,
                            Face::italic,
                            Face::small_caps,
                            Face::bold,
                            Face::roman_small,
                            Face::italic_small}) {
        const double small = type.width("Varrenau, 1784", {face, 1, 0});
        EXPECT_GT(small, 4);
        EXPECT_NEAR(type.width("Varrenau, 1784", {face, 7.3, 0}), small * 7.3, 1e-9);
    }
}

TEST(Width, OfNothingIsNothing) {
    const Typesetter type;
    EXPECT_EQ(type.width("", kRoman), 0);
    EXPECT_EQ(type.width("coat", {Face::roman, 0, 0}), 0);
    EXPECT_EQ(type.width("coat", {Face::roman, std::numeric_limits<double>::quiet_NaN(), 0}), 0);
}

// The family's own no-break space is half as wide as its space.
TEST(Width, ANoBreakSpaceIsAsWideAsASpace) {
    const Typesetter type;
    EXPECT_EQ(type.width("12\u00a0mm", kRoman), type.width("12 mm", kRoman));
}

TEST(Wrap, NoLineEndsAtANoBreakSpace) {
    const Typesetter type;
    const std::string words = "a row of 12\u00a0mm, 8\u00a0par\u00a0revers, 3\u00a0écus\u00a0";
    for (double width = 16; width < 40; width += 0.5) {
        for (const std::string& line : type.wrap(words, kRoman, width)) {
            EXPECT_FALSE(line.ends_with("12") || line.ends_with("8") || line.ends_with("8 par") ||
                         line.ends_with(" 3"))
                << line;
            EXPECT_LE(type.width(line, kRoman), width) << line;
        }
    }
}

TEST(Width, KernsAndJoinsLetters) {
    const Typesetter type;
    EXPECT_LT(type.width("AV", kRoman), type.width("A", kRoman) + type.width("V", kRoman) - 0.2);
    EXPECT_NE(type.width("ffi", kRoman), type.width("f", kRoman) * 2 + type.width("i", kRoman));
}

TEST(Width, TrackingStandsBetweenLettersOnlyAndPartsLigatures) {
    const Typesetter type;
    const double plain = type.width("HUT", kRoman);
    EXPECT_NEAR(type.width("HUT", {Face::roman, 4, 0.5}), plain + 2 * 0.5, 1e-9);
    EXPECT_NEAR(
        type.width("ffi", {Face::roman, 4, 1e-9}), type.width("f\u200cf\u200ci", kRoman), 0.02);
}

TEST(Width, FacesDiffer) {
    const Typesetter type;
    EXPECT_NE(type.width("coat", {Face::roman, 4, 0}), type.width("coat", {Face::italic, 4, 0}));
    EXPECT_NE(type.width("coat", {Face::roman, 4, 0}), type.width("coat", {Face::bold, 4, 0}));
    EXPECT_NE(type.width("coat", {Face::roman, 4, 0}),
              type.width("coat", {Face::roman_small, 4, 0}));
    EXPECT_GT(type.width("coat", {Face::small_caps, 4, 0}),
              type.width("coat", {Face::roman, 4, 0}));
}

TEST(Width, WordsTheBoldFaceLacksAreSetInRoman) {
    const Typesetter type;
    EXPECT_EQ(type.width("Шапка", {Face::bold, 4, 0}), type.width("Шапка", kRoman));
}

TEST(Width, OtherScriptsAreSetToo) {
    const Typesetter type;
    for (const char* words : {"Шапка", "Ἀχιλλεύς", "שלום", "السلام", "軍服", "\U0001F3A9"}) {
        EXPECT_GT(type.width(words, kRoman), 1) << words;
        EXPECT_LT(type.width(words, kRoman), 60) << words;
    }
}

TEST(Width, BadBytesAndControlCharactersAreSetAsOneCharacterEach) {
    const Typesetter type;
    EXPECT_EQ(type.width("a\xFFz", kRoman), type.width("a\uFFFDz", kRoman));
    EXPECT_EQ(type.width(std::string_view("a\0z", 3), kRoman), type.width("a z", kRoman));
    EXPECT_EQ(type.width("a\tz\n", kRoman), type.width("a z ", kRoman));
    EXPECT_EQ(type.width("\xED\xA0\x80", kRoman), type.width("\uFFFD\uFFFD\uFFFD", kRoman));
}

TEST(Width, OfAHugeStringIsFinite) {
    const Typesetter type;
    const double most = type.width(std::string(5'000'000, 'W'), kRoman);
    EXPECT_NEAR(most, 16 * 1024 * type.width("W", kRoman), most * 0.1);
}

TEST(Width, DoesNotAskTheLocale) {
    const Typesetter before;
    const double plain = before.width("Füßen 1,5", kRoman);
    std::setlocale(LC_ALL, "C.UTF-8");
    const Typesetter after;
    EXPECT_EQ(after.width("Füßen 1,5", kRoman), plain);
    std::setlocale(LC_ALL, "C");
}

TEST(Width, IsTheSameInEveryThread) {
    const double expected = Typesetter().width("The officer’s coat", kRoman);
    std::vector<double> found(4);
    std::vector<std::thread> threads;
    threads.reserve(found.size());
    for (double& width : found) {
        threads.emplace_back(
            [&width] { width = Typesetter().width("The officer’s coat", kRoman); });
    }
    for (std::thread& thread : threads) {
        thread.join();
    }
    EXPECT_EQ(found, std::vector<double>(4, expected));
}

TEST(Measures, AreThoseOfTheFontFile) {
    const Typesetter type;
    const LineMeasures found = type.measures(kRoman);
    // EB Garamond 12: a regular x of 400 to 405 thousandths, letters within one em of line.
    EXPECT_NEAR(found.x_height, 4 * 0.4, 0.05);
    EXPECT_GT(found.ascent, 4 * 0.65);
    EXPECT_LT(found.ascent, 4 * 1.1);
    EXPECT_GT(found.descent, 4 * 0.2);
    EXPECT_LT(found.descent, 4 * 0.5);
    EXPECT_NEAR(type.measures({Face::roman, 8, 0}).x_height, found.x_height * 2, 1e-9);
}

TEST(Wrap, GivesLinesThatFit) {
    const Typesetter type;
    const std::string words =
        "Coat of dark green cloth, lapels, cuffs and collar buff; the lining is buff as well.";
    for (const double width : {12.0, 20.0, 33.3, 200.0}) {
        std::string joined;
        for (const std::string& line : type.wrap(words, kRoman, width)) {
            EXPECT_LE(type.width(line, kRoman), width + 1e-6) << line;
            joined += (joined.empty() ? "" : " ") + line;
        }
        EXPECT_EQ(joined, words);
    }
}

TEST(Wrap, FillsEachLineAsFarAsItGoes) {
    const Typesetter type;
    const double width = type.width("Coat of dark", kRoman);
    EXPECT_EQ(type.wrap("Coat of dark green", kRoman, width + 0.01),
              (std::vector<std::string>{"Coat of dark", "green"}));
    EXPECT_EQ(type.wrap("Coat of dark green", kRoman, width - 0.01),
              (std::vector<std::string>{"Coat of", "dark green"}));
}

TEST(Wrap, BreaksAWordThatIsTooLong) {
    const Typesetter type;
    const std::vector<std::string> lines = type.wrap("Grenadierbataillonskommandeur", kRoman, 15);
    ASSERT_GT(lines.size(), 2U);
    std::string joined;
    for (const std::string& line : lines) {
        EXPECT_LE(type.width(line, kRoman), 15 + 0.2) << line;
        joined += line;
    }
    EXPECT_EQ(joined, "Grenadierbataillonskommandeur");
}

TEST(Wrap, KeepsLineFeedsAndDropsSpaceAtTheEnds) {
    const Typesetter type;
    EXPECT_EQ(type.wrap("coat \n  hat", kRoman, 100), (std::vector<std::string>{"coat", "hat"}));
    EXPECT_EQ(type.wrap("  \n ", kRoman, 100), std::vector<std::string>());
    EXPECT_EQ(type.wrap("", kRoman, 100), std::vector<std::string>());
}

TEST(Wrap, CountsTheTracking) {
    const Typesetter type;
    const Type spaced = {Face::small_caps, 4, 1};
    for (const std::string& line : type.wrap("Regiment of foot, second battalion", spaced, 40)) {
        EXPECT_LE(type.width(line, spaced), 40 + 1e-6) << line;
    }
}

TEST(Wrap, GivesALetterALineWhereNothingFits) {
    const Typesetter type;
    EXPECT_EQ(type.wrap("hat", kRoman, 0), (std::vector<std::string>{"h", "a", "t"}));
    EXPECT_EQ(type.wrap("hat", kRoman, -5), (std::vector<std::string>{"h", "a", "t"}));
    EXPECT_EQ(type.wrap("hat", kRoman, std::numeric_limits<double>::infinity()),
              (std::vector<std::string>{"hat"}));
}

TEST(Wrap, OfAHugeStringEnds) {
    const Typesetter type;
    EXPECT_GT(type.wrap(std::string(1'000'000, 'W'), kRoman, 50).size(), 100U);
}

}  // namespace
}  // namespace platewright
