// SPDX-License-Identifier: MIT
// Characters of a UTF-8 string.
#pragma once

#include <string_view>
#include <vector>

namespace platewright {

/// The characters of valid UTF-8 (see `printable`).
std::vector<char32_t> characters(std::string_view utf8);

}  // namespace platewright
