// SPDX-License-Identifier: MIT
// Men side by side.
#include "layout/comparison.h"

#include <algorithm>
#include <utility>

#include "layout/discs.h"
#include "layout/flow.h"
#include "layout/key.h"
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

/// Share of the text's height that men in one row may take, and in several, which have the page to
/// themselves; no more rows than are looked over at once.
constexpr double kRowShare = 0.72;
constexpr double kRowsShare = 0.85;
constexpr std::size_t kMostRows = 3;
constexpr double kRowsGain = 1.15;
/// Words beside a figure, in ems: "shoulder-strap" is not broken.
constexpr double kWordsColumn = 5.6;
/// Letters are preferred to words where figures can be this much larger beside them.
constexpr double kLettersGain = 1.3;
/// Name and remark beneath a man, in lines.
constexpr double kLegend = 4.5;

/// Of the height of the text, what one detail may take.
constexpr double kDetailShare = 0.185;

/// How many figures stand in a row, and their scale.
struct Arrangement {
    std::size_t columns = 1;
    double scale = 1;
};

/// The largest figures that leave `beside` mm free on both sides of each; all views of a man stand
/// in one row.
Arrangement largest_with(const std::vector<std::vector<Rect>>& frames,
                         double beside,
                         const sheet::TextStyle& style) {
    std::size_t pictures = 0;
    std::size_t views = 1;
    Rect largest{0, 0, 1, 1};
    for (const std::vector<Rect>& man : frames) {
        pictures += man.size();
        views = std::max(views, man.size());
        for (const Rect& view : man) {
            largest.include({0, 0, view.width(), view.height()});
        }
    }
    Arrangement best{pictures, 1e9};
    for (std::size_t rows = 1; rows <= std::min(kMostRows, frames.size()); ++rows) {
        const std::size_t men = (frames.size() + rows - 1) / rows;
        const auto columns = static_cast<double>(men * views);
        const double share = rows == 1 ? kRowShare : kRowsShare;
        const double height = style.area.height() * share / static_cast<double>(rows) -
                              kLegend * style.leading - style.body;
        const double width = style.area.width() / columns - 2 * beside - 0.8 * style.body;
        const double scale = std::max(largest.width() / std::max(width, 1.0),
                                      largest.height() / std::max(height, 1.0));
        // A row more must be worth it: men in one row are compared at a glance.
        if (scale * (rows > 1 ? kRowsGain : 1) < best.scale) {
            best = {men * views, scale};
        }
    }
    return best;
}

/// With room for words, unless that makes the figures too small.
Arrangement arrangement_of(const std::vector<std::vector<Rect>>& frames,
                           const sheet::TextStyle& style) {
    const Arrangement words = largest_with(frames, kWordsColumn * style.small, style);
    const Arrangement letters = largest_with(frames, sheet::disc_column(style.small), style);
    return words.scale <= letters.scale * kLettersGain ? words : letters;
}

/// Every view is a picture of its own; a man's first carries his words.
std::vector<Picture> pictures_of(const std::vector<ComparedMan>& men) {
    std::vector<Picture> pictures;
    for (const ComparedMan& man : men) {
        for (std::size_t i = 0; i < man.views.size(); ++i) {
            const Figure& view = man.views[i];
            Picture picture{view.drawing, view.frame, 1 / view.scale};
            picture.stands = view.view != "flat";
            if (i == 0) {
                picture.words = man.name;
                picture.note = man.note;
            }
            pictures.push_back(std::move(picture));
        }
    }
    return pictures;
}

/// One figure on the page, with the room beside it and what it is to show.
struct Shown {
    const Placed* figure = nullptr;
    const Figure* view = nullptr;
    std::vector<const ComparedCallout*> callouts;
    sheet::CalloutColumns columns;
    std::size_t slab = 0;
};

/// The figures in the order of their pictures, each in the middle of its place.
std::vector<Shown> shown_of(const std::vector<ComparedMan>& men,
                            const std::vector<Slab>& rows,
                            double width,
                            std::size_t columns,
                            const Press& press) {
    std::vector<Shown> all;
    const double place = width / static_cast<double>(columns);
    const double air = 0.4 * press.style.body;
    std::size_t slab = 0;
    std::size_t number = 0;
    for (const ComparedMan& man : men) {
        for (std::size_t i = 0; i < man.views.size(); ++i, ++number) {
            if (number == rows[slab].pictures.size()) {
                ++slab;
                number = 0;
            }
            Shown shown{&rows[slab].pictures[number], &man.views[i], {}, {}, slab};
            for (const ComparedCallout& callout : man.callouts) {
                if (callout.view == i) {
                    shown.callouts.push_back(&callout);
                }
            }
            const Placed& at = *shown.figure;
            const Rect& frame = shown.view->frame;
            const double top = at.at.y + frame.top * at.factor;
            const double bottom = at.at.y + frame.bottom * at.factor;
            const double left = static_cast<double>(number) * place;
            shown.columns = {
                {left + air, top, at.at.x + frame.left * at.factor - air / 2, bottom},
                {at.at.x + frame.right * at.factor + air / 2, top, left + place - air, bottom}};
            all.push_back(std::move(shown));
        }
    }
    return all;
}

/// What can be pointed at on a figure that stands there.
std::vector<sheet::Callout> callouts_of(const Shown& shown, bool in_words) {
    std::vector<sheet::Callout> callouts;
    for (const ComparedCallout* each : shown.callouts) {
        sheet::Callout callout{in_words ? each->words : "m", {}, {}};
        for (const Site& site : each->sites) {
            sheet::add_site(site, shown.view->frame.centre().x, *shown.figure, callout);
        }
        callouts.push_back(std::move(callout));
    }
    return callouts;
}

/// Whether words can stand beside the figures: no word is broken for it.
bool has_room_for_words(const std::vector<Shown>& all, Press& press) {
    const Type type = sheet::italic(press.style.small);
    for (const Shown& shown : all) {
        const double room = std::min(shown.columns.left.width(), shown.columns.right.width());
        for (const ComparedCallout* callout : shown.callouts) {
            if (press.ruler.least_width(callout->words, type, "") > room) {
                return false;
            }
        }
    }
    return true;
}

void put_words(const std::vector<Shown>& all, Press& press, std::vector<Slab>& rows) {
    const Type type = sheet::italic(press.style.small);
    for (const Shown& shown : all) {
        sheet::draw_callouts(
            sheet::place_callouts(callouts_of(shown, true), shown.columns, type, press.ruler),
            type,
            rows[shown.slab].content);
    }
}

/// `a`, `b` … of the rows that are led to; empty of the others.
using Letters = std::vector<std::string>;

/// Letters run through the rows, so that one row has one letter on all men.
Letters letters_of(const std::vector<Shown>& all,
                   const std::vector<sheet::CalloutPlan>& plans,
                   std::size_t rows) {
    std::vector<bool> used(rows, false);
    for (std::size_t i = 0; i < all.size(); ++i) {
        for (const sheet::PlacedCallout& placed : plans[i].placed) {
            used[all[i].callouts[placed.number]->row] = true;
        }
    }
    Letters letters(rows);
    // Without l, which in this type is a figure one.
    constexpr std::string_view alphabet = "abcdefghijkmnopqrstuvwxyz";
    for (std::size_t row = 0, next = 0; row < rows && next < alphabet.size(); ++row) {
        if (used[row]) {
            letters[row] = alphabet[next++];
        }
    }
    return letters;
}

Letters put_letters(const std::vector<Shown>& all,
                    std::size_t differ,
                    Press& press,
                    std::vector<Slab>& rows) {
    const Type type = sheet::roman(press.style.small);
    std::vector<sheet::CalloutPlan> plans;
    plans.reserve(all.size());
    for (const Shown& shown : all) {
        plans.push_back(
            sheet::place_discs(callouts_of(shown, false), shown.columns, type.size, press.ruler));
    }
    Letters letters = letters_of(all, plans, differ);
    for (std::size_t i = 0; i < all.size(); ++i) {
        std::vector<std::string> signs;
        for (const ComparedCallout* callout : all[i].callouts) {
            signs.push_back(letters[callout->row]);
        }
        std::erase_if(plans[i].placed, [&](const sheet::PlacedCallout& placed) {
            return signs[placed.number].empty();
        });
        sheet::draw_discs(
            plans[i], signs, all[i].columns, type, press.style.unit, rows[all[i].slab].content);
    }
    return letters;
}

/// The men in a row, with lines to what sets each apart: words where there is room for them, else
/// the letters of the rows of the table, which are returned.
Letters put_men(const MenCompared& compared, Flow& flow) {
    Press& press = flow.press();
    std::vector<std::vector<Rect>> frames;
    for (const ComparedMan& man : compared.men) {
        frames.emplace_back();
        for (const Figure& view : man.views) {
            frames.back().push_back(view.frame);
        }
    }
    const std::size_t columns = arrangement_of(frames, press.style).columns;
    std::vector<Slab> rows =
        sheet::picture_slabs(pictures_of(compared.men), flow.width(), press, columns);
    const std::vector<Shown> all = shown_of(compared.men, rows, flow.width(), columns, press);
    Letters letters(compared.differ.size());
    if (has_room_for_words(all, press)) {
        put_words(all, press, rows);
    } else {
        letters = put_letters(all, compared.differ.size(), press, rows);
    }
    for (Slab& row : rows) {
        flow.slab(std::move(row));
    }
    if (std::ranges::any_of(letters, [](const auto& letter) { return !letter.empty(); })) {
        std::vector<std::string> names;
        for (const ComparedThing& thing : compared.differ) {
            names.push_back(thing.name);
        }
        flow.slab(sheet::disc_legend(letters, names, flow.width(), press));
    }
    return letters;
}

/// Without rows: a column for each man.
Table table_for(const std::vector<ComparedMan>& men) {
    Table table;
    table.columns.push_back({"", Align::start, false});
    for (const ComparedMan& man : men) {
        table.columns.push_back({man.name, Align::start, true});
    }
    return table;
}

/// A man's value, with its colour; without colour it is hatched and named.
Cell cell_of(const ComparedValue& value, const MenCompared& compared) {
    Cell cell;
    cell.words = value.words;
    cell.voice = Voice::small;
    cell.note = value.note;
    if (!value.colour) {
        return cell;
    }
    cell.swatch = sheet::Swatch{value.colour->colour, {}, value.colour->metal, 0, 0};
    if (compared.ink == Ink::hatched) {
        cell.swatch->hatch = value.colour->tincture;
        const std::string tincture =
            sheet::tincture_name(value.colour->tincture, compared.language);
        const bool said = tincture == value.words;
        cell.note = (said ? "" : tincture) + (said || value.note.empty() ? "" : ", ") + value.note;
    }
    return cell;
}

Table table_of(const MenCompared& compared,
               const std::vector<ComparedThing>& things,
               const Letters& letters) {
    Table table = table_for(compared.men);
    for (std::size_t i = 0; i < things.size(); ++i) {
        const ComparedThing& thing = things[i];
        sheet::TableRow row;
        Cell name;
        name.words = thing.name;
        name.sign = letters[i];
        name.voice = Voice::small_italic;
        row.cells.push_back(std::move(name));
        for (const ComparedValue& value : thing.values) {
            row.cells.push_back(cell_of(value, compared));
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

/// Rows at the foot of the table: a part of each man enlarged, in his column.
void add_details(const MenCompared& compared, std::size_t count, Table& table) {
    if (count == 0) {
        return;
    }
    Cell heading;
    heading.words = say(compared.language, messages::kSeenNear);
    heading.voice = Voice::italic;
    table.rows.push_back({{std::move(heading)}, true});
    for (std::size_t i = 0; i < count; ++i) {
        const ComparedDetail& detail = compared.details[i];
        sheet::TableRow row;
        Cell name;
        name.words = detail.name;
        name.voice = Voice::small_italic;
        row.cells.push_back(std::move(name));
        for (const Figure& picture : detail.pictures) {
            Cell cell;
            cell.picture = Picture{picture.drawing, picture.frame, 1 / picture.scale};
            cell.picture->framed = true;
            row.cells.push_back(std::move(cell));
        }
        table.rows.push_back(std::move(row));
    }
}

/// In what they differ, of which no page begins with a row or two left over, and the same seen
/// near, which no page parts.
void put_differences(const MenCompared& compared,
                     const Letters& letters,
                     std::size_t details,
                     Flow& flow) {
    flow.heading(say(compared.language, messages::kInWhatTheyDiffer));
    if (compared.differ.empty()) {
        flow.paragraph(say(compared.language, messages::kInNothing));
    }
    Table table = table_of(compared, compared.differ, letters);
    add_details(compared, details, table);
    if (table.rows.empty()) {
        return;
    }
    std::vector<Slab> slabs = sheet::table_slabs(table, flow.width(), flow.press());
    const std::size_t last_row = slabs.size() - (details > 0 ? details + 2 : 1);
    for (std::size_t i = 0; i < slabs.size(); ++i) {
        const bool last_rows = i < last_row && i + 2 >= last_row;
        slabs[i].keep_with_next |=
            last_rows || (i + 1 < slabs.size() && i + details >= slabs.size());
        flow.slab(std::move(slabs[i]));
    }
    flow.space(flow.style().leading * 0.5);
}

void put_carried(const MenCompared& compared, Flow& flow) {
    const ComparedTable& carried = compared.carried;
    if (carried.words.paragraphs.empty()) {
        return;
    }
    const std::size_t from = flow.next();
    flow.heading(carried.words.heading);
    for (const std::string& paragraph : carried.words.paragraphs) {
        flow.paragraph(paragraph, Voice::small);
    }
    if (!carried.rows.empty()) {
        flow.table(table_of(compared, carried.rows, Letters(carried.rows.size())));
    }
    // On one page if it can be: what men may exchange is read down the columns.
    flow.hold_together(from);
}

void put_credits(const MenCompared& compared, Flow& flow) {
    for (const std::string& note : compared.notes) {
        flow.paragraph(note, Voice::small);
    }
    const auto credit = [&](const Message& message, const std::string& words) {
        if (!words.empty()) {
            flow.paragraph(say(compared.language, message, {words}), Voice::small_italic);
        }
    };
    credit(messages::kSource, compared.source);
    credit(messages::kDrawnBy, compared.drawn_by);
}

Document laid_out(const MenCompared& compared,
                  std::size_t details,
                  const Paper& paper,
                  sheet::Ruler& ruler,
                  Diagnostics& to) {
    sheet::FlowForm form;
    form.paper = paper;
    form.language = std::string(language_code(compared.language));
    form.head_left = sheet::on_one_line(compared.title);
    Flow flow(form, ruler, to);
    flow.title(compared.title, compared.subtitle);
    const Letters letters = put_men(compared, flow);
    put_differences(compared, letters, details, flow);
    put_carried(compared, flow);
    flow.columns(2);
    for (const ComparedWords& words : compared.words) {
        flow.heading(words.heading);
        for (const std::string& paragraph : words.paragraphs) {
            flow.paragraph(paragraph, Voice::small);
        }
    }
    put_credits(compared, flow);
    flow.columns(1);
    Document document;
    document.title = sheet::on_one_line(compared.title);
    document.author = sheet::on_one_line(compared.drawn_by);
    document.subject = sheet::on_one_line(compared.subtitle);
    document.description = document.title;
    document.language = language_code(compared.language);
    flow.finish(document);
    return document;
}

/// How wide and how high a detail may be: as wide as a column of the table of differences is likely
/// to be, but no more than half as wide again as high.
Point most_of_detail(std::size_t men, const Paper& paper) {
    const sheet::TextStyle style(paper);
    const double column =
        style.area.width() * 0.9 / static_cast<double>(std::max<std::size_t>(men, 1));
    const double height = style.area.height() * kDetailShare;
    const double width = std::clamp(column - style.gutter, 1.0, height * 1.6);
    return {width, std::min(width, height)};
}

}  // namespace

double comparison_scale(const std::vector<std::vector<Rect>>& frames, const Paper& paper) {
    return arrangement_of(frames, sheet::TextStyle(paper)).scale;
}

Rect near_window(const Rect& frame, std::size_t men, const Paper& paper) {
    const Point most = most_of_detail(men, paper);
    const Rect square = frame.squared();
    const double more = square.height() * most.x / most.y - square.width();
    return more > 0
               ? Rect{square.left - more / 2, square.top, square.right + more / 2, square.bottom}
               : square;
}

double near_scale(const Rect& frame, std::size_t men, const Paper& paper) {
    const Point most = most_of_detail(men, paper);
    return std::max(frame.width() / most.x, frame.height() / most.y);
}

Document lay_out_comparison(const MenCompared& compared,
                            const Paper& paper,
                            const Typesetter& type,
                            Diagnostics& to) {
    sheet::Ruler ruler(type);
    Diagnostics problems;
    Document best = laid_out(compared, 0, paper, ruler, problems);
    const std::size_t without = best.pages.size();
    std::size_t shown = 0;
    for (const std::size_t most : {without, without + 1}) {
        for (std::size_t details = compared.details.size(); details > shown; --details) {
            Diagnostics found;
            Document document = laid_out(compared, details, paper, ruler, found);
            if (document.pages.size() <= most) {
                best = std::move(document);
                problems = std::move(found);
                shown = details;
                break;
            }
        }
        if (shown > 0) {
            break;
        }
    }
    for (const Diagnostic& problem : problems.all()) {
        to.add(problem);
    }
    return best;
}

}  // namespace platewright
