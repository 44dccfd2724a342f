// SPDX-License-Identifier: MIT
// Small text services: UTF-8, suggestions for misspelt words, numbers as text.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace platewright {

/// Byte offset of the first byte that is not valid UTF-8 (overlong forms and surrogates included),
/// or nothing.
std::optional<std::size_t> invalid_utf8(std::string_view text);

/// Number of characters (code points) in valid UTF-8.
std::size_t count_characters(std::string_view text);

/// The candidate nearest to `word` within a third of its length (Damerau-Levenshtein, case
/// ignored), or nothing.
std::optional<std::string> nearest_word(std::string_view word,
                                        std::span<const std::string> candidates);

/// "a", "a or b", "a, b or c".
std::string or_list(std::span<const std::string> words);

/// "a, b, c".
std::string comma_list(std::span<const std::string> words);

/// The word in quotes, as messages show what the user wrote: 'red'.
std::string quoted(std::string_view word);

/// Shortest decimal with at most `decimals` places, no trailing zeros, never "-0".
std::string format_number(double value, int decimals);

/// Appends what `format_number` gives; for writers that make many.
void append_number(std::string& to, double value, int decimals);

/// Letters a to z small; every other character as it is.
std::string lower(std::string_view ascii);

/// The words with their first letter a capital, if it is one of a to z or an accented letter of
/// western Europe (U+00E0 to U+00FE).
std::string with_capital(std::string words);

/// Without the spaces, tabs and line ends at both ends.
std::string_view trim(std::string_view text);

/// The parts between the separators, empty ones too.
std::vector<std::string_view> split(std::string_view text, char separator);

}  // namespace platewright
