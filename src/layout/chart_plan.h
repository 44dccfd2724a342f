// SPDX-License-Identifier: MIT
// Where everything of a chart goes: cells in rows, groups side by side as far as there is room.
#pragma once

#include <string>
#include <vector>

#include "layout/chart.h"
#include "layout/ruler.h"

namespace platewright::sheet {

/// Sizes that follow from the paper, mm.
struct ChartMeasures {
    double unit = 1;
    double margin = 0;
    double gap = 0;
    double words = 0;
    double leading = 0;
    double heading = 0;
    /// A button among the words under its coat, and its distance from them.
    double button = 0;
    double beside = 0;
    /// Of the ground below the soles, before words begin.
    double ground = 0;

    explicit ChartMeasures(const Paper& paper);
};

/// Where everything goes; pictures are not needed for that.
struct ChartPlan {
    /// A group, or what of it stands in one row.
    struct Run {
        std::size_t group = 0;
        std::size_t first = 0;
        std::size_t last = 0;
        double x = 0;
        /// From one picture to the next.
        double pitch = 0;
        /// Where men stand who have lenses beside them; otherwise a pitch apart.
        std::vector<double> middles;
        bool titled = false;
    };

    struct Row {
        std::size_t page = 0;
        double y = 0;
        /// Height of the names of groups above its pictures.
        double heading = 0;
        /// Lines of words above the lenses.
        std::size_t lines_above = 0;
        std::vector<Run> runs;
    };

    std::size_t columns = 1;
    double cell = 0;
    double picture_height = 0;
    /// The lens under a name, across; or beside a man, so far from his middle.
    double lens = 0;
    bool beside = false;
    double aside = 0;
    /// A man, across.
    double man = 0;
    std::vector<Row> rows;
    std::size_t pages = 1;
};

/// What is written of an entry: its name, on the first `names` lines, and what it is. The first
/// `above` lines stand above its lens.
struct ChartWords {
    std::vector<std::string> lines;
    std::size_t names = 0;
    std::size_t above = 0;
};

/// The words of an entry under a picture with `cell` mm of room, beside its button if it has one.
ChartWords chart_words(const ChartEntry& entry,
                       double cell,
                       const ChartMeasures& measures,
                       Ruler& ruler);

/// The room for words under the pictures of a run.
double words_room(const ChartPlan& plan, const ChartPlan::Run& run, const ChartMeasures& measures);

/// The fewest pages; of those the largest pictures, unless smaller ones fill the last row better.
/// `head`, `foot`: what title and notes take of the first and of every page, mm.
ChartPlan plan_chart(
    const Chart& chart, const Paper& paper, double head, double foot, Ruler& ruler);

}  // namespace platewright::sheet
