// SPDX-License-Identifier: MIT
// The parts of a man that a plate shows enlarged.
#pragma once

#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "cli/workshop.h"
#include "layout/layout.h"

namespace platewright::cli {

/// Whether every detail the plate asks for has a frame in one of its views; else adds
/// cli.unknown-detail.
bool check_details(const Job& job, Diagnostics& to);

/// The names of the details: those the plate asks for, or where it writes `automatic`, at most
/// three of `frames_that_matter` that are small enough to gain by it and do not show the same
/// place.
std::vector<std::string> detail_names(const Uniform& uniform, const Job& job);

/// Each of them, drawn from the first view that has a frame for it; of a large frame the middle,
/// so that it is seen at twice the size it has on figures at 1 : `scale`.
std::vector<PlateDetail> details_of_plate(const Uniform& uniform,
                                          const Job& job,
                                          const Printing& printing,
                                          double scale);

}  // namespace platewright::cli
