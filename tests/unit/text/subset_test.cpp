// SPDX-License-Identifier: MIT
// Font files cut down to what is used.
#include "text/subset.h"

#include <gtest/gtest.h>
#include <hb.h>

#include <cmath>

#include "text/shaping.h"

namespace platewright {
namespace {

std::set<std::uint32_t> glyphs_of(const Line& line) {
    std::set<std::uint32_t> made;
    for (const Glyph& glyph : line.runs.at(0).glyphs) {
        made.insert(glyph.id);
    }
    return made;
}

TEST(Embed, KeepsOnlyTheGlyphsUsedWithTheirWidths) {
    const Typesetter type;
    const Line line = shape(type, "Coat", {Face::roman, 1000, 0});
    const std::optional<EmbeddedFont> font = embed(font_file(type, Face::roman), glyphs_of(line));
    ASSERT_TRUE(font.has_value());
    EXPECT_TRUE(font->is_cff);
    EXPECT_EQ(font->name, "EBGaramond12-Regular");
    EXPECT_EQ(font->number.size(), 5U);
    EXPECT_EQ(font->number.at(0), 0U);
    EXPECT_EQ(font->widths.size(), 5U);
    EXPECT_LT(font->program.size(), 3000U);
    for (const char* letter : {"C", "o", "a", "t"}) {
        const Line alone = shape(type, letter, {Face::roman, 1000, 0});
        const std::uint32_t glyph = alone.runs.at(0).glyphs.at(0).id;
        EXPECT_EQ(font->widths.at(font->number.at(glyph)), std::lround(alone.width)) << letter;
    }
    EXPECT_LT(font->left, 0);
    EXPECT_GT(font->top, 700);
    EXPECT_LT(font->bottom, -200);
    EXPECT_GT(font->ascent, 0);
    EXPECT_LT(font->descent, 0);
}

TEST(Embed, KnowsTheSlopeOfItalics) {
    const Typesetter type;
    const Line line = shape(type, "Coat", {Face::italic, 4, 0});
    EXPECT_LT(embed(font_file(type, Face::italic), glyphs_of(line))->italic_angle, -5);
}

TEST(SubsetForWeb, KeepsCharactersKerningAndLigatures) {
    const Typesetter type;
    std::set<char32_t> characters;
    for (const char c : std::string("AVofficer")) {
        characters.insert(static_cast<char32_t>(c));
    }
    const std::string file = subset_for_web(font_file(type, Face::roman), characters);
    ASSERT_GT(file.size(), 1000U);
    EXPECT_LT(file.size(), 12'000U);
    hb_blob_t* blob = hb_blob_create(file.data(),
                                     static_cast<unsigned int>(file.size()),
                                     HB_MEMORY_MODE_READONLY,
                                     nullptr,
                                     nullptr);
    hb_face_t* face = hb_face_create(blob, 0);
    hb_font_t* font = hb_font_create(face);
    const auto shaped = [font](const char* words) {
        hb_buffer_t* buffer = hb_buffer_create();
        hb_buffer_add_utf8(buffer, words, -1, 0, -1);
        hb_buffer_guess_segment_properties(buffer);
        hb_shape(font, buffer, nullptr, 0);
        unsigned int count = 0;
        const hb_glyph_position_t* at = hb_buffer_get_glyph_positions(buffer, &count);
        int sum = 0;
        for (unsigned int i = 0; i < count; ++i) {
            sum += at[i].x_advance;
        }
        hb_buffer_destroy(buffer);
        return sum;
    };
    const auto width = [&type](const char* word) {
        return type.width(word, {Face::roman, 1000, 0});
    };
    EXPECT_LT(shaped("AV"), width("A") + width("V") - 50);
    EXPECT_NE(shaped("ffi"), std::lround(2 * width("f") + width("i")));
    for (const char* words : {"officer", "AV", "coife"}) {
        EXPECT_NEAR(shaped(words), width(words), 1) << words;
    }
    hb_codepoint_t glyph = 0;
    EXPECT_EQ(hb_font_get_nominal_glyph(font, 'z', &glyph), 0);
    hb_font_destroy(font);
    hb_face_destroy(face);
    hb_blob_destroy(blob);
}

TEST(GlyphOutline, HasTheEmForItsUnit) {
    const Typesetter type;
    const Line line = shape(type, "H", {Face::roman, 1, 0});
    const Rect box =
        glyph_outline(font_file(type, Face::roman), line.runs.at(0).glyphs.at(0).id).bounds();
    EXPECT_NEAR(box.bottom, 0, 0.02);
    EXPECT_NEAR(box.top, -0.65, 0.05);
    EXPECT_LE(box.width(), line.width);
}

}  // namespace
}  // namespace platewright
