// SPDX-License-Identifier: MIT
// A draughtsman's pen: lines of the drawing standards, arrows, turned words, dimensions. All in mm
// on paper.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "compose/flat.h"
#include "layout/page.h"

namespace platewright::sheet {

/// Widths of lines: ISO 128-2 (narrow to wide as 1 : 2).
inline constexpr double kNarrow = 0.18;
inline constexpr double kWide = 0.35;
/// Type of dimensions.
inline constexpr double kFigures = 2.55;
/// An arrowhead of ISO 129-1: its length.
inline constexpr double kArrow = 2.4;

/// Line types of ISO 128-2 that are used here.
enum class LineKind { continuous, dashed, chain, dotted };

/// Collects one layer.
class Pen {
  public:
    explicit Pen(std::string layer) { drawing_.root.name = std::move(layer); }

    void line(Point from, Point to, double width = kNarrow, LineKind kind = LineKind::continuous);
    void chain(const Chain& points, bool closed, double width, LineKind kind);
    void fill(const Chain& points, Colour colour);

    /// Light lines both ways, `step` apart from the upper left corner on, the last ones where the
    /// rectangle ends.
    void grid(const Rect& over, double step);

    void circle(Point middle, double radius, double width = kNarrow);
    void disc(Point middle, double radius, Colour colour);

    /// A filled arrowhead of ISO 129-1 with its tip there, pointing along `way`.
    void arrow(Point tip, Point way);

    /// A line with an arrowhead at both ends.
    void arrows(Point from, Point to);

    void words(const std::string& words,
               Point at,
               double size,
               Align align = Align::start,
               double degrees = 0,
               bool italic = false);

    /// Words in small capitals.
    void heading(const std::string& words, Point at, double size, Align align = Align::start);

    /// Keeps only what lies in the rectangle.
    void clip(const Rect& to);

    void put_on(Page& page) && { std::move(*this).put_on(page.items); }

    void put_on(std::vector<Placed>& items) &&;

    [[nodiscard]] Group& root() { return drawing_.root; }

    [[nodiscard]] Drawing& drawing() { return drawing_; }

  private:
    Drawing drawing_;

    void paint(Path path, Colour colour);
};

}  // namespace platewright::sheet
