// SPDX-License-Identifier: MIT
// Pictures of several shapes in rows that all fill the width of the page.
#include "layout/even_rows.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <span>

namespace platewright {
namespace {

/// No more side by side: their words would be columns of syllables.
constexpr std::size_t kMost = 6;
/// Height to width of a usual picture.
constexpr double kUsualHeight = 1.06;
/// A broad picture may be so much broader than usual.
constexpr double kBroad = 1.3;
/// As bad as a picture twice too broad: a row that ends amid a group, and words without room.
constexpr double kTornGroup = 0.6;
constexpr double kCrowded = 4;

double usual_width(const RowPicture& picture, const RowRoom& room) {
    return room.usual * std::clamp(picture.aspect, 1.0, kBroad);
}

/// One row of all these.
EvenRow row_of(std::span<const RowPicture> pictures, const RowRoom& room) {
    EvenRow row{.count = pictures.size()};
    const auto number = static_cast<double>(pictures.size());
    const double filled = room.width - room.gap * (number - 1);
    double aspects = 0;
    double highest = 0;
    for (const RowPicture& picture : pictures) {
        aspects += picture.aspect;
        highest += usual_width(picture, room) * kUsualHeight / picture.aspect / number;
    }
    // Where few fill the row, what stands beside them is shown rather than themselves enlarged.
    row.height = std::min(filled / aspects, highest);
    // Of one size, whatever is shown: what is slim leaves more to see beside it.
    row.width = filled / number;
    return row;
}

double badness_of(const EvenRow& row, std::span<const RowPicture> pictures, const RowRoom& room) {
    double badness = 0;
    for (const RowPicture& picture : pictures) {
        const double off = std::log(row.width / usual_width(picture, room));
        badness += off * off + (row.width < room.least ? kCrowded : 0);
    }
    return badness;
}

}  // namespace

std::vector<EvenRow> even_rows(const std::vector<RowPicture>& pictures, const RowRoom& room) {
    struct Way {
        double badness = std::numeric_limits<double>::infinity();
        std::size_t from = 0;
    };

    const std::span<const RowPicture> all(pictures);
    std::vector<Way> ways(pictures.size() + 1);
    ways.front().badness = 0;
    for (std::size_t end = 1; end <= all.size(); ++end) {
        for (std::size_t number = 1; number <= std::min(end, kMost); ++number) {
            const std::size_t from = end - number;
            const auto some = all.subspan(from, number);
            const bool torn = from > 0 && all[from - 1].group == all[from].group;
            const double badness = ways[from].badness + badness_of(row_of(some, room), some, room) +
                                   (torn ? kTornGroup : 0);
            if (badness < ways[end].badness) {
                ways[end] = {badness, from};
            }
        }
    }
    std::vector<EvenRow> rows;
    for (std::size_t end = all.size(); end > 0; end = ways[end].from) {
        rows.push_back(row_of(all.subspan(ways[end].from, end - ways[end].from), room));
        rows.back().first = ways[end].from;
    }
    std::ranges::reverse(rows);
    return rows;
}

}  // namespace platewright
