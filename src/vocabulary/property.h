// SPDX-License-Identifier: MIT
// The one table of everything that can be said of a uniform. Reading, checking, suggestions,
// `explain`, the JSON Schema, the reference page and the conditions in templates are all made from
// it.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace platewright {

/// What sort of value a property has.
enum class Kind {
    cloth,     // a colour of the palette, or #rrggbb
    metal,     // a metal of the palette, or #rrggbb
    choice,    // one of `choices`
    count,     // a whole number, `least` to `most`
    measure,   // a length with its unit, `least` to `most` mm
    ornament,  // a drawing of `templates/ornaments/`, or a file of the user's own
    words      // free text, at most `most` characters
};

/// What has to be done where a property is to have another value.
enum class Work {
    none,     // nothing: it is the man himself, or only a way of speaking
    garment,  // another garment
    sewn,     // something sewn on a garment: taken off, sewn on, or changed
    kit       // a thing taken up or laid aside
};

/// What a palette's colour is a colour of; also the names of a palette's sections.
enum class SubstanceKind { cloth, metal, leather, skin, hair };

/// One row of the table.
struct Property {
    /// Group and name, as written in YAML: `lapels.cloth` is `lapels: {cloth: …}`.
    std::string_view key = {};
    Kind kind = Kind::words;
    /// What holds when nobody says otherwise, as it would be written. `as coat.lining`: the same as
    /// that property; `as lapels.cloth or facings.cloth`: the same as the first of them that is not
    /// `none`.
    std::string_view initial = {};
    /// For `choice`: the words, separated by `|`. A word may have other names: `horizontal=cross`.
    std::string_view choices = {};
    /// May be `none`: not worn, or left off; a count of `none` is 0.
    bool may_be_none = false;
    int least = 0;
    int most = 0;
    /// The group may be written with one word, and this is what the word means: `pockets:
    /// vertical`. See `property_of_word`.
    bool main = false;
    /// For `cloth` and `metal`: the section of the palettes a name is looked up in first.
    SubstanceKind substance = SubstanceKind::cloth;
    /// One line for the reference page.
    std::string_view meaning = {};
    /// What keys and lists call it: `lapel piping`; empty: the name of the group.
    std::string_view place = {};
    /// The condition under which it says anything: the lace of the loops, where there are loops.
    std::string_view speaks_when = {};
    /// Another condition under which it does: a scabbard is worn with a bayonet, or else with a
    /// sword. Empty: there is none.
    std::string_view or_when = {};
    /// The frame of the templates (`cuff`) that shows it best; empty: the whole figure.
    std::string_view frame = {};
    Work work = Work::sewn;
    /// What the index of the wardrobe shows where the default is `none`; empty: white.
    std::string_view example = {};

    /// `lapels` and `cloth` of `lapels.cloth`.
    [[nodiscard]] std::string_view group() const { return key.substr(0, key.find('.')); }

    [[nodiscard]] std::string_view name() const { return key.substr(key.find('.') + 1); }

    /// `lapel piping`.
    [[nodiscard]] std::string_view called() const { return place.empty() ? group() : place; }
};

/// Longest name of an ornament, or of the file it is drawn in, in characters.
inline constexpr int kLongestOrnament = 200;

/// Row number in the table.
using PropertyId = std::size_t;

/// All rows, in the order of dressing; groups stand together.
std::span<const Property> properties();

/// Rows that a reader looks for together, under one heading of the index.
struct Chapter {
    std::string_view title;
    std::span<const Property> rows;
};

/// "Under the coat", "The coat" … in the order of the table; together all of its rows.
std::span<const Chapter> chapters();

/// The row with that key, or nothing.
std::optional<PropertyId> find_property(std::string_view key);

/// The row with that key; for keys written in code. Throws std::logic_error on a slip of ours.
PropertyId property_id(std::string_view key);

/// The key most like a misspelt one; for the name of a group, its main property: `lapels.cloth` for
/// `lapels`. Nothing if none is near.
std::optional<std::string> nearest_property(std::string_view written);

/// The names of the groups, in table order.
std::span<const std::string_view> groups();

/// What a group written with one word speaks of: `collar: standing` of `collar.shape`, `collar:
/// red` of `collar.cloth`. A choice that knows the word comes first. Empty if the group has no
/// one-word form.
std::optional<PropertyId> property_of_word(std::string_view group, std::string_view word);

/// One allowed word of a choice with its other names.
struct Choice {
    std::string_view word;
    std::string_view other_name;  // empty if none
};

/// The allowed words of a `choice`, in table order, without `none`; empty for other kinds.
std::span<const Choice> choices_of(PropertyId id);

/// The table's own word for a choice as a user wrote it (other names and capitals accepted), or
/// nothing.
std::optional<std::string_view> find_choice(PropertyId id, std::string_view written);

/// How to write a word that a property does not know where another of its group does: `lapels:
/// {shape: half}` for a `half` among colours. Empty if none does.
std::string written_where_known(PropertyId id, std::string_view word);

/// `Kind` in words for messages: "a colour", "a whole number" …
std::string_view kind_name(Kind kind);

/// What may be written for a property, for messages: "a whole number from 0 to 12", "falling,
/// standing or none".
std::string expectation(PropertyId id);

/// A substance's section in palette files: `cloth`, `metal`, `leather`, `skin`, `hair`.
std::string_view substance_name(SubstanceKind kind);

/// The substance of a section's name, or nothing.
std::optional<SubstanceKind> find_substance(std::string_view section);

/// What `as lapels.cloth or facings.cloth` names: the words after `as `, parted at ` or `. Empty if
/// `written` is not of that form.
std::vector<std::string_view> followed(std::string_view written);

/// The template set of a plate that names none.
inline constexpr std::string_view kDefaultFigure = "line-infantry";

}  // namespace platewright
