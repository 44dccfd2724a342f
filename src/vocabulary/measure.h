// SPDX-License-Identifier: MIT
// Lengths as the trade writes them: the printed words and unit are kept beside exact millimetres.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace platewright {

/// A length as it was printed. `mm` is exact to the definition of the unit.
struct Measure {
    double mm = 0;
    std::string printed;

    friend bool operator==(const Measure&, const Measure&) = default;
};

/// One unit of the trade.
struct LengthUnit {
    /// As written after the number: `in`, `Zoll rhineland`, `ligne paris`, `line`.
    std::string_view name;
    /// Other ways to write it, separated by `|`; capitals and the order of its words do not matter.
    std::string_view other_names;
    double mm = 0;
    /// Where the number comes from.
    std::string_view source;
};

/// Every unit that may be written, our own first, then country by country.
std::span<const LengthUnit> length_units();

/// Reads `11 cm`, `3 1/2 in`, `3½ in`, `3.5 in`, `3,5 cm`, `2 Zoll rhineland`, `24 line`. A number
/// alone, or a unit that is not the same in every country, is refused. On failure `problem` says
/// what is wrong and what to write.
std::optional<Measure> parse_measure(std::string_view text, std::string& problem);

}  // namespace platewright
