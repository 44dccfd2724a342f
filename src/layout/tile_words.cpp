// SPDX-License-Identifier: MIT
// Names of tiles, and the words beneath their map.
#include "layout/tile_words.h"

#include <algorithm>
#include <utility>

#include "words/workshop_messages.h"

namespace platewright {
namespace {

/// Numbers of the pieces that are on the tiles, and of those that are not nor are cut by another.
std::pair<std::vector<int>, std::vector<int>> held_and_others(const WorkshopSheets& sheets) {
    std::vector<int> held;
    std::vector<int> others;
    for (const PatternPiece& piece : sheets.full_size) {
        held.push_back(piece.number_in_list);
    }
    for (const PatternPiece& piece : sheets.pieces) {
        const bool here = std::ranges::find(held, piece.number_in_list) != held.end();
        if (!here && !piece.repeats) {
            others.push_back(piece.number_in_list);
        }
    }
    return {std::move(held), std::move(others)};
}

}  // namespace

std::string tile_name(int row, int column) {
    std::string letters;
    for (int rest = row; rest >= 0; rest = rest / 26 - 1) {
        letters.insert(letters.begin(), static_cast<char>('A' + rest % 26));
    }
    return letters + std::to_string(column + 1);
}

std::string words_of_tiles(const WorkshopSheets& sheets) {
    return say(sheets.language,
               sheets.whole_garments ? messages::kFullSize : messages::kFacingsFullSize);
}

std::string allowance_words(const WorkshopSheets& sheets) {
    return sheets.allowance > 0 ? say(sheets.language,
                                      messages::kAllowance,
                                      {number_words(sheets.language, sheets.allowance, 1)})
                                : say(sheets.language, messages::kNoAllowance);
}

std::string number_ranges(const std::vector<int>& numbers) {
    std::string words;
    for (std::size_t i = 0; i < numbers.size();) {
        std::size_t last = i;
        while (last + 1 < numbers.size() && numbers[last + 1] == numbers[last] + 1) {
            ++last;
        }
        words += (words.empty() ? "" : ", ") + std::to_string(numbers[i]);
        // Two neighbours are no range.
        words += last > i ? (last > i + 1 ? "–" : ", ") + std::to_string(numbers[last]) : "";
        i = last + 1;
    }
    return words;
}

std::vector<std::string> words_of_map(const WorkshopSheets& sheets, double overlap) {
    const Language language = sheets.language;
    std::vector<std::string> all{
        say(language, messages::kMapPrint),
        say(language,
            messages::kMapPaste,
            {number_words(language, overlap, 0), allowance_words(sheets)})};
    const auto [held, others] = held_and_others(sheets);
    if (!others.empty()) {
        all.push_back(
            say(language, messages::kMapHolds, {number_ranges(held), number_ranges(others)}));
    }
    all.push_back(say(language, messages::kMapDrafts));
    return all;
}

}  // namespace platewright
