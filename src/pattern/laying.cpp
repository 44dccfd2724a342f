// SPDX-License-Identifier: MIT
// Bottom-left filling with outlines, row by row.
#include "pattern/laying.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <limits>
#include <utility>

#include "pattern/shapes.h"

namespace platewright {
namespace {

/// Outlines are looked at in rows of this height.
constexpr double kRow = 5;

/// From where to where something reaches within a row.
using Span = std::pair<double, double>;

/// A piece in one of the ways in which it may lie, its box at (0, 0).
struct Pose {
    Chain outline;
    /// What has to be added to a point of the piece, after it was mirrored and turned.
    Point shift;
    bool turned = false;
    /// Row by row with its share of the space between pieces; the first lies above the box.
    std::vector<Span> rows;
    double width = 0;
    double height = 0;
};

/// One thing to be laid.
struct ToLay {
    std::size_t piece = 0;
    bool mirrored = false;
    std::vector<Pose> poses;
    double area = 0;
};

std::vector<Span> rows_of(const Chain& outline, double height, double around) {
    const auto number = static_cast<std::size_t>(std::ceil(height / kRow)) + 2;
    const auto near = static_cast<std::size_t>(std::ceil(around / kRow));
    std::vector<Span> exact(number + 2 * near, {1e9, -1e9});
    const auto take = [&](double y, double x) {
        const auto row = static_cast<std::size_t>(std::max(0.0, y / kRow)) + near;
        Span& span = exact[std::min(row, exact.size() - 1)];
        span = {std::min(span.first, x), std::max(span.second, x)};
    };
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point a = outline[i];
        const Point b = outline[(i + 1) % outline.size()];
        take(a.y, a.x);
        // Where it goes from one row into the next it belongs to both.
        const double low = std::min(a.y, b.y);
        const double high = std::max(a.y, b.y);
        for (double y = std::ceil(low / kRow) * kRow; y <= high && high > low; y += kRow) {
            const double x = a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y);
            take(y, x);
            take(y - kRow / 2, x);
        }
    }
    std::vector<Span> rows(exact.size(), {1e9, -1e9});
    for (std::size_t i = 0; i < rows.size(); ++i) {
        for (std::size_t j = i - std::min(i, near); j <= std::min(i + near, rows.size() - 1); ++j) {
            rows[i].first = std::min(rows[i].first, exact[j].first - around);
            rows[i].second = std::max(rows[i].second, exact[j].second + around);
        }
    }
    return rows;
}

/// Occupied parts of a cloth, row by row, from left to right.
class Cloth {
  public:
    explicit Cloth(double width) : width_(width) {}

    /// The least x at which it may lie with its first row there; none if it does not fit.
    [[nodiscard]] double least_x(const Pose& pose, std::size_t first_row) const {
        // Less than rounding makes of a place that just touches.
        constexpr double touch = 1e-6;
        double x = 0;
        for (bool moved = true; moved;) {
            moved = false;
            for (std::size_t i = 0; i < pose.rows.size() && first_row + i < rows_.size(); ++i) {
                const Span& row = pose.rows[i];
                for (const Span& taken : rows_[first_row + i]) {
                    if (row.second >= row.first && taken.first + touch < x + row.second &&
                        x + row.first + touch < taken.second) {
                        x = taken.second - row.first;
                        moved = true;
                    }
                }
            }
            if (x + pose.width > width_) {
                return -1;
            }
        }
        return x;
    }

    void take(const Pose& pose, double x, std::size_t first_row) {
        rows_.resize(std::max(rows_.size(), first_row + pose.rows.size()));
        for (std::size_t i = 0; i < pose.rows.size(); ++i) {
            if (pose.rows[i].second >= pose.rows[i].first) {
                std::vector<Span>& row = rows_[first_row + i];
                row.emplace_back(x + pose.rows[i].first, x + pose.rows[i].second);
                std::ranges::sort(row);
            }
        }
    }

    void keep_free(Point corner) {
        rows_.resize(static_cast<std::size_t>(std::ceil(corner.y / kRow)));
        for (std::vector<Span>& row : rows_) {
            row.emplace_back(-1e6, corner.x);
        }
    }

  private:
    double width_;
    std::vector<std::vector<Span>> rows_;
};

Pose pose_of(Chain outline, bool turned, double around) {
    Pose pose;
    pose.turned = turned;
    for (Point& p : outline) {
        p = turned ? p * -1 : p;
    }
    const Rect box = shapes::box(outline);
    pose.shift = {-box.left, -box.top};
    for (Point& p : outline) {
        p = p + pose.shift;
    }
    pose.width = box.width();
    pose.height = box.height();
    pose.rows = rows_of(outline, pose.height, around);
    pose.outline = std::move(outline);
    return pose;
}

/// Left for right.
Chain mirrored_over(const Chain& outline) {
    return shapes::mirrored(outline, {0, 0}, {0, 1});
}

class Layer {
  public:
    Layer(const std::vector<PatternPiece>& pieces, const LayingRules& rules) : rules_(rules) {
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            const int number = rules.as_cut ? pieces[i].number : 1;
            for (int j = 0; j < number; ++j) {
                items_.push_back(item(pieces[i], i, pieces[i].paired && j % 2 == 1));
            }
        }
    }

    [[nodiscard]] Laying best() const {
        using Measure = std::function<double(const ToLay&)>;
        const std::array<Measure, 3> measures{
            [](const ToLay& each) { return each.poses.front().height; },
            [](const ToLay& each) { return each.poses.front().width; },
            [](const ToLay& each) { return each.area; }};
        Laying best;
        for (const Measure& measure : measures) {
            std::vector<const ToLay*> order;
            for (const ToLay& each : items_) {
                order.push_back(&each);
            }
            std::ranges::stable_sort(
                order, [&](const ToLay* a, const ToLay* b) { return measure(*a) > measure(*b); });
            Laying tried = laid(order);
            if (best.pieces.empty() || tried.length < best.length) {
                best = std::move(tried);
            }
        }
        return best;
    }

  private:
    const LayingRules& rules_;
    std::vector<ToLay> items_;

    [[nodiscard]] ToLay item(const PatternPiece& piece, std::size_t index, bool mirrored) const {
        ToLay made;
        made.piece = index;
        made.mirrored = mirrored;
        Chain outline = mirrored ? mirrored_over(piece.cut) : piece.cut;
        if (rules_.as_cut && piece.on_fold) {
            outline = shapes::joined({outline, mirrored_over(outline)});
        }
        const Rect box = shapes::box(outline);
        if (rules_.as_cut && box.width() + rules_.between > rules_.width) {
            for (Point& p : outline) {
                p = {p.y, -p.x};
            }
        }
        made.area = shapes::area(outline);
        made.poses.push_back(pose_of(outline, /*turned=*/false, rules_.between / 2));
        if (rules_.as_cut && !rules_.one_way) {
            made.poses.push_back(pose_of(outline, /*turned=*/true, rules_.between / 2));
        }
        return made;
    }

    [[nodiscard]] Laying laid(const std::vector<const ToLay*>& order) const {
        Cloth cloth(std::max(rules_.width, widest()));
        cloth.keep_free(rules_.corner);
        Laying made;
        made.width = rules_.width;
        made.length = rules_.corner.y;
        for (const ToLay* each : order) {
            const Place place = first_place(*each, cloth);
            cloth.take(*place.pose, place.x, place.row);
            put(*each, *place.pose, {place.x, static_cast<double>(place.row) * kRow}, made);
        }
        return made;
    }

    /// A free place of one pose.
    struct Place {
        const Pose* pose = nullptr;
        double x = 0;
        std::size_t row = 0;
    };

    /// The first from the beginning of the cloth, then from its left.
    static Place first_place(const ToLay& item, const Cloth& cloth) {
        Place best;
        for (const Pose& pose : item.poses) {
            const std::size_t last =
                best.pose == nullptr ? std::numeric_limits<std::size_t>::max() : best.row;
            Place tried{&pose, -1, 0};
            while ((tried.x = cloth.least_x(pose, tried.row)) < 0 && tried.row < last) {
                ++tried.row;
            }
            const bool better = best.pose == nullptr || tried.row < best.row || tried.x < best.x;
            best = tried.x >= 0 && better ? tried : best;
        }
        return best;
    }

    [[nodiscard]] double widest() const {
        double widest = 0;
        for (const ToLay& each : items_) {
            widest = std::max(widest, each.poses.front().width);
        }
        return widest;
    }

    static void put(const ToLay& item, const Pose& pose, Point at, Laying& made) {
        LaidPiece& to = made.pieces.emplace_back();
        to.piece = item.piece;
        to.mirrored = item.mirrored;
        to.turned = pose.turned;
        to.at = at + pose.shift;
        for (const Point p : pose.outline) {
            to.outline.push_back(at + p);
        }
        made.covered += item.area;
        made.length = std::max(made.length, at.y + pose.height);
    }
};

}  // namespace

Laying laid_out(const std::vector<PatternPiece>& pieces, const LayingRules& rules) {
    return Layer(pieces, rules).best();
}

}  // namespace platewright
