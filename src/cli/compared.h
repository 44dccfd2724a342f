// SPDX-License-Identifier: MIT
// What men differ in, in words, and where on a figure it is led to.
#pragma once

#include <string>
#include <vector>

#include "layout/comparison.h"
#include "resolve/uniform.h"

namespace platewright::cli {

/// A tip of the plume's own colour is no tip.
bool is_tip_alike(const Uniform& man, const Property& row);

/// Whether a man has the thing that a property tells of: it speaks of him, and is not `none`.
bool is_worn(const Uniform& man, PropertyId id);

/// What a man has of a property in words of his language; empty where it says nothing of him, or
/// nothing that is not said already.
std::string value_words(const Uniform& man, PropertyId id);

/// `lapels`, `pockets, direction`.
std::string thing_words(Language language, PropertyId id);

/// A row of the table: a property, and what each man has of it.
struct DifferingRow {
    PropertyId property = 0;
    std::vector<std::string> values;
};

/// What sets one man apart: of two all that differs, of more what nobody else has like him. Colour
/// and shape of a thing are told together. Each is placed on the first view that shows it; what is
/// seen on none is left out.
std::vector<ComparedCallout> what_sets_apart(std::size_t man,
                                             const std::vector<const Uniform*>& men,
                                             const std::vector<ComparedMan>& drawn,
                                             const std::vector<DifferingRow>& rows);

}  // namespace platewright::cli
