// SPDX-License-Identifier: MIT
// The waistcoat: foreparts, faced inside along their front, and backs.
#include <algorithm>
#include <string>

#include "pattern/draft.h"
#include "pattern/named_seams.h"
#include "pattern/placing.h"
#include "pattern/pockets.h"
#include "pattern/seams.h"
#include "pattern/shapes.h"
#include "pattern/shoulders.h"
#include "pattern/stiffening.h"
#include "words/workshop_messages.h"

namespace platewright {
namespace {

/// How wide the cloth is that faces the front of a waistcoat inside, mm. Common practice, no
/// source.
constexpr double kFrontFacing = 55;
/// A shorter opening of the middle behind is none, mm.
constexpr double kLeastVent = 20;

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
            add_forepart(*before, shoulder);
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

    void add_forepart(const FlatPart& part, const std::optional<Shoulder>& shoulder) {
        PatternPiece piece = draft_of("waistcoat", "forepart", part);
        piece.outline = shapes::joined(part.outline);
        if (shoulder) {
            piece.outline = shapes::joined({piece.outline, shoulder->strip});
        }
        piece.buttons = buttons_of(part);
        piece.holes = holes_of(part);
        piece.closes_in_front = !piece.holes.empty() && !piece.buttons.empty();
        for (const auto& [from, to] : mouths_of(front_, "waistcoat-flap-left")) {
            piece.slits.push_back({from, to});
        }
        add_notch(piece, {crossing(piece.outline, waist()).greatest, waist()});
        mark_waist_in_front(piece);
        piece.lined_part = shapes::without(piece.outline, beside_front(piece.outline));
        PatternPiece facing = piece;
        if (shoulder) {
            name_seam(piece, "shoulder seam", shoulder->neck_before, shoulder->end_before);
        }
        if (const Chain* chest = front_.guide("girth-chest")) {
            const double y = chest->front().y;
            name_seam(piece,
                      "side seam",
                      {crossing(piece.outline, y).greatest, y},
                      outer_corner(piece.outline, 1));
        }
        keep(std::move(piece));
        if (!facing.outline.empty()) {
            add_front_facing(std::move(facing));
        }
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
            name_seam(piece, "side seam", piece.inlay_seam.front(), piece.inlay_seam.back());
        }
        add_notch(piece, {crossing(piece.outline, waist()).least, waist()});
        if (const Chain* middle = back_.guide("back-seam")) {
            open_vent(piece, middle->back());
            name_seam(piece, "back seam", middle->front(), middle->back(), Join::mirrored);
        }
        place_tapes(piece, back_);
        // Neck and shoulder run into one another: here one ends and the other begins.
        if (const Chain* shoulder = back_.guide("shoulder-seam-left")) {
            add_notch(piece, shoulder->front());
            name_seam(piece, "shoulder seam", shoulder->front(), shoulder->back());
        }
        keep(std::move(piece));
    }

    /// The seam of the middle ends where the vent begins.
    void open_vent(PatternPiece& piece, Point begins) const {
        if (shapes::box(piece.outline).bottom - begins.y > kLeastVent) {
            add_notch(piece, begins);
            piece.remarks.push_back(say(source_.uniform.language, messages::kVentOpenBelow));
        }
    }

    /// All that lies near the neck and the front edge, from the shoulder down to the hem.
    [[nodiscard]] Chain beside_front(const Chain& outline) const {
        const Chain* shoulder = back_.guide("shoulder-left");
        const Point neck = shoulder != nullptr ? Point{-shoulder->front().x, shoulder->front().y}
                                               : *std::ranges::min_element(outline, {}, &Point::y);
        return shapes::near_line(seam_between(outline, neck, outer_corner(outline, -1)),
                                 kFrontFacing);
    }

    /// Cloth behind buttons and holes: a strip along neck and front edge, beside which the lining
    /// begins.
    void add_front_facing(PatternPiece piece) {
        const auto last = std::ranges::max_element(piece.buttons, {}, &Point::y);
        const double buttoned = last != piece.buttons.end() ? last->y : waist();
        piece.name = "front facing";
        piece.outline = shapes::common({piece.outline}, beside_front(piece.outline));
        piece.lined_part.clear();
        piece.lines.clear();
        piece.slits.clear();
        piece.buttons.clear();
        piece.holes.clear();
        piece.closes_in_front = false;
        piece.notches.clear();
        mark_waist_in_front(piece);
        PatternPiece canvas = front_canvas(source_, piece, buttoned);
        keep(std::move(piece));
        keep(std::move(canvas));
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
