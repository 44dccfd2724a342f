// SPDX-License-Identifier: MIT
// The one table of everything that can be said of a uniform. Reading, checking, suggestions, `explain`, the JSON Schema,
// the reference page and the conditions in templates are all made from it.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <string_view>

namespace platewright {

enum class Kind {
    cloth,    // a colour of the palette, or #rrggbb
    metal,    // a metal of the palette
    choice,   // one of `choices`
    count,    // a whole number, `least` to `most`
    measure,  // a length with its unit
    words     // free text, at most `most` characters
};

/// One row of the table.
struct Property {
    /// Group and name, as written in YAML: `lapels.cloth` is `lapels: {cloth: …}`.
    std::string_view key;
    Kind kind = Kind::words;
    /// What holds when nobody says otherwise, as it would be written. `as coat.lining`: the same as that property.
    std::string_view initial;
    /// For `choice`: the words, separated by `|`. A word may have other names: `horizontal=cross`.
    std::string_view choices;
    /// May be `none`: not worn, or left off.
    bool may_be_none = false;
    int least = 0;
    int most = 0;
    /// The group may be written with one word, and this is what the word means: `pockets: vertical`.
    bool main = false;
    /// One line for the reference page.
    std::string_view meaning;
};

/// Row number in the table.
using PropertyId = std::size_t;

/// All rows, in the order of dressing; groups stand together.
std::span<const Property> properties();

/// The row with that key, or nothing.
std::optional<PropertyId> find_property(std::string_view key);

/// The row with that key; for keys written in code. Throws std::logic_error on a slip of ours.
PropertyId property_id(std::string_view key);

/// One allowed word of a choice with its other names.
struct Choice {
    std::string_view word;
    std::string_view other_name;  // empty if none
};

/// The allowed words of a `choice`, in table order.
std::span<const Choice> choices_of(PropertyId id);

/// `Kind` in words for messages: "a colour", "a whole number from 0 to 12" …
std::string_view kind_name(Kind kind);

}  // namespace platewright
