// SPDX-License-Identifier: MIT
// Men side by side.
#include "layout/comparison.h"

#include <algorithm>
#include <utility>

#include "layout/callouts.h"
#include "layout/flow.h"
#include "words/comparison_messages.h"
#include "words/sheet_messages.h"

namespace platewright {
namespace {

using sheet::Cell;
using sheet::Flow;
using sheet::Picture;
using sheet::Press;
using sheet::Slab;
using sheet::Table;
using sheet::Voice;

/// Share of the text's height that the row of men may take.
constexpr double kRowShare = 0.55;

/// Every view is a picture of its own; a man's first carries his words.
std::vector<Picture> pictures_of(const std::vector<ComparedMan>& men) {
    std::vector<Picture> pictures;
    for (const ComparedMan& man : men) {
        for (std::size_t i = 0; i < man.views.size(); ++i) {
            const Figure& view = man.views[i];
            Picture picture{view.drawing, view.frame, 1 / view.scale};
            if (i == 0) {
                picture.words = man.name;
                picture.note = man.note;
            }
            pictures.push_back(std::move(picture));
        }
    }
    return pictures;
}

/// What can be pointed at on a figure that stands there.
std::vector<sheet::Callout> callouts_of(const ComparedMan& man, const Placed& figure) {
    std::vector<sheet::Callout> callouts;
    const Figure& view = man.views.front();
    for (const CalloutWords& words : man.callouts) {
        const auto seen = view.seen.find(words.key);
        if (seen == view.seen.end()) {
            continue;
        }
        sheet::Callout callout{words.words, {}, {}};
        for (const Site& site : seen->second.sites) {
            sheet::add_site(site.at, view.frame.centre().x, figure, callout);
        }
        callouts.push_back(std::move(callout));
    }
    return callouts;
}

/// Lines and words on both sides of each man, within his share of the row.
void add_callouts(const std::vector<ComparedMan>& men, double width, Press& press, Slab& row) {
    const double share = width / static_cast<double>(men.size());
    const double air = 0.4 * press.style.body;
    const Type type = sheet::italic(press.style.small);
    for (std::size_t i = 0; i < men.size(); ++i) {
        const Placed& figure = row.pictures[i];
        const Rect& frame = men[i].views.front().frame;
        const double top = figure.at.y + frame.top * figure.factor;
        const double bottom = figure.at.y + frame.bottom * figure.factor;
        const double left = static_cast<double>(i) * share;
        const sheet::CalloutColumns columns{
            {left + air, top, figure.at.x + frame.left * figure.factor - air, bottom},
            {figure.at.x + frame.right * figure.factor + air, top, left + share - air, bottom}};
        sheet::draw_callouts(
            sheet::place_callouts(callouts_of(men[i], figure), columns, type, press.ruler),
            type,
            row.content);
    }
}

/// The men in a row; two that are seen from one side have their differences led to.
void put_men(const std::vector<ComparedMan>& men, Flow& flow) {
    std::vector<Slab> rows = sheet::picture_slabs(pictures_of(men), flow.width(), flow.press());
    const bool one_view =
        std::ranges::all_of(men, [](const ComparedMan& man) { return man.views.size() == 1; });
    if (rows.size() == 1 && men.size() == 2 && one_view) {
        add_callouts(men, flow.width(), flow.press(), rows.front());
    }
    for (Slab& row : rows) {
        flow.slab(std::move(row));
    }
}

Table table_of(const MenCompared& compared) {
    Table table;
    table.columns.push_back({"", Align::start, false});
    for (const ComparedMan& man : compared.men) {
        table.columns.push_back({man.name, Align::start, true});
    }
    for (const ComparedThing& thing : compared.differ) {
        sheet::TableRow row;
        Cell name;
        name.words = thing.name;
        name.voice = Voice::small_italic;
        row.cells.push_back(std::move(name));
        for (const ComparedValue& value : thing.values) {
            Cell cell;
            cell.words = value.words;
            cell.voice = Voice::small;
            if (value.colour) {
                cell.swatch = sheet::Swatch{value.colour->colour, {}, value.colour->metal, 0, 0};
                if (compared.ink == Ink::hatched) {
                    cell.swatch->hatch = value.colour->tincture;
                }
            }
            row.cells.push_back(std::move(cell));
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

void put_credits(const MenCompared& compared, Flow& flow) {
    for (const std::string& note : compared.notes) {
        flow.paragraph(note, Voice::small);
    }
    if (!compared.source.empty()) {
        flow.paragraph(say(compared.language, messages::kSource, {compared.source}),
                       Voice::small_italic);
    }
    if (!compared.drawn_by.empty()) {
        flow.paragraph(say(compared.language, messages::kDrawnBy, {compared.drawn_by}),
                       Voice::small_italic);
    }
}

}  // namespace

double comparison_scale(const std::vector<std::vector<Rect>>& frames, const Paper& paper) {
    const sheet::TextStyle style(paper);
    double width = 0;
    double height = 1;
    double gaps = 0;
    for (const std::vector<Rect>& man : frames) {
        for (const Rect& view : man) {
            width += view.width();
            height = std::max(height, view.height());
            gaps += style.gutter;
        }
    }
    const double room = std::max(style.area.width() - gaps, style.area.width() * 0.4);
    return std::max(width / room, height / (style.area.height() * kRowShare));
}

Document lay_out_comparison(const MenCompared& compared,
                            const Paper& paper,
                            const Typesetter& type,
                            Diagnostics& to) {
    sheet::Ruler ruler(type);
    sheet::FlowForm form;
    form.paper = paper;
    form.language = std::string(language_code(compared.language));
    form.head_left = sheet::on_one_line(compared.title);
    Flow flow(form, ruler, to);
    flow.title(compared.title, compared.subtitle);
    put_men(compared.men, flow);
    flow.heading(say(compared.language, messages::kInWhatTheyDiffer));
    if (compared.differ.empty()) {
        flow.paragraph(say(compared.language, messages::kInNothing));
    } else {
        flow.table(table_of(compared));
    }
    for (const ComparedWords& words : compared.words) {
        flow.heading(words.heading);
        for (const std::string& paragraph : words.paragraphs) {
            flow.paragraph(paragraph);
        }
    }
    flow.space(4);
    put_credits(compared, flow);
    Document document;
    document.title = sheet::on_one_line(compared.title);
    document.author = sheet::on_one_line(compared.drawn_by);
    document.subject = sheet::on_one_line(compared.subtitle);
    document.description = document.title;
    document.language = language_code(compared.language);
    flow.finish(document);
    return document;
}

}  // namespace platewright
