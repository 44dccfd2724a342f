// SPDX-License-Identifier: MIT
// The finishing touches to every piece.
#include "pattern/pieces.h"
#include "pattern/shapes.h"

namespace platewright {
namespace {

void shift(Chain& chain, Point by) {
    for (Point& p : chain) {
        p = p - by;
    }
}

}  // namespace

double area_of(const PatternPiece& piece) {
    return shapes::area(piece.outline) * (piece.on_fold ? 2 : 1);
}

void finish(PatternPiece& piece, double allowance) {
    const Rect box = shapes::box(piece.outline);
    const Point corner{box.left, box.top};
    shift(piece.outline, corner);
    for (Chain& line : piece.lines) {
        shift(line, corner);
    }
    shift(piece.buttons, corner);
    for (auto& [from, to] : piece.notches) {
        from = from - corner;
        to = to - corner;
    }
    piece.cut = shapes::enlarged(piece.outline, allowance);
    if (piece.on_fold && allowance > 0) {
        // Nothing is added at the fold.
        constexpr double far = shapes::kBeyondAll;
        piece.cut = shapes::within({piece.cut}, {0, -far, far, far});
    }
}

}  // namespace platewright
