// SPDX-License-Identifier: MIT
// What men could wear of each other's.
#pragma once

#include <vector>

#include "base/language.h"
#include "layout/comparison.h"
#include "resolve/uniform.h"

namespace platewright::cli {

/// Of two men in words, of more in a table: thing by thing, those among whom it passes from hand to
/// hand as it is. It is the same in both directions.
void add_carried_over(const std::vector<const Uniform*>& men, Language language, MenCompared& to);

}  // namespace platewright::cli
