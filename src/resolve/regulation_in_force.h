// SPDX-License-Identifier: MIT
// The regulation as it stood on a day, its amendments laid over it; part of the second stage.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/diagnostic.h"
#include "read/specified.h"
#include "resolve/uniform.h"

namespace platewright {

// Everything here points into the `Orders` it was made from.

/// What one edition (0: the base, then its amendments) says of something.
struct EditionPart {
    const NamedBlock* block = nullptr;
    int edition = 0;
};

/// Something the regulation knows by a name, with what its editions say of it, base first.
struct Entry {
    std::string name;
    std::vector<EditionPart> parts;

    [[nodiscard]] Named named() const;
};

/// A company and the men it has, if that is written.
struct CompanyEntry : Entry {
    std::optional<int> men;
};

/// A rank; `like`: the rank whose dress it begins with, or null.
struct RankEntry : Entry {
    const WrittenText* like = nullptr;
    bool officer = false;
};

/// A word of the series, with where it is from; no text: nobody says.
struct SeriesWord {
    const WrittenText* text = nullptr;
    int edition = 0;
    const Grounds* grounds = nullptr;
};

/// A regiment's place in the series. An amendment replaces what it says and leaves the rest.
struct PlaceInForce {
    int number = 0;
    Span span;
    SeriesWord name;
    SeriesWord colour;
    SeriesWord corps_class;
    SeriesWord shows;
    SeriesWord buttons;
    /// Meant to look like others that are so too.
    bool alike = false;

    /// `regiment 3 (Varrenau)`.
    [[nodiscard]] std::string called() const;
};

/// A rule with the edition it stands in.
struct RuleInForce {
    const Rule* rule = nullptr;
    int edition = 0;

    /// `rule 'upright pockets'`; without a name `a rule without a name`.
    [[nodiscard]] std::string called() const;
};

/// A step of service with the edition it stands in.
struct ServiceInForce {
    const ServiceStep* step = nullptr;
    int edition = 0;
};

/// All that is in force on the day.
struct InForce {
    /// The base, then the amendments.
    std::vector<const SpecifiedRegulation*> editions;
    std::optional<Date> day;
    std::vector<Entry> classes;
    std::vector<Entry> shows;
    std::vector<Entry> orders;
    std::vector<CompanyEntry> companies;
    std::vector<RankEntry> ranks;
    /// By number; of two of one number in one edition only the first.
    std::vector<PlaceInForce> places;
    /// In the order written; an amendment's rule stands where that of its name stood.
    std::vector<RuleInForce> rules;
    /// From few years to many.
    std::vector<ServiceInForce> service;
    /// By name, as above.
    std::vector<const Battalion*> battalions;
    std::optional<std::pair<int, Span>> strength;
    std::vector<std::pair<PropertyId, Span>> must_decide;

    /// Grounds of the file an edition stands in.
    [[nodiscard]] const Grounds& file_grounds(int edition) const;

    /// `, amended 1788`; empty for the base.
    [[nodiscard]] std::string amended(int edition) const;
};

/// Names are the same whatever their capitals.
bool same_name(std::string_view a, std::string_view b);

/// The entry of that name, or null. For any list of entries.
template <typename T>
const T* find_entry(const std::vector<T>& entries, std::string_view name) {
    for (const T& entry : entries) {
        if (same_name(entry.name, name)) {
            return &entry;
        }
    }
    return nullptr;
}

/// Lays the editions over one another.
InForce overlay(const std::vector<const SpecifiedRegulation*>& editions, std::optional<Date> day);

/// The regulation that is in force on the day, or on the day of the newest where none is asked.
/// After an error the newest, so that more can be told; empty if there is no regulation at all.
/// Errors: resolve.dates.
std::optional<InForce> regulation_in_force(const Orders& orders,
                                           const std::optional<WrittenDate>& as_of,
                                           Diagnostics& to);

/// The dates of a regulation with its amendments contradict each other. Errors: resolve.dates.
void check_dates(const std::vector<SpecifiedRegulation>& editions, Diagnostics& to);

}  // namespace platewright
