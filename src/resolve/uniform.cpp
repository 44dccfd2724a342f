// SPDX-License-Identifier: MIT
// Reading a decided uniform.
#include "resolve/uniform.h"

#include <array>
#include <string>

#include "vocabulary/condition.h"

namespace platewright {

std::string_view strength_name(Strength strength) {
    constexpr std::array<std::string_view, 13> names = {"initial",
                                                        "custom",
                                                        "regulation",
                                                        "class",
                                                        "series",
                                                        "rule",
                                                        "regiment",
                                                        "company",
                                                        "rank",
                                                        "service",
                                                        "order of dress",
                                                        "departure",
                                                        "plate"};
    return names.at(static_cast<std::size_t>(strength));
}

std::string word_of(const Value& value) {
    if (const auto* worn = std::get_if<Material>(&value)) {
        return worn->name;
    }
    if (const auto* text = std::get_if<std::string>(&value)) {
        return *text;
    }
    if (const auto* number = std::get_if<int>(&value)) {
        return std::to_string(*number);
    }
    if (const auto* length = std::get_if<Measure>(&value)) {
        return length->printed;
    }
    return "none";
}

bool is_nothing(const Value& value) {
    const auto* number = std::get_if<int>(&value);
    return std::holds_alternative<Absent>(value) || (number != nullptr && *number == 0);
}

std::string Uniform::word(PropertyId id) const {
    return word_of(value(id));
}

bool Uniform::speaks(PropertyId id) const {
    return platewright::speaks(id, [this](PropertyId other) { return word(other); });
}

const Material* Uniform::material(PropertyId id) const {
    return std::get_if<Material>(&value(id));
}

int Uniform::count(PropertyId id) const {
    const auto* number = std::get_if<int>(&value(id));
    return number == nullptr ? 0 : *number;
}

std::string_view called_on(const Uniform& man, PropertyId id) {
    const Property& row = properties()[id];
    const auto says = [&man](std::string_view key) { return man.word(property_id(key)); };
    if (row.key == "badge.cloth" && man.count(property_id("badge.number")) == 1) {
        return "service badge";
    }
    if (row.key == "breeches.cloth" && says("breeches.cut") == "overalls") {
        return "overalls";
    }
    if (row.key == "sword.belt" &&
        (says("belts.worn") == "crossed" || says("belts.worn") == "waist")) {
        return "sword frog";
    }
    if (row.key == "scabbard.leather" && says("sword.worn") != "none" &&
        man.speaks(property_id("hilt.metal")) && says("hilt.metal") != "none") {
        return "scabbards";
    }
    return row.called();
}

std::string_view seen_as(const Uniform& man, PropertyId id) {
    const std::string cut = man.word(property_id("coat.cut"));
    const bool covers_belt = cut != "jacket" && cut != "none";
    return properties()[id].key == "sword.belt" && covers_belt ? "sword frog" : called_on(man, id);
}

}  // namespace platewright
