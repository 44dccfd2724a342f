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

class ChartPlanner {
  public:
    ChartPlanner(const Chart& chart,
                 const Paper& paper,
                 const ChartMeasures& measures,
                 Ruler& ruler)
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
            ChartPlan made = cut_to_fit(columns, cell, head, foot);
            if (!found || made.pages < best.pages ||
                (made.pages == best.pages && left_alone(best) && !left_alone(made))) {
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

    /// Height of what stands beneath the pictures of a row.
    double words_height(const std::vector<ChartPlan::Run>& runs, double cell) {
        double most = 0;
        for (const ChartPlan::Run& run : runs) {
            for (std::size_t i = run.first; i < run.last; ++i) {
                const ChartEntry& entry = chart_.groups[run.group].entries[i];
                const auto lines =
                    static_cast<double>(chart_words(entry, cell, m_, ruler_).lines.size());
                most = std::max({most, lines * m_.leading, entry.button ? m_.button : 0});
            }
        }
        return most;
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

    /// What title and notes take of the sheet, mm.
    struct Taken {
        double head = 0;
        double foot = 0;
    };

    /// With pictures cut off as far as it takes to have them on one page; whole if it would not
    /// help.
    ChartPlan cut_to_fit(std::size_t columns, double cell, double head, double foot) {
        constexpr double step = 0.02;
        ChartPlan whole = plan(columns, cell, cell * chart_.aspect, {head, foot});
        for (double aspect = chart_.aspect * (1 - step);
             whole.pages > 1 && chart_.least_aspect > 0 && aspect >= chart_.least_aspect;
             aspect -= chart_.aspect * step) {
            ChartPlan cut = plan(columns, cell, cell * aspect, {head, foot});
            if (cut.pages == 1) {
                return cut;
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
            std::clamp(spare / static_cast<double>(plan.rows.size() + 1), 0.0, 5 * m_.gap);
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
                const std::size_t count = std::min(left, evenly(left, columns) - used);
                rows.back().runs.push_back(
                    {group, first, first + count, static_cast<double>(used) * (cell + m_.gap)});
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

    /// A hole at one side looks like something missing.
    void centre_short(std::vector<ChartPlan::Row>& rows, std::size_t columns, double cell) const {
        if (rows.size() < 2 || is_named()) {
            return;
        }
        for (ChartPlan::Row& row : rows) {
            for (ChartPlan::Run& run : row.runs) {
                const std::size_t number = run.last - run.first;
                run.x += static_cast<double>(columns - number) * (cell + m_.gap) / 2;
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
}

ChartWords chart_words(const ChartEntry& entry,
                       double cell,
                       const ChartMeasures& measures,
                       Ruler& ruler) {
    // Words in the middle may stand a little into the gap at either side.
    const double room = entry.button   ? cell - measures.button - measures.beside
                        : entry.colour ? cell
                                       : cell + 0.6 * measures.gap;
    ChartWords words{ruler.lines(entry.name, roman(measures.words * 1.06), room), 0};
    words.names = words.lines.size();
    for (const std::string& line : entry.lines) {
        // In the middle under its picture no last line may be a single word.
        for (std::string& part : entry.button
                                     ? ruler.lines(line, italic(measures.words), room)
                                     : ruler.even_lines(line, italic(measures.words), room)) {
            words.lines.push_back(std::move(part));
        }
    }
    return words;
}

ChartPlan plan_chart(
    const Chart& chart, const Paper& paper, double head, double foot, Ruler& ruler) {
    const ChartMeasures measures(paper);
    return ChartPlanner(chart, paper, measures, ruler).best(head, foot);
}

}  // namespace platewright::sheet
