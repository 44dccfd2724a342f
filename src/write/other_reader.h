// SPDX-License-Identifier: MIT
// What another program makes of an SVG file.
#pragma once

#include <cstddef>
#include <optional>
#include <string>

namespace platewright {

/// Why another program refuses an SVG, and where: both 1-based, 0 if it does not say.
struct Refusal {
    std::string why;
    std::size_t line = 0;
    std::size_t column = 0;
};

/// What librsvg says when it cannot open or draw the SVG; nothing if it can. Our own reader of
/// templates is more forgiving than editors and browsers are, and a template must open in those
/// too. Reads no other file and nothing from a network.
std::optional<Refusal> other_reader_refusal(const std::string& svg);

}  // namespace platewright
