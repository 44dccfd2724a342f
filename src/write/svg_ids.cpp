// SPDX-License-Identifier: MIT
// Ids of groups.
#include "write/svg_ids.h"

namespace platewright {

namespace {

bool is_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

/// Lower-case words joined by hyphens, beginning with a letter.
std::string slug(std::string_view name) {
    std::string made;
    bool gap = false;
    for (const char c : name) {
        if (!is_letter(c) && !is_digit(c)) {
            gap = !made.empty();
            continue;
        }
        if (gap) {
            made += '-';
            gap = false;
        }
        made += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    if (made.empty() || !is_letter(made[0])) {
        made.insert(0, made.empty() ? "group" : "group-");
    }
    return made;
}

}  // namespace

std::string SvgIds::make(std::string_view name, std::string_view within) {
    std::string id = slug(name);
    if (used_.insert(id).second) {
        return id;
    }
    if (!within.empty()) {
        id.insert(0, std::string(within) + "-");
        if (used_.insert(id).second) {
            return id;
        }
    }
    for (int number = 2;; ++number) {
        std::string numbered = id + "-" + std::to_string(number);
        if (used_.insert(numbered).second) {
            return numbered;
        }
    }
}

std::string short_id(char kind, std::size_t index) {
    constexpr std::string_view digits = "0123456789abcdefghijklmnopqrstuvwxyz";
    std::string made;
    do {
        made.insert(made.begin(), digits[index % digits.size()]);
        index /= digits.size();
    } while (index > 0);
    made.insert(made.begin(), kind);
    return made;
}

}  // namespace platewright
