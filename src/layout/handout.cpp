// SPDX-License-Identifier: MIT
// The recruit's own sheets.
#include "layout/handout.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "layout/flow.h"
#include "layout/key.h"
#include "layout/numbered_figure.h"
#include "words/handout_messages.h"
#include "words/sheet_messages.h"

namespace platewright {
namespace {

using sheet::Cell;
using sheet::Flow;
using sheet::Table;
using sheet::TextStyle;
using sheet::Voice;

/// Usual denominators of figures in print.
constexpr std::array<double, 18> kScales{
    1, 2, 2.5, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 15, 18, 20, 25, 30};
/// Of the height of a page, what the large figure may take, and what a row of small ones.
constexpr double kFigureHeight = 0.63;
constexpr double kOrderHeight = 0.27;
/// Of the height of a page, what the figure from behind may take.
constexpr double kBackHeight = 0.2;
/// He stands beside the contents, which take more: so much of it he may have himself.
constexpr double kBackAlone = 0.27;
/// What the title and the headings between the figures take of a page, in ems.
constexpr double kAroundFigures = 14;
/// Of the width of a page, what the picture of a mark may take.
constexpr double kMarkWidth = 0.185;
/// No more small figures side by side.
constexpr std::size_t kMostInRow = 4;

/// The smallest usual denominator that is no less than `least`; `least` itself beyond them.
double usual_scale(double least) {
    const auto at =
        std::ranges::find_if(kScales, [&](double each) { return each >= least - 1e-9; });
    return at == kScales.end() ? least : *at;
}

double scale_within(const Rect& frame, double width, double height) {
    return usual_scale(std::max(frame.width() / width, frame.height() / height));
}

/// Columns that have something to say.
struct KitColumns {
    bool way = false;
    bool cost = false;
    bool source = false;
};

KitColumns columns_of(const std::vector<HandoutStage>& stages) {
    KitColumns made;
    for (const HandoutStage& stage : stages) {
        for (const HandoutItem& item : stage.items) {
            made.way = made.way || !item.way.empty();
            made.cost = made.cost || !item.cost.empty();
            made.source = made.source || !item.source.empty();
        }
    }
    return made;
}

Cell words_cell(const std::string& words, Voice voice = Voice::small) {
    Cell cell;
    cell.words = words;
    cell.voice = voice;
    return cell;
}

sheet::TableRow row_of(const HandoutItem& item, const KitColumns& columns) {
    Cell name = words_cell(item.name, Voice::body);
    name.tick_box = true;
    name.note = item.note;
    Cell material = words_cell(item.material);
    material.note = item.details;
    if (item.colour) {
        material.swatch = sheet::Swatch{*item.colour, item.hatch, item.metal, 0, 0};
    }
    sheet::TableRow row{{name, material, words_cell(item.quantity)}, false};
    if (columns.way) {
        row.cells.push_back(words_cell(item.way));
    }
    if (columns.cost) {
        row.cells.push_back(words_cell(item.cost));
    }
    if (columns.source) {
        row.cells.push_back(words_cell(item.source, Voice::small_italic));
    }
    return row;
}

void put_kit(const Handout& handout, Flow& flow) {
    const Language language = handout.language;
    const KitColumns columns = columns_of(handout.stages);
    Table table;
    table.columns = {{say(language, messages::kItem), Align::start, true},
                     {say(language, messages::kMaterial), Align::start, true},
                     {say(language, messages::kQuantity), Align::end, false}};
    if (columns.way) {
        table.columns.push_back({say(language, messages::kHow), Align::start, false});
    }
    if (columns.cost) {
        table.columns.push_back({say(language, messages::kCost), Align::end, false});
    }
    if (columns.source) {
        table.columns.push_back({say(language, messages::kSourceHead), Align::start, false});
    }
    for (const HandoutStage& stage : handout.stages) {
        const std::string title =
            stage.total.empty() ? stage.title
                                : say(language, messages::kStageTotal, {stage.title, stage.total});
        table.rows.push_back({{words_cell(title)}, true});
        for (const HandoutItem& item : stage.items) {
            table.rows.push_back(row_of(item, columns));
        }
    }
    if (table.rows.empty()) {
        return;
    }
    flow.new_page();
    flow.heading(say(language, messages::kWhatToGet));
    flow.table(table);
    if (!handout.total.empty()) {
        flow.paragraph(say(language, messages::kTotal, {handout.total}), Voice::italic);
    }
}

void put_earned(const Handout& handout, Flow& flow) {
    if (!handout.earned.empty()) {
        flow.paragraph(say(handout.language, messages::kWhenEarned, {handout.earned}),
                       Voice::small_italic);
    }
}

double height_of(const std::vector<sheet::Slab>& slabs) {
    double height = 0;
    for (const sheet::Slab& slab : slabs) {
        height += slab.space_before + slab.height;
    }
    return height;
}

std::string mark_anchor(std::size_t number) {
    return "mark-" + std::to_string(number + 1);
}

/// Words that bear a footnote's mark lead to it.
sheet::Linked link_of_mark(std::size_t number, const Handout& handout) {
    const auto note = sheet::footnote_in(handout.marks[number].words, handout.footnotes);
    return note ? sheet::Linked{mark_anchor(number), sheet::note_anchor(*note), {}}
                : sheet::Linked{};
}

/// A mark's picture on the left, words and measures on the right.
sheet::Slab mark_slab(const HandoutMark& mark,
                      Language language,
                      const sheet::Linked& link,
                      double width,
                      sheet::Press& press) {
    const TextStyle& style = press.style;
    sheet::Slab slab;
    double left = 0;
    if (mark.picture) {
        const double factor = 1 / mark.picture->scale;
        const sheet::Picture picture{mark.picture->drawing, mark.picture->frame, factor, "", ""};
        const Rect box{0, 0, picture.frame.width() * factor, picture.frame.height() * factor};
        slab.ground.fill(rectangle(box), sheet::kPlateTone);
        slab.pictures.push_back(sheet::placed_at(picture, {0, 0}));
        slab.content.stroke(rectangle(box), sheet::kInk, 0.14 * style.unit);
        left = box.width() + style.body * 1.2;
        slab.height = box.height();
    }
    double y = 0;
    const auto stack = [&](const std::vector<sheet::Slab>& slabs) {
        for (const sheet::Slab& each : slabs) {
            y += each.space_before;
            slab.content.append(each.content, {left, y});
            y += each.height;
        }
    };
    stack(sheet::paragraph_slabs(
        mark.name, sheet::speech_of(Voice::strong, style), width - left, press));
    const double words_top = y;
    sheet::Speech speech = sheet::speech_of(Voice::body, style);
    speech.type = sheet::with_figures(mark.words, speech.type);
    std::vector<sheet::Slab> words =
        sheet::paragraph_slabs(mark.words, speech, width - left, press);
    sheet::Linked place = link;
    place.area = {left, words_top, width, words_top + height_of(words)};
    slab.content.begin_link(place);
    stack(words);
    slab.content.end_link();
    Table table;
    table.columns = {{"", Align::start, true},
                     {say(language, messages::kAsOrdered), Align::end, false},
                     {"mm", Align::end, false}};
    for (const HandoutMeasure& measure : mark.measures) {
        table.rows.push_back(
            {{words_cell(measure.what), words_cell(measure.printed), words_cell(measure.mm)},
             false});
    }
    if (!table.rows.empty()) {
        stack(sheet::table_slabs(table, std::min(width - left, style.body * 26), press));
    }
    slab.height = std::max(slab.height, y);
    slab.space_before = style.body;
    return slab;
}

void put_marks(const Handout& handout, Flow& flow) {
    if (handout.marks.empty()) {
        return;
    }
    flow.heading(say(handout.language, messages::kWhereMarksGo));
    if (!handout.earned.empty()) {
        // Stays with the marks under it, as the heading does.
        for (sheet::Slab& slab :
             sheet::paragraph_slabs(say(handout.language, messages::kWhenEarned, {handout.earned}),
                                    sheet::speech_of(Voice::small_italic, flow.style()),
                                    flow.width(),
                                    flow.press())) {
            slab.keep_with_next = true;
            flow.slab(std::move(slab));
        }
        flow.space(flow.style().leading * 0.35);
    }
    flow.columns(2);
    for (std::size_t i = 0; i < handout.marks.size(); ++i) {
        flow.slab(mark_slab(handout.marks[i],
                            handout.language,
                            link_of_mark(i, handout),
                            flow.width(),
                            flow.press()));
    }
    flow.columns(1);
}

/// Small figures in a row, under each what it is and what is changed for it.
void put_orders(const Handout& handout, Flow& flow) {
    if (handout.orders.empty()) {
        return;
    }
    flow.heading(say(handout.language, messages::kWhatToWear));
    std::vector<sheet::Picture> pictures;
    for (const HandoutOrder& order : handout.orders) {
        pictures.push_back({order.picture.drawing,
                            order.picture.frame,
                            1 / order.picture.scale,
                            order.title,
                            order.means == order.title ? "" : order.means,
                            order.changes,
                            false,
                            true});
    }
    flow.pictures(std::move(pictures));
}

void put_advice(const Handout& handout, Flow& flow) {
    if (!handout.putting_on.empty()) {
        flow.heading(say(handout.language, messages::kPuttingOn));
        flow.columns(2);
        flow.items(handout.putting_on, "");
        flow.columns(1);
    }
    if (!handout.care.empty()) {
        flow.heading(say(handout.language, messages::kCare));
        flow.columns(2);
        flow.items(handout.care, "•");
        flow.columns(1);
    }
}

/// A line of 50 mm that shows whether the print is to scale.
sheet::Slab check_bar(Language language, double width, sheet::Press& press) {
    constexpr double length = 50;
    const TextStyle& style = press.style;
    sheet::Slab slab;
    const double y = style.body;
    slab.content.line({0, y}, {length, y}, sheet::kInk, 0.25);
    for (const double x : {0.0, 10.0, 20.0, 30.0, 40.0, 50.0}) {
        slab.content.line({x, y - (x == 0 || x == length ? 1.6 : 0.9)}, {x, y}, sheet::kInk, 0.2);
    }
    double below = y + style.body * 0.4;
    const sheet::Speech speech = sheet::speech_of(Voice::small_italic, style);
    for (const sheet::Slab& line :
         sheet::paragraph_slabs(say(language, messages::kCheckBar), speech, width, press)) {
        slab.content.append(line.content, {0, below});
        below += line.height;
    }
    slab.height = below;
    return slab;
}

constexpr std::array<std::pair<const Message*, const Message*>, 5> kUsualCautions{
    {{&messages::kBlades, &messages::kBladesWords},
     {&messages::kHeat, &messages::kHeatWords},
     {&messages::kOldGarments, &messages::kOldGarmentsWords},
     {&messages::kDecorations, &messages::kDecorationsWords},
     {&messages::kPrintScale, &messages::kPrintScaleWords}}};

void put_cautions(const Handout& handout, Flow& flow) {
    flow.heading(say(handout.language, messages::kBeforeYouMarch));
    flow.columns(2);
    for (const std::string& own : handout.cautions) {
        flow.paragraph(own, Voice::small);
    }
    for (const auto& [subject, words] : kUsualCautions) {
        flow.subheading(say(handout.language, *subject));
        flow.paragraph(say(handout.language, *words), Voice::small);
    }
    flow.slab(check_bar(handout.language, flow.width(), flow.press()));
    flow.columns(1);
}

/// Where an address leads; empty for words that are none.
std::string address_of(const std::string& line) {
    if (line.find(' ') != std::string::npos) {
        return {};
    }
    if (line.starts_with("https://") || line.starts_with("http://")) {
        return line;
    }
    const std::size_t at = line.find('@');
    const bool mail = at != std::string::npos && at > 0 && line.find('.', at) != std::string::npos;
    return mail ? "mailto:" + line : std::string();
}

/// A line of the unit's contact; addresses can be followed.
void put_contact(const std::string& line, Flow& flow) {
    const sheet::Speech speech = sheet::speech_of(Voice::body, flow.style());
    for (sheet::Slab& slab : sheet::paragraph_slabs(line, speech, flow.width(), flow.press())) {
        const std::string address = address_of(line);
        if (!address.empty()) {
            slab.links.push_back({{0, 0, flow.width(), slab.height}, address, {}});
        }
        flow.slab(std::move(slab));
    }
}

/// Himself from behind; numbers go on from those of the large figure.
void put_back(const Handout& handout, Flow& flow) {
    if (handout.back) {
        flow.subheading(say(handout.language, messages::kFromBehind));
        flow.slab(sheet::numbered_figure(*handout.back,
                                         handout.parts_behind,
                                         {flow.width(), handout.parts.size() + 1},
                                         flow.press()));
    }
}

/// Where to ask, and what is in the sheets, beside each other under the figure.
void put_unit(const Handout& handout, Flow& flow) {
    flow.space(flow.style().leading * 1.2);
    flow.columns(2);
    if (!handout.contact.empty() || !handout.unit_notes.empty()) {
        flow.subheading(handout.unit.empty() ? say(handout.language, messages::kTheUnit)
                                             : handout.unit);
        for (const std::string& line : handout.contact) {
            put_contact(line, flow);
        }
        flow.space(flow.style().leading * 0.4);
        for (const std::string& note : handout.unit_notes) {
            flow.paragraph(note, Voice::small_italic);
        }
    }
    flow.subheading(say(handout.language, messages::kContents));
    flow.contents();
    put_back(handout, flow);
    flow.columns(1);
}

/// A footnote leads back to the first words that bear its mark.
void put_footnote(std::size_t number, const Handout& handout, Flow& flow) {
    const Footnote& note = handout.footnotes[number];
    sheet::Linked link{sheet::note_anchor(number), {}, {}};
    for (std::size_t i = 0; i < handout.marks.size() && link.to.empty(); ++i) {
        const bool bears = sheet::footnote_in(handout.marks[i].words, handout.footnotes) == number;
        link.to = bears ? mark_anchor(i) : std::string();
    }
    const sheet::Speech speech = sheet::speech_of(Voice::small_italic, flow.style());
    for (sheet::Slab& slab :
         sheet::paragraph_slabs((note.mark.empty() ? "" : note.mark + " ") + note.words,
                                speech,
                                flow.width(),
                                flow.press())) {
        sheet::Layer linked("text");
        link.area = {0, 0, flow.width(), slab.height};
        linked.begin_link(link);
        linked.append(slab.content, {});
        linked.end_link();
        link.anchor.clear();
        slab.content = std::move(linked);
        flow.slab(std::move(slab));
    }
    flow.space(flow.style().leading * 0.35);
}

void put_notes(const Handout& handout, Flow& flow) {
    flow.space(flow.style().leading);
    for (const std::string& note : handout.notes) {
        flow.paragraph(note, Voice::small_italic);
    }
    for (std::size_t i = 0; i < handout.footnotes.size(); ++i) {
        put_footnote(i, handout, flow);
    }
    if (!handout.source.empty()) {
        flow.paragraph(say(handout.language, messages::kSource, {handout.source}),
                       Voice::small_italic);
    }
    if (!handout.drawn_by.empty()) {
        flow.paragraph(say(handout.language, messages::kDrawnBy, {handout.drawn_by}),
                       Voice::small_italic);
    }
}

}  // namespace

double handout_scale(const Rect& frame, const Paper& paper, double closeness) {
    const TextStyle style(paper, closeness);
    // Title above; himself from behind beneath, so that both are seen on one page.
    const double beside_others =
        style.area.height() * (1 - kBackHeight) - kAroundFigures * style.body;
    // Numbers stand on both sides.
    return scale_within(
        frame,
        style.area.width() * sheet::kFigureShare - 6 * style.body,
        std::min(style.area.height() * kFigureHeight, beside_others) * closeness * closeness);
}

double back_scale(const Rect& frame, const Paper& paper, double closeness) {
    const TextStyle style(paper, closeness);
    // In one of two columns, with numbers on both sides.
    return scale_within(frame,
                        style.area.width() / 2 * sheet::kFigureShare - 6 * style.body,
                        style.area.height() * kBackAlone * closeness);
}

double order_scale(const Rect& frame, std::size_t orders, const Paper& paper, double closeness) {
    const TextStyle style(paper, closeness);
    const auto in_row = static_cast<double>(std::clamp<std::size_t>(orders, 1, kMostInRow));
    return scale_within(frame,
                        style.area.width() / in_row - 1.01 * style.body,
                        style.area.height() * kOrderHeight * closeness);
}

double mark_scale(const Rect& frame, const Paper& paper, double closeness) {
    const TextStyle style(paper, closeness);
    const double side = style.area.width() * kMarkWidth * closeness;
    return std::max(frame.width(), frame.height()) / side;
}

std::size_t most_handout_pages(const Paper& paper) {
    constexpr double small = 0.7 * 210 * 297;
    return paper.width * paper.height < small ? 6 : 4;
}

Document lay_out_handout(const Handout& handout,
                         const Paper& paper,
                         const Typesetter& type,
                         Diagnostics& to) {
    Document document;
    document.title = sheet::on_one_line(handout.title);
    document.author = sheet::on_one_line(handout.drawn_by);
    document.subject = sheet::on_one_line(handout.subtitle);
    document.description = document.title;
    document.language = language_code(handout.language);
    sheet::Ruler ruler(type);
    Flow flow(
        {paper, document.language, handout.unit, handout.title, "", handout.closeness}, ruler, to);
    flow.title(handout.title, handout.subtitle, handout.unit);
    flow.slab(sheet::numbered_figure(handout.man, handout.parts, {flow.width(), 1}, flow.press()));
    put_earned(handout, flow);
    put_unit(handout, flow);
    put_kit(handout, flow);
    put_orders(handout, flow);
    put_marks(handout, flow);
    put_advice(handout, flow);
    put_cautions(handout, flow);
    put_notes(handout, flow);
    flow.finish(document);
    return document;
}

}  // namespace platewright
