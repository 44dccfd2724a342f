// SPDX-License-Identifier: MIT
// What of its men a chart shows, and what of them enlarged.
#include "cli/chart_frames.h"

#include <algorithm>
#include <array>
#include <string>
#include <string_view>

#include "resolve/change.h"
#include "resolve/notable.h"

namespace platewright::cli {
namespace {

/// Sleeves that touch the edge of a cell look cut off by it.
constexpr double kAir = 1.08;

/// Where a chart of that kind looks.
std::string_view frame_name(ChartOf of) {
    switch (of) {
        case ChartOf::regiments:
            return "regiment";
        case ChartOf::ranks:
            return "rank";
        case ChartOf::service:
            return "service";
        case ChartOf::colours:
            break;
    }
    return {};
}

/// Whether what he wears on his head stands higher than a cocked hat.
bool is_tall(const Uniform& man) {
    const std::string shape = man.word(property_id("hat.shape"));
    return (shape != "three-cornered" && shape != "none") ||
           man.word(property_id("hat.plume")) != "none";
}

/// What tells a rank or years of service, with the frame that shows it: what is seen worst from
/// afar comes first.
struct Telling {
    std::string_view group;
    std::string_view frame;
    /// The property that says on which side it is worn, if it has one.
    std::string_view side = {};
};

constexpr std::array<Telling, 8> kTelling = {{{"drum", "drum"},
                                              {"marks", "forearm"},
                                              {"service", "upper-arm"},
                                              {"badge", "service-badge"},
                                              {"epaulettes", "epaulette", "epaulettes.worn"},
                                              {"knot", "knot", "knot.worn"},
                                              {"wings", "shoulder"},
                                              {"gorget", "collar"}}};

/// Of the frame of a sleeve only the tape is wanted: bars are counted, and not the folds beside
/// them.
constexpr double kCloser = 0.76;

Rect closer(const Rect& box) {
    const Point middle = box.centre();
    const double half = box.width() * kCloser / 2;
    return {middle.x - half, middle.y - half, middle.x + half, middle.y + half};
}

/// The frames stand at the wearer's left.
Rect on_his_right(const Rect& box) {
    return {-box.right, box.top, -box.left, box.bottom};
}

}  // namespace

Rect chart_frame(ChartOf of, const Template& front, const std::vector<const Uniform*>& men) {
    const Rect whole = frame_of(front);
    const Rect head = frame_of(front, "hat").value_or(whole);
    Rect frame = frame_of(front, frame_name(of)).value_or(whole);
    const bool with_heads = frame.top < head.centre().y;
    if (with_heads && std::ranges::any_of(men, [](const Uniform* man) { return is_tall(*man); })) {
        frame.top = std::min(frame.top, head.top);
    }
    return frame.widened(kAir);
}

std::optional<Rect> box_of_difference(const Uniform& ordinary,
                                      const Uniform& man,
                                      const Template& front) {
    const std::vector<Change> changes = compare(ordinary, man).changes;
    for (const Telling& telling : kTelling) {
        const auto comes = [&](const Change& change) {
            const bool worn = change.deed != Deed::take_off && change.deed != Deed::lay_aside;
            return worn && properties()[change.head].group() == telling.group;
        };
        if (std::ranges::none_of(changes, comes)) {
            continue;
        }
        const bool marks = telling.group == "marks" || telling.group == "service";
        const std::string_view name =
            marks ? frame_of_marks(man, telling.group, telling.frame) : telling.frame;
        const auto box = frame_of(front, name);
        if (!box) {
            continue;
        }
        const bool right = !telling.side.empty() && man.word(property_id(telling.side)) == "right";
        const Rect square = marks ? closer(box->squared()) : box->squared();
        return right ? on_his_right(square) : square;
    }
    return std::nullopt;
}

}  // namespace platewright::cli
