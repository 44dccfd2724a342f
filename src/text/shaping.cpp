// SPDX-License-Identifier: MIT
// From the shaping library's lines to placed glyphs.
#include "text/shaping.h"

#include <glib.h>

#include <algorithm>
#include <cmath>

#include "text/engine.h"

namespace platewright {

namespace {

/// Bytes at `at` that stand for one character, or 0 if they are no valid UTF-8.
std::size_t character_bytes(std::string_view words, std::size_t at) {
    if (words[at] == '\0') {
        return 1;  // good UTF-8, though C ends there
    }
    const gunichar character =
        g_utf8_get_char_validated(words.data() + at, static_cast<gssize>(words.size() - at));
    return g_unichar_validate(character) == FALSE
               ? 0
               : static_cast<std::size_t>(g_unichar_to_utf8(character, nullptr));
}

/// Control characters, line and paragraph separators, and what XML forbids.
bool is_control(gunichar character) {
    return character < 0x20 || (character >= 0x7F && character <= 0x9F) || character == 0x2028 ||
           character == 0x2029 || (character & 0xFFFEU) == 0xFFFEU;
}

/// Where glyphs are put, from the library's units.
struct Pen {
    double scale = 0;
    double tracking = 0;
    double x = 0;
};

/// Puts down the glyphs of one cluster, `from` up to `to`; returns how many are drawn.
int place(Run& run, const PangoGlyphString& glyphs, int from, int to, Pen& pen) {
    int drawn = 0;
    for (int i = from; i < to; ++i) {
        const PangoGlyphInfo& info = glyphs.glyphs[i];
        const double advance = info.geometry.width * pen.scale;
        if (info.glyph != PANGO_GLYPH_EMPTY) {
            // A character no font has is shown as the font's own sign for that, number 0.
            const bool unknown = (info.glyph & PANGO_GLYPH_UNKNOWN_FLAG) != 0;
            run.glyphs.push_back(
                {unknown ? 0 : info.glyph,
                 {pen.x + info.geometry.x_offset * pen.scale, info.geometry.y_offset * pen.scale},
                 advance});
            ++drawn;
        }
        pen.x += advance;
    }
    pen.x += pen.tracking;
    return drawn;
}

Run convert(const PangoGlyphItem& item, const char* words, Pen& pen) {
    Run run;
    run.words.assign(words + item.item->offset, static_cast<std::size_t>(item.item->length));
    run.backward = (item.item->analysis.level & 1) != 0;
    run.font.reset(static_cast<PangoFont*>(g_object_ref(item.item->analysis.font)), Unref{});
    const PangoGlyphString& glyphs = *item.glyphs;
    int previous = item.item->length;
    for (int from = 0; from < glyphs.num_glyphs;) {
        const int start = glyphs.log_clusters[from];
        int to = from + 1;
        while (to < glyphs.num_glyphs && glyphs.log_clusters[to] == start) {
            ++to;
        }
        const int end = to < glyphs.num_glyphs ? glyphs.log_clusters[to] : item.item->length;
        const int byte_count = run.backward ? previous - start : end - start;
        run.clusters.push_back({byte_count, place(run, glyphs, from, to, pen)});
        previous = start;
        from = to;
    }
    if (run.backward) {
        std::reverse(run.clusters.begin(), run.clusters.end());
    }
    return run;
}

}  // namespace

std::string printable(std::string_view words, bool keep_lines) {
    std::string made;
    made.reserve(std::min(words.size(), kSetBytes));
    for (std::size_t at = 0; at < words.size();) {
        const std::size_t count = character_bytes(words, at);
        const std::size_t taken = count == 0 ? 1 : count;
        std::string_view piece = words.substr(at, taken);
        if (count == 0) {
            piece = "\xEF\xBF\xBD";
        } else if (keep_lines
                       ? piece != "\n" && is_control(g_utf8_get_char(words.data() + at))
                       : piece == kNoBreakSpace || is_control(g_utf8_get_char(words.data() + at))) {
            piece = " ";
        }
        if (made.size() + piece.size() > kSetBytes) {
            break;
        }
        made += piece;
        at += taken;
    }
    return made;
}

Line shape(const Typesetter& type, std::string_view words, const Type& how) {
    Line made;
    const std::string clean = printable(words);
    if (clean.empty() || !std::isfinite(how.size) || !std::isfinite(how.tracking)) {
        return made;
    }
    Type used = how;
    used.face = type.impl().face_for(clean, how.face);
    made.face = used.face;
    PangoLayout* layout = type.impl().engine_for(clean, used.face).lay_out(clean, used);
    const PangoLayoutLine* line = pango_layout_get_line_readonly(layout, 0);
    made.right_to_left = pango_layout_line_get_resolved_direction(
                             const_cast<PangoLayoutLine*>(line)) == PANGO_DIRECTION_RTL;
    Pen pen{how.size / kUnitsPerEm, how.tracking, 0};
    for (const GSList* at = line->runs; at != nullptr; at = at->next) {
        made.runs.push_back(
            convert(*static_cast<const PangoGlyphItem*>(at->data), clean.data(), pen));
    }
    made.width = pen.x - (made.runs.empty() ? 0 : how.tracking);
    return made;
}

hb_face_t* font_file(const Typesetter& type, Face face) {
    return hb_font_get_face(pango_font_get_hb_font(type.impl().font(face)));
}

hb_face_t* font_file(const Run& run) {
    return hb_font_get_face(pango_font_get_hb_font(run.font.get()));
}

}  // namespace platewright
