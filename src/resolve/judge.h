// SPDX-License-Identifier: MIT
// Weighing what was said to one decision a property; part of the second stage.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/diagnostic.h"
#include "resolve/colours.h"
#include "resolve/statements.h"
#include "resolve/uniform.h"

namespace platewright {

/// A property as it came out; no value after an error.
struct Verdict {
    std::optional<Value> value;
    std::vector<Decision> chain;
};

/// Of two men's verdicts, what `as the regiment's coat.cloth` and a number on the buttons mean.
struct OfRegiment {
    /// Any man of the regiment, one verdict a property; null: this man is he.
    const std::vector<Verdict>* verdicts = nullptr;
    std::optional<int> number;
};

/// The value a name or a colour has in that property, told whatever else is decided; empty if
/// there is none, or if it follows another property.
std::optional<Value> plain_value(PropertyId id,
                                 const WrittenValue& written,
                                 const ColourBook& colours);

/// What was said, by reference: it must outlive the judging.
using StatementList = std::vector<const Statement*>;

/// Weighs the statements and the built-in defaults: for each property the strongest holds, and of
/// one strength the latest layer. Follows what is the same as another property. One verdict for
/// each row of the table; every chain in order of strength, and empty unless `on_record`. Errors:
/// resolve.conflict, resolve.unknown-colour, resolve.unknown-metal, resolve.unknown-property (to
/// follow), resolve.circle, resolve.wrong-kind. One about a default that no palette has is without
/// a place.
std::vector<Verdict> judge(const StatementList& statements,
                           const OfRegiment& regiment,
                           const ColourBook& colours,
                           bool on_record,
                           Diagnostics& to);

/// Adds resolve.unknown-colour or resolve.unknown-metal.
void report_colour(PropertyId id,
                   const std::string& name,
                   const std::optional<Span>& span,
                   const ColourBook& colours,
                   Diagnostics& to);

}  // namespace platewright
