// SPDX-License-Identifier: MIT
// Cells over a part of a page.
#include "layout/edge_map.h"

#include <algorithm>
#include <cmath>

namespace platewright::sheet {
namespace {

constexpr double kCell = 0.5;
constexpr std::uint8_t kEdge = 1;
constexpr std::uint8_t kWithin = 2;

std::size_t cells_in(double mm) {
    return static_cast<std::size_t>(std::ceil(std::max(0.0, mm) / kCell)) + 1;
}

}  // namespace

EdgeMap::EdgeMap(const Rect& room)
    : room_(room),
      columns_(cells_in(room.width())),
      rows_(cells_in(room.height())),
      cells_(columns_ * rows_) {}

void EdgeMap::mark(Point at, std::uint8_t as) {
    const double column = std::floor((at.x - room_.left) / kCell);
    const double row = std::floor((at.y - room_.top) / kCell);
    if (column >= 0 && row >= 0 && column < static_cast<double>(columns_) &&
        row < static_cast<double>(rows_)) {
        cells_[static_cast<std::size_t>(row) * columns_ + static_cast<std::size_t>(column)] |= as;
    }
}

std::uint8_t EdgeMap::at(Point p) const {
    const double column = (p.x - room_.left) / kCell;
    const double row = (p.y - room_.top) / kCell;
    if (column < 0 || row < 0) {
        return 0;
    }
    const auto x = static_cast<std::size_t>(column);
    const auto y = static_cast<std::size_t>(row);
    return x < columns_ && y < rows_ ? cells_[y * columns_ + x] : std::uint8_t{0};
}

void EdgeMap::add_edge(Point from, Point to) {
    const int steps = static_cast<int>(std::ceil(length(to - from) / (kCell / 2))) + 1;
    for (int i = 0; i <= steps; ++i) {
        mark(from + (to - from) * (static_cast<double>(i) / steps), kEdge);
    }
}

void EdgeMap::fill_row(std::size_t row, const std::vector<Chain>& closed) {
    const double y = room_.top + (static_cast<double>(row) + 0.5) * kCell;
    std::vector<double> crossed;
    for (const Chain& chain : closed) {
        for (std::size_t i = 0; i < chain.size(); ++i) {
            const Point a = chain[i];
            const Point b = chain[(i + 1) % chain.size()];
            if ((a.y <= y) != (b.y <= y)) {
                crossed.push_back(a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y));
            }
        }
    }
    std::ranges::sort(crossed);
    for (std::size_t i = 0; i + 1 < crossed.size(); i += 2) {
        const double first = std::max(crossed[i], room_.left);
        const double last = std::min(crossed[i + 1], room_.right);
        const int cells = last < first ? 0 : static_cast<int>((last - first) / kCell) + 1;
        for (int j = 0; j < cells; ++j) {
            mark({first + j * kCell, y}, kWithin);
        }
    }
}

void EdgeMap::add_shape(const std::vector<Chain>& closed) {
    for (std::size_t row = 0; row < rows_; ++row) {
        fill_row(row, closed);
    }
    for (const Chain& chain : closed) {
        for (std::size_t i = 0; i < chain.size(); ++i) {
            add_edge(chain[i], chain[(i + 1) % chain.size()]);
        }
    }
}

void EdgeMap::add_disc(Point middle, double radius) {
    const int rows = static_cast<int>(radius / (kCell / 2));
    for (int row = -rows; row <= rows; ++row) {
        const double y = row * kCell / 2;
        const double half = std::sqrt(radius * radius - y * y);
        add_edge(middle + Point{-half, y}, middle + Point{half, y});
    }
}

Covered EdgeMap::under(Point from, Point to) const {
    Covered sum;
    const int steps = static_cast<int>(std::ceil(length(to - from) / kCell));
    const double step = steps > 0 ? length(to - from) / steps : 0;
    for (int i = 0; i < steps; ++i) {
        const std::uint8_t cell = at(from + (to - from) * ((i + 0.5) / steps));
        sum.edges += (cell & kEdge) != 0 ? step : 0;
        sum.within += (cell & kWithin) != 0 ? step : 0;
    }
    return sum;
}

Covered EdgeMap::under(Point corner, Point along, double wide, double high) const {
    Covered sum;
    const Point up = right_of(along) * -1;
    const int rows = static_cast<int>(std::ceil(high / kCell));
    const double row_height = high / std::max(1, rows);
    for (int i = 0; i < rows; ++i) {
        const Point from = corner + up * ((i + 0.5) * row_height);
        const Covered row = under(from, from + along * wide);
        sum.edges += row.edges * row_height;
        sum.within += row.within * row_height;
    }
    return sum;
}

}  // namespace platewright::sheet
