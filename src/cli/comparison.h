// SPDX-License-Identifier: MIT
// Comparisons of men and regiments.
#pragma once

#include <memory>

#include "cli/sheet.h"

namespace platewright::cli {

/// Reads the file of a comparison and dresses its men; null after an error. Errors: those of
/// reading and of the men.
std::unique_ptr<Sheet> prepare_comparison(Workshop& workshop,
                                          FileId file,
                                          Diagnostics& to,
                                          Timings& timings);

}  // namespace platewright::cli
