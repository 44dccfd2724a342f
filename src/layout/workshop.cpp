// SPDX-License-Identifier: MIT
// The tailor's sheets: flats, placements, tables and the cutting list, page after page.
#include "layout/workshop.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <utility>

#include "layout/flow.h"
#include "layout/pen.h"
#include "layout/piece.h"
#include "layout/ruler.h"
#include "layout/style.h"
#include "layout/tiles.h"
#include "words/sheet_messages.h"
#include "words/terms.h"
#include "words/workshop_messages.h"

namespace platewright {
namespace {

using sheet::Pen;

/// Between a garment and its first dimension line, and from one to the next.
constexpr double kFirstLane = 4;
constexpr double kLane = 7;
/// Between cells of a row.
constexpr double kCellsApart = 4;
/// A line of words under a drawing.
constexpr double kLabel = 5.6;
/// Type under pieces, and from line to line.
constexpr double kPieceType = 2.5;
constexpr double kPieceLine = 3.1;

/// Everything that stands round a view, mm on paper.
struct Lanes {
    std::array<std::vector<const Dimension*>, 5> by_side;

    explicit Lanes(const std::vector<Dimension>& dimensions) {
        for (const Dimension& each : dimensions) {
            by_side[static_cast<std::size_t>(each.side)].push_back(&each);
        }
        for (auto& side : by_side) {
            std::ranges::stable_sort(
                side, [](const Dimension* a, const Dimension* b) { return a->mm() < b->mm(); });
        }
    }

    [[nodiscard]] const std::vector<const Dimension*>& at(DimensionSide side) const {
        return by_side[static_cast<std::size_t>(side)];
    }

    [[nodiscard]] double room(DimensionSide side) const {
        return at(side).empty() ? 0.5 : 2.5 + kLane * static_cast<double>(at(side).size());
    }
};

/// Puts one thing after another on pages.
class Sheets {
  public:
    Sheets(const WorkshopSheets& sheets,
           const Paper& paper,
           const Typesetter& type,
           Diagnostics& to)
        : sheets_(sheets),
          paper_(paper),
          ruler_(type),
          flow_({paper,
                 std::string(language_code(sheets.language)),
                 sheets.title,
                 sheets.subtitle,
                 sheets.subtitle},
                ruler_,
                to) {}

    void lay_out(Document& document) {
        put_opening();
        for (const std::string& name : sheets_.order) {
            if (name == "flats") {
                put_flats();
                put_tables(sheets_.measures);
            } else if (name == "placement" && !sheets_.placements.empty()) {
                flow_.new_page();
                flow_.heading(say(messages::kPlacement));
                put_placements();
                put_tables(sheets_.placement_tables);
            } else if (name == "pieces" && !sheets_.pieces.empty()) {
                flow_.new_page();
                put_pieces();
            } else if (name == "materials") {
                flow_.new_page();
                flow_.heading(say(messages::kMaterials));
                put_tables(sheets_.materials);
            }
        }
        flow_.finish(document);
        if (std::ranges::find(sheets_.order, "full size") != sheets_.order.end()) {
            for (Page& page : lay_out_tiles(sheets_, paper_, ruler_)) {
                document.pages.push_back(std::move(page));
            }
        }
    }

  private:
    const WorkshopSheets& sheets_;
    const Paper& paper_;
    sheet::Ruler ruler_;
    sheet::Flow flow_;

    [[nodiscard]] std::string say(const Message& message,
                                  std::initializer_list<std::string_view> parts = {}) const {
        return platewright::say(sheets_.language, message, parts);
    }

    /// Whom the sheets are for, what they say, and what is where.
    void put_opening() {
        flow_.title(sheets_.title, sheets_.subtitle);
        flow_.contents();
        flow_.space(flow_.style().leading);
        put_table(sheets_.man);
        if (!sheets_.notes.empty()) {
            flow_.heading(say(messages::kNotes), 2);
            flow_.items(sheets_.notes, "•");
        }
        flow_.space(flow_.style().leading / 2);
        if (!sheets_.source.empty()) {
            flow_.paragraph(say(messages::kSource, {sheets_.source}), sheet::Voice::small);
        }
        if (!sheets_.drawn_by.empty()) {
            flow_.paragraph(say(messages::kDrawnBy, {sheets_.drawn_by}),
                            sheet::Voice::small_italic);
        }
    }

    using Items = std::vector<Placed>;

    /// A cell of that size, drawn with its corner at the place it is given; the row is that high.
    struct Cell {
        double width = 0;
        double height = 0;
        std::function<void(Items& on, Point corner, double row)> draw;
    };

    /// Cells in rows, each row in the middle of the page. `outline`: the first row's entry.
    void put_cells(const std::vector<Cell>& cells, const std::string& outline) {
        const double room = flow_.width();
        for (std::size_t first = 0; first < cells.size();) {
            double width = 0;
            sheet::Slab slab;
            if (first == 0 && !outline.empty()) {
                slab.outline = outline;
                slab.anchor = outline;
            }
            std::size_t end = first;
            while (end < cells.size() &&
                   (end == first || width + kCellsApart + cells[end].width <= room + 0.01)) {
                width += cells[end].width + (end == first ? 0 : kCellsApart);
                slab.height = std::max(slab.height, cells[end].height);
                ++end;
            }
            // Space left over goes between the cells and beside them alike.
            const auto number = static_cast<double>(end - first);
            const double air = std::max(0.0, room - width) / (number + 1);
            double x = air;
            for (; first < end; ++first) {
                cells[first].draw(slab.pictures, {x, 0}, slab.height);
                x += cells[first].width + kCellsApart + air;
            }
            slab.space_before = kCellsApart;
            flow_.slab(std::move(slab));
        }
    }

    void put_flats() {
        std::vector<Cell> cells;
        for (const MeasuredView& view : sheets_.flats) {
            const Lanes lanes(view.dimensions);
            const double factor = 1 / view.picture.scale;
            const double left = lanes.room(DimensionSide::left);
            const double above = lanes.room(DimensionSide::above);
            const double width =
                left + view.picture.frame.width() * factor + lanes.room(DimensionSide::right);
            const double height = above + view.picture.frame.height() * factor +
                                  lanes.room(DimensionSide::below) + kLabel;
            cells.push_back(
                {width, height, [=, this, &view](Items& on, Point cell, double row) {
                     const Lanes round(view.dimensions);
                     const Point corner = cell + Point{left, above};
                     draw_view(view.picture, corner, factor, false, on);
                     draw_dimensions(view.picture.frame, round, corner, factor, on);
                     const double middle = corner.x + view.picture.frame.width() * factor / 2;
                     label(view.picture.title, view.picture.scale, {middle, row - 1.4}, on);
                 }});
        }
        flow_.new_page();
        put_cells(cells, say(messages::kFlats));
    }

    void draw_view(const Figure& picture, Point corner, double factor, bool framed, Items& on) {
        Placed placed{corner - Point{picture.frame.left, picture.frame.top} * factor,
                      factor,
                      picture.drawing};
        placed.drawing.root.name = "flat";
        on.push_back(std::move(placed));
        if (framed) {
            Pen pen("edge", ruler_);
            const Point size{picture.frame.width() * factor, picture.frame.height() * factor};
            pen.chain({corner, corner + Point{size.x, 0}, corner + size, corner + Point{0, size.y}},
                      true,
                      0.13,
                      sheet::LineKind::continuous);
            std::move(pen).put_on(on);
        }
    }

    void draw_dimensions(
        const Rect& frame, const Lanes& lanes, Point corner, double factor, Items& on) {
        Pen pen("dimensions", ruler_);
        const auto on_paper = [&](Point p) {
            return corner + (p - Point{frame.left, frame.top}) * factor;
        };
        const Point end = on_paper({frame.right, frame.bottom});
        for (const DimensionSide side : {DimensionSide::left,
                                         DimensionSide::right,
                                         DimensionSide::above,
                                         DimensionSide::below}) {
            double lane = kFirstLane;
            for (const Dimension* each : lanes.at(side)) {
                const Point a = on_paper(each->from);
                const Point b = on_paper(each->to);
                const double at = side == DimensionSide::left    ? corner.x - lane
                                  : side == DimensionSide::right ? end.x + lane
                                  : side == DimensionSide::above ? corner.y - lane
                                                                 : end.y + lane;
                outside(pen, *each, a, b, at);
                lane += kLane;
            }
        }
        for (const Dimension* each : lanes.at(DimensionSide::beside)) {
            beside(pen, *each, on_paper(each->from), on_paper(each->to));
        }
        std::move(pen).put_on(on);
    }

    /// With extension lines from both points to the line at `at`.
    void outside(Pen& pen, const Dimension& each, Point a, Point b, double at) const {
        const bool upright = each.way == DimensionWay::down;
        const Point from = upright ? Point{at, a.y} : Point{a.x, at};
        const Point to = upright ? Point{at, b.y} : Point{b.x, at};
        for (const auto& [foot, end] : {std::pair{a, from}, std::pair{b, to}}) {
            const Point way = unit(end - foot);
            if (length(end - foot) > 1) {
                pen.line(foot + way * 0.8, end + way * 1.3);
            }
        }
        pen.dimension(from, to, 0, words_of(each));
    }

    void beside(Pen& pen, const Dimension& each, Point a, Point b) const {
        if (each.way == DimensionWay::across) {
            b.y = a.y;
        } else if (each.way == DimensionWay::down) {
            b.x = a.x;
        }
        pen.dimension(a, b, each.aside, words_of(each));
    }

    /// Millimetres, and the order's own words or its own unit.
    [[nodiscard]] std::string words_of(const Dimension& each) const {
        return number_words(sheets_.language, each.mm(), each.stated ? 1 : 0) + " (" +
               (each.stated ? each.stated->printed : in_eighths(each.mm(), sheets_.unit)) + ")";
    }

    void label(const std::string& title, double scale, Point at, Items& on) {
        Pen pen("label", ruler_);
        pen.words(
            say(messages::kViewAtScale,
                {title_term(sheets_.language, title), number_words(sheets_.language, scale, 0)}),
            at,
            3.2,
            Align::middle,
            0,
            true);
        std::move(pen).put_on(on);
    }

    void put_placements() {
        std::vector<Cell> cells;
        for (const PlacementView& view : sheets_.placements) {
            const double factor = 1 / view.picture.scale;
            const double width = view.picture.frame.width() * factor;
            const double height = view.picture.frame.height() * factor + kLabel + 1;
            cells.push_back(
                {width, height, [=, this, &view](Items& on, Point cell, double row) {
                     const Point corner = cell + Point{0, row - height};
                     draw_view(view.picture, corner, factor, true, on);
                     draw_dimensions(
                         view.picture.frame, Lanes(view.dimensions), corner, factor, on);
                     label(view.title, view.picture.scale, {cell.x + width / 2, row - 1.8}, on);
                 }});
        }
        put_cells(cells, {});
    }

    void put_tables(const std::vector<WorkshopTable>& tables) {
        for (const WorkshopTable& table : tables) {
            put_table(table);
        }
    }

    /// A title that stays with its table; no row or remark stands alone on a page.
    void put_table(const WorkshopTable& table) {
        if (table.rows.empty()) {
            return;
        }
        sheet::Table made;
        for (std::size_t i = 0; i < table.headings.size(); ++i) {
            made.columns.push_back({table.headings[i],
                                    i >= table.numbers ? Align::end : Align::start,
                                    i == table.wide});
        }
        for (const WorkshopRow& row : table.rows) {
            sheet::TableRow& to = made.rows.emplace_back();
            to.heading = row.size() == 1;
            for (const std::string& words : row) {
                sheet::Cell cell;
                cell.words = words;
                cell.voice = to.heading ? sheet::Voice::italic : sheet::Voice::small;
                to.cells.push_back(std::move(cell));
            }
        }
        flow_.space(flow_.style().leading * 0.6);
        flow_.heading(table.title, 2);
        std::vector<sheet::Slab> slabs = sheet::table_slabs(made, flow_.width(), flow_.press());
        // Neither the first nor the last page of a table has fewer.
        constexpr std::size_t together = 6;
        for (std::size_t i = 0; i < slabs.size(); ++i) {
            const bool last = i + 1 == slabs.size();
            const bool at_end = i + together >= slabs.size() || i + 1 < together;
            slabs[i].keep_with_next |= last ? !table.remarks.empty() : at_end;
            flow_.slab(std::move(slabs[i]));
        }
        flow_.space(1.5);
        for (const std::string& remark : table.remarks) {
            flow_.paragraph(remark, sheet::Voice::small_italic);
        }
    }

    /// The cutting list: every piece to one scale, with what to cut.
    void put_pieces() {
        constexpr double scale = 10;
        flow_.heading(say(messages::kViewAtScale, {say(messages::kPieces), "10"}));
        std::vector<Cell> cells;
        for (const PatternPiece& piece : sheets_.pieces) {
            Rect box;
            for (const Point p : piece.cut) {
                box.include(p);
            }
            const std::vector<std::string> words = cutting_words(piece, sheets_.language);
            double widest = box.width() / scale;
            for (const std::string& line : words) {
                widest = std::max(widest, ruler_.width(line, sheet::italic(kPieceType)));
            }
            const double drawn = box.height() / scale;
            cells.push_back({widest,
                             drawn + 5 + kPieceLine * static_cast<double>(words.size()),
                             [=, this, &piece](Items& on, Point cell, double) {
                                 put_piece(piece, box, cell, widest, on);
                             }});
        }
        put_cells(cells, {});
    }

    void put_piece(
        const PatternPiece& piece, const Rect& box, Point cell, double width, Items& on) {
        constexpr double factor = 0.1;
        Pen pen("piece", ruler_);
        const double middle = cell.x + width / 2;
        const Point corner{middle - box.width() * factor / 2, cell.y};
        draw_piece(piece, corner - Point{box.left, box.top} * factor, factor, pen);
        double baseline = cell.y + box.height() * factor + 4.4;
        bool first = true;
        for (const std::string& line : cutting_words(piece, sheets_.language)) {
            pen.words(line, {middle, baseline}, kPieceType, Align::middle, 0, !first);
            baseline += kPieceLine;
            first = false;
        }
        std::move(pen).put_on(on);
    }
};

}  // namespace

int flat_scale(const Rect& frame, const Paper& paper) {
    const Rect area = sheet::TextStyle(paper).area;
    for (const int scale : {2, 5, 10}) {
        if (frame.width() / scale + 24 <= area.width() &&
            frame.height() / scale + 30 <= area.height()) {
            return scale;
        }
    }
    return 20;
}

Document lay_out_workshop(const WorkshopSheets& sheets,
                          const Paper& paper,
                          const Typesetter& type,
                          Diagnostics& to) {
    Document document;
    document.title = sheet::on_one_line(sheets.title);
    document.author = sheet::on_one_line(sheets.drawn_by);
    document.subject = sheet::on_one_line(sheets.subtitle);
    document.description = say(sheets.language, messages::kTailorsSheets, {document.title});
    document.language = std::string(language_code(sheets.language));
    Sheets(sheets, paper, type, to).lay_out(document);
    return document;
}

}  // namespace platewright
