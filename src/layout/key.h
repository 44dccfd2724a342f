// SPDX-License-Identifier: MIT
// The words beneath the title: colour key, particulars, notes.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "compose/figure.h"
#include "layout/block.h"
#include "layout/ruler.h"
#include "layout/style.h"

namespace platewright::sheet {

/// What links call the rows of the key, the callouts of what each lists, particulars and footnotes,
/// by their numbers from 0.
std::string key_anchor(std::size_t row);
std::string callout_anchor(std::size_t row);
std::string particular_anchor(std::size_t row);
std::string note_anchor(std::size_t footnote);

/// `azure`: what a sheet without colour calls its hatching.
std::string tincture_name(TinctureId id, Language language);

/// Which footnote the words bear the mark of; the longest where one mark begins another.
std::optional<std::size_t> footnote_in(const std::string& words,
                                       const std::vector<Footnote>& footnotes);

/// One of the notes; a footnote has a name and leads back to the place that bears its mark.
struct Remark {
    std::string words;
    std::string anchor = {};
    std::string leads_to = {};
};

/// The notes of a plate, then its footnotes with their marks.
std::vector<Remark> remarks_of(const Captions& captions);

/// What stands in small type under everything else.
struct Notes {
    std::vector<Remark> remarks = {};
    std::string source = {};
    Language language = Language::english;
};

/// Colour key and particulars within `width` mm, with their headings or without, and `notes` under
/// the particulars. No word is left out.
Block key_block(const Captions& captions,
                const Notes& notes,
                bool headings,
                const Style& style,
                double width,
                Ruler& ruler);

/// Notes alone, within `width` mm.
Block note_block(const Notes& notes, const Style& style, double width, Ruler& ruler);

}  // namespace platewright::sheet
