// SPDX-License-Identifier: MIT
// Reading a decided uniform.
#include "resolve/uniform.h"

#include <string>

namespace platewright {

std::string Uniform::word(PropertyId id) const {
    const Value& held = value(id);
    if (const auto* worn = std::get_if<Material>(&held)) {
        return worn->name;
    }
    if (const auto* text = std::get_if<std::string>(&held)) {
        return *text;
    }
    if (const auto* number = std::get_if<int>(&held)) {
        return std::to_string(*number);
    }
    if (const auto* length = std::get_if<Measure>(&held)) {
        return length->printed;
    }
    return "none";
}

const Material* Uniform::material(PropertyId id) const {
    return std::get_if<Material>(&value(id));
}

int Uniform::count(PropertyId id) const {
    const auto* number = std::get_if<int>(&value(id));
    return number == nullptr ? 0 : *number;
}

}  // namespace platewright
