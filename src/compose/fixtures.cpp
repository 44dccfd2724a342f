// SPDX-License-Identifier: MIT
// What the templates draw of the same material on every man.
#include "compose/fixtures.h"

#include <algorithm>
#include <array>
#include <string>

namespace platewright {

namespace {

constexpr Colour kWalnut{0x7a, 0x4a, 0x2a};
constexpr Colour kBrass{0xc9, 0xa0, 0x4a};
constexpr Colour kBlackLeather{0x2a, 0x26, 0x29};
constexpr Colour kTwine{0xe6, 0xdc, 0xc2};

/// Common practice, no source.
constexpr auto kFixtures = std::to_array<Fixture>({
    {"sword.worn", "sword.hilt", "brown leather", "sword grip", {0x3b, 0x2a, 0x20}, false},
    {"hat.shape = shako",
     "hat.felt",
     "black leather",
     "top and peak of the shako",
     kBlackLeather,
     false},
    {"hat.shape = light-cap",
     "hat.felt",
     "black leather",
     "peak of the cap",
     kBlackLeather,
     false,
     {0x24, 0x21, 0x24}},
    {"musket.carried", "musket.carried", "walnut", "musket stock", kWalnut, false},
    {"drum.shell", "drum.shell", "walnut", "drumsticks", kWalnut, false},
    {"musket.carried", "musket.carried", "brass", "musket mounts", kBrass, true},
    {"drum.shell", "drum.shell", "brass", "drum hook", kBrass, true},
    {"belts.worn = crossed and box.leather and not knapsack.leather",
     "belts.leather",
     "brass",
     "buckles",
     kBrass,
     true},
    {"knapsack.leather", "knapsack.leather", "brass", "buckles", kBrass, true},
    {"blanket.cloth", "blanket.cloth", "brass", "buckles", kBrass, true},
    {"musket.carried",
     "musket.carried",
     "steel",
     "musket barrel",
     {0x9a, 0x9e, 0xa2},
     true,
     {0x9a, 0xa0, 0xa8}},
    {"drum.shell", "drum.shell", "vellum", "drumhead", {0xe9, 0xdf, 0xc6}, false},
    {"drum.shell", "drum.shell", "linen", "drum cords", kTwine, false},
    {"fife.case", "fife.case", "linen", "cord of the fife case", kTwine, false},
    {"drum.shell", "drum.shell", "tanned leather", "drum braces", {0xb9, 0x8a, 0x58}, false},
    {"canteen.cloth", "canteen.cloth", "hemp", "canteen cord", {0xb0, 0x9a, 0x6c}, false},
});

}  // namespace

std::span<const Fixture> fixtures() {
    return kFixtures;
}

std::vector<PropertyId> choices_of(const Condition& when, std::optional<PropertyId> cloth) {
    std::vector<PropertyId> choices;
    if (cloth && properties()[*cloth].substance == SubstanceKind::skin) {
        return choices;
    }
    for (const Term& term : when) {
        const Property& row = properties()[term.property];
        const bool shapes = row.kind == Kind::choice || row.kind == Kind::ornament;
        const bool has_own =
            cloth && std::ranges::find(kFixtures, row.key, &Fixture::thing) != kFixtures.end();
        if (!term.negated && shapes && !has_own) {
            choices.push_back(term.property);
        }
    }
    return choices;
}

bool has_fixture(const Uniform& man, const Fixture& fixture) {
    std::string problem;
    const auto when = parse_condition(fixture.when, problem);
    return when && holds(*when, [&man](PropertyId id) { return man.word(id); });
}

}  // namespace platewright
