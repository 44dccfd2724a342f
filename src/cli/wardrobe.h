// SPDX-License-Identifier: MIT
// The index of the wardrobe: one picture of everything the table of properties knows.
#pragma once

#include <vector>

#include "cli/workshop.h"
#include "vocabulary/examples.h"

namespace platewright::cli {

/// The man of a plate, with something else written for these properties.
Job wearing(const Job& job, const std::vector<Setting>& settings);

/// The pages of a plate that says `wardrobe:`. Its man is shown in each option in turn, in the view
/// and the frame where the option makes a difference. For any thread with a typesetter of its own.
Document wardrobe_of(const Workshop& workshop,
                     const Job& job,
                     const Printing& printing,
                     const Typesetter& type,
                     Diagnostics& to,
                     Timings& timings);

/// What the index shows, before it is laid out; for the test that nothing is missing from it.
WardrobeIndex wardrobe_index(const Workshop& workshop,
                             const Job& job,
                             const Printing& printing,
                             Diagnostics& to);

}  // namespace platewright::cli
