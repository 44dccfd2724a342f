// SPDX-License-Identifier: MIT
// How sheets name a cloth or a metal.
#include "compose/material_words.h"

#include "words/terms.h"

namespace platewright {

std::string material_in_words(Language language, const Material& material) {
    const bool bare = material.metal && (material.name == "white" || material.name == "yellow");
    const std::string& printed = material.printed();
    return bare && printed == material.name ? term(language, material.name + " metal") : printed;
}

}  // namespace platewright
