// SPDX-License-Identifier: MIT
// What every reader of a file is handed.
#pragma once

#include "base/diagnostic.h"

namespace platewright {

/// The file that is being read and where its problems go.
struct ReadContext {
    const SourceMap& sources;
    FileId file = 0;
    Diagnostics& to;
    /// False after a fault of the notation: what is missing may stand in what could not be read.
    bool complete = true;
};

}  // namespace platewright
