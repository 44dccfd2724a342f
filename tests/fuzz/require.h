// SPDX-License-Identifier: MIT
// A check that holds in every build: the fuzzer and the replay both see it fail.
#pragma once

#include <cstdlib>

namespace platewright::fuzz {

/// Ends the program where `holds` is false.
inline void require(bool holds) {
    if (!holds) {
        std::abort();
    }
}

}  // namespace platewright::fuzz
