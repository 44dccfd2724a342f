// SPDX-License-Identifier: MIT
// Words in two columns with level lines.
#include <algorithm>
#include <cmath>
#include <cstddef>
#include <utility>

#include "layout/callout_choice.h"

namespace platewright::sheet {
namespace {

/// Places for words in one of two columns.
class LevelPlaces {
  public:
    LevelPlaces(const CalloutColumns& columns, const Type& type, Ruler& ruler)
        : columns_(columns), type_(type), ruler_(ruler) {}

    /// The cheapest of each side.
    std::vector<CalloutOption> of(std::size_t number, const Callout& callout) {
        std::vector<CalloutOption> all;
        for (const bool on_left : {true, false}) {
            const Rect& column = on_left ? columns_.left : columns_.right;
            if (column.empty()) {
                continue;
            }
            found_.clear();
            PlacedCallout made;
            made.number = number;
            made.on_left = on_left;
            made.lines = ruler_.label_lines(callout.words, type_, column.width());
            const std::vector<Point>& sites = on_left ? callout.from_left : callout.from_right;
            const std::vector<int>& crossed =
                on_left ? callout.crossed_from_left : callout.crossed_from_right;
            for (std::size_t i = 0; i < sites.size(); ++i) {
                add_heights(made, column, sites[i], i < crossed.size() ? crossed[i] : 0);
            }
            std::ranges::stable_sort(found_, {}, &CalloutOption::cost);
            found_.resize(std::min(found_.size(), kMostOfASide));
            all.insert(all.end(), found_.begin(), found_.end());
        }
        return all;
    }

  private:
    const CalloutColumns& columns_;
    const Type& type_;
    Ruler& ruler_;
    std::vector<CalloutOption> found_;
    static constexpr std::size_t kMostOfASide = 100;
    /// What it costs to cross a thing that is not spoken of, in ems.
    static constexpr double kCrossed = 5;

    void add_heights(PlacedCallout made, const Rect& column, Point site, int crossed) {
        const double in_the_way = kCrossed * type_.size * crossed;
        constexpr int most_steps = 10;
        constexpr double step = 0.5;
        constexpr double leading = 1.16;
        constexpr double air = 0.35;
        constexpr double tick = 0.9;
        const double half = leading * type_.size * static_cast<double>(made.lines.size()) / 2;
        const double way = made.on_left ? 1 : -1;
        const double edge = made.on_left ? column.right : column.left;
        made.site = site;
        for (int i = -most_steps; i <= most_steps; ++i) {
            const double y = site.y + i * step * type_.size;
            made.box = {column.left, y - half, column.right, y + half};
            made.start = {edge + way * air * type_.size, y};
            made.bend = {edge + way * (air + tick) * type_.size, y};
            made.turn = {made.bend.x + way * std::abs(y - site.y), site.y};
            if (made.box.top >= column.top && made.box.bottom <= column.bottom &&
                (site.x - made.turn.x) * way >= 0) {
                found_.push_back(
                    {made, in_the_way + std::abs(site.x - edge) + 0.8 * std::abs(y - site.y)});
            }
        }
    }
};

/// How many more stand left than right.
int surplus(const CalloutPlan& plan) {
    const auto left = std::ranges::count(plan.placed, true, &PlacedCallout::on_left);
    return static_cast<int>(2 * left) - static_cast<int>(plan.placed.size());
}

/// Everything in its place if the left column costs so much more; nothing if something has none.
std::optional<CalloutPlan> plan_with(std::vector<std::vector<CalloutOption>> options,
                                     double more_on_left,
                                     double size) {
    for (std::vector<CalloutOption>& of_one : options) {
        for (CalloutOption& option : of_one) {
            option.cost += option.placed.on_left ? more_on_left : 0;
        }
        std::ranges::stable_sort(of_one, {}, &CalloutOption::cost);
    }
    CalloutPlan plan;
    for (std::optional<PlacedCallout>& placed : choose_callouts(options, size)) {
        if (!placed) {
            return std::nullopt;
        }
        plan.placed.push_back(*std::move(placed));
    }
    std::ranges::stable_sort(plan.placed, [](const PlacedCallout& a, const PlacedCallout& b) {
        return std::pair(!a.on_left, a.box.top) < std::pair(!b.on_left, b.box.top);
    });
    return plan;
}

}  // namespace

std::optional<CalloutPlan> place_level(const std::vector<Callout>& callouts,
                                       const CalloutColumns& columns,
                                       const Type& type,
                                       Ruler& ruler) {
    LevelPlaces places(columns, type, ruler);
    std::vector<std::vector<CalloutOption>> options;
    for (std::size_t i = 0; i < callouts.size(); ++i) {
        options.push_back(places.of(i, callouts[i]));
    }
    // What can be pointed at in few places chooses first.
    std::ranges::stable_sort(options, {}, [](const auto& of_one) { return of_one.size(); });
    // The fuller column is made dearer until both hold nearly as many; where it is known what lines
    // cross, words may stand less evenly, where theirs cross least.
    const bool some_cross = std::ranges::any_of(callouts, [](const Callout& each) {
        return !each.crossed_from_left.empty() || !each.crossed_from_right.empty();
    });
    const int all = static_cast<int>(callouts.size());
    const int few = some_cross ? std::max(3, all / 3) : std::max(1, all / 5);
    constexpr double most_ems = 34;
    constexpr int most_tries = 7;
    auto best = plan_with(options, 0, type.size);
    for (const double ems : {6.0, -6.0, 12.0, -12.0, 20.0, -20.0}) {
        best = best ? best : plan_with(options, ems * type.size, type.size);
    }
    double less = 0;
    double more = best && surplus(*best) < 0 ? -most_ems : most_ems;
    const bool even = best && std::abs(surplus(*best)) <= few;
    for (int i = 0; i < most_tries && best && !even; ++i) {
        const double middle = (less + more) / 2;
        auto plan = plan_with(options, middle * type.size, type.size);
        if (!plan) {
            break;
        }
        // The least price that does: a higher one drives words to where their lines cross more.
        const int now = surplus(*plan);
        const bool enough = std::abs(now) <= few;
        (now * more > 0 && !enough ? less : more) = middle;
        if (enough || std::abs(now) < std::abs(surplus(*best))) {
            best = std::move(plan);
        }
    }
    return best;
}

}  // namespace platewright::sheet
