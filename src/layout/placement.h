// SPDX-License-Identifier: MIT
// Windows of the placement drawings.
#pragma once

#include <string>
#include <vector>

#include "base/language.h"
#include "layout/dimensioning.h"
#include "layout/layout.h"
#include "layout/ruler.h"
#include "layout/workshop.h"
#include "pattern/dimensions.h"

namespace platewright {

/// What a placement drawing shows, mm on the garment, the denominator of its scale (1, 2, 5 or 10),
/// and its dimensions.
struct PlacementWindow {
    Rect frame;
    int scale = 1;
    std::vector<sheet::DimensionLine> lines;
};

/// At the largest scale at which two drawings stand beside one another: those parts, and round them
/// room for the lines and words of the dimensions. `flat`: what is drawn.
PlacementWindow placement_window(const Rect& parts,
                                 const std::vector<Dimension>& shown,
                                 const sheet::MeasuredFlat& flat,
                                 const Paper& paper);

/// What a line of words under a drawing takes, mm.
inline constexpr double kPlacementLabel = 6.6;
inline constexpr double kCaptionType = 3.2;

/// "Cuff, the wearer's left 1 : 5".
std::string placement_caption(const std::string& title, double scale, Language language);

/// Drawings that stand in one row of the page are equally high: the lower ones show more of the
/// garment. `titles`: what is said under each.
void level_windows(std::vector<PlacementWindow>& windows,
                   const std::vector<std::string>& titles,
                   Language language,
                   const Paper& paper,
                   sheet::Ruler& ruler);

/// Dimensions of a whole view, anywhere beside it on the page.
std::vector<sheet::DimensionLine> flat_dimensions(const MeasuredView& view,
                                                  const Paper& paper,
                                                  const sheet::MeasuredFlat& flat);

}  // namespace platewright
