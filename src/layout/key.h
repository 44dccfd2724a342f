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

/// Colour key and particulars within `width` mm, under headings if `headings`. No word is left out.
Block key_block(
    const Captions& captions, const Style& style, bool headings, double width, Ruler& ruler);

/// Notes, then the source, within `width` mm.
Block note_block(const std::vector<std::string>& notes,
                 const std::string& source,
                 const Style& style,
                 double width,
                 Ruler& ruler);

}  // namespace platewright::sheet
