// SPDX-License-Identifier: MIT
// Font files cut down to what a document uses. For `write/` only.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "base/geometry.h"

/// HarfBuzz's font file.
struct hb_face_t;

namespace platewright {

/// A font for embedding in a PDF. Lengths are thousandths of the em, y upward.
struct EmbeddedFont {
    std::string name;
    /// `program` is a bare CFF table; else it is a whole TrueType file.
    bool is_cff = true;
    std::string program;
    /// Number of each glyph in `program`, by its number in the face. Glyph 0 is always there.
    std::map<std::uint32_t, std::uint32_t> number;
    /// Advance widths by number in `program`.
    std::vector<int> widths;
    int left = 0;
    int bottom = 0;
    int right = 0;
    int top = 0;
    int ascent = 0;
    int descent = 0;
    int cap_height = 0;
    int italic_angle = 0;
};

/// Only those glyphs of the face, without its shaping tables; nothing for fonts made of pixels or
/// with variations.
std::optional<EmbeddedFont> embed(hb_face_t* face, const std::set<std::uint32_t>& glyphs);

/// Only those characters of the face with what belongs to them: kerning, ligatures, marks, and
/// lining figures if they are asked for. An OpenType file; empty if the face cannot be cut.
std::string subset_for_web(hb_face_t* face,
                           const std::set<char32_t>& characters,
                           bool lining = false);

/// The glyph as a path for an em of 1, y downward, origin on the baseline.
Path glyph_outline(hb_face_t* face, std::uint32_t glyph);

}  // namespace platewright
