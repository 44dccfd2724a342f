// SPDX-License-Identifier: MIT
// Who says what of a man's dress; part of the second stage.
#pragma once

#include <string>
#include <vector>

#include "read/specified.h"
#include "resolve/man.h"
#include "resolve/uniform.h"

namespace platewright {

/// What somebody says of one property.
struct Statement {
    PropertyId property = 0;
    Decision decision;
    WrittenValue value;
    /// Within one strength a later layer overlays an earlier one in silence: amendments, `like`,
    /// years of service. Two of one layer that disagree contradict each other.
    int layer = 0;
};

/// A value as it would be written.
std::string written_form(const WrittenValue& value);

/// What the table says of every property. Throws std::logic_error on a slip in it.
const std::vector<Statement>& built_in_defaults();

/// What the custom of a rank says.
std::vector<Statement> statements_of(const SpecifiedCustoms::Rank& rank);

/// What the regulation says of this man: everyone, his class, his regiment's place in the series,
/// his company, rank, service and order of dress; not the rules.
std::vector<Statement> statements_of(const Man& man);

/// What a rule says where it holds.
std::vector<Statement> statements_of(const RuleInForce& rule, const InForce& law);

/// What the regiment decides for all its men.
std::vector<Statement> statements_of(const SpecifiedRegiment& regiment);

/// What the man's plate says.
std::vector<Statement> statements_of(const SpecifiedPlate& plate);

/// What was worn instead, as far as it concerns this man on his day. `of` names who departs:
/// `regiment` or `plate`; what a plate says overlays what its regiment says.
std::vector<Statement> statements_of(const std::vector<Departure>& departures,
                                     const Man& man,
                                     const Grounds& file,
                                     Strength of);

}  // namespace platewright
