// SPDX-License-Identifier: MIT
// Second stage: what was written, palettes and customs to one decided uniform.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "read/specified.h"
#include "resolve/uniform.h"

namespace platewright {

/// Weighs built-in defaults, the custom of the rank and the plate, and follows what is the same as
/// another property. The first palette that has a name counts. Empty exactly when this call added
/// an error. Errors: resolve.unknown-colour, resolve.unknown-metal, resolve.unknown-rank,
/// resolve.unknown-property (to follow), resolve.circle, resolve.wrong-kind. One about a default
/// that no palette has is without a place.
std::optional<Uniform> resolve(const SpecifiedPlate& plate,
                               const SpecifiedCustoms& customs,
                               const std::vector<SpecifiedPalette>& palettes,
                               Diagnostics& to);

/// Text dump of the stage: one line a property in table order: key, value, colour, and the chain of
/// decisions with places.
std::string dump(const Uniform& uniform, const SourceMap& sources);

}  // namespace platewright
