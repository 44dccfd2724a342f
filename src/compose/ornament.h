// SPDX-License-Identifier: MIT
// Ornaments: small templates of their own, set down on a figure wherever one is worn.
#pragma once

#include <string>
#include <vector>

#include "compose/easel.h"
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

/// Cut of cloth and sewn on: what of those parts is made of what the ornament is given has no light
/// of its own and hardly a shade; lines within it are embroidered.
void sew_on(std::vector<Part>& parts);

/// The shadow of so thin a thing on what it is sewn to.
Group shadow_of_sewn(Easel& easel, const std::vector<Part>& parts, double size);

/// The edge of a sewn piece, covered with thread: short stitches across it, close together, which
/// fill what is narrow.
Group overcast(Easel& easel, const Path& shape, const Paint& paint, double size);

/// The places a detail names: one, facing along its line, or a row of them along it, upright.
std::vector<OrnamentPlace> ornament_places(const Detail& detail, int number);

}  // namespace platewright
