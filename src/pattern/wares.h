// SPDX-License-Identifier: MIT
// What is bought ready made or by the piece, not by the length of cloth: straps, hooks, buckles,
// tapes.
#pragma once

#include <string>
#include <vector>

#include "base/language.h"
#include "pattern/materials.h"

namespace platewright {

/// Whether he wears skirts whose corners are hooked together, not sewn down.
bool has_hooked_turnbacks(const Uniform& man);

/// For one garment, or for the `man` altogether.
std::vector<MaterialLine> wares_of(const PatternSource& source,
                                   const std::vector<PatternPiece>& pieces,
                                   const std::string& garment,
                                   Language language);

}  // namespace platewright
