// SPDX-License-Identifier: MIT
// Whether two men can be told apart from afar.
#include "cli/from_afar.h"

#include <algorithm>
#include <string>

#include "base/vision.h"
#include "words/comparison_messages.h"

namespace platewright::cli {
namespace {

/// Whether a man wears a thing of that property at all, seen or not.
bool wears(const SeenMan& man, PropertyId id) {
    return man.uniform.speaks(id) && man.uniform.material(id) != nullptr;
}

const Seen* seen_on(const SeenMan& man, PropertyId id) {
    const auto seen = man.front.seen.find(std::string(properties()[id].key));
    return seen == man.front.seen.end() ? nullptr : &seen->second;
}

/// The colour of what is large and broad enough to be made out.
std::optional<Colour> colour_from_afar(const SeenMan& man, PropertyId id) {
    const Seen* seen = seen_on(man, id);
    const bool counts = wears(man, id) && properties()[id].work != Work::none && seen != nullptr &&
                        seen->area >= kLeastSeen &&
                        std::ranges::any_of(seen->sites, [](const Site& site) {
                            return site.room >= kMinuteOfArc / 2;
                        });
    return counts ? std::optional(man.uniform.material(id)->colour) : std::nullopt;
}

/// The colour against which a thing stands out on the man himself: of what lies under it, else of
/// what it is fixed on, as a plume on the hat.
std::optional<Colour> ground_of(const SeenMan& man, PropertyId id) {
    const Seen* seen = seen_on(man, id);
    if (seen != nullptr && !seen->beneath.empty()) {
        if (const Material* under = man.uniform.material(property_id(seen->beneath))) {
            return under->colour;
        }
    }
    const std::string_view group = properties()[id].group();
    for (PropertyId other = 0; other < properties().size(); ++other) {
        if (other != id && properties()[other].group() == group && wears(man, other)) {
            return man.uniform.material(other)->colour;
        }
    }
    return std::nullopt;
}

double distance(const std::optional<Colour>& a, const std::optional<Colour>& b, const Eyes& eyes) {
    return a && b ? delta_e_2000(to_lab_d65(eyes.see(*a)), to_lab_d65(eyes.see(*b))) : 0;
}

}  // namespace

std::vector<Eyes> all_eyes() {
    const auto without = [](Sight sight) {
        return [sight](Colour colour) { return as_seen(colour, sight, 1); };
    };
    return {{&messages::kToAllEyes, [](Colour colour) { return colour; }},
            {&messages::kWithoutColour, grey_of},
            {&messages::kToProtan, without(Sight::protan)},
            {&messages::kToDeutan, without(Sight::deutan)},
            {&messages::kToTritan, without(Sight::tritan)}};
}

Apart from_afar(const SeenMan& first, const SeenMan& second, const Eyes& eyes) {
    Apart most;
    for (PropertyId id = 0; id < properties().size(); ++id) {
        const auto one = colour_from_afar(first, id);
        const auto other = colour_from_afar(second, id);
        if (!one && !other) {
            continue;
        }
        // One that the other wears too but hides is told by its name alone.
        Apart found{0, id, !other && !wears(second, id), !one && !wears(first, id)};
        found.difference = one && other ? distance(one, other, eyes)
                           : one        ? distance(one, ground_of(first, id), eyes)
                                        : distance(other, ground_of(second, id), eyes);
        if (found.difference > most.difference) {
            most = found;
        }
    }
    return most;
}

}  // namespace platewright::cli
