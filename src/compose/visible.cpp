// SPDX-License-Identifier: MIT
// What of a figure can be seen.
#include "compose/visible.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "compose/brush.h"
#include "compose/curve.h"

namespace platewright {
namespace {

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

Outlines moved(Outlines outlines, const Affine& by) {
    for (std::vector<Point>& outline : outlines) {
        for (Point& p : outline) {
            p = by.apply(p);
        }
    }
    return outlines;
}

/// What a shape covers; a line alone covers its width.
Outlines covered_by(const Shape& shape, const Path& path) {
    if (shape.fill && shape.fill->alpha > 0.9) {
        return moved(outlines(path), shape.placing());
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
    return moved(std::move(bands), shape.placing());
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
