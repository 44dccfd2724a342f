// SPDX-License-Identifier: MIT
// A line of a source file as it is shown under a message.
#include "cli/excerpt.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <utility>
#include <vector>

#include "base/text.h"

namespace platewright::cli {
namespace {

/// Columns of a line that are shown, and of them before the underline.
constexpr std::size_t kColumns = 100;
constexpr std::size_t kBefore = 40;
constexpr std::string_view kCut = "…";

struct Character {
    std::uint32_t code = 0;
    std::size_t bytes = 1;
    bool valid = true;
};

Character character_at(std::string_view text, std::size_t at) {
    const auto lead = static_cast<unsigned char>(text[at]);
    const std::size_t bytes = lead < 0x80 ? 1 : lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
    if (at + bytes > text.size() || invalid_utf8(text.substr(at, bytes))) {
        return {lead, 1, false};
    }
    std::uint32_t code = bytes == 1 ? lead : lead & (0x7FU >> bytes);
    for (std::size_t i = 1; i < bytes; ++i) {
        code = code << 6U | (static_cast<unsigned char>(text[at + i]) & 0x3FU);
    }
    return {code, bytes, true};
}

using Range = std::pair<std::uint32_t, std::uint32_t>;

bool in(std::uint32_t code, const auto& ranges) {
    return std::any_of(ranges.begin(), ranges.end(), [code](const Range& range) {
        return code >= range.first && code <= range.second;
    });
}

/// East Asian wide and emoji, the blocks of Unicode Standard Annex 11.
bool is_wide(std::uint32_t code) {
    constexpr std::array<Range, 8> wide = {{{0x1100, 0x115F},
                                            {0x2E80, 0x303E},
                                            {0x3041, 0xA4CF},
                                            {0xAC00, 0xD7A3},
                                            {0xF900, 0xFAFF},
                                            {0xFE30, 0xFE6F},
                                            {0xFF00, 0xFF60},
                                            {0x1F300, 0x3FFFD}}};
    return in(code, wide);
}

/// Marks that are set on the letter before.
bool is_combining(std::uint32_t code) {
    constexpr std::array<Range, 5> marks = {
        {{0x0300, 0x036F}, {0x1AB0, 0x1AFF}, {0x1DC0, 0x1DFF}, {0x20D0, 0x20FF}, {0xFE00, 0xFE0F}}};
    return in(code, marks);
}

/// Invisible characters that change what is seen around them.
bool is_treacherous(std::uint32_t code) {
    constexpr std::array<Range, 6> hidden = {{{0x80, 0x9F},
                                              {0x061C, 0x061C},
                                              {0x200B, 0x200F},
                                              {0x2028, 0x202E},
                                              {0x2060, 0x206F},
                                              {0xFEFF, 0xFEFF}}};
    return in(code, hidden);
}

std::string code_point(std::uint32_t code) {
    constexpr std::string_view digits = "0123456789ABCDEF";
    std::string text;
    for (int shift = 12; shift >= 0; shift -= 4) {
        text += digits[(code >> static_cast<unsigned>(shift)) & 0xFU];
    }
    return "<U+" + text + ">";
}

/// One character as shown, with the columns it takes.
std::pair<std::string, std::size_t> shown(const Character& character, std::string_view bytes) {
    if (!character.valid) {
        return {"\xEF\xBF\xBD", 1};
    }
    if (character.code == '\t') {
        return {"→   ", 4};
    }
    if (character.code < 0x20 || character.code == 0x7F) {
        // The pictures of control characters stand in one block, that of DEL apart.
        const char last =
            character.code == 0x7F ? '\xA1' : static_cast<char>(0x80U + character.code);
        return {std::string("\xE2\x90") + last, 1};
    }
    if (is_treacherous(character.code)) {
        std::string text = code_point(character.code);
        const std::size_t columns = text.size();
        return {std::move(text), columns};
    }
    const std::size_t columns = is_combining(character.code) ? 0 : is_wide(character.code) ? 2 : 1;
    return {std::string(bytes), columns};
}

/// A character of the line, placed.
struct Cell {
    std::string text;
    std::size_t byte = 0;
    std::size_t column = 0;
    std::size_t columns = 0;
};

/// Up to `most` bytes about the underline: a line of a megabyte is not looked at whole.
std::vector<Cell> cells_of(std::string_view line, std::size_t from, std::size_t most) {
    std::vector<Cell> cells;
    std::size_t column = 0;
    const std::size_t end = std::min(line.size(), from + most);
    for (std::size_t at = from; at < end;) {
        const Character character = character_at(line, at);
        auto [text, columns] = shown(character, line.substr(at, character.bytes));
        cells.push_back({std::move(text), at, column, columns});
        column += columns;
        at += character.bytes;
    }
    return cells;
}

std::size_t column_of(const std::vector<Cell>& cells, std::size_t byte) {
    for (const Cell& cell : cells) {
        if (cell.byte >= byte) {
            return cell.column;
        }
    }
    return cells.empty() ? 0 : cells.back().column + cells.back().columns;
}

/// The first byte of a character not after `at`.
std::size_t character_begin(std::string_view text, std::size_t at) {
    while (at > 0 && at < text.size() && (static_cast<unsigned char>(text[at]) & 0xC0U) == 0x80U) {
        --at;
    }
    return at;
}

}  // namespace

std::string visible(std::string_view text, std::size_t* columns) {
    std::string result;
    for (std::size_t at = 0; at < text.size();) {
        const Character character = character_at(text, at);
        const auto [piece, width] = shown(character, text.substr(at, character.bytes));
        result += piece;
        if (columns != nullptr) {
            *columns += width;
        }
        at += character.bytes;
    }
    return result;
}

std::string excerpt(std::string_view line, std::size_t begin, std::size_t end, std::size_t indent) {
    constexpr std::size_t bytes_looked = 4 * (kColumns + kBefore);
    begin = std::min(begin, line.size());
    const std::size_t from = begin > bytes_looked ? character_begin(line, begin - bytes_looked) : 0;
    const std::vector<Cell> cells = cells_of(line, from, 2 * bytes_looked);
    const std::size_t first = column_of(cells, begin);
    const std::size_t last = std::max(column_of(cells, std::max(end, begin)), first + 1);
    const std::size_t all = column_of(cells, line.size());

    const bool fits = from == 0 && all <= kColumns;
    const std::size_t left = fits || first <= kBefore ? 0 : first - kBefore;
    const std::size_t right = fits ? std::max(all, last) : left + kColumns;
    std::string shown_line;
    std::size_t skipped = left;
    for (const Cell& cell : cells) {
        if (cell.column >= left && cell.column + cell.columns <= right) {
            shown_line += cell.text;
        } else if (cell.column < left && cell.column + cell.columns > left) {
            // A wide character cut in two leaves a gap of its second half.
            skipped = cell.column + cell.columns;
        }
    }
    const std::string margin(indent, ' ');
    const bool cut_left = left > 0 || from > 0;
    const bool cut_right = all > right;
    std::string text = margin + (cut_left ? std::string(kCut) : "") + shown_line +
                       (cut_right ? std::string(kCut) : "") + "\n";
    text += margin + std::string(first - skipped + (cut_left ? 1 : 0), ' ') +
            std::string(std::min(last, std::max(right, first + 1)) - first, '^') + "\n";
    return text;
}

}  // namespace platewright::cli
