// SPDX-License-Identifier: MIT
// Free text: titles, names, remarks.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "read/context.h"
#include "read/specified.h"
#include "read/tree.h"

namespace platewright {

/// The words of one text, blanks at both ends left out, line ends and runs of spaces made one
/// space. `key` as the user knows it; at most `most` characters. Errors: read.wrong-kind,
/// read.control-character, read.out-of-range.
std::optional<WrittenText> read_words(const Item& item,
                                      const std::string& key,
                                      std::size_t most,
                                      const ReadContext& context);

/// The text of an entry; also read.missing-value.
std::optional<WrittenText> read_text(const TreeEntry& entry,
                                     std::size_t most,
                                     const ReadContext& context);

/// One text, or a list of texts. What is wrong is left out.
std::vector<WrittenText> read_texts(const TreeEntry& entry,
                                    std::size_t most,
                                    const ReadContext& context);

/// `~` or `null` without quotes: the notation's word for nothing, which is not a word of ours.
bool is_null_word(const Item& item);

}  // namespace platewright
