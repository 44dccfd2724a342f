// SPDX-License-Identifier: MIT
// Rows of words and samples, and blocks of rows in columns.
#include "layout/block.h"

#include <algorithm>
#include <iterator>
#include <utility>

#include "layout/style.h"

namespace platewright::sheet {
namespace {

/// Up to this many rows an entry is never divided between columns; a longer one may be, but not
/// after its first row.
constexpr std::size_t kUndivided = 6;

/// Rows that must stay together.
struct Stretch {
    std::vector<const Row*> rows;
    double space = 0;
    double height = 0;
};

std::vector<Stretch> stretches_of(const std::vector<Entry>& entries, double gap) {
    std::vector<Stretch> stretches;
    for (const Entry& entry : entries) {
        const bool whole = entry.size() <= kUndivided;
        for (std::size_t i = 0; i < entry.size(); ++i) {
            if (i == 0 || (!whole && i != 1)) {
                stretches.push_back({{}, i == 0 ? gap : 0, 0});
            }
            stretches.back().rows.push_back(&entry[i]);
            stretches.back().height += entry[i].height;
        }
    }
    return stretches;
}

/// The index of the first stretch of each column, when none is higher than `limit`.
std::vector<std::size_t> fill(const std::vector<Stretch>& stretches, double limit) {
    std::vector<std::size_t> starts;
    double height = 0;
    for (std::size_t i = 0; i < stretches.size(); ++i) {
        const double grown = height + stretches[i].space + stretches[i].height;
        if (starts.empty() || grown > limit) {
            starts.push_back(i);
            height = stretches[i].height;
        } else {
            height = grown;
        }
    }
    return starts;
}

/// The lowest filling of at most `columns` columns.
std::vector<std::size_t> fill_evenly(const std::vector<Stretch>& stretches, std::size_t columns) {
    double low = 0;
    double high = 0;
    for (const Stretch& stretch : stretches) {
        low = std::max(low, stretch.height);
        high += stretch.space + stretch.height;
    }
    std::vector<std::size_t> best = fill(stretches, high);
    while (high - low > 0.01) {
        const double middle = (low + high) / 2;
        std::vector<std::size_t> tried = fill(stretches, middle);
        if (tried.size() <= columns) {
            high = middle;
            best = std::move(tried);
        } else {
            low = middle;
        }
    }
    return best;
}

double height_of(const std::vector<Stretch>& stretches, std::size_t begin, std::size_t end) {
    double height = 0;
    for (std::size_t i = begin; i < end; ++i) {
        height += stretches[i].height + (i == begin ? 0 : stretches[i].space);
    }
    return height;
}

/// By how much each gap of a column has to be wider for it to be so high.
double wider_by(const std::vector<Stretch>& stretches,
                std::size_t begin,
                std::size_t end,
                double height) {
    double gaps = 0;
    for (std::size_t i = begin + 1; i < end; ++i) {
        gaps += stretches[i].space > 0 ? 1 : 0;
    }
    return gaps > 0 ? (height - height_of(stretches, begin, end)) / gaps : 0;
}

/// Where a wash stood wet longest it dries darkest: along the lower and the right edge.
Path pool_of(const Rect& box) {
    const double deep = 0.07 * box.height();
    Path pool;
    pool.move_to({box.left, box.bottom});
    pool.line_to({box.right, box.bottom});
    pool.line_to({box.right, box.top});
    pool.cubic_to({box.right - 1.8 * deep, box.top + 0.3 * box.height()},
                  {box.right - 0.2 * deep, box.top + 0.6 * box.height()},
                  {box.right - 0.9 * deep, box.bottom - 3 * deep});
    pool.cubic_to({box.right - 1.4 * deep, box.bottom - 0.6 * deep},
                  {box.right - 0.2 * box.width(), box.bottom - 0.5 * deep},
                  {box.centre().x, box.bottom - 1.1 * deep});
    pool.cubic_to({box.left + 0.3 * box.width(), box.bottom - 1.5 * deep},
                  {box.left + 0.1 * box.width(), box.bottom - 0.4 * deep},
                  {box.left, box.bottom});
    pool.close();
    return pool;
}

/// A button, with its shaded side and its light.
void draw_metal(const Rect& box, Colour colour, double line, Layer& on) {
    const Point middle = box.centre();
    const double radius = box.height() / 2;
    const Colour edge = swatch_edge(colour);
    on.fill(ellipse(middle, radius, radius), mix(colour, edge, 0.42));
    on.fill(ellipse(middle - Point{0.12, 0.12} * radius, 0.86 * radius, 0.86 * radius), colour);
    on.fill(ellipse(middle - Point{0.3, 0.34} * radius, 0.26 * radius, 0.2 * radius),
            {0xff, 0xff, 0xff},
            0.5);
    on.stroke(ellipse(middle, radius, radius), edge, line);
}

}  // namespace

Colour swatch_edge(Colour of) {
    return mix(of, kInk, 0.7);
}

void draw_swatch(const Swatch& swatch, Point at, Layer& on) {
    const Colour edge = swatch_edge(swatch.colour);
    const double line = swatch.height * 0.035;
    const Rect box{at.x, at.y, at.x + swatch.width, at.y + swatch.height};
    if (swatch.hatch) {
        const double radius = swatch.height / 2;
        on.hatched(swatch.metal ? ellipse(box.centre(), radius, radius) : rectangle(box),
                   *swatch.hatch,
                   std::max(line, kHatchLine * 1.4));
        return;
    }
    if (swatch.metal) {
        draw_metal(box, swatch.colour, line, on);
        return;
    }
    on.outlined(rectangle(box), swatch.colour, edge, line);
    on.fill(pool_of(box), edge, 0.26);
    // An engraver's box is heavier where it lies in shade.
    Path shade;
    shade.move_to({box.left + line, box.bottom});
    shade.line_to({box.right, box.bottom});
    shade.line_to({box.right, box.top + line});
    on.stroke(std::move(shade), edge, 1.8 * line);
}

void Block::join(Block part, Point at) {
    for (Place& place : part.rows) {
        rows.push_back({place.at + at, std::move(place.row)});
    }
    height = std::max(height, at.y + part.height);
}

std::size_t Block::end_of_link(std::size_t first) const {
    const Place& from = rows[first];
    std::size_t end = first + 1;
    // A row with a name of its own begins another link; so does the next column.
    while (end < rows.size() && rows[end].row.leads_to == from.row.leads_to &&
           rows[end].row.anchor.empty() && rows[end].at.x == from.at.x &&
           rows[end].at.y > rows[end - 1].at.y) {
        ++end;
    }
    return end;
}

void Block::draw(Point at, Layer& on) const {
    for (std::size_t first = 0; first < rows.size();) {
        const std::size_t end = end_of_link(first);
        Linked link{rows[first].row.anchor, rows[first].row.leads_to, {}};
        for (std::size_t i = first; i < end; ++i) {
            const Point corner = at + rows[i].at;
            link.area.include(Rect{
                corner.x, corner.y, corner.x + rows[i].row.width, corner.y + rows[i].row.height});
        }
        on.begin_link(link);
        draw_rows(first, end, at, on);
        on.end_link();
        first = end;
    }
}

void Block::draw_rows(std::size_t first, std::size_t end, Point at, Layer& on) const {
    for (std::size_t i = first; i < end; ++i) {
        const Place& place = rows[i];
        const Point corner = at + place.at;
        if (place.row.swatch) {
            draw_swatch(*place.row.swatch, corner, on);
        }
        for (const Piece& piece : place.row.pieces) {
            on.words(
                piece.words, corner + Point{piece.x, place.row.baseline}, piece.type, piece.colour);
        }
    }
}

Block pour(const std::vector<Entry>& entries, const Grid& grid) {
    const std::vector<Stretch> stretches = stretches_of(entries, grid.gap);
    const std::vector<std::size_t> starts = fill_evenly(stretches, grid.columns);
    std::vector<std::size_t> ends(starts.begin() + (starts.empty() ? 0 : 1), starts.end());
    ends.push_back(stretches.size());
    double longest = grid.height;
    for (std::size_t column = 0; column < starts.size(); ++column) {
        longest = std::max(longest, height_of(stretches, starts[column], ends[column]));
    }
    Block block;
    for (std::size_t column = 0; column < starts.size(); ++column) {
        const double more = wider_by(stretches, starts[column], ends[column], longest);
        const double wider = more <= grid.stretch ? more : 0;
        double y = 0;
        for (std::size_t i = starts[column]; i < ends[column]; ++i) {
            const double space = stretches[i].space;
            y += i == starts[column] ? 0 : space + (space > 0 ? wider : 0);
            for (const Row* row : stretches[i].rows) {
                block.rows.push_back({{static_cast<double>(column) * grid.pitch, y}, *row});
                y += row->height;
            }
        }
        block.height = std::max(block.height, y);
    }
    return block;
}

}  // namespace platewright::sheet
