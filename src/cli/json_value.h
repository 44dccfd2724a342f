// SPDX-License-Identifier: MIT
// What the writers of JSON share.
#pragma once

#include <nlohmann/json.hpp>
#include <string_view>

namespace platewright::cli {

/// Keys stay in the order they were given.
using Json = nlohmann::ordered_json;

/// Null where there are no words.
inline Json text_or_null(std::string_view text) {
    return text.empty() ? Json() : Json(text);
}

}  // namespace platewright::cli
