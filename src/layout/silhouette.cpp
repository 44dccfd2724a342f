// SPDX-License-Identifier: MIT
// How far a drawing reaches to either side at each height, and how low.
#include "layout/silhouette.h"

#include <algorithm>
#include <cmath>

namespace platewright::sheet {
namespace {

/// On a man two metres high a band is then 2 cm.
constexpr std::size_t kBands = 100;
/// Of a man about 6 mm: a shoe is some thirty of them.
constexpr std::size_t kColumns = 150;
/// Curves are followed in this many straight steps, which is true to a few mm on the body.
constexpr int kSteps = 6;

Point on_cubic(Point a, Point b, Point c, Point d, double t) {
    const double s = 1 - t;
    return a * (s * s * s) + b * (3 * s * s * t) + c * (3 * s * t * t) + d * (t * t * t);
}

}  // namespace

Silhouette::Silhouette(const Drawing& drawing, const Rect& frame)
    : frame_(frame),
      band_height_(std::max(frame.height(), 1.0) / kBands),
      bands_(kBands),
      column_width_(std::max(frame.width(), 1.0) / kColumns),
      lows_(kColumns, frame.top - 1) {
    if (!frame_.empty()) {
        add_group(drawing, drawing.root);
    }
}

std::optional<std::pair<double, double>> Silhouette::reach(double top, double bottom) const {
    Rect all;
    for (std::size_t i = band_at(top); i <= band_at(bottom); ++i) {
        all.include(bands_[i]);
    }
    if (all.empty()) {
        return std::nullopt;
    }
    return std::pair{all.left, all.right};
}

std::vector<std::vector<Point>> Silhouette::undersides(double top) const {
    std::vector<std::vector<Point>> all;
    bool before = false;
    for (std::size_t i = 0; i < kColumns; ++i) {
        const bool low = lows_[i] > top;
        if (low) {
            if (!before) {
                all.emplace_back();
            }
            const double middle = static_cast<double>(i) + 0.5;
            all.back().push_back({frame_.left + middle * column_width_, lows_[i]});
        }
        before = low;
    }
    return all;
}

void Silhouette::add_group(const Drawing& drawing, const Group& group) {
    if (!group.clip.empty()) {
        for (const PathId id : group.clip) {
            add_path(drawing.paths[id], {});
        }
        return;
    }
    for (const Node& node : group.children) {
        if (const auto* shape = std::get_if<Shape>(&node)) {
            add_path(drawing.paths[shape->path], shape->placing());
        } else if (const auto* inner = std::get_if<Group>(&node)) {
            add_group(drawing, *inner);
        }
    }
}

void Silhouette::add_path(const Path& path, const Affine& placing) {
    std::size_t next = 0;
    Point here;
    Point start;
    for (const Path::Verb verb : path.verbs) {
        switch (verb) {
            case Path::Verb::move:
                here = start = placing.apply(path.points[next++]);
                break;
            case Path::Verb::line: {
                const Point to = placing.apply(path.points[next++]);
                add_line(here, to);
                here = to;
                break;
            }
            case Path::Verb::cubic: {
                const Point a = here;
                for (int i = 1; i <= kSteps; ++i) {
                    const Point to = on_cubic(a,
                                              placing.apply(path.points[next]),
                                              placing.apply(path.points[next + 1]),
                                              placing.apply(path.points[next + 2]),
                                              i / static_cast<double>(kSteps));
                    add_line(here, to);
                    here = to;
                }
                next += 3;
                break;
            }
            case Path::Verb::close:
                add_line(here, start);
                here = start;
                break;
        }
    }
}

void Silhouette::add_line(Point from, Point to) {
    if (from.y > to.y) {
        std::swap(from, to);
    }
    const auto inside = [this](Point p) {
        return Point{std::clamp(p.x, frame_.left, frame_.right),
                     std::clamp(p.y, frame_.top, frame_.bottom)};
    };
    box_.include(inside(from));
    box_.include(inside(to));
    add_to_columns(inside(from), inside(to));
    const std::size_t first = band_at(from.y);
    const std::size_t last = band_at(to.y);
    const double rise = to.y - from.y;
    for (std::size_t i = first; i <= last; ++i) {
        const double top = std::max(from.y, frame_.top + static_cast<double>(i) * band_height_);
        const double bottom = std::min(to.y, top + band_height_);
        const auto at = [&](double y) {
            const double t = rise > 0 ? std::clamp((y - from.y) / rise, 0.0, 1.0) : 0.0;
            return inside(from + (to - from) * t);
        };
        bands_[i].include(at(top));
        bands_[i].include(at(bottom));
        if (rise <= 0) {
            bands_[i].include(inside(to));
        }
    }
}

void Silhouette::add_to_columns(Point from, Point to) {
    if (from.x > to.x) {
        std::swap(from, to);
    }
    const double run = to.x - from.x;
    const auto at = [&](double x) {
        const double t = run > 0 ? std::clamp((x - from.x) / run, 0.0, 1.0) : 0.0;
        return from.y + (to.y - from.y) * t;
    };
    for (std::size_t i = column_at(from.x); i <= column_at(to.x); ++i) {
        const double left = frame_.left + static_cast<double>(i) * column_width_;
        const double low =
            run > 0 ? std::max(at(left), at(left + column_width_)) : std::max(from.y, to.y);
        lows_[i] = std::max(lows_[i], low);
    }
}

std::size_t Silhouette::column_at(double x) const {
    const double column = std::floor((x - frame_.left) / column_width_);
    return static_cast<std::size_t>(std::clamp(column, 0.0, static_cast<double>(kColumns - 1)));
}

std::size_t Silhouette::band_at(double y) const {
    const double band = std::floor((y - frame_.top) / band_height_);
    return static_cast<std::size_t>(std::clamp(band, 0.0, static_cast<double>(kBands - 1)));
}

}  // namespace platewright::sheet
