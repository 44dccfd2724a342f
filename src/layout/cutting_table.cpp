// SPDX-License-Identifier: MIT
// The table on which pieces lie side by side, and its page for a cutter.
#include "layout/cutting_table.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <utility>

#include "layout/piece.h"
#include "layout/piece_words.h"
#include "layout/workshop.h"
#include "pattern/laying.h"
#include "pattern/shapes.h"
#include "words/workshop_messages.h"

namespace platewright {

CuttingTable lay_on_table(const std::vector<PatternPiece>& pieces,
                          double least_width,
                          Point corner) {
    // Between pieces.
    constexpr double apart = 12;
    CuttingTable table;
    LayingRules rules;
    rules.width = least_width;
    rules.between = apart;
    rules.as_cut = false;
    rules.corner = corner;
    const Laying laying = laid_out(pieces, rules);
    table.width = least_width;
    table.height = laying.length;
    for (const LaidPiece& each : laying.pieces) {
        const Rect box = shapes::box(each.outline);
        table.pieces.push_back({&pieces[each.piece], each.at, box});
        table.width = std::max(table.width, box.right);
    }
    return table;
}

namespace {

/// Round everything, mm.
constexpr double kEdge = 10;
/// By its sides the program of a cutter is checked, which knows of no unit, mm; and what is kept
/// free for it with its words.
constexpr double kCheckSquare = 100;
constexpr double kCheckRoom = kCheckSquare + 12;

/// What a knife follows, what is sewn, each kind of mark, and words lie in layers of their own.
class CuttingLayers {
  public:
    explicit CuttingLayers(Language language) : pens_(pens_of_[0], language) {
        sheet::Pen** const places[] = {&pens_.cut,
                                       &pens_.sew,
                                       &pens_.fold,
                                       &pens_.pocket,
                                       &pens_.hole,
                                       &pens_.eyelet,
                                       &pens_.button,
                                       &pens_.notch,
                                       &pens_.grain,
                                       &pens_.inlay,
                                       &pens_.letters};
        for (std::size_t i = 0; i < std::size(places); ++i) {
            *places[i] = &pens_of_[i];
        }
        pens_.words = pens_.letters;
    }

    [[nodiscard]] const PiecePens& pens() const { return pens_; }

    [[nodiscard]] sheet::Pen& words() { return words_; }

    void put_on(Page& page) {
        for (sheet::Pen& pen : pens_of_) {
            std::move(pen).put_on(page);
        }
        std::move(words_).put_on(page);
    }

  private:
    std::array<sheet::Pen, 11> pens_of_{sheet::Pen("cut"),
                                        sheet::Pen("sew"),
                                        sheet::Pen("fold"),
                                        sheet::Pen("pocket"),
                                        sheet::Pen("buttonhole"),
                                        sheet::Pen("eyelet"),
                                        sheet::Pen("button"),
                                        sheet::Pen("notch"),
                                        sheet::Pen("grain"),
                                        sheet::Pen("inlay"),
                                        sheet::Pen("letters")};
    sheet::Pen words_{"words"};
    PiecePens pens_;
};

void draw_check_square(Language language, sheet::Pen& pen) {
    const Point at{kEdge, kEdge};
    pen.chain({at,
               at + Point{kCheckSquare, 0},
               at + Point{kCheckSquare, kCheckSquare},
               at + Point{0, kCheckSquare}},
              true,
              sheet::kNarrow,
              sheet::LineKind::continuous);
    const Point middle = at + Point{kCheckSquare, kCheckSquare} * 0.5;
    pen.words("100 mm", middle, 6, Align::middle);
    pen.words(say(language, messages::kCheckSquare), middle + Point{0, 8}, 4, Align::middle);
}

}  // namespace

Document lay_out_cutting(const WorkshopSheets& sheets) {
    double widest = 0;
    for (const PatternPiece& piece : sheets.full_size) {
        widest = std::max(widest, shapes::box(piece.cut).width());
    }
    const CuttingTable table =
        lay_on_table(sheets.full_size, std::max(900.0, widest), {kCheckRoom, kCheckRoom});
    Page page;
    page.width = table.width + 2 * kEdge;
    page.height = std::max(table.height, kCheckRoom) + 2 * kEdge;
    page.paper = {0xff, 0xff, 0xff};
    CuttingLayers layers(sheets.language);
    for (const Laid& laid : table.pieces) {
        const Point at = laid.at + Point{kEdge, kEdge};
        draw_piece(*laid.piece, at, 1, layers.pens());
        Point words_at = middle_of(laid.piece->outline) + at;
        for (const std::string& line : cutting_words(*laid.piece, sheets.language)) {
            layers.words().words(line, words_at, 4, Align::middle);
            words_at.y += 5;
        }
    }
    draw_check_square(sheets.language, layers.words());
    layers.put_on(page);
    Document document;
    document.language = language_code(sheets.language);
    document.title = sheet::on_one_line(sheets.title);
    document.author = sheet::on_one_line(sheets.drawn_by);
    document.description = say(sheets.language, messages::kTailorsSheets, {document.title});
    document.pages.push_back(std::move(page));
    return document;
}

}  // namespace platewright
