// SPDX-License-Identifier: MIT
// What can be wrong with a regulation whoever is dressed by it; part of the second stage.
#pragma once

#include "base/diagnostic.h"
#include "resolve/colours.h"
#include "resolve/regulation_in_force.h"

namespace platewright {

/// Two regiments come out alike by class, series and rules. Error: resolve.place-taken; a warning
/// where only the number on the buttons tells them apart.
void check_alike(const InForce& law, const ColourBook& colours, Diagnostics& to);

/// Colours of a block that no palette has. Errors: resolve.unknown-colour, resolve.unknown-metal.
void check_colours(const Block& block, const ColourBook& colours, Diagnostics& to);

/// Departures that end before they begin, or that name what the regulation does not know; without
/// a regulation (null) only the days are looked at. Errors: resolve.dates, resolve.unknown-company,
/// -rank, -order.
void check_departures(const std::vector<Departure>& departures,
                      const InForce* law,
                      Diagnostics& to);

/// What a regiment, all places filled, and its battalions come to.
struct Establishment {
    struct Unit {
        std::string name;
        /// Nothing where a company does not say how many men it has.
        std::optional<int> men;
    };

    std::vector<Unit> battalions;
    std::optional<int> men;
};

/// The sum of men, battalion by battalion.
Establishment establishment_of(const InForce& law);

}  // namespace platewright
