// SPDX-License-Identifier: MIT
// The decided uniform. Contract: every property of the table has a value, and every value has its
// reason.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "base/colour.h"
#include "base/diagnostic.h"
#include "vocabulary/measure.h"
#include "vocabulary/property.h"

namespace platewright {

/// Cloth, leather or metal with its final colour.
struct Material {
    std::string name;
    Colour colour;
    bool metal = false;
    /// What dye or cloth, for the key; may be empty.
    std::string made_of;
};

/// Not worn, or left off.
struct Absent {};

/// Value by the property's kind: cloth, metal: Material; choice, words: string; count: int;
/// measure: Measure.
using Value = std::variant<Absent, Material, std::string, int, Measure>;

/// Who decided, weakest first. More strengths join as regulations come.
enum class Strength { initial, custom, plate };

/// One decision about one property.
struct Decision {
    Strength strength = Strength::initial;
    /// The value as written, or as it follows from another property.
    std::string as_written;
    /// Where; absent for the built-in default.
    std::optional<Span> span;
    /// "built-in default", "custom of the rank corporal", "as coat.lining", "this plate".
    std::string reason;
};

/// One property's value and how it came about.
struct Decided {
    Value value;
    /// Weakest first; the last one holds. Never empty.
    std::vector<Decision> chain;
};

/// A man, completely dressed, with what his plate must say.
struct Uniform {
    std::string title;
    std::string subtitle;
    std::string year;
    std::string drawn_by;
    std::string source;
    std::vector<std::string> notes;
    std::string rank;
    /// Template set.
    std::string figure;
    /// One for each row of the property table.
    std::vector<Decided> decided;

    [[nodiscard]] const Value& value(PropertyId id) const { return decided[id].value; }

    /// The value as a user would write it; `none` where it is not worn. For conditions, dumps and
    /// captions.
    [[nodiscard]] std::string word(PropertyId id) const;

    /// The material of a cloth or metal property, or nullptr where it is `none`.
    [[nodiscard]] const Material* material(PropertyId id) const;

    /// The number of a count; 0 where it is `none`.
    [[nodiscard]] int count(PropertyId id) const;
};

}  // namespace platewright
