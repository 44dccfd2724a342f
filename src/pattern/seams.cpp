// SPDX-License-Identifier: MIT
// Lengths along outlines, and balance marks.
#include "pattern/seams.h"

#include <algorithm>
#include <cmath>

namespace platewright {
namespace {

/// A place on an outline: on which of its lines, where, and how far from its beginning.
struct Spot {
    std::size_t line = 0;
    Point at;
    double walked = 0;
};

Spot spot_of(const Chain& outline, Point near) {
    Spot best;
    double least = 1e9;
    double walked = 0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point a = outline[i];
        const Point way = outline[(i + 1) % outline.size()] - a;
        const double share =
            std::clamp(dot(near - a, way) / std::max(1e-9, dot(way, way)), 0.0, 1.0);
        const Point at = a + way * share;
        if (length(at - near) < least) {
            least = length(at - near);
            best = {i, at, walked + length(way) * share};
        }
        walked += length(way);
    }
    return best;
}

double round_of(const Chain& outline) {
    double sum = 0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        sum += length(outline[(i + 1) % outline.size()] - outline[i]);
    }
    return sum;
}

}  // namespace

Point along(const Chain& outline, double walked) {
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point a = outline[i];
        const Point way = outline[(i + 1) % outline.size()] - a;
        if (walked <= length(way)) {
            return a + unit(way) * walked;
        }
        walked -= length(way);
    }
    return outline.front();
}

double length_between(const Chain& outline, Point from, Point to) {
    const double apart = std::abs(spot_of(outline, from).walked - spot_of(outline, to).walked);
    return std::min(apart, round_of(outline) - apart);
}

Point point_between(const Chain& outline, Point from, Point to, double distance) {
    const double round = round_of(outline);
    const double start = spot_of(outline, from).walked;
    double ahead = spot_of(outline, to).walked - start;
    ahead += ahead < 0 ? round : 0;
    return along(outline,
                 std::fmod(start + (ahead <= round / 2 ? distance : round - distance), round));
}

Chain seam_between(const Chain& outline, Point from, Point to) {
    const Spot first = spot_of(outline, from);
    const Spot last = spot_of(outline, to);
    const double round = round_of(outline);
    double ahead = last.walked - first.walked;
    ahead += ahead < 0 ? round : 0;
    if (ahead > round / 2) {
        Chain seam = seam_between(outline, to, from);
        std::ranges::reverse(seam);
        return seam;
    }
    Chain seam{first.at};
    const std::size_t corners = (last.line + outline.size() - first.line) % outline.size();
    for (std::size_t i = 1; i <= corners; ++i) {
        const Point corner = outline[(first.line + i) % outline.size()];
        if (length(corner - seam.back()) > 0.01) {
            seam.push_back(corner);
        }
    }
    if (length(last.at - seam.back()) > 0.01) {
        seam.push_back(last.at);
    }
    return seam;
}

namespace {

/// Between the corners that are farthest out to both sides and to that one: -1 up, 1 down.
Chain edge(const Chain& outline, double down) {
    const auto corner = [&](double right) {
        return *std::ranges::max_element(
            outline, {}, [&](Point p) { return right * p.x + down * p.y; });
    };
    return outline.empty() ? Chain{} : seam_between(outline, corner(-1), corner(1));
}

}  // namespace

Chain upper_edge(const Chain& outline) {
    return edge(outline, -1);
}

Chain lower_edge(const Chain& outline) {
    return edge(outline, 1);
}

double level_at(const Chain& edge, double x) {
    Chain upright;
    for (const Point p : edge) {
        upright.push_back({p.y, p.x});
    }
    return x_at(upright, x);
}

Chain rounded_at(const Chain& outline, Point corner, double reach) {
    const double round = round_of(outline);
    const Spot at = spot_of(outline, corner);
    const auto place = [&](double ahead) {
        return along(outline, std::fmod(at.walked + ahead + round, round));
    };
    const Point before = place(-reach);
    const Point after = place(reach);
    Chain made;
    constexpr int steps = 12;
    for (int i = 0; i <= steps; ++i) {
        const double u = static_cast<double>(i) / steps;
        made.push_back(before * ((1 - u) * (1 - u)) + at.at * (2 * u * (1 - u)) + after * (u * u));
    }
    // Everything else, from behind the corner round to before it.
    const std::size_t first = spot_of(outline, after).line + 1;
    const std::size_t last = spot_of(outline, before).line;
    const std::size_t rest = (last + outline.size() - first) % outline.size();
    for (std::size_t i = 0; i <= rest; ++i) {
        made.push_back(outline[(first + i) % outline.size()]);
    }
    return made;
}

namespace {

/// A mark of an outline that is nowhere cut outside of itself, mm.
constexpr double kInwardMark = 8;

/// Square to the outline there, out of the piece.
Point outward_at(const Chain& outline, const Spot& spot) {
    const Point a = outline[spot.line];
    const Point b = outline[(spot.line + 1) % outline.size()];
    const Point across = right_of(unit(b - a));
    return inside({outline}, (a + b) * 0.5 + across * 0.1) ? across * -1 : across;
}

/// How far the cut lies beyond a place in that direction; 0 where it does not.
double way_to_cut(const Chain& cut, Point from, Point way) {
    // Of every seam allowance and inlay.
    constexpr double farthest = 80;
    double least = farthest;
    for (std::size_t i = 0; i < cut.size(); ++i) {
        const auto away = meeting(from, way, cut[i], cut[(i + 1) % cut.size()]);
        least = away && *away > 0.01 ? std::min(least, *away) : least;
    }
    return least < farthest ? least : 0;
}

}  // namespace

void draw_out_notches(PatternPiece& piece) {
    for (Notch& notch : piece.notches) {
        const Point way = outward_at(piece.outline, spot_of(piece.outline, notch.at));
        const double away = piece.cut == piece.outline ? 0 : way_to_cut(piece.cut, notch.at, way);
        notch.out = notch.at + way * (away > 0 ? away : -kInwardMark);
    }
}

void add_notch(PatternPiece& piece, Point near, Ticks ticks) {
    const Point at = spot_of(piece.outline, near).at;
    piece.notches.push_back({at, at, ticks == Ticks::hind});
    // Marks that are added to a finished piece reach its cut too.
    if (!piece.cut.empty()) {
        draw_out_notches(piece);
    }
}

void add_notches_at(PatternPiece& piece, double y, Ticks left, Ticks right) {
    const Crossing at = crossing(piece.outline, y);
    if (at.found) {
        add_notch(piece, {at.least, y}, left);
        add_notch(piece, {at.greatest, y}, right);
    }
}

}  // namespace platewright
