// SPDX-License-Identifier: MIT
// What of a man's dress is worth a closer look.
#include "resolve/notable.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <string>

namespace platewright {
namespace {

/// From what is nothing to remark to what matters most.
enum class Matter { nothing, shape, own, earned, departure };

constexpr std::size_t kMatters = 5;

Matter matter_of(const Uniform& man, PropertyId id) {
    const Decision& last = man.decided[id].chain.back();
    const Property& row = properties()[id];
    if (row.work == Work::none) {
        return Matter::nothing;
    }
    if (last.departure) {
        return Matter::departure;
    }
    switch (last.strength) {
        case Strength::initial:
            return Matter::nothing;
        case Strength::custom:
        case Strength::rank:
        case Strength::service:
            return Matter::earned;
        case Strength::regulation:
        case Strength::order:
            break;
        case Strength::corps_class:
        case Strength::series:
        case Strength::rule:
        case Strength::regiment:
        case Strength::company:
        case Strength::departure:
        case Strength::plate:
            return Matter::own;
    }
    return row.kind == Kind::choice && man.word(id) != row.initial ? Matter::shape
                                                                   : Matter::nothing;
}

bool is_worn(const Uniform& man, PropertyId id) {
    return man.speaks(id) && !is_nothing(man.value(id));
}

/// The row's own, else the first of its group.
std::string_view frame_of_row(const Property& row) {
    if (!row.frame.empty()) {
        return row.frame;
    }
    const auto of_group = [&](const Property& each) {
        return each.group() == row.group() && !each.frame.empty();
    };
    const auto at = std::ranges::find_if(properties(), of_group);
    return at == properties().end() ? std::string_view() : at->frame;
}

/// A frame with how many things of each weight it shows.
struct Notable {
    std::string_view frame;
    std::array<int, kMatters> shown{};
};

/// Whether one shows more of what weighs most.
bool outweighs(const Notable& one, const Notable& other) {
    for (std::size_t each = kMatters; each-- > 1;) {
        if (one.shown.at(each) != other.shown.at(each)) {
            return one.shown.at(each) > other.shown.at(each);
        }
    }
    return false;
}

}  // namespace

bool is_earned(const Uniform& man, PropertyId id) {
    return is_worn(man, id) && matter_of(man, id) == Matter::earned;
}

std::string_view frame_of_marks(const Uniform& man,
                                std::string_view group,
                                std::string_view usual) {
    constexpr std::string_view lower_half = "forearm";
    constexpr std::string_view upper_half = "upper-arm";
    const auto place = find_property(std::string(group) + ".place");
    if (!place || (usual != lower_half && usual != upper_half)) {
        return usual;
    }
    return man.word(*place) == upper_half ? upper_half : lower_half;
}

std::vector<std::string_view> frames_that_matter(const Uniform& man) {
    std::vector<Notable> candidates;
    for (PropertyId id = 0; id < properties().size(); ++id) {
        const Property& row = properties()[id];
        const std::string_view frame = frame_of_marks(man, row.group(), frame_of_row(row));
        const Matter matter = matter_of(man, id);
        if (frame.empty() || matter == Matter::nothing || !is_worn(man, id)) {
            continue;
        }
        auto at = std::ranges::find(candidates, frame, &Notable::frame);
        if (at == candidates.end()) {
            at = candidates.insert(at, Notable{frame, {}});
        }
        ++at->shown.at(static_cast<std::size_t>(matter));
    }
    std::ranges::stable_sort(candidates, outweighs);
    std::vector<std::string_view> frames;
    frames.reserve(candidates.size());
    for (const Notable& each : candidates) {
        frames.push_back(each.frame);
    }
    return frames;
}

}  // namespace platewright
