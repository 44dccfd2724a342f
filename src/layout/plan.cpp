// SPDX-License-Identifier: MIT
// The plan of a plate: scale, arrangement, sizes of type.
#include "layout/plan.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <utility>

#include "base/text.h"
#include "layout/key.h"
#include "words/sheet_messages.h"

namespace platewright::sheet {
namespace {

/// Usual scales of plates and rulers.
constexpr std::array<double, 40> kScales{1,    1.5, 2,    2.5, 3,    4,  4.5, 5,   5.5,  6,
                                         6.5,  7,   7.5,  8,   8.5,  9,  9.5, 10,  10.5, 11,
                                         11.5, 12,  12.5, 13,  13.5, 14, 15,  16,  18,   20,
                                         25,   30,  40,   50,  60,   75, 100, 150, 200,  400};

/// The figures may be drawn this much smaller than the paper allows to keep the type readable;
/// after that the type gives way.
constexpr double kFiguresGiveWay = 1.7;
/// Least share of the frame for words beneath the figures, and beside them.
constexpr double kLeastBelow = 0.16;
constexpr double kLeastBeside = 0.26;

/// The figures as one row in mm on the body.
struct FigureRow {
    double width = 0;
    double height = 0;
};

/// Width of callouts on A4: "pocket piping: sea green" on two lines.
constexpr double kCallouts = 27;
/// The same with words between the figures.
constexpr double kCalloutsOfThree = 20;

FigureRow row_of(const Task& task) {
    FigureRow row;
    Rect all;
    for (const Rect& frame : task.frames) {
        row.width += frame.width();
        all.include(frame);
    }
    row.height = all.height();
    return row;
}

/// Spaces of a plan, mm.
struct Spaces {
    double head = 0;
    double label = 0;
    double before_title = 0;
    double after_title = 0;
    double before_notes = 0;
    double foot = 0;
    double side = 0;
};

Spaces spaces_of(const Plan& plan) {
    const double unit = plan.style.unit;
    const double body = plan.style.body;
    const bool wide = plan.economy < Economy::wide_spacing;
    Spaces s;
    s.head = (wide ? 4.2 : 2.5) * unit;
    s.label = plan.label_size() * 1.0;
    for (const std::vector<std::string>& lines : plan.labels) {
        s.label = std::max(
            s.label,
            plan.label_size() + static_cast<double>(lines.size() - 1) * plan.label_leading());
    }
    if (plan.scale_below()) {
        s.label += plan.scale_leading();
    }
    s.before_title = (wide ? 1.4 : 0.8) * body;
    s.after_title = (wide ? 1.9 : 0.8) * body;
    s.before_notes = (wide ? 1.4 : 0.8) * body;
    s.foot = (plan.economy == Economy::generous ? 6.5 : wide ? 3.2 : 2.2) * unit;
    s.side = (wide ? 7.5 : 4) * unit;
    return s;
}

/// A man's musket keeps off the frame. Three stand closer within their places than two, so these
/// have to be farther from it.
double width_for_figures(const Plan& plan, const Task& task, const Spaces& s) {
    constexpr double close = 9;
    return plan.neat.width() -
           std::max(0.75 * s.side, task.frames.size() > 2 ? close * plan.style.unit : 0);
}

/// What the label of a figure may take where its neighbours' stand close.
double label_room(const Plan& plan, const Rect& frame) {
    return 2 * std::min(-frame.left, frame.right) * plan.factor - 0.5 * plan.label_size();
}

/// Whether two labels of one line each would touch.
bool labels_meet(const Plan& plan, const Task& task, Ruler& ruler) {
    const Type type = italic(plan.label_size());
    for (std::size_t i = 0; i + 1 < task.labels.size(); ++i) {
        const double apart = (task.frames[i].right - task.frames[i + 1].left) * plan.factor;
        const double words =
            ruler.width(task.labels[i], type) + ruler.width(task.labels[i + 1], type);
        if (words / 2 + 0.6 * plan.label_size() > apart) {
            return true;
        }
    }
    return false;
}

/// Whether a word of a label would have to be broken.
bool label_breaks(const Plan& plan, const Task& task, Ruler& ruler) {
    const Type type = italic(plan.label_size());
    for (std::size_t i = 0; i < task.labels.size(); ++i) {
        const double room = label_room(plan, task.frames[i]);
        if (room > 0 && ruler.least_width(task.labels[i], type, "") > room) {
            return true;
        }
    }
    return false;
}

/// One line each, unless two would meet; then each within the frame of its own figure, in smaller
/// type where a word would not fit there.
void set_labels(Plan& plan, const Task& task, Ruler& ruler) {
    const bool meet = labels_meet(plan, task, ruler);
    for (const double share : {0.92, 0.84, 0.77, 0.7}) {
        const bool readable = plan.style.body * 1.12 * share >= kSevenPoint * 0.95;
        if (meet && readable && label_breaks(plan, task, ruler)) {
            plan.label_share = share;
        }
    }
    const Type type = italic(plan.label_size());
    for (std::size_t i = 0; i < task.labels.size(); ++i) {
        const double room = label_room(plan, task.frames[i]);
        plan.labels.push_back(meet && room > 0 ? ruler.even_lines(task.labels[i], type, room)
                                               : std::vector<std::string>{task.labels[i]});
    }
}

void set_frame(Plan& plan, const Task& task) {
    const double unit = plan.style.unit;
    const double edge = 8 * unit;
    const double band = plan.credits ? std::max(5 * unit, plan.style.small() * 1.75) : 5 * unit;
    plan.plate_mark = {edge, edge, task.paper.width - edge, task.paper.height - edge};
    plan.neat = plan.plate_mark.grown(-5 * unit);
    plan.neat.bottom = plan.plate_mark.bottom - band;
}

void add_title_lines(Plan& plan,
                     const std::vector<std::string>& lines,
                     const Type& type,
                     Colour colour,
                     double leading) {
    for (const std::string& line : lines) {
        const double height = type.size * leading;
        plan.title.push_back({line, type, colour, height, type.size * 0.84});
        plan.title_height += height;
    }
}

bool says(const std::string& text, const std::string& word) {
    return word.empty() || lower(text).find(lower(word)) != std::string::npos;
}

/// The second line of the title: what is not said in the first.
std::string subtitle_of(const Captions& captions) {
    std::string line = on_one_line(captions.subtitle);
    for (const std::string& more : {captions.rank, captions.year}) {
        if (!says(captions.title, more) && !says(line, more)) {
            line += (line.empty() ? "" : ", ") + on_one_line(more);
        }
    }
    return with_capital(std::move(line));
}

/// Title in small capitals, on one line if a size not too small allows it, and what follows in
/// italics.
void set_title(Plan& plan, const Captions& captions, double width, Ruler& ruler) {
    const std::string title = on_one_line(captions.title);
    const double body = plan.style.body;
    Type type = small_capitals(body * 2.1);
    for (const double size : {2.1, 1.95, 1.8, 1.65, 1.5}) {
        type = small_capitals(body * size);
        if (ruler.width(title, type) <= width) {
            break;
        }
    }
    add_title_lines(plan, ruler.even_lines(title, type, width), type, kInk, 1.16);
    const Type slanted = italic(body * 1.24);
    const std::string subtitle = subtitle_of(captions);
    add_title_lines(plan, ruler.even_lines(subtitle, slanted, width), slanted, kInk, 1.3);
}

double words_height(const Plan& plan, const Spaces& s) {
    double height = plan.title_height;
    if (!plan.key.empty()) {
        height += s.after_title + plan.key.height;
    }
    if (!plan.notes.empty()) {
        height += s.before_notes + plan.notes.height;
    }
    return height;
}

/// Sets all words for a stretch of `width`.
void set_words(Plan& plan, const Task& task, double width, Ruler& ruler) {
    const Captions& captions = task.captions;
    set_title(plan, captions, width, ruler);
    Notes notes{remarks_of(captions), captions.source, captions.language};
    if (!captions.drawn_by.empty() && !credit_fits(task, plan.style, ruler)) {
        notes.remarks.push_back({say(captions.language, messages::kDrawnBy, {captions.drawn_by})});
    }
    const bool headings = plan.economy < Economy::headings;
    if (plan.packing == Packing::airy) {
        plan.key = key_block(captions, {}, headings, plan.style, width, ruler);
        plan.notes = note_block(notes, plan.style, width, ruler);
    } else {
        plan.key = key_block(captions, notes, headings, plan.style, width, ruler);
    }
}

/// Words beneath the figures. Empty if they do not fit.
std::optional<Plan> plan_below(Plan plan, const Task& task, Ruler& ruler) {
    const Spaces s = spaces_of(plan);
    const FigureRow row = row_of(task);
    const double width = row.width * plan.factor + 2 * task.callout_width();
    const double height = row.height * plan.factor;
    const double label = task.frames.empty() ? 0 : s.label;
    const double fixed = s.head + height + label + s.before_title + s.foot;
    if (width > width_for_figures(plan, task, s) ||
        fixed > plan.neat.height() * (1 - kLeastBelow)) {
        return std::nullopt;
    }
    set_words(plan, task, plan.neat.width() - 2 * s.side, ruler);
    const double spare = plan.neat.height() - fixed - words_height(plan, s);
    if (spare < 0) {
        return std::nullopt;
    }
    const double middle = plan.neat.centre().x;
    const double top = plan.neat.top + s.head + spare * 0.24;
    plan.named = task.callout_width() > 0;
    plan.figures = {middle - width / 2 + task.column_width(),
                    top,
                    middle + width / 2 - task.column_width(),
                    top + height};
    plan.words = {plan.neat.left + s.side,
                  plan.figures.bottom + label + s.before_title + spare * 0.25,
                  plan.neat.right - s.side,
                  plan.neat.bottom - s.foot};
    plan.key_at =
        plan.title_height + s.after_title + (plan.notes.empty() ? spare * 0.1 : spare * 0.15);
    return plan;
}

/// Words to the right of the figures. Empty if they do not fit.
std::optional<Plan> plan_beside(Plan plan, const Task& task, Ruler& ruler) {
    plan.beside = true;
    const Spaces s = spaces_of(plan);
    const FigureRow row = row_of(task);
    const double width = row.width * plan.factor + 2 * task.callout_width();
    const double height = row.height * plan.factor;
    const double left_width = plan.neat.width() - width - 2 * s.side;
    const double fixed = s.head + height + s.label + s.foot * 0.5;
    if (left_width < plan.neat.width() * kLeastBeside || fixed > plan.neat.height()) {
        return std::nullopt;
    }
    set_words(plan, task, left_width, ruler);
    const double margin = 1.6 * s.foot;
    const double spare = plan.neat.height() - 2 * margin - words_height(plan, s);
    if (spare < 0) {
        return std::nullopt;
    }
    const double top = plan.neat.top + s.head + (plan.neat.height() - fixed) * 0.5;
    const double left = plan.neat.left + s.side * 0.5;
    plan.named = task.callout_width() > 0;
    plan.figures = {
        left + task.column_width(), top, left + width - task.column_width(), top + height};
    plan.words = {left + width + s.side * 0.5,
                  plan.neat.top + margin,
                  plan.neat.right - s.side,
                  plan.neat.bottom - margin};
    plan.words.top += spare * (plan.notes.empty() ? 0.4 : 0.3);
    plan.key_at = plan.title_height + s.after_title + std::min(spare * 0.15, 6 * plan.style.unit);
    return plan;
}

/// A plan with type of that size, or nothing if the words do not fit.
std::optional<Plan> try_plan(
    const Task& task, double scale, double body, Economy economy, Ruler& ruler) {
    Plan plan;
    plan.style = {unit_of(task.paper), body};
    plan.economy = economy;
    plan.factor = 1 / scale;
    plan.credits = economy < Economy::colophon || !task.captions.drawn_by.empty();
    set_frame(plan, task);
    set_labels(plan, task, ruler);
    const bool lies = task.paper.width > task.paper.height;
    for (const bool beside : {lies, !lies}) {
        const auto packed = [&](Packing packing) {
            plan.packing = packing;
            return beside ? plan_beside(plan, task, ruler) : plan_below(plan, task, ruler);
        };
        auto airy = packed(Packing::airy);
        auto in_column = packed(Packing::notes_in_column);
        // A lone line at the foot looks forgotten where the last column has room for it.
        const bool costs = !airy || !in_column || in_column->key.height > airy->key.height + 1e-6;
        if (airy && costs) {
            return airy;
        }
        if (in_column) {
            return in_column;
        }
    }
    return std::nullopt;
}

/// Type of the key when nothing is short, mm.
double good_body(const Paper& paper) {
    return std::max(2.95 * std::sqrt(unit_of(paper)), kSevenPoint * 1.06);
}

/// Whether figures at that scale leave any room for words at all.
bool figures_fit(const Task& task, double scale) {
    Plan plan;
    plan.style = {unit_of(task.paper), kSevenPoint};
    plan.economy = Economy::wide_spacing;
    set_frame(plan, task);
    const Spaces s = spaces_of(plan);
    const FigureRow row = row_of(task);
    const double width = row.width / scale + 2 * task.callout_width();
    const double height = row.height / scale;
    const bool below = width <= width_for_figures(plan, task, s) &&
                       s.head + height + s.label + s.before_title + s.foot <=
                           plan.neat.height() * (1 - kLeastBelow);
    const bool beside =
        plan.neat.width() - width - 2 * s.side >= plan.neat.width() * kLeastBeside &&
        s.head + height + s.label + s.foot * 0.5 <= plan.neat.height();
    return below || beside;
}

std::size_t letters_of(const Captions& captions) {
    std::size_t letters =
        captions.title.size() * 3 + captions.subtitle.size() + captions.source.size();
    for (const std::string& note : captions.notes) {
        letters += note.size();
    }
    for (const Footnote& note : captions.footnotes) {
        letters += note.words.size();
    }
    for (const KeyEntry& entry : captions.key) {
        letters += entry.name.size() + entry.made_of.size() + entry.worn.size();
    }
    for (const auto& [label, words] : captions.particulars) {
        letters += label.size() + words.size();
    }
    return letters;
}

/// The type at which that many letters would cover the whole sheet: no larger type can do, and
/// trying it would only take time.
double hopeless_body(const Task& task) {
    constexpr double ems_of_one_letter = 0.25;
    const double letters = std::max<double>(static_cast<double>(letters_of(task.captions)), 1);
    return std::sqrt(task.paper.width * task.paper.height / (letters * ems_of_one_letter));
}

/// The plan with the largest type below `body` that holds all words.
Plan shrink(const Task& task, double scale, double body, Ruler& ruler) {
    const auto at = [&](int steps) {
        return try_plan(task, scale, body * std::pow(0.96, steps), Economy::wide_spacing, ruler);
    };
    int too_large = 0;
    int small_enough = 1;
    std::optional<Plan> plan = at(small_enough);
    while (!plan) {
        too_large = small_enough;
        small_enough *= 2;
        // Type of a fourteenth of the size has room for two hundred times the words; past that the
        // figures give way too.
        if (small_enough > 64) {
            small_enough = 64;
            scale *= 1.5;
        }
        plan = at(small_enough);
    }
    while (small_enough - too_large > 1) {
        const int middle = (small_enough + too_large) / 2;
        if (auto tried = at(middle)) {
            plan = std::move(tried);
            small_enough = middle;
        } else {
            too_large = middle;
        }
    }
    return *plan;
}

}  // namespace

double Task::callout_width() const {
    return captions.callouts.empty() || frames.empty() ? 0 : kCallouts * unit_of(paper);
}

double Task::column_width() const {
    const bool several = frames.size() > 1 && callout_width() > 0;
    return several ? kCalloutsOfThree * unit_of(paper) : callout_width();
}

double unit_of(const Paper& paper) {
    return std::clamp(std::sqrt(paper.width * paper.height / (210.0 * 297.0)), 0.4, 3.0);
}

std::string credit_of(const Captions& captions) {
    return say(captions.language, messages::kDrawnBy, {on_one_line(captions.drawn_by)});
}

bool credit_fits(const Task& task, const Style& style, Ruler& ruler) {
    const double width = ruler.width(credit_of(task.captions), italic(style.small()));
    return width <= (task.paper.width - 26 * style.unit) * 0.6;
}

double choose_scale(const Task& task, Ruler& ruler) {
    const double good = good_body(task.paper);
    const double body = std::max(good * 0.92, kSevenPoint);
    const Economy economy = unit_of(task.paper) > 0.95 ? Economy::nothing : Economy::wide_spacing;
    const bool hopeless = body > hopeless_body(task);
    double largest = 0;
    double chosen = kScales.back();
    for (const double scale : kScales) {
        if (largest == 0 && figures_fit(task, scale)) {
            largest = scale;
        }
        if (largest == 0) {
            continue;
        }
        if (scale > largest * kFiguresGiveWay) {
            break;
        }
        chosen = scale;
        if (!hopeless && try_plan(task, scale, body, economy, ruler)) {
            break;
        }
    }
    return chosen;
}

Plan make_plan(const Task& task, double scale, Ruler& ruler) {
    while (!figures_fit(task, scale)) {
        scale *= 1.02;
    }
    const double hopeless = hopeless_body(task);
    const double good = good_body(task.paper);
    const std::array<double, 7> sizes{1.2, 1.12, 1.06, 1.0, 0.95, 0.9, 0.86};
    for (const Economy economy : {Economy::generous, Economy::nothing}) {
        for (const double size : sizes) {
            if (good * size <= hopeless && good * size >= kSevenPoint) {
                if (auto plan = try_plan(task, scale, good * size, economy, ruler)) {
                    return *plan;
                }
            }
        }
    }
    for (const Economy economy :
         {Economy::nothing, Economy::colophon, Economy::headings, Economy::wide_spacing}) {
        if (kSevenPoint <= hopeless) {
            if (auto plan = try_plan(task, scale, kSevenPoint, economy, ruler)) {
                return *plan;
            }
        }
    }
    return shrink(task, scale, std::min(kSevenPoint, hopeless), ruler);
}

}  // namespace platewright::sheet
