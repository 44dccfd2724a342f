// SPDX-License-Identifier: MIT
// What was written: sparse, every value with its place. Contract: scalars are checked against the
// property's kind (number, choice, length), but colours, metals and ranks are still names.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "base/colour.h"
#include "base/diagnostic.h"
#include "vocabulary/measure.h"
#include "vocabulary/property.h"

namespace platewright {

/// Written `none`.
struct None {
    friend bool operator==(None, None) = default;
};

/// A value of a property, checked for kind; colour and metal names, choices and free text are
/// strings.
using WrittenValue = std::variant<None, std::string, int, Measure>;

/// A value with its place.
struct Written {
    WrittenValue value;
    Span span;
};

/// What was written of the properties, in table order.
using WrittenValues = std::map<PropertyId, Written>;

/// Free text with its place.
struct WrittenText {
    std::string text;
    Span span;
};

/// One plate as described.
struct SpecifiedPlate {
    WrittenText title;
    /// Second line of the caption, the year, who drew it, where the facts are from, remarks; empty
    /// if not written.
    std::optional<WrittenText> subtitle;
    std::optional<WrittenText> year;
    std::optional<WrittenText> drawn_by;
    std::optional<WrittenText> source;
    std::vector<WrittenText> notes;
    /// Name of the template set; a folder of `templates/`.
    std::optional<WrittenText> figure;
    std::optional<WrittenText> rank;
    WrittenValues values;
};

/// What a rank wears by custom, where no regulation says.
struct SpecifiedCustoms {
    struct Rank {
        WrittenText name;
        WrittenValues values;
    };

    std::vector<Rank> ranks;
};

/// One colour of a palette.
struct PaletteEntry {
    WrittenText name;
    std::vector<WrittenText> other_names;
    SubstanceKind kind = SubstanceKind::cloth;
    Colour colour;
    /// What dye or cloth, source and certainty, as printed in keys; empty if not written.
    std::string made_of;
    std::string source;
    std::string certainty;
};

/// Colours in the order of the file.
struct SpecifiedPalette {
    std::string name;
    std::vector<PaletteEntry> entries;
};

}  // namespace platewright
