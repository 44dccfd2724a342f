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

/// What a roundel needs: its radius, and the size of the words under it.
struct RoundelSize {
    double radius = 0;
    double words_width = 0;
    double words_height = 0;
};

/// The best free place for a roundel of that size, or of a somewhat smaller radius. Prefers the
/// level of the heads between two figures, and keeps clear of those already placed. Empty if there
/// is none.
std::optional<Roundel> find_roundel(const Plan& plan,
                                    const std::vector<Stand>& stands,
                                    const std::vector<Roundel>& placed,
                                    const RoundelSize& size);

}  // namespace platewright::sheet
