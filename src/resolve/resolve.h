// SPDX-License-Identifier: MIT
// Second stage: what was written, palettes and the orders a man stands under to one decided
// uniform.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "read/specified.h"
#include "resolve/uniform.h"

namespace platewright {

/// Weighs what everybody says of the man (`Strength`, weakest first) and follows what is the same
/// as another property. With a regulation, what is in force on the plate's day decides, and customs
/// are silent. Of a plate without title, who is nobody in particular, it is not asked what must be
/// decided. The first palette that has a name counts. Empty exactly when this call added an error.
/// Errors: resolve.unknown-colour, -metal, -property (to follow), -class, -company, -order, -rank,
/// -regiment, -shows; resolve.conflict, resolve.circle, resolve.dates, resolve.not-decided,
/// resolve.place-taken, resolve.wrong-kind. One about a default that no palette has is without a
/// place. What does not concern this man is left to `check_regulation`.
std::optional<Uniform> resolve(const SpecifiedPlate& plate,
                               const Orders& orders,
                               const SpecifiedCustoms& customs,
                               const std::vector<SpecifiedPalette>& palettes,
                               Diagnostics& to);

/// Looks a regulation through that no man has to be dressed by: names and colours that are not
/// known, ranks like each other in a circle, dates, places of the series taken twice, regiments
/// that come out alike, the strength. `editions`: the base, then its amendments. Errors: as above,
/// and resolve.strength. Warning: resolve.place-taken, where only the number on the buttons tells
/// two regiments apart.
void check_regulation(const std::vector<SpecifiedRegulation>& editions,
                      const std::vector<SpecifiedPalette>& palettes,
                      Diagnostics& to);

/// Looks a regiment's file through that no man has to be dressed by: its place in the regulation,
/// names and colours that are not known, what contradicts itself. Errors: as above.
void check_regiment(const Orders& orders,
                    const std::vector<SpecifiedPalette>& palettes,
                    Diagnostics& to);

/// Text dump of the stage: one line a property in table order: key, value, colour, and the chain of
/// decisions with places.
std::string dump(const Uniform& uniform, const SourceMap& sources);

}  // namespace platewright
