// SPDX-License-Identifier: MIT
// Words beside the figures of a plate and between them, each with a line to what it names.
#pragma once

#include <vector>

#include "layout/furniture.h"
#include "layout/plan.h"

namespace platewright::sheet {

/// What words have to keep clear of, and what they are about.
struct NamedFigures {
    const std::vector<Figure>& figures;
    const std::vector<Stand>& stands;
    const std::vector<Roundel>& roundels;
    const Task& task;
    const Plan& plan;
};

/// Things of the first figure are named on its left, those of the last on its right; of a single
/// figure on both sides. What would be led to across a man stands between the figures, where there
/// is room for it.
void put_callouts(const NamedFigures& named, Ruler& ruler, Page& page);

}  // namespace platewright::sheet
