// SPDX-License-Identifier: MIT
// What stands under a picture of the index.
#include "cli/wardrobe_words.h"

#include <algorithm>
#include <array>
#include <map>
#include <string_view>

#include "words/sheet_messages.h"
#include "words/terms.h"

namespace platewright::cli {
namespace {

/// Traits that nobody guesses from their words: `plain` of lapels is said of their buttonholes.
constexpr std::array<std::string_view, 7> kNamed = {
    "buttonholes", "fringe-kind", "companion", "stripes", "rim", "number", "device"};

/// The option, and of what it needs that which stands in its group and does not hold anyway.
void add_needed(const Example& option, std::map<PropertyId, std::string>& told) {
    const std::string_view group = properties()[option.property].group();
    for (const Setting& setting : option.settings) {
        const Property& row = properties()[setting.property];
        const bool asked = setting.property == option.property;
        if (asked || (row.group() == group && setting.value != row.initial)) {
            told[setting.property] = setting.value;
        }
    }
}

std::string option_value(const Example& option, const Uniform& man) {
    const Property& row = properties()[option.property];
    const std::string& value = option.settings.back().value;
    if (value == "none" || row.kind == Kind::choice) {
        return choice_term(man.language, row.key, value);
    }
    if (row.kind == Kind::ornament) {
        return term(man.language, value);
    }
    const Material* material = man.material(option.property);
    return material != nullptr ? material->name : value;
}

/// `lapels`, `cuff piping`; where its words alone would not tell, what they are said of: `buttons,
/// rim`.
std::string option_name(const Property& row, Language language) {
    std::string words = term(language, row.called());
    if (row.place.empty() && std::ranges::find(kNamed, row.name()) != kNamed.end()) {
        words += ", " + trait_term(language, row.name());
    }
    return words;
}

}  // namespace

std::string as_written(const IndexOption& told) {
    std::map<PropertyId, std::string> all;
    add_needed(told.option, all);
    for (const Example& twin : told.twins) {
        add_needed(twin, all);
    }
    if (all.size() == 1) {
        return told.option.written;
    }
    std::string words;
    for (const auto& [property, value] : all) {
        words += words.empty() ? std::string(properties()[property].group()) + ": {" : ", ";
        words += std::string(properties()[property].name()) + ": " + value;
    }
    return words + "}";
}

std::string trade_words(const IndexOption& told, const Uniform& man) {
    const bool plain = as_written(told).find('{') == std::string::npos;
    if (plain && man.language == Language::english) {
        return {};
    }
    if (properties()[told.option.property].name() == "ornament") {
        return option_value(told.option, man);
    }
    const auto say_of = [&](const std::string& name, const Example& option) {
        return say(man.language, messages::kNameAndValue, {name, option_value(option, man)});
    };
    std::string words =
        say_of(option_name(properties()[told.option.property], man.language), told.option);
    for (const Example& twin : told.twins) {
        const Property& row = properties()[twin.property];
        words += "; " + say_of(trait_term(man.language, row.name()), twin);
    }
    return words;
}

}  // namespace platewright::cli
