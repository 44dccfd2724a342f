// SPDX-License-Identifier: MIT
// The facings of a figure, as wide and high as an order states them. For use inside compose.
#pragma once

#include <optional>

#include "compose/flat.h"
#include "compose/template.h"

namespace platewright {

/// The view of a dressed man with lapels, cuffs and collar as the uniform states them, each
/// foreshortened as it is drawn: what stands on the figure for a true measure (`data-true`) grows
/// with it. Nothing where nothing is stated, and for garments laid flat, which their own grading
/// moves.
std::optional<Template> fitted(const Uniform& uniform, const Template& view);

/// Moves everything of a part, or one thing on it; `name` is the part's.
void move_part(Part& part, const Moving& moving);
void move_detail(Detail& detail, std::string_view name, const Moving& moving);

}  // namespace platewright
