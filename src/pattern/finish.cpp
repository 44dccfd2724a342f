// SPDX-License-Identifier: MIT
// The finishing touches to every piece.
#include <algorithm>
#include <cmath>

#include "pattern/pieces.h"
#include "pattern/seams.h"
#include "pattern/shapes.h"

namespace platewright {
namespace {

void shift(Chain& chain, Point by) {
    for (Point& p : chain) {
        p = p - by;
    }
}

/// The seam moved out of its piece by as much as is wanted so far along it.
template <typename By>
Chain seam_moved(const Chain& seam, const Chain& outline, const By& by) {
    const Point across = right_of(unit(seam[1] - seam[0]));
    const Point middle = (seam[0] + seam[1]) * 0.5;
    const double outward = inside({outline}, middle + across * 0.5) ? -1 : 1;
    Chain moved;
    double walked = 0;
    for (std::size_t i = 0; i < seam.size(); ++i) {
        const Point before = i > 0 ? unit(seam[i] - seam[i - 1]) : Point{};
        const Point after = i + 1 < seam.size() ? unit(seam[i + 1] - seam[i]) : Point{};
        walked += i > 0 ? length(seam[i] - seam[i - 1]) : 0;
        moved.push_back(seam[i] + right_of(unit(before + after)) * (outward * by(walked)));
    }
    return moved;
}

/// Square to the edge at which a seam ends that runs on in the direction `on`.
Point off_edge_beyond(const Chain& outline, Point end, Point on) {
    const auto nearest =
        std::ranges::min_element(outline, {}, [&](Point p) { return dot(p - end, p - end); });
    const auto at = static_cast<std::size_t>(nearest - outline.begin());
    const std::size_t round = outline.size();
    Point best = on;
    double least = 2;
    for (const std::size_t next : {(at + 1) % round, (at + round - 1) % round}) {
        const Point along = unit(outline[next] - outline[at]);
        if (std::abs(dot(along, on)) < least) {
            least = std::abs(dot(along, on));
            best = right_of(along) * (dot(right_of(along), on) < 0 ? -1 : 1);
        }
    }
    return best;
}

/// Cloth beyond the seam allowance along one seam: it is cut with the piece. Of finished outlines
/// it is only shown.
void add_inlay(PatternPiece& piece, double allowance) {
    if (piece.inlay <= 0 || piece.inlay_seam.size() < 2) {
        return;
    }
    const Chain& seam = piece.inlay_seam;
    const double end = length_of(seam);
    const auto wide = [&](double walked) {
        return piece.inlay * (piece.inlay_runs_out ? 1 - walked / end : 1);
    };
    piece.inlay_line = seam_moved(
        seam, piece.outline, [&](double at) { return allowance > 0 ? allowance : wide(at); });
    if (allowance > 0) {
        Chain strip =
            seam_moved(seam, piece.outline, [&](double at) { return allowance + wide(at); });
        if (piece.inlay_runs_out) {
            // It begins at another seam, whose allowance runs out over it.
            const Point on = unit(seam[0] - seam[1]);
            const Point off = off_edge_beyond(piece.outline, seam[0], on);
            const auto up_to_cut = [&](Point from) {
                return from + on * ((allowance - dot(from - seam[0], off)) / dot(on, off));
            };
            strip.insert(strip.begin(), {up_to_cut(seam.front()), up_to_cut(strip.front())});
        }
        strip.insert(strip.end(), seam.rbegin(), seam.rend());
        piece.cut = shapes::joined({piece.cut, strip});
    }
}

}  // namespace

int times_stiffened(const PatternPiece& piece) {
    return piece.name == "collar" ? 1 : piece.lined && !piece.draft ? piece.number : 0;
}

double area_of(const PatternPiece& piece) {
    return shapes::area(piece.outline) * (piece.on_fold ? 2 : 1);
}

void finish(PatternPiece& piece, double allowance) {
    const Rect box = shapes::box(piece.outline);
    const Point corner{box.left, box.top};
    shift(piece.outline, corner);
    shift(piece.lined_part, corner);
    for (Chain& line : piece.lines) {
        shift(line, corner);
    }
    for (Chain& slit : piece.slits) {
        shift(slit, corner);
    }
    shift(piece.buttons, corner);
    shift(piece.eyelets, corner);
    shift(piece.inlay_seam, corner);
    for (auto& [from, to] : piece.holes) {
        from = from - corner;
        to = to - corner;
    }
    for (Notch& notch : piece.notches) {
        notch.at = notch.at - corner;
    }
    for (Seam& seam : piece.seams) {
        shift(seam.line, corner);
    }
    for (PieceWord& word : piece.words) {
        word.at = word.at - corner;
    }
    piece.cut = shapes::enlarged(piece.outline, allowance);
    add_inlay(piece, allowance);
    if (piece.on_fold && allowance > 0) {
        // Nothing is added at the fold.
        constexpr double far = shapes::kBeyondAll;
        piece.cut = shapes::within({piece.cut}, {0, -far, far, far});
    }
    draw_out_notches(piece);
}

}  // namespace platewright
