// SPDX-License-Identifier: MIT
// A figure with numbers beside it and what they mean.
#include "layout/numbered_figure.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "base/text.h"
#include "layout/discs.h"
#include "layout/table.h"

namespace platewright::sheet {
namespace {

/// On either side of a figure in a narrow column, and at most, in columns of discs.
constexpr double kBeside = 1.1;
constexpr double kFarBeside = 5;
/// The narrowest list with a column of materials, in ems.
constexpr double kLeastForMaterials = 15;

/// What links call a number on the figure, and its line in the list.
std::string number_anchor(std::size_t number) {
    return "number-" + std::to_string(number);
}

std::string part_anchor(std::size_t number) {
    return "part-" + std::to_string(number);
}

double highest_site(const HandoutPart& part) {
    const auto height = [](const Site& site) { return site.at.y; };
    return height(std::ranges::min(part.sites, {}, height));
}

/// Numbers run down the page on both sides at once: parts and their places in that order, what has
/// no place last.
void number_downward(std::vector<HandoutPart>& parts, CalloutPlan& plan) {
    std::ranges::stable_sort(plan.placed, {}, [](const PlacedCallout& placed) {
        return std::pair(std::floor(placed.box.centre().y * 4), !placed.on_left);
    });
    std::vector<HandoutPart> ordered;
    for (PlacedCallout& placed : plan.placed) {
        ordered.push_back(std::move(parts[placed.number]));
        placed.number = ordered.size() - 1;
    }
    std::ranges::sort(plan.left_out);
    for (std::size_t& number : plan.left_out) {
        ordered.push_back(std::move(parts[number]));
        number = ordered.size() - 1;
    }
    std::ranges::reverse(plan.left_out);
    parts = std::move(ordered);
}

void warn_of(const HandoutPart& part, Press& press) {
    Diagnostic warning;
    warning.severity = Severity::warning;
    warning.code = "layout.too-many";
    warning.message = "the figure has no room for the number of " + quoted(part.name);
    warning.hints.emplace_back("choose a larger paper");
    press.problems.add(std::move(warning));
}

/// The lines and discs of those numbers that have room, after which the parts are ordered; returns
/// which have none.
std::vector<std::size_t> put_numbers(const std::vector<Callout>& callouts,
                                     const Rect& figure,
                                     const Numbering& in,
                                     Press& press,
                                     Slab& slab,
                                     std::vector<HandoutPart>& parts) {
    const Type type = roman(press.style.small);
    const double radius = type.size * kDisc;
    const double column = disc_column(type.size);
    const CalloutColumns columns{{0, figure.top, column, figure.bottom},
                                 {in.width - column, figure.top, in.width, figure.bottom}};
    CalloutPlan plan = place_discs(callouts, columns, type.size, press.ruler);
    number_downward(parts, plan);
    std::vector<std::string> signs;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        signs.push_back(std::to_string(in.first + i));
    }
    for (PlacedCallout& placed : plan.placed) {
        const std::size_t number = in.first + placed.number;
        const Point at = disc_centre(placed, columns, type.size);
        placed.link = {number_anchor(number),
                       part_anchor(number),
                       {at.x - radius, at.y - radius, at.x + radius, at.y + radius}};
    }
    draw_discs(plan, signs, columns, type, press.style.unit, slab.content);
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
    // In a narrow column the list takes what the figure and its numbers leave; on a broad page
    // numbers do not stand far from him.
    const bool narrow = in.width * (1 - kFigureShare) < kLeastForMaterials * press.style.body;
    const double close = figure.frame.width() * factor +
                         2 * (narrow ? kBeside : kFarBeside) * disc_column(press.style.small);
    const double room = std::min(in.width * kFigureShare, close);
    const Picture picture{figure.drawing, figure.frame, factor, "", ""};
    const double left = (room - figure.frame.width() * factor) / 2;
    Slab slab;
    slab.pictures.push_back(placed_at(picture, {left, 0}));
    put_shadow(slab.pictures.front(), figure.frame, slab.ground);
    std::vector<Callout> callouts;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        Callout callout{std::to_string(in.first + i), {}, {}};
        for (const Site& site : parts[i].sites) {
            add_site(site, figure.frame.centre().x, slab.pictures.front(), callout);
        }
        callouts.push_back(std::move(callout));
    }
    const std::vector<std::size_t> left_out =
        put_numbers(callouts, {left, 0, room - left, height}, {room, in.first}, press, slab, parts);
    for (const std::size_t number : left_out) {
        warn_of(parts[number], press);
    }
    // The list's numbers stand off their edge themselves.
    const double list_left = room + press.style.gutter * (narrow ? 0.3 : 1);
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
