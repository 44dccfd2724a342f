// SPDX-License-Identifier: MIT
// Seams, and the order of work.
#include "cli/making.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

#include "pattern/named_seams.h"
#include "words/making_messages.h"
#include "words/terms.h"
#include "words/workshop_messages.h"

namespace platewright::cli {
namespace {

/// A step, and the piece without which there is nothing to do; empty: always.
struct Step {
    std::string_view garment;
    std::string_view piece;
    const Message& words;
};

constexpr std::array kSteps = std::to_array<Step>({
    {"coat", "", messages::kCoatMark},
    {"coat", "canvas", messages::kCoatCanvas},
    {"coat", "pocket flap", messages::kCoatPockets},
    {"coat", "lapel", messages::kCoatLapels},
    {"coat", "", messages::kCoatBody},
    {"coat", "fore turnback", messages::kCoatPleats},
    {"coat", "", messages::kCoatShoulders},
    {"coat", "upper sleeve", messages::kCoatLining},
    {"coat", "collar", messages::kCoatCollar},
    {"coat", "upper sleeve", messages::kCoatSleeves},
    {"coat", "cuff", messages::kCoatCuffs},
    {"coat", "upper sleeve", messages::kCoatSetIn},
    {"coat", "fore turnback", messages::kCoatTurnbacks},
    {"coat", "", messages::kCoatButtons},
    {"waistcoat", "pocket flap", messages::kWaistcoatPockets},
    {"waistcoat", "front facing", messages::kWaistcoatFronts},
    {"waistcoat", "", messages::kWaistcoatSeams},
    {"waistcoat", "", messages::kWaistcoatLining},
    {"waistcoat", "", messages::kWaistcoatHoles},
    {"breeches", "fall bearer", messages::kBreechesFall},
    {"breeches", "pocket welt", messages::kBreechesPockets},
    {"breeches", "", messages::kBreechesLegs},
    {"breeches", "", messages::kBreechesSeat},
    {"breeches", "waistband", messages::kBreechesBand},
    {"breeches", "knee band", messages::kBreechesKnee},
    {"breeches", "", messages::kBreechesButtons},
    {"gaiters", "buttonhole facing", messages::kGaitersFaces},
    {"gaiters", "", messages::kGaitersSeams},
    {"gaiters", "", messages::kGaitersEdges},
    {"gaiters", "foot strap", messages::kGaitersStraps},
});

std::string numbers_of(const std::vector<int>& numbers) {
    std::string words;
    for (const int number : numbers) {
        words += (words.empty() ? "" : ", ") + std::to_string(number);
    }
    return words;
}

WorkshopRow row_of(const PairedSeam& seam, Language language) {
    const double ease = std::round(seam.length_here * 10) - std::round(seam.length_there * 10);
    // Less than a millimetre is cut by no shears.
    constexpr double nothing = 10;
    std::string there = numbers_of(seam.there);
    if (seam.here == seam.there) {
        there = say(language, messages::kMirroredSelf, {there});
    }
    return {seam.letter + "  " + term(language, seam.name),
            numbers_of(seam.here),
            number_words(language, seam.length_here, 1),
            std::move(there),
            number_words(language, seam.length_there, 1),
            number_words(language, std::abs(ease) < nothing ? 0 : ease / 10, 1)};
}

}  // namespace

WorkshopTable seam_table(Language language, const std::vector<PatternPiece>& pieces) {
    WorkshopTable made;
    made.title = say(language, messages::kSeams);
    made.headings = {say(language, messages::kSeam),
                     say(language, messages::kPiecesHere),
                     say(language, messages::kLengthHere),
                     say(language, messages::kSewnTo),
                     say(language, messages::kLengthHere),
                     say(language, messages::kSeamEase)};
    made.numbers = 1;
    std::string garment;
    for (const PairedSeam& seam : paired_seams(pieces)) {
        if (seam.garment != garment) {
            garment = seam.garment;
            made.rows.push_back({title_term(language, garment)});
        }
        made.rows.push_back(row_of(seam, language));
    }
    made.remarks = {say(language, messages::kSeamsRemark)};
    return made;
}

std::vector<WorkOrder> order_of_work(Language language, const std::vector<PatternPiece>& pieces) {
    const auto is_cut = [&](std::string_view garment, std::string_view name) {
        return std::ranges::any_of(pieces, [&](const PatternPiece& piece) {
            // A garment is made where more than its facings are drafted.
            return piece.garment == garment && (name.empty() ? piece.draft : piece.name == name);
        });
    };
    std::vector<WorkOrder> orders;
    for (const Step& step : kSteps) {
        if (!is_cut(step.garment, "") || !is_cut(step.garment, step.piece)) {
            continue;
        }
        if (orders.empty() || orders.back().garment != step.garment) {
            orders.push_back({std::string(step.garment), {}});
        }
        orders.back().steps.push_back(say(language, step.words));
    }
    return orders;
}

}  // namespace platewright::cli
