// SPDX-License-Identifier: MIT
// The seam of the shoulder, which lies behind the line where the garment folds over it.
#pragma once

#include <optional>

#include "compose/flat.h"

namespace platewright {

/// How back and forepart are parted at the shoulder.
struct Shoulder {
    /// Half the back below the seam, as it lies.
    Chain back;
    /// What lies above it, laid out before: it is cut with the forepart, a little over the fold, so
    /// that both can be joined.
    Chain strip;
    /// Where the seam meets the neck and the hole of the arm, behind and on the strip.
    Point neck;
    Point end;
    Point neck_before;
    Point end_before;
};

/// `half`: the left half of the flat's back. Nothing where the flat has no `shoulder-seam-left` and
/// `shoulder-left`.
std::optional<Shoulder> shoulder_of(const Flat& back, const Chain& half);

}  // namespace platewright
