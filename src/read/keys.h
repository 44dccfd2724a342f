// SPDX-License-Identifier: MIT
// Keys that are not known, entries without a value, and values of the wrong form.
#pragma once

#include <string>
#include <vector>

#include "read/context.h"
#include "read/tree.h"

namespace platewright {

/// Says that `owner` ("a plate", "'coat'") has no such key, and where it may belong. `group` is the
/// group of properties it stands in, empty if in none; `known` are the keys there. Error:
/// read.unknown-key.
void report_unknown_key(const TreeEntry& entry,
                        const std::string& owner,
                        const std::string& group,
                        const std::vector<std::string>& known,
                        const ReadContext& context);

/// Says that nothing follows the colon, and why, if the reason can be seen. `hint` says what to
/// write there. Error: read.missing-value.
void report_no_value(const TreeEntry& entry, const std::string& hint, const ReadContext& context);

/// Says that a list or a group stands where something else is wanted. `key` as the user knows it,
/// `hint` what to write. Error: read.wrong-kind. For a broken value nothing is said.
void report_form(const Item& item,
                 const std::string& key,
                 const std::string& hint,
                 const ReadContext& context);

/// Only the sign or the first word of a long value, for the underline.
Span head_of(const Item& item);

/// The entry with that key, or null.
const TreeEntry* find_entry(const Item& group, std::string_view key);

/// A user's word in quotes, shortened if it is very long.
std::string shown(std::string_view words);

}  // namespace platewright
