// SPDX-License-Identifier: MIT
// Parting a garment at its shoulders.
#include "pattern/shoulders.h"

#include "pattern/shapes.h"

namespace platewright {
namespace {

/// From the back, across its middle and over the fold of the shoulder.
class Unfolding {
  public:
    explicit Unfolding(const Chain& fold)
        : from_{-fold.front().x, fold.front().y}, to_{-fold.back().x, fold.back().y} {}

    [[nodiscard]] Chain operator()(const Chain& behind) const {
        Chain before;
        for (const Point p : behind) {
            before.push_back({-p.x, p.y});
        }
        return shapes::mirrored(before, from_, to_);
    }

    /// Just below the fold, before.
    [[nodiscard]] Chain over_fold() const {
        constexpr double over = 1.5;
        const Point along = unit(to_ - from_);
        const Point down = right_of(along) * over;
        const Point below = down.y > 0 ? down : down * -1;
        // Narrower there, so that it stands out of neither neck nor arm's hole.
        constexpr double within = 4;
        return {from_, to_, to_ + below - along * within, from_ + below + along * within};
    }

  private:
    Point from_;
    Point to_;
};

}  // namespace

std::optional<Shoulder> shoulder_of(const Flat& back, const Chain& half) {
    const Chain* seam = back.guide("shoulder-seam-left");
    const Chain* fold = back.guide("shoulder-left");
    if (seam == nullptr || fold == nullptr || seam->size() < 2 || fold->size() < 2) {
        return std::nullopt;
    }
    constexpr double far = shapes::kBeyondAll;
    Chain line{{fold->front().x, -far}, fold->front()};
    line.insert(line.end(), seam->begin(), seam->end());
    line.push_back({-far, seam->back().y});
    Chain below = line;
    below.insert(below.end(), {{-far, far}, {far, far}, {far, -far}});
    Chain above = line;
    above.push_back({-far, -far});
    const Unfolding unfolded(*fold);
    const Chain strip = shapes::common({half}, above);
    if (strip.empty()) {
        return std::nullopt;
    }
    return Shoulder{shapes::common({half}, below),
                    shapes::joined({unfolded(strip), unfolded.over_fold()}),
                    seam->front(),
                    seam->back(),
                    unfolded({seam->front()}).front(),
                    unfolded({seam->back()}).front()};
}

}  // namespace platewright
