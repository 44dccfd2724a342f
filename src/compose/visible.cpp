// SPDX-License-Identifier: MIT
// What of a figure can be seen.
#include "compose/visible.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "compose/brush.h"
#include "compose/curve.h"

namespace platewright {
namespace {

/// Side of a cell, in mm on the body: a button covers some twenty.
constexpr double kCell = 4;
/// A frame of any template has fewer cells than this.
constexpr double kMostCells = 4'000'000;

/// Where outlines cross the line at that height, and which way, sorted.
std::vector<std::pair<double, int>> crossings(const Outlines& outlines, double y) {
    std::vector<std::pair<double, int>> found;
    for (const std::vector<Point>& outline : outlines) {
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const Point a = outline[i];
            const Point b = outline[(i + 1) % outline.size()];
            if ((a.y <= y) != (b.y <= y)) {
                found.emplace_back(a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y), b.y > a.y ? 1 : -1);
            }
        }
    }
    std::ranges::sort(found);
    return found;
}

Outlines moved(Outlines outlines, Point by) {
    for (std::vector<Point>& outline : outlines) {
        for (Point& p : outline) {
            p = p + by;
        }
    }
    return outlines;
}

/// What a shape covers; a line alone covers its width.
Outlines covered_by(const Shape& shape, const Path& path) {
    if (shape.fill && shape.fill->alpha > 0.9) {
        return moved(outlines(path), shape.shift);
    }
    Outlines bands;
    if (shape.stroke && shape.stroke->alpha > 0.9) {
        for (const Path& part : subpaths(path)) {
            const Curve along(part);
            for (std::vector<Point>& band :
                 outlines(platewright::band(along, shape.stroke->width, Side::both))) {
                bands.push_back(std::move(band));
            }
        }
    }
    return moved(std::move(bands), shape.shift);
}

/// One more than the greatest number in cells.
std::size_t numbers_in(const std::vector<int>& raster) {
    return raster.empty() ? 0 : static_cast<std::size_t>(*std::ranges::max_element(raster)) + 1;
}

/// Where there is room elsewhere, no place is pointed at that has none: not the strap of a
/// haversack, but the bag.
void leave_slender(Seen& seen) {
    constexpr double enough = 14;
    double most = 0;
    for (const Site& site : all_sites(seen)) {
        most = std::max(most, site.room);
    }
    const double least = std::min(most / 2, enough);
    for (std::vector<Site>* sites : {&seen.sites, &seen.edges, &seen.levels}) {
        std::erase_if(*sites, [least](const Site& site) { return site.room < least; });
    }
}

}  // namespace

Visible::Visible(const Rect& frame) : frame_(frame) {
    const double columns = std::ceil(std::max(frame.width(), kCell) / kCell);
    const double rows = std::ceil(std::max(frame.height(), kCell) / kCell);
    if (columns * rows <= kMostCells) {
        columns_ = static_cast<std::size_t>(columns);
        rows_ = static_cast<std::size_t>(rows);
    }
    top_.assign(columns_ * rows_, 0);
    under_ = top_;
    parts_ = top_;
    covered_.assign(top_.size(), false);
}

Point Visible::middle(std::size_t cell) const {
    const std::size_t row = cell / columns_;
    return {frame_.left + (static_cast<double>(cell % columns_) + 0.5) * kCell,
            frame_.top + (static_cast<double>(row) + 0.5) * kCell};
}

template <typename Each>
void Visible::for_spans(const Outlines& outlines, const Each& each) const {
    Rect box;
    for (const std::vector<Point>& outline : outlines) {
        for (const Point p : outline) {
            box.include(p);
        }
    }
    const auto cell = [](double from, double to, std::size_t most) {
        const double place = std::ceil((to - from) / kCell - 0.5);
        return static_cast<std::size_t>(std::clamp(place, 0.0, static_cast<double>(most)));
    };
    const std::size_t last = box.empty() ? 0 : cell(frame_.top, box.bottom, rows_);
    for (std::size_t row = cell(frame_.top, box.top, rows_); row < last; ++row) {
        int winding = 0;
        std::size_t from = 0;
        for (const auto& [x, way] : crossings(outlines, middle(row * columns_).y)) {
            const std::size_t to = cell(frame_.left, x, columns_);
            if (winding != 0 && to > from) {
                each(row * columns_ + from, row * columns_ + to);
            }
            winding += way;
            from = to;
        }
    }
}

Visible::Mask Visible::mask_of(const Outlines& outlines) const {
    if (outlines.empty()) {
        return {};
    }
    Mask mask(top_.size(), false);
    for_spans(outlines, [&mask](std::size_t from, std::size_t to) {
        std::fill(mask.begin() + static_cast<std::ptrdiff_t>(from),
                  mask.begin() + static_cast<std::ptrdiff_t>(to),
                  true);
    });
    return mask;
}

void Visible::lay(const Outlines& outlines, const Mask& clip, std::optional<PropertyId> of) {
    const int number = of ? static_cast<int>(*of) + 1 : 0;
    for_spans(outlines, [&](std::size_t from, std::size_t to) {
        for (std::size_t i = from; i < to; ++i) {
            if (clip.empty() || clip[i]) {
                under_[i] = top_[i] == number ? under_[i] : top_[i];
                top_[i] = number;
                covered_[i] = true;
            }
        }
    });
}

void Visible::shape(const Outlines& outlines,
                    const Mask& clip,
                    const std::vector<PropertyId>& choices) {
    choices_.push_back(choices);
    const auto number = static_cast<int>(choices_.size());
    for_spans(outlines, [&](std::size_t from, std::size_t to) {
        for (std::size_t i = from; i < to; ++i) {
            parts_[i] = clip.empty() || clip[i] ? number : parts_[i];
        }
    });
}

Visible::Mask Visible::clipped(const Group& group, const Drawing& drawing, const Mask& clip) const {
    Outlines shapes;
    for (const PathId shape : group.clip) {
        for (std::vector<Point>& outline : outlines(drawing.paths[shape])) {
            shapes.push_back(std::move(outline));
        }
    }
    if (shapes.empty()) {
        return clip;
    }
    Mask mask = mask_of(shapes);
    for (std::size_t i = 0; i < clip.size(); ++i) {
        mask[i] = mask[i] && clip[i];
    }
    return mask;
}

void Visible::lay(const Group& group,
                  std::size_t first,
                  const Drawing& drawing,
                  const Mask& clip,
                  std::optional<PropertyId> of) {
    for (std::size_t i = first; i < group.children.size(); ++i) {
        if (const auto* shape = std::get_if<Shape>(&group.children[i])) {
            lay(covered_by(*shape, drawing.paths[shape->path]), clip, of);
        } else if (const auto* inner = std::get_if<Group>(&group.children[i])) {
            lay(*inner, 0, drawing, clipped(*inner, drawing, clip), of);
        }
    }
}

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

std::string Visible::beneath(int property) const {
    std::map<int, std::size_t> cells;
    for (std::size_t i = 0; i < top_.size(); ++i) {
        if (top_[i] == property) {
            ++cells[under_[i]];
        }
    }
    const auto most =
        std::ranges::max_element(cells, {}, [](const auto& each) { return each.second; });
    return most == cells.end() || most->first == 0
               ? std::string()
               : std::string(properties()[static_cast<PropertyId>(most->first - 1)].key);
}

int Visible::thing(std::size_t cell) const {
    if (top_[cell] == 0) {
        return covered_[cell] ? -1 : 0;
    }
    const Property& row = properties()[static_cast<PropertyId>(top_[cell] - 1)];
    return row.substance == SubstanceKind::skin ? -2 : top_[cell];
}

Tops Visible::tops() const {
    Tops tops{frame_, kCell, columns_, {}};
    tops.things.reserve(top_.size());
    for (std::size_t i = 0; i < top_.size(); ++i) {
        tops.things.push_back(thing(i));
    }
    return tops;
}

void Visible::count_crossed(std::vector<Site>& sites) const {
    const auto end = static_cast<long>(columns_);
    for (Site& site : sites) {
        const auto row = static_cast<std::size_t>((site.at.y - frame_.top) / kCell);
        const auto from = static_cast<long>((site.at.x - frame_.left) / kCell);
        const auto number = [&](long column) {
            return thing(std::min(row, rows_ - 1) * columns_ + static_cast<std::size_t>(column));
        };
        const auto crossed = [&](long step) {
            int count = 0;
            int last = number(std::clamp(from, 0L, end - 1));
            for (long column = from + step; column >= 0 && column < end; column += step) {
                const int next = number(column);
                count += next == last ? 0 : crossing_of(next);
                last = next;
            }
            return count;
        };
        site.crossed_from_left = crossed(-1);
        site.crossed_from_right = crossed(1);
    }
}

std::map<std::string, Seen> Visible::seen() const {
    std::map<std::string, Seen> seen;
    for (auto& [number, one] : seen_in(top_)) {
        Seen& material = seen[std::string(properties()[static_cast<PropertyId>(number - 1)].key)];
        material = one;
        material.beneath = beneath(number);
    }
    const double centre = frame_.centre().x;
    for (const auto& [number, part] : seen_in(parts_)) {
        for (const PropertyId choice : choices_[static_cast<std::size_t>(number - 1)]) {
            Seen& all = seen[std::string(properties()[choice].key)];
            all.area += part.area;
            // Of several parts the place with most room on each side counts.
            for (const Site& site : part.sites) {
                const auto same_side = std::ranges::find_if(all.sites, [&](const Site& other) {
                    return (other.at.x < centre) == (site.at.x < centre);
                });
                if (same_side == all.sites.end()) {
                    all.sites.push_back(site);
                } else if (site.room > same_side->room) {
                    *same_side = site;
                }
            }
            all.edges.insert(all.edges.end(), part.edges.begin(), part.edges.end());
            all.levels.insert(all.levels.end(), part.levels.begin(), part.levels.end());
        }
    }
    for (auto& [key, one] : seen) {
        leave_slender(one);
        count_crossed(one.sites);
        count_crossed(one.edges);
        count_crossed(one.levels);
    }
    return seen;
}

}  // namespace platewright
