// SPDX-License-Identifier: MIT
// Names of pieces on tiles.
#include "layout/tile_names.h"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "layout/piece.h"
#include "layout/piece_words.h"
#include "layout/room_in.h"
#include "layout/style.h"
#include "pattern/shapes.h"

namespace platewright {
namespace {

using sheet::Pen;

class Naming {
  public:
    Naming(const Laid& laid, const TileWindow& tile, sheet::Ruler& ruler, Pen& pen)
        : laid_(laid),
          piece_(*laid.piece),
          tile_(tile),
          inner_(tile.seen.grown(-kInset)),
          words_(cutting_words(piece_, tile.language)),
          ruler_(ruler),
          pen_(pen) {
        const Point from = Point{inner_.left, inner_.top} - laid.at;
        const Point to = Point{inner_.right, inner_.bottom} - laid.at;
        seen_ = shapes::common({piece_.outline}, {from, {to.x, from.y}, to, {from.x, to.y}});
    }

    void write() {
        constexpr double enough = 1200;
        if (seen_.size() < 3 || shapes::area(seen_) < enough) {
            return;
        }
        for (double size = std::clamp(laid_.box.width() / 14, kLeastName, 5.0);;
             size = std::max(kLeastName, size - 0.5)) {
            if (const auto at = room_for(words_, seen_, size)) {
                return put(words_, *at, size);
            }
            if (size <= kLeastName) {
                break;
            }
        }
        write_briefly();
    }

  private:
    /// From the edges of the tile, mm.
    static constexpr double kInset = 8;

    const Laid& laid_;
    const PatternPiece& piece_;
    const TileWindow& tile_;
    Rect inner_;
    std::vector<std::string> words_;
    sheet::Ruler& ruler_;
    Pen& pen_;
    Chain seen_;

    /// Where its words have no room: its number, if they have on another tile; else beneath it.
    void write_briefly() {
        if (!room_for(words_, piece_.outline, kLeastName)) {
            return write_beneath();
        }
        const std::vector<std::string> number{std::to_string(piece_.number_in_list)};
        if (const auto at = room_for(number, seen_, kLeastName)) {
            put(number, *at, kLeastName);
        }
    }

    [[nodiscard]] std::optional<Point> room_for(const std::vector<std::string>& words,
                                                const Chain& within,
                                                double size) {
        double width = ruler_.width(words.front(), sheet::roman(size));
        for (const std::string& line : words) {
            width = std::max(width, ruler_.width(line, sheet::italic(size)));
        }
        const double height = size * 1.25 * (static_cast<double>(words.size()) + 0.3);
        const Lettering lettering(piece_, 1, tile_.language);
        return sheet::room_in(
            within, width, height, grain_of(lettering), marks_within(lettering, 2));
    }

    void put(const std::vector<std::string>& words, Point at, double size) {
        at = at + laid_.at + tile_.origin;
        for (const std::string& line : words) {
            at.y += size * 1.25;
            pen_.words(line, at, size, Align::middle, 0, &line != &words.front());
        }
    }

    /// Of a piece too narrow for words: in one line between it and the next, on this tile.
    void write_beneath() {
        std::string line;
        for (const std::string& each : words_) {
            line += (line.empty() ? "" : "; ") + each;
        }
        const double half = ruler_.width(line, sheet::italic(kLeastName)) / 2;
        const double least = inner_.left + half;
        const double x = std::max(least, std::min(laid_.box.centre().x, inner_.right - half));
        pen_.words(line,
                   tile_.origin + Point{x, laid_.box.bottom + 1.6 * kLeastName},
                   kLeastName,
                   Align::middle,
                   0,
                   true);
    }
};

/// Of a number alone, as near the middle as it can stand.
std::optional<Point> place_on_map(const Chain& outline,
                                  double wide,
                                  const Rect& arrow,
                                  std::vector<Rect> marks) {
    const Point half{wide / 2, kLeastName * 0.34};
    const Point middle = shapes::box(outline).centre();
    marks.push_back(arrow.grown(-0.3));
    for (const double free : {0.5, 0.2}) {
        if (const auto at = sheet::word_place(outline, middle, half, free, marks)) {
            return at;
        }
    }
    return std::nullopt;
}

/// Beside a piece that is too thin for its number, where nothing else lies.
Point beside_on_map(const Chain& outline, Point from, double wide, const sheet::EdgeMap& taken) {
    const Rect box = shapes::box(outline);
    const Point middle = box.centre();
    const double aside = wide / 2 + 0.8;
    const double above = kLeastName * 0.34 + 0.8;
    Point best = from + middle;
    double least = 1e9;
    for (const Point place : {Point{box.right + aside, middle.y},
                              {box.left - aside, middle.y},
                              {middle.x, box.top - above},
                              {middle.x, box.bottom + above},
                              {box.right - aside, box.bottom + above},
                              {box.left + aside, box.bottom + above}}) {
        const Point foot = from + place + Point{-aside, above};
        const sheet::Covered under = taken.under(foot, {1, 0}, 2 * aside, 2 * above);
        const double cost = under.edges * 10 + under.within;
        best = cost < least ? from + place : best;
        least = std::min(least, cost);
    }
    return best;
}

}  // namespace

Point number_on_map(const Chain& outline,
                    Point from,
                    double wide,
                    const Rect& arrow,
                    const std::vector<std::vector<Rect>>& marks,
                    const sheet::EdgeMap& taken) {
    for (const std::vector<Rect>& clear : marks) {
        if (const auto within = place_on_map(outline, wide, arrow, clear)) {
            return from + *within;
        }
    }
    return beside_on_map(outline, from, wide, taken);
}

void name_on_tile(const Laid& laid, const TileWindow& tile, sheet::Ruler& ruler, Pen& pen) {
    Naming(laid, tile, ruler, pen).write();
}

}  // namespace platewright
