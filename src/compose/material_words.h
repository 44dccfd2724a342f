// SPDX-License-Identifier: MIT
// How sheets name a cloth or a metal.
#pragma once

#include <string>

#include "base/language.h"
#include "resolve/uniform.h"

namespace platewright {

/// The name of that language. "white metal", but "gold": the two metals of the buttons would pass
/// for cloth without the word.
std::string material_in_words(Language language, const Material& material);

}  // namespace platewright
