// SPDX-License-Identifier: MIT
// Drafting a sleeve.
#include "pattern/sleeves.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "pattern/shapes.h"

namespace platewright {
namespace {

/// How far apart the heights are at which its sides are set, mm.
constexpr double kSideStep = 5;
/// The hollow of the under half; common practice, no source.
constexpr double kHollow = -22;
/// The sleeve lies within its cuff: half of it is so much narrower, mm. Common practice, no source.
constexpr double kWithinCuff = 2;
/// On the back the hole of the arm is higher where the sleeve's hind seam meets it: the hind corner
/// of both halves lies so far above the fore one, mm. Common practice, no source.
constexpr double kHindHigher = 50;
/// So far above the hem the middle of the drawn sleeve is still true; below, the hem's slant bends
/// it.
constexpr double kTrueAboveHem = 30;
/// The hem slants towards the hand; where its level part begins, mm above its lowest point.
constexpr double kHemSlant = 12;

/// A bow from point to point that rises by `height`.
Chain bow(Point from, Point to, double height) {
    constexpr int steps = 96;
    Chain chain;
    for (int i = 0; i <= steps; ++i) {
        const double u = static_cast<double>(i) / steps;
        // Fuller than a parabola at the shoulder.
        const double rise = i == steps ? 0 : std::pow(std::sin(u * std::numbers::pi), 0.8);
        const Point at = from + (to - from) * u;
        chain.push_back({at.x, at.y - height * rise});
    }
    return chain;
}

/// How high a head from corner to corner must rise to be that long.
double rise_of_head(Point fore, Point hind, double wanted) {
    double low = 0;
    double high = 400;
    for (int i = 0; i < 40; ++i) {
        const double height = (low + high) / 2;
        (length_of(bow(fore, hind, height)) < wanted ? low : high) = height;
    }
    return (low + high) / 2;
}

/// The sleeve of the flat, turned to hang straight down.
class Hanging {
  public:
    /// Half the girths above, where the cuff begins, and below; and how high the cuff is.
    struct Halves {
        double arm = 0;
        double cuff = 0;
        double hem = 0;
        double cuff_height = 0;
    };

    Hanging(Chain outline, const Halves& halves)
        : outline_(std::move(outline)),
          end_(shapes::box(outline_).bottom - kHemSlant),
          halves_(halves) {}

    [[nodiscard]] double end() const { return end_; }

    /// The two long sides from the arm-pit down, the head open; narrowing evenly from arm to hem,
    /// with the bend that is drawn.
    [[nodiscard]] Chain sides(double pit, double drawn_pit, double shift) const {
        Chain right;
        Chain left;
        for (double y = pit; y < end_ + kSideStep; y += kSideStep) {
            const double at = std::min(y, end_);
            const double middle = middle_at(std::max(at, drawn_pit));
            const double half = half_at(at, pit) / 2 + shift;
            right.push_back({middle + half, at});
            left.push_back({middle - half, at});
        }
        right.insert(right.begin(), right.front() - Point{0, kHindHigher});
        right.insert(right.end(), left.rbegin(), left.rend());
        return right;
    }

  private:
    Chain outline_;
    double end_;
    Halves halves_;

    [[nodiscard]] double middle_at(double y) const {
        const auto drawn = [&](double at) {
            const Crossing here = crossing(outline_, at);
            return (here.least + here.greatest) / 2;
        };
        const double last = end_ - kTrueAboveHem;
        const double slope = (drawn(last) - drawn(last - kTrueAboveHem)) / kTrueAboveHem;
        return y < last ? drawn(y) : drawn(last) + slope * (y - last);
    }

    /// Half the girth: narrowing evenly into the cuff, and within it.
    [[nodiscard]] double half_at(double y, double pit) const {
        const double cuff = end_ - halves_.cuff_height;
        if (y < cuff) {
            return halves_.arm + (halves_.cuff - halves_.arm) * (y - pit) / (cuff - pit);
        }
        return halves_.cuff + (halves_.hem - halves_.cuff) * (y - cuff) / (end_ - cuff);
    }
};

/// Closes the head of a sleeve's half. Gives its length.
double close_head(Chain& outline, double rise) {
    const Chain head = bow(outline.back(), outline.front(), rise);
    outline.insert(outline.end(), head.begin() + 1, head.end() - 1);
    return length_of(head);
}

}  // namespace

std::optional<Sleeves> sleeves_of(const Flat& front, double hole, double upper_arm) {
    const FlatPart* part = front.part("sleeve-left");
    const Chain* seam = front.guide("sleeve-left-seam");
    const Chain* hem = front.guide("cuff-hem-left");
    if (part == nullptr || seam == nullptr || hem == nullptr) {
        return std::nullopt;
    }
    const Point along = (hem->front() + hem->back()) * 0.5 - seam->front();
    const double half_arm = (upper_arm + kArmEase) / 2;
    const Chain* edge = front.guide("cuff-edge-left");
    const double half_hem = length_of(*hem) - kWithinCuff;
    Hanging::Halves halves{half_arm, half_hem, half_hem, 0};
    if (edge != nullptr) {
        halves.cuff = std::min(half_arm, length_of(*edge) - kWithinCuff);
        halves.hem = std::min(half_hem, halves.cuff);
        halves.cuff_height = length(edge->back() - hem->back());
    }
    const Hanging drawn(shapes::turned_down(shapes::joined(part->outline), along), halves);
    const double drawn_pit = shapes::turned_down(*seam, along).back().y;
    const double under_width = half_arm - 2 * kHalvesShift;
    const Point fore{0, 0};
    const double under_head = length_of(bow(fore, {under_width, -kHindHigher}, kHollow));
    const double upper_width = half_arm + 2 * kHalvesShift;
    const double rise =
        rise_of_head(fore, {upper_width, -kHindHigher}, hole + kHeadEase - under_head);
    // From the point of the shoulder to the hem it is as long as the flat's.
    const double pit = drawn.end() - (length(hem->back() - seam->front()) - rise - kHindHigher / 2);
    Sleeves made;
    made.upper = drawn.sides(pit, drawn_pit, kHalvesShift);
    made.under = drawn.sides(pit, drawn_pit, -kHalvesShift);
    // On the left sleeve seen from before, the hind arm is at the outer side.
    made.fore = made.upper.back();
    made.hind = made.upper.front();
    made.under_fore = made.under.back();
    made.under_hind = made.under.front();
    made.upper_head = close_head(made.upper, rise);
    made.under_head = close_head(made.under, kHollow);
    made.elbow = (pit + drawn.end()) / 2;
    made.cuff_edge = halves.cuff_height > 0 ? drawn.end() - halves.cuff_height : 0;
    return made;
}

}  // namespace platewright
