// SPDX-License-Identifier: MIT
// What a sheet is printed with.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

namespace platewright {

/// In colour; in greys of the same lightness; or in black lines on white, each colour hatched as
/// heraldry does, for a photocopier.
enum class Ink { colour, greyscale, hatched };

/// The words of the option, in the order of the enumeration.
inline constexpr std::array<std::string_view, 3> kInkNames{"colour", "greyscale", "hatched"};

/// The ink of that name, or nothing.
constexpr std::optional<Ink> find_ink(std::string_view name) {
    for (std::size_t i = 0; i < kInkNames.size(); ++i) {
        if (kInkNames.at(i) == name) {
            return static_cast<Ink>(i);
        }
    }
    return std::nullopt;
}

}  // namespace platewright
