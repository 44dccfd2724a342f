// SPDX-License-Identifier: MIT
// UTF-8, suggestions, numbers as text.
#include "base/text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstdint>

namespace platewright {

namespace {

/// Words longer than this are not misspelt words; comparing them would only cost time.
constexpr std::size_t kLongestWord = 64;

/// Numbers up to this size are written by way of a whole number, which is exact there and much
/// faster.
constexpr double kExactWhole = 9007199254740992.0;

constexpr std::array<double, 10> kPowersOfTen = {1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9};

unsigned byte_at(std::string_view text, std::size_t at) {
    return static_cast<unsigned char>(text[at]);
}

bool is_continuation(unsigned byte) {
    return (byte & 0xC0U) == 0x80U;
}

/// Length in bytes of the well-formed character at `at`, or 0 (The Unicode Standard, table 3-7).
std::size_t character_length(std::string_view text, std::size_t at) {
    const unsigned lead = byte_at(text, at);
    if (lead < 0x80) {
        return 1;
    }
    const std::size_t length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
    if (lead < 0xC2 || lead > 0xF4 || at + length > text.size()) {
        return 0;
    }
    for (std::size_t i = 1; i < length; ++i) {
        if (!is_continuation(byte_at(text, at + i))) {
            return 0;
        }
    }
    const unsigned second = byte_at(text, at + 1);
    const bool overlong = (lead == 0xE0 && second < 0xA0) || (lead == 0xF0 && second < 0x90);
    const bool surrogate = lead == 0xED && second > 0x9F;
    const bool too_large = lead == 0xF4 && second > 0x8F;
    return overlong || surrogate || too_large ? 0 : length;
}

/// The characters of a word, ASCII letters lower case; bytes that are not UTF-8 stand for
/// themselves.
std::vector<std::uint32_t> characters(std::string_view word) {
    std::vector<std::uint32_t> result;
    for (std::size_t at = 0; at < word.size();) {
        const std::size_t length = std::max<std::size_t>(character_length(word, at), 1);
        std::uint32_t code = 0;
        for (std::size_t i = 0; i < length; ++i) {
            code = code << 8U | byte_at(word, at + i);
        }
        result.push_back(code >= 'A' && code <= 'Z' ? code + ('a' - 'A') : code);
        at += length;
    }
    return result;
}

/// Damerau-Levenshtein distance (neighbours exchanged count one; no character is edited twice).
std::size_t distance(const std::vector<std::uint32_t>& a, const std::vector<std::uint32_t>& b) {
    std::vector<std::size_t> before_last(b.size() + 1);
    std::vector<std::size_t> last(b.size() + 1);
    std::vector<std::size_t> row(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j) {
        row[j] = j;
    }
    for (std::size_t i = 1; i <= a.size(); ++i) {
        before_last.swap(last);
        last.swap(row);
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t change = a[i - 1] == b[j - 1] ? 0 : 1;
            row[j] = std::min({last[j] + 1, row[j - 1] + 1, last[j - 1] + change});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) {
                row[j] = std::min(row[j], before_last[j - 2] + 1);
            }
        }
    }
    return row[b.size()];
}

/// Takes off zeros after the decimal point, and the point if nothing is left behind it.
std::string_view without_trailing_zeros(std::string_view digits) {
    if (digits.find('.') == std::string_view::npos) {
        return digits;
    }
    while (digits.back() == '0') {
        digits.remove_suffix(1);
    }
    if (digits.back() == '.') {
        digits.remove_suffix(1);
    }
    return digits;
}

/// `whole` / 10^`decimals` as decimal digits.
void append_fixed(std::string& to, std::uint64_t whole, int decimals) {
    while (decimals > 0 && whole % 10 == 0) {
        whole /= 10;
        --decimals;
    }
    std::array<char, 32> buffer{};
    auto at = buffer.end();
    for (int written = 0; whole != 0 || written <= decimals; ++written) {
        if (written == decimals && decimals > 0) {
            *--at = '.';
        }
        *--at = static_cast<char>('0' + whole % 10);
        whole /= 10;
    }
    to.append(at, buffer.end());
}

/// For numbers too large for `append_fixed`.
void append_large(std::string& to, double value, int decimals) {
    std::array<char, 400> buffer{};
    const auto end = std::to_chars(
        buffer.data(), buffer.data() + buffer.size(), value, std::chars_format::fixed, decimals);
    to +=
        without_trailing_zeros({buffer.data(), static_cast<std::size_t>(end.ptr - buffer.data())});
}

}  // namespace

std::optional<std::size_t> invalid_utf8(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t length = character_length(text, at);
        if (length == 0) {
            return at;
        }
        at += length;
    }
    return std::nullopt;
}

std::size_t count_characters(std::string_view text) {
    return static_cast<std::size_t>(std::ranges::count_if(
        text, [](char c) { return !is_continuation(static_cast<unsigned char>(c)); }));
}

std::optional<std::string> nearest_word(std::string_view word,
                                        std::span<const std::string> candidates) {
    if (word.size() > kLongestWord) {
        return std::nullopt;
    }
    const std::vector<std::uint32_t> wanted = characters(word);
    if (wanted.size() < 2) {
        // Every other letter is as near as the next.
        return std::nullopt;
    }
    std::size_t least = std::max<std::size_t>(wanted.size() / 3, 1) + 1;
    const std::string* nearest = nullptr;
    for (const std::string& candidate : candidates) {
        const std::size_t length = count_characters(candidate);
        if (candidate.size() > 2 * kLongestWord || length + least <= wanted.size() ||
            wanted.size() + least <= length) {
            continue;  // each character more or less is an edit of its own
        }
        const std::size_t found = distance(wanted, characters(candidate));
        if (found < least) {
            least = found;
            nearest = &candidate;
        }
    }
    return nearest == nullptr ? std::nullopt : std::optional(*nearest);
}

std::string or_list(std::span<const std::string> words) {
    std::string list;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (i > 0) {
            list += i + 1 == words.size() ? " or " : ", ";
        }
        list += words[i];
    }
    return list;
}

std::string comma_list(std::span<const std::string> words) {
    std::string list;
    for (const std::string& each : words) {
        list += (list.empty() ? "" : ", ") + each;
    }
    return list;
}

std::string quoted(std::string_view word) {
    std::string text = "'";
    text += word;
    text += '\'';
    return text;
}

std::string format_number(double value, int decimals) {
    std::string text;
    append_number(text, value, decimals);
    return text;
}

void append_number(std::string& to, double value, int decimals) {
    decimals = std::clamp(decimals, 0, static_cast<int>(kPowersOfTen.size()) - 1);
    if (!std::isfinite(value)) {
        to += '0';
        return;
    }
    const double scaled = std::abs(value) * kPowersOfTen[static_cast<std::size_t>(decimals)];
    const bool exact = scaled < kExactWhole;
    const auto whole = exact ? static_cast<std::uint64_t>(std::llround(scaled)) : 0;
    if (value < 0 && (!exact || whole != 0)) {
        to += '-';
    }
    if (exact) {
        append_fixed(to, whole, decimals);
    } else {
        append_large(to, std::abs(value), decimals);
    }
}

std::string lower(std::string_view ascii) {
    std::string text(ascii);
    for (char& c : text) {
        if (c >= 'A' && c <= 'Z') {
            c = static_cast<char>(c - 'A' + 'a');
        }
    }
    return text;
}

std::string with_capital(std::string words) {
    const auto byte = [&](std::size_t at) { return static_cast<unsigned char>(words[at]); };
    if (!words.empty() && words[0] >= 'a' && words[0] <= 'z') {
        words[0] = static_cast<char>(words[0] - 'a' + 'A');
    } else if (words.size() > 1 && byte(0) == 0xC3 && byte(1) >= 0xA0 && byte(1) != 0xB7 &&
               byte(1) != 0xBF) {
        // In UTF-8 these letters lie 0x20 above their capitals; the division sign and ÿ do not.
        words[1] = static_cast<char>(byte(1) - 0x20);
    }
    return words;
}

std::string_view trim(std::string_view text) {
    constexpr std::string_view blanks = " \t\r\n";
    const std::size_t begin = text.find_first_not_of(blanks);
    if (begin == std::string_view::npos) {
        return {};
    }
    return text.substr(begin, text.find_last_not_of(blanks) - begin + 1);
}

std::vector<std::string_view> split(std::string_view text, char separator) {
    std::vector<std::string_view> parts;
    std::size_t begin = 0;
    for (std::size_t at = text.find(separator); at != std::string_view::npos;
         at = text.find(separator, begin)) {
        parts.push_back(text.substr(begin, at - begin));
        begin = at + 1;
    }
    parts.push_back(text.substr(begin));
    return parts;
}

}  // namespace platewright
