// SPDX-License-Identifier: MIT
// Ease: how much wider than the man a garment is cut, and where that is measured.
#pragma once

#include <string>
#include <vector>

#include "compose/flat.h"
#include "vocabulary/body.h"

namespace platewright {

/// What both wedges add to the breeches' girth, mm, so far below the top of the legs.
double seat_wedge(double below_top);

/// The wedge that gives breeches their seat, on each hind leg: how wide it is at its top, how far
/// that rises above the leg and how deep it reaches below, mm. Common practice, no source.
inline constexpr double kSeatWedgeWide = 45;
inline constexpr double kSeatWedgeRise = 20;
inline constexpr double kSeatWedgeDeep = 260;

/// One girth of a garment, all round, in mm: that of the man, what is added, what the flats have.
struct FinishedGirth {
    /// `coat`, `waistcoat`, `breeches`, `gaiters`.
    std::string garment;
    BodyMeasure measure = BodyMeasure::chest;
    double body = 0;
    double ease = 0;
    double finished = 0;
};

/// How much longer than the neck's girth the neckline of a coat is, and its collar, mm. Common
/// practice, no source.
inline constexpr double kNeckEase = 20;

/// How much longer than the leg below the knee a knee band is buckled, mm. Common practice, no
/// source.
inline constexpr double kBuckledEase = 8;

/// Half the neckline of a coat, from the middle behind to the front, mm; 0 where the flat has no
/// `neckline-…` guides.
double half_neckline(const Flat& flat);

/// The girths of what is drawn on a flat, measured there: closed edge to edge, without pleats and
/// laps, both sides of the garment being as wide as this one.
std::vector<FinishedGirth> finished_girths(const Flat& flat, const Body& body);

/// By what a flat's width is to be multiplied at each height to have the girths of the man and
/// their ease. Empty where it shows no garment whose girths are known, or has no `girth-…` guides.
std::vector<Knot> widening(const Flat& flat, const Body& body);

}  // namespace platewright
