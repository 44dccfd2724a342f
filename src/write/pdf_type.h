// SPDX-License-Identifier: MIT
// Type in a PDF: which glyphs a document uses, the fonts embedded for them, and lines as text that
// can be selected.
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "layout/page.h"
#include "text/shaping.h"
#include "text/subset.h"
#include "write/pdf_file.h"

namespace platewright {

/// Shapes a whole document beforehand, because the number of a glyph in the embedded font is known
/// only when all its glyphs are.
class PdfType {
  public:
    PdfType(const Document& document, const Typesetter& type);

    /// The lines of all `Text` nodes, one after the other in the order they are painted.
    const Line& next_line();

    /// Appends the drawing operators of a line of that size, its baseline starting at (0, 0) and y
    /// growing downward. `spaced`: its letters stand apart; the words are then spelt out for
    /// search, lest each letter be taken for a word.
    void show(std::string& to, const Line& line, double size, bool spaced) const;

    /// Writes the fonts; returns the entries of the resource dictionary's `/Font`.
    [[nodiscard]] std::string write(PdfFile& file) const;

  private:
    struct Font {
        hb_face_t* face = nullptr;
        std::set<std::uint32_t> glyphs;
        /// What each glyph stands for, by its first use; other uses are spelt out where they occur.
        std::map<std::uint32_t, std::string> words;
        /// Nothing if it cannot be embedded: then its glyphs are drawn as outlines.
        std::optional<EmbeddedFont> embedded;
    };

    void collect(const Group& group, const Typesetter& type);
    void collect(const Run& run);
    [[nodiscard]] std::size_t find(const hb_face_t* face) const;
    void show_run(std::string& to, const Run& run, double size, bool spaced) const;

    std::vector<Font> fonts_;
    std::vector<Line> lines_;
    std::size_t next_ = 0;
};

}  // namespace platewright
