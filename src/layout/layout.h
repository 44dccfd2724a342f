// SPDX-License-Identifier: MIT
// Fourth stage: figures and captions to pages.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/diagnostic.h"
#include "compose/figure.h"
#include "layout/page.h"
#include "text/typesetter.h"

namespace platewright {

/// A sheet of paper, mm.
struct Paper {
    double width = 210;
    double height = 297;
};

/// `A4`, `A3`, `letter`, `tabloid`, `210x297mm`; empty if it is none of these or not between 80 and 2000 mm a side.
/// Source of the sizes: ISO 216 and ASME Y14.1.
std::optional<Paper> parse_paper(std::string_view text);

/// The scale's denominator at which figures of these frames stand side by side on a plate of that paper.
double plate_scale(const std::vector<Rect>& frames, const Paper& paper);

/// The reference plate: figures side by side on one ground line, button enlarged, colour key, caption.
/// Adds warnings layout.too-long when words had to be made smaller than 7 pt to fit; they are then cut into more lines, never lost.
Document lay_out_plate(const std::vector<Figure>& figures,
                       const std::optional<Figure>& button,
                       const Captions& captions,
                       const Paper& paper,
                       const Typesetter& type,
                       Diagnostics& to);

/// Text dump of the stage.
std::string dump(const Document& document);

}  // namespace platewright
