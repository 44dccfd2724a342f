// SPDX-License-Identifier: MIT
// The decided uniform. Contract: every property of the table has a value, and every value has its
// reason.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "base/colour.h"
#include "base/date.h"
#include "base/diagnostic.h"
#include "base/language.h"
#include "base/tincture.h"
#include "vocabulary/certainty.h"
#include "vocabulary/measure.h"
#include "vocabulary/property.h"

namespace platewright {

/// Cloth, leather or metal with its final colour.
struct Material {
    std::string name;
    Colour colour;
    bool metal = false;
    /// What dye or cloth, for the key, in the language of the sheets; may be empty.
    std::string made_of = {};
    /// The name in that language; empty: the same.
    std::string translated = {};
    /// How it is hatched, where the palette says so.
    std::optional<TinctureId> hatch = std::nullopt;

    /// The name for sheets; all else goes by `name`.
    [[nodiscard]] const std::string& printed() const {
        return translated.empty() ? name : translated;
    }

    [[nodiscard]] TinctureId tincture() const {
        return hatch.value_or(metal ? nearest_tincture_of_metal(colour) : nearest_tincture(colour));
    }
};

/// Not worn, or left off.
struct Absent {};

/// Value by the property's kind: cloth, metal: Material; choice, words: string; count: int;
/// measure: Measure.
using Value = std::variant<Absent, Material, std::string, int, Measure>;

/// The value as a user would write it; `none` where it is not worn.
std::string word_of(const Value& value);

/// Not worn, or none of it.
bool is_nothing(const Value& value);

/// Who decided, weakest first. A custom speaks only where there is no regulation.
enum class Strength {
    initial,
    custom,
    regulation,
    corps_class,
    series,
    rule,
    regiment,
    company,
    rank,
    service,
    order,
    departure,
    plate
};

/// One word for scripts: `initial`, `custom` … `class`, `order of dress` … `plate`.
std::string_view strength_name(Strength strength);

/// What another source says, where it is not followed.
struct OtherOpinion {
    std::string source;
    std::string says;
};

/// One decision about one property.
struct Decision {
    Strength strength = Strength::initial;
    /// The value as written, or as it follows from another property.
    std::string as_written;
    /// Where; absent for the built-in default.
    std::optional<Span> span;
    /// "built-in default", "custom of the rank corporal", "series, crimson", "rule 'upright
    /// pockets'", "as coat.lining", "this plate".
    std::string reason;
    /// What the decision just before it comes to: not another one, but its value found.
    bool worked_out = false;
    /// The property whose value it takes, if it is another's.
    std::optional<PropertyId> follows;
    /// On what it rests: of its own, else of its block, else of its file. Empty if nobody says.
    std::string source;
    std::optional<Certainty> certainty;
    std::string why;
    std::vector<OtherOpinion> other_sources;
    /// Worn instead of what was ordered; `instead_of`: the rule, article or order in words.
    bool departure = false;
    std::string instead_of;
};

/// One property's value and how it came about.
struct Decided {
    Value value;
    /// Weakest first; the last one holds. Never empty.
    std::vector<Decision> chain;
};

/// A name of the regulation, its title there and what that means; empty if there is none.
struct Named {
    std::string name;
    std::string title;
    std::string means;
};

/// A regulation, or an amendment, that is in force.
struct NamedRegulation {
    std::string title;
    std::string source;
    std::optional<Date> in_force_from;
};

/// Who the man is: what decided about his dress besides his own plate. All empty for a plate that
/// stands alone.
struct Facts {
    /// In force on the day: the regulation, then its amendments.
    std::vector<NamedRegulation> regulations;
    std::string regiment;
    std::optional<int> number;
    Named corps_class;
    Named company;
    Named rank;
    bool officer = false;
    std::optional<double> years_of_service;
    Named order_of_dress;
    /// The day asked for, else the day of the newest regulation.
    std::optional<Date> day;
    /// Departures are left out.
    bool as_ordered = false;
};

/// A man, completely dressed, with what his plate must say.
struct Uniform {
    /// In which the sheets speak of him.
    Language language = Language::english;
    std::string title;
    std::string subtitle;
    std::string year;
    std::string drawn_by;
    std::string source;
    std::vector<std::string> notes;
    std::string rank;
    Facts facts;
    /// Template set.
    std::string figure;
    /// One for each row of the property table.
    std::vector<Decided> decided;

    [[nodiscard]] const Value& value(PropertyId id) const { return decided[id].value; }

    /// The value as a user would write it; `none` where it is not worn. For conditions, dumps and
    /// captions.
    [[nodiscard]] std::string word(PropertyId id) const;

    /// Whether the property says anything of this man: the lace of the loops, where there are some.
    [[nodiscard]] bool speaks(PropertyId id) const;

    /// The material of a cloth or metal property, or nullptr where it is `none`.
    [[nodiscard]] const Material* material(PropertyId id) const;

    /// The number of a count; 0 where it is `none`.
    [[nodiscard]] int count(PropertyId id) const;
};

/// What a property's thing is called on this man: one service badge is not called badges,
/// and a sword that hangs from the belts has only a frog.
std::string_view called_on(const Uniform& man, PropertyId id);

/// The same, by what is seen of it: of a sword belt under the skirts of a coat, the frog alone.
std::string_view seen_as(const Uniform& man, PropertyId id);

}  // namespace platewright
