// SPDX-License-Identifier: MIT
// Text in columns, for answers that are read in a terminal.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace platewright::cli {

/// Answers are set to this many columns; only what cannot be broken is longer.
inline constexpr std::size_t kAnswerColumns = 100;

/// How far in the lines under a heading stand, and each deeper step.
inline constexpr std::size_t kIndent = 2;

/// Columns a text takes as it is shown.
std::size_t columns_of(std::string_view text);

/// The text as it is shown, filled up with blanks to that many columns.
std::string padded(std::string_view text, std::size_t columns);

/// The text broken between words, every line after `indent` blanks and with a line end; lines after
/// the first begin `hanging` blanks further in.
std::string wrapped(std::string_view text, std::size_t indent, std::size_t hanging = 0);

/// "a, b and c".
std::string and_list(const std::vector<std::string>& words);

/// Rows whose cells stand under each other, two blanks apart, after `indent` blanks. What follows
/// the last filled cell of a row is left out.
class Columns {
  public:
    explicit Columns(std::size_t indent) : indent_(indent) {}

    void add(std::vector<std::string> cells) { rows_.push_back(std::move(cells)); }

    [[nodiscard]] bool empty() const { return rows_.empty(); }

    /// Every row with a line end.
    [[nodiscard]] std::string text() const;

  private:
    std::size_t indent_;
    std::vector<std::vector<std::string>> rows_;
};

}  // namespace platewright::cli
