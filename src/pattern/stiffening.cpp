// SPDX-License-Identifier: MIT
// Stiff linen, cut to the pieces that it stiffens.
#include "pattern/stiffening.h"

#include "pattern/draft.h"
#include "pattern/seams.h"
#include "pattern/shapes.h"
#include "words/terms.h"

namespace platewright {
namespace {

/// How far the canvas of a waistcoat's front reaches below its last button, and that of a fall
/// below its upper edge, mm. Common practice, no source.
constexpr double kBelowLastButton = 25;
constexpr double kFallCanvas = 40;

}  // namespace

PatternPiece canvas_of(const PatternSource& source,
                       const PatternPiece& stiffened,
                       const char* name) {
    PatternPiece piece{
        .garment = stiffened.garment, .name = name, .cloth = {}, .cloth_key = stiffened.cloth_key};
    piece.stuff = "interlining";
    piece.cloth.name = term(source.uniform.language, "stiff linen");
    piece.number = 2;
    piece.paired = true;
    piece.draft = true;
    piece.at_line = true;
    return piece;
}

PatternPiece front_canvas(const PatternSource& source, const PatternPiece& facing, double last) {
    PatternPiece piece = canvas_of(source, facing, "front canvas");
    constexpr double far = shapes::kBeyondAll;
    piece.outline = shapes::within({facing.outline}, {-far, -far, far, last + kBelowLastButton});
    return piece;
}

PatternPiece waistband_canvas(const PatternSource& source, const PatternPiece& band) {
    PatternPiece piece = canvas_of(source, band, "waistband canvas");
    piece.outline = band.outline;
    return piece;
}

PatternPiece knee_band_canvas(const PatternSource& source, const PatternPiece& band) {
    PatternPiece piece = canvas_of(source, band, "knee band canvas");
    const Rect box = shapes::box(band.outline);
    piece.outline = shapes::within({band.outline}, {box.left, box.top, box.centre().x, box.bottom});
    piece.paired = false;
    return piece;
}

std::optional<PatternPiece> fall_canvas(const PatternSource& source, const PatternPiece& fore_leg) {
    const Flat* front = source.flat("flat-breeches-front");
    const FlatPart* fall = front != nullptr ? front->part("fall") : nullptr;
    const Chain half = fall != nullptr ? between_uprights(*fall, 0, shapes::kBeyondAll) : Chain{};
    if (half.empty()) {
        return std::nullopt;
    }
    PatternPiece piece = canvas_of(source, fore_leg, "fall canvas");
    piece.outline = shapes::common({half}, shapes::near_line(upper_edge(half), kFallCanvas));
    return piece;
}

}  // namespace platewright
