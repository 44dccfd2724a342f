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
/// Of the row of figures, what the scale beneath their labels may take.
constexpr double kBarShare = 0.36;

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

Type scale_type(const Plan& plan) {
    return lining(italic(plan.style.small()));
}

/// Where the scale stands between two labels, or beyond the second, and its room.
std::pair<double, double> place_of_scale(const std::vector<Stand>& stands,
                                         const Plan& plan,
                                         Ruler& ruler) {
    const Type type = italic(plan.label_size());
    const double air = 1.3 * plan.label_size();
    const double more_air = 0.5 * plan.label_size();
    const auto half_of = [&](const std::vector<std::string>& lines) {
        double half = 0;
        for (const std::string& line : lines) {
            half = std::max(half, ruler.width(line, type) / 2);
        }
        return half;
    };
    const double from = stands.front().at.x + half_of(plan.labels.front());
    const double to = stands.back().at.x - half_of(plan.labels.back());
    const double beyond = stands.back().at.x + half_of(plan.labels.back()) + air;
    const double needed = ruler.width(scale_words(plan.factor), scale_type(plan));
    const double between = to - from - 2 * air;
    if (between < needed && between < plan.neat.right - beyond) {
        return {(beyond + plan.neat.right) / 2, plan.neat.right - beyond};
    }
    // With little air the three read as one line of words.
    return {(from + to) / 2, std::max(between - 2 * more_air, std::min(between, needed))};
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

Gap column_at(const Plan& plan,
              const std::vector<Stand>& stands,
              std::size_t index,
              const WordsBetween& words) {
    // In ems: how wide it is, and how wide at least where the figures come near.
    constexpr double flush = 6.6;
    constexpr double narrowest = 4.4;
    const double axis = (stands[index - 1].at.x + stands[index].at.x) / 2;
    const double least = narrowest / 2 * words.size;
    Gap column{axis - flush / 2 * words.size, axis + flush / 2 * words.size};
    for (double y = plan.figures.top; y + words.size < words.lowest; y += words.size / 2) {
        const auto room = gap_at(plan, stands, index, y, y + words.size);
        if (room) {
            column.left = std::clamp(room->left + words.line, column.left, axis - least);
            column.right = std::clamp(room->right - words.line, axis + least, column.right);
        }
    }
    return column;
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
    const Type type = scale_type(plan);
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
        if (plan.scale_below()) {
            std::size_t lines = 1;
            for (const std::vector<std::string>& label : plan.labels) {
                lines = std::max(lines, label.size());
            }
            const double down = static_cast<double>(lines - 1) * plan.label_leading();
            draw_scale_bar(plan,
                           {plan.figures.centre().x, baseline + down + plan.scale_leading()},
                           kBarShare * plan.figures.width(),
                           ruler,
                           scale);
        } else {
            const auto [middle, room] = place_of_scale(stands, plan, ruler);
            draw_scale_bar(plan, {middle, baseline}, room, ruler, scale);
        }
        std::move(scale).put_on(page);
    }
}

}  // namespace platewright::sheet
