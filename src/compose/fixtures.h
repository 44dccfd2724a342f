// SPDX-License-Identifier: MIT
// What the templates draw of the same material on every man: musket stocks, buckles, cords.
#pragma once

#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "base/colour.h"
#include "resolve/uniform.h"
#include "vocabulary/condition.h"

namespace platewright {

/// What a thing is made of in the templates, whatever else is said of it.
struct Fixture {
    /// It is drawn where this holds, and as far as the property's own thing is seen.
    std::string_view when;
    std::string_view thing;
    /// Terms: the material, and where it is.
    std::string_view name;
    std::string_view place;
    Colour colour;
    bool metal;
    /// As templates have it, where the key has it as the same thing of a palette.
    Colour drawn = colour;
};

/// In the order of the colour key; those of one material stand together.
std::span<const Fixture> fixtures();

/// The choices that give a part of that cloth its shape which is there under that condition; a face
/// or a hand is never the thing. Of what is made of the same on every man, such as a musket, only
/// that is its own, not what has a cloth of a property: its sling.
std::vector<PropertyId> choices_of(const Condition& when, std::optional<PropertyId> cloth);

/// Whether the man has it.
bool has_fixture(const Uniform& man, const Fixture& fixture);

}  // namespace platewright
