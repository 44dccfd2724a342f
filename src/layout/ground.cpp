// SPDX-License-Identifier: MIT
// A hint of ground under the feet: a flat wash and short strokes of the graver.
#include "layout/ground.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <numbers>

#include "layout/style.h"

namespace platewright::sheet {
namespace {

constexpr Colour kEarth{0x8c, 0x79, 0x55};
constexpr Colour kGraver{0x6b, 0x5b, 0x45};

/// Irregular but always the same numbers from 0 to 1 (the MINSTD generator).
class Irregular {
  public:
    double next() {
        state_ = state_ * 48271 % 2147483647;
        return static_cast<double>(state_) / 2147483647.0;
    }

    double between(double low, double high) { return low + (high - low) * next(); }

  private:
    std::uint64_t state_ = 1784;
};

/// A flat patch, wide and low, with a slightly waving edge.
Path patch(Point centre, double half_width, double half_height, Irregular& irregular) {
    constexpr int corners = 16;
    std::array<Point, corners> p;
    for (int i = 0; i < corners; ++i) {
        const double turn = 2 * std::numbers::pi * i / corners;
        const double far = irregular.between(0.93, 1.03);
        p[static_cast<std::size_t>(i)] =
            centre + Point{std::cos(turn) * half_width * far, std::sin(turn) * half_height * far};
    }
    const auto at = [&p](int i) { return p[static_cast<std::size_t>((i + corners) % corners)]; };
    Path path;
    path.move_to(at(0));
    for (int i = 0; i < corners; ++i) {
        // Catmull-Rom through the corners.
        path.cubic_to(at(i) + (at(i + 1) - at(i - 1)) * (1.0 / 6),
                      at(i + 1) - (at(i + 2) - at(i)) * (1.0 / 6),
                      at(i + 1));
    }
    path.close();
    return path;
}

/// One cut line of the ground: where it may run, and how it fades towards its ends.
struct Furrow {
    double left = 0;
    double right = 0;
    double y = 0;
    /// Share of strokes left out in the middle and at the ends.
    double sparse_middle = 0;
    double sparse_ends = 0;
    /// Thickness in the middle, mm on the body.
    double thickness = 1.6;
};

/// Strokes along a furrow, long and close in the middle, short and far apart at its ends. `mm`:
/// paper for 1 mm of body.
void cut(Path& path, const Furrow& furrow, double mm, Irregular& irregular) {
    const double middle = (furrow.left + furrow.right) / 2;
    const double reach = std::max((furrow.right - furrow.left) / 2, 1e-6);
    double x = furrow.left + irregular.between(0, 30) * mm;
    while (x < furrow.right) {
        const double off = std::min(std::abs(x - middle) / reach, 1.0);
        const double length = irregular.between(45, 150) * (1 - 0.6 * off) * mm;
        const double end = std::min(x + length, furrow.right);
        const double y = furrow.y + irregular.between(-0.8, 0.8) * mm;
        const double left_out =
            furrow.sparse_middle + (furrow.sparse_ends - furrow.sparse_middle) * off * off;
        const double thickness = furrow.thickness * irregular.between(0.7, 1.15) * (1 - 0.4 * off);
        if (irregular.next() > left_out && end - x > 6 * mm) {
            add_swelled_line(path, {x, y}, {end, y}, thickness * mm);
        }
        x = end + irregular.between(5, 16 + 50 * off) * mm;
    }
}

/// Where the ground of one figure lies.
struct Plot {
    Point centre;
    double half_width = 0;
    double half_height = 0;
};

Plot plot_of(const Footing& foot, const Rect& within, double mm) {
    Plot plot;
    // A little to the right, where the shadow falls.
    plot.centre = {(foot.left + foot.right) / 2 + 30 * mm, foot.sole - 21 * mm};
    plot.half_width = std::min({(foot.right - foot.left) / 2 + 165 * mm,
                                (plot.centre.x - within.left) / 1.12,
                                (within.right - plot.centre.x) / 1.12});
    plot.half_height = 37 * mm;
    return plot;
}

void cut_plot(Path& path, const Plot& plot, const Footing& foot, double mm, Irregular& irregular) {
    constexpr int furrows = 13;
    for (int i = 0; i < furrows; ++i) {
        const double v = 2 * (i + 0.5) / furrows - 1;
        const double reach = plot.half_width * std::sqrt(1 - v * v) * irregular.between(0.84, 1.12);
        cut(path,
            {plot.centre.x - reach,
             plot.centre.x + reach,
             plot.centre.y + v * plot.half_height,
             0.12,
             0.75,
             1.7},
            mm,
            irregular);
    }
    // The shadow of the feet: closer and stronger, to the right of them.
    constexpr int shadows = 6;
    for (int i = 0; i < shadows; ++i) {
        const double y = foot.sole + (-32 + 5.8 * i) * mm;
        const double right =
            std::min(foot.right + (95 - 9 * i) * mm, plot.centre.x + plot.half_width);
        cut(path, {foot.left + (70 + 6 * i) * mm, right, y, 0.1, 0.4, 2.1}, mm, irregular);
    }
}

/// The darkest ground, close under an edge that rests on it: deepest in the middle, and drawn out
/// to the right, away from the light, up to `right`. Its upper side lies hidden behind the figure.
Path close_shadow(const std::vector<Point>& edge, double depth, double mm, double right) {
    constexpr std::size_t step = 3;
    std::vector<Point> upper;
    std::vector<Point> lower;
    const double width = std::max(edge.back().x - edge.front().x, 1e-6);
    for (std::size_t i = 0; i < edge.size(); i += step) {
        const double along = (edge[i].x - edge.front().x) / width;
        upper.push_back(edge[i] + Point{0, -5 * mm});
        const double swell = std::sqrt(std::max(std::sin(std::acos(-1.0) * along), 0.0));
        lower.push_back(edge[i] + Point{depth * along * mm, depth * swell * mm});
    }
    Path path;
    path.move_to(upper.front());
    for (const Point p : lower) {
        path.line_to(p);
    }
    const Point tip = edge.back() + Point{3.2 * depth * mm, 1.5 * mm};
    path.line_to({std::min(tip.x, right), tip.y});
    path.line_to(edge.back() + Point{0, -5 * mm});
    for (auto p = upper.rbegin(); p != upper.rend(); ++p) {
        path.line_to(*p);
    }
    path.close();
    return path;
}

/// The stretches of such an edge that rest on the ground, each of one foot, without the sides that
/// rise from it.
std::vector<std::vector<Point>> resting(const std::vector<Point>& edge, double mm) {
    const double steep = 12 * mm;
    std::vector<std::vector<Point>> stretches;
    for (std::size_t i = 0; i < edge.size(); ++i) {
        if (i == 0 || std::abs(edge[i].y - edge[i - 1].y) > steep) {
            stretches.emplace_back();
        }
        stretches.back().push_back(edge[i]);
    }
    return stretches;
}

void fill_close_shadows(const Footing& foot, double right, double mm, Layer& on) {
    constexpr std::size_t least = 4;
    for (const std::vector<Point>& all : foot.edges) {
        for (const std::vector<Point>& edge : resting(all, mm)) {
            if (edge.size() >= least) {
                on.fill(close_shadow(edge, 16, mm, right), kGraver, 0.22);
                on.fill(close_shadow(edge, 8, mm, right), kGraver, 0.5);
            }
        }
    }
}

}  // namespace

void draw_ground(const std::vector<Footing>& feet, const Rect& within, double factor, Layer& on) {
    Irregular irregular;
    Path strokes;
    for (const Footing& foot : feet) {
        const Plot plot = plot_of(foot, within, factor);
        if (plot.half_width <= 0) {
            continue;
        }
        for (const double size : {0.94, 0.78, 0.6, 0.42}) {
            on.fill(patch(plot.centre, plot.half_width * size, plot.half_height * size, irregular),
                    kEarth,
                    0.05);
        }
        cut_plot(strokes, plot, foot, factor, irregular);
    }
    if (!strokes.empty()) {
        on.fill(std::move(strokes), kGraver, 0.7);
    }
    for (const Footing& foot : feet) {
        fill_close_shadows(foot, within.right, factor, on);
    }
}

}  // namespace platewright::sheet
