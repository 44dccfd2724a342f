// SPDX-License-Identifier: MIT
// What a hand does unevenly: numbers that look random and are the same in every run.
#pragma once

#include <cmath>
#include <cstdint>

#include "base/geometry.h"

namespace platewright {

/// A number 0..1 for `n`.
inline double scatter(std::uint32_t n) {
    n = (n ^ 61U) ^ (n >> 16U);
    n *= 9U;
    n ^= n >> 4U;
    n *= 0x27d4eb2dU;
    n ^= n >> 15U;
    return n / 4294967295.0;
}

/// A number 0..1 that wanders slowly as `at` grows.
inline double drift(double at) {
    const double whole = std::floor(at);
    const double share = eased(at - whole);
    const auto n = static_cast<std::uint32_t>(static_cast<std::int64_t>(whole)) * 2654435U + 17U;
    return scatter(n) * (1 - share) + scatter(n + 2654435U) * share;
}

}  // namespace platewright
