// SPDX-License-Identifier: MIT
// Hatching beside the edges of what lies on a table.
#pragma once

#include "base/geometry.h"
#include "compose/brush.h"
#include "compose/curve.h"

namespace platewright {

/// How broad a strip of that shape is; of other shapes a measure of how slender they are, in mm.
double breadth_of(const Path& shape);

/// Which way the strokes run from the edge: into the cloth whose turn they shade, or out of it, in
/// the shade it throws.
enum class FromEdge { inwards, outwards };

/// Short even strokes from all edges that face away from the light, longest where an edge is turned
/// away most: as far apart as the pen says, and `reach` mm long there. The pen's `tilt` is not
/// used.
std::vector<HatchStroke> edge_hatch(const Path& shape, const HatchPen& pen, FromEdge way);

/// The same beside a fold, on its side away from the light: longest in the middle, where it is
/// deepest, and gone where it runs out.
std::vector<HatchStroke> fold_hatch(const Curve& fold, const HatchPen& pen);

/// Which side of a fold: the one away from the light, or the back that catches it.
enum class FoldSide { shaded, lit };

/// Lines that fall with a long fold, on one side of it, a pen's pitch apart where it is widest,
/// more of them the longer it is. The pen's `reach` and `tilt` are not used.
std::vector<HatchStroke> fall_hatch(const Curve& fold,
                                    const HatchPen& pen,
                                    FoldSide side = FoldSide::shaded);

}  // namespace platewright
