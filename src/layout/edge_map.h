// SPDX-License-Identifier: MIT
// Where a drawing has edges and where it has cloth, in cells, so that lines and words can be led
// round them.
#pragma once

#include <cstdint>
#include <vector>

#include "base/chain.h"

namespace platewright::sheet {

/// How much of a line, in mm, or of a strip, in mm², lies on edges, and how much within shapes.
struct Covered {
    double edges = 0;
    double within = 0;
};

/// Cells of half a millimetre over a part of a page. What lies outside is empty.
class EdgeMap {
  public:
    explicit EdgeMap(const Rect& room);

    /// A shape of closed chains, even-odd.
    void add_shape(const std::vector<Chain>& closed);

    /// A button, which is an edge all over.
    void add_disc(Point middle, double radius);

    void add_edge(Point from, Point to);

    /// Under a straight line.
    [[nodiscard]] Covered under(Point from, Point to) const;

    /// Under a strip that begins at `corner` and is `wide` along `along` and `high` square to it,
    /// to its left.
    [[nodiscard]] Covered under(Point corner, Point along, double wide, double high) const;

  private:
    void fill_row(std::size_t row, const std::vector<Chain>& closed);
    void mark(Point at, std::uint8_t as);
    [[nodiscard]] std::uint8_t at(Point p) const;

    Rect room_;
    std::size_t columns_ = 0;
    std::size_t rows_ = 0;
    std::vector<std::uint8_t> cells_;
};

}  // namespace platewright::sheet
