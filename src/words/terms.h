// SPDX-License-Identifier: MIT
// The trade's own words in every language: garments and their parts, choices, traits, views,
// ornaments. Tests hold them against the table of properties.
#pragma once

#include <string>
#include <string_view>

#include "base/language.h"

namespace platewright {

/// What a garment, a part, a view, a frame or an ornament is called, by its English name or the
/// name of its file: `lapel piping`, `front`, `cuff`, `crossed-cannon`. A word without a term, a
/// user's own, is given back as it is.
std::string term(Language language, std::string_view name);

/// The same where it begins a line or a heading, or stands under a drawing: with a capital. The
/// name may have one too: `Gaiter, outer side`.
std::string title_term(Language language, std::string_view name);

/// A choice of a property as it is printed after the property's name: `cuffs.shape`, `round`.
/// `none` is known for every property. A word without a term is given back as it is.
std::string choice_term(Language language, std::string_view property, std::string_view word);

/// What is said of a thing, by the second part of a property's key: `shape`, `number`, `sleeves`.
/// A word without a term is given back as it is.
std::string trait_term(Language language, std::string_view name);

/// Whether there is such a term; for tests.
bool has_term(std::string_view name);
bool has_choice_term(std::string_view property, std::string_view word);
bool has_trait_term(std::string_view name);

}  // namespace platewright
