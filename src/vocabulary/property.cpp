// SPDX-License-Identifier: MIT
// Looking things up in the table.
#include "vocabulary/property.h"

#include <algorithm>
#include <array>
#include <stdexcept>
#include <utility>

#include "base/text.h"

namespace platewright {

namespace {

constexpr std::array<std::pair<SubstanceKind, std::string_view>, 5> kSubstances = {{
    {SubstanceKind::cloth, "cloth"},
    {SubstanceKind::metal, "metal"},
    {SubstanceKind::leather, "leather"},
    {SubstanceKind::skin, "skin"},
    {SubstanceKind::hair, "hair"},
}};

std::vector<Choice> parse_choices(std::string_view choices) {
    std::vector<Choice> parsed;
    if (choices.empty()) {
        return parsed;
    }
    for (const std::string_view item : split(choices, '|')) {
        const std::size_t equals = item.find('=');
        if (equals == std::string_view::npos) {
            parsed.push_back({item, {}});
        } else {
            parsed.push_back({item.substr(0, equals), item.substr(equals + 1)});
        }
    }
    return parsed;
}

/// What is looked up often, made once.
struct Index {
    std::vector<std::pair<std::string_view, PropertyId>> by_key;
    std::vector<std::vector<Choice>> choices;
    std::vector<std::string_view> groups;

    Index() {
        for (PropertyId id = 0; id < properties().size(); ++id) {
            by_key.emplace_back(properties()[id].key, id);
            choices.push_back(parse_choices(properties()[id].choices));
            if (groups.empty() || groups.back() != properties()[id].group()) {
                groups.push_back(properties()[id].group());
            }
        }
        std::ranges::sort(by_key);
    }
};

const Index& index() {
    static const Index kIndex;
    return kIndex;
}

bool is_colour(Kind kind) {
    return kind == Kind::cloth || kind == Kind::metal;
}

}  // namespace

std::optional<PropertyId> find_property(std::string_view key) {
    const auto& by_key = index().by_key;
    const auto at =
        std::ranges::lower_bound(by_key, key, {}, &std::pair<std::string_view, PropertyId>::first);
    if (at == by_key.end() || at->first != key) {
        return std::nullopt;
    }
    return at->second;
}

PropertyId property_id(std::string_view key) {
    if (const std::optional<PropertyId> found = find_property(key)) {
        return *found;
    }
    throw std::logic_error("no property " + quoted(key) + " in the table");
}

std::optional<std::string> nearest_property(std::string_view written) {
    if (const std::optional<PropertyId> main = property_of_word(written, {})) {
        return std::string(properties()[*main].key);
    }
    std::vector<std::string> keys;
    for (const Property& row : properties()) {
        keys.emplace_back(row.key);
    }
    return nearest_word(written, keys);
}

std::span<const std::string_view> groups() {
    return index().groups;
}

std::optional<PropertyId> property_of_word(std::string_view group, std::string_view word) {
    std::optional<PropertyId> colour;
    std::optional<PropertyId> choice;
    for (PropertyId id = 0; id < properties().size(); ++id) {
        const Property& row = properties()[id];
        if (!row.main || row.group() != group) {
            continue;
        }
        if (row.kind != Kind::choice) {
            colour = colour ? colour : id;
            continue;
        }
        if (find_choice(id, word) || (row.may_be_none && lower(word) == "none")) {
            return id;
        }
        choice = choice ? choice : id;
    }
    return colour ? colour : choice;
}

std::span<const Choice> choices_of(PropertyId id) {
    return index().choices.at(id);
}

std::optional<std::string_view> find_choice(PropertyId id, std::string_view written) {
    const std::string wanted = lower(trim(written));
    for (const Choice& choice : choices_of(id)) {
        if (wanted == choice.word || (!choice.other_name.empty() && wanted == choice.other_name)) {
            return choice.word;
        }
    }
    return std::nullopt;
}

std::string written_where_known(PropertyId id, std::string_view word) {
    const std::string_view group = properties()[id].group();
    for (PropertyId other = 0; other < properties().size(); ++other) {
        const Property& row = properties()[other];
        const auto known =
            other != id && row.group() == group ? find_choice(other, word) : std::nullopt;
        if (known) {
            return std::string(group) + ": {" + std::string(row.name()) + ": " +
                   std::string(*known) + "}";
        }
    }
    return {};
}

std::string_view kind_name(Kind kind) {
    switch (kind) {
        case Kind::cloth:
            return "a colour";
        case Kind::metal:
            return "a metal";
        case Kind::choice:
            return "a word";
        case Kind::count:
            return "a whole number";
        case Kind::measure:
            return "a length with its unit";
        case Kind::ornament:
            return "an ornament";
        case Kind::words:
            return "a text";
    }
    throw std::logic_error("kind without a name");
}

std::string expectation(PropertyId id) {
    const Property& row = properties()[id];
    const std::string range = std::to_string(row.least) + " to " + std::to_string(row.most);
    std::string text(kind_name(row.kind));
    if (row.kind == Kind::choice) {
        std::vector<std::string> words;
        for (const Choice& choice : choices_of(id)) {
            words.emplace_back(choice.word);
        }
        if (row.may_be_none) {
            words.emplace_back("none");
        }
        return or_list(words);
    }
    if (row.kind == Kind::count) {
        return text + " from " + range;
    }
    if (row.kind == Kind::measure) {
        text += " from " + range + " mm, such as " +
                quoted(row.initial == "none" ? std::string_view("20 mm") : row.initial);
    }
    if (row.kind == Kind::ornament) {
        text +=
            " of templates/ornaments, such as 'grenade', or a drawing of your own, such as "
            "'badge.svg'";
    }
    if (row.kind == Kind::words) {
        text += " of at most " + std::to_string(row.most) + " characters";
    }
    if (is_colour(row.kind)) {
        text += " by its name or as \"#rrggbb\"";
    }
    return row.may_be_none ? text + ", or none" : text;
}

std::string_view substance_name(SubstanceKind kind) {
    for (const auto& [substance, name] : kSubstances) {
        if (substance == kind) {
            return name;
        }
    }
    throw std::logic_error("substance without a name");
}

std::optional<SubstanceKind> find_substance(std::string_view section) {
    for (const auto& [substance, name] : kSubstances) {
        if (name == section) {
            return substance;
        }
    }
    return std::nullopt;
}

std::vector<std::string_view> followed(std::string_view written) {
    constexpr std::string_view as = "as ";
    constexpr std::string_view or_word = " or ";
    std::vector<std::string_view> keys;
    written = trim(written);
    if (lower(written.substr(0, as.size())) != as) {
        return keys;
    }
    written.remove_prefix(as.size());
    for (std::size_t at = written.find(or_word); at != std::string_view::npos;
         at = written.find(or_word)) {
        keys.push_back(trim(written.substr(0, at)));
        written.remove_prefix(at + or_word.size());
    }
    keys.push_back(trim(written));
    return keys;
}

}  // namespace platewright
