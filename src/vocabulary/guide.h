// SPDX-License-Identifier: MIT
// How a regulation is written, told by an example.
#pragma once

#include <string_view>

namespace platewright {

/// A section of the reference page, in Markdown; each `yaml` block is a file by itself.
std::string_view regulation_guide();

/// The part about the answers of commands with `--json`, in Markdown.
std::string_view answers_guide();

}  // namespace platewright
