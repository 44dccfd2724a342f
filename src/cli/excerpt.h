// SPDX-License-Identifier: MIT
// A line of a source file as it is shown under a message.
#pragma once

#include <string>
#include <string_view>

namespace platewright::cli {

/// Text that is safe on a terminal: control characters, directions of writing and broken bytes are
/// made visible. With `columns`, the number of columns it takes is added to it.
std::string visible(std::string_view text, std::size_t* columns = nullptr);

/// The line and the underline of its bytes `begin` to `end`, each indented by `indent` spaces and
/// with a line end. Long lines are cut on both sides to what fits into a terminal.
std::string excerpt(std::string_view line, std::size_t begin, std::size_t end, std::size_t indent);

}  // namespace platewright::cli
