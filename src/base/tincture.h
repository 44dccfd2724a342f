// SPDX-License-Identifier: MIT
// Colours without colour: the tinctures of heraldry, each with its hatching.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "base/colour.h"
#include "base/geometry.h"

namespace platewright {

/// What a hatching is drawn with.
enum class HatchManner { plain, dots, sparse_dots, lines, broken_lines, paired_lines };

/// One tincture. `first` and `second` are the ways its lines run, as dx dy on the page; (0, 0)
/// where there are none.
struct Tincture {
    /// `azure`; what the convention lacks is called by its colour: `buff`.
    std::string_view name;
    /// `blue`.
    std::string_view colour;
    HatchManner manner = HatchManner::plain;
    Point first;
    Point second;
    /// Whether it is one of the convention's; the others are our own and need a printed key.
    bool of_convention = true;
};

/// Row number in the table.
using TinctureId = std::size_t;

/// The eleven of the Petra Sancta convention, then our own. Source: S. Petra Sancta, Tesserae
/// gentilitiae, 1638, as handbooks print it; orange and crimson, on which they disagree, as in
/// British handbooks; brown and grey after M. Ciric, 1988.
std::span<const Tincture> tinctures();

/// The tincture of that name (`azure`), or of that colour (`blue`); small letters.
std::optional<TinctureId> find_tincture(std::string_view word);

/// The tincture that looks most like the colour of cloth or leather.
TinctureId nearest_tincture(Colour colour);

/// The tincture of a metal: pewter and silver are argent, however dull.
TinctureId nearest_tincture_of_metal(Colour colour);

/// How a tincture is hatched, in mm on paper, whatever the scale of the picture.
inline constexpr double kHatchPitch = 0.9;
inline constexpr double kHatchLine = 0.12;
inline constexpr double kHatchDot = 0.3;

/// The lines or dots of one hatching over an area, to be stroked and cut to its outline.
struct Hatching {
    Path path;
    double width = 0;
    std::vector<double> dash;

    [[nodiscard]] bool empty() const { return path.empty(); }
};

/// Covers `area`, in a picture whose mm are `scale` to one on paper. All hatchings of a picture lie
/// on one grid about its origin, so that they run on from piece to piece and never turn.
Hatching hatching_over(const Rect& area, TinctureId tincture, double scale);

}  // namespace platewright
