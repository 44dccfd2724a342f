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
};

}  // namespace platewright
