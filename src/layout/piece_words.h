// SPDX-License-Identifier: MIT
// What is said beneath a pattern piece.
#pragma once

#include <string>
#include <vector>

#include "base/language.h"
#include "pattern/pieces.h"

namespace platewright {

/// Name, number and cloth of a piece, a line each.
std::vector<std::string> cutting_words(const PatternPiece& piece, Language language);

}  // namespace platewright
