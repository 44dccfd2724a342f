// SPDX-License-Identifier: MIT
// A man's place in the regulation; part of the second stage.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "resolve/regulation_in_force.h"

namespace platewright {

/// Who a man is. Null and empty where nobody says.
struct Man {
    const InForce* law = nullptr;
    const PlaceInForce* place = nullptr;
    std::string regiment;
    std::optional<int> number;
    const Entry* corps_class = nullptr;
    const CompanyEntry* company = nullptr;
    const RankEntry* rank = nullptr;
    std::optional<double> years;
    const Entry* order = nullptr;
    std::optional<Date> day;

    /// Any man of his regiment: neither company nor rank, service or order of dress.
    [[nodiscard]] Man as_any_of_regiment() const;
};

/// A rank and those it is like, the first one last in the line first; for a circle, as far as it
/// is none.
std::vector<const RankEntry*> likeness(const RankEntry& rank, const InForce& law);

/// Finds the man in the regulation. Errors: resolve.unknown-class, -company, -order, -rank,
/// -regiment; resolve.conflict where two say of what class he is, or where another regiment has
/// his number. A rank the regulation does not know may stand where the plate gives its marks.
Man find_man(const SpecifiedPlate& plate,
             const Orders& orders,
             const InForce& law,
             Diagnostics& to);

/// The man with his titles, for captions.
Facts facts_of(const Man& man);

/// Whether a service of so many years reaches the step.
bool reaches(double years, const ServiceStep& step);

/// Every name and title of the list, for suggestions.
template <typename T>
std::vector<std::string> names_of(const std::vector<T>& entries) {
    std::vector<std::string> names;
    names.reserve(entries.size());
    for (const T& entry : entries) {
        names.push_back(entry.name);
    }
    return names;
}

}  // namespace platewright
