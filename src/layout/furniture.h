// SPDX-License-Identifier: MIT
// What surrounds the figures: edge of the plate and frame, scale bar, roundel of the button,
// swelled rule, credits.
#pragma once

#include <optional>
#include <vector>

#include "layout/plan.h"
#include "layout/silhouette.h"

namespace platewright::sheet {

/// A figure on the page.
struct Stand {
    /// Where its origin is on paper.
    Point at;
    Silhouette silhouette;
};

/// Free stretch across the page left and right of something at some height.
struct Gap {
    double left = 0;
    double right = 0;
};

/// The gap before figure `index` (after the last one for `index` = number of figures) between two
/// heights.
std::optional<Gap> gap_at(const Plan& plan,
                          const std::vector<Stand>& stands,
                          std::size_t index,
                          double top,
                          double bottom);

/// What words between figures ask for, mm: how low they may stand, their type, their line.
struct WordsBetween {
    double lowest = 0;
    double size = 0;
    double line = 0;
};

/// One edge for all words that lead to the figure before a gap and one for those that lead to the
/// figure behind it, so that neither run is ragged: as far from the figures as their widest places
/// ask.
Gap column_at(const Plan& plan,
              const std::vector<Stand>& stands,
              std::size_t index,
              const WordsBetween& words);

/// Paper inside the edge of the plate, the edge, and the double line of the frame.
void draw_frame(const Plan& plan, Layer& on);

/// The same round any sheet: the edge of the plate at `mark`, the frame at `neat`, in lines that
/// grow with `unit`.
void draw_frame(const Rect& mark, const Rect& neat, double unit, Layer& on);

/// A line across `width` that swells in the middle, with a lozenge on it.
void draw_swelled_rule(Point middle, double width, Layer& on);

/// A graduated bar centred on `middle`, with the scale on its left and its length on its right;
/// only the scale in words if no useful bar fits in `room` mm.
void draw_scale_bar(const Plan& plan, Point middle, double room, Ruler& ruler, Layer& on);

/// `front` and `back` under the figures, and the scale among them.
void put_labels(const std::vector<Stand>& stands, const Plan& plan, Ruler& ruler, Page& page);

/// "1 : 10".
std::string scale_words(double factor);

/// Place and radius of a roundel among the figures.
struct Roundel {
    Point centre;
    double radius = 0;
};

/// Places for roundels of one size, in the order of the words under them: the first between two
/// figures at the level of the heads, a pair of others beside the heads of the outer figures, what
/// is left between the figures, not below the knee where there is room above it. Smaller than
/// `radius` as far as all find room by it; empty for those that find none.
std::vector<std::optional<Roundel>> find_roundels(const Plan& plan,
                                                  const std::vector<Stand>& stands,
                                                  double radius,
                                                  const std::vector<double>& words_widths);

}  // namespace platewright::sheet
