// SPDX-License-Identifier: MIT
// Dimensions of a flat, measured from its drawn guides and parts.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "compose/flat.h"
#include "pattern/grading.h"

namespace platewright {

/// How a dimension is laid down: level, upright, or along its own direction.
enum class DimensionWay { across, down, along };

/// One dimension, in mm on the garment.
struct Dimension {
    /// A word of the catalogue: `lapel width above`.
    std::string what;
    DimensionWay way = DimensionWay::along;
    Point from;
    Point to;
    /// Parts of the drawing it belongs to, for the placement drawings: `cuff`, `breast`, `skirts`,
    /// `shoulder`; empty: the whole garment.
    std::string frame;
    /// As the order states it, in the order's own unit.
    std::optional<Measure> stated;
    /// It is read above what is measured: beneath it another of its kind would be taken for it.
    bool above = false;
    /// It is read at its own height, on the cloth: led down, a waist would be taken for the width
    /// of the hem.
    bool level = false;

    /// What is measured, by its way.
    [[nodiscard]] double mm() const;
};

/// The unit in which a man's orders write.
struct OwnUnit {
    std::string name = "in";
    double mm = kInch;
};

/// The first unit of the trade that his uniform states a measure in, not a metric one; else the
/// inch.
OwnUnit own_unit_of(const Uniform& uniform);

/// A length in that unit, to the nearest eighth: `3 1/2 in`.
std::string in_eighths(double mm, const OwnUnit& unit);

/// The dimensions of one view, those of the whole garment first.
std::vector<Dimension> dimensions_of(const std::string& view,
                                     const Flat& flat,
                                     const StatedMeasures& stated);

}  // namespace platewright
