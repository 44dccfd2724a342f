// SPDX-License-Identifier: MIT
// The only door to yaml-cpp: a stretch of text to a tree with exact places, or the one fault that
// stopped it.
#pragma once

#include <optional>
#include <string_view>

#include "base/diagnostic.h"
#include "read/tree.h"

namespace platewright {

/// Why reading stopped.
enum class Trouble {
    /// A colon where none can be.
    colon,
    /// A line that belongs to nothing: indentation, a comma, words after a closing quote.
    stray,
    /// A brace or bracket is not closed where it should be.
    brace,
    quote,
    escape,
    /// A value begins with a character that means something else.
    first_character,
    /// `- ` in the middle of a line.
    dash,
    alias,
    tag,
    /// Line further left than the first.
    outdented,
    too_deep,
    too_many,
    other
};

/// The one place where the parser gave up.
struct Fault {
    Trouble trouble = Trouble::other;
    /// Where it was noticed, in the text.
    std::size_t at = 0;
    /// Where the innermost brace or bracket or the quote that was still open begins.
    std::optional<std::size_t> opened;
};

/// What was read; the root is empty after a fault.
struct Parsed {
    Item root;
    std::optional<Fault> fault;
};

/// Parses the bytes `begin` to `end` of `text`; places count from the beginning of `text`. Smaller
/// slips that do not stop the reading (aliases, tags, keys without a colon) are added to `to` at
/// once.
Parsed parse_yaml(
    std::string_view text, std::size_t begin, std::size_t end, FileId file, Diagnostics& to);

/// What the fault means, in the user's words, added to `to`.
void explain(const Fault& fault, std::string_view text, FileId file, Diagnostics& to);

/// A value that begins with `*`, `&` or `!`. Errors: read.alias, read.tag.
void report_reference(std::string_view text, std::size_t at, FileId file, Diagnostics& to);

/// A line or an entry without colon, or with nothing after it: `coat red`, `coat:red`.
void report_no_colon(std::string_view words, Span span, Diagnostics& to);

}  // namespace platewright
