// SPDX-License-Identifier: MIT
// Looking up the trade's words.
#include "words/terms.h"

#include <algorithm>
#include <span>

#include "base/text.h"
#include "words/terms_choices.h"
#include "words/terms_dress.h"
#include "words/terms_workshop.h"

namespace platewright {
namespace {

const TradeTerm* find_in(std::span<const TradeTerm> table, std::string_view name) {
    const auto found = std::ranges::find(table, name, &TradeTerm::name);
    return found == table.end() ? nullptr : &*found;
}

/// A row of the property itself, of its trait in every group (`.sleeves`), or of all properties.
const ChoiceTerm* find_choice_term(std::string_view property, std::string_view word) {
    const std::string_view trait = property.substr(std::min(property.find('.'), property.size()));
    for (const std::string_view asked : {property, trait, std::string_view()}) {
        for (const ChoiceTerm& row : kChoiceTerms) {
            if (row.property == asked && row.term.name == word) {
                return &row;
            }
        }
    }
    return nullptr;
}

std::string words_of(const TradeTerm* found, Language language, std::string_view name) {
    return std::string(found != nullptr ? found->words.text(language) : name);
}

}  // namespace

std::string term(Language language, std::string_view name) {
    const TradeTerm* found = find_in(kTerms, name);
    return words_of(found != nullptr ? found : find_in(kWorkshopTerms, name), language, name);
}

std::string title_term(Language language, std::string_view name) {
    std::string words = term(language, name);
    if (words == name && !name.empty()) {
        std::string small(name);
        small.front() = lower(name.substr(0, 1)).front();
        words = term(language, small);
    }
    return with_capital(words);
}

std::string choice_term(Language language, std::string_view property, std::string_view word) {
    const ChoiceTerm* found = find_choice_term(property, word);
    return words_of(found != nullptr ? &found->term : nullptr, language, word);
}

std::string trait_term(Language language, std::string_view name) {
    return words_of(find_in(kTraits, name), language, name);
}

bool has_term(std::string_view name) {
    return find_in(kTerms, name) != nullptr || find_in(kWorkshopTerms, name) != nullptr;
}

bool has_choice_term(std::string_view property, std::string_view word) {
    return find_choice_term(property, word) != nullptr;
}

bool has_trait_term(std::string_view name) {
    return find_in(kTraits, name) != nullptr;
}

}  // namespace platewright
