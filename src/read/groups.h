// SPDX-License-Identifier: MIT
// Groups of properties, the same wherever they are written: on a plate, in the customs of a rank,
// in regulations.
#pragma once

#include <string_view>

#include "read/context.h"
#include "read/specified.h"
#include "read/tree.h"

namespace platewright {

/// `coat`, `lapels` …
bool is_group(std::string_view key);

/// Reads `coat: {cloth: red, lining: white}` or `coat: red` and adds the values to `into`. What is
/// wrong is left out. Errors: read.unknown-key, read.missing-value, read.wrong-kind,
/// read.unknown-choice, read.out-of-range, read.no-colon.
void read_group(const TreeEntry& entry, WrittenValues& into, const ReadContext& context);

/// The same with what it rests on: `waistcoat: {cloth: buff, source: article 9}`.
void read_group(const TreeEntry& entry, Block& into, const ReadContext& context);

/// One value of a property, checked for kind.
std::optional<Written> read_value(PropertyId id,
                                  const TreeEntry& entry,
                                  const ReadContext& context);

}  // namespace platewright
