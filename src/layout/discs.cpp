// SPDX-License-Identifier: MIT
// Numbers and letters in small discs beside a picture.
#include "layout/discs.h"

#include <utility>

#include "layout/ruler.h"
#include "layout/style.h"

namespace platewright::sheet {

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
        on.stroke(line, kPaper, 0.5 * unit, 0.75);
        on.stroke(std::move(line), kInk, 0.14 * unit);
        on.outlined(ellipse(placed.site, 0.5 * unit, 0.5 * unit), kInk, kPaper, 0.16 * unit);
        draw_disc(centre, signs[placed.number], type, 0.14 * unit, on);
        on.end_link();
    }
}

}  // namespace platewright::sheet
