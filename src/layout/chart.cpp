// SPDX-License-Identifier: MIT
// Charts: cells in groups, groups side by side as far as there is room.
#include "layout/chart.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "layout/block.h"
#include "layout/layer.h"
#include "layout/ruler.h"
#include "layout/style.h"
#include "words/sheet_messages.h"

namespace platewright {
namespace {

using sheet::Layer;
using sheet::Ruler;

/// A cell narrower than this, in mm, shows nothing; a wider one looks empty.
constexpr double kNarrowest = 22;
constexpr double kWidest = 64;

/// Sizes that follow from the paper, mm.
struct Measures {
    double unit = 1;
    double margin = 0;
    double gap = 0;
    double words = 0;
    double leading = 0;
    double heading = 0;

    explicit Measures(const Paper& paper) {
        unit = std::clamp(std::sqrt(paper.width * paper.height / (210.0 * 297.0)), 0.6, 3.0);
        margin = 15 * unit;
        gap = 4.2 * unit;
        words = std::max(sheet::kSevenPoint, 2.6 * unit);
        leading = words * 1.16;
        heading = 3.3 * unit;
    }
};

/// Where everything goes; pictures are not needed for that.
struct ChartPlan {
    /// A group, or what of it stands in one row.
    struct Run {
        std::size_t group = 0;
        std::size_t first = 0;
        std::size_t last = 0;
        double x = 0;
        bool titled = false;
    };

    struct Row {
        std::size_t page = 0;
        double y = 0;
        /// Height of the names of groups above its pictures.
        double heading = 0;
        std::vector<Run> runs;
    };

    std::size_t columns = 1;
    double cell = 0;
    double picture_height = 0;
    std::vector<Row> rows;
    std::size_t pages = 1;
};

class Planner {
  public:
    Planner(const Chart& chart, const Paper& paper, const Measures& measures, Ruler& ruler)
        : chart_(chart), paper_(paper), m_(measures), ruler_(ruler) {}

    /// The fewest pages; of those the widest cells, unless narrower ones fill the last row better.
    ChartPlan best(double head, double foot) {
        const double room = paper_.width - 2 * m_.margin;
        ChartPlan best;
        bool found = false;
        for (std::size_t columns = 1; columns <= 40; ++columns) {
            const double cell = (room + m_.gap) / static_cast<double>(columns) - m_.gap;
            if (columns > 1 && cell < kNarrowest) {
                break;
            }
            if (cell > kWidest * m_.unit && room > kWidest * m_.unit) {
                continue;
            }
            ChartPlan made = plan(columns, cell, head, foot);
            if (!found || made.pages < best.pages ||
                (made.pages == best.pages && left_alone(best) && !left_alone(made))) {
                best = std::move(made);
                found = true;
            }
        }
        return evened(std::move(best), head, foot);
    }

    /// Height of the words beneath the pictures of a row.
    double words_height(const std::vector<ChartPlan::Run>& runs, double cell) {
        std::size_t most = 0;
        for (const ChartPlan::Run& run : runs) {
            for (std::size_t i = run.first; i < run.last; ++i) {
                most = std::max(most, lines_of(chart_.groups[run.group].entries[i], cell).size());
            }
        }
        return static_cast<double>(most) * m_.leading;
    }

    /// The name's lines first; `names` of them.
    std::vector<std::string> lines_of(const ChartEntry& entry,
                                      double cell,
                                      std::size_t* names = nullptr) {
        std::vector<std::string> lines =
            ruler_.lines(entry.name, sheet::roman(m_.words * 1.06), cell);
        if (names != nullptr) {
            *names = lines.size();
        }
        for (const std::string& line : entry.lines) {
            for (std::string& part : ruler_.lines(line, sheet::italic(m_.words), cell)) {
                lines.push_back(std::move(part));
            }
        }
        return lines;
    }

  private:
    const Chart& chart_;
    const Paper& paper_;
    const Measures& m_;
    Ruler& ruler_;

    /// Whether the last row is nearly empty, and not because there is only that one.
    static bool left_alone(const ChartPlan& plan) {
        if (plan.rows.size() < 2) {
            return false;
        }
        std::size_t last = 0;
        for (const ChartPlan::Run& run : plan.rows.back().runs) {
            last += run.last - run.first;
        }
        return 2 * last < plan.columns;
    }

    /// As many rows on every page, so that the last is not nearly empty: the foot is raised as far
    /// as it costs no page.
    ChartPlan evened(ChartPlan found, double head, double foot) {
        if (found.pages == 1) {
            return found;
        }
        double low = foot;
        double high = paper_.height;
        for (int step = 0; step < 12; ++step) {
            const double middle = (low + high) / 2;
            ChartPlan made = plan(found.columns, found.cell, head, middle);
            const bool as_few = made.pages == found.pages;
            (as_few ? low : high) = middle;
            if (as_few) {
                found = std::move(made);
            }
        }
        return found;
    }

    ChartPlan plan(std::size_t columns, double cell, double head, double foot) {
        ChartPlan made;
        made.columns = columns;
        made.cell = cell;
        made.picture_height = cell * chart_.aspect;
        made.rows = rows_of(columns, cell);
        double y = head;
        bool fresh = true;
        std::size_t page = 0;
        for (ChartPlan::Row& row : made.rows) {
            double height = row_height(row, fresh, made);
            if (y + height > paper_.height - foot && !fresh) {
                ++page;
                y = m_.margin;
                height = row_height(row, true, made);
            }
            row.page = page;
            row.y = y;
            y += height;
            fresh = false;
        }
        made.pages = page + 1;
        if (made.pages == 1 && !made.rows.empty()) {
            spread(made, paper_.height - foot - y);
        }
        return made;
    }

    /// Rows of a single page share what room is left, within reason.
    void spread(ChartPlan& plan, double spare) const {
        const double share =
            std::clamp(spare / static_cast<double>(plan.rows.size() + 1), 0.0, 3.2 * m_.gap);
        double shift = share * 0.5;
        for (ChartPlan::Row& row : plan.rows) {
            row.y += shift;
            shift += share;
        }
    }

    double row_height(ChartPlan::Row& row, bool first_on_page, const ChartPlan& plan) {
        return heading_height(row, first_on_page) + plan.picture_height + 0.6 * m_.leading +
               words_height(row.runs, plan.cell) + m_.gap * 0.9;
    }

    /// A group's name stands over its first row, and again at the head of a page.
    [[nodiscard]] double heading_height(ChartPlan::Row& row, bool first_on_page) const {
        bool any = false;
        for (ChartPlan::Run& run : row.runs) {
            run.titled =
                !chart_.groups[run.group].title.empty() && (run.first == 0 || first_on_page);
            any = any || run.titled;
        }
        row.heading = any ? m_.heading * 2.1 : 0;
        return row.heading;
    }

    /// Groups one after the other in a row while they fit whole; a longer group is parted.
    [[nodiscard]] std::vector<ChartPlan::Row> rows_of(std::size_t columns, double cell) const {
        std::vector<ChartPlan::Row> rows;
        std::size_t used = columns;
        for (std::size_t group = 0; group < chart_.groups.size(); ++group) {
            const std::size_t size = chart_.groups[group].entries.size();
            for (std::size_t first = 0; first < size;) {
                const std::size_t left = size - first;
                if (used + std::min(left, columns) > columns) {
                    rows.emplace_back();
                    used = 0;
                }
                const std::size_t count = std::min(left, columns - used);
                rows.back().runs.push_back(
                    {group, first, first + count, static_cast<double>(used) * (cell + m_.gap)});
                used += count;
                first += count;
            }
        }
        return rows;
    }
};

/// Puts the plan on pages.
class Sheet {
  public:
    Sheet(const Chart& chart, const Paper& paper, const Typesetter& type)
        : chart_(chart), paper_(paper), m_(paper), ruler_(type) {
        set_title();
        set_notes();
        plan_ = Planner(chart_, paper_, m_, ruler_).best(head_, foot_);
    }

    [[nodiscard]] const ChartPlan& plan() const { return plan_; }

    std::vector<Page> lay_out() {
        for (std::size_t i = 0; i < plan_.pages; ++i) {
            Page page;
            page.width = paper_.width;
            page.height = paper_.height;
            page.paper = sheet::kPaper;
            pages_.push_back(std::move(page));
        }
        draw(title_, m_.margin, pages_.front(), "title");
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
    const Measures m_;
    Ruler ruler_;
    std::vector<Line> title_;
    std::vector<Line> notes_;
    double head_ = 0;
    double foot_ = 0;
    ChartPlan plan_;
    std::vector<Page> pages_;

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
        head_ = m_.margin + m_.gap * 1.6;
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
        const double y = row.y + row.heading;
        for (const ChartPlan::Run& run : row.runs) {
            for (std::size_t i = run.first; i < run.last; ++i) {
                const double x =
                    m_.margin + run.x + static_cast<double>(i - run.first) * (plan_.cell + m_.gap);
                put_entry(chart_.groups[run.group].entries[i], {x, y}, page);
            }
        }
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
        const Point middle = box.centre();
        Path shape =
            of.metal ? ellipse(middle, box.height() / 2, box.height() / 2) : rectangle(box);
        if (chart_.ink == Ink::hatched) {
            on.hatched(std::move(shape), of.tincture, 0.18);
        } else {
            on.outlined(std::move(shape), of.colour, sheet::kInk, 0.18);
        }
    }

    void put_entry(const ChartEntry& entry, Point corner, Page& page) {
        const Rect cell{corner.x, corner.y, corner.x + plan_.cell, corner.y + plan_.picture_height};
        if (entry.picture) {
            put_picture(*entry.picture, cell, "picture", page);
        }
        if (entry.button) {
            const double side = plan_.cell * 0.30;
            put_picture(*entry.button,
                        {cell.right - side, cell.bottom - side, cell.right, cell.bottom},
                        "button",
                        page);
        }
        Layer label("label");
        if (entry.colour) {
            draw_sample(cell, *entry.colour, label);
        }
        std::size_t names = 0;
        const auto lines = Planner(chart_, paper_, m_, ruler_).lines_of(entry, plan_.cell, &names);
        double baseline = cell.bottom + m_.leading * 1.25;
        for (std::size_t i = 0; i < lines.size(); ++i) {
            const bool name = i < names;
            label.words(lines[i],
                        {cell.centre().x, baseline},
                        name ? sheet::roman(m_.words * 1.06) : sheet::italic(m_.words),
                        name ? sheet::kInk : sheet::kSoftInk,
                        Align::middle);
            baseline += m_.leading;
        }
        std::move(label).put_on(page);
    }

    static void put_picture(const Figure& figure, const Rect& in, const char* name, Page& page) {
        const Rect& frame = figure.frame;
        const double factor = std::min(in.width() / frame.width(), in.height() / frame.height());
        const Point middle = in.centre();
        Placed placed{middle - frame.centre() * factor, factor, figure.drawing};
        placed.drawing.root.name = name;
        page.items.push_back(std::move(placed));
    }

    void put_foot(std::size_t number) {
        Layer foot("foot");
        const double baseline = paper_.height - m_.margin * 0.6;
        if (pages_.size() > 1) {
            foot.words(std::to_string(number + 1) + " / " + std::to_string(pages_.size()),
                       {paper_.width / 2, baseline},
                       sheet::italic(m_.words),
                       sheet::kSoftInk,
                       Align::middle);
        }
        foot.words(sheet::kColophon,
                   {paper_.width - m_.margin, baseline},
                   sheet::small_capitals(m_.words, 0.06),
                   sheet::kSoftInk,
                   Align::end);
        std::move(foot).put_on(pages_[number]);
    }
};

}  // namespace

double chart_scale(const Chart& chart, double width, const Paper& paper, const Typesetter& type) {
    return std::max(width, 1.0) / Sheet(chart, paper, type).plan().cell;
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
