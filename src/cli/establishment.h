// SPDX-License-Identifier: MIT
// What a regulation sets up: classes, regiments, companies, battalions, ranks.
#pragma once

#include <string>
#include <vector>

#include "read/specified.h"
#include "resolve/uniform.h"

namespace platewright::cli {

/// Any man of each regiment of the series, by number.
using Regiments = std::vector<Uniform>;

/// The numbers of the series, in order.
std::vector<int> numbers_of(const std::vector<SpecifiedRegulation>& editions);

/// `editions`: the base, then its amendments, all of them in force.
std::string establishment_in_words(const std::vector<SpecifiedRegulation>& editions,
                                   const Regiments& regiments);

/// The same as JSON: an object with `regulations`, `classes`, `regiments`, `rules`, `companies`,
/// `battalions`, `men`, `strength`, `ranks`, `service` and `orders of dress`.
std::string establishment_in_json(const std::vector<SpecifiedRegulation>& editions,
                                  const Regiments& regiments);

}  // namespace platewright::cli
