// SPDX-License-Identifier: MIT
// Pieces to the scale of the cutting list.
#include "layout/piece_cells.h"

#include <algorithm>
#include <utility>

#include "layout/pen.h"
#include "layout/piece.h"
#include "layout/piece_key.h"
#include "layout/piece_measures.h"
#include "layout/piece_words.h"
#include "pattern/shapes.h"

namespace platewright {
namespace {

using sheet::Pen;

/// From line to line of the words under a piece, mm.
constexpr double kLine = 3.1;
/// Pieces lower than this stand beside or below the others, mm on the cloth.
constexpr double kLow = 330;

/// What is drawn of a piece, and what it takes from its origin.
struct Drawn {
    const PatternPiece& piece;
    std::vector<sheet::DimensionLine> lines;
    Rect reach;
    std::vector<std::string> words;
    double width = 0;
    Language language;
};

void draw(const Drawn& drawn, Point corner, sheet::Items& on) {
    constexpr double factor = 1 / kPieceScale;
    Pen pen("piece");
    const double middle = corner.x + drawn.width / 2;
    const Point origin{middle - drawn.reach.centre().x, corner.y - drawn.reach.top};
    const Rect squares = reach_of_piece(drawn.piece, kPieceScale, {});
    pen.grid({origin.x + squares.left,
              origin.y + squares.top,
              origin.x + squares.right,
              origin.y + squares.bottom},
             kGridSquare * factor);
    draw_piece(drawn.piece, origin, factor, {pen, drawn.language});
    draw_dimensions(drawn.lines, origin, pen);
    double baseline = corner.y + drawn.reach.height() + 4.4;
    for (const std::string& line : drawn.words) {
        const bool first = &line == &drawn.words.front();
        pen.words(line, {middle, baseline}, kPieceType, Align::middle, 0, !first);
        baseline += kLine;
    }
    std::move(pen).put_on(on);
}

/// Small parts that lie on the tiles are measured there; of others every piece has its measures.
bool is_measured(const PatternPiece& piece, const WorkshopSheets& sheets) {
    constexpr double small = 250;
    const auto on_tiles = [&](const PatternPiece& other) {
        return other.number_in_list == piece.number_in_list;
    };
    return shapes::box(piece.outline).height() >= small ||
           std::ranges::none_of(sheets.full_size, on_tiles);
}

sheet::RowItem cell_of(const PatternPiece& piece,
                       const WorkshopSheets& sheets,
                       sheet::Ruler& ruler) {
    Drawn drawn{piece,
                is_measured(piece, sheets)
                    ? measure_lines(piece, kPieceScale, sheets.language, sheets.unit, ruler)
                    : std::vector<sheet::DimensionLine>{},
                {},
                cutting_words(piece, sheets.language),
                0,
                sheets.language};
    drawn.reach = reach_of_piece(piece, kPieceScale, drawn.lines);
    drawn.width = drawn.reach.width();
    for (const std::string& line : drawn.words) {
        drawn.width = std::max(drawn.width, ruler.width(line, sheet::italic(kPieceType)));
    }
    const double height =
        drawn.reach.height() + 5 + kLine * static_cast<double>(drawn.words.size());
    const double width = drawn.width;
    return {width, height, {}, [drawn = std::move(drawn)](sheet::Items& on, Point corner, double) {
                draw(drawn, corner, on);
            }};
}

}  // namespace

namespace {

/// Low pieces beside the long ones, where a row has room for them; each row is a group.
std::vector<sheet::RowItem> in_rows(std::vector<sheet::RowItem> tall,
                                    std::vector<sheet::RowItem> low,
                                    double room) {
    std::vector<std::vector<sheet::RowItem>> rows;
    std::vector<double> widths;
    const auto add = [&](sheet::RowItem& item, std::size_t first) {
        std::size_t row = first;
        while (row < rows.size() && widths[row] + sheet::kCellsApart + item.width > room) {
            ++row;
        }
        if (row == rows.size()) {
            rows.emplace_back();
            widths.push_back(-sheet::kCellsApart);
        }
        widths[row] += sheet::kCellsApart + item.width;
        rows[row].push_back(std::move(item));
    };
    for (sheet::RowItem& item : tall) {
        add(item, rows.empty() ? 0 : rows.size() - 1);
    }
    for (sheet::RowItem& item : low) {
        add(item, 0);
    }
    std::vector<sheet::RowItem> all;
    for (std::size_t row = 0; row < rows.size(); ++row) {
        for (sheet::RowItem& item : rows[row]) {
            item.group = "row " + std::to_string(row);
            all.push_back(std::move(item));
        }
    }
    return all;
}

}  // namespace

std::vector<PieceGroup> piece_groups(const WorkshopSheets& sheets,
                                     double room,
                                     sheet::Ruler& ruler) {
    std::vector<std::string> garments;
    for (const PatternPiece& piece : sheets.pieces) {
        if (std::ranges::find(garments, piece.garment) == garments.end()) {
            garments.push_back(piece.garment);
        }
    }
    std::vector<PieceGroup> groups;
    for (const std::string& garment : garments) {
        std::vector<sheet::RowItem> tall;
        std::vector<sheet::RowItem> low;
        for (const PatternPiece& piece : sheets.pieces) {
            if (piece.garment == garment && !piece.repeats) {
                const bool is_low = shapes::box(piece.cut).height() < kLow;
                (is_low ? low : tall).push_back(cell_of(piece, sheets, ruler));
            }
        }
        groups.push_back({garment, in_rows(std::move(tall), std::move(low), room)});
    }
    return groups;
}

}  // namespace platewright
