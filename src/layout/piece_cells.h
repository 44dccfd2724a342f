// SPDX-License-Identifier: MIT
// The pieces of the cutting list as cells of rows.
#pragma once

#include <string>
#include <vector>

#include "layout/cells.h"
#include "layout/ruler.h"
#include "layout/workshop.h"

namespace platewright {

/// Of the cutting list.
inline constexpr double kPieceScale = 10;
/// Type under pieces, mm.
inline constexpr double kPieceType = 2.5;

/// The pieces of one garment.
struct PieceGroup {
    std::string garment;
    std::vector<sheet::RowItem> cells;
};

/// Each with its dimensions and its words, garment by garment, for rows as wide as `room`; of a
/// garment the long ones first, both in the order of their numbers, low ones beside them where
/// there is room. Drawn from `sheets`, which must outlive them.
std::vector<PieceGroup> piece_groups(const WorkshopSheets& sheets,
                                     double room,
                                     sheet::Ruler& ruler);

}  // namespace platewright
