// SPDX-License-Identifier: MIT
// The JSON Schema of plates and other sheets, regulations and regiments, made from the tables.
#include "vocabulary/schema.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <nlohmann/json.hpp>
#include <string>
#include <string_view>
#include <utility>

#include "base/limits.h"
#include "base/text.h"
#include "vocabulary/phrases.h"
#include "vocabulary/property.h"
#include "vocabulary/records.h"

namespace platewright {

namespace {

using Json = nlohmann::ordered_json;

/// A name that is not `none` in any spelling, or a colour itself.
constexpr const char* kColourPattern = "^(#[0-9a-fA-F]{6}|[^#].*)$";
constexpr const char* kNonePattern = "^[Nn][Oo][Nn][Ee]$";

/// A number, perhaps with a fraction, and the beginning of a unit.
constexpr const char* kLengthPattern = "^[0-9½¼¾⅛⅜⅝⅞][0-9½¼¾⅛⅜⅝⅞ .,/-]*[^0-9½¼¾⅛⅜⅝⅞ .,/-]";

/// A year, a month or a day, and a number of years with what may stand around it.
constexpr const char* kDatePattern = "^[0-9]{4}(-[0-9]{2}(-[0-9]{2})?)?$";
constexpr const char* kYearsPattern = "^[0-9]+([.,][0-9]{1,2})?( years?)?$";
constexpr const char* kYearsAskedPattern =
    "^(at least|more than) [0-9]+([.,][0-9]{1,2})?( years?)?$";
constexpr const char* kMenPattern = "^[0-9]+ men$";

Json reference_to(const std::string& name) {
    return {{"$ref", "#/$defs/" + name}};
}

/// A name of `$defs`, without spaces: `group-coat`, `service-step`.
std::string definition_of(std::string_view group) {
    return "group-" + std::string(group);
}

std::string definition_of(Record record) {
    std::string name(record_row(record).called);
    std::ranges::replace(name, ' ', '-');
    return name;
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

Json value_definitions() {
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
            return {{"anyOf", {words_schema(row.most), {{"const", kTheRegimentsNumber}}}}};
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

/// One text, or a list of them.
Json one_or_list(Json one) {
    return {{"anyOf", {one, {{"type", "array"}, {"items", one}}}}};
}

Json words_of_choice(const Key& key) {
    Json words = Json::array();
    for (const std::string_view word : words_of(key)) {
        words.push_back(word);
    }
    return {{"enum", std::move(words)}};
}

Json property_names() {
    Json names = Json::array();
    for (const Property& row : properties()) {
        names.push_back(row.key);
    }
    return {{"enum", std::move(names)}};
}

Json number_schema(int most) {
    return {{"anyOf",
             {{{"type", "integer"}, {"minimum", 1}, {"maximum", most}},
              {{"type", "string"}, {"pattern", kMenPattern}}}}};
}

/// What may be written after a key, without its description.
Json held_schema(const Key& key) {
    switch (key.holds) {
        case Holds::line:
            return text_schema(limits::kLineCharacters);
        case Holds::lines:
            return one_or_list(text_schema(limits::kLineCharacters));
        case Holds::note:
            return text_schema(limits::kNoteCharacters);
        case Holds::notes:
            return one_or_list(text_schema(limits::kNoteCharacters));
        case Holds::first_day:
        case Holds::last_day:
            return {{"type", {"string", "integer"}}, {"pattern", kDatePattern}};
        case Holds::years:
            return {{"type", {"number", "string"}},
                    {"pattern", kYearsPattern},
                    {"minimum", 0},
                    {"maximum", kMostYears}};
        case Holds::years_asked:
            return {{"type", "string"}, {"pattern", kYearsAskedPattern}};
        case Holds::number:
            return number_schema(key.most);
        case Holds::yes_or_no:
            return {{"enum", {"yes", "no", true, false}}};
        case Holds::choice:
            return words_of_choice(key);
        case Holds::properties:
            return one_or_list(property_names());
        case Holds::record:
            return reference_to(definition_of(key.of));
        case Holds::records:
            return one_or_list(reference_to(definition_of(key.of)));
        case Holds::named:
            return {{"type", "object"},
                    {"additionalProperties", reference_to(definition_of(key.of))}};
        case Holds::numbers:
            return {{"type", "object"}, {"additionalProperties", number_schema(key.most)}};
    }
    return Json::object();
}

/// Whatever has that key.
Json with_key(std::string_view key) {
    return {{"properties", {{std::string(key), true}}}, {"required", Json::array({key})}};
}

/// Adds the keys of a record to the schema of a group.
void add_keys(Record record, Json& schema) {
    for (const Key* key : keys_of(record)) {
        Json value = {{"description", key->meaning}};
        value.update(held_schema(*key));
        schema["properties"][std::string(key->key)] = std::move(value);
        if (key->required && key->or_key.empty()) {
            schema["required"].push_back(key->key);
        } else if (key->required) {
            schema["anyOf"] = {with_key(key->key), with_key(key->or_key)};
        }
    }
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
    add_keys(Record::grounds, full);
    if (forms.empty()) {
        return full;
    }
    forms.push_back(std::move(full));
    return {{"anyOf", std::move(forms)}};
}

/// `figure` is the template set as one word; as a group it holds the set and how the man looks.
Json figure_schema(Json set) {
    Json looks = group_schema("figure");
    Json& full = looks.contains("anyOf") ? looks.at("anyOf").back() : looks;
    Json parts = {{"template", set}};
    parts.update(full.at("properties"));
    full["properties"] = std::move(parts);
    return {{"anyOf", {std::move(set), std::move(looks)}}};
}

Json record_schema(Record record) {
    const RecordRow& row = record_row(record);
    Json schema = {{"type", "object"}, {"properties", Json::object()}};
    add_keys(record, schema);
    Json& keys = schema["properties"];
    if (row.groups) {
        for (const std::string_view group : groups()) {
            Json& place = keys[std::string(group)];
            place = place.is_null() ? reference_to(definition_of(group)) : figure_schema(place);
        }
    }
    // A rule may ask of any property.
    schema["additionalProperties"] = record == Record::question;
    if (row.or_text) {
        return {{"anyOf", {text_schema(limits::kLineCharacters), std::move(schema)}}};
    }
    return schema;
}

Json definitions() {
    Json all = value_definitions();
    for (const std::string_view group : groups()) {
        all[definition_of(group)] = group_schema(group);
    }
    for (const RecordRow& row : record_rows()) {
        all[definition_of(row.record)] = record_schema(row.record);
    }
    return all;
}

/// What holds for a file that has the first key of `record`, and for all others.
Json file_with_key(Record record, Json others) {
    return {{"if", with_key(record_row(record).keys.front().key)},
            {"then", reference_to(definition_of(record))},
            {"else", std::move(others)}};
}

}  // namespace

std::string json_schema() {
    Json schema = {
        {"$schema", "https://json-schema.org/draft/2020-12/schema"},
        {"title", "Platewright files"},
        {"description",
         "One man's uniform for a plate, another sheet, a clothing regulation, or a regiment."},
        {"type", "object"}};
    // In the order in which `kind_of_file` tells them apart; what has no such key is a plate.
    constexpr std::array order = {Record::plate,
                                  Record::comparison,
                                  Record::handout,
                                  Record::chart,
                                  Record::workshop,
                                  Record::regiment,
                                  Record::regulation};
    Json kinds = reference_to(definition_of(Record::plate));
    for (auto record = order.rbegin(); record != order.rend(); ++record) {
        kinds = file_with_key(*record, std::move(kinds));
    }
    schema.update(kinds);
    schema["$defs"] = definitions();
    return schema.dump(2) + "\n";
}

}  // namespace platewright
