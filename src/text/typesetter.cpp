// SPDX-License-Identifier: MIT
// Measuring and breaking lines.
#include "text/typesetter.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "base/text.h"
#include "text/engine.h"
#include "text/shaping.h"

namespace platewright {

Typesetter::Typesetter() : impl_(std::make_unique<Impl>()) {
    // A missing family is found out here and not in the middle of a page.
    for (const FaceName& name : face_names()) {
        find_font_file(name);
    }
}

Typesetter::~Typesetter() = default;

double Typesetter::width(std::string_view words, const Type& type) const {
    return shape(*this, words, type).width;
}

LineMeasures Typesetter::measures(const Type& type) const {
    hb_font_t* font = pango_font_get_hb_font(impl_->font(type.face));
    int across = 0;
    int up = 0;
    hb_font_get_scale(font, &across, &up);
    hb_font_extents_t line{};
    hb_font_get_h_extents(font, &line);
    hb_codepoint_t letter = 0;
    hb_glyph_extents_t box{};
    hb_font_get_nominal_glyph(font, 'x', &letter);
    hb_font_get_glyph_extents(font, letter, &box);
    const double scale = type.size / up;
    return {line.ascender * scale, -line.descender * scale, box.y_bearing * scale};
}

std::vector<std::string> Typesetter::wrap(std::string_view words,
                                          const Type& type,
                                          double width) const {
    std::vector<std::string> lines;
    const std::string clean = printable(words, true);
    if (trim(clean).empty() || !(type.size > 0) || std::isnan(width)) {
        return lines;
    }
    Type used = type;
    used.face = impl_->face_for(clean, type.face);
    PangoLayout* layout = impl_->engine_for(clean, used.face).lay_out(clean, used);
    // The library adds half of the spacing before and half behind each letter: in all the same.
    PangoAttrList* attributes = pango_layout_get_attributes(layout);
    pango_attr_list_insert(
        attributes,
        pango_attr_letter_spacing_new(static_cast<int>(type.tracking / type.size * kUnitsPerEm)));
    pango_layout_set_attributes(layout, attributes);
    const double units = std::floor(width / type.size * kUnitsPerEm);
    constexpr double most = std::numeric_limits<int>::max() / 2.0;
    pango_layout_set_wrap(layout, PANGO_WRAP_WORD_CHAR);
    pango_layout_set_width(layout, static_cast<int>(std::clamp(units, 0.0, most)));
    for (const GSList* at = pango_layout_get_lines_readonly(layout); at != nullptr; at = at->next) {
        const auto* line = static_cast<const PangoLayoutLine*>(at->data);
        lines.emplace_back(trim(std::string_view(clean).substr(
            static_cast<std::size_t>(line->start_index), static_cast<std::size_t>(line->length))));
    }
    return lines;
}

}  // namespace platewright
