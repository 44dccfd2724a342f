// SPDX-License-Identifier: MIT
// What the drafts of all garments begin with.
#pragma once

#include <algorithm>
#include <array>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

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

/// Where the buttons of a part are.
inline std::vector<Point> buttons_of(const FlatPart& part) {
    std::vector<Point> places;
    for (const FlatRow& row : part.rows) {
        if (row.kind == FlatRow::Kind::buttons) {
            places.insert(places.end(), row.at.begin(), row.at.end());
        }
    }
    return places;
}

/// Its buttonholes and loops, from end to end.
inline std::vector<std::pair<Point, Point>> holes_of(const FlatPart& part) {
    std::vector<std::pair<Point, Point>> holes;
    for (const FlatRow& row : part.rows) {
        holes.insert(holes.end(), row.holes.begin(), row.holes.end());
    }
    return holes;
}

/// A corner of a skirt that is turned back, and the line that it is folded about.
struct Turnback {
    const FlatPart& corner;
    const Chain& fold;
};

/// Those on the left of a flat.
inline std::vector<Turnback> turnbacks_of(const Flat& flat) {
    std::vector<Turnback> all;
    for (const char* name : {"turnback-left", "turnback-short-left"}) {
        const FlatPart* corner = flat.part(name);
        const Chain* fold = flat.guide(std::string(name) + "-fold");
        if (corner != nullptr && fold != nullptr) {
            all.push_back({*corner, *fold});
        }
    }
    return all;
}

/// Where the hook sits on a corner that is held by no button: within it, so that neither hem nor
/// edge shows it. Common practice, no source.
inline Point hook_on(const Chain& edge, const Chain& fold) {
    constexpr double up = 16;
    constexpr double in = 10;
    const Point corner = edge.back();
    return corner + unit(edge.front() - corner) * up + unit(fold.back() - corner) * in;
}

/// How deep a band is that is drawn bent, mm.
inline double depth_of(const Chain& band) {
    return shapes::area(band) / shapes::box(band).width();
}

/// Whether a part of that name is a coat's or jacket's body, and of the side that its name ends
/// with: `-left`, `-back`.
inline bool is_coat_body(std::string_view name, std::string_view side) {
    constexpr std::array<std::string_view, 4> cuts = {"coat-", "coatee-", "surtout-", "jacket-"};
    return name.ends_with(side) && name.find("welt") == std::string_view::npos &&
           std::ranges::any_of(cuts,
                               [name](std::string_view cut) { return name.starts_with(cut); });
}

/// Everything on one side of a line that runs down, the line moved away from it; ends drawn out
/// beyond the garment. `side`: -1 for the left of the page.
inline Chain beside(const Chain& line, double side, double by) {
    Chain region;
    const double move = -side * by;
    region.push_back({line.front().x + move, -shapes::kBeyondAll});
    for (const Point p : line) {
        region.push_back({p.x + move, p.y});
    }
    region.push_back({line.back().x + move, shapes::kBeyondAll});
    region.push_back({side * shapes::kBeyondAll, shapes::kBeyondAll});
    region.push_back({side * shapes::kBeyondAll, -shapes::kBeyondAll});
    return region;
}

/// A strip of a piece along its front edge, which lies to the left; `wide` gives its width at each
/// of the heights, which grow.
template <typename Wide>
Chain along_front(const Chain& outline, const std::vector<double>& heights, const Wide& wide) {
    Chain strip;
    Chain inner;
    for (const double y : heights) {
        const double edge = crossing(outline, y).least;
        // A little over the edge, so that nothing of it is lost.
        strip.push_back({edge - 1, y});
        inner.push_back({edge + wide(y), y});
    }
    strip.insert(strip.end(), inner.rbegin(), inner.rend());
    return shapes::common({outline}, strip);
}

/// Finished and kept, if anything of it is drawn.
inline void keep_drawn(PatternPiece piece, double allowance, std::vector<PatternPiece>& among) {
    if (piece.outline.size() >= 3) {
        finish(piece, piece.at_line ? 0 : allowance);
        among.push_back(std::move(piece));
    }
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
