// SPDX-License-Identifier: MIT
// The fall and the knee of breeches, from the guides and buttons of their flats.
#include "pattern/openings.h"

#include <algorithm>
#include <cmath>

#include "pattern/draft.h"
#include "pattern/named_seams.h"
#include "pattern/seams.h"
#include "pattern/shapes.h"

namespace platewright {
namespace {

/// A bearer ends so far above the foot of the slit where it meets its fellow, mm. Common practice,
/// no source.
constexpr double kBearerShort = 60;
/// It is sewn so far behind the edge of the slit, and reaches so far below its foot, mm. Common
/// practice, no source.
constexpr double kBearerBehind = 12;
constexpr double kBearerBelow = 22;
/// The strip that faces both edges of the slit: how wide it is, and how far it reaches below the
/// foot, mm. Common practice, no source.
constexpr double kSlitFacing = 40;
constexpr double kSlitFacingBelow = 20;
/// The hind leg reaches so far beyond the buttons of the knee, mm. Common practice, no source.
constexpr double kBeyondButtons = 20;

/// The opening of the knee is drawn on breeches, not on overalls.
const Chain* knee_slit(const Flat& front) {
    const bool breeches = front.part("breeches") != nullptr;
    const Chain* slit = breeches ? front.guide("knee-slit-left") : nullptr;
    return slit != nullptr && slit->size() > 1 ? slit : nullptr;
}

/// The slit drawn out to the hem and beyond, in its last direction.
Chain drawn_out(const Chain& slit) {
    Chain line = slit;
    const Point way = unit(slit.back() - slit[slit.size() - 2]);
    line.push_back(slit.back() + way * shapes::kBeyondAll);
    return line;
}

/// The row of buttons or holes of that part on the wearer's left.
const FlatRow* row_of(const Flat& front, const char* part_name, FlatRow::Kind kind) {
    const FlatPart* part = front.part(part_name);
    if (part == nullptr) {
        return nullptr;
    }
    const auto found = std::ranges::find_if(part->rows, [kind](const FlatRow& row) {
        return row.kind == kind && !row.at.empty() && row.at.back().x > 0;
    });
    return found == part->rows.end() ? nullptr : &*found;
}

/// Sewn to the waistband's lower edge, which the fall covers; beside the slit it reaches below its
/// foot, so that nothing gapes there, and rises from within it to the middle.
Chain bearer_outline(const Chain& band, const Chain& slit) {
    const double top = level_at(band, slit.front().x);
    const double outer = x_at(slit, top) + kBearerBehind;
    Chain outline{{-kFrontLap, level_at(band, -kFrontLap)}};
    std::ranges::copy_if(band, std::back_inserter(outline), [outer](Point p) {
        return p.x > -kFrontLap && p.x < outer;
    });
    outline.push_back({outer, level_at(band, outer)});
    for (const Point p : slit) {
        if (p.y > top + 1) {
            outline.push_back(p + Point{kBearerBehind, 0});
        }
    }
    const Point foot = slit.back();
    outline.push_back(foot + Point{kBearerBehind, kBearerBelow});
    outline.push_back(foot + Point{-kBearerBehind, kBearerBelow});
    outline.push_back({-kFrontLap, foot.y - kBearerShort});
    return outline;
}

void add_holes(PatternPiece& piece, const FlatRow* row) {
    if (row != nullptr) {
        std::ranges::copy_if(row->holes, std::back_inserter(piece.holes), [](const auto& hole) {
            return hole.first.x > 0;
        });
    }
}

}  // namespace

void open_fall(PatternPiece& fore_leg, const Flat& front) {
    const FlatPart* fall = front.part("fall");
    const Chain* slit = front.guide("fall-edge");
    if (fall == nullptr || slit == nullptr || fore_leg.outline.empty()) {
        return;
    }
    fore_leg.outline =
        shapes::joined({fore_leg.outline, between_uprights(*fall, 0, shapes::kBeyondAll)});
    fore_leg.slits.push_back(*slit);
    add_holes(fore_leg, row_of(front, "fall", FlatRow::Kind::holes));
}

std::optional<PatternPiece> fall_bearer(const Flat& front) {
    const FlatPart* fall = front.part("fall");
    const FlatPart* band = front.part("waistband");
    const Chain* slit = front.guide("fall-edge");
    if (fall == nullptr || band == nullptr || slit == nullptr) {
        return std::nullopt;
    }
    PatternPiece piece = draft_of("breeches", "fall bearer", *fall);
    piece.outline = bearer_outline(lower_edge(shapes::joined(band->outline)), *slit);
    const double foot = slit->back().y - kBearerShort;
    piece.lines = {{{0, level_at(piece.outline, 0)}, {0, foot}}};
    say_along(piece, piece.lines.front(), "middle");
    piece.lined = true;
    if (const FlatRow* buttons = row_of(front, "fall", FlatRow::Kind::buttons)) {
        std::ranges::copy_if(
            buttons->at, std::back_inserter(piece.buttons), [](Point p) { return p.x > 0; });
    }
    return piece;
}

std::optional<PatternPiece> slit_facing(const Flat& front) {
    const FlatPart* fall = front.part("fall");
    const FlatPart* band = front.part("waistband");
    const Chain* slit = front.guide("fall-edge");
    if (fall == nullptr || band == nullptr || slit == nullptr) {
        return std::nullopt;
    }
    const double top = level_at(lower_edge(shapes::joined(band->outline)), slit->front().x);
    const double deep = length(slit->back() - Point{x_at(*slit, top), top});
    PatternPiece piece = draft_of("breeches", "slit facing", *fall);
    const double along = deep + kSlitFacingBelow;
    piece.outline = {{0, 0}, {kSlitFacing, 0}, {kSlitFacing, along}, {0, along}};
    piece.slits = {{{kSlitFacing / 2, 0}, {kSlitFacing / 2, deep}}};
    piece.paired = false;
    return piece;
}

void open_fore_knee(PatternPiece& fore_leg, const Flat& front) {
    const Chain* slit = knee_slit(front);
    if (slit == nullptr || fore_leg.outline.empty()) {
        return;
    }
    Chain kept{{-shapes::kBeyondAll, -shapes::kBeyondAll},
               {shapes::kBeyondAll, -shapes::kBeyondAll},
               {shapes::kBeyondAll, slit->front().y}};
    const Chain line = drawn_out(*slit);
    kept.insert(kept.end(), line.begin(), line.end());
    kept.push_back({-shapes::kBeyondAll, line.back().y});
    fore_leg.outline = shapes::common({fore_leg.outline}, kept);
    add_holes(fore_leg, row_of(front, "breeches", FlatRow::Kind::holes));
}

void open_hind_knee(PatternPiece& hind_leg, const Flat& front, const Chain& side_seam) {
    const Chain* slit = knee_slit(front);
    const FlatRow* buttons = row_of(front, "breeches", FlatRow::Kind::buttons);
    const Chain* fore_seam = front.guide("breeches-left-seam");
    if (slit == nullptr || buttons == nullptr || fore_seam == nullptr || hind_leg.outline.empty()) {
        return;
    }
    for (const Point button : buttons->at) {
        // As far within the fore leg's side, so far beyond the hind leg's.
        const double under = x_at(*fore_seam, button.y) - button.x;
        hind_leg.buttons.push_back({x_at(side_seam, button.y) - under, button.y});
    }
    const double reach = knee_underlap(front);
    const double hem = shapes::box(hind_leg.outline).bottom;
    const double top = slit->front().y;
    // A little within the leg, so that the two are joined.
    constexpr double within = 1;
    Chain lap;
    Chain seam;
    for (double y = top; y < hem; y += 5) {
        const double x = x_at(side_seam, y);
        lap.push_back({x - reach, y});
        seam.push_back({x + within, y});
    }
    lap.insert(lap.end(), seam.rbegin(), seam.rend());
    hind_leg.outline = shapes::joined({hind_leg.outline, lap});
}

double knee_underlap(const Flat& front) {
    const FlatRow* buttons = row_of(front, "breeches", FlatRow::Kind::buttons);
    const Chain* seam = front.guide("breeches-left-seam");
    double reach = 0;
    if (knee_slit(front) != nullptr && buttons != nullptr && seam != nullptr) {
        for (const Point button : buttons->at) {
            reach = std::max(reach, x_at(*seam, button.y) - button.x + kBeyondButtons);
        }
    }
    return reach;
}

std::optional<Point> knee_opening(const Flat& front) {
    const Chain* slit = knee_slit(front);
    return slit == nullptr ? std::nullopt : std::optional(slit->front());
}

}  // namespace platewright
