// SPDX-License-Identifier: MIT
// A figure with numbers beside it and what they mean.
#include "layout/numbered_figure.h"

#include <algorithm>
#include <utility>

#include "base/text.h"
#include "layout/callouts.h"
#include "layout/table.h"

namespace platewright::sheet {
namespace {

/// A disc, in ems of its number.
constexpr double kDisc = 0.82;
/// The narrowest list with a column of materials, in ems.
constexpr double kLeastForMaterials = 15;

void draw_disc(Point centre, std::size_t number, const Type& type, double line, Layer& on) {
    on.outlined(ellipse(centre, type.size * kDisc, type.size * kDisc), kPaper, kInk, line);
    // Old-style figures stand a little higher than the x-height: this is their middle.
    on.words(
        std::to_string(number), {centre.x, centre.y + type.size * 0.25}, type, kInk, Align::middle);
}

/// What links call a number on the figure, and its line in the list.
std::string number_anchor(std::size_t number) {
    return "number-" + std::to_string(number);
}

std::string part_anchor(std::size_t number) {
    return "part-" + std::to_string(number);
}

double highest_site(const HandoutPart& part) {
    return std::ranges::min(part.sites, {}, &Point::y).y;
}

void warn_of(const HandoutPart& part, Press& press) {
    Diagnostic warning;
    warning.severity = Severity::warning;
    warning.code = "layout.too-many";
    warning.message = "the figure has no room for the number of " + quoted(part.name);
    warning.hints.emplace_back("choose a larger paper");
    press.problems.add(std::move(warning));
}

/// The lines and discs of those numbers that have room; returns which have none.
std::vector<std::size_t> put_numbers(const std::vector<Callout>& callouts,
                                     const Rect& figure,
                                     const Numbering& in,
                                     Press& press,
                                     Slab& slab) {
    const double width = in.width;
    const Type type = roman(press.style.small);
    const double disc = type.size * kDisc;
    const double column = disc * 2.6;
    const CalloutColumns columns{{0, figure.top, column, figure.bottom},
                                 {width - column, figure.top, width, figure.bottom}};
    // Leaves between two numbers at least what a disc takes.
    const CalloutPlan plan =
        place_callouts(callouts, columns, roman(type.size * 1.32), press.ruler);
    for (const PlacedCallout& placed : plan.placed) {
        const double side = placed.on_left ? disc : width - disc;
        const Point centre{side, placed.box.centre().y};
        const Point edge{centre.x + (placed.on_left ? disc : -disc), centre.y};
        const std::size_t number = in.first + placed.number;
        slab.content.begin_link(
            {number_anchor(number),
             part_anchor(number),
             {centre.x - disc, centre.y - disc, centre.x + disc, centre.y + disc}});
        Path line;
        line.move_to(edge);
        line.line_to({placed.bend.x, centre.y});
        line.line_to(placed.site);
        slab.content.stroke(line, kPaper, 0.5 * press.style.unit, 0.75);
        slab.content.stroke(std::move(line), kInk, 0.14 * press.style.unit);
        slab.content.outlined(ellipse(placed.site, 0.5 * press.style.unit, 0.5 * press.style.unit),
                              kInk,
                              kPaper,
                              0.16 * press.style.unit);
        draw_disc(centre, number, type, 0.14 * press.style.unit, slab.content);
        slab.content.end_link();
    }
    return plan.left_out;
}

/// What the numbers mean.
std::vector<Slab> list_of(const std::vector<HandoutPart>& parts,
                          const std::vector<std::size_t>& without_number,
                          const Numbering& in,
                          Press& press) {
    Table table;
    table.row_rules = false;
    // Where there is no room for a column of materials, each stands beneath its thing.
    const bool beneath = in.width < kLeastForMaterials * press.style.body;
    table.columns = {{"", Align::end, false}, {"", Align::start, beneath}};
    if (!beneath) {
        table.columns.push_back({"", Align::start, true});
    }
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const bool numbered = std::ranges::find(without_number, i) == without_number.end();
        Cell number;
        number.words = numbered ? std::to_string(in.first + i) : "";
        Cell what;
        what.words = parts[i].name;
        if (parts[i].colour) {
            what.swatch = Swatch{*parts[i].colour, parts[i].hatch, parts[i].metal, 0, 0};
        }
        if (beneath) {
            what.note = parts[i].material;
            table.rows.push_back({{number, what}, false});
            continue;
        }
        Cell of;
        of.words = parts[i].material;
        of.voice = Voice::italic;
        table.rows.push_back({{number, what, of}, false});
    }
    return table_slabs(table, in.width, press);
}

}  // namespace

Slab numbered_figure(const Figure& figure,
                     std::vector<HandoutPart> parts,
                     const Numbering& in,
                     Press& press) {
    std::ranges::stable_sort(parts, {}, highest_site);
    const double factor = 1 / figure.scale;
    const double height = figure.frame.height() * factor;
    const double room = in.width * kFigureShare;
    const Picture picture{figure.drawing, figure.frame, factor, "", ""};
    const double left = (room - figure.frame.width() * factor) / 2;
    Slab slab;
    slab.pictures.push_back(placed_at(picture, {left, 0}));
    std::vector<Callout> callouts;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        Callout callout{std::to_string(in.first + i), {}, {}};
        for (const Point site : parts[i].sites) {
            add_site(site, figure.frame.centre().x, slab.pictures.front(), callout);
        }
        callouts.push_back(std::move(callout));
    }
    const std::vector<std::size_t> left_out =
        put_numbers(callouts, {left, 0, room - left, height}, {room, in.first}, press, slab);
    for (const std::size_t number : left_out) {
        warn_of(parts[number], press);
    }
    const double list_left = room + press.style.gutter;
    std::vector<Slab> list = list_of(parts, left_out, {in.width - list_left, in.first}, press);
    double list_height = 0;
    for (const Slab& row : list) {
        list_height += row.space_before + row.height;
    }
    double y = std::max(0.0, (height - list_height) / 2);
    for (std::size_t i = 0; i < list.size(); ++i) {
        const Slab& row = list[i];
        y += row.space_before;
        slab.content.begin_link({part_anchor(in.first + i),
                                 number_anchor(in.first + i),
                                 {list_left, y, in.width, y + row.height}});
        slab.content.append(row.content, {list_left, y});
        slab.content.end_link();
        y += row.height;
    }
    slab.height = std::max(height, y);
    return slab;
}

}  // namespace platewright::sheet
