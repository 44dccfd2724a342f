// SPDX-License-Identifier: MIT
// Numbers and letters in small discs beside a picture.
#include "layout/discs.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "layout/ruler.h"
#include "layout/style.h"

namespace platewright::sheet {
namespace {

/// A sign and its name in a legend, and how much of a line they take.
struct LegendEntry {
    std::string sign;
    std::string name;
    double width = 0;
};

std::vector<std::vector<LegendEntry>> in_even_lines(const std::vector<LegendEntry>& entries,
                                                    double width) {
    double whole = 0;
    for (const LegendEntry& entry : entries) {
        whole += entry.width;
    }
    const double room = whole / std::max(1.0, std::ceil(whole / (width * 0.94)));
    std::vector<std::vector<LegendEntry>> lines(1);
    double used = 0;
    for (const LegendEntry& entry : entries) {
        if (!lines.back().empty() && used + 0.5 * entry.width > room) {
            lines.emplace_back();
            used = 0;
        }
        lines.back().push_back(entry);
        used += entry.width;
    }
    return lines;
}

}  // namespace

double disc_column(double size) {
    return size * kDisc * 2.6;
}

CalloutPlan place_discs(const std::vector<Callout>& callouts,
                        const CalloutColumns& columns,
                        double size,
                        Ruler& ruler) {
    // Leaves between two signs at least what a disc takes.
    return place_callouts(callouts, columns, roman(size * 1.32), ruler);
}

Point disc_centre(const PlacedCallout& placed, const CalloutColumns& columns, double size) {
    const double radius = size * kDisc;
    return {placed.on_left ? columns.left.left + radius : columns.right.right - radius,
            placed.box.centre().y};
}

void draw_disc(Point centre, const std::string& sign, const Type& type, double line, Layer& on) {
    on.outlined(ellipse(centre, type.size * kDisc, type.size * kDisc), kPaper, kInk, line);
    // Half the height of figures, and of small letters.
    const Type set = with_figures(sign, type);
    const double half = set.lining ? 0.32 : 0.25;
    on.words(sign, {centre.x, centre.y + type.size * half}, set, kInk, Align::middle);
}

void draw_discs(const CalloutPlan& plan,
                const std::vector<std::string>& signs,
                const CalloutColumns& columns,
                const Type& type,
                double unit,
                Layer& on) {
    for (const PlacedCallout& placed : plan.placed) {
        const Point centre = disc_centre(placed, columns, type.size);
        const double radius = type.size * kDisc;
        on.begin_link(placed.link);
        Path line;
        line.move_to({centre.x + (placed.on_left ? radius : -radius), centre.y});
        line.line_to({placed.bend.x, centre.y});
        line.line_to({placed.turn.x, placed.turn == placed.bend ? centre.y : placed.turn.y});
        line.line_to(placed.site);
        // Paper on both sides of the line keeps it legible on dark cloth.
        on.stroke(line, kPaper, 0.34 * unit, 0.8);
        on.stroke(std::move(line), kInk, 0.14 * unit);
        on.outlined(ellipse(placed.site, 0.5 * unit, 0.5 * unit), kInk, kPaper, 0.16 * unit);
        draw_disc(centre, signs[placed.number], type, 0.14 * unit, on);
        on.end_link();
    }
}

Slab disc_legend(const std::vector<std::string>& signs,
                 const std::vector<std::string>& names,
                 double width,
                 Press& press) {
    const Type type = italic(press.style.small);
    const Type sign = roman(press.style.small);
    const double radius = sign.size * kDisc;
    const double before = 2 * radius + 0.45 * type.size;
    const double apart = 1.6 * type.size;
    const double leading = 2.4 * radius + 0.3 * type.size;
    std::vector<LegendEntry> entries;
    for (std::size_t i = 0; i < signs.size() && i < names.size(); ++i) {
        if (!signs[i].empty()) {
            const double wide = before + press.ruler.width(names[i], type) + apart;
            entries.push_back({signs[i], names[i], wide});
        }
    }
    Slab slab;
    slab.space_before = press.style.body;
    for (const std::vector<LegendEntry>& line : in_even_lines(entries, width)) {
        double x = (width + apart) / 2;
        for (const LegendEntry& entry : line) {
            x -= entry.width / 2;
        }
        const double y = slab.height + leading / 2;
        for (const LegendEntry& entry : line) {
            draw_disc({x + radius, y}, entry.sign, sign, 0.14 * press.style.unit, slab.content);
            slab.content.words(entry.name, {x + before, y + 0.25 * type.size}, type, kInk);
            x += entry.width;
        }
        slab.height += leading;
    }
    return slab;
}

}  // namespace platewright::sheet
