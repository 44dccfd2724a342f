// SPDX-License-Identifier: MIT
// A line of type as placed glyphs: what `Typesetter` measures and the writers draw. For `text/` and
// `write/` only.
#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "text/typesetter.h"

// The shaping libraries' types are only named here, so that nobody needs their headers to read this
// one.
/// HarfBuzz's font file and Pango's font.
struct hb_face_t;
struct _PangoFont;  // NOLINT(bugprone-reserved-identifier): the library's own name

namespace platewright {

/// A glyph put down on the line. Units: mm from the start of the baseline, y downward, for the size
/// that was asked.
struct Glyph {
    std::uint32_t id = 0;
    Point at;
    double advance = 0;
};

/// The smallest piece of text that can be selected: some bytes and the glyphs that stand for them.
struct Cluster {
    int byte_count = 0;
    int glyph_count = 0;
};

/// Glyphs of one font, left to right on the page. Clusters are in the order of the text, which is
/// the reverse of the glyphs' where `backward`.
struct Run {
    std::string words;
    std::vector<Glyph> glyphs;
    std::vector<Cluster> clusters;
    bool backward = false;
    std::shared_ptr<_PangoFont> font;
};

/// One shaped line.
struct Line {
    std::vector<Run> runs;
    /// mm, without the tracking after the last letter.
    double width = 0;
    /// The first letter with a direction runs leftward: full stops and brackets go by it.
    bool right_to_left = false;
    /// The face it is set in: roman for words that the bold face lacks letters for.
    Face face = Face::roman;
};

/// Bytes that are set of any one string.
inline constexpr std::size_t kSetBytes = 16'384;

/// Keeps two words on one line.
inline constexpr std::string_view kNoBreakSpace = "\u00a0";

/// Text that every format can hold: valid UTF-8 of at most kSetBytes; bad bytes become U+FFFD,
/// control characters, line ends and tabs a space, and so do no-break spaces, which are narrower in
/// the family. `keep_lines`, for what is still to be broken, leaves line feeds and those alone.
std::string printable(std::string_view words, bool keep_lines = false);

/// Shapes one line.
Line shape(const Typesetter& type, std::string_view words, const Type& how);

/// The font file behind a face; lives as long as `type`.
hb_face_t* font_file(const Typesetter& type, Face face);

/// The font file behind a run; lives as long as the run.
hb_face_t* font_file(const Run& run);

}  // namespace platewright
