// SPDX-License-Identifier: MIT
// The sleeve of a coat in two halves, drafted to the man's arm and to the hole it is sewn into.
#pragma once

#include <optional>

#include "compose/flat.h"

namespace platewright {

/// Outlines in mm, the grain running down the page.
struct Sleeves {
    Chain upper;
    Chain under;
    /// Lengths of the two heads.
    double upper_head = 0;
    double under_head = 0;
    /// Where the seams of the hind and of the fore arm end at the head of the upper half.
    Point hind;
    Point fore;
    /// The same of the under half.
    Point under_hind;
    Point under_fore;
    /// The height of the elbow, where the halves are matched.
    double elbow = 0;
    /// The height of the cuff's upper edge; 0 where there is no cuff.
    double cuff_edge = 0;
};

/// How much wider the upper half is than the under one, each way, mm: so far below the fold lie the
/// seams. Common practice, no source.
inline constexpr double kHalvesShift = 14;

/// How much wider than the upper arm a sleeve is there, mm. Common practice, no source.
inline constexpr double kArmEase = 45;
/// How much longer the sleeve's head is than its hole, to be eased in, mm. Common practice, no
/// source.
inline constexpr double kHeadEase = 25;

/// As long as the flat's sleeve and as wide as it at the hem; nothing where the flat has none.
/// `hole`: round the arm's hole of the body, mm; `upper_arm`: girth of the man's, mm.
std::optional<Sleeves> sleeves_of(const Flat& front, double hole, double upper_arm);

}  // namespace platewright
