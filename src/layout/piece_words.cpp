// SPDX-License-Identifier: MIT
// What is said beneath a pattern piece.
#include "layout/piece_words.h"

#include <algorithm>

#include "base/text.h"
#include "pattern/pockets.h"
#include "words/sheet_messages.h"
#include "words/terms.h"
#include "words/workshop_messages.h"

namespace platewright {
namespace {

/// Its cloth, and what else is cut by its pattern.
std::string stuffs_of(const PatternPiece& piece, Language language) {
    const int times = times_stiffened(piece);
    const bool stiff = times > 0;
    if (!piece.lined && !stiff) {
        return piece.cloth.printed();
    }
    const Message& message = !stiff                 ? messages::kAndLining
                             : piece.lined          ? messages::kAndLiningAndStiffLinen
                             : times < piece.number ? messages::kAndStiffLinenOnce
                                                    : messages::kAndStiffLinen;
    return say(language, message, {piece.cloth.printed()});
}

/// `15  coat: forepart, lining`.
std::string name_in_words(const PatternPiece& piece, Language language) {
    std::string name = say(language,
                           messages::kNameAndValue,
                           {term(language, piece.garment), term(language, piece.name)});
    if (piece.is_lining) {
        name = say(language, messages::kLiningOf, {name});
    }
    if (piece.number_in_list > 0) {
        name = say(language, messages::kNumbered, {std::to_string(piece.number_in_list), name});
    }
    return name;
}

/// `cut 2, half of them mirrored`.
std::string number_to_cut(const PatternPiece& piece, Language language) {
    const bool mirrored = piece.paired && piece.number > 1;
    std::string cut = say(language,
                          mirrored ? messages::kCutMirrored : messages::kCut,
                          {std::to_string(piece.number)});
    return piece.on_fold ? say(language, messages::kOnTheFold, {cut}) : cut;
}

/// What to know of the lining that is cut by the pattern.
void add_lining_alike(const PatternPiece& piece,
                      Language language,
                      std::vector<std::string>& words) {
    if (piece.lining_alike == 0) {
        return;
    }
    words.push_back(say(language,
                        piece.inlay > 0 ? messages::kLiningWithoutInlay : messages::kLiningAlike,
                        {std::to_string(piece.lining_alike)}));
    if (std::ranges::any_of(piece.slits,
                            [&](const Chain& slit) { return is_mouth(slit, piece.outline); })) {
        words.push_back(say(language, messages::kMouthsNotInLining));
    }
}

/// What goes in beyond the seams: ease and inlay.
void add_room(const PatternPiece& piece, Language language, std::vector<std::string>& words) {
    if (piece.ease > 0) {
        words.push_back(
            say(language,
                piece.garment == "breeches" ? messages::kTopGathered : messages::kHeadEase,
                {number_words(language, piece.ease, 0)}));
    }
    if (piece.closes_in_front) {
        words.push_back(say(language, messages::kHolesOnLeft));
    }
    if (piece.inlay > 0) {
        const bool within = piece.cut != piece.outline;
        words.push_back(say(language,
                            piece.inlay_runs_out ? messages::kInlayRunsOut
                            : within             ? messages::kInlayWithin
                                                 : messages::kInlayAt,
                            {number_words(language, piece.inlay, 0)}));
    }
}

}  // namespace

std::vector<std::string> cutting_words(const PatternPiece& piece, Language language) {
    std::vector<std::string> words{name_in_words(piece, language), number_to_cut(piece, language)};
    if (!piece.cloth.name.empty()) {
        words.push_back(stuffs_of(piece, language));
    }
    add_lining_alike(piece, language, words);
    add_room(piece, language, words);
    words.insert(words.end(), piece.remarks.begin(), piece.remarks.end());
    if (piece.at_line) {
        words.push_back(say(language, messages::kAtTheLine));
    }
    return words;
}

}  // namespace platewright
