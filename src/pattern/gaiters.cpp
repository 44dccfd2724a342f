// SPDX-License-Identifier: MIT
// Gaiters: an inner side, and an outer one that opens where it is buttoned.
#include <string>
#include <vector>

#include "pattern/draft.h"
#include "pattern/named_seams.h"
#include "pattern/placing.h"
#include "pattern/seams.h"

namespace platewright {
namespace {

/// Beyond the line of buttons the fore part laps over by so much, for its holes, and the hind part
/// passes under it by so much, for the shanks, mm. Common practice, no source.
constexpr double kLap = 14;
constexpr double kUnder = 30;
/// Where the sides are marked to be sewn together, on the flats.
constexpr double kCalf = 300;

class Gaiters {
  public:
    explicit Gaiters(const PatternSource& source) : source_(source) {}

    std::vector<PatternPiece> all() {
        if (const FlatPart* part = side("flat-gaiter-outer")) {
            add_outer(*part);
        }
        if (const FlatPart* part = side("flat-gaiter-inner")) {
            PatternPiece piece = draft_of("gaiters", "inner side", *part);
            piece.outline = shapes::joined(part->outline);
            add_notches_at(piece, kCalf);
            // It shows its other face: the toe points to the right.
            const Chain top = upper_edge(piece.outline);
            const Chain foot = lower_edge(piece.outline);
            name_seam(piece, "front seam", top.back(), foot.back());
            name_seam(piece, "seam behind", top.front(), foot.front());
            keep(std::move(piece));
        }
        return std::move(pieces_);
    }

  private:
    const PatternSource& source_;
    std::vector<PatternPiece> pieces_;

    [[nodiscard]] const FlatPart* side(const std::string& view) const {
        const Flat* flat = source_.flat(view);
        return flat == nullptr ? nullptr : flat->part("gaiter-");
    }

    void keep(PatternPiece piece) { keep_drawn(std::move(piece), source_.allowance, pieces_); }

    /// On either side of a line that is full of them.
    static void say_beside_buttons(PatternPiece& side, const Chain& line, double beside) {
        Chain moved;
        for (const Point p : line) {
            moved.push_back(p + Point{beside, 0});
        }
        say_along(side, moved, "line of buttons");
    }

    /// The seams over the instep and behind the calf; the toe points to the left of the page.
    static void name_sides(PatternPiece& side, bool fore, bool hind) {
        const Chain top = upper_edge(side.outline);
        const Chain foot = lower_edge(side.outline);
        if (top.empty() || foot.empty()) {
            return;
        }
        if (fore) {
            name_seam(side, "front seam", top.front(), foot.front());
        }
        if (hind) {
            name_seam(side, "seam behind", top.back(), foot.back());
        }
    }

    /// The toe points to the left of the page.
    void add_outer(const FlatPart& part) {
        const Chain whole = shapes::joined(part.outline);
        const FlatRow* buttons = nullptr;
        for (const FlatRow& row : part.rows) {
            buttons = row.kind == FlatRow::Kind::buttons ? &row : buttons;
        }
        if (buttons == nullptr || buttons->line.size() < 2) {
            PatternPiece piece = draft_of("gaiters", "outer side", part);
            piece.outline = whole;
            add_notches_at(piece, kCalf);
            name_sides(piece, /*fore=*/true, /*hind=*/true);
            keep(std::move(piece));
            return;
        }
        const Chain& line = buttons->line;
        PatternPiece fore = draft_of("gaiters", "outer side, fore part", part);
        fore.outline = shapes::common({whole}, beside(line, -1, kLap));
        fore.lines = {line};
        say_beside_buttons(fore, line, -kLap - 12);
        name_sides(fore, /*fore=*/true, /*hind=*/false);
        fore.holes = holes_of(part);
        place_strap_button(fore, *source_.flat("flat-gaiter-outer"));
        add_notch(fore, {crossing(fore.outline, kCalf).least, kCalf});
        keep(std::move(fore));
        PatternPiece hind = draft_of("gaiters", "outer side, hind part", part);
        hind.outline = shapes::common({whole}, beside(line, 1, kUnder));
        hind.lines = {line};
        say_beside_buttons(hind, line, 14);
        name_sides(hind, /*fore=*/false, /*hind=*/true);
        hind.buttons = buttons->at;
        place_strap_button(hind, *source_.flat("flat-gaiter-outer"));
        add_notch(hind, {crossing(hind.outline, kCalf).greatest, kCalf});
        keep(std::move(hind));
    }
};

}  // namespace

std::vector<PatternPiece> gaiter_pieces(const PatternSource& source) {
    return Gaiters(source).all();
}

}  // namespace platewright
