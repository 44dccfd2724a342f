// SPDX-License-Identifier: MIT
// The waistcoat: foreparts, faced inside along their front, and backs.
#include <algorithm>
#include <string>

#include "pattern/draft.h"
#include "pattern/placing.h"
#include "pattern/pockets.h"
#include "pattern/seams.h"
#include "pattern/shapes.h"
#include "pattern/shoulders.h"

namespace platewright {
namespace {

/// How wide the cloth is that faces the front of a waistcoat inside, mm. Common practice, no
/// source.
constexpr double kFrontFacing = 55;
/// How far apart the heights are at which its edge is found, mm.
constexpr double kFacingStep = 5;

class Waistcoat {
  public:
    Waistcoat(const PatternSource& source, const Flat& front, const Flat& back)
        : source_(source), front_(front), back_(back) {}

    std::vector<PatternPiece> all() {
        const FlatPart* behind = back_.part("waistcoat-back");
        const Chain half =
            behind != nullptr ? between_uprights(*behind, -shapes::kBeyondAll, 0) : Chain{};
        const auto shoulder = shoulder_of(back_, half);
        const FlatPart* before = front_.part("waistcoat-left");
        before = before != nullptr ? before : front_.part("waistcoat-double-left");
        if (before != nullptr) {
            add_forepart(*before, shoulder ? shoulder->strip : Chain{});
        }
        if (behind != nullptr) {
            add_back(*behind, shoulder ? shoulder->back : half);
        }
        return std::move(pieces_);
    }

  private:
    const PatternSource& source_;
    const Flat& front_;
    const Flat& back_;
    std::vector<PatternPiece> pieces_;

    void keep(PatternPiece piece) { keep_drawn(std::move(piece), source_.allowance, pieces_); }

    /// The flats hang from the nape.
    [[nodiscard]] double waist() const { return source_.body.of(BodyMeasure::nape_to_waist); }

    void mark_waist_in_front(PatternPiece& piece) const {
        add_notch(piece, {crossing(piece.outline, waist()).least, waist()});
    }

    void add_forepart(const FlatPart& part, const Chain& strip) {
        PatternPiece piece = draft_of("waistcoat", "forepart", part);
        piece.outline = shapes::joined(part.outline);
        if (!strip.empty()) {
            piece.outline = shapes::joined({piece.outline, strip});
        }
        piece.buttons = buttons_of(part);
        piece.holes = holes_of(part);
        piece.closes_in_front = !piece.holes.empty() && !piece.buttons.empty();
        for (const auto& [from, to] : mouths_of(front_, "waistcoat-flap-left")) {
            piece.slits.push_back({from, to});
        }
        add_notch(piece, {crossing(piece.outline, waist()).greatest, waist()});
        mark_waist_in_front(piece);
        PatternPiece facing = piece;
        keep(std::move(piece));
        add_front_facing(std::move(facing));
    }

    void add_back(const FlatPart& part, const Chain& half) {
        PatternPiece piece = draft_of("waistcoat", "back", part);
        piece.outline = half;
        if (const Chain* chest = back_.guide("girth-chest")) {
            const double y = chest->front().y;
            piece.inlay = kInlay;
            piece.inlay_seam = seam_between(piece.outline,
                                            {crossing(piece.outline, y).least, y},
                                            outer_corner(piece.outline, -1));
        }
        add_notch(piece, {crossing(piece.outline, waist()).least, waist()});
        place_tapes(piece, back_);
        // Neck and shoulder run into one another: here one ends and the other begins.
        if (const Chain* shoulder = back_.guide("shoulder-seam-left")) {
            add_notch(piece, shoulder->front());
        }
        keep(std::move(piece));
    }

    /// Cloth behind buttons and holes: a strip along the front edge, beside which the lining
    /// begins.
    void add_front_facing(PatternPiece piece) {
        const Rect box = shapes::box(piece.outline);
        constexpr double within = 0.5;
        std::vector<double> heights;
        for (double y = box.top; y < box.bottom + kFacingStep; y += kFacingStep) {
            heights.push_back(std::clamp(y, box.top + within, box.bottom - within));
        }
        piece.name = "front facing";
        piece.outline = along_front(piece.outline, heights, [](double) { return kFrontFacing; });
        piece.lines.clear();
        piece.slits.clear();
        piece.buttons.clear();
        piece.holes.clear();
        piece.closes_in_front = false;
        piece.notches.clear();
        mark_waist_in_front(piece);
        keep(std::move(piece));
    }
};

}  // namespace

std::vector<PatternPiece> waistcoat_pieces(const PatternSource& source) {
    const Flat* front = source.flat("flat-waistcoat-front");
    const Flat* back = source.flat("flat-waistcoat-back");
    return front == nullptr || back == nullptr ? std::vector<PatternPiece>{}
                                               : Waistcoat(source, *front, *back).all();
}

}  // namespace platewright
