// SPDX-License-Identifier: MIT
// The tailor's sheets: flats with their dimensions, placements, pieces, materials, and the pieces
// at full size on tiles.
#pragma once

#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "base/language.h"
#include "compose/figure.h"
#include "layout/dimensioning.h"
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
    /// As they are drawn, mm on paper.
    std::vector<sheet::DimensionLine> lines;
    /// What is drawn.
    Flat flat;
};

/// A part of a view, larger: `cuff`, `breast`.
struct PlacementView {
    std::string title;
    Figure picture;
    std::vector<Dimension> dimensions;
    /// As they are drawn, mm on paper.
    std::vector<sheet::DimensionLine> lines;
    /// What is drawn.
    Flat flat;
};

/// A row of a table; one field alone is a heading across it.
using WorkshopRow = std::vector<std::string>;

/// A table with its headings.
struct WorkshopTable {
    std::string title;
    WorkshopRow headings;
    std::vector<WorkshopRow> rows;
    std::vector<std::string> remarks;
    /// The column that takes what width is left over; from `numbers` on they are set to the right.
    std::size_t wide = 0;
    std::size_t numbers = 99;
};

/// One cloth with its pieces laid out on it.
struct ClothPlan {
    /// `cloth, dark green`; `54 in wide, 2.07 m long`.
    std::string title;
    std::string size;
    Laying laying;
    std::vector<PatternPiece> pieces;
};

/// The seams of one garment, each a row, and what they tell together.
struct GarmentSeams {
    std::string garment;
    std::vector<WorkshopRow> rows;
    std::vector<std::string> remarks;
};

/// The letters of seams, which stand with the pieces of their garment.
struct SeamTable {
    std::string title;
    WorkshopRow headings;
    std::vector<GarmentSeams> garments;
    /// How to read them.
    std::string remark;
};

/// The steps in which one garment is made.
struct WorkOrder {
    std::string garment;
    std::vector<std::string> steps;
};

/// Everything the sheets are made from.
struct WorkshopSheets {
    std::string title;
    std::string subtitle;
    std::string drawn_by;
    std::string source;
    std::vector<std::string> notes;
    Language language = Language::english;
    /// In which lengths are told beside millimetres.
    OwnUnit unit;
    /// In the order they are to be printed: `flats`, `placement`, `pieces`, `materials`, `full
    /// size`.
    std::vector<std::string> order;
    std::vector<MeasuredView> flats;
    std::vector<PlacementView> placements;
    /// The man, and the garments.
    WorkshopTable man;
    WorkshopTable girths;
    std::vector<WorkshopTable> measures;
    std::vector<WorkshopTable> placement_tables;
    std::vector<WorkshopTable> materials;
    WorkshopTable piece_sums;
    std::vector<ClothPlan> cloths;
    std::vector<PatternPiece> pieces;
    /// Those of them that are printed at full size: all, or facings and small parts.
    std::vector<PatternPiece> full_size;
    bool whole_garments = false;
    double allowance = 0;
    SeamTable seams;
    std::vector<WorkOrder> work;
};

/// The largest scale of ISO 5455 (1:2, 1:5, 1:10, 1:20) at which a flat of that frame has its place
/// on the paper.
int flat_scale(const Rect& frame, const Paper& paper);

/// The sheets, as many pages as are needed. A scale that does not fit is made smaller.
Document lay_out_workshop(const WorkshopSheets& sheets,
                          const Paper& paper,
                          const Typesetter& type,
                          Diagnostics& to);

/// All pieces side by side at full size on one page as large as they need, for a cutter or a
/// plotter. Layers: `cut` for the knife, `sew` for seam lines, `fold`, `pocket`, `buttonhole`,
/// `button`, `notch`, `grain`, `inlay`, `letters` of seams with the words beside lines, and
/// `words`, which has a square of 100 mm too.
Document lay_out_cutting(const WorkshopSheets& sheets);

}  // namespace platewright
