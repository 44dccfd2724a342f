// SPDX-License-Identifier: MIT
// Marks on the pieces of bodies for what is sewn to them.
#include "pattern/placing.h"

#include <algorithm>

#include "pattern/draft.h"
#include "pattern/named_seams.h"
#include "pattern/seams.h"
#include "pattern/shapes.h"

namespace platewright {
namespace {

/// How long the line is at which a tape is sewn on, mm.
constexpr double kTapeRoot = 14;

/// That part of a line which lies on the piece, from where it first comes onto it.
Chain on_piece(const PatternPiece& piece, const Chain& line) {
    Chain kept;
    for (const Point p : line) {
        if (inside({piece.outline}, p)) {
            kept.push_back(p);
        } else if (!kept.empty()) {
            break;
        }
    }
    return kept;
}

void add_buttons(PatternPiece& piece, const std::vector<Point>& buttons) {
    std::ranges::copy_if(buttons, std::back_inserter(piece.buttons), [&](Point p) {
        return inside({piece.outline}, p);
    });
}

}  // namespace

void place_lapel(PatternPiece& forepart, const Flat& front) {
    for (const char* name : {"lapel-left", "lapel-half-left"}) {
        const auto lapel = std::ranges::find(front.parts, name, &FlatPart::name);
        const Chain* edge = front.guide(std::string(name) + "-outer");
        if (lapel == front.parts.end() || edge == nullptr) {
            continue;
        }
        const Chain line = on_piece(forepart, *edge);
        if (line.size() > 1) {
            forepart.lines.push_back(line);
            say_along(forepart, line, "edge of the lapel");
        }
        add_buttons(forepart, buttons_of(*lapel));
    }
}

void place_turnback(PatternPiece& skirt, const Flat& flat) {
    for (const Turnback& turnback : turnbacks_of(flat)) {
        skirt.lines.push_back(turnback.fold);
        say_along(skirt, turnback.fold, "fold of the turnback");
        add_buttons(skirt, buttons_of(turnback.corner));
    }
}

void place_hip_button(PatternPiece& back, const FlatPart& body) {
    for (const Point button : buttons_of(body)) {
        if (button.x < 0) {
            back.buttons.push_back(button);
        }
    }
}

void place_tapes(PatternPiece& back, const Flat& flat) {
    for (const FlatPart& part : flat.parts) {
        const Rect box = part.name.starts_with("tape-") && !part.outline.empty()
                             ? shapes::box(part.outline.front())
                             : Rect{};
        // Its root is the end away from the middle.
        if (!box.empty() && box.centre().x < 0) {
            const Crossing at = crossing(back.outline, box.centre().y);
            const Point root{std::max(box.left, at.least), box.centre().y};
            back.lines.push_back({root - Point{0, kTapeRoot / 2}, root + Point{0, kTapeRoot / 2}});
            say_at(back, root, "tape");
        }
    }
}

void place_strap_button(PatternPiece& side, const Flat& outer) {
    if (const FlatPart* strap = outer.part("foot-strap")) {
        add_buttons(side, buttons_of(*strap));
    }
}

void name_arm_seams(PatternPiece& half, Point hind, Point fore) {
    const Chain hem = lower_edge(half.outline);
    name_seam(half, "hind arm seam", hind, hem.back());
    name_seam(half, "fore arm seam", fore, hem.front());
    name_seam(half, "hem of the sleeve", hem.front(), hem.back());
    constexpr double within = 16;
    const Point aside{within, 0};
    say_along(half, {hem.back() - aside, hind - aside}, "hind");
    say_along(half, {hem.front() + aside, fore + aside}, "fore");
}

}  // namespace platewright
