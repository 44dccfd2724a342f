// SPDX-License-Identifier: MIT
// The unit of a man's orders, and lengths in it.
#include <cmath>
#include <numeric>
#include <variant>

#include "pattern/dimensions.h"

namespace platewright {

OwnUnit own_unit_of(const Uniform& uniform) {
    for (PropertyId id = 0; id < properties().size(); ++id) {
        const auto* measure = std::get_if<Measure>(&uniform.value(id));
        if (measure == nullptr || uniform.decided[id].chain.back().strength == Strength::initial) {
            continue;
        }
        for (const LengthUnit& unit : length_units()) {
            const bool metric = unit.name == "mm" || unit.name == "cm" || unit.name == "m";
            if (!metric && measure->printed.ends_with(" " + std::string(unit.name))) {
                return {std::string(unit.name), unit.mm};
            }
        }
    }
    return {};
}

std::string in_eighths(double mm, const OwnUnit& unit) {
    // Of the millimetres that are printed beside it: a figure has one length, not two.
    const long eighths = std::lround(std::round(mm) / unit.mm * 8);
    const long whole = eighths / 8;
    const long rest = eighths % 8;
    std::string words = whole > 0 || rest == 0 ? std::to_string(whole) : "";
    if (rest > 0) {
        const long divisor = std::gcd(rest, 8L);
        words += (words.empty() ? "" : " ") + std::to_string(rest / divisor) + "/" +
                 std::to_string(8 / divisor);
    }
    return words + " " + unit.name;
}

}  // namespace platewright
