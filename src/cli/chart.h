// SPDX-License-Identifier: MIT
// Charts of regiments, ranks, service and colours.
#pragma once

#include <memory>

#include "cli/sheet.h"

namespace platewright::cli {

/// Reads the file of a chart and dresses everybody it shows; null after an error. Errors: those of
/// reading and of the men, cli.chart-of-nothing, cli.unknown-palette.
std::unique_ptr<Sheet> prepare_chart(Workshop& workshop,
                                     FileId file,
                                     Diagnostics& to,
                                     Timings& timings);

}  // namespace platewright::cli
