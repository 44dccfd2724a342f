// SPDX-License-Identifier: MIT
// "When" in plain words: `cuffs.shape = slashed and lapels.cloth`. Used by templates, later by
// regulations.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "vocabulary/property.h"

namespace platewright {

/// One term: the property is (or, `negated`, is not) one of `words`; no words: it is anything but
/// `none`.
struct Term {
    PropertyId property = 0;
    bool negated = false;
    std::vector<std::string> words;
};

/// All terms must hold; none: always.
using Condition = std::vector<Term>;

/// Reads `a.b = x or y and c.d != z and e.f and not g.h`. On failure `problem` says what is wrong
/// and suggests.
std::optional<Condition> parse_condition(std::string_view text, std::string& problem);

/// `value_of` gives a property's value as the word a user would write; `none` where it is not worn.
bool holds(const Condition& condition, const std::function<std::string(PropertyId)>& value_of);

/// Whether a property says anything of a man (`Property::speaks_when`).
bool speaks(PropertyId id, const std::function<std::string(PropertyId)>& value_of);

}  // namespace platewright
