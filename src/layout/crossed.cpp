// SPDX-License-Identifier: MIT
// What a line across a figure crosses on its way.
#include "layout/crossed.h"

#include <cmath>
#include <cstddef>

namespace platewright::sheet {
namespace {

int thing_at(const Tops& tops, Point at) {
    const double column = std::floor((at.x - tops.frame.left) / tops.cell);
    const double row = std::floor((at.y - tops.frame.top) / tops.cell);
    if (column < 0 || row < 0 || column >= static_cast<double>(tops.columns)) {
        return 0;
    }
    const std::size_t cell =
        static_cast<std::size_t>(row) * tops.columns + static_cast<std::size_t>(column);
    return cell < tops.things.size() ? tops.things[cell] : 0;
}

}  // namespace

int crossed(const Tops& tops, const std::vector<Point>& line) {
    if (tops.empty() || line.empty()) {
        return 0;
    }
    int count = 0;
    int last = thing_at(tops, line.front());
    for (std::size_t i = 1; i < line.size(); ++i) {
        const Point way = line[i] - line[i - 1];
        const double steps = std::ceil(length(way) / tops.cell);
        for (double k = 1; k <= steps; ++k) {
            const int next = thing_at(tops, line[i - 1] + way * (k / steps));
            count += next == last ? 0 : crossing_of(next);
            last = next;
        }
    }
    return count;
}

}  // namespace platewright::sheet
