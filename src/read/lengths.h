// SPDX-License-Identifier: MIT
// Lengths within limits, and a man's measures.
#pragma once

#include <array>
#include <optional>
#include <string>

#include "read/context.h"
#include "read/specified_sheets.h"
#include "read/tree.h"

namespace platewright {

/// A length from `least` to `most` mm; `none` is no length, and no error. Errors: read.wrong-kind,
/// read.out-of-range.
std::optional<WrittenLength> read_length(const TreeEntry& entry,
                                         double least,
                                         double most,
                                         const ReadContext& context);

/// Measures in the order of `BodyMeasure`; `owner` is what they belong to, in messages.
using WrittenBody = std::array<std::optional<WrittenLength>, kBodyMeasures>;
void read_body(const TreeEntry& entry,
               const std::string& owner,
               WrittenBody& body,
               const ReadContext& context);

}  // namespace platewright
