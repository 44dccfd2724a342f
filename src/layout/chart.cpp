// SPDX-License-Identifier: MIT
// Charts: titles, pictures with their words, notes.
#include "layout/chart.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "layout/block.h"
#include "layout/chart_plan.h"
#include "layout/furniture.h"
#include "layout/ground.h"
#include "layout/layer.h"
#include "layout/ruler.h"
#include "layout/silhouette.h"
#include "layout/style.h"
#include "words/sheet_messages.h"

namespace platewright {
namespace {

using sheet::ChartPlan;
using sheet::Layer;
using sheet::Ruler;

/// Where titles begin, in margins.
constexpr double kTop = 1.15;
/// The shade of a sample of cloth on the sheet.
constexpr Colour kUnderSample{0xc9, 0xbf, 0xa8};

/// A sample of cloth, its edges pinked so that they do not fray.
Path pinked(const Rect& box, double tooth) {
    const std::array<Point, 4> along{{{1, 0}, {0, 1}, {-1, 0}, {0, -1}}};
    const std::array<Point, 4> corners{{{box.left, box.top},
                                        {box.right, box.top},
                                        {box.right, box.bottom},
                                        {box.left, box.bottom}}};
    std::vector<Point> points;
    for (std::size_t side = 0; side < 4; ++side) {
        const double length = side % 2 == 0 ? box.width() : box.height();
        const auto teeth = std::max(1, static_cast<int>(std::lround(length / tooth)));
        const Point step = along[side] * (length / teeth);
        const Point inwards = right_of(along[side]) * (0.42 * length / teeth);
        for (int i = 0; i < teeth; ++i) {
            // A tooth on the corner itself would be a thorn.
            if (i > 0) {
                points.push_back(corners[side] + step * i);
            }
            points.push_back(corners[side] + step * (i + 0.5) + inwards);
        }
    }
    return polygon(points);
}

/// Puts the plan on pages.
class Sheet {
  public:
    Sheet(const Chart& chart, const Paper& paper, const Typesetter& type)
        : chart_(chart), paper_(paper), m_(paper), ruler_(type) {
        set_title();
        set_notes();
        plan_ = sheet::plan_chart(chart_, paper_, head_, foot_, ruler_);
    }

    [[nodiscard]] const ChartPlan& plan() const { return plan_; }

    std::vector<Page> lay_out() {
        for (std::size_t i = 0; i < plan_.pages; ++i) {
            Page page;
            page.width = paper_.width;
            page.height = paper_.height;
            page.paper = sheet::kPaper;
            Layer frame("frame");
            sheet::draw_frame(sheet_within(0.44), sheet_within(0.66), m_.unit, frame);
            std::move(frame).put_on(page);
            pages_.push_back(std::move(page));
        }
        draw(title_, m_.margin * kTop, pages_.front(), "title");
        for (const ChartPlan::Row& row : plan_.rows) {
            put_row(row);
        }
        draw(notes_, paper_.height - foot_ + m_.gap * 0.4, pages_.back(), "notes");
        for (std::size_t i = 0; i < pages_.size(); ++i) {
            put_foot(i);
        }
        return std::move(pages_);
    }

    /// Whether words run out of their page.
    [[nodiscard]] bool overflows() const {
        return head_ + foot_ > paper_.height * 0.8 ||
               std::ranges::any_of(plan_.rows, [this](const ChartPlan::Row& row) {
                   return row.y + plan_.picture_height > paper_.height - foot_;
               });
    }

  private:
    /// A line of words with the room it takes.
    struct Line {
        std::string words;
        Type type;
        Colour colour;
        double height = 0;
        Align align = Align::start;
    };

    const Chart& chart_;
    const Paper& paper_;
    const sheet::ChartMeasures m_;
    Ruler ruler_;
    std::vector<Line> title_;
    std::vector<Line> notes_;
    double head_ = 0;
    double foot_ = 0;
    ChartPlan plan_;
    std::vector<Page> pages_;

    /// The sheet without that share of the margin all round.
    [[nodiscard]] Rect sheet_within(double share) const {
        const double off = m_.margin * share;
        return {off, off, paper_.width - off, paper_.height - off};
    }

    [[nodiscard]] double room() const { return paper_.width - 2 * m_.margin; }

    void set_title() {
        const Type large = sheet::small_capitals(6.2 * m_.unit);
        for (std::string& line : ruler_.even_lines(chart_.title, large, room())) {
            title_.push_back(
                {std::move(line), large, sheet::kInk, large.size * 1.2, Align::middle});
        }
        const Type small = sheet::italic(3.3 * m_.unit);
        for (std::string& line : ruler_.even_lines(chart_.subtitle, small, room())) {
            title_.push_back(
                {std::move(line), small, sheet::kSoftInk, small.size * 1.3, Align::middle});
        }
        head_ = m_.margin * kTop + m_.gap * 1.5;
        for (const Line& line : title_) {
            head_ += line.height;
        }
    }

    void set_notes() {
        std::vector<std::pair<std::string, bool>> all;
        for (const std::string& note : chart_.notes) {
            all.emplace_back(note, false);
        }
        if (!chart_.source.empty()) {
            all.emplace_back(say(chart_.language, messages::kSource, {chart_.source}), true);
        }
        if (!chart_.drawn_by.empty()) {
            all.emplace_back(say(chart_.language, messages::kDrawnBy, {chart_.drawn_by}), true);
        }
        foot_ = m_.margin + m_.leading * 0.9;
        for (const auto& [words, slanted] : all) {
            const Type type = slanted ? sheet::italic(m_.words) : sheet::roman(m_.words);
            for (std::string& line : ruler_.lines(words, type, room())) {
                notes_.push_back({std::move(line), type, sheet::kInk, m_.leading, Align::start});
                foot_ += m_.leading;
            }
        }
    }

    void draw(const std::vector<Line>& lines, double y, Page& page, const char* name) {
        Layer layer(name);
        for (const Line& line : lines) {
            const double x = line.align == Align::middle ? paper_.width / 2 : m_.margin;
            layer.words(line.words,
                        {x, y + line.type.size * sheet::kBaseline},
                        line.type,
                        line.colour,
                        line.align);
            y += line.height;
        }
        std::move(layer).put_on(page);
    }

    void put_row(const ChartPlan::Row& row) {
        Page& page = pages_[row.page];
        for (const ChartPlan::Run& run : row.runs) {
            if (run.titled) {
                put_heading(run, row.y, page);
            }
        }
        for (const ChartPlan::Run& run : row.runs) {
            if (chart_.standing) {
                put_ground(row, run, page);
            }
            for (std::size_t i = run.first; i < run.last; ++i) {
                put_entry(
                    chart_.groups[run.group].entries[i], cell_of(row, run, i), {row, run}, page);
            }
        }
    }

    /// The room of a picture.
    [[nodiscard]] Rect cell_of(const ChartPlan::Row& row,
                               const ChartPlan::Run& run,
                               std::size_t entry) const {
        const std::size_t at = entry - run.first;
        const double x =
            m_.margin + (run.middles.empty() ? run.x + static_cast<double>(at) * run.pitch
                                             : run.middles[at] - plan_.cell / 2);
        const double y = row.y + row.heading;
        return {x, y, x + plan_.cell, y + plan_.picture_height};
    }

    /// One strip under all who stand side by side.
    void put_ground(const ChartPlan::Row& row, const ChartPlan::Run& run, Page& page) const {
        std::vector<sheet::Footing> feet;
        double factor = 1;
        for (std::size_t i = run.first; i < run.last; ++i) {
            const ChartEntry& entry = chart_.groups[run.group].entries[i];
            if (!entry.picture) {
                continue;
            }
            const Placed man = placed(*entry.picture, cell_of(row, run, i), "");
            factor = man.factor;
            auto foot = sheet::footing_of(
                sheet::Silhouette(entry.picture->drawing, entry.picture->frame), man.at, factor);
            if (foot) {
                feet.push_back(*std::move(foot));
            }
        }
        Rect first = cell_of(row, run, run.first);
        Rect last = cell_of(row, run, run.last - 1);
        if (plan_.beside) {
            // As far as the row is seen to reach, rings and all.
            first.left = first.centre().x - plan_.man / 2;
            last.right = m_.margin + room() + m_.margin - first.left;
        }
        const double beyond = m_.margin * 0.2;
        Layer ground("ground");
        sheet::draw_ground(
            feet,
            {first.left - beyond, first.top, last.right + beyond, first.bottom + m_.ground},
            factor,
            chart_.title + std::to_string(run.group) + std::to_string(run.first),
            ground);
        std::move(ground).put_on(page);
    }

    /// The group's name over its first row, and a rule as wide as the run.
    void put_heading(const ChartPlan::Run& run, double y, Page& page) {
        const ChartGroup& group = chart_.groups[run.group];
        Layer heading("heading");
        const double cells = static_cast<double>(run.last - run.first);
        const double width = cells * (plan_.cell + m_.gap) - m_.gap;
        double x = m_.margin + run.x;
        const double left = x;
        if (group.colour) {
            const double side = m_.heading;
            draw_sample(
                {x, y + side * 0.18, x + side * 1.5, y + side * 1.18}, *group.colour, heading);
            x += side * 1.5 + m_.heading * 0.5;
        }
        Type type = sheet::small_capitals(m_.heading);
        const double wide = ruler_.width(group.title, type);
        type.size *= std::min(1.0, std::max(0.3, (left + width - x) / std::max(wide, 1e-6)));
        type.size = std::max(type.size, std::min(m_.heading, sheet::kSevenPoint));
        heading.words(group.title, {x, y + m_.heading * 1.02}, type, sheet::kInk);
        heading.line({left, y + m_.heading * 1.5},
                     {left + width, y + m_.heading * 1.5},
                     sheet::kInk,
                     0.16 * m_.unit);
        std::move(heading).put_on(page);
    }

    void draw_sample(const Rect& box, const KeyEntry& of, Layer& on) const {
        const auto hatch = chart_.ink == Ink::hatched ? std::optional(of.tincture) : std::nullopt;
        sheet::draw_swatch(
            {of.colour, hatch, of.metal, box.width(), box.height()}, {box.left, box.top}, on);
    }

    /// Where an entry stands.
    struct Place {
        const ChartPlan::Row& row;
        const ChartPlan::Run& run;
    };

    void put_entry(const ChartEntry& entry, const Rect& cell, const Place& place, Page& page) {
        if (entry.picture) {
            page.items.push_back(placed(*entry.picture, cell, "picture"));
        }
        const double under = words_under(cell) + 0.55 * m_.leading;
        if (entry.button) {
            page.items.push_back(
                placed(*entry.button,
                       {cell.left, under, cell.left + m_.button, under + m_.button},
                       "button"));
        }
        if (entry.colour) {
            Layer sample("sample");
            if (chart_.ink == Ink::hatched || entry.colour->metal) {
                draw_sample(cell, *entry.colour, sample);
            } else {
                // It lies on the sheet, and is as thick as cloth.
                const Path cloth = pinked(cell, 1.25 * m_.unit);
                sample.fill(cloth.transformed(Affine::translation(0.22 * m_.unit, 0.3 * m_.unit)),
                            kUnderSample);
                sample.outlined(cloth, entry.colour->colour, sheet::kInk, 0.12);
            }
            std::move(sample).put_on(page);
        }
        put_label(entry, cell, place, page);
    }

    /// Where what stands beneath a picture begins.
    [[nodiscard]] double words_under(const Rect& cell) const {
        return cell.bottom + (chart_.standing ? m_.ground : 0);
    }

    /// Two rings, as a medallist's, and what tells this man from the others within them.
    void put_lens(const Figure& figure, Point centre, Page& page) const {
        const double radius = plan_.lens / 2;
        const double inner = radius - 0.75 * m_.unit;
        Figure round = figure;
        const double inside = round.frame.width() / 2;
        const PathId edge = round.drawing.add(ellipse(round.frame.centre(), inside, inside));
        Group cut{"detail", false, {edge}, {}};
        cut.children.emplace_back(std::move(round.drawing.root));
        round.drawing.root = std::move(cut);
        page.items.push_back(
            placed(round,
                   {centre.x - inner, centre.y - inner, centre.x + inner, centre.y + inner},
                   "detail"));
        Layer ring("ring");
        ring.stroke(ellipse(centre, radius, radius), sheet::kInk, 0.2 * m_.unit);
        ring.stroke(ellipse(centre, inner, inner), sheet::kInk, 0.1 * m_.unit);
        std::move(ring).put_on(page);
    }

    void put_label(const ChartEntry& entry, const Rect& cell, const Place& place, Page& page) {
        const sheet::ChartWords words =
            sheet::chart_words(entry, sheet::words_room(plan_, place.run, m_), m_, ruler_);
        double baseline = words_under(cell) + m_.leading * 1.25;
        double x = cell.centre().x;
        if (entry.button) {
            x = cell.left + m_.button + m_.beside;
            // Names stand on one line, whatever is said under them; one alone by the button's
            // middle.
            baseline += words.lines.size() == 1 ? (m_.button - m_.leading) / 2 : 0;
        }
        const double below = baseline + static_cast<double>(place.row.lines_above) * m_.leading;
        if (entry.detail) {
            // Under the name, or beside the head, over the elbow.
            const double radius = plan_.lens / 2;
            const Point under{x, below - 0.4 * m_.leading + radius};
            const Point beside{x + plan_.aside, cell.top + radius + 0.04 * cell.height()};
            put_lens(*entry.detail, plan_.beside ? beside : under, page);
        }
        Layer label("label");
        for (std::size_t i = 0; i < words.lines.size(); ++i) {
            const bool name = i < words.names;
            if (i == words.above && !plan_.beside) {
                baseline = below + plan_.lens + m_.leading;
            }
            label.words(words.lines[i],
                        {x, baseline},
                        name ? sheet::roman(m_.words * 1.06) : sheet::italic(m_.words),
                        name ? sheet::kInk : sheet::kSoftInk,
                        entry.button ? Align::start : Align::middle);
            baseline += m_.leading;
        }
        std::move(label).put_on(page);
    }

    static Placed placed(const Figure& figure, const Rect& in, const char* name) {
        const Rect& frame = figure.frame;
        const double factor = std::min(in.width() / frame.width(), in.height() / frame.height());
        const Point middle = in.centre();
        Placed placed{middle - frame.centre() * factor, factor, figure.drawing};
        placed.drawing.root.name = name;
        return placed;
    }

    void put_foot(std::size_t number) {
        Layer foot("foot");
        // Between the frame and the edge of the plate, where engravers signed.
        const double baseline = paper_.height - m_.margin * 0.5;
        if (pages_.size() > 1) {
            foot.words(std::to_string(number + 1) + " / " + std::to_string(pages_.size()),
                       {paper_.width / 2, baseline},
                       sheet::italic(m_.words),
                       sheet::kSoftInk,
                       Align::middle);
        }
        foot.words(sheet::kColophon,
                   {paper_.width - m_.margin * 0.7, baseline},
                   sheet::small_capitals(m_.words, 0.06),
                   sheet::kSoftInk,
                   Align::end);
        std::move(foot).put_on(pages_[number]);
    }
};

}  // namespace

double chart_scale(const Chart& chart, double width, const Paper& paper, const Typesetter& type) {
    const Sheet sheet(chart, paper, type);
    const ChartPlan& plan = sheet.plan();
    const double high = chart.aspect * std::max(width, 1.0);
    return std::max(std::max(width, 1.0) / plan.cell, high / plan.picture_height);
}

Document lay_out_chart(const Chart& chart,
                       const Paper& paper,
                       const Typesetter& type,
                       Diagnostics& to) {
    Sheet sheet(chart, paper, type);
    if (sheet.overflows()) {
        Diagnostic warning;
        warning.severity = Severity::warning;
        warning.code = "layout.too-long";
        warning.message = "the words of this chart leave no room for its pictures";
        warning.hints = {"use larger paper, for example `--paper A3`", "or shorten the notes"};
        to.add(std::move(warning));
    }
    Document document;
    document.title = sheet::on_one_line(chart.title);
    document.author = sheet::on_one_line(chart.drawn_by);
    document.subject = sheet::on_one_line(chart.subtitle);
    document.description = document.title;
    document.language = language_code(chart.language);
    document.pages = sheet.lay_out();
    return document;
}

}  // namespace platewright
