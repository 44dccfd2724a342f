// SPDX-License-Identifier: MIT
// Where of a figure a thing may be pointed at.
#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "compose/visible.h"

namespace platewright {
namespace {

/// One more than the greatest number in cells.
std::size_t numbers_in(const std::vector<int>& raster) {
    return raster.empty() ? 0 : static_cast<std::size_t>(*std::ranges::max_element(raster)) + 1;
}

}  // namespace

void Visible::carry(const std::vector<int>& raster,
                    std::vector<int>& steps,
                    std::size_t cell,
                    long neighbour) const {
    const long other = static_cast<long>(cell) + neighbour;
    const auto column = static_cast<long>(cell % columns_);
    const long other_column =
        ((other % static_cast<long>(columns_)) + static_cast<long>(columns_)) %
        static_cast<long>(columns_);
    const bool outside =
        other < 0 || other >= static_cast<long>(top_.size()) || std::abs(other_column - column) > 1;
    const auto index = static_cast<std::size_t>(other);
    const int reach = outside || raster[index] != raster[cell] ? 0 : steps[index];
    steps[cell] = std::min(steps[cell], reach + 1);
}

/// Steps from each cell to the nearest one of another number, sideways and upwards and across:
/// two passes over the raster. Source: A. Rosenfeld, J. L. Pfaltz, Pattern Recognition 1, 1968.
std::vector<int> Visible::distances(const std::vector<int>& raster) const {
    const auto row = static_cast<long>(columns_);
    const std::array<long, 4> before = {-1, -row - 1, -row, -row + 1};
    std::vector<int> steps(top_.size(), static_cast<int>(columns_ + rows_));
    for (std::size_t i = 0; i < top_.size(); ++i) {
        for (const long neighbour : before) {
            carry(raster, steps, i, neighbour);
        }
    }
    for (std::size_t i = top_.size(); i-- > 0;) {
        for (const long neighbour : before) {
            carry(raster, steps, i, -neighbour);
        }
    }
    return steps;
}

int Visible::merit(const std::vector<int>& raster,
                   const std::vector<int>& steps,
                   std::size_t cell) const {
    constexpr int thin = 2;
    constexpr long round = 2;
    constexpr int foreign = 2;
    if (steps[cell] > thin) {
        return steps[cell] * 100;
    }
    int alone = 0;
    const auto row = static_cast<long>(cell / columns_);
    const auto column = static_cast<long>(cell % columns_);
    for (long y = std::max(0L, row - round);
         y <= std::min(static_cast<long>(rows_) - 1, row + round);
         ++y) {
        for (long x = std::max(0L, column - round);
             x <= std::min(static_cast<long>(columns_) - 1, column + round);
             ++x) {
            const auto other = static_cast<std::size_t>(y) * columns_ + static_cast<std::size_t>(x);
            const bool same = raster[other] == raster[cell];
            alone += same ? 1 : raster[other] == under_[cell] ? 0 : -foreign;
        }
    }
    return steps[cell] * 100 + alone;
}

void Visible::add_edges(const std::vector<int>& raster,
                        const std::vector<int>& steps,
                        std::map<int, Seen>& seen) const {
    /// A dot that small still lies within the thing, in steps.
    constexpr int room_of_a_dot = 2;
    std::vector<int> most(numbers_in(raster), 0);
    for (std::size_t i = 0; i < raster.size(); ++i) {
        int& best = most[static_cast<std::size_t>(raster[i])];
        best = std::max(best, steps[i]);
    }
    std::map<int, std::array<std::size_t, 2>> ends;
    for (std::size_t i = 0; i < raster.size(); ++i) {
        if (raster[i] == 0) {
            continue;
        }
        const int best = most[static_cast<std::size_t>(raster[i])];
        if (steps[i] < std::min(best, std::max(room_of_a_dot, best / 2))) {
            continue;
        }
        const auto [at, is_new] = ends.try_emplace(raster[i], std::array<std::size_t, 2>{i, i});
        at->second = outermost(at->second, i, raster, steps);
    }
    for (const auto& [number, cells] : ends) {
        for (const std::size_t cell : cells) {
            seen[number].edges.push_back({middle(cell), (steps[cell] - 0.5) * kCell});
        }
    }
}

std::vector<int> Visible::sizes_of_pieces(const std::vector<int>& raster) const {
    std::vector<int> sizes(raster.size(), 0);
    std::vector<std::size_t> piece;
    const auto take = [&](std::size_t row, std::size_t column, int number) {
        const std::size_t cell = row * columns_ + column;
        if (row < rows_ && column < columns_ && sizes[cell] == 0 && raster[cell] == number) {
            sizes[cell] = -1;
            piece.push_back(cell);
        }
    };
    for (std::size_t start = 0; start < raster.size(); ++start) {
        if (raster[start] == 0 || sizes[start] != 0) {
            continue;
        }
        piece.clear();
        take(start / columns_, start % columns_, raster[start]);
        for (std::size_t i = 0; i < piece.size(); ++i) {
            // Beyond the first row or column the numbers wrap round to what is outside too.
            const std::size_t row = piece[i] / columns_ - 1;
            const std::size_t column = piece[i] % columns_ - 1;
            for (std::size_t k = 0; k < 9; ++k) {
                take(row + k / 3, column + k % 3, raster[start]);
            }
        }
        for (const std::size_t cell : piece) {
            sizes[cell] = static_cast<int>(piece.size());
        }
    }
    return sizes;
}

std::array<std::size_t, 2> Visible::outermost(std::array<std::size_t, 2> ends,
                                              std::size_t cell,
                                              const std::vector<int>& raster,
                                              const std::vector<int>& steps) const {
    // A few cells further in, where there is more room about it, a dot is seen to lie within.
    constexpr int room_enough = 5;
    constexpr int worth = 2;
    auto& [left, right] = ends;
    const auto place = [&](std::size_t at, int way) {
        return way * static_cast<int>(at % columns_) - worth * std::min(steps[at], room_enough);
    };
    const auto better = [&](std::size_t than, int way) {
        const int gain = place(than, way) - place(cell, way);
        return gain > 0 || (gain == 0 && merit(raster, steps, cell) > merit(raster, steps, than));
    };
    left = better(left, 1) ? cell : left;
    right = better(right, -1) ? cell : right;
    return ends;
}

void Visible::add_levels(const std::vector<int>& raster,
                         const std::vector<int>& steps,
                         std::map<int, Seen>& seen) const {
    constexpr int room_of_a_dot = 3;
    constexpr std::size_t rows_of_a_level = 3;
    constexpr double remnant = 0.6;
    const std::vector<int> sizes = sizes_of_pieces(raster);
    std::vector<std::pair<int, int>> most(numbers_in(raster));
    for (std::size_t i = 0; i < raster.size(); ++i) {
        auto& [room, size] = most[static_cast<std::size_t>(raster[i])];
        room = std::max(room, steps[i]);
        size = std::max(size, sizes[i]);
    }
    // Of every number in turn, for each of its levels; beyond all cells: there is none.
    const std::size_t levels = rows_ / rows_of_a_level + 1;
    const std::size_t none = raster.size();
    std::vector<std::array<std::size_t, 2>> ends(most.size() * levels, {none, none});
    for (std::size_t i = 0; i < raster.size(); ++i) {
        if (raster[i] == 0) {
            continue;
        }
        const auto number = static_cast<std::size_t>(raster[i]);
        const auto& [room, size] = most[number];
        if (steps[i] < std::min(room, room_of_a_dot) || sizes[i] < remnant * size) {
            continue;
        }
        std::array<std::size_t, 2>& outer = ends[number * levels + i / columns_ / rows_of_a_level];
        outer = outer.front() == none ? std::array{i, i} : outermost(outer, i, raster, steps);
    }
    for (std::size_t i = 0; i < ends.size(); ++i) {
        const auto [left, right] = ends[i];
        if (left == none) {
            continue;
        }
        // Where a thing is short, its middle: at its very ends a dot would seem to stand beside it.
        constexpr std::size_t shortest = 7;
        const bool on_one_row = left / columns_ == right / columns_ && left <= right;
        const std::size_t inward = on_one_row && right - left < shortest ? (right - left) / 2 : 0;
        for (const std::size_t cell : {left + inward, right - inward}) {
            seen[static_cast<int>(i / levels)].levels.push_back(
                {middle(cell), (steps[cell] - 0.5) * kCell});
        }
    }
}

std::map<int, Seen> Visible::seen_in(const std::vector<int>& raster) const {
    /// The best cell of a number on each side of the middle.
    struct Best {
        std::size_t cells = 0;
        std::array<std::optional<std::size_t>, 2> at;
    };

    const std::vector<int> steps = distances(raster);
    std::vector<Best> by_number(numbers_in(raster));
    const double centre = frame_.centre().x;
    for (std::size_t i = 0; i < raster.size(); ++i) {
        if (raster[i] == 0) {
            continue;
        }
        Best& best = by_number[static_cast<std::size_t>(raster[i])];
        ++best.cells;
        std::optional<std::size_t>& at = best.at[middle(i).x < centre ? 0 : 1];
        if (!at || merit(raster, steps, i) > merit(raster, steps, *at)) {
            at = i;
        }
    }
    std::map<int, Seen> seen;
    for (std::size_t number = 0; number < by_number.size(); ++number) {
        const Best& best = by_number[number];
        if (best.cells == 0) {
            continue;
        }
        Seen& one = seen[static_cast<int>(number)];
        one.area = static_cast<double>(best.cells) * kCell * kCell;
        for (const std::optional<std::size_t>& at : best.at) {
            if (at) {
                one.sites.push_back({middle(*at), (steps[*at] - 0.5) * kCell});
            }
        }
    }
    add_edges(raster, steps, seen);
    add_levels(raster, steps, seen);
    return seen;
}

}  // namespace platewright
