// SPDX-License-Identifier: MIT
// Tries every number of columns, and sets the cells in rows and pages.
#include "layout/chart_plan.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "layout/style.h"

namespace platewright::sheet {
namespace {

/// A cell narrower than this, in mm, shows nothing; a wider one looks empty.
constexpr double kNarrowest = 22;
constexpr double kWidest = 64;
/// A lens, across: of its cell, and at most so many mm.
constexpr double kLens = 0.8;
constexpr double kLargestLens = 28;
/// A man needs so much room beside him, mm, for his lens to stand there.
constexpr double kLeastBeside = 16;

class ChartPlanner {
  public:
    ChartPlanner(const Chart& chart,
                 const Paper& paper,
                 const ChartMeasures& measures,
                 Ruler& ruler)
        : chart_(chart), paper_(paper), m_(measures), ruler_(ruler) {}

    /// The fewest pages; of those the largest pictures, unless smaller ones fill the last row
    /// better.
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
            if (found && breaks_names(cell)) {
                break;
            }
            ChartPlan made = made_to_fit(columns, cell, {head, foot});
            if (!found || is_better(made, best)) {
                best = std::move(made);
                found = true;
            }
        }
        return evened(std::move(best), head, foot);
    }

  private:
    const Chart& chart_;
    const Paper& paper_;
    const ChartMeasures& m_;
    Ruler& ruler_;

    /// What title and notes take of the sheet, mm.
    struct Taken {
        double head = 0;
        double foot = 0;
    };

    /// Samples come in order, the widest first; men are as large as their rows let them be.
    [[nodiscard]] bool is_better(const ChartPlan& made, const ChartPlan& than) const {
        if (made.pages != than.pages) {
            return made.pages < than.pages;
        }
        if (left_alone(made) != left_alone(than)) {
            return left_alone(than);
        }
        if (fullest(made) < made.columns) {
            return false;
        }
        return chart_.standing && made.picture_height > than.picture_height;
    }

    /// Whether a word of a name is wider than its cell and its share of the gap.
    bool breaks_names(double cell) {
        const Type type = roman(m_.words * 1.06);
        return chart_.standing && std::ranges::any_of(chart_.groups, [&](const ChartGroup& group) {
                   return std::ranges::any_of(group.entries, [&](const ChartEntry& entry) {
                       return ruler_.least_width(entry.name, type, "") > cell;
                   });
               });
    }

    /// Height of what stands beneath the pictures of a row.
    double words_height(ChartPlan::Row& row, const ChartPlan& plan) {
        double most = 0;
        std::size_t below = 0;
        row.lines_above = 0;
        for (const ChartPlan::Run& run : row.runs) {
            for (std::size_t i = run.first; i < run.last; ++i) {
                const ChartEntry& entry = chart_.groups[run.group].entries[i];
                const ChartWords words = chart_words(entry, words_room(plan, run, m_), m_, ruler_);
                row.lines_above = std::max(row.lines_above, words.above);
                below = std::max(below, words.lines.size() - words.above);
                most = std::max({most,
                                 static_cast<double>(words.lines.size()) * m_.leading,
                                 entry.button ? m_.button : 0});
            }
        }
        // Lenses of a row stand level.
        return plan.lens > 0 && !plan.beside
                   ? static_cast<double>(row.lines_above + below) * m_.leading + plan.lens +
                         m_.leading
                   : most;
    }

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

    /// How many stand in the row that has most.
    static std::size_t fullest(const ChartPlan& plan) {
        std::size_t most = 0;
        for (const ChartPlan::Row& row : plan.rows) {
            std::size_t number = 0;
            for (const ChartPlan::Run& run : row.runs) {
                number += run.last - run.first;
            }
            most = std::max(most, number);
        }
        return most;
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
            ChartPlan made = plan(found.columns, found.cell, found.picture_height, {head, middle});
            const bool as_few = made.pages == found.pages;
            (as_few ? low : high) = middle;
            if (as_few) {
                found = std::move(made);
            }
        }
        return found;
    }

    /// On one page, if it can be had by cutting samples or making men smaller; otherwise as wide as
    /// the cell.
    ChartPlan made_to_fit(std::size_t columns, double cell, const Taken& taken) {
        constexpr double step = 0.02;
        // Below this half a mark is no more to be seen.
        constexpr double smallest = 38;
        const double most = cell * chart_.aspect;
        const double least = chart_.standing           ? std::min(smallest * m_.unit, most)
                             : chart_.least_aspect > 0 ? cell * chart_.least_aspect
                                                       : most;
        ChartPlan whole = plan(columns, cell, most, taken);
        for (double height = most * (1 - step); whole.pages > 1 && height >= least;
             height -= most * step) {
            ChartPlan made = plan(columns, cell, height, taken);
            if (made.pages == 1) {
                return made;
            }
        }
        return whole;
    }

    ChartPlan plan(std::size_t columns, double cell, double picture_height, const Taken& taken) {
        const auto& [head, foot] = taken;
        ChartPlan made;
        made.columns = columns;
        made.cell = cell;
        made.picture_height = picture_height;
        made.lens = lens_of(cell);
        made.man = picture_height / chart_.aspect;
        made.rows = rows_of(columns, cell);
        if (made.lens > 0 && !is_named() && cell - made.man > kLeastBeside * m_.unit) {
            set_beside(made);
        }
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

    /// Across; 0 where nothing is enlarged.
    [[nodiscard]] double lens_of(double cell) const {
        const bool any = std::ranges::any_of(chart_.groups, [](const ChartGroup& group) {
            return std::ranges::any_of(group.entries, &ChartEntry::has_detail);
        });
        return any ? std::min(kLens * cell, kLargestLens * m_.unit) : 0;
    }

    [[nodiscard]] const ChartEntry& entry_of(const ChartPlan::Run& run, std::size_t at) const {
        return chart_.groups[run.group].entries[at];
    }

    /// How many of a run have something enlarged.
    [[nodiscard]] double lenses_of(const ChartPlan::Run& run) const {
        double lenses = 0;
        for (std::size_t i = run.first; i < run.last; ++i) {
            lenses += entry_of(run, i).has_detail ? 1 : 0;
        }
        return lenses;
    }

    /// Each with his lens is as one picture; one without takes no room for it. Pictures stand as
    /// far apart in every row, and each row in the middle of the sheet.
    void set_beside(ChartPlan& plan) const {
        constexpr double least_between = 1.6;
        // A lens may stand over the elbow.
        constexpr double reach = 0.96;
        const double room = paper_.width - 2 * m_.margin;
        plan.beside = true;
        plan.lens = kLargestLens * m_.unit;
        for (const ChartPlan::Row& row : plan.rows) {
            const ChartPlan::Run& run = row.runs.front();
            const auto number = static_cast<double>(run.last - run.first);
            const double left = room - number * (plan.man + least_between * m_.gap);
            plan.lens = std::min(plan.lens, left / (reach * std::max(1.0, lenses_of(run))));
        }
        plan.aside = plan.man / 2 + (reach - 0.5) * plan.lens;
        double between = room;
        const auto taken = [&](const ChartPlan::Run& run) {
            return static_cast<double>(run.last - run.first) * plan.man +
                   lenses_of(run) * reach * plan.lens;
        };
        const auto share = [&](const ChartPlan::Run& run) {
            return (room - taken(run)) / static_cast<double>(run.last - run.first);
        };
        for (const ChartPlan::Row& row : plan.rows) {
            between = std::min(between, share(row.runs.front()));
        }
        for (ChartPlan::Row& row : plan.rows) {
            ChartPlan::Run& run = row.runs.front();
            const auto gaps = static_cast<double>(run.last - run.first - 1);
            double x = (room - taken(run) - gaps * between) / 2;
            for (std::size_t i = run.first; i < run.last; ++i) {
                run.middles.push_back(x + plan.man / 2);
                x += plan.man + between + (entry_of(run, i).has_detail ? reach * plan.lens : 0);
            }
        }
    }

    /// Rows of a single page share what room is left, within reason.
    void spread(ChartPlan& plan, double spare) const {
        const double share =
            std::clamp(spare / static_cast<double>(plan.rows.size() + 1), 0.0, 5 * m_.gap);
        // A single row of men hangs a little above the middle, as a picture on a wall.
        double shift =
            plan.rows.size() == 1 && chart_.standing ? std::max(0.36 * spare, 0.0) : share * 0.5;
        for (ChartPlan::Row& row : plan.rows) {
            row.y += shift;
            shift += share;
        }
    }

    double row_height(ChartPlan::Row& row, bool first_on_page, const ChartPlan& plan) {
        return heading_height(row, first_on_page) + plan.picture_height + 0.6 * m_.leading +
               (chart_.standing ? m_.ground : 0) + words_height(row, plan) + m_.gap * 0.9;
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
                const std::size_t count = std::min(left, evenly(left, columns) - used);
                rows.back().runs.push_back({group,
                                            first,
                                            first + count,
                                            static_cast<double>(used) * (cell + m_.gap),
                                            cell + m_.gap,
                                            {},
                                            false});
                used = is_named() ? used + count : columns;
                first += count;
            }
        }
        centre_short(rows, columns, cell);
        return rows;
    }

    /// Where groups have names, these stand at the left, and so do their pictures.
    [[nodiscard]] bool is_named() const {
        return chart_.groups.size() > 1 || !chart_.groups.front().title.empty();
    }

    /// How many of those left stand in the next row: a few rows share them out, that the last is no
    /// remnant.
    [[nodiscard]] std::size_t evenly(std::size_t left, std::size_t columns) const {
        constexpr std::size_t few = 4;
        const std::size_t rows = (left + columns - 1) / columns;
        return is_named() || rows > few ? columns : (left + rows - 1) / rows;
    }

    /// A hole at one side looks like something missing: those of a short row stand a little further
    /// apart, and in the middle.
    void centre_short(std::vector<ChartPlan::Row>& rows, std::size_t columns, double cell) const {
        constexpr double furthest = 1.25;
        if (rows.size() < 2 || is_named()) {
            return;
        }
        const double room = static_cast<double>(columns) * (cell + m_.gap);
        for (ChartPlan::Row& row : rows) {
            for (ChartPlan::Run& run : row.runs) {
                const auto number = static_cast<double>(run.last - run.first);
                run.pitch = std::min(room / number, furthest * (cell + m_.gap));
                run.x = (room - number * run.pitch + run.pitch - (cell + m_.gap)) / 2;
            }
        }
    }
};

}  // namespace

ChartMeasures::ChartMeasures(const Paper& paper) {
    unit = std::clamp(std::sqrt(paper.width * paper.height / (210.0 * 297.0)), 0.6, 3.0);
    margin = 15 * unit;
    gap = 4.2 * unit;
    words = std::max(kSevenPoint, 2.6 * unit);
    leading = words * 1.16;
    heading = 3.3 * unit;
    button = 2.9 * leading;
    beside = 0.6 * leading;
    ground = 0.5 * leading;
}

ChartWords chart_words(const ChartEntry& entry,
                       double cell,
                       const ChartMeasures& measures,
                       Ruler& ruler) {
    // Words in the middle may stand a little into the gap at either side.
    const double room = entry.button   ? cell - measures.button - measures.beside
                        : entry.colour ? cell
                                       : cell + 0.6 * measures.gap;
    ChartWords words{ruler.lines(entry.name, roman(measures.words * 1.06), room), 0, 0};
    words.names = words.lines.size();
    for (const std::string& line : entry.lines) {
        words.above = words.lines.size();
        // No last line may be a single word.
        for (std::string& part : ruler.even_lines(line, italic(measures.words), room)) {
            words.lines.push_back(std::move(part));
        }
    }
    if (!entry.has_detail) {
        words.above = words.lines.size();
    }
    return words;
}

double words_room(const ChartPlan& plan, const ChartPlan::Run& run, const ChartMeasures& measures) {
    if (run.middles.empty()) {
        return run.pitch - measures.gap;
    }
    // Those of the first may not run out of the sheet, nor any into his neighbour's.
    double room = std::min(plan.man + plan.lens, 2 * run.middles.front());
    for (std::size_t i = 1; i < run.middles.size(); ++i) {
        room = std::min(room, run.middles[i] - run.middles[i - 1] - measures.gap);
    }
    return room;
}

ChartPlan plan_chart(
    const Chart& chart, const Paper& paper, double head, double foot, Ruler& ruler) {
    const ChartMeasures measures(paper);
    return ChartPlanner(chart, paper, measures, ruler).best(head, foot);
}

}  // namespace platewright::sheet
