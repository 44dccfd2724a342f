// SPDX-License-Identifier: MIT
// Pieces at full size, on tiles.
#include "layout/tiles.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "layout/cutting_table.h"
#include "layout/edge_map.h"
#include "layout/piece.h"
#include "layout/piece_key.h"
#include "layout/room_in.h"
#include "layout/style.h"
#include "layout/tile_names.h"
#include "layout/tile_words.h"
#include "pattern/shapes.h"
#include "words/sheet_messages.h"
#include "words/terms.h"
#include "words/workshop_messages.h"

namespace platewright {
namespace {

using sheet::LineKind;
using sheet::Pen;

/// Kept clear for the printer on every side.
constexpr double kClear = 9;
/// The line of words at the foot of a tile.
constexpr double kStrip = 6;
constexpr double kOverlap = 12;
constexpr double kSquare = 100;
constexpr double kInches = 2 * kInch;
/// Beside the map, above it, and beneath all words.
constexpr double kMapEdge = 12;
constexpr double kMapTop = 25;
constexpr double kMapFoot = 14;
constexpr double kMapType = 2.9;
constexpr double kMapLine = 3.8;
/// Clear of the match lines, which run in the middle of the overlap.
constexpr double kCheckFrom = kOverlap / 2 + 3;
constexpr double kCheckWidth = kCheckFrom + kSquare + 12 + kInches;
constexpr double kCheckHeight = kCheckFrom + kSquare + 24;

/// The lines of a square with its length written beside it.
void draw_square(Pen& pen, Point at, double side, const std::string& words) {
    pen.chain({at, at + Point{side, 0}, at + Point{side, side}, at + Point{0, side}},
              true,
              0.25,
              LineKind::continuous);
    pen.words(words, at + Point{side / 2, side / 2}, 3.4, Align::middle);
}

class Tiler {
  public:
    Tiler(const WorkshopSheets& sheets, const Paper& paper, sheet::Ruler& ruler)
        : sheets_(sheets),
          paper_(paper),
          ruler_(ruler),
          step_{paper.width - 2 * kClear - kOverlap,
                paper.height - 2 * kClear - kStrip - kOverlap} {
        Pen unused("key");
        map_lines_ = map_words();
        key_height_ = draw_map_key({}, unused);
        choose_table();
    }

    std::vector<Page> all() {
        std::vector<Page> pages{map()};
        for (int row = 0; row < rows_; ++row) {
            for (int column = 0; column < columns_; ++column) {
                if (is_used(row, column)) {
                    pages.push_back(tile(row, column));
                }
            }
        }
        return pages;
    }

  private:
    const WorkshopSheets& sheets_;
    const Paper& paper_;
    sheet::Ruler& ruler_;
    Point step_;
    CuttingTable table_;
    int columns_ = 1;
    int best_ = 2;
    int rows_ = 1;
    std::vector<std::string> map_lines_;
    double key_height_ = 0;

    /// The table on which the pieces take the fewest sheets of paper, and of several such the one
    /// whose map is largest.
    void choose_table() {
        std::size_t fewest = 0;
        double largest = 0;
        for (const int columns : {2, 3, 4, 5, 6}) {
            set_table(columns);
            const std::size_t used = tiles_used();
            if (fewest == 0 || used < fewest || (used == fewest && map_factor() > largest)) {
                fewest = used;
                largest = map_factor();
                best_ = columns;
            }
        }
        set_table(best_);
    }

    [[nodiscard]] double map_factor() const {
        const double wide = columns_ * step_.x + kOverlap;
        const double high = rows_ * step_.y + kOverlap;
        const double room = words_from() - key_height_ - 6 - kMapTop;
        return std::min((paper_.width - 2 * kMapEdge) / wide, room / high);
    }

    /// The baseline of the first line beneath the map.
    [[nodiscard]] double words_from() const {
        return paper_.height - kMapFoot - kMapLine * static_cast<double>(map_lines_.size() - 1);
    }

    double draw_map_key(Point at, Pen& pen) {
        return draw_line_key(
            sheets_.full_size, sheets_.language, at, paper_.width - 2 * kMapFoot, ruler_, pen);
    }

    void set_table(int columns) {
        // Within the outermost match lines: nothing is cut off where no neighbour has it.
        constexpr double inset = kOverlap / 2 + 1;
        table_ = lay_on_table(sheets_.full_size,
                              columns * step_.x + kOverlap - 2 * inset,
                              {kCheckWidth, kCheckHeight});
        for (Laid& laid : table_.pieces) {
            laid.at = laid.at + Point{inset, inset};
            const Rect& box = laid.box;
            laid.box = {box.left + inset, box.top + inset, box.right + inset, box.bottom + inset};
        }
        columns_ = count_of(table_.width + 2 * inset, step_.x);
        rows_ = count_of(table_.height + 2 * inset, step_.y);
        while (rows_ > 1 && !is_row_used(rows_ - 1)) {
            --rows_;
        }
    }

    [[nodiscard]] bool is_row_used(int row) const {
        for (int column = 0; column < columns_; ++column) {
            if (is_used(row, column)) {
                return true;
            }
        }
        return false;
    }

    [[nodiscard]] std::size_t tiles_used() const {
        std::size_t used = 0;
        for (int row = 0; row < rows_; ++row) {
            for (int column = 0; column < columns_; ++column) {
                used += is_used(row, column) ? 1U : 0U;
            }
        }
        return used;
    }

    static int count_of(double room, double step) {
        return std::max(1, static_cast<int>(std::ceil((room - kOverlap) / step)));
    }

    [[nodiscard]] Rect seen(int row, int column) const {
        const double left = column * step_.x;
        const double top = row * step_.y;
        return {left, top, left + step_.x + kOverlap, top + step_.y + kOverlap};
    }

    /// Whether anything of a piece lies in the window, and not only its box.
    static bool shows(const Laid& laid, const Rect& window) {
        if (!laid.box.meets(window)) {
            return false;
        }
        const Point from = Point{window.left, window.top} - laid.at;
        const Point to = Point{window.right, window.bottom} - laid.at;
        return !shapes::common({laid.piece->cut}, {from, {to.x, from.y}, to, {from.x, to.y}})
                    .empty();
    }

    /// Whether anything of a piece lies within the match lines, or all of it on the tile: scraps
    /// beyond them are the next tile's.
    static bool belongs(const Laid& laid, const Rect& window) {
        const Rect& box = laid.box;
        const bool whole = box.left >= window.left && box.right <= window.right &&
                           box.top >= window.top && box.bottom <= window.bottom;
        return shows(laid, whole ? window : window.grown(-kOverlap / 2));
    }

    /// Whether anything lies on it that is not already seen on the tiles above and before it.
    [[nodiscard]] bool is_used(int row, int column) const {
        Rect window = seen(row, column);
        window.top += row > 0 ? kOverlap : 0;
        window.left += column > 0 ? kOverlap : 0;
        return (row == 0 && column == 0) ||
               std::ranges::any_of(table_.pieces,
                                   [&](const Laid& laid) { return shows(laid, window); });
    }

    [[nodiscard]] Page blank() const {
        Page page;
        page.width = paper_.width;
        page.height = paper_.height;
        page.paper = {0xff, 0xff, 0xff};
        return page;
    }

    Page tile(int row, int column) {
        Page page = blank();
        const Rect window = seen(row, column);
        const Point origin = Point{kClear, kClear} - Point{window.left, window.top};
        Pen pen("pieces");
        pen.clip({kClear, kClear, kClear + step_.x + kOverlap, kClear + step_.y + kOverlap});
        for (const Laid& laid : table_.pieces) {
            if (belongs(laid, window)) {
                draw_piece(*laid.piece, laid.at + origin, 1, {pen, sheets_.language});
                name_on_tile(laid, {window, origin, sheets_.language}, ruler_, pen);
            }
        }
        // The squares lie in the first corner of the table.
        if (window.meets({0, 0, kCheckWidth, kCheckHeight})) {
            draw_checks(pen, origin);
        }
        std::move(pen).put_on(page);
        draw_marks(row, column, page);
        return page;
    }

    void draw_checks(Pen& pen, Point origin) const {
        const Point from = origin + Point{kCheckFrom, kCheckFrom};
        draw_square(pen, from, kSquare, "100 mm");
        draw_square(pen, from + Point{kSquare + 10, 0}, kInches, "2 in");
        double baseline = kSquare + 6;
        for (const std::string& line : {say(sheets_.language, messages::kMeasureSquare),
                                        say(sheets_.language, messages::kNeverFit)}) {
            pen.words(line, from + Point{0, baseline}, 3.2, Align::start, 0, true);
            baseline += 4.2;
        }
    }

    /// Match lines in the middle of the overlaps, crosses where they meet, the name of the tile.
    void draw_marks(int row, int column, Page& page) {
        Pen pen("marks");
        const double half = kOverlap / 2;
        const Rect match{
            kClear + half, kClear + half, kClear + half + step_.x, kClear + half + step_.y};
        const Chain frame{{match.left, match.top},
                          {match.right, match.top},
                          {match.right, match.bottom},
                          {match.left, match.bottom}};
        pen.chain(frame, true, 0.13, LineKind::chain);
        for (const Point at : frame) {
            pen.line(at - Point{4, 0}, at + Point{4, 0}, 0.25);
            pen.line(at - Point{0, 4}, at + Point{0, 4}, 0.25);
        }
        const double baseline = paper_.height - kClear - 1.2;
        pen.heading(tile_name(row, column), {kClear + half, baseline}, 5);
        pen.words(say(sheets_.language,
                      messages::kTileFoot,
                      {sheet::on_one_line(sheets_.title), allowance_words(sheets_)}),
                  {kClear + half + 14, baseline},
                  2.6,
                  Align::start,
                  0,
                  true);
        std::move(pen).put_on(page);
    }

    /// Headed as the contents name it; the heading gives way where it does not fit beside what the
    /// page is.
    void draw_map_head(Pen& pen) {
        constexpr double type = 3.4;
        constexpr double largest = 5;
        constexpr double apart = 6;
        const std::string title = words_of_tiles(sheets_);
        const std::string what = say(sheets_.language, messages::kHowTilesLie);
        const double room =
            paper_.width - 2 * kMapFoot - apart - ruler_.width(what, sheet::italic(type));
        const double wide = ruler_.width(title, sheet::small_capitals(largest));
        pen.heading(title, {kMapFoot, 18}, largest * std::min(1.0, room / wide));
        pen.words(what, {paper_.width - kMapFoot, 18}, type, Align::end, 0, true);
        pen.line({kMapFoot, 20.6}, {paper_.width - kMapFoot, 20.6});
    }

    /// How the tiles lie together, to a small scale.
    Page map() {
        Page page = blank();
        Pen pen("map");
        draw_map_head(pen);
        const double factor = map_factor();
        const double wide = (columns_ * step_.x + kOverlap) * factor;
        const Point corner{(paper_.width - wide) / 2, kMapTop};
        draw_map(corner, factor, pen);
        double baseline = words_from();
        draw_map_key({kMapFoot, baseline - kMapLine - key_height_}, pen);
        for (const std::string& line : map_lines_) {
            pen.words(line, {kMapFoot, baseline}, kMapType);
            baseline += kMapLine;
        }
        std::move(pen).put_on(page);
        return page;
    }

    /// What stands beneath the map, line by line.
    [[nodiscard]] std::vector<std::string> map_words() {
        std::vector<std::string> lines;
        for (const std::string& words : words_of_map(sheets_, kOverlap)) {
            for (std::string& line :
                 ruler_.lines(words, sheet::roman(kMapType), paper_.width - 2 * kMapFoot)) {
                lines.push_back(std::move(line));
            }
        }
        return lines;
    }

    void draw_map(Point corner, double factor, Pen& pen) {
        sheet::EdgeMap taken({corner.x,
                              corner.y,
                              corner.x + (columns_ * step_.x + kOverlap) * factor,
                              corner.y + (rows_ * step_.y + kOverlap) * factor});
        for (const Laid& laid : table_.pieces) {
            Chain on_map;
            for (const Point p : laid.piece->cut) {
                on_map.push_back(corner + (laid.at + p) * factor);
            }
            taken.add_shape({on_map});
            for (std::size_t i = 0; i < laid.piece->outline.size(); ++i) {
                const Chain& seam = laid.piece->outline;
                taken.add_edge(corner + (laid.at + seam[i]) * factor,
                               corner + (laid.at + seam[(i + 1) % seam.size()]) * factor);
            }
            PiecePens pens(pen, sheets_.language);
            pens.words = nullptr;
            draw_piece(*laid.piece, corner + laid.at * factor, factor, pens);
        }
        for (const Laid& laid : table_.pieces) {
            taken.add_shape({name_on_map(laid, corner, factor, taken, pen)});
        }
        for (int row = 0; row < rows_; ++row) {
            for (int column = 0; column < columns_; ++column) {
                draw_cell(row, column, corner, factor, taken, pen);
            }
        }
    }

    /// Where the match lines run over a piece on the map, mm from its own corner, and clear of
    /// them.
    void add_match_lines(const Laid& laid, double factor, std::vector<Rect>& marks) const {
        constexpr double clear = 0.9;
        const Point size{laid.box.width() * factor, laid.box.height() * factor};
        for (int column = 0; column <= columns_; ++column) {
            const double x = (column * step_.x + kOverlap / 2 - laid.at.x) * factor;
            for (double y = 0; y <= size.y; y += clear) {
                marks.push_back(Rect{x, y, x, y}.grown(clear));
            }
        }
        for (int row = 0; row <= rows_; ++row) {
            const double y = (row * step_.y + kOverlap / 2 - laid.at.y) * factor;
            for (double x = 0; x <= size.x; x += clear) {
                marks.push_back(Rect{x, y, x, y}.grown(clear));
            }
        }
    }

    /// Its number in the cutting list, and its name where there is room for it. Gives the place of
    /// these words.
    Chain name_on_map(
        const Laid& laid, Point corner, double factor, const sheet::EdgeMap& taken, Pen& pen) {
        Chain on_map;
        for (const Point p : laid.piece->outline) {
            on_map.push_back(p * factor);
        }
        const std::string number = std::to_string(laid.piece->number_in_list);
        const std::string name = say(sheets_.language,
                                     messages::kNumbered,
                                     {number, term(sheets_.language, laid.piece->name)});
        const Lettering lettering(*laid.piece, factor, sheets_.language);
        const Rect grain = grain_of(lettering);
        const Rect arrow{grain.centre().x * factor - 1,
                         grain.top * factor,
                         grain.centre().x * factor + 1,
                         grain.bottom * factor};
        // Clear by a millimetre on the map.
        std::vector<Rect> marks = marks_within(lettering, 1 / factor);
        for (Rect& mark : marks) {
            mark = {
                mark.left * factor, mark.top * factor, mark.right * factor, mark.bottom * factor};
        }
        const std::vector<Rect> own = marks;
        add_match_lines(laid, factor, marks);
        const auto box_of_words = [](Point middle, double width) {
            const Point half{width / 2 + 0.6, 0};
            const Point down{0, kLeastName};
            return Chain{middle - half - down, middle + half - down, middle + half, middle - half};
        };
        for (const std::string& words : {name, number}) {
            const double width = ruler_.width(words, sheet::italic(kLeastName));
            if (const auto at = sheet::room_in(on_map, width, kLeastName, arrow, marks)) {
                pen.words(words,
                          corner + laid.at * factor + *at + Point{0, kLeastName * 0.8},
                          kLeastName,
                          Align::middle,
                          0,
                          true);
                return box_of_words(corner + laid.at * factor + *at + Point{0, kLeastName}, width);
            }
        }
        const double wide = ruler_.width(number, sheet::italic(kLeastName));
        const Point from = corner + laid.at * factor;
        const Point at = number_on_map(on_map, from, wide, arrow, {marks, own}, taken);
        pen.words(number, at + Point{0, kLeastName * 0.3}, kLeastName, Align::middle, 0, true);
        return box_of_words(at + Point{0, kLeastName / 2}, wide);
    }

    /// The tile, and its name at its edge where no piece lies.
    void draw_cell(
        int row, int column, Point corner, double factor, const sheet::EdgeMap& taken, Pen& pen) {
        constexpr double type = 3.4;
        const Point at =
            corner + Point{column * step_.x + kOverlap / 2, row * step_.y + kOverlap / 2} * factor;
        const Point size = step_ * factor;
        pen.chain({at, at + Point{size.x, 0}, at + size, at + Point{0, size.y}},
                  true,
                  0.13,
                  LineKind::continuous);
        if (!is_used(row, column)) {
            return;
        }
        const std::string name = tile_name(row, column);
        const double wide = ruler_.width(name, sheet::small_capitals(type)) + 1;
        const double right = size.x - wide - 1;
        const double below = size.y - 1;
        const double above = type + 0.6;
        Point best{1, above};
        double least = 1e9;
        // The nearer a corner the better; along the edges rather than in the middle.
        constexpr int steps = 12;
        for (int i = 0; i <= steps; ++i) {
            for (int j = 0; j <= steps; ++j) {
                const Point place{1 + (right - 1) * i / steps, above + (below - above) * j / steps};
                const int inward = std::min(i, steps - i) + std::min(j, steps - j);
                const sheet::Covered under = taken.under(at + place, {1, 0}, wide, type);
                const double cost = under.edges * 10 + under.within + inward * 0.8 + j * 0.01;
                best = cost < least ? place : best;
                least = std::min(least, cost);
            }
        }
        pen.heading(name, at + best + Point{0.5, -0.6}, type);
    }
};

}  // namespace

void number_tiles(std::vector<Page>& tiles, std::size_t before) {
    const std::string all = std::to_string(before + tiles.size());
    for (Page& page : tiles) {
        Pen pen("page");
        pen.words(std::to_string(++before) + " / " + all,
                  {page.width - kClear - kOverlap / 2, page.height - kClear - 1.2},
                  2.6,
                  Align::end);
        std::move(pen).put_on(page);
    }
}

std::vector<Page> lay_out_tiles(const WorkshopSheets& sheets,
                                const Paper& paper,
                                sheet::Ruler& ruler) {
    return Tiler(sheets, paper, ruler).all();
}

}  // namespace platewright
