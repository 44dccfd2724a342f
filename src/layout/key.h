// SPDX-License-Identifier: MIT
// The words beneath the title: colour key, particulars, notes.
#pragma once

#include <string>
#include <vector>

#include "compose/figure.h"
#include "layout/block.h"
#include "layout/ruler.h"
#include "layout/style.h"

namespace platewright::sheet {

/// What stands in small type under everything else.
struct Notes {
    std::vector<std::string> remarks = {};
    std::string source = {};
    Language language = Language::english;
};

/// How a key is set: with headings or without; colours in line across the columns, or one close
/// under the other.
struct KeyForm {
    bool headings = true;
    bool in_line = true;
};

/// Colour key and particulars within `width` mm, and `notes` under the particulars. No word is left
/// out.
Block key_block(const Captions& captions,
                const Notes& notes,
                const KeyForm& form,
                const Style& style,
                double width,
                Ruler& ruler);

/// Notes alone, within `width` mm.
Block note_block(const Notes& notes, const Style& style, double width, Ruler& ruler);

}  // namespace platewright::sheet
