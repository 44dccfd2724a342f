// SPDX-License-Identifier: MIT
// A colour as a chart or a table shows it.
#pragma once

#include "compose/figure.h"
#include "resolve/uniform.h"

namespace platewright::cli {

/// The swatch of a material with its name and what it is made of, in the language of the sheets.
inline KeyEntry sample_of(const Material& material) {
    return {material.printed(),
            material.made_of,
            material.colour,
            material.metal,
            {},
            material.tincture()};
}

}  // namespace platewright::cli
