// SPDX-License-Identifier: MIT
// Setting up the shaping library.
#include "text/engine.h"

#include <pango/pangofc-fontmap.h>

#include <cmath>
#include <stdexcept>

namespace platewright {

namespace {

/// Characters that are never drawn need no glyph: joiners, directional marks, variation selectors.
bool is_invisible(gunichar character) {
    const GUnicodeType kind = g_unichar_type(character);
    return kind == G_UNICODE_FORMAT || (character >= 0xFE00 && character <= 0xFE0F);
}

bool has_all(PangoFont* font, const std::string& words) {
    hb_font_t* shaper = pango_font_get_hb_font(font);
    const char* end = words.data() + words.size();
    for (const char* at = words.data(); at < end; at = g_utf8_next_char(at)) {
        const gunichar character = g_utf8_get_char(at);
        hb_codepoint_t glyph = 0;
        if (character != '\n' && hb_font_get_nominal_glyph(shaper, character, &glyph) == 0 &&
            !is_invisible(character)) {
            return false;
        }
    }
    return true;
}

std::unique_ptr<PangoFontDescription, Unref> describe(Face face) {
    const FaceName& name = face_name(face);
    std::unique_ptr<PangoFontDescription, Unref> made(pango_font_description_new());
    pango_font_description_set_family(made.get(), std::string(name.family).c_str());
    pango_font_description_set_style(made.get(),
                                     name.italic ? PANGO_STYLE_ITALIC : PANGO_STYLE_NORMAL);
    pango_font_description_set_weight(made.get(),
                                      name.bold ? PANGO_WEIGHT_BOLD : PANGO_WEIGHT_NORMAL);
    pango_font_description_set_absolute_size(made.get(), kUnitsPerEm);
    return made;
}

}  // namespace

Engine::Engine(FcConfig* fonts) : map_(pango_cairo_font_map_new_for_font_type(CAIRO_FONT_TYPE_FT)) {
    if (map_ == nullptr) {
        throw std::runtime_error("cairo was built without FreeType");
    }
    pango_fc_font_map_set_config(PANGO_FC_FONT_MAP(map_.get()), fonts);
    context_.reset(pango_font_map_create_context(map_.get()));
    cairo_font_options_t* options = cairo_font_options_create();
    cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
    cairo_font_options_set_antialias(options, CAIRO_ANTIALIAS_GRAY);
    pango_cairo_context_set_font_options(context_.get(), options);
    cairo_font_options_destroy(options);
    pango_context_set_round_glyph_positions(context_.get(), FALSE);
    // Else the language of the user's session would choose letter forms and line breaks.
    pango_context_set_language(context_.get(), pango_language_from_string("en"));
    pango_context_set_base_dir(context_.get(), PANGO_DIRECTION_LTR);
    layout_.reset(pango_layout_new(context_.get()));
}

PangoLayout* Engine::lay_out(const std::string& words, const Type& how) {
    pango_layout_set_font_description(layout_.get(), describe(how.face).get());
    pango_layout_set_width(layout_.get(), -1);
    const std::unique_ptr<PangoAttrList, Unref> attributes(pango_attr_list_new());
    // Spaced letters must not stick together; SVG viewers do the same.
    std::string features = how.tracking != 0 ? "liga=0, clig=0" : "";
    if (how.lining) {
        features += features.empty() ? "lnum" : ", lnum";
    }
    if (!features.empty()) {
        pango_attr_list_insert(attributes.get(), pango_attr_font_features_new(features.c_str()));
    }
    pango_layout_set_attributes(layout_.get(), attributes.get());
    pango_layout_set_text(layout_.get(), words.data(), static_cast<int>(words.size()));
    return layout_.get();
}

std::unique_ptr<PangoFont, Unref> Engine::load(Face face) {
    std::unique_ptr<PangoFont, Unref> font(
        pango_font_map_load_font(map_.get(), context_.get(), describe(face).get()));
    if (font == nullptr) {
        throw FontsMissing(fonts_missing_message(face_name(face).file));
    }
    return font;
}

Engine& Typesetter::Impl::engine(Face face) {
    std::unique_ptr<Engine>& slot = engines.at(static_cast<std::size_t>(face));
    if (slot == nullptr) {
        slot = std::make_unique<Engine>(face_fonts(face));
    }
    return *slot;
}

PangoFont* Typesetter::Impl::font(Face face) {
    std::unique_ptr<PangoFont, Unref>& slot = fonts.at(static_cast<std::size_t>(face));
    if (slot == nullptr) {
        slot = engine(face).load(face);
    }
    return slot.get();
}

Face Typesetter::Impl::face_for(const std::string& words, Face face) {
    return face == Face::bold && !has_all(font(face), words) ? Face::roman : face;
}

Engine& Typesetter::Impl::engine_for(const std::string& words, Face face) {
    if (has_all(font(face), words)) {
        return engine(face);
    }
    if (system == nullptr) {
        system = std::make_unique<Engine>(system_fonts());
    }
    return *system;
}

}  // namespace platewright
