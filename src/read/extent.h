// SPDX-License-Identifier: MIT
// Where a piece of YAML ends: the parser tells only where it begins. All offsets are bytes of
// `text`.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace platewright {

/// The end of a piece and what kind it is.
struct Extent {
    std::size_t end = 0;
    bool quoted = false;
    /// False for a quote that is never closed.
    bool closed = true;
};

/// The piece that begins at `at` and was read as `value`: plain, quoted, or in a block after `|` or
/// `>`.
Extent extent_of(std::string_view text, std::size_t at, std::string_view value);

/// Just after the `~` or `null` (three spellings) at `at`; `at` if there is none.
std::size_t end_of_null_word(std::string_view text, std::size_t at);

/// Just after the run of bytes without blanks and signs of the notation; at least one character, if
/// there is one.
std::size_t end_of_word(std::string_view text, std::size_t at);

/// Just after `!tag` and `&anchor` words and the blanks behind them.
std::size_t after_properties(std::string_view text, std::size_t at);

/// Just after the next `sign` that is not in a remark; the end of the text if there is none.
std::size_t after_sign(std::string_view text, std::size_t at, char sign);

/// Past blanks, line ends and remarks.
std::size_t after_blanks(std::string_view text, std::size_t at);

/// The next sign after blanks and remarks is a colon.
bool has_colon(std::string_view text, std::size_t at);

/// Just after that colon, or `at`.
std::size_t after_colon(std::string_view text, std::size_t at);

/// The first byte that is neither blank, nor in a remark, nor one of `: , { } [ ] -`.
std::optional<std::size_t> first_unexplained(std::string_view text,
                                             std::size_t begin,
                                             std::size_t end);

}  // namespace platewright
