// SPDX-License-Identifier: MIT
// What surrounds the figures.
#include "layout/furniture.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "base/text.h"

namespace platewright::sheet {
namespace {

/// The upper left edge of a plate's impression lies in shade, the lower right in light.
constexpr Colour kEdgeShade{0xdb, 0xd1, 0xbb};
constexpr Colour kEdgeLight{0xfd, 0xfb, 0xf4};

/// A shorter bar on A4 is of no use to a ruler.
constexpr double kShortestBar = 18;

/// A scale bar that may be drawn: what it measures, in how many parts.
struct Bar {
    double mm;
    int parts;
    const char* words;
};

constexpr std::array<Bar, 6> kBars{{{1000, 10, "1 m"},
                                    {500, 5, "50 cm"},
                                    {300, 3, "30 cm"},
                                    {200, 4, "20 cm"},
                                    {100, 5, "10 cm"},
                                    {50, 5, "5 cm"}}};

/// Where the scale stands among the labels, and its room: between the first two, or, where that
/// leaves none, in the widest gap there is, also beyond the last.
std::pair<double, double> place_of_scale(const std::vector<Stand>& stands,
                                         const Plan& plan,
                                         Ruler& ruler) {
    const Type type = italic(plan.label_size());
    const double air = 1.3 * plan.label_size();
    std::vector<double> halves;
    for (const std::vector<std::string>& lines : plan.labels) {
        halves.push_back(0);
        for (const std::string& line : lines) {
            halves.back() = std::max(halves.back(), ruler.width(line, type) / 2);
        }
    }
    const double needed = ruler.width(scale_words(plan.factor), italic(plan.style.small()));
    std::pair<double, double> best;
    for (std::size_t i = 0; i < stands.size(); ++i) {
        const double left = stands[i].at.x + halves[i] + air;
        const bool last = i + 1 == stands.size();
        const double right = last ? plan.neat.right : stands[i + 1].at.x - halves[i + 1] - air;
        const std::pair<double, double> gap{(left + right) / 2, right - left};
        if (i == 0 && gap.second >= needed) {
            return gap;
        }
        best = gap.second > best.second ? gap : best;
    }
    return best;
}

}  // namespace

std::optional<Gap> gap_at(const Plan& plan,
                          const std::vector<Stand>& stands,
                          std::size_t index,
                          double top,
                          double bottom) {
    Gap gap{plan.neat.left, plan.beside ? plan.words.left : plan.neat.right};
    if (index > 0) {
        const Stand& stand = stands[index - 1];
        const auto reach = stand.silhouette.reach((top - stand.at.y) / plan.factor,
                                                  (bottom - stand.at.y) / plan.factor);
        gap.left = stand.at.x + (reach ? reach->second * plan.factor : 0);
    }
    if (index < stands.size()) {
        const Stand& stand = stands[index];
        const auto reach = stand.silhouette.reach((top - stand.at.y) / plan.factor,
                                                  (bottom - stand.at.y) / plan.factor);
        gap.right = stand.at.x + (reach ? reach->first * plan.factor : 0);
    }
    return gap.right > gap.left ? std::optional(gap) : std::nullopt;
}

void draw_frame(const Plan& plan, Layer& on) {
    draw_frame(plan.plate_mark, plan.neat, plan.style.unit, on);
}

void draw_frame(const Rect& mark, const Rect& neat, double unit, Layer& on) {
    on.fill(rectangle(mark), kPlateTone);
    Path shade;
    shade.move_to({mark.left, mark.bottom});
    shade.line_to({mark.left, mark.top});
    shade.line_to({mark.right, mark.top});
    on.stroke(std::move(shade), kEdgeShade, 0.3 * unit);
    Path light;
    light.move_to({mark.right, mark.top});
    light.line_to({mark.right, mark.bottom});
    light.line_to({mark.left, mark.bottom});
    on.stroke(std::move(light), kEdgeLight, 0.45 * unit);
    const double thin = std::max(0.1, 0.12 * unit);
    on.stroke(rectangle(neat), kInk, std::max(0.22, 0.32 * unit));
    on.stroke(rectangle(neat.grown(-1.05 * unit)), kInk, thin);
}

void draw_swelled_rule(Point middle, double width, Layer& on) {
    Path rule;
    const double thickness = width * 0.0105;
    const double lozenge = width * 0.02;
    add_swelled_line(
        rule, middle - Point{width / 2, 0}, middle - Point{lozenge * 1.6, 0}, thickness);
    add_swelled_line(
        rule, middle + Point{lozenge * 1.6, 0}, middle + Point{width / 2, 0}, thickness);
    on.fill(std::move(rule), kInk);
    on.fill(polygon({middle - Point{lozenge, 0},
                     middle - Point{0, lozenge * 0.62},
                     middle + Point{lozenge, 0},
                     middle + Point{0, lozenge * 0.62}}),
            kInk);
}

std::string scale_words(double factor) {
    return "1 : " + format_number(1 / factor, 1);
}

void draw_scale_bar(const Plan& plan, Point middle, double room, Ruler& ruler, Layer& on) {
    const Type type = italic(plan.style.small());
    const std::string scale = scale_words(plan.factor);
    const double space = type.size * 0.6;
    for (const Bar& bar : kBars) {
        const double length = bar.mm * plan.factor;
        if (length < kShortestBar * plan.style.unit) {
            break;
        }
        const double before = ruler.width(scale, type) + space;
        const double after = space + ruler.width(bar.words, type);
        if (before + length + after > room) {
            continue;
        }
        const double left = middle.x - (before + length + after) / 2 + before;
        const double height = 0.95 * plan.style.unit;
        const double top = middle.y - type.size * 0.22 - height / 2;
        const double step = length / bar.parts;
        on.outlined(rectangle({left, top, left + length, top + height}),
                    kPlateTone,
                    kInk,
                    std::max(0.1, 0.12 * plan.style.unit));
        for (int i = 0; i < bar.parts; i += 2) {
            on.fill(rectangle({left + i * step, top, left + (i + 1) * step, top + height}), kInk);
        }
        on.words(scale, {left - space, middle.y}, type, kInk, Align::end);
        on.words(bar.words, {left + length + space, middle.y}, type, kInk);
        return;
    }
    on.words(scale, middle, type, kInk, Align::middle);
}

void put_labels(const std::vector<Stand>& stands, const Plan& plan, Ruler& ruler, Page& page) {
    Layer labels("labels");
    const Type type = italic(plan.label_size());
    const double baseline = plan.figures.bottom + plan.label_size() * 0.6;
    for (std::size_t i = 0; i < stands.size(); ++i) {
        double down = baseline;
        for (const std::string& line : plan.labels[i]) {
            labels.words(line, {stands[i].at.x, down}, type, kInk, Align::middle);
            down += plan.label_leading();
        }
    }
    std::move(labels).put_on(page);
    if (stands.size() > 1) {
        Layer scale("scale");
        const auto [middle, room] = place_of_scale(stands, plan, ruler);
        draw_scale_bar(plan, {middle, baseline}, room, ruler, scale);
        std::move(scale).put_on(page);
    }
}

}  // namespace platewright::sheet
