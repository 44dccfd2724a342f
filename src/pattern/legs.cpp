// SPDX-License-Identifier: MIT
// The guides of the legs, by their names.
#include "pattern/legs.h"

#include <algorithm>
#include <cmath>
#include <initializer_list>

#include "pattern/fit.h"

namespace platewright {
namespace {

/// So far from the side seam the waist's edge begins to rise, mm, and over so much of the seam its
/// slant is taken.
constexpr double kSideReach = 60;
constexpr double kSlantOver = 25;
/// So far from the middle the waist's edge of a hind leg begins to rise to the seat seam, mm.
constexpr double kSeatReach = 160;
constexpr double kWaistStep = 5;

/// The end of the side seam drawn out upward, and how much higher that is.
struct RaisedSide {
    Point end;
    double rise = 0;
};

/// A curve that falls off evenly to level is square to the seam at its end if it rises by half its
/// reach for as much as the seam slants.
RaisedSide raised_side(const Chain& seam) {
    const Point top = seam.front();
    const double slant = (x_at(seam, top.y + kSlantOver) - top.x) / kSlantOver;
    const double rise = std::clamp(std::abs(slant), 0.0, 0.6) * kSideReach / 2;
    return {{top.x - slant * rise, top.y - rise}, rise};
}

double risen(const RaisedSide& side, double x) {
    const double near = std::max(0.0, 1 - std::abs(x - side.end.x) / kSideReach);
    return side.rise * near * near;
}

const Chain* leg_seam_on(const Flat& flat,
                         const FlatPart& legs,
                         std::initializer_list<const char*> names,
                         double side) {
    for (const char* which : names) {
        const Chain* seam = flat.guide(legs.name + which);
        if (seam != nullptr && seam->front().x * side > 0) {
            return seam;
        }
    }
    return nullptr;
}

}  // namespace

const FlatPart* legs_of(const Flat& flat) {
    const FlatPart* breeches = flat.part("breeches");
    return breeches != nullptr ? breeches : flat.part("overalls");
}

const Chain* inner_seam_of(const Flat& flat, const FlatPart& legs, double side) {
    return leg_seam_on(flat, legs, {"-left-inseam", "-right-inseam"}, side);
}

const Chain* side_seam_of(const Flat& flat, const FlatPart& legs, double side) {
    return leg_seam_on(flat, legs, {"-left-seam", "-right-seam"}, side);
}

Chain waist_at_side(const Chain& side_seam) {
    const RaisedSide side = raised_side(side_seam);
    const double inward = side.end.x > 0 ? -1 : 1;
    Chain edge;
    for (double from = kSideReach; from >= 0; from -= kWaistStep) {
        const double x = side.end.x + inward * from;
        edge.push_back({x, side_seam.front().y - risen(side, x)});
    }
    return edge;
}

Chain waist_behind(const Chain& side_seam, double middle) {
    const RaisedSide side = raised_side(side_seam);
    const Point top = side_seam.front();
    Chain edge;
    const int steps = static_cast<int>((kSeatWedgeWide - side.end.x) / kWaistStep) + 1;
    for (int i = 0; i <= steps; ++i) {
        const double x = side.end.x + (kSeatWedgeWide - side.end.x) * i / steps;
        const double level = top.y + (middle - top.y) * std::min(1.0, (x - top.x) / -top.x);
        const double u = std::clamp((x + kSeatReach) / (kSeatReach + kSeatWedgeWide), 0.0, 1.0);
        edge.push_back({x, level - risen(side, x) - kSeatWedgeRise * u * u * (3 - 2 * u)});
    }
    return edge;
}

double side_at_waist(const Flat& front) {
    const FlatPart* legs = legs_of(front);
    const Chain* seam = legs != nullptr ? side_seam_of(front, *legs, 1) : nullptr;
    if (seam == nullptr) {
        return 0;
    }
    const Chain edge = waist_at_side(*seam);
    return edge.front().x + length_of(edge);
}

}  // namespace platewright
