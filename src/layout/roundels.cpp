// SPDX-License-Identifier: MIT
// Where a plate shows things enlarged in rings.
#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

#include "layout/furniture.h"

namespace platewright::sheet {
namespace {

/// Clear space round a roundel, and where down the figures it should stand, as a share of their
/// height.
constexpr double kClear = 3;
constexpr double kLevelOfHeads = 0.2;
constexpr double kLevelOfKnees = 0.76;

/// What a roundel needs: its radius, and the size of the words under it.
struct RoundelSize {
    double radius = 0;
    double words_width = 0;
    double words_height = 0;
};

/// Whether a roundel, with the words under it, comes too near another.
bool meets(const Roundel& roundel,
           const std::vector<std::optional<Roundel>>& placed,
           double clear) {
    return std::ranges::any_of(placed, [&](const std::optional<Roundel>& other) {
        return other &&
               length(roundel.centre - other->centre) < roundel.radius + other->radius + clear;
    });
}

/// Seeks places for roundels one after the other.
class Seeker {
  public:
    Seeker(const Plan& plan, const std::vector<Stand>& stands) : plan_(plan), stands_(stands) {}

    /// All that find a place, of one radius.
    std::vector<std::optional<Roundel>> all(double radius, const std::vector<double>& widths) {
        placed_.clear();
        const double height = 1.9 * plan_.style.small();
        const std::size_t others = widths.empty() ? 0 : widths.size() - 1;
        for (std::size_t i = 0; i < widths.size(); ++i) {
            const RoundelSize size{radius, widths[i], height};
            // Those beside the figures stand in pairs.
            const bool in_a_pair = stands_.size() > 1 && i > 0 && i - 1 < others / 2 * 2 && i < 3;
            std::optional<Roundel> found;
            if (in_a_pair) {
                found = beside(size, i == 1 ? 0 : stands_.size());
            }
            placed_.push_back(found ? found : between(size));
        }
        return placed_;
    }

  private:
    const Plan& plan_;
    const std::vector<Stand>& stands_;
    std::vector<std::optional<Roundel>> placed_;

    /// Words that name things stand lower down there.
    std::optional<Roundel> beside(const RoundelSize& size, std::size_t gap) {
        const double clear = kClear * plan_.style.unit;
        const double top = plan_.figures.top + size.radius + clear;
        const bool level = !plan_.named && !placed_.empty() && placed_.front();
        return in_gap(size, gap, level ? placed_.front()->centre.y : top, kLevelOfHeads * 1.7);
    }

    std::optional<Roundel> between(const RoundelSize& size) {
        const double heads = plan_.figures.top + kLevelOfHeads * plan_.figures.height();
        for (const double lowest : {kLevelOfKnees, 1.0}) {
            for (std::size_t gap = 1; gap < stands_.size(); ++gap) {
                if (auto found = in_gap(size, gap, heads, lowest)) {
                    return found;
                }
            }
            for (const std::size_t gap : {stands_.size(), std::size_t{0}}) {
                if (auto found = in_gap(size, gap, heads, lowest)) {
                    return found;
                }
            }
        }
        return std::nullopt;
    }

    /// Under another, so that they stand in one line; on the axis of the plate; otherwise in the
    /// middle of the gap.
    [[nodiscard]] double centred(const Gap& room, double needed) const {
        const auto fits = [&](double x) {
            return x - needed / 2 >= room.left && x + needed / 2 <= room.right;
        };
        for (const std::optional<Roundel>& other : placed_) {
            if (other && fits(other->centre.x)) {
                return other->centre.x;
            }
        }
        const double axis = plan_.figures.centre().x;
        return fits(axis) ? axis : (room.left + room.right) / 2;
    }

    /// The place in one gap nearest to that level; `lowest`: how far down it may reach, as a share
    /// of the figures.
    [[nodiscard]] std::optional<Roundel> in_gap(const RoundelSize& size,
                                                std::size_t gap,
                                                double wanted,
                                                double lowest) const {
        const double clear = kClear * plan_.style.unit;
        const double needed = std::max(2 * size.radius, size.words_width) + 2 * clear;
        std::optional<Roundel> best;
        constexpr int tries = 120;
        for (int i = 0; i <= tries; ++i) {
            const double y = plan_.figures.top + plan_.figures.height() * i / tries;
            const double foot = y + size.radius + size.words_height;
            if (y - size.radius < plan_.neat.top + clear ||
                foot > plan_.figures.top + plan_.figures.height() * lowest) {
                continue;
            }
            const auto room = gap_at(plan_, stands_, gap, y - size.radius - clear, foot);
            if (!room || room->right - room->left < needed) {
                continue;
            }
            const Roundel found{{centred(*room, needed), y}, size.radius};
            if (!meets(found, placed_, size.words_height + clear) &&
                (!best || std::abs(y - wanted) < std::abs(best->centre.y - wanted))) {
                best = found;
            }
        }
        return best;
    }
};

}  // namespace

std::vector<std::optional<Roundel>> find_roundels(const Plan& plan,
                                                  const std::vector<Stand>& stands,
                                                  double radius,
                                                  const std::vector<double>& words_widths) {
    std::vector<std::optional<Roundel>> best(words_widths.size());
    if (stands.empty()) {
        return best;
    }
    // Beside the heads they may be a little smaller: one at the legs weighs a plate down on one
    // side.
    constexpr double large_enough = 0.79;
    const double middle = plan.figures.centre().y;
    std::size_t most = 0;
    std::size_t highest = 0;
    for (const double smaller : {1.0, 0.93, 0.86, large_enough, 0.7, 0.55}) {
        auto found = Seeker(plan, stands).all(radius * smaller, words_widths);
        const auto count = static_cast<std::size_t>(
            std::ranges::count_if(found, [](const auto& each) { return each.has_value(); }));
        const auto high = static_cast<std::size_t>(std::ranges::count_if(
            found, [middle](const auto& each) { return each && each->centre.y < middle; }));
        if (count > most || (count == most && high > highest && smaller >= large_enough)) {
            most = count;
            highest = high;
            best = std::move(found);
        }
    }
    return best;
}

}  // namespace platewright::sheet
