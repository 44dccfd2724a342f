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

namespace {

/// Makes no-break spaces plain ones and gives their places. The family's own is so narrow that
/// numbers run into their units.
std::vector<std::size_t> take_no_break_spaces(std::string& clean) {
    std::vector<std::size_t> places;
    for (std::size_t at = clean.find(kNoBreakSpace); at != std::string::npos;
         at = clean.find(kNoBreakSpace, at + 1)) {
        clean.replace(at, kNoBreakSpace.size(), " ");
        places.push_back(at);
    }
    return places;
}

/// No line may end between that place and the character behind it.
PangoAttribute* unbroken(const std::string& clean, std::size_t place) {
    const char* behind = clean.c_str() + std::min(place + 1, clean.size());
    const char* end = *behind == '\0' ? behind : g_utf8_next_char(behind);
    PangoAttribute* made = pango_attr_allow_breaks_new(FALSE);
    made->start_index = static_cast<guint>(place);
    made->end_index = static_cast<guint>(end - clean.c_str());
    return made;
}

/// Breaks `clean` at that width; `mode` says whether words may be broken inside. Each line as it
/// stands in `clean`, without white space at its ends.
std::vector<std::string> broken(
    Typesetter::Impl& impl, std::string clean, const Type& type, double width, PangoWrapMode mode) {
    Type used = type;
    used.face = impl.face_for(clean, type.face);
    const std::vector<std::size_t> joints = take_no_break_spaces(clean);
    PangoLayout* layout = impl.engine_for(clean, used.face).lay_out(clean, used);
    PangoAttrList* attributes = pango_layout_get_attributes(layout);
    for (const std::size_t joint : joints) {
        pango_attr_list_insert(attributes, unbroken(clean, joint));
    }
    // The library adds half of the spacing before and half behind each letter: in all the same.
    pango_attr_list_insert(
        attributes,
        pango_attr_letter_spacing_new(static_cast<int>(type.tracking / type.size * kUnitsPerEm)));
    pango_layout_set_attributes(layout, attributes);
    const double units = std::floor(width / type.size * kUnitsPerEm);
    constexpr double most = std::numeric_limits<int>::max() / 2.0;
    pango_layout_set_wrap(layout, mode);
    pango_layout_set_width(layout, static_cast<int>(std::clamp(units, 0.0, most)));
    std::vector<std::string> lines;
    for (const GSList* at = pango_layout_get_lines_readonly(layout); at != nullptr; at = at->next) {
        const auto* line = static_cast<const PangoLayoutLine*>(at->data);
        lines.emplace_back(trim(std::string_view(clean).substr(
            static_cast<std::size_t>(line->start_index), static_cast<std::size_t>(line->length))));
    }
    return lines;
}

bool can_be_set(const std::string& clean, const Type& type, double width) {
    return !trim(clean).empty() && type.size > 0 && !std::isnan(width);
}

/// A soft hyphen at the end of a line becomes a hyphen, all others go.
void harden(std::string& line) {
    const bool parted = line.ends_with(kSoftHyphen);
    for (std::size_t at = line.find(kSoftHyphen); at != std::string::npos;
         at = line.find(kSoftHyphen, at)) {
        line.erase(at, kSoftHyphen.size());
    }
    line += parted ? "-" : "";
}

}  // namespace

std::vector<std::string> Typesetter::wrap(std::string_view words,
                                          const Type& type,
                                          double width) const {
    const std::string clean = printable(words, true);
    if (!can_be_set(clean, type, width)) {
        return {};
    }
    return broken(*impl_, clean, type, width, PANGO_WRAP_WORD_CHAR);
}

std::vector<std::string> Typesetter::wrap(std::string_view words,
                                          const Type& type,
                                          double width,
                                          std::string_view language) const {
    const std::string clean = printable(words, true);
    if (!can_be_set(clean, type, width)) {
        return {};
    }
    const std::string soft = impl_->hyphenation.soften(clean, language);
    // Soft hyphens part ligatures and kerned pairs, so that a line may come out longer without
    // them; then it is broken again for a little less room.
    double room = width;
    constexpr int tries = 3;
    std::vector<std::string> lines;
    for (int i = 0; i < tries; ++i) {
        lines = broken(*impl_, soft, type, room, PANGO_WRAP_WORD_CHAR);
        double longest = 0;
        for (std::string& line : lines) {
            harden(line);
            longest = std::max(longest, this->width(line, type));
        }
        if (longest <= width || longest - width > type.size) {
            break;
        }
        room -= longest - width + 1e-3;
    }
    return lines;
}

double Typesetter::least_width(std::string_view words,
                               const Type& type,
                               std::string_view language) const {
    const std::string clean = printable(words, true);
    double longest = 0;
    if (can_be_set(clean, type, 0)) {
        const std::string soft = impl_->hyphenation.soften(clean, language);
        for (std::string& piece : broken(*impl_, soft, type, 0, PANGO_WRAP_WORD)) {
            harden(piece);
            longest = std::max(longest, width(piece, type));
        }
    }
    return longest;
}

bool Typesetter::runs_leftward(std::string_view words) const {
    return shape(*this, words, {}).right_to_left;
}

}  // namespace platewright
