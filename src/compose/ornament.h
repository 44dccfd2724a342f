// SPDX-License-Identifier: MIT
// Ornaments: small templates of their own, set down on a figure wherever one is worn.
#pragma once

#include <string>
#include <vector>

#include "compose/template.h"

namespace platewright {

/// Where one stands: its middle, the way its top faces, and its height in mm.
struct OrnamentPlace {
    Point at;
    Point facing{0, -1};
    double size = 34;
};

/// The ornament's parts moved to that place; their names get `suffix`, so that the same ornament
/// can be worn twice.
std::vector<Part> ornament_at(const Template& ornament,
                              const OrnamentPlace& place,
                              const std::string& suffix);

/// The places a detail names: one, facing along its line, or a row of them along it, upright.
std::vector<OrnamentPlace> ornament_places(const Detail& detail, int number);

}  // namespace platewright
