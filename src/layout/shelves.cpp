// SPDX-License-Identifier: MIT
// First fit by falling height: after Coffman, Garey, Johnson, Tarjan 1980 (from memory).
#include "layout/shelves.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace platewright::sheet {
namespace {

struct Shelf {
    double width = 0;
    double height = 0;
    std::vector<std::size_t> on;
};

std::vector<Shelf> filled(const std::vector<Point>& sizes, const ShelfRoom& room) {
    std::vector<std::size_t> order(sizes.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order,
                             [&](std::size_t a, std::size_t b) { return sizes[a].y > sizes[b].y; });
    std::vector<Shelf> shelves;
    for (const std::size_t i : order) {
        const double wide = room.apart + sizes[i].x;
        const auto fits = std::ranges::find_if(
            shelves, [&](const Shelf& shelf) { return shelf.width + wide <= room.width; });
        if (fits == shelves.end()) {
            shelves.push_back({sizes[i].x, sizes[i].y, {i}});
        } else {
            fits->width += wide;
            fits->on.push_back(i);
        }
    }
    return shelves;
}

}  // namespace

std::vector<std::vector<std::size_t>> shelves_of(const std::vector<Point>& sizes,
                                                 const ShelfRoom& room) {
    std::vector<Shelf> left = filled(sizes, room);
    std::vector<std::vector<std::size_t>> rows;
    double free = room.first_page;
    bool page_begins = true;
    while (!left.empty()) {
        const auto next = std::ranges::find_if(
            left, [&](const Shelf& shelf) { return shelf.height + room.apart <= free; });
        if (next == left.end() && !page_begins) {
            free = room.page;
            page_begins = true;
            continue;
        }
        // What is too high for any page is not kept back.
        const auto taken = next == left.end() ? left.begin() : next;
        free -= taken->height + room.apart;
        page_begins = false;
        rows.push_back(std::move(taken->on));
        left.erase(taken);
    }
    return rows;
}

}  // namespace platewright::sheet
