// SPDX-License-Identifier: MIT
// Cutting font files down, by HarfBuzz.
#include "text/subset.h"

#include <hb-ot.h>
#include <hb-subset.h>

#include <array>
#include <cmath>
#include <memory>

namespace platewright {

namespace {

struct HarfbuzzRelease {
    void operator()(hb_blob_t* blob) const { hb_blob_destroy(blob); }

    void operator()(hb_face_t* face) const { hb_face_destroy(face); }

    void operator()(hb_font_t* font) const { hb_font_destroy(font); }

    void operator()(hb_subset_input_t* input) const { hb_subset_input_destroy(input); }

    void operator()(hb_subset_plan_t* plan) const { hb_subset_plan_destroy(plan); }

    void operator()(hb_draw_funcs_t* funcs) const { hb_draw_funcs_destroy(funcs); }
};

template <typename T>
using Owned = std::unique_ptr<T, HarfbuzzRelease>;

constexpr hb_tag_t kCff = HB_TAG('C', 'F', 'F', ' ');
constexpr hb_tag_t kGlyf = HB_TAG('g', 'l', 'y', 'f');

std::string bytes_of(hb_blob_t* blob) {
    unsigned int count = 0;
    const char* data = hb_blob_get_data(blob, &count);
    return {data, count};
}

std::string table(hb_face_t* face, hb_tag_t tag) {
    return bytes_of(Owned<hb_blob_t>(hb_face_reference_table(face, tag)).get());
}

Owned<hb_font_t> font_of(hb_face_t* face) {
    return Owned<hb_font_t>(hb_font_create(face));
}

int thousandths(double units, hb_face_t* face) {
    return static_cast<int>(std::lround(units * 1000 / hb_face_get_upem(face)));
}

int metric(hb_font_t* font, hb_ot_metrics_tag_t tag, int otherwise) {
    hb_position_t value = 0;
    const bool found = hb_ot_metrics_get_position(font, tag, &value) != 0;
    return found ? thousandths(value, hb_font_get_face(font)) : otherwise;
}

std::string name_of(hb_face_t* face) {
    std::array<char, 128> text{};
    auto size = static_cast<unsigned int>(text.size());
    hb_ot_name_get_utf8(
        face, HB_OT_NAME_ID_POSTSCRIPT_NAME, HB_LANGUAGE_INVALID, &size, text.data());
    // The name is written into a PDF as it is.
    std::string made;
    for (const char c : std::string(text.data())) {
        const bool plain =
            (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-';
        made += plain ? std::string(1, c) : std::string();
    }
    return made.empty() ? "Font" : made;
}

/// The box of the whole face, from its `head` table.
void read_box(hb_face_t* face, EmbeddedFont& to) {
    const std::string head = table(face, HB_TAG('h', 'e', 'a', 'd'));
    const std::size_t box_at = 36;
    if (head.size() < box_at + 8) {
        return;
    }
    const auto read = [&](std::size_t index) {
        const auto high = static_cast<unsigned char>(head[box_at + 2 * index]);
        const auto low = static_cast<unsigned char>(head[box_at + 2 * index + 1]);
        return thousandths(static_cast<std::int16_t>(high << 8U | low), face);
    };
    to.left = read(0);
    to.bottom = read(1);
    to.right = read(2);
    to.top = read(3);
}

void read_measures(hb_face_t* face, EmbeddedFont& to) {
    const Owned<hb_font_t> font = font_of(face);
    to.ascent = metric(font.get(), HB_OT_METRICS_TAG_HORIZONTAL_ASCENDER, 800);
    to.descent = metric(font.get(), HB_OT_METRICS_TAG_HORIZONTAL_DESCENDER, -200);
    to.cap_height = metric(font.get(), HB_OT_METRICS_TAG_CAP_HEIGHT, 650);
    to.italic_angle = static_cast<int>(hb_style_get_value(font.get(), HB_STYLE_TAG_SLANT_ANGLE));
    to.widths.assign(to.number.size(), 0);
    for (const auto& [old_number, new_number] : to.number) {
        if (new_number >= to.widths.size()) {
            to.widths.resize(new_number + 1);
        }
        to.widths[new_number] =
            thousandths(hb_font_get_glyph_h_advance(font.get(), old_number), face);
    }
}

std::map<std::uint32_t, std::uint32_t> numbers_of(const hb_subset_plan_t* plan,
                                                  const std::set<std::uint32_t>& glyphs) {
    const hb_map_t* map = hb_subset_plan_old_to_new_glyph_mapping(plan);
    std::map<std::uint32_t, std::uint32_t> made = {{0, 0}};
    for (const std::uint32_t glyph : glyphs) {
        const hb_codepoint_t number = hb_map_get(map, glyph);
        made[glyph] = number == HB_MAP_VALUE_INVALID ? 0 : number;
    }
    return made;
}

/// Names and tables no viewer of ours asks for.
void leave_out(hb_subset_input_t* input, std::initializer_list<hb_tag_t> tables) {
    hb_set_t* dropped = hb_subset_input_set(input, HB_SUBSET_SETS_DROP_TABLE_TAG);
    for (const hb_tag_t tag : tables) {
        hb_set_add(dropped, tag);
    }
}

}  // namespace

std::optional<EmbeddedFont> embed(hb_face_t* face, const std::set<std::uint32_t>& glyphs) {
    if (hb_ot_var_has_data(face) != 0) {
        return std::nullopt;
    }
    const Owned<hb_subset_input_t> input(hb_subset_input_create_or_fail());
    hb_set_t* kept = hb_subset_input_glyph_set(input.get());
    hb_set_add(kept, 0);
    for (const std::uint32_t glyph : glyphs) {
        hb_set_add(kept, glyph);
    }
    leave_out(input.get(),
              {HB_TAG('G', 'S', 'U', 'B'), HB_TAG('G', 'P', 'O', 'S'), HB_TAG('G', 'D', 'E', 'F')});
    hb_subset_input_set_flags(input.get(),
                              HB_SUBSET_FLAGS_NO_HINTING | HB_SUBSET_FLAGS_NOTDEF_OUTLINE);
    const Owned<hb_subset_plan_t> plan(hb_subset_plan_create_or_fail(face, input.get()));
    const Owned<hb_face_t> cut(plan == nullptr ? nullptr
                                               : hb_subset_plan_execute_or_fail(plan.get()));
    if (cut == nullptr) {
        return std::nullopt;
    }
    EmbeddedFont made;
    made.program = table(cut.get(), kCff);
    made.is_cff = !made.program.empty();
    if (!made.is_cff) {
        if (table(cut.get(), kGlyf).empty()) {
            return std::nullopt;
        }
        made.program = bytes_of(Owned<hb_blob_t>(hb_face_reference_blob(cut.get())).get());
    }
    made.name = name_of(face);
    made.number = numbers_of(plan.get(), glyphs);
    read_box(face, made);
    read_measures(face, made);
    return made;
}

std::string subset_for_web(hb_face_t* face, const std::set<char32_t>& characters, bool lining) {
    const Owned<hb_subset_input_t> input(hb_subset_input_create_or_fail());
    hb_set_t* kept = hb_subset_input_unicode_set(input.get());
    for (const char32_t character : characters) {
        hb_set_add(kept, character);
    }
    hb_set_t* features = hb_subset_input_set(input.get(), HB_SUBSET_SETS_LAYOUT_FEATURE_TAG);
    hb_set_clear(features);
    // What viewers apply unasked; small capitals, swashes and the like would only drag in their
    // glyphs.
    for (const char* name :
         {"kern", "liga", "clig", "calt", "ccmp", "locl", "rlig", "mark", "mkmk"}) {
        hb_set_add(features, hb_tag_from_string(name, -1));
    }
    if (lining) {
        hb_set_add(features, HB_TAG('l', 'n', 'u', 'm'));
    }
    hb_subset_input_set_flags(input.get(),
                              HB_SUBSET_FLAGS_NO_HINTING | HB_SUBSET_FLAGS_NOTDEF_OUTLINE);
    const Owned<hb_face_t> cut(hb_subset_or_fail(face, input.get()));
    if (cut == nullptr) {
        return {};
    }
    return bytes_of(Owned<hb_blob_t>(hb_face_reference_blob(cut.get())).get());
}

namespace {

/// Where an outline goes while it is drawn: the library draws y upward.
struct Outline {
    Path path;
    double scale = 1;

    [[nodiscard]] Point at(float x, float y) const { return {x * scale, -y * scale}; }
};

Outline& outline(void* data) {
    return *static_cast<Outline*>(data);
}

void move_to(
    hb_draw_funcs_t* /*f*/, void* to, hb_draw_state_t* /*s*/, float x, float y, void* /*u*/) {
    outline(to).path.move_to(outline(to).at(x, y));
}

void line_to(
    hb_draw_funcs_t* /*f*/, void* to, hb_draw_state_t* /*s*/, float x, float y, void* /*u*/) {
    outline(to).path.line_to(outline(to).at(x, y));
}

// The library's signature.
// NOLINTNEXTLINE(readability-function-size)
void cubic_to(hb_draw_funcs_t* /*f*/,
              void* to,
              hb_draw_state_t* /*s*/,
              float x1,
              float y1,
              float x2,
              float y2,
              float x,
              float y,
              void* /*u*/) {
    outline(to).path.cubic_to(outline(to).at(x1, y1), outline(to).at(x2, y2), outline(to).at(x, y));
}

void close(hb_draw_funcs_t* /*f*/, void* to, hb_draw_state_t* /*s*/, void* /*u*/) {
    outline(to).path.close();
}

}  // namespace

Path glyph_outline(hb_face_t* face, std::uint32_t glyph) {
    const Owned<hb_draw_funcs_t> funcs(hb_draw_funcs_create());
    hb_draw_funcs_set_move_to_func(funcs.get(), move_to, nullptr, nullptr);
    hb_draw_funcs_set_line_to_func(funcs.get(), line_to, nullptr, nullptr);
    // Quadratic curves arrive as cubic ones.
    hb_draw_funcs_set_cubic_to_func(funcs.get(), cubic_to, nullptr, nullptr);
    hb_draw_funcs_set_close_path_func(funcs.get(), close, nullptr, nullptr);
    Outline drawn;
    drawn.scale = 1.0 / hb_face_get_upem(face);
    hb_font_get_glyph_shape(font_of(face).get(), glyph, funcs.get(), &drawn);
    return std::move(drawn.path);
}

}  // namespace platewright
