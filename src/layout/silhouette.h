// SPDX-License-Identifier: MIT
// How far a drawing reaches to either side at each height, so that furniture can stand beside it,
// and where it stands on the ground.
#pragma once

#include <optional>
#include <utility>
#include <vector>

#include "base/drawing.h"
#include "base/geometry.h"

namespace platewright::sheet {

/// Left and right reach of a drawing in bands of equal height, and how low it reaches in columns of
/// equal width. In the drawing's mm.
class Silhouette {
  public:
    /// Of what lies within `frame`; what is clipped is taken to reach as far as its clip.
    Silhouette(const Drawing& drawing, const Rect& frame);

    /// Reach between two heights; empty if nothing is painted there.
    [[nodiscard]] std::optional<std::pair<double, double>> reach(double top, double bottom) const;

    /// The lower edges of all that reaches below that height, each from left to right.
    [[nodiscard]] std::vector<std::vector<Point>> undersides(double top) const;

    /// Box of all that is painted within the frame; empty if nothing is.
    [[nodiscard]] const Rect& box() const { return box_; }

  private:
    void add_group(const Drawing& drawing, const Group& group);
    void add_path(const Path& path, const Affine& placing);
    void add_line(Point from, Point to);
    void add_to_columns(Point from, Point to);
    [[nodiscard]] std::size_t band_at(double y) const;
    [[nodiscard]] std::size_t column_at(double x) const;

    Rect frame_;
    Rect box_;
    double band_height_ = 1;
    std::vector<Rect> bands_;
    double column_width_ = 1;
    /// The lowest height in each column; above the frame where nothing is painted.
    std::vector<double> lows_;
};

}  // namespace platewright::sheet
