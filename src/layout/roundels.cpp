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
/// What it costs if it vanished for the sake of air, mm on A4.
constexpr double kSmaller = 150;
/// What it costs if it stands beside the figures instead of between them, likewise.
constexpr double kUneven = 15;
/// How far, in radii, a roundel moves off its level for as much air again round it.
constexpr double kCrowded = 0.8;

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
        cost_ = 0;
        const double height = 1.9 * plan_.style.small();
        const std::size_t others = widths.empty() ? 0 : widths.size() - 1;
        for (std::size_t i = 0; i < widths.size(); ++i) {
            const RoundelSize size{radius, widths[i], height};
            // Those beside the figures stand in pairs.
            const bool in_a_pair = stands_.size() > 1 && i > 0 && i - 1 < others / 2 * 2 && i < 3;
            std::optional<Found> found;
            if (in_a_pair) {
                found = beside(size, i == 1 ? 0 : stands_.size());
            }
            found = found ? found : between(size);
            placed_.push_back(found ? std::optional(found->roundel) : std::nullopt);
            cost_ += found ? found->cost : 0;
        }
        return placed_;
    }

    /// What speaks against the places found last, mm.
    [[nodiscard]] double cost() const { return cost_; }

  private:
    /// A place, and how far off its level and how crowded it is, mm.
    struct Found {
        Roundel roundel;
        double cost = 0;
    };

    const Plan& plan_;
    const std::vector<Stand>& stands_;
    std::vector<std::optional<Roundel>> placed_;
    double cost_ = 0;

    /// Words that name things stand lower down there.
    std::optional<Found> beside(const RoundelSize& size, std::size_t gap) {
        const double clear = kClear * plan_.style.unit;
        const double top = plan_.figures.top + size.radius + clear;
        const bool level = !plan_.named && !placed_.empty() && placed_.front();
        return in_gap(size, gap, level ? placed_.front()->centre.y : top, kLevelOfHeads * 1.7);
    }

    std::optional<Found> between(const RoundelSize& size) {
        const double heads = plan_.figures.top + kLevelOfHeads * plan_.figures.height();
        for (const double lowest : {kLevelOfKnees, 1.0}) {
            std::optional<Found> best;
            for (std::size_t gap = 1; gap < stands_.size(); ++gap) {
                const auto found = in_gap(size, gap, heads, lowest);
                best = found && (!best || found->cost < best->cost - 1e-6) ? found : best;
            }
            // Beside the figures only where that saves a long way down: between them all is even.
            for (const std::size_t gap : {stands_.size(), std::size_t{0}}) {
                const auto found = in_gap(size, gap, heads, lowest);
                const double worth = kUneven * plan_.style.unit;
                best = found && (!best || found->cost < best->cost - worth) ? found : best;
            }
            if (best) {
                return best;
            }
        }
        return std::nullopt;
    }

    /// Under another, so that they stand in one line; on the axis of the plate; otherwise in the
    /// middle of the room, which is for its centre.
    [[nodiscard]] double centred(const Gap& room) const {
        const auto fits = [&](double x) { return x >= room.left && x <= room.right; };
        for (const std::optional<Roundel>& other : placed_) {
            if (other && fits(other->centre.x)) {
                return other->centre.x;
            }
        }
        const double axis = plan_.figures.centre().x;
        return fits(axis) ? axis : (room.left + room.right) / 2;
    }

    /// How far left and right the centre of a roundel may be that keeps as much air as that all
    /// round: a brim above it or a shoulder beneath leaves more than a box would have.
    [[nodiscard]] std::optional<Gap> room_for(const RoundelSize& size,
                                              std::size_t gap,
                                              double y,
                                              double air) const {
        constexpr int slices = 12;
        const double clear = kClear * plan_.style.unit;
        const double radius = size.radius + air;
        const double step = 2 * radius / slices;
        Gap room{plan_.neat.left, plan_.neat.right};
        const auto keep = [&](double top, double bottom, double half) {
            const auto free = gap_at(plan_, stands_, gap, top, bottom);
            room.left = std::max(room.left, (free ? free->left : plan_.neat.right) + half);
            room.right = std::min(room.right, (free ? free->right : plan_.neat.left) - half);
        };
        for (int i = 0; i < slices; ++i) {
            const double top = -radius + i * step;
            const double nearest = std::max({top, -top - step, 0.0});
            keep(y + top, y + top + step, std::sqrt(radius * radius - nearest * nearest));
        }
        keep(y + size.radius,
             y + size.radius + size.words_height,
             size.words_width / 2 + 0.8 * clear);
        return room.right >= room.left ? std::optional(room) : std::nullopt;
    }

    /// The place in one gap nearest to that level, but rather farther from it than crowded;
    /// `lowest`: how far down it may reach, as a share of the figures.
    [[nodiscard]] std::optional<Found> in_gap(const RoundelSize& size,
                                              std::size_t gap,
                                              double wanted,
                                              double lowest) const {
        const double clear = kClear * plan_.style.unit;
        std::optional<Found> best;
        constexpr int tries = 120;
        for (int i = 0; i <= tries; ++i) {
            const double y = plan_.figures.top + plan_.figures.height() * i / tries;
            const double foot = y + size.radius + size.words_height;
            if (y - size.radius < plan_.neat.top + clear ||
                foot > plan_.figures.top + plan_.figures.height() * lowest) {
                continue;
            }
            for (const double air : {2.0, 1.75, 1.5, 1.25, 1.0}) {
                const auto room = room_for(size, gap, y, air * clear);
                if (!room) {
                    continue;
                }
                const Roundel found{{centred(*room), y}, size.radius};
                const double cost = std::abs(y - wanted) + (2 - air) * kCrowded * size.radius;
                if (!meets(found, placed_, size.words_height + clear) &&
                    (!best || cost < best->cost)) {
                    best = Found{found, cost};
                }
                break;
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
    double least = 0;
    for (const double smaller : {1.0, 0.93, 0.86, large_enough, 0.7, 0.55}) {
        Seeker seeker(plan, stands);
        auto found = seeker.all(radius * smaller, words_widths);
        const double cost = seeker.cost() + (1 - smaller) * kSmaller * plan.style.unit;
        const auto count = static_cast<std::size_t>(
            std::ranges::count_if(found, [](const auto& each) { return each.has_value(); }));
        const auto high = static_cast<std::size_t>(std::ranges::count_if(
            found, [middle](const auto& each) { return each && each->centre.y < middle; }));
        const bool better = high > highest || (high == highest && cost < least);
        if (count > most || (count == most && better && smaller >= large_enough)) {
            most = count;
            highest = high;
            least = cost;
            best = std::move(found);
        }
    }
    return best;
}

}  // namespace platewright::sheet
