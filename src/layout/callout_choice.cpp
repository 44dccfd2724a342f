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
constexpr double kApart = 0.36;
constexpr double kWordsToLine = 0.12;
constexpr double kLineToLine = 0.3;
constexpr double kDotToLine = 0.42;
/// What a callout costs that is left out: more than the worst place.
constexpr double kLeftOut = 400;

/// How many others may be led elsewhere to place one, and what that must gain.
constexpr std::size_t kMostMoved = 2;
constexpr double kLeastGain = 1e-6;

/// Of the square of what a region has too many or too few, in ems.
constexpr double kUneven = 0.55;

/// Within how many ems words between two figures are neighbours, and what it costs, in ems, if they
/// lead to different figures.
constexpr double kNeighbours = 3.6;
constexpr double kMixed = 2.4;

/// Lines nearer than this, in ems, run side by side; and what that costs.
constexpr double kSideBySide = 1.3;
constexpr double kCrowded = 8;

/// A straight piece of a line.
struct Leg {
    Point from;
    Point to;
};

/// How far two pieces run over the same stretch, from left to right; negative where they do not.
double shared_width(const Leg& a, const Leg& b) {
    const auto [a_left, a_right] = std::minmax({a.from.x, a.to.x});
    const auto [b_left, b_right] = std::minmax({b.from.x, b.to.x});
    return std::min(a_right, b_right) - std::max(a_left, b_left);
}

double to_stroke(Point from, const Leg& stroke) {
    return distance_from_line(from, stroke.from, stroke.to);
}

/// Also of boxes without height, which level lines have.
bool overlap(const Rect& a, const Rect& b) {
    return a.left <= b.right && b.left <= a.right && a.top <= b.bottom && b.top <= a.bottom;
}

/// What is asked again and again of a callout in its place, worked out once: its line in three
/// pieces, each with the box about all that could touch it, and what its words keep free.
struct Form {
    Form(const PlacedCallout& placed, double size)
        : box(placed.box),
          apart(box.grown(kApart * size)),
          free_of_lines(box.grown(kWordsToLine * size)),
          legs{{{placed.start, placed.bend},
                {placed.bend, placed.turn},
                {placed.turn, placed.site}}},
          site(placed.site) {
        for (std::size_t i = 0; i < legs.size(); ++i) {
            near[i].include(legs[i].from);
            near[i].include(legs[i].to);
            line.include(legs[i].from);
            line.include(legs[i].to);
            near[i] = near[i].grown(kDotToLine * size);
        }
        near_line = line.grown(kDotToLine * size);
        area = box;
        area.include(near_line);
        area = area.grown(kDotToLine * size);
    }

    Rect box;
    Rect apart;
    Rect free_of_lines;
    std::array<Leg, 3> legs;
    std::array<Rect, 3> near = {};
    Rect line = {};
    Rect near_line = {};
    /// All that words and line take, with what they keep free.
    Rect area = {};
    Point site;
};

bool strokes_meet(const Leg& a, const Leg& b, double clear) {
    const bool none = a.from == a.to || b.from == b.to;
    return (!none && lines_cross(a.from, a.to, b.from, b.to)) || to_stroke(a.from, b) < clear ||
           to_stroke(a.to, b) < clear || to_stroke(b.from, a) < clear || to_stroke(b.to, a) < clear;
}

bool line_meets_words(const Form& line, const Form& words) {
    return overlap(line.line, words.free_of_lines) &&
           std::ranges::any_of(line.legs, [&words](const Leg& stroke) {
               return stroke_meets(stroke.from, stroke.to, words.free_of_lines);
           });
}

/// Whether the dot of one is too near the line of the other.
bool dot_meets_line(const Form& one, const Form& other, double size) {
    const Rect dot{one.site.x, one.site.y, one.site.x, one.site.y};
    for (std::size_t i = 0; i < other.legs.size(); ++i) {
        if (overlap(dot, other.near[i]) && to_stroke(one.site, other.legs[i]) < kDotToLine * size) {
            return true;
        }
    }
    return false;
}

bool lines_meet(const Form& one, const Form& other, double size) {
    if (!overlap(one.line, other.near_line)) {
        return false;
    }
    for (std::size_t i = 0; i < one.legs.size(); ++i) {
        for (std::size_t k = 0; k < other.legs.size(); ++k) {
            if (overlap(one.near[i], other.near[k]) &&
                strokes_meet(one.legs[i], other.legs[k], kLineToLine * size)) {
                return true;
            }
        }
    }
    return dot_meets_line(one, other, size) || dot_meets_line(other, one, size);
}

bool forms_meet(const Form& one, const Form& other, double size) {
    return one.apart.meets(other.box) || line_meets_words(one, other) ||
           line_meets_words(other, one) || lines_meet(one, other, size);
}

using Options = std::vector<std::vector<CalloutOption>>;
using Forms = std::vector<std::vector<Form>>;

Forms forms_of(const Options& options, double size) {
    Forms forms(options.size());
    for (std::size_t i = 0; i < options.size(); ++i) {
        forms[i].reserve(options[i].size());
        for (const CalloutOption& option : options[i]) {
            forms[i].emplace_back(option.placed, size);
        }
    }
    return forms;
}

/// The state of the search: which option of each list is taken.
class Choice {
  public:
    /// `prices`: what is added to the cost of each region.
    Choice(const Options& options,
           const Forms& forms,
           const std::vector<double>& prices,
           double size)
        : options_(options), forms_(forms), prices_(prices), size_(size), taken_(options.size()) {}

    using Taken = std::vector<std::optional<std::size_t>>;

    [[nodiscard]] const Taken& all_taken() const { return taken_; }

    void take(Taken all) { taken_ = std::move(all); }

    /// From what is taken already; what is not, first takes the cheapest place that is free.
    void improve() {
        sort_by_price();
        for (std::size_t i = 0; i < options_.size(); ++i) {
            if (!taken_[i]) {
                taken_[i] = free_option(i, kLeftOut);
            }
        }
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
    void ease(std::vector<std::size_t> counts) {
        for (std::size_t i = 0; i < options_.size(); ++i) {
            for (std::size_t k = 0; k < options_[i].size() && taken_[i]; ++k) {
                const CalloutOption& now = options_[i][*taken_[i]];
                const CalloutOption& then = options_[i][k];
                const double gain = now.cost - then.cost;
                const double more = static_cast<double>(counts[then.region]) -
                                    static_cast<double>(counts[now.region]) + 1;
                const double loss = now.region == then.region ? 0 : 2 * kUneven * size_ * more;
                const double least = std::max(loss, 0.0) + kLeastGain;
                if (gain > least && gain + strain(i, *taken_[i]) - strain(i, k) > least &&
                    in_the_way(i, k).empty()) {
                    --counts[now.region];
                    ++counts[then.region];
                    taken_[i] = k;
                }
            }
        }
    }

    /// What speaks against an option beside those that are taken.
    [[nodiscard]] double strain(std::size_t number, std::size_t option) const {
        return mixed(number, option) + crowded(number, option);
    }

    [[nodiscard]] double strain(std::size_t number) const {
        return taken_[number] ? strain(number, *taken_[number]) : 0;
    }

  private:
    const Options& options_;
    const Forms& forms_;
    const std::vector<double>& prices_;
    double size_;
    Taken taken_;
    /// The options of each callout with their prices, the cheapest first.
    std::vector<std::vector<std::pair<double, std::size_t>>> orders_;

    /// What `cost` says of every other callout in the place it has taken, added up.
    template <typename Cost>
    [[nodiscard]] double of_others(std::size_t number, Cost cost) const {
        double sum = 0;
        for (std::size_t k = 0; k < taken_.size(); ++k) {
            if (k != number && taken_[k]) {
                sum += cost(k, *taken_[k]);
            }
        }
        return sum;
    }

    /// What it costs that an option would stand among words that lead the other way, so that those
    /// of two figures make one ragged column instead of two runs.
    [[nodiscard]] double mixed(std::size_t number, std::size_t option) const {
        const CalloutOption& one = options_[number][option];
        if (one.region == 0 || one.region + 1 >= prices_.size()) {
            return 0;
        }
        const double reach = kNeighbours * size_;
        return of_others(number, [&](std::size_t k, std::size_t taken) {
            const CalloutOption& other = options_[k][taken];
            const double apart = std::abs(one.placed.start.y - other.placed.start.y);
            const bool mixes = other.region == one.region &&
                               other.placed.on_left != one.placed.on_left && apart < reach;
            return mixes ? kMixed * size_ * (1 - apart / reach) : 0.0;
        });
    }

    /// What it costs that lines run side by side over a figure, where the eye takes them for one.
    [[nodiscard]] double crowded(std::size_t number, std::size_t option) const {
        const Form& one = forms_[number][option];
        const double reach = kSideBySide * size_;
        return of_others(number, [&](std::size_t k, std::size_t taken) {
            const Form& other = forms_[k][taken];
            const double apart = std::abs(one.site.y - other.site.y);
            const bool crowds =
                apart < reach && shared_width(one.legs.back(), other.legs.back()) > reach;
            return crowds ? kCrowded * size_ * (1 - apart / reach) : 0.0;
        });
    }

    [[nodiscard]] double price_of(const CalloutOption& option) const {
        return option.cost + (option.region < prices_.size() ? prices_[option.region] : 0);
    }

    void sort_by_price() {
        orders_.assign(options_.size(), {});
        for (std::size_t i = 0; i < options_.size(); ++i) {
            orders_[i].reserve(options_[i].size());
            for (std::size_t k = 0; k < options_[i].size(); ++k) {
                orders_[i].emplace_back(price_of(options_[i][k]), k);
            }
            std::ranges::sort(orders_[i]);
        }
    }

    [[nodiscard]] double cost(std::size_t number) const {
        return taken_[number] ? price_of(options_[number][*taken_[number]]) + strain(number)
                              : kLeftOut;
    }

    /// The callouts that an option of another would meet, at most one more than may be moved.
    [[nodiscard]] std::vector<std::size_t> in_the_way(std::size_t number,
                                                      std::size_t option) const {
        const Form& form = forms_[number][option];
        std::vector<std::size_t> found;
        for (std::size_t k = 0; k < taken_.size() && found.size() <= kMostMoved; ++k) {
            if (k == number || !taken_[k]) {
                continue;
            }
            const Form& other = forms_[k][*taken_[k]];
            if (overlap(form.area, other.area) && forms_meet(form, other, size_)) {
                found.push_back(k);
            }
        }
        return found;
    }

    /// The cheapest free option that costs less than `most`.
    [[nodiscard]] std::optional<std::size_t> free_option(std::size_t number, double most) const {
        for (const auto& [price, i] : orders_[number]) {
            if (price >= most) {
                break;
            }
            if (price + strain(number, i) < most && in_the_way(number, i).empty()) {
                return i;
            }
        }
        return std::nullopt;
    }

    /// Takes an option and leads the callouts in its way elsewhere, if that costs less than `gain`.
    bool make_way(std::size_t number,
                  std::size_t option,
                  const std::vector<std::size_t>& others,
                  double gain) {
        std::vector<std::pair<std::size_t, std::optional<std::size_t>>> before{
            {number, taken_[number]}};
        std::vector<double> costs;
        for (const std::size_t other : others) {
            before.emplace_back(other, taken_[other]);
            costs.push_back(cost(other));
        }
        taken_[number] = option;
        for (const std::size_t other : others) {
            taken_[other].reset();
        }
        for (std::size_t k = 0; k < others.size(); ++k) {
            const auto moved = free_option(others[k], costs[k] + gain - kLeastGain);
            if (!moved) {
                for (const auto& [callout, taken] : before) {
                    taken_[callout] = taken;
                }
                return false;
            }
            taken_[others[k]] = moved;
            gain -= cost(others[k]) - costs[k];
        }
        return true;
    }

    bool improve(std::size_t number) {
        const double now = cost(number);
        for (const auto& [price, i] : orders_[number]) {
            if (now - price <= kLeastGain) {
                return false;
            }
            const double gain = now - price - strain(number, i);
            if (gain <= kLeastGain) {
                continue;
            }
            const auto others = in_the_way(number, i);
            if (others.size() <= kMostMoved && make_way(number, i, others, gain)) {
                return true;
            }
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

Shares shares_of(const Choice& choice, std::size_t callouts, std::size_t regions, double size) {
    Shares shares{std::vector<std::size_t>(regions, 0)};
    std::size_t placed = 0;
    for (std::size_t i = 0; i < callouts; ++i) {
        const CalloutOption* taken = choice.taken(i);
        if (taken == nullptr) {
            shares.faults += kLeftOut;
            continue;
        }
        ++placed;
        ++shares.counts[taken->region];
        shares.faults += taken->cost + choice.strain(i) / 2;
    }
    double dues = 0;
    for (std::size_t i = 0; i < regions; ++i) {
        dues += due_of(i, regions);
    }
    const double even = static_cast<double>(placed) / dues;
    for (std::size_t i = 0; i < regions; ++i) {
        const double off = static_cast<double>(shares.counts[i]) - even * due_of(i, regions);
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

}  // namespace

bool callouts_meet(const PlacedCallout& one, const PlacedCallout& other, double size) {
    return forms_meet(Form(one, size), Form(other, size), size);
}

std::vector<std::optional<PlacedCallout>> choose_callouts(
    const std::vector<std::vector<CalloutOption>>& options, double size) {
    const Forms forms = forms_of(options, size);
    const std::vector<double> prices;
    Choice choice(options, forms, prices, size);
    choice.improve();
    std::vector<std::optional<PlacedCallout>> chosen;
    for (std::size_t i = 0; i < options.size(); ++i) {
        chosen.push_back(choice.of(i));
    }
    return chosen;
}

std::vector<std::optional<PlacedCallout>> share_out_callouts(
    const std::vector<std::vector<CalloutOption>>& options, std::size_t regions, double size) {
    constexpr int tries = 12;
    // Finer and finer, so that a region is not emptied by the step that was to ease it.
    constexpr double finer = 0.8;
    double step = 2 * size;
    std::vector<double> prices(regions, 0);
    std::vector<std::optional<PlacedCallout>> best;
    double least = 0;
    const auto keep_better = [&](const Choice& choice) {
        Shares shares = shares_of(choice, options.size(), regions, size);
        if (best.empty() || shares.faults < least) {
            least = shares.faults;
            best.clear();
            for (std::size_t k = 0; k < options.size(); ++k) {
                best.push_back(choice.of(k));
            }
        }
        return shares;
    };
    const Forms forms = forms_of(options, size);
    Choice choice(options, forms, prices, size);
    for (int i = 0; i < tries; ++i) {
        choice.improve();
        const Shares shares = keep_better(choice);
        Choice::Taken dear = choice.all_taken();
        choice.ease(shares.counts);
        keep_better(choice);
        choice.take(std::move(dear));
        prices[fullest_of(shares.counts)] += step;
        step *= finer;
    }
    return best;
}

}  // namespace platewright::sheet
