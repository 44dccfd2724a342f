// SPDX-License-Identifier: MIT
// Of many places where words could stand, one for each, so that neither words nor lines meet.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "layout/callouts.h"

namespace platewright::sheet {

/// Words in one place with their line, and what speaks against it, in mm of line over paper.
struct CalloutOption {
    PlacedCallout placed;
    double cost = 0;
    /// Which of the regions beside the pictures it stands in.
    std::size_t region = 0;
};

/// Whether words or lines of two callouts meet or come so near that they are taken for each
/// other's; `size` of type.
bool callouts_meet(const PlacedCallout& one, const PlacedCallout& other, double size);

/// One option of each list, or none; as many as can be, at the least cost that is found by giving
/// each in turn a better place, and by moving one other that is in the way. `options`: the cheapest
/// first.
std::vector<std::optional<PlacedCallout>> choose_callouts(
    const std::vector<std::vector<CalloutOption>>& options, double size);

/// The same, and so that the regions hold about as many each: what stands in a full one is made
/// dearer step by step, and the best of all that comes of it is taken.
std::vector<std::optional<PlacedCallout>> share_out_callouts(
    const std::vector<std::vector<CalloutOption>>& options, std::size_t regions, double size);

/// All callouts in two columns, their lines level, bent at half a right angle where words have to
/// stand higher or lower than what they name; nothing if not all of them have room that way.
std::optional<CalloutPlan> place_level(const std::vector<Callout>& callouts,
                                       const CalloutColumns& columns,
                                       const Type& type,
                                       Ruler& ruler);

}  // namespace platewright::sheet
