// SPDX-License-Identifier: MIT
// What is looked at from near: views with some of their parts alone, and the shapes of windows.
#include "cli/wardrobe_views.h"

#include <algorithm>
#include <array>
#include <string>
#include <string_view>
#include <utility>

#include "compose/compose.h"

namespace platewright::cli {

Template without_sleeves(const Template& flat) {
    Template made = flat;
    std::erase_if(made.parts, [](const Part& part) {
        return part.name.starts_with("sleeve") || part.name.starts_with("cuff");
    });
    return made;
}

Template left_arm_of(const Template& figure) {
    constexpr std::array<std::string_view, 8> arm = {"sleeve-left",
                                                     "cuff-left",
                                                     "cuff-flap-left",
                                                     "hand-left",
                                                     "finger-left",
                                                     "thumb-left",
                                                     "wristband-left",
                                                     "shirt-"};
    const auto is_of_arm = [&](const std::string& name) {
        return std::ranges::any_of(arm,
                                   [&](std::string_view piece) { return name.starts_with(piece); });
    };
    Template made = figure;
    std::erase_if(made.parts, [&](const Part& part) { return !is_of_arm(part.name); });
    for (Part& part : made.parts) {
        std::erase_if(part.on, [&](const std::string& name) { return !is_of_arm(name); });
    }
    return made;
}

Template seen_near(std::string_view frame, const Template& view) {
    constexpr std::array<std::string_view, 3> on_arm = {"cuff", "forearm", "upper-arm"};
    if (view.view == "front" && std::ranges::find(on_arm, frame) != on_arm.end()) {
        return left_arm_of(view);
    }
    Template made = view;
    if (frame == "turnback") {
        constexpr std::array<std::string_view, 4> arms = {
            "bayonet-", "hanger-", "sword-", "musket-"};
        std::erase_if(made.parts, [&](const Part& part) {
            return std::ranges::any_of(
                arms, [&](std::string_view arm) { return part.name.starts_with(arm); });
        });
    }
    return made;
}

Template laid_across(const Template& figure) {
    const auto of_musket = [](const std::string& name) { return name.starts_with("musket-"); };
    // From corner to corner of a tile a little broader than high: so it is longest.
    constexpr Affine by{0.656, 0.755, -0.755, 0.656, 0, 0};
    Template made;
    made.view = "detail";
    for (const Part& part : figure.parts) {
        if (!of_musket(part.name)) {
            continue;
        }
        Part laid = part;
        laid.shape = part.shape.transformed(by);
        laid.edge = part.edge.transformed(by);
        std::erase_if(laid.on, [&](const std::string& name) { return !of_musket(name); });
        for (Detail& detail : laid.details) {
            detail.path = detail.path.transformed(by);
            detail.curve = Curve(detail.path);
        }
        made.frame.include(laid.shape.bounds());
        made.parts.push_back(std::move(laid));
    }
    return made;
}

Rect proportioned(const Rect& frame) {
    constexpr double widest = 2.8;
    const double shape = frame.width() / std::max(frame.height(), 1.0);
    Rect made = frame.widened(std::max(1.0, kNarrowest / shape));
    const double more = frame.height() * (std::max(1.0, shape / widest) - 1) / 2;
    made.top -= more;
    made.bottom += more;
    return made;
}

bool is_on_left_arm(PropertyId id, const Rect& frame) {
    constexpr std::array<std::string_view, 4> groups = {"cuffs", "rings", "marks", "service"};
    return frame.left > 100 && std::ranges::find(groups, properties()[id].group()) != groups.end();
}

bool is_tall(const Uniform& man) {
    constexpr std::array<std::string_view, 4> caps = {"fur-cap", "mitre", "light-cap", "shako"};
    return std::ranges::find(caps, man.word(property_id("hat.shape"))) != caps.end() ||
           man.word(property_id("hat.plume")) != "none";
}

int order_of(PropertyId id, const Uniform& man, const Rect& frame) {
    if (properties()[id].group() != "hat") {
        return 0;
    }
    constexpr double near = 300;
    if (frame.width() < near) {
        return 3;
    }
    if (is_tall(man)) {
        return 1;
    }
    return properties()[id].key == "hat.shape" ? 0 : 2;
}

}  // namespace platewright::cli
