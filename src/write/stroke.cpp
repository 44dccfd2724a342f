// SPDX-License-Identifier: MIT
// Checking dash patterns.
#include "write/stroke.h"

#include <cmath>

namespace platewright {

std::vector<double> usable_dash(const Stroke& stroke) {
    double sum = 0;
    for (const double part : stroke.dash) {
        if (!(part >= 0) || !std::isfinite(part)) {
            return {};
        }
        sum += part;
    }
    return sum > 0 ? stroke.dash : std::vector<double>();
}

}  // namespace platewright
