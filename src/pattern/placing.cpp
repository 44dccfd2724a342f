// SPDX-License-Identifier: MIT
// Marks on the pieces of bodies for what is sewn to them.
#include "pattern/placing.h"

#include <algorithm>
#include <set>
#include <string>

#include "pattern/draft.h"
#include "pattern/named_seams.h"
#include "pattern/pockets.h"
#include "pattern/seams.h"
#include "pattern/shapes.h"
#include "words/terms.h"
#include "words/workshop_messages.h"

namespace platewright {
namespace {

/// How long the line is at which a tape is sewn on, mm.
constexpr double kTapeRoot = 14;

/// How long the line is at which a hook is sewn on, mm.
constexpr double kHookBar = 8;

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

/// Of the flap on the wearer's left.
std::vector<Point> pocket_buttons(const Flat& flat) {
    std::vector<Point> all;
    for (const FlatPart& part : flat.parts) {
        if (part.name.starts_with("pocket-left")) {
            std::ranges::copy(buttons_of(part), std::back_inserter(all));
        }
    }
    return all;
}

}  // namespace

void place_pockets(PatternPiece& forepart, const Flat& front) {
    for (const auto& [from, to] : mouths_of(front, "pocket-left")) {
        forepart.slits.push_back({from, to});
    }
    std::ranges::copy(pocket_buttons(front), std::back_inserter(forepart.buttons));
}

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
        name_lapel_seam(forepart, front, name);
    }
}

void name_lapel_seam(PatternPiece& piece, const Flat& front, const std::string& lapel) {
    const Chain* inner = front.guide(lapel + "-inner");
    if (inner != nullptr && inner->size() > 1 && piece.outline.size() > 2) {
        add_notch(piece, inner->back());
        name_seam(piece, "lapel seam", inner->front(), inner->back());
    }
}

void place_hook(PatternPiece& facing, const Flat& flat, const FlatPart& corner) {
    const Chain* edge = flat.guide(corner.name + "-edge");
    const Chain* fold = flat.guide(corner.name + "-fold");
    if (edge == nullptr || fold == nullptr || !buttons_of(corner).empty()) {
        return;
    }
    const Point at = hook_on(*edge, *fold);
    const Point half = unit(edge->front() - edge->back()) * (kHookBar / 2);
    facing.lines.push_back({at - half, at + half});
    say_at(facing, at, "hook");
}

void place_strap(PatternPiece& forepart, const Flat& front) {
    if (const FlatPart* strap = front.part("strap-left")) {
        add_buttons(forepart, buttons_of(*strap));
    }
}

void place_turnback(PatternPiece& skirt, const Flat& flat) {
    for (const Turnback& turnback : turnbacks_of(flat)) {
        skirt.lines.push_back(turnback.fold);
        say_along(skirt, turnback.fold, "fold of the turnback");
        const std::vector<Point> buttons = buttons_of(turnback.corner);
        add_buttons(skirt, buttons);
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

void say_which_sleeve(PatternPiece& upper, const Uniform& man) {
    std::set<std::string> sides;
    for (const char* group : {"marks.sleeves", "service.sleeves"}) {
        const PropertyId sleeves = property_id(group);
        if (man.speaks(sleeves)) {
            sides.insert(man.word(sleeves));
        }
    }
    if (!upper.lines.empty() && sides.size() == 1 && *sides.begin() != "both") {
        upper.remarks.push_back(say(man.language,
                                    messages::kMarksOnOneSleeve,
                                    {choice_term(man.language, "marks.sleeves", *sides.begin())}));
    }
}

void place_cuff_edge(PatternPiece& half, double height) {
    const Crossing at = crossing(half.outline, height);
    if (height <= 0 || !at.found) {
        return;
    }
    half.lines.push_back({{at.least, height}, {at.greatest, height}});
    // Below the line: marks may lie close above it.
    constexpr double below = 22;
    say_at(half, {(at.least + at.greatest) / 2, height + below}, "edge of the cuff");
}

namespace {

/// Beside an edge, below its middle, where the notch of the elbow is.
void say_beside(PatternPiece& piece,
                const std::pair<Point, Point>& ends,
                Point aside,
                const char* word) {
    constexpr double share = 0.3;
    constexpr double reach = 20;
    const Chain edge = seam_between(piece.outline, ends.first, ends.second);
    const double at = length_of(edge) * share;
    say_along(piece, {along(edge, at - reach) + aside, along(edge, at + reach) + aside}, word);
}

}  // namespace

void name_arm_seams(PatternPiece& half, Point hind, Point fore) {
    const Chain hem = lower_edge(half.outline);
    name_seam(half, "hind arm seam", hind, hem.back());
    name_seam(half, "fore arm seam", fore, hem.front());
    name_seam(half, "hem of the sleeve", hem.front(), hem.back());
    constexpr double within = 22;
    say_beside(half, {hem.back(), hind}, {-within, 0}, "hind");
    say_beside(half, {hem.front(), fore}, {within, 0}, "fore");
}

}  // namespace platewright
