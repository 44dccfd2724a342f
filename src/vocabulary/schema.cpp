// SPDX-License-Identifier: MIT
// The JSON Schema of a plate file, made from the table.
#include "vocabulary/schema.h"

#include <charconv>
#include <nlohmann/json.hpp>
#include <string>
#include <string_view>
#include <utility>

#include "base/limits.h"
#include "base/text.h"
#include "vocabulary/property.h"

namespace platewright {

namespace {

using Json = nlohmann::ordered_json;

/// A name that is not `none` in any spelling, or a colour itself.
constexpr const char* kColourPattern = "^(#[0-9a-fA-F]{6}|[^#].*)$";
constexpr const char* kNonePattern = "^[Nn][Oo][Nn][Ee]$";

/// A number, perhaps with a fraction, and the beginning of a unit.
constexpr const char* kLengthPattern = "^[0-9½¼¾⅛⅜⅝⅞][0-9½¼¾⅛⅜⅝⅞ .,/-]*[^0-9½¼¾⅛⅜⅝⅞ .,/-]";

Json reference_to(const char* name) {
    return {{"$ref", std::string("#/$defs/") + name}};
}

/// Text of one line; a number counts as its digits.
Json text_schema(std::size_t most) {
    return {{"type", {"string", "number"}}, {"minLength", 1}, {"maxLength", most}};
}

/// Text of few characters; as a number it has no more digits than that.
Json words_schema(int most) {
    constexpr int most_digits = 17;  // of a whole number that JSON readers keep exact
    Json schema = text_schema(static_cast<std::size_t>(most));
    if (most > most_digits) {
        return schema;
    }
    schema["maximum"] = std::stoll("1" + std::string(static_cast<std::size_t>(most), '0')) - 1;
    return schema;
}

Json colour_schema(const char* description) {
    return {{"type", "string"},
            {"pattern", kColourPattern},
            {"not", {{"pattern", kNonePattern}}},
            {"description", description}};
}

Json definitions() {
    return {
        {"colour",
         colour_schema("a colour by its name in the palettes, as \"#rrggbb\", or as another "
                       "property: as lapels.cloth")},
        {"metal",
         colour_schema("a metal by its name in the palettes, as \"#rrggbb\", or as another "
                       "property: as buttons.metal")},
        {"length",
         {{"type", "string"},
          {"pattern", kLengthPattern},
          {"description", "a number and its unit: 12 mm, 3 1/2 in, 2 Zoll rhineland, 24 line"}}},
        {"none", {{"type", "string"}, {"pattern", kNonePattern}}}};
}

Json choice_schema(PropertyId id) {
    Json words = Json::array();
    for (const Choice& choice : choices_of(id)) {
        words.push_back(choice.word);
    }
    for (const Choice& choice : choices_of(id)) {
        if (!choice.other_name.empty()) {
            words.push_back(choice.other_name);
        }
    }
    if (properties()[id].may_be_none) {
        words.push_back("none");
    }
    return {{"enum", std::move(words)}};
}

/// What may be written for one property, without its description.
Json value_schema(PropertyId id) {
    const Property& row = properties()[id];
    Json value;
    switch (row.kind) {
        case Kind::choice:
            return choice_schema(id);
        case Kind::words:
            return words_schema(row.most);
        case Kind::ornament:
            return words_schema(kLongestOrnament);
        case Kind::cloth:
            value = reference_to("colour");
            break;
        case Kind::metal:
            value = reference_to("metal");
            break;
        case Kind::measure:
            value = reference_to("length");
            break;
        case Kind::count:
            value = {{"type", "integer"}, {"minimum", row.least}, {"maximum", row.most}};
            break;
    }
    if (row.may_be_none) {
        return {{"anyOf", {std::move(value), reference_to("none")}}};
    }
    return value;
}

Json default_of(const Property& row) {
    int number = 0;
    const char* end = row.initial.data() + row.initial.size();
    const auto read = std::from_chars(row.initial.data(), end, number);
    return row.kind == Kind::count && read.ptr == end ? Json(number) : Json(row.initial);
}

Json property_schema(PropertyId id) {
    const Property& row = properties()[id];
    Json schema = {{"description", row.meaning}, {"default", default_of(row)}};
    schema.update(value_schema(id));
    return schema;
}

/// The full form of a group, and its one-word forms beside it.
Json group_schema(std::string_view group) {
    Json parts = Json::object();
    Json forms = Json::array();
    for (PropertyId id = 0; id < properties().size(); ++id) {
        const Property& row = properties()[id];
        if (row.group() != group) {
            continue;
        }
        parts[std::string(row.name())] = property_schema(id);
        if (row.main) {
            forms.push_back(property_schema(id));
        }
    }
    Json full = {{"type", "object"},
                 {"properties", std::move(parts)},
                 {"additionalProperties", false},
                 {"minProperties", 1}};
    if (forms.empty()) {
        return full;
    }
    forms.push_back(std::move(full));
    return {{"anyOf", std::move(forms)}};
}

Json plate_key_schema(const PlateKey& key) {
    const Json line =
        text_schema(key.may_be_list ? limits::kNoteCharacters : limits::kLineCharacters);
    Json schema = {{"description", key.meaning}};
    if (key.may_be_list) {
        schema["anyOf"] = {line, {{"type", "array"}, {"items", line}}};
    } else {
        schema.update(line);
    }
    return schema;
}

/// `figure` is the template set as one word; as a group it holds the set and how the man looks.
Json figure_schema(Json set, Json looks) {
    Json parts = {{"template", set}};
    parts.update(looks.at("properties"));
    looks["properties"] = std::move(parts);
    return {{"anyOf", {std::move(set), std::move(looks)}}};
}

}  // namespace

std::string json_schema() {
    Json keys = Json::object();
    Json required = Json::array();
    for (const PlateKey& key : plate_keys()) {
        keys[std::string(key.key)] = plate_key_schema(key);
        if (key.required) {
            required.push_back(key.key);
        }
    }
    for (const std::string_view group : groups()) {
        Json& place = keys[std::string(group)];
        place = place.is_null() ? group_schema(group) : figure_schema(place, group_schema(group));
    }
    const Json schema = {{"$schema", "https://json-schema.org/draft/2020-12/schema"},
                         {"title", "Platewright plate"},
                         {"description", "One man's uniform, described for a plate."},
                         {"type", "object"},
                         {"required", std::move(required)},
                         {"additionalProperties", false},
                         {"properties", std::move(keys)},
                         {"$defs", definitions()}};
    return schema.dump(2) + "\n";
}

}  // namespace platewright
