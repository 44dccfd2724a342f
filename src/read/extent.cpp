// SPDX-License-Identifier: MIT
// Where a piece of YAML ends, found by walking the text along the value that was read.
#include "read/extent.h"

#include <algorithm>
#include <array>

namespace platewright {
namespace {

constexpr std::string_view kBlank = " \t\r\n";
constexpr std::string_view kSigns = ":,{}[]-";

bool is_blank(char c) {
    return kBlank.find(c) != std::string_view::npos;
}

std::size_t line_end(std::string_view text, std::size_t at) {
    return std::min(text.find('\n', at), text.size());
}

Extent double_quoted(std::string_view text, std::size_t at) {
    for (std::size_t i = at + 1; i < text.size(); ++i) {
        if (text[i] == '\\') {
            ++i;
        } else if (text[i] == '"') {
            return {i + 1, true, true};
        }
    }
    return {text.size(), true, false};
}

Extent single_quoted(std::string_view text, std::size_t at) {
    for (std::size_t i = at + 1; i < text.size(); ++i) {
        if (text[i] != '\'') {
            continue;
        }
        if (i + 1 < text.size() && text[i + 1] == '\'') {
            ++i;
        } else {
            return {i + 1, true, true};
        }
    }
    return {text.size(), true, false};
}

/// Blanks of the value match any run of blanks of the text, since lines are folded.
std::size_t walk(std::string_view text, std::size_t at, std::string_view value) {
    const std::size_t last = value.find_last_not_of(kBlank);
    const std::string_view words = value.substr(0, last == std::string_view::npos ? 0 : last + 1);
    for (const char c : words) {
        if (is_blank(c)) {
            while (at < text.size() && is_blank(text[at])) {
                ++at;
            }
            continue;
        }
        while (at < text.size() && is_blank(text[at])) {
            ++at;
        }
        if (at == text.size() || text[at] != c) {
            return at;
        }
        ++at;
    }
    return at;
}

}  // namespace

Extent extent_of(std::string_view text, std::size_t at, std::string_view value) {
    const char first = at < text.size() ? text[at] : ' ';
    switch (first) {
        case '"':
            return double_quoted(text, at);
        case '\'':
            return single_quoted(text, at);
        case '|':
        case '>':
            return {
                std::max(line_end(text, at), walk(text, line_end(text, at), value)), true, true};
        default:
            return {walk(text, at, value), false, true};
    }
}

std::size_t end_of_null_word(std::string_view text, std::size_t at) {
    constexpr std::array<std::string_view, 4> words = {"~", "null", "Null", "NULL"};
    for (const std::string_view word : words) {
        const std::size_t end = at + word.size();
        if (text.substr(std::min(at, text.size())).starts_with(word) &&
            (end == text.size() || is_blank(text[end]) ||
             kSigns.find(text[end]) != std::string_view::npos)) {
            return end;
        }
    }
    return at;
}

std::size_t end_of_word(std::string_view text, std::size_t at) {
    std::size_t end = at;
    while (end < text.size() && !is_blank(text[end]) &&
           (end == at || kSigns.find(text[end]) == std::string_view::npos)) {
        ++end;
    }
    return end;
}

std::size_t after_properties(std::string_view text, std::size_t at) {
    while (at < text.size() && (text[at] == '!' || text[at] == '&')) {
        while (at < text.size() && !is_blank(text[at])) {
            ++at;
        }
        at = after_blanks(text, at);
    }
    return at;
}

std::size_t after_sign(std::string_view text, std::size_t at, char sign) {
    while (at < text.size() && text[at] != sign) {
        at = text[at] == '#' ? line_end(text, at) : at + 1;
    }
    return std::min(at + 1, text.size());
}

std::size_t after_blanks(std::string_view text, std::size_t at) {
    while (at < text.size() && (is_blank(text[at]) || text[at] == '#')) {
        at = text[at] == '#' ? line_end(text, at) : at + 1;
    }
    return at;
}

bool has_colon(std::string_view text, std::size_t at) {
    at = after_blanks(text, at);
    return at < text.size() && text[at] == ':';
}

std::size_t after_colon(std::string_view text, std::size_t at) {
    return has_colon(text, at) ? after_blanks(text, at) + 1 : at;
}

std::optional<std::size_t> first_unexplained(std::string_view text,
                                             std::size_t begin,
                                             std::size_t end) {
    end = std::min(end, text.size());
    while ((begin = after_blanks(text, begin)) < end) {
        if (kSigns.find(text[begin]) == std::string_view::npos) {
            return begin;
        }
        ++begin;
    }
    return std::nullopt;
}

}  // namespace platewright
