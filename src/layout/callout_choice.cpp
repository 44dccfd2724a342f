// SPDX-License-Identifier: MIT
// Local search over the places of callouts.
#include "layout/callout_choice.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <utility>

namespace platewright::sheet {
namespace {

/// In ems: from words to words, from words to a line, from line to line, from a dot to a line.
constexpr double kApart = 0.22;
constexpr double kWordsToLine = 0.12;
constexpr double kLineToLine = 0.3;
constexpr double kDotToLine = 0.42;
/// What a callout costs that is left out: more than the worst place.
constexpr double kLeftOut = 400;

/// Of the square of what a region has too many or too few, in ems.
constexpr double kUneven = 0.55;

/// A straight piece of a line.
struct Leg {
    Point from;
    Point to;
};

std::array<Leg, 3> legs_of(const PlacedCallout& placed) {
    return {{{placed.start, placed.bend}, {placed.bend, placed.turn}, {placed.turn, placed.site}}};
}

double to_stroke(Point from, const Leg& stroke) {
    return distance_from_line(from, stroke.from, stroke.to);
}

bool strokes_meet(const Leg& a, const Leg& b, double clear) {
    const bool none = a.from == a.to || b.from == b.to;
    return (!none && lines_cross(a.from, a.to, b.from, b.to)) || to_stroke(a.from, b) < clear ||
           to_stroke(a.to, b) < clear || to_stroke(b.from, a) < clear || to_stroke(b.to, a) < clear;
}

bool line_meets_words(const PlacedCallout& line, const Rect& words) {
    return std::ranges::any_of(legs_of(line), [&words](const Leg& stroke) {
        return stroke_meets(stroke.from, stroke.to, words);
    });
}

bool lines_meet(const PlacedCallout& one, const PlacedCallout& other, double size) {
    for (const Leg& a : legs_of(one)) {
        for (const Leg& b : legs_of(other)) {
            if (strokes_meet(a, b, kLineToLine * size)) {
                return true;
            }
        }
        if (to_stroke(other.site, a) < kDotToLine * size) {
            return true;
        }
    }
    return std::ranges::any_of(
        legs_of(other), [&](const Leg& b) { return to_stroke(one.site, b) < kDotToLine * size; });
}

/// The state of the search: which option of each list is taken.
class Choice {
  public:
    Choice(std::vector<std::vector<CalloutOption>> options, double size)
        : options_(std::move(options)), size_(size), taken_(options_.size()) {
        for (std::vector<CalloutOption>& of_one : options_) {
            for (CalloutOption& option : of_one) {
                option.area = option.placed.box;
                for (const Leg& leg : legs_of(option.placed)) {
                    option.area.include(leg.from);
                    option.area.include(leg.to);
                }
                option.area = option.area.grown(kDotToLine * size);
            }
        }
    }

    void improve() {
        constexpr int most_rounds = 8;
        bool better = true;
        for (int round = 0; round < most_rounds && better; ++round) {
            better = false;
            for (std::size_t i = 0; i < options_.size(); ++i) {
                better = improve(i) || better;
            }
        }
    }

    /// The option taken for that callout.
    [[nodiscard]] const CalloutOption* taken(std::size_t number) const {
        return taken_[number] ? &options_[number][*taken_[number]] : nullptr;
    }

    [[nodiscard]] std::optional<PlacedCallout> of(std::size_t number) const {
        return taken_[number] ? std::optional(options_[number][*taken_[number]].placed)
                              : std::nullopt;
    }

    /// A callout goes back to a place that was dear only for its region's price, where that gains
    /// more than evenness loses.
    void ease(const std::vector<double>& prices, std::vector<std::size_t> counts) {
        for (std::size_t i = 0; i < options_.size(); ++i) {
            for (std::size_t k = 0; k < options_[i].size() && taken_[i]; ++k) {
                const CalloutOption& now = options_[i][*taken_[i]];
                const CalloutOption& then = options_[i][k];
                const double gain = now.cost - prices[now.region] - then.cost + prices[then.region];
                const double more = static_cast<double>(counts[then.region]) -
                                    static_cast<double>(counts[now.region]) + 1;
                const double loss = now.region == then.region ? 0 : 2 * kUneven * size_ * more;
                if (gain > std::max(loss, 0.0) + 1e-6 && in_the_way(i, then).empty()) {
                    --counts[now.region];
                    ++counts[then.region];
                    taken_[i] = k;
                }
            }
        }
    }

  private:
    std::vector<std::vector<CalloutOption>> options_;
    double size_;
    std::vector<std::optional<std::size_t>> taken_;

    [[nodiscard]] double cost(std::size_t number) const {
        return taken_[number] ? options_[number][*taken_[number]].cost : kLeftOut;
    }

    /// The callouts that an option of another would meet, at most two of them.
    [[nodiscard]] std::vector<std::size_t> in_the_way(std::size_t number,
                                                      const CalloutOption& option) const {
        std::vector<std::size_t> found;
        for (std::size_t k = 0; k < taken_.size() && found.size() < 2; ++k) {
            if (k == number || !taken_[k]) {
                continue;
            }
            const CalloutOption& other = options_[k][*taken_[k]];
            if (option.area.meets(other.area) &&
                callouts_meet(option.placed, other.placed, size_)) {
                found.push_back(k);
            }
        }
        return found;
    }

    /// The cheapest free option that costs less than `most`.
    [[nodiscard]] std::optional<std::size_t> free_option(std::size_t number, double most) const {
        for (std::size_t i = 0; i < options_[number].size(); ++i) {
            if (options_[number][i].cost >= most) {
                break;
            }
            if (in_the_way(number, options_[number][i]).empty()) {
                return i;
            }
        }
        return std::nullopt;
    }

    bool improve(std::size_t number) {
        constexpr double least_gain = 1e-6;
        for (std::size_t i = 0; i < options_[number].size(); ++i) {
            const double gain = cost(number) - options_[number][i].cost;
            if (gain <= least_gain) {
                return false;
            }
            const auto others = in_the_way(number, options_[number][i]);
            if (others.size() > 1) {
                continue;
            }
            const auto before = taken_[number];
            taken_[number] = i;
            if (others.empty()) {
                return true;
            }
            const std::size_t other = others.front();
            const auto moved = free_option(other, cost(other) + gain - least_gain);
            if (moved) {
                taken_[other] = moved;
                return true;
            }
            taken_[number] = before;
        }
        return false;
    }
};

/// How many callouts stand in each region, and what speaks against the whole.
struct Shares {
    std::vector<std::size_t> counts;
    double faults = 0;
};

/// How much of all that is said a region should hold: one between two figures serves both.
double due_of(std::size_t region, std::size_t regions) {
    constexpr double between = 2;
    return region > 0 && region + 1 < regions ? between : 1;
}

/// `prices`: what was added to the cost of each region.
Shares shares_of(const Choice& choice,
                 std::size_t callouts,
                 const std::vector<double>& prices,
                 double size) {
    Shares shares{std::vector<std::size_t>(prices.size(), 0)};
    std::size_t placed = 0;
    for (std::size_t i = 0; i < callouts; ++i) {
        const CalloutOption* taken = choice.taken(i);
        if (taken == nullptr) {
            shares.faults += kLeftOut;
            continue;
        }
        ++placed;
        ++shares.counts[taken->region];
        shares.faults += taken->cost - prices[taken->region];
    }
    double dues = 0;
    for (std::size_t i = 0; i < prices.size(); ++i) {
        dues += due_of(i, prices.size());
    }
    const double even = static_cast<double>(placed) / dues;
    for (std::size_t i = 0; i < prices.size(); ++i) {
        const double off = static_cast<double>(shares.counts[i]) - even * due_of(i, prices.size());
        shares.faults += kUneven * size * off * off;
    }
    return shares;
}

/// Which region holds most of what it should hold.
std::size_t fullest_of(const std::vector<std::size_t>& counts) {
    std::size_t fullest = 0;
    double most = -1;
    for (std::size_t i = 0; i < counts.size(); ++i) {
        const double full = static_cast<double>(counts[i]) / due_of(i, counts.size());
        if (full > most) {
            most = full;
            fullest = i;
        }
    }
    return fullest;
}

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
        constexpr int most_steps = 8;
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
    // The fuller column is made dearer until both hold nearly as many; a handful of words that
    // cross something may stand less evenly, where their lines cross least.
    constexpr std::size_t handful = 9;
    const bool some_cross = std::ranges::any_of(callouts, [](const Callout& each) {
        return !each.crossed_from_left.empty() || !each.crossed_from_right.empty();
    });
    const int few = some_cross && callouts.size() <= handful
                        ? 3
                        : std::max(1, static_cast<int>(callouts.size()) / 5);
    constexpr double most_ems = 34;
    constexpr int most_tries = 7;
    auto best = plan_with(options, 0, type.size);
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

bool callouts_meet(const PlacedCallout& one, const PlacedCallout& other, double size) {
    return one.box.grown(kApart * size).meets(other.box) ||
           line_meets_words(one, other.box.grown(kWordsToLine * size)) ||
           line_meets_words(other, one.box.grown(kWordsToLine * size)) ||
           lines_meet(one, other, size);
}

std::vector<std::optional<PlacedCallout>> choose_callouts(
    const std::vector<std::vector<CalloutOption>>& options, double size) {
    Choice choice(options, size);
    choice.improve();
    std::vector<std::optional<PlacedCallout>> chosen;
    for (std::size_t i = 0; i < options.size(); ++i) {
        chosen.push_back(choice.of(i));
    }
    return chosen;
}

std::vector<std::optional<PlacedCallout>> share_out_callouts(
    std::vector<std::vector<CalloutOption>> options, std::size_t regions, double size) {
    constexpr int tries = 14;
    // Finer and finer, so that a region is not emptied by the step that was to ease it.
    constexpr double finer = 0.84;
    double step = 2 * size;
    std::vector<double> prices(regions, 0);
    std::vector<std::optional<PlacedCallout>> best;
    double least = 0;
    const auto keep_better = [&](const Choice& choice, const std::vector<double>& at_prices) {
        Shares shares = shares_of(choice, options.size(), at_prices, size);
        if (best.empty() || shares.faults < least) {
            least = shares.faults;
            best.clear();
            for (std::size_t k = 0; k < options.size(); ++k) {
                best.push_back(choice.of(k));
            }
        }
        return shares;
    };
    for (int i = 0; i < tries; ++i) {
        Choice choice(options, size);
        choice.improve();
        const Shares shares = keep_better(choice, prices);
        choice.ease(prices, shares.counts);
        keep_better(choice, prices);
        const std::size_t fullest = fullest_of(shares.counts);
        prices[fullest] += step;
        for (std::vector<CalloutOption>& of_one : options) {
            for (CalloutOption& option : of_one) {
                option.cost += option.region == fullest ? step : 0;
            }
            std::ranges::stable_sort(of_one, {}, &CalloutOption::cost);
        }
        step *= finer;
    }
    return best;
}

}  // namespace platewright::sheet
