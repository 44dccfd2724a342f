// SPDX-License-Identifier: MIT
// A recruit's own sheets: from what was written to what is laid out.
#pragma once

#include <memory>

#include "cli/sheet.h"

namespace platewright::cli {

/// Reads the file of a handout and loads its man in full dress and in every order of dress; null
/// after an error. Errors: those of reading, of the workshop and of the plate.
std::unique_ptr<Sheet> prepare_handout(Workshop& workshop,
                                       FileId file,
                                       Diagnostics& to,
                                       Timings& timings);

}  // namespace platewright::cli
