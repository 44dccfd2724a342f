// SPDX-License-Identifier: MIT
// How a regulation is written, told by an example.
#pragma once

#include <string_view>

namespace platewright {

/// A section of the reference page, in Markdown; each `yaml` block is a file by itself.
std::string_view regulation_guide();

}  // namespace platewright
