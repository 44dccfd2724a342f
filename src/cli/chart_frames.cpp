// SPDX-License-Identifier: MIT
// What of its men a chart shows, what of them enlarged, and what it tells of them.
#include "cli/chart_frames.h"

#include <algorithm>
#include <array>
#include <string>
#include <string_view>

#include "compose/easel.h"
#include "resolve/change.h"

namespace platewright::cli {
namespace {

/// Elbows must not touch.
constexpr double kAir = 1.04;

/// Whether what he wears on his head may stand higher than a cocked hat, a round hat too.
bool wears_high(const Uniform& man) {
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

constexpr std::array<Telling, 7> kTelling = {{{"marks", "forearm"},
                                              {"service", "upper-arm"},
                                              {"badge", "service-badge"},
                                              {"epaulettes", "epaulette", "epaulettes.worn"},
                                              {"knot", "knot", "knot.worn"},
                                              {"wings", "wing"},
                                              {"gorget", "collar"}}};

/// The frames stand at the wearer's left.
Rect on_his_right(const Rect& box) {
    return {-box.right, box.top, -box.left, box.bottom};
}

/// Where the template has the marks of that group, on either sleeve.
std::vector<const Detail*> marks_worn(const Uniform& man,
                                      std::string_view group,
                                      const Template& front) {
    const auto word_of = [&](PropertyId id) { return man.word(id); };
    std::vector<const Detail*> worn;
    for (const Part& part : front.parts) {
        for (const Detail& detail : part.details) {
            if (detail.kind == DetailKind::marks && detail.group == group &&
                holds(part.when, word_of) && holds(detail.when, word_of)) {
                worn.push_back(&detail);
            }
        }
    }
    return worn;
}

/// What lies round the bars or chevrons of a group, on his left sleeve if he wears them there.
std::optional<Rect> box_of_tape(const Uniform& man, std::string_view group, const Template& front) {
    constexpr double cloth = 16;
    Rect left;
    Rect right;
    for (const Detail* detail : marks_worn(man, group, front)) {
        for (const MarkBand& band : marks_on(man, *detail)) {
            for (const Point p : band.middle) {
                (detail->side == Side::left ? left : right).include(p);
            }
        }
    }
    const Rect& worn = left.empty() ? right : left;
    return worn.empty() ? std::nullopt : std::optional(worn.grown(cloth));
}

}  // namespace

Rect chart_frame(const Template& front, const std::vector<const Uniform*>& men) {
    const Rect whole = frame_of(front);
    const Rect head = frame_of(front, "hat").value_or(whole);
    Rect frame = frame_of(front, "regiment").value_or(whole);
    if (std::ranges::any_of(men, [](const Uniform* man) { return wears_high(*man); })) {
        frame.top = std::min(frame.top, head.top);
    }
    return frame;
}

Rect between_elbows(const Template& front, const Rect& frame) {
    const Rect coat = frame_of(front, "coat").value_or(frame);
    return Rect{coat.left, frame.top, coat.right, frame.bottom}.widened(kAir);
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
        if (const auto tape = box_of_tape(man, telling.group, front)) {
            return tape;
        }
        const auto box = frame_of(front, telling.frame);
        if (!box) {
            continue;
        }
        const bool right = !telling.side.empty() && man.word(property_id(telling.side)) == "right";
        return right ? on_his_right(*box) : *box;
    }
    return std::nullopt;
}

std::vector<std::string> what_is_put_on(const std::vector<Change>& changes,
                                        const std::vector<CalloutWords>& callouts) {
    std::vector<std::string> put_on;
    constexpr std::array<std::string_view, 3> told = {"marks", "service", "epaulettes"};
    // What carries a sword or a drum tells no rank.
    constexpr std::array<std::string_view, 3> carries = {
        "belts.leather", "scabbard.leather", "sword.belt"};
    for (const Change& change : changes) {
        const Property& head = properties()[change.head];
        const bool comes = change.deed == Deed::buy || change.deed == Deed::sew_on;
        if (!comes || std::ranges::find(told, head.group()) != told.end() ||
            std::ranges::find(carries, head.key) != carries.end()) {
            continue;
        }
        const auto words = std::ranges::find(callouts, head.key, &CalloutWords::key);
        if (words != callouts.end()) {
            put_on.push_back(words->words);
        }
    }
    return put_on;
}

Uniform without_a_sword(Uniform man) {
    man.decided[property_id("sword.worn")].value = Value{};
    return man;
}

Rect seen_through_lens(const Rect& box) {
    // Less would not say where on the man it is; more would be hardly larger than beside it.
    constexpr double least = 124;
    constexpr double most = 176;
    const double half = std::clamp(std::max(box.width(), box.height()), least, most) / 2;
    const Point middle = box.centre();
    return {middle.x - half, middle.y - half, middle.x + half, middle.y + half};
}

}  // namespace platewright::cli
