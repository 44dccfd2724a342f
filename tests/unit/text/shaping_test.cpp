// SPDX-License-Identifier: MIT
// Placed glyphs and the text they stand for.
#include "text/shaping.h"

#include <gtest/gtest.h>

#include <cstdlib>

namespace platewright {
namespace {

constexpr Type kTenMm = {Face::roman, 10, 0};

/// Every byte and every glyph belongs to one cluster.
void expect_whole(const Line& line, std::string_view words) {
    std::size_t bytes = 0;
    for (const Run& run : line.runs) {
        std::size_t in_clusters = 0;
        std::size_t glyphs = 0;
        for (const Cluster& cluster : run.clusters) {
            EXPECT_GT(cluster.byte_count, 0);
            EXPECT_GE(cluster.glyph_count, 0);
            in_clusters += static_cast<std::size_t>(cluster.byte_count);
            glyphs += static_cast<std::size_t>(cluster.glyph_count);
        }
        EXPECT_EQ(in_clusters, run.words.size());
        EXPECT_EQ(glyphs, run.glyphs.size());
        bytes += run.words.size();
    }
    EXPECT_EQ(bytes, words.size()) << words;
}

TEST(Shape, ClustersCoverTheText) {
    const Typesetter type;
    for (const char* words : {"coat",
                              "officer",
                              "Füsilier",
                              "f\u0301i",
                              "Шапка и кафтан",
                              "שלום עולם.",
                              "السلام",
                              "coat שלום coat",
                              "軍服",
                              "\U0001F3A9\u200d\U0001F3A9"}) {
        expect_whole(shape(type, words, kTenMm), words);
        expect_whole(shape(type, words, {Face::italic, 4, 0.3}), words);
    }
}

/// The numbers of the glyphs of a line of one run.
std::vector<std::uint32_t> ids(const Line& line) {
    std::vector<std::uint32_t> made;
    for (const Glyph& glyph : line.runs.at(0).glyphs) {
        made.push_back(glyph.id);
    }
    return made;
}

// The family makes its ligatures of one glyph for each letter, drawn to fit together.
TEST(Shape, JoinsLettersUnlessTheyAreSpaced) {
    const Typesetter type;
    const std::uint32_t i = ids(shape(type, "i", kTenMm)).at(0);
    EXPECT_NE(ids(shape(type, "ffi", kTenMm)).back(), i);
    EXPECT_EQ(ids(shape(type, "ffi", {Face::roman, 10, 0.1})).back(), i);
}

TEST(Shape, PutsEachGlyphWhereTheLastOneEnded) {
    const Typesetter type;
    const Line line = shape(type, "Halmgard", kTenMm);
    double x = 0;
    for (const Glyph& glyph : line.runs.at(0).glyphs) {
        EXPECT_NEAR(glyph.at.x, x, 1e-9);
        x += glyph.advance;
    }
    EXPECT_NEAR(line.width, x, 1e-9);
}

TEST(Shape, KnowsTextThatRunsLeftward) {
    const Typesetter type;
    EXPECT_FALSE(shape(type, "coat", kTenMm).right_to_left);
    const Line line = shape(type, "שלום", kTenMm);
    EXPECT_TRUE(line.right_to_left);
    ASSERT_EQ(line.runs.size(), 1U);
    EXPECT_TRUE(line.runs[0].backward);
}

TEST(Shape, SaysWhichFaceItTook) {
    const Typesetter type;
    EXPECT_EQ(shape(type, "7", {Face::bold, 4, 0}).face, Face::bold);
    EXPECT_EQ(shape(type, "Ж", {Face::bold, 4, 0}).face, Face::roman);
    EXPECT_EQ(shape(type, "Ж", {Face::italic, 4, 0}).face, Face::italic);
}

TEST(Shape, TakesTheFaceAndNoOtherOfTheFamily) {
    const Typesetter type;
    for (const Face face : {Face::roman,
                            Face::italic,
                            Face::small_caps,
                            Face::bold,
                            Face::roman_small,
                            Face::italic_small}) {
        const Line line = shape(type, "Coat", {face, 4, 0});
        ASSERT_EQ(line.runs.size(), 1U);
        EXPECT_EQ(font_file(line.runs[0]), font_file(type, face));
    }
}

TEST(Shape, SurvivesAnyBytes) {
    const Typesetter type;
    std::srand(7);
    for (int round = 0; round < 300; ++round) {
        std::string words;
        for (int i = 0; i < 40; ++i) {
            words += static_cast<char>(std::rand() % 256);
        }
        expect_whole(shape(type, words, kTenMm), printable(words));
    }
}

TEST(Printable, LeavesGoodTextAlone) {
    EXPECT_EQ(printable("Füsilier, № 4 – „Hut“"), "Füsilier, № 4 – „Hut“");
}

TEST(Printable, ReplacesWhatNoFormatHolds) {
    EXPECT_EQ(printable("a\x01\x7F\xC2\x85z"), "a   z");
    EXPECT_EQ(printable("a\nb"), "a b");
    EXPECT_EQ(printable("a\nb\tc", true), "a\nb c");
    EXPECT_EQ(printable("\xC3"), "\uFFFD");
    EXPECT_EQ(printable("\xC0\x80"), "\uFFFD\uFFFD");
    EXPECT_EQ(printable("\xEF\xBF\xBE"), " ");
    EXPECT_EQ(printable("\u2028"), " ");
}

TEST(Printable, CutsBetweenCharacters) {
    const std::string cut = printable(std::string(kSetBytes - 1, 'a') + "ü");
    EXPECT_EQ(cut, std::string(kSetBytes - 1, 'a'));
}

}  // namespace
}  // namespace platewright
