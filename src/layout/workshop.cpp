// SPDX-License-Identifier: MIT
// The tailor's sheets: flats, placements, tables and the cutting list, page after page.
#include "layout/workshop.h"

#include <algorithm>
#include <memory>
#include <utility>

#include "layout/cells.h"
#include "layout/flow.h"
#include "layout/pen.h"
#include "layout/piece.h"
#include "layout/piece_cells.h"
#include "layout/piece_key.h"
#include "layout/placement.h"
#include "layout/ruler.h"
#include "layout/style.h"
#include "layout/tile_words.h"
#include "layout/tiles.h"
#include "words/sheet_messages.h"
#include "words/terms.h"
#include "words/workshop_messages.h"

namespace platewright {
namespace {

using sheet::Items;
using sheet::Pen;
using sheet::put_cells;
using sheet::RowItem;

/// A line of words under a drawing.
constexpr double kLabel = 5.6;
constexpr double kCaption = kCaptionType;

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
                flow_.columns(2);
                for (const WorkshopTable& table : sheets_.measures) {
                    put_table(table, /*close=*/true, /*remarks=*/false);
                }
                flow_.columns(1);
                for (const WorkshopTable& table : sheets_.measures) {
                    put_remarks(table.remarks);
                }
            } else if (name == "placement" && !sheets_.placements.empty()) {
                flow_.space(flow_.style().leading);
                flow_.heading(say(messages::kPlacement));
                put_placements();
                put_tables(sheets_.placement_tables, /*close=*/true);
            } else if (name == "pieces" && !sheets_.pieces.empty()) {
                put_pieces();
            } else if (name == "materials") {
                flow_.heading(say(messages::kMaterials));
                put_tables(sheets_.materials);
                put_in_columns(sheets_.piece_sums);
                put_cloths();
            }
        }
        std::vector<Page> tiles;
        if (std::ranges::find(sheets_.order, "full size") != sheets_.order.end()) {
            tiles = lay_out_tiles(sheets_, paper_, ruler_);
            flow_.appendix(words_of_tiles(sheets_), tiles.size());
        }
        flow_.finish(document);
        number_tiles(tiles, document.pages.size());
        for (Page& page : tiles) {
            document.pages.push_back(std::move(page));
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
        // Before the tables: a line of its own after them might be alone on the next page.
        if (!sheets_.drawn_by.empty()) {
            flow_.paragraph(say(messages::kDrawnBy, {sheets_.drawn_by}),
                            sheet::Voice::small_italic);
        }
        flow_.contents();
        put_table(sheets_.man, /*close=*/true);
        if (std::ranges::find(sheets_.order, "flats") != sheets_.order.end()) {
            put_in_columns(sheets_.girths);
        }
        if (!sheets_.notes.empty()) {
            flow_.heading(say(messages::kNotes), 2);
            flow_.items(sheets_.notes, "•");
        }
        if (!sheets_.source.empty()) {
            flow_.space(flow_.style().leading / 4);
            flow_.paragraph(say(messages::kSource, {sheets_.source}), sheet::Voice::small);
        }
    }

    /// What a view and its dimensions take, mm on paper from the garment's origin.
    static Rect reach_of(const Figure& picture, const std::vector<sheet::DimensionLine>& lines) {
        const double factor = 1 / picture.scale;
        const Rect& frame = picture.frame;
        Rect reach{
            frame.left * factor, frame.top * factor, frame.right * factor, frame.bottom * factor};
        for (const sheet::DimensionLine& line : lines) {
            reach.include(box_of(line));
        }
        return reach;
    }

    [[nodiscard]] std::string caption(const std::string& title, double scale) const {
        return placement_caption(title, scale, sheets_.language);
    }

    /// How far the words under a small garment reach beyond it and its dimensions on either side.
    double caption_beyond(const MeasuredView& view, const Rect& reach) {
        const double half =
            ruler_.width(caption(view.picture.title, view.picture.scale), sheet::italic(kCaption)) /
            2;
        const double middle = view.picture.frame.centre().x / view.picture.scale;
        return std::max({0.0, reach.left - (middle - half), middle + half - reach.right});
    }

    void put_flats() {
        std::vector<RowItem> cells;
        for (const MeasuredView& view : sheets_.flats) {
            const Rect reach = reach_of(view.picture, view.lines);
            const double aside = caption_beyond(view, reach);
            cells.push_back(
                {reach.width() + 2 * aside,
                 reach.height() + kLabel,
                 view.garment,
                 [=, this, &view](Items& on, Point cell, double row) {
                     const Point origin = cell - Point{reach.left - aside, reach.top};
                     draw_view(view.picture, origin, false, on);
                     dimension(view.lines, origin, on);
                     const double middle =
                         origin.x + view.picture.frame.centre().x / view.picture.scale;
                     label(
                         view.picture.title, view.picture.scale, {middle, cell.y + row - 1.4}, on);
                 }});
        }
        flow_.new_page();
        put_cells(cells, say(messages::kFlats), flow_);
    }

    void dimension(const std::vector<sheet::DimensionLine>& lines, Point origin, Items& on) {
        Pen pen("dimensions");
        draw_dimensions(lines, origin, pen, sheet::Casing::paper);
        std::move(pen).put_on(on);
    }

    void draw_view(const Figure& picture, Point origin, bool framed, Items& on) {
        const double factor = 1 / picture.scale;
        Placed placed{origin, factor, picture.drawing};
        placed.drawing.root.name = "flat";
        on.push_back(std::move(placed));
        if (framed) {
            Pen pen("edge");
            const Rect& frame = picture.frame;
            const Point corner = origin + Point{frame.left, frame.top} * factor;
            const Point size{frame.width() * factor, frame.height() * factor};
            pen.chain({corner, corner + Point{size.x, 0}, corner + size, corner + Point{0, size.y}},
                      true,
                      0.13,
                      sheet::LineKind::continuous);
            std::move(pen).put_on(on);
        }
    }

    void label(const std::string& title, double scale, Point at, Items& on) {
        Pen pen("label");
        pen.words(caption(title, scale), at, kCaption, Align::middle, 0, true);
        std::move(pen).put_on(on);
    }

    void put_placements() {
        std::vector<RowItem> cells;
        for (const PlacementView& view : sheets_.placements) {
            const double factor = 1 / view.picture.scale;
            const double drawn = view.picture.frame.width() * factor;
            const double width = std::max(
                drawn,
                ruler_.width(caption(view.title, view.picture.scale), sheet::italic(kCaption)));
            const double height = view.picture.frame.height() * factor + kPlacementLabel;
            cells.push_back(
                {width, height, {}, [=, this, &view](Items& on, Point cell, double row) {
                     const Rect& frame = view.picture.frame;
                     const Point origin = cell + Point{(width - drawn) / 2, row - height} -
                                          Point{frame.left, frame.top} * factor;
                     draw_view(view.picture, origin, true, on);
                     dimension(view.lines, origin, on);
                     label(view.title,
                           view.picture.scale,
                           {cell.x + width / 2, cell.y + row - 1.8},
                           on);
                 }});
        }
        put_cells(sheet::stacked(std::move(cells)), {}, flow_);
    }

    void put_tables(const std::vector<WorkshopTable>& tables, bool close = false) {
        for (const WorkshopTable& table : tables) {
            put_table(table, close);
        }
    }

    /// A narrow table stands in two columns.
    void put_in_columns(const WorkshopTable& table, bool remarks = true) {
        flow_.columns(2);
        put_table(table, /*close=*/true, remarks);
        flow_.columns(1);
    }

    /// A title that stays with its table; no row or remark stands alone on a page.
    /// `close`: in rows closer than others; `remarks`: with them.
    void put_table(const WorkshopTable& table, bool close = false, bool remarks = true) {
        if (table.rows.empty()) {
            return;
        }
        sheet::Table made;
        made.close = close;
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
        flow_.space(flow_.style().leading * (close ? 0.3 : 0.6));
        flow_.heading(table.title, 2);
        std::vector<sheet::Slab> slabs = sheet::table_slabs(made, flow_.width(), flow_.press());
        // Neither the first nor the last page of a table has fewer; side by side they are parted,
        // but not a table of a few rows.
        constexpr std::size_t few = 3;
        const bool beside = flow_.width() < flow_.style().area.width();
        const std::size_t together = beside && table.rows.size() > few ? 2 : 6;
        for (std::size_t i = 0; i < slabs.size(); ++i) {
            const bool last = i + 1 == slabs.size();
            const bool at_end = i + together >= slabs.size() || i + 1 < together;
            slabs[i].keep_with_next |= last ? remarks && !table.remarks.empty() : at_end;
            flow_.slab(std::move(slabs[i]));
        }
        if (remarks) {
            put_remarks(table.remarks);
        }
    }

    void put_remarks(const std::vector<std::string>& remarks) {
        flow_.space(1.5);
        for (const std::string& remark : remarks) {
            flow_.paragraph(remark, sheet::Voice::small_italic);
        }
    }

    /// The cutting list: every piece to one scale, with what to cut; garment by garment.
    void put_pieces() {
        flow_.new_page();
        flow_.heading(say(messages::kViewAtScale, {say(messages::kPieces), "10"}));
        flow_.paragraph(say(messages::kPieceMeasures), sheet::Voice::small_italic);
        flow_.paragraph(sheets_.seams.remark, sheet::Voice::small_italic);
        sheet::Slab bar = scale_bar(sheets_.language, kPieceScale, ruler_);
        const auto head = std::make_shared<const sheet::Slab>(bar);
        put_line_key(std::move(bar));
        for (const PieceGroup& group : piece_groups(sheets_, flow_.width(), ruler_)) {
            flow_.space(flow_.style().leading / 2);
            flow_.subheading(title_term(sheets_.language, group.garment));
            put_cells(group.cells, {}, flow_, head);
            const WorkshopTable seams = seams_of(group.garment);
            put_in_columns(seams, /*remarks=*/false);
            if (!seams.remarks.empty()) {
                put_remarks(seams.remarks);
            }
        }
        put_work();
    }

    /// The seams stand with the pieces that have their letters.
    [[nodiscard]] WorkshopTable seams_of(const std::string& garment) const {
        WorkshopTable made;
        made.title = sheets_.seams.title + ", " + term(sheets_.language, garment);
        made.headings = sheets_.seams.headings;
        // The name of the seam, then numbers.
        made.numbers = 1;
        const auto found =
            std::ranges::find(sheets_.seams.garments, garment, &GarmentSeams::garment);
        if (found != sheets_.seams.garments.end()) {
            made.rows = found->rows;
            made.remarks = found->remarks;
        }
        return made;
    }

    /// The steps of each garment.
    void put_work() {
        if (sheets_.work.empty()) {
            return;
        }
        flow_.space(flow_.style().leading);
        flow_.heading(say(messages::kOrderOfWork), 2);
        flow_.paragraph(say(messages::kOrderOfWorkRemark), sheet::Voice::small_italic);
        flow_.columns(2);
        // Of a short order no steps are left over for the next page.
        constexpr std::size_t short_order = 5;
        for (const WorkOrder& each : sheets_.work) {
            const std::size_t from = flow_.next();
            flow_.subheading(title_term(sheets_.language, each.garment));
            flow_.items(each.steps, "");
            if (each.steps.size() <= short_order) {
                flow_.hold_together(from);
            }
        }
        flow_.columns(1);
    }

    /// With the scale, before the first row.
    void put_line_key(sheet::Slab bar) {
        sheet::Slab slab;
        Pen pen("key");
        slab.height =
            draw_line_key(sheets_.pieces, sheets_.language, {}, flow_.width(), ruler_, pen);
        slab.keep_with_next = true;
        std::move(pen).put_on(slab.pictures);
        flow_.slab(std::move(slab));
        bar.keep_with_next = true;
        flow_.slab(std::move(bar));
    }

    void put_cloths() {
        if (sheets_.cloths.empty()) {
            return;
        }
        constexpr double scale = 20;
        constexpr double words = 9.5;
        std::vector<RowItem> cells;
        for (const ClothPlan& plan : sheets_.cloths) {
            const double width = plan.laying.width / scale;
            const double height = plan.laying.length / scale + words;
            cells.push_back(
                {width, height, {}, [=, this, &plan](Items& on, Point cell, double) {
                     Pen pen("cloth");
                     draw_laying(plan.laying, plan.pieces, cell, 1 / scale, pen);
                     const Point foot{cell.x + width / 2, cell.y + height - words};
                     pen.words(say(messages::kViewAtScale, {plan.title, "20"}),
                               foot + Point{0, 4.6},
                               3.2,
                               Align::middle,
                               0,
                               true);
                     pen.words(plan.size, foot + Point{0, 8.2}, kPieceType, Align::middle);
                     std::move(pen).put_on(on);
                 }});
        }
        // Of like height in a row; the low ones may still find room on the page before.
        std::ranges::stable_sort(cells, {}, &RowItem::height);
        flow_.space(flow_.style().leading);
        flow_.heading(say(messages::kLaidOut), 2);
        put_cells(cells, {}, flow_);
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
