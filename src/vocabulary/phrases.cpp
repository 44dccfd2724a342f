// SPDX-License-Identifier: MIT
// How an order of dress names a colour that is decided elsewhere.
#include "vocabulary/phrases.h"

#include <algorithm>
#include <array>
#include <vector>

#include "base/text.h"

namespace platewright {
namespace {

constexpr std::string_view kThe = "the ";

constexpr std::array kPhrases = std::to_array<Phrase>({
    {"facing colour", "facings.cloth"},
    {"facings", "facings.cloth"},
    {"facing color", "facings.cloth"},
    {"coat colour", "coat.cloth"},
    {"coat color", "coat.cloth"},
    {"lining colour", "coat.lining"},
    {"lining color", "coat.lining"},
    {"waistcoat colour", "waistcoat.cloth"},
    {"waistcoat color", "waistcoat.cloth"},
    {"button metal", "buttons.metal"},
    {"lace", "lace.cloth"},
});

}  // namespace

std::span<const Phrase> phrases() {
    return kPhrases;
}

std::optional<std::string> reference_of_phrase(std::string_view written) {
    const std::string words = lower(trim(written));
    const bool regiments = words.starts_with(kTheRegiments);
    if (!regiments && !words.starts_with(kThe)) {
        return std::nullopt;
    }
    const std::string_view rest =
        std::string_view(words).substr(regiments ? kTheRegiments.size() : kThe.size());
    const auto found = std::ranges::find(kPhrases, rest, &Phrase::words);
    if (found == kPhrases.end()) {
        return std::nullopt;
    }
    return "as " + std::string(regiments ? kTheRegiments : "") + std::string(found->property);
}

bool is_like_a_phrase(std::string_view written) {
    return lower(trim(written)).starts_with(kThe);
}

std::optional<std::string> nearest_phrase(std::string_view written) {
    std::vector<std::string> all;
    for (const Phrase& phrase : kPhrases) {
        all.push_back(std::string(kThe) + std::string(phrase.words));
        all.push_back(std::string(kTheRegiments) + std::string(phrase.words));
    }
    return nearest_word(trim(written), all);
}

}  // namespace platewright
