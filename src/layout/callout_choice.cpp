// SPDX-License-Identifier: MIT
// Local search over the places of callouts.
#include "layout/callout_choice.h"

#include <algorithm>
#include <array>
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

/// A straight piece of a line.
struct Leg {
    Point from;
    Point to;
};

std::array<Leg, 3> strokes_of(const PlacedCallout& placed) {
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
    return std::ranges::any_of(strokes_of(line), [&words](const Leg& stroke) {
        return stroke_meets(stroke.from, stroke.to, words);
    });
}

bool lines_meet(const PlacedCallout& one, const PlacedCallout& other, double size) {
    for (const Leg& a : strokes_of(one)) {
        for (const Leg& b : strokes_of(other)) {
            if (strokes_meet(a, b, kLineToLine * size)) {
                return true;
            }
        }
        if (to_stroke(other.site, a) < kDotToLine * size) {
            return true;
        }
    }
    return std::ranges::any_of(strokes_of(other), [&](const Leg& b) {
        return to_stroke(one.site, b) < kDotToLine * size;
    });
}

/// The state of the search: which option of each list is taken.
class Choice {
  public:
    Choice(const std::vector<std::vector<CalloutOption>>& options, double size)
        : options_(options), size_(size), taken_(options.size()) {}

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

    [[nodiscard]] std::optional<PlacedCallout> of(std::size_t number) const {
        return taken_[number] ? std::optional(options_[number][*taken_[number]].placed)
                              : std::nullopt;
    }

  private:
    const std::vector<std::vector<CalloutOption>>& options_;
    double size_;
    std::vector<std::optional<std::size_t>> taken_;

    [[nodiscard]] double cost(std::size_t number) const {
        return taken_[number] ? options_[number][*taken_[number]].cost : kLeftOut;
    }

    /// The callouts that an option of another would meet, at most two of them.
    [[nodiscard]] std::vector<std::size_t> in_the_way(std::size_t number,
                                                      const PlacedCallout& placed) const {
        std::vector<std::size_t> found;
        for (std::size_t k = 0; k < taken_.size() && found.size() < 2; ++k) {
            if (k != number && taken_[k] &&
                callouts_meet(placed, options_[k][*taken_[k]].placed, size_)) {
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
            if (in_the_way(number, options_[number][i].placed).empty()) {
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
            const auto others = in_the_way(number, options_[number][i].placed);
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

}  // namespace

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

}  // namespace platewright::sheet
