// SPDX-License-Identifier: MIT
// One example for everything the table lets a user write: the index of the wardrobe.
#pragma once

#include <string>
#include <vector>

#include "vocabulary/property.h"

namespace platewright {

/// A property with a value, as it would be written.
struct Setting {
    PropertyId property = 0;
    std::string value;
};

/// What to write to see one option.
struct Example {
    PropertyId property = 0;
    /// The value shown: `slashed`, `none`, or what the row gives as an example.
    std::string value;
    /// The way to write it: `cuffs: slashed`, `epaulettes: {fringe-kind: bullion}`.
    std::string written;
    /// What else must be so that it speaks at all, strongest last, then the value itself.
    std::vector<Setting> settings;
};

/// Examples of one property: of each word of a choice and of `none`, of one value where the default
/// is `none`. Empty for what is not to be seen: sizes, the default cloth of a garment, words.
std::vector<Example> examples_of(PropertyId id);

}  // namespace platewright
