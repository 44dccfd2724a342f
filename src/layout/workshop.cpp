// SPDX-License-Identifier: MIT
// The tailor's sheets: flats, placements, tables and the cutting list, page after page.
#include "layout/workshop.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <utility>

#include "base/text.h"
#include "layout/pen.h"
#include "layout/ruler.h"
#include "layout/style.h"
#include "layout/tiles.h"

namespace platewright {
namespace {

using sheet::Pen;

constexpr double kMargin = 14;
constexpr double kHead = 24;
constexpr double kFoot = 16;
/// Between a garment and its first dimension line, and from one to the next.
constexpr double kLane = 7.5;
/// Between cells.
constexpr double kApart = 6;
constexpr double kTableType = 2.75;

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
        return at(side).empty() ? 1 : 5 + kLane * static_cast<double>(at(side).size());
    }
};

/// Puts one thing after another on pages.
class Sheets {
  public:
    Sheets(const WorkshopSheets& sheets, const Paper& paper, const Typesetter& type)
        : sheets_(sheets), paper_(paper), ruler_(type) {}

    std::vector<Page> lay_out() {
        for (const std::string& name : sheets_.order) {
            if (name == "flats") {
                put_flats();
                put_tables(sheets_.measures);
            } else if (name == "placement") {
                put_placements();
                put_tables(sheets_.placement_tables);
            } else if (name == "pieces") {
                put_pieces();
            } else if (name == "materials") {
                begin_page("Materials");
                put_tables(sheets_.materials);
            }
        }
        put_feet();
        if (std::ranges::find(sheets_.order, "full size") != sheets_.order.end()) {
            for (Page& page : lay_out_tiles(sheets_, paper_, ruler_)) {
                pages_.push_back(std::move(page));
            }
        }
        return std::move(pages_);
    }

  private:
    const WorkshopSheets& sheets_;
    const Paper& paper_;
    sheet::Ruler ruler_;
    std::vector<Page> pages_;
    double y_ = 0;

    [[nodiscard]] double bottom() const { return paper_.height - kFoot; }

    [[nodiscard]] double room() const { return paper_.width - 2 * kMargin; }

    void begin_page(const std::string& what) {
        Page page;
        page.width = paper_.width;
        page.height = paper_.height;
        page.paper = sheet::kPaper;
        pages_.push_back(std::move(page));
        Pen head("heading", ruler_);
        head.heading(sheet::on_one_line(sheets_.title), {kMargin, kMargin + 4}, 5);
        head.words(what, {paper_.width - kMargin, kMargin + 4}, 3.4, Align::end, 0, true);
        head.line({kMargin, kMargin + 6.6}, {paper_.width - kMargin, kMargin + 6.6});
        std::move(head).put_on(pages_.back());
        y_ = kHead;
        heading_ = what;
    }

    std::string heading_;

    void put_feet() {
        for (std::size_t i = 0; i < pages_.size(); ++i) {
            Pen foot("foot", ruler_);
            const double baseline = paper_.height - kMargin + 4.5;
            foot.words(sheet::on_one_line(sheets_.subtitle),
                       {kMargin, baseline},
                       2.5,
                       Align::start,
                       0,
                       true);
            foot.words(std::to_string(i + 1), {paper_.width / 2, baseline}, 2.5, Align::middle);
            foot.heading(sheet::kColophon, {paper_.width - kMargin, baseline}, 2.5, Align::end);
            std::move(foot).put_on(pages_[i]);
        }
    }

    /// A cell of that size, drawn with its corner at the place it is given.
    struct Cell {
        double width = 0;
        double height = 0;
        std::function<void(Point)> draw;
    };

    /// Cells in rows, each row in the middle of the page; as many pages as it takes.
    void put_cells(const std::vector<Cell>& cells, const std::string& what) {
        begin_page(what);
        for (std::size_t first = 0; first < cells.size();) {
            double width = 0;
            double height = 0;
            std::size_t end = first;
            while (end < cells.size() &&
                   (end == first || width + kApart + cells[end].width <= room() + 0.01)) {
                width += cells[end].width + (end == first ? 0 : kApart);
                height = std::max(height, cells[end].height);
                ++end;
            }
            if (y_ + height > bottom() && y_ > kHead + 0.01) {
                begin_page(what);
            }
            // Space left over goes between the cells and beside them alike.
            const auto number = static_cast<double>(end - first);
            const double air = std::max(0.0, room() - width) / (number + 1);
            double x = kMargin + air;
            for (; first < end; ++first) {
                cells[first].draw({x, y_});
                x += cells[first].width + kApart + air;
            }
            y_ += height + kApart;
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
            const double height =
                above + view.picture.frame.height() * factor + lanes.room(DimensionSide::below) + 7;
            cells.push_back({width, height, [=, this, &view](Point cell) {
                                 const Lanes round(view.dimensions);
                                 const Point corner = cell + Point{left, above};
                                 draw_view(view.picture, corner, factor, false);
                                 draw_dimensions(view.picture.frame, round, corner, factor);
                                 label(view.picture.title,
                                       view.picture.scale,
                                       {cell.x + width / 2, cell.y + height - 2});
                             }});
        }
        put_cells(cells, "Flats");
    }

    void draw_view(const Figure& picture, Point corner, double factor, bool framed) {
        Placed placed{corner - Point{picture.frame.left, picture.frame.top} * factor,
                      factor,
                      picture.drawing};
        placed.drawing.root.name = "flat";
        pages_.back().items.push_back(std::move(placed));
        if (framed) {
            Pen pen("edge", ruler_);
            const Point size{picture.frame.width() * factor, picture.frame.height() * factor};
            pen.chain({corner, corner + Point{size.x, 0}, corner + size, corner + Point{0, size.y}},
                      true,
                      0.13,
                      sheet::LineKind::continuous);
            std::move(pen).put_on(pages_.back());
        }
    }

    void draw_dimensions(const Rect& frame, const Lanes& lanes, Point corner, double factor) {
        Pen pen("dimensions", ruler_);
        const auto on_paper = [&](Point p) {
            return corner + (p - Point{frame.left, frame.top}) * factor;
        };
        const Point end = on_paper({frame.right, frame.bottom});
        for (const DimensionSide side : {DimensionSide::left,
                                         DimensionSide::right,
                                         DimensionSide::above,
                                         DimensionSide::below}) {
            double lane = 4;
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
        std::move(pen).put_on(pages_.back());
    }

    /// With extension lines from both points to the line at `at`.
    static void outside(Pen& pen, const Dimension& each, Point a, Point b, double at) {
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

    static void beside(Pen& pen, const Dimension& each, Point a, Point b) {
        if (each.way == DimensionWay::across) {
            b.y = a.y;
        } else if (each.way == DimensionWay::down) {
            b.x = a.x;
        }
        pen.dimension(a, b, each.aside, words_of(each));
    }

    static std::string words_of(const Dimension& each) {
        return format_number(each.mm(), 0) + (each.stated ? " (" + each.stated->printed + ")" : "");
    }

    void label(const std::string& title, double scale, Point at) {
        Pen pen("label", ruler_);
        std::string words = title + "   1 : " + format_number(scale, 0);
        pen.words(words, at, 3.2, Align::middle, 0, true);
        std::move(pen).put_on(pages_.back());
    }

    void put_placements() {
        std::vector<Cell> cells;
        for (const PlacementView& view : sheets_.placements) {
            const double factor = 1 / view.picture.scale;
            const double width = view.picture.frame.width() * factor;
            const double height = view.picture.frame.height() * factor + 8;
            cells.push_back(
                {width, height, [=, this, &view](Point cell) {
                     draw_view(view.picture, cell, factor, true);
                     draw_dimensions(view.picture.frame, Lanes(view.dimensions), cell, factor);
                     label(
                         view.title, view.picture.scale, {cell.x + width / 2, cell.y + height - 3});
                 }});
        }
        put_cells(cells, "Placement");
    }

    void put_tables(const std::vector<WorkshopTable>& tables) {
        for (const WorkshopTable& table : tables) {
            put_table(table);
        }
    }

    void put_table(const WorkshopTable& table) {
        if (pages_.empty()) {
            begin_page(table.title);
        }
        if (y_ + 24 > bottom()) {
            begin_page(heading_);
        }
        put_line(table.title, 3.6, true);
        put_row(table.headings, table.shares, true);
        for (const TableRow& row : table.rows) {
            put_row(row, table.shares, false);
        }
        y_ += 1.5;
        for (const std::string& remark : table.remarks) {
            for (const std::string& line : ruler_.lines(remark, sheet::italic(2.5), room())) {
                if (y_ + 4 > bottom()) {
                    begin_page(heading_);
                }
                Pen pen("remark", ruler_);
                pen.words(line, {kMargin, y_ + 2.2}, 2.5, Align::start, 0, true);
                std::move(pen).put_on(pages_.back());
                y_ += 3.1;
            }
        }
        y_ += 5;
    }

    void put_line(const std::string& words, double size, bool capitals) {
        Pen pen("heading", ruler_);
        if (capitals) {
            pen.heading(words, {kMargin, y_ + size}, size);
        } else {
            pen.words(words, {kMargin, y_ + size}, size);
        }
        std::move(pen).put_on(pages_.back());
        y_ += size * 1.5;
    }

    /// One row; the words of a cell are broken where its column ends.
    void put_row(const TableRow& row, const std::vector<double>& shares, bool heading) {
        std::vector<std::vector<std::string>> cells;
        std::size_t lines = 1;
        const Type type = heading ? sheet::italic(kTableType) : sheet::roman(kTableType);
        for (std::size_t i = 0; i < row.size(); ++i) {
            cells.push_back(ruler_.lines(row[i], type, room() * shares[i] - 3));
            lines = std::max(lines, cells.back().size());
        }
        const double height = static_cast<double>(lines) * kTableType * 1.22 + 1.2;
        if (y_ + height > bottom()) {
            begin_page(heading_);
        }
        Pen pen("table", ruler_);
        double x = kMargin;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            double baseline = y_ + kTableType;
            for (const std::string& line : cells[i]) {
                pen.words(line, {x, baseline}, kTableType, Align::start, 0, heading);
                baseline += kTableType * 1.22;
            }
            x += room() * shares[i];
        }
        pen.line({kMargin, y_ + height - 0.4},
                 {kMargin + room(), y_ + height - 0.4},
                 heading ? 0.25 : 0.09);
        std::move(pen).put_on(pages_.back());
        y_ += height;
    }

    /// The cutting list: every piece to one scale, with what to cut.
    void put_pieces() {
        constexpr double scale = 10;
        std::vector<Cell> cells;
        for (const PatternPiece& piece : sheets_.pieces) {
            Rect box;
            for (const Point p : piece.cut) {
                box.include(p);
            }
            const std::vector<std::string> words = cutting_words(piece);
            double widest = box.width() / scale;
            for (const std::string& line : words) {
                widest = std::max(widest, ruler_.width(line, sheet::italic(2.5)));
            }
            const double drawn = box.height() / scale;
            cells.push_back(
                {widest,
                 drawn + 4 + 3.1 * static_cast<double>(words.size()),
                 [=, this, &piece](Point cell) { put_piece(piece, box, cell, widest); }});
        }
        put_cells(cells, "Pieces   1 : 10");
    }

    void put_piece(const PatternPiece& piece, const Rect& box, Point cell, double width) {
        constexpr double factor = 0.1;
        Pen pen("piece", ruler_);
        const double middle = cell.x + width / 2;
        const Point corner{middle - box.width() * factor / 2, cell.y};
        draw_piece(piece, corner - Point{box.left, box.top} * factor, factor, pen);
        double baseline = cell.y + box.height() * factor + 4.4;
        bool first = true;
        for (const std::string& line : cutting_words(piece)) {
            pen.words(line, {middle, baseline}, 2.5, Align::middle, 0, !first);
            baseline += 3.1;
            first = false;
        }
        std::move(pen).put_on(pages_.back());
    }
};

}  // namespace

int flat_scale(const Rect& frame, const Paper& paper) {
    for (const int scale : {2, 5, 10}) {
        if (frame.width() / scale + 36 <= paper.width - 2 * kMargin &&
            frame.height() / scale + 44 <= paper.height - kHead - kFoot) {
            return scale;
        }
    }
    return 20;
}

int placement_scale(const Rect& frame, const Paper& paper) {
    const double half = (paper.width - 2 * kMargin - 6) / 2;
    for (const int scale : {1, 2, 5}) {
        if (frame.width() / scale <= half && frame.height() / scale <= paper.height * 0.42) {
            return scale;
        }
    }
    return 10;
}

Document lay_out_workshop(const WorkshopSheets& sheets,
                          const Paper& paper,
                          const Typesetter& type) {
    Document document;
    document.title = sheet::on_one_line(sheets.title);
    document.author = sheet::on_one_line(sheets.drawn_by);
    document.subject = sheet::on_one_line(sheets.subtitle);
    document.description = "Tailor's sheets: " + document.title + ".";
    document.pages = Sheets(sheets, paper, type).lay_out();
    if (document.pages.empty()) {
        Page blank;
        blank.width = paper.width;
        blank.height = paper.height;
        blank.paper = sheet::kPaper;
        document.pages.push_back(std::move(blank));
    }
    return document;
}

}  // namespace platewright
