// SPDX-License-Identifier: MIT
// The tailor's sheets: flats with their dimensions, placements, pieces, materials, and the pieces
// at full size on tiles.
#pragma once

#include <string>
#include <vector>

#include "compose/figure.h"
#include "layout/layout.h"
#include "pattern/dimensions.h"
#include "pattern/materials.h"
#include "pattern/pieces.h"

namespace platewright {

/// One view of a garment with what is measured on it. `picture` is drawn for 1 : `picture.scale`.
struct MeasuredView {
    std::string garment;
    Figure picture;
    std::vector<Dimension> dimensions;
};

/// A part of a view, larger: `cuff`, `breast`.
struct PlacementView {
    std::string title;
    Figure picture;
    std::vector<Dimension> dimensions;
};

/// A row of a table.
using TableRow = std::vector<std::string>;

/// A table with its headings; the first column is wide.
struct WorkshopTable {
    std::string title;
    TableRow headings;
    std::vector<TableRow> rows;
    std::vector<std::string> remarks;
    /// Shares of the width for the columns.
    std::vector<double> shares;
};

/// Everything the sheets are made from.
struct WorkshopSheets {
    std::string title;
    std::string subtitle;
    std::string drawn_by;
    std::vector<std::string> notes;
    /// In the order they are to be printed: `flats`, `placement`, `pieces`, `materials`, `full
    /// size`.
    std::vector<std::string> order;
    std::vector<MeasuredView> flats;
    std::vector<PlacementView> placements;
    std::vector<WorkshopTable> measures;
    std::vector<WorkshopTable> placement_tables;
    std::vector<WorkshopTable> materials;
    std::vector<PatternPiece> pieces;
    /// Those of them that are printed at full size.
    std::vector<PatternPiece> full_size;
    double allowance = 0;
};

/// The largest scale of ISO 5455 (1:2, 1:5, 1:10, 1:20) at which a flat of that frame has its place
/// on the paper.
int flat_scale(const Rect& frame, const Paper& paper);

/// Denominator of the scale of a placement drawing of that frame: 1, 2, 5 or 10.
int placement_scale(const Rect& frame, const Paper& paper);

/// The sheets, as many pages as are needed. A scale that does not fit is made smaller.
Document lay_out_workshop(const WorkshopSheets& sheets, const Paper& paper, const Typesetter& type);

/// All pieces side by side at full size on one page as large as they need, for a cutter or a
/// plotter: each in a layer of its own, the lines to cut in the layer `cut`, those to draw in
/// `mark`.
Document lay_out_cutting(const WorkshopSheets& sheets, const Typesetter& type);

}  // namespace platewright
