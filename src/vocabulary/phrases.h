// SPDX-License-Identifier: MIT
// How an order of dress names a colour that is decided elsewhere: `the facing colour`, `the
// regiment's coat colour`.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace platewright {

/// One phrase: after `the` the colour of this very man, after `the regiment's` that of his
/// regiment.
struct Phrase {
    /// `facing colour`.
    std::string_view words;
    /// The key of the property it stands for.
    std::string_view property;
};

/// Every phrase, in table order; the first for a property is the usual one.
std::span<const Phrase> phrases();

/// Written before a property that is meant as the regiment wears it.
inline constexpr std::string_view kTheRegiments = "the regiment's ";

/// The one phrase for a text: the regiment's number in the series, for the buttons.
inline constexpr std::string_view kTheRegimentsNumber = "the regiment's number";

/// `the facing colour` is `as facings.cloth`; `the regiment's facing colour` is `as the regiment's
/// facings.cloth`: the value decided by statements up to the regiment's own, before company, rank,
/// service, order of dress and plate. Capitals do not matter. Nothing if it is no phrase.
std::optional<std::string> reference_of_phrase(std::string_view written);

/// It begins with `the` and so means to be a phrase.
bool is_like_a_phrase(std::string_view written);

/// The phrase most like what was written, or nothing.
std::optional<std::string> nearest_phrase(std::string_view written);

}  // namespace platewright
