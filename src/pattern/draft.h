// SPDX-License-Identifier: MIT
// What the drafts of all garments begin with.
#pragma once

#include <algorithm>
#include <string>

#include "pattern/pieces.h"
#include "pattern/shapes.h"

namespace platewright {

/// A pair of pieces of the part's cloth, its outline still to be drawn.
inline PatternPiece draft_of(const char* garment, const char* name, const FlatPart& part) {
    PatternPiece piece{
        .garment = garment, .name = name, .cloth = part.cloth, .cloth_key = part.cloth_key};
    piece.number = 2;
    piece.paired = true;
    piece.draft = true;
    return piece;
}

/// What of a part lies between two uprights of its flat.
inline Chain between_uprights(const FlatPart& part, double from, double to) {
    return shapes::within(part.outline, {from, -shapes::kBeyondAll, to, shapes::kBeyondAll});
}

/// Beyond the cut at a side seam, to let out later, mm. Common practice, no source.
inline constexpr double kInlay = 25;

/// Where side and hem meet: on the right of the page, or with -1 on the left.
inline Point outer_corner(const Chain& outline, double side) {
    return *std::max_element(outline.begin(), outline.end(), [side](Point a, Point b) {
        return side * a.x + a.y < side * b.x + b.y;
    });
}

}  // namespace platewright
