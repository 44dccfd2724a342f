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
#include "base/date.h"
#include "base/diagnostic.h"
#include "base/language.h"
#include "base/tincture.h"
#include "vocabulary/certainty.h"
#include "vocabulary/measure.h"
#include "vocabulary/property.h"

namespace platewright {

/// Written `none`.
struct None {
    friend bool operator==(None, None) = default;
};

/// A value of a property, checked for kind; colour and metal names, choices and free text are
/// strings. A phrase such as `the facing colour` is kept as what it stands for: `as facings.cloth`,
/// and `the regiment's facing colour` as `as the regiment's facings.cloth` (vocabulary/phrases.h).
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

/// Empty where nothing was written.
inline std::string text_of(const std::optional<WrittenText>& written) {
    return written ? written->text : std::string();
}

/// A day with its place. After `until` a month or a year alone stands for its last day.
struct WrittenDate {
    Date date;
    Span span;
};

/// What another source says of the same matter, where it is not followed.
struct OtherSource {
    WrittenText source;
    std::optional<WrittenText> says;
};

/// On what a statement rests; what is empty is inherited from the block, then from the file.
struct Grounds {
    std::optional<WrittenText> source;
    std::optional<Certainty> certainty;
    std::optional<WrittenText> why;
    std::vector<OtherSource> other_sources;
};

/// Groups of properties with what they rest on. A group may have grounds of its own.
struct Block {
    WrittenValues values;
    Grounds grounds;
    /// By group: `waistcoat: {cloth: buff, source: article 9}`.
    std::map<std::string, Grounds> group_grounds;
};

/// What was worn instead of what was ordered.
struct Departure {
    Block wear;
    std::optional<WrittenText> instead_of;
    /// Only for these; empty: for all.
    std::vector<WrittenText> companies;
    std::vector<WrittenText> ranks;
    std::vector<WrittenText> orders;
    std::optional<WrittenDate> from;
    std::optional<WrittenDate> until;
    Span span;
};

/// Years as written; `3.0` is exactly three.
struct WrittenYears {
    double years = 0;
    Span span;
};

/// One plate as described.
struct SpecifiedPlate {
    WrittenText title;
    /// The sheet is an index of the wardrobe, worn by this man.
    bool wardrobe = false;
    /// Second line of the caption, the year, who drew it, where the facts are from, remarks; empty
    /// if not written.
    std::optional<WrittenText> subtitle;
    std::optional<WrittenText> year;
    std::optional<WrittenText> drawn_by;
    std::optional<WrittenText> source;
    std::vector<WrittenText> notes;
    /// In which the sheet speaks; English if not written.
    std::optional<Language> language;
    /// Name of the template set; a folder of `templates/`.
    std::optional<WrittenText> figure;
    std::optional<WrittenText> rank;
    /// Views to draw, in this order; empty: front and back.
    std::vector<WrittenText> views;
    /// Parts to show enlarged: `cuff`, `collar`.
    std::vector<WrittenText> details;
    /// Things are named beside the figure.
    bool callouts = false;
    /// The man's place in a regulation; all empty on a plate that stands alone. `regiment` is the
    /// name of a file where it ends in `.yaml`, else a name of the series.
    std::optional<WrittenText> regulation;
    std::optional<WrittenText> regiment;
    std::optional<WrittenText> corps_class;
    std::optional<WrittenText> company;
    std::optional<WrittenYears> years_of_service;
    std::optional<WrittenText> order_of_dress;
    std::optional<WrittenDate> as_of;
    /// `worn: as ordered`: departures are left out.
    bool as_ordered = false;
    std::vector<Departure> departures;
    WrittenValues values;
    /// By group, as in Block.
    std::map<std::string, Grounds> group_grounds;
};

/// A named block of a regulation: a class of corps, a way of showing the colour, an order of dress.
struct NamedBlock {
    WrittenText name;
    std::optional<WrittenText> title;
    /// The title in the reader's language.
    std::optional<WrittenText> means;
    Block wear;
};

/// One regiment's place in a series.
struct SeriesPlace {
    int number = 0;
    std::optional<WrittenText> name;
    std::optional<WrittenText> shows;
    /// Metal of its buttons.
    std::optional<WrittenText> buttons;
    Span span;
};

/// The regiments of one distinguishing colour.
struct SeriesColour {
    WrittenText colour;
    std::optional<WrittenText> corps_class;
    std::vector<SeriesPlace> regiments;
    /// Nothing is meant to tell them apart.
    bool alike = false;
    Grounds grounds;
};

/// What a rule asks of a man: a fact or a property, and the words any of which will do.
struct Asked {
    enum class Fact { property, corps_class, regiment, company, rank, order, years };

    Fact fact = Fact::property;
    PropertyId property = 0;
    /// Names, numbers of regiments or values; `none` as a word.
    std::vector<WrittenText> words;
    /// For `years`: at least, or more than.
    double years = 0;
    bool more_than = false;
    Span span;
};

/// When these hold and none of those, wear this.
struct Rule {
    std::optional<WrittenText> name;
    std::vector<Asked> when;
    std::vector<Asked> unless;
    Block wear;
    Span span;
};

/// A kind of company, and how many men one of them has.
struct Company {
    NamedBlock block;
    std::optional<int> men;
};

/// A battalion, and how many companies of each kind it has.
struct Battalion {
    WrittenText name;
    std::vector<std::pair<WrittenText, int>> companies;
};

/// A rank; `like` is another from whose block it starts.
struct Rank {
    NamedBlock block;
    std::optional<WrittenText> like;
    bool officer = false;
};

/// A mark for years of service.
struct ServiceStep {
    double years = 0;
    bool more_than = false;
    /// Only for these; empty: for all.
    std::vector<WrittenText> ranks;
    Block wear;
    Span span;
};

/// A clothing regulation, or an amendment of one.
struct SpecifiedRegulation {
    WrittenText title;
    std::optional<WrittenDate> in_force_from;
    std::optional<WrittenDate> until;
    /// Path from this file.
    std::optional<WrittenText> amends;
    Grounds grounds;
    std::vector<std::pair<PropertyId, Span>> must_decide;
    Block everyone;
    std::vector<NamedBlock> classes;
    std::vector<NamedBlock> shows;
    std::vector<SeriesColour> series;
    std::vector<Rule> rules;
    std::vector<Company> companies;
    std::vector<Battalion> battalions;
    std::optional<std::pair<int, Span>> strength;
    std::vector<Rank> ranks;
    std::vector<ServiceStep> service;
    std::vector<NamedBlock> orders;
};

/// A regiment's own file.
struct SpecifiedRegiment {
    WrittenText name;
    /// Paths from this file.
    std::vector<WrittenText> regulations;
    std::optional<std::pair<int, Span>> number;
    std::optional<WrittenText> corps_class;
    Block wear;
    std::vector<Departure> departures;
};

/// What decides about a man besides his own plate; empty for a plate that stands alone.
struct Orders {
    /// One for each regulation that the regiment or the plate names: the base first, then what
    /// amends it, one after the other. Whether they are in force on the day is not yet asked.
    std::vector<std::vector<SpecifiedRegulation>> regulations;
    std::optional<SpecifiedRegiment> regiment;
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
    /// What it is called, and made of, on sheets of another language; empty if not written.
    struct Words {
        std::optional<WrittenText> name;
        std::string made_of;
    };

    WrittenText name;
    std::vector<WrittenText> other_names;
    SubstanceKind kind = SubstanceKind::cloth;
    Colour colour;
    /// What dye or cloth, source and certainty, as printed in keys; empty if not written.
    std::string made_of;
    std::string source;
    std::string certainty;
    /// Where it is not the nearest.
    std::optional<TinctureId> hatch;
    std::map<Language, Words> in;

    /// Name and dye as printed in a language, in English where the palette has no words of it.
    [[nodiscard]] const std::string& name_in(Language language) const {
        const auto words = in.find(language);
        return words != in.end() && words->second.name ? words->second.name->text : name.text;
    }

    [[nodiscard]] const std::string& made_of_in(Language language) const {
        const auto words = in.find(language);
        return words != in.end() && !words->second.made_of.empty() ? words->second.made_of
                                                                   : made_of;
    }
};

/// Colours in the order of the file.
struct SpecifiedPalette {
    std::string name;
    std::vector<PaletteEntry> entries;
};

}  // namespace platewright
