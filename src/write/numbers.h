// SPDX-License-Identifier: MIT
// Numbers in drawing files: as short as the eye allows.
#pragma once

#include <cstdint>
#include <string>

namespace platewright {

/// A length counted in steps of 10^-places; what is not a number or beyond ±9·10^15 steps is 0.
std::int64_t to_steps(double value, int places);

/// Appends `steps` of 10^-places: no trailing zeros, no zero before the point, never "-0": `-.5`,
/// `12`, `0`.
void append_steps(std::string& to, std::int64_t steps, int places);

/// Appends `value` with at most `places` decimal places, in the same way.
void append_short(std::string& to, double value, int places);

}  // namespace platewright
