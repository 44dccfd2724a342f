// SPDX-License-Identifier: MIT
// Exit codes, fixed numbers.
#pragma once

#include <algorithm>

namespace platewright::cli {

/// The higher, the worse: several files end with the highest.
enum ExitCode : int {
    done = 0,
    bad_data = 1,
    bad_usage = 2,
    cannot_read_or_write = 3,
    our_fault = 70
};

/// The one that a run of both ends with.
inline ExitCode worse(ExitCode a, ExitCode b) {
    return std::max(a, b);
}

}  // namespace platewright::cli
