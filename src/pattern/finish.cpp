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

/// The seam moved out of its piece by that.
Chain seam_moved(const Chain& seam, const Chain& outline, double by) {
    const Point across = right_of(unit(seam[1] - seam[0]));
    const Point middle = (seam[0] + seam[1]) * 0.5;
    const double outward = inside({outline}, middle + across * 0.5) ? -by : by;
    Chain moved;
    for (std::size_t i = 0; i < seam.size(); ++i) {
        const Point before = i > 0 ? unit(seam[i] - seam[i - 1]) : Point{};
        const Point after = i + 1 < seam.size() ? unit(seam[i + 1] - seam[i]) : Point{};
        moved.push_back(seam[i] + right_of(unit(before + after)) * outward);
    }
    return moved;
}

/// Cloth beyond the seam allowance along one seam: it is cut with the piece. Of finished outlines
/// it is only shown.
void add_inlay(PatternPiece& piece, double allowance) {
    if (piece.inlay <= 0 || piece.inlay_seam.size() < 2) {
        return;
    }
    const Chain& seam = piece.inlay_seam;
    piece.inlay_line = seam_moved(seam, piece.outline, allowance > 0 ? allowance : piece.inlay);
    if (allowance > 0) {
        Chain strip = seam_moved(seam, piece.outline, allowance + piece.inlay);
        strip.insert(strip.end(), seam.rbegin(), seam.rend());
        piece.cut = shapes::joined({piece.cut, strip});
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
    for (Chain& slit : piece.slits) {
        shift(slit, corner);
    }
    shift(piece.buttons, corner);
    shift(piece.eyelets, corner);
    shift(piece.inlay_seam, corner);
    for (auto* pairs : {&piece.notches, &piece.holes}) {
        for (auto& [from, to] : *pairs) {
            from = from - corner;
            to = to - corner;
        }
    }
    piece.cut = shapes::enlarged(piece.outline, allowance);
    add_inlay(piece, allowance);
    if (piece.on_fold && allowance > 0) {
        // Nothing is added at the fold.
        constexpr double far = shapes::kBeyondAll;
        piece.cut = shapes::within({piece.cut}, {0, -far, far, far});
    }
}

}  // namespace platewright
