// SPDX-License-Identifier: MIT
// How the pieces of a man's clothing are put together.
#pragma once

#include <vector>

#include "layout/workshop.h"

namespace platewright::cli {

/// Every seam that has a letter, with the lengths of its two sides, garment by garment.
SeamTable seam_table(Language language, const std::vector<PatternPiece>& pieces);

/// The steps of each garment of which there are pieces, only those that something is cut for.
std::vector<WorkOrder> order_of_work(Language language, const std::vector<PatternPiece>& pieces);

}  // namespace platewright::cli
