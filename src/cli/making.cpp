// SPDX-License-Identifier: MIT
// Seams, and the order of work.
#include "cli/making.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <string_view>

#include "pattern/named_seams.h"
#include "pattern/seams.h"
#include "pattern/shapes.h"
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
    {"coat", "fore turnback", messages::kCoatTurnbacks},
    {"coat", "upper sleeve", messages::kCoatLining},
    {"coat", "collar", messages::kCoatCollar},
    {"coat", "upper sleeve", messages::kCoatSleeves},
    {"coat", "cuff", messages::kCoatCuffs},
    {"coat", "upper sleeve", messages::kCoatSetIn},
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

const PatternPiece* piece_of_breeches(const std::vector<PatternPiece>& pieces, const char* name) {
    const auto found = std::ranges::find_if(pieces, [name](const PatternPiece& piece) {
        return piece.garment == "breeches" && piece.name == name && !piece.is_lining;
    });
    return found == pieces.end() ? nullptr : &*found;
}

/// From the upper end of a seam of a leg along it, and straight on to the height of its hem.
double down_seam(const PatternPiece& leg, const char* name) {
    const auto seam = std::ranges::find(leg.seams, name, &Seam::name);
    if (seam == leg.seams.end() || seam->line.empty()) {
        return 0;
    }
    const double foot = std::max(seam->line.front().y, seam->line.back().y);
    const Chain hem = lower_edge(leg.outline);
    const double end = seam->name == "side seam" ? hem.back().y : hem.front().y;
    return length_of(seam->line) + std::max(0.0, end - foot);
}

/// What the man has on his leg, which the flats do not tell. Nothing without knee bands.
std::optional<std::string> breeches_lengths(Language language,
                                            const std::vector<PatternPiece>& pieces) {
    const PatternPiece* leg = piece_of_breeches(pieces, "fore leg");
    const PatternPiece* knee = piece_of_breeches(pieces, "knee band");
    const PatternPiece* waist = piece_of_breeches(pieces, "waistband");
    if (leg == nullptr || knee == nullptr || waist == nullptr) {
        return std::nullopt;
    }
    // The knee band is folded along its middle.
    const double below = shapes::box(knee->outline).width() / 2;
    const double above = shapes::box(waist->outline).width();
    const double side = down_seam(*leg, "side seam") + below;
    const double inside_leg = down_seam(*leg, "inside leg seam") + below;
    const auto mm = [language](double value) { return number_words(language, value, 0); };
    return say(language, messages::kBreechesLengths, {mm(side), mm(side + above), mm(inside_leg)});
}

}  // namespace

SeamTable seam_table(Language language, const std::vector<PatternPiece>& pieces) {
    SeamTable made;
    made.title = say(language, messages::kSeams);
    made.headings = {say(language, messages::kSeam),
                     say(language, messages::kPiecesHere),
                     say(language, messages::kLengthHere),
                     say(language, messages::kSewnTo),
                     say(language, messages::kLengthHere),
                     say(language, messages::kSeamEase)};
    for (const PairedSeam& seam : paired_seams(pieces)) {
        if (made.garments.empty() || made.garments.back().garment != seam.garment) {
            made.garments.push_back({seam.garment, {}, {}});
        }
        made.garments.back().rows.push_back(row_of(seam, language));
    }
    made.remark = say(language, messages::kSeamsRemark);
    if (const auto words = breeches_lengths(language, pieces)) {
        const auto breeches = std::ranges::find(made.garments, "breeches", &GarmentSeams::garment);
        if (breeches != made.garments.end()) {
            breeches->remarks = {*words};
        }
    }
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
