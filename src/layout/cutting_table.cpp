// SPDX-License-Identifier: MIT
// The table on which pieces lie side by side, and its page for a cutter.
#include "layout/cutting_table.h"

#include <algorithm>
#include <utility>

#include "layout/piece.h"
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

Document lay_out_cutting(const WorkshopSheets& sheets) {
    constexpr double edge = 10;
    double widest = 0;
    for (const PatternPiece& piece : sheets.full_size) {
        widest = std::max(widest, shapes::box(piece.cut).width());
    }
    const CuttingTable table = lay_on_table(sheets.full_size, std::max(900.0, widest), {});
    Page page;
    page.width = table.width + 2 * edge;
    page.height = table.height + 2 * edge;
    page.paper = {0xff, 0xff, 0xff};
    // What a knife follows, what is sewn, what is only marked, and words lie in layers of their
    // own.
    sheet::Pen cut("cut");
    sheet::Pen sew("sew");
    sheet::Pen mark("mark");
    sheet::Pen words("words");
    for (const Laid& laid : table.pieces) {
        const Point at = laid.at + Point{edge, edge};
        draw_outlines(*laid.piece, at, 1, cut, sew);
        draw_inside(*laid.piece, at, 1, mark);
        Point words_at = middle_of(laid.piece->outline) + at;
        for (const std::string& line : cutting_words(*laid.piece, sheets.language)) {
            words.words(line, words_at, 4, Align::middle);
            words_at.y += 5;
        }
    }
    for (sheet::Pen* pen : {&cut, &sew, &mark, &words}) {
        std::move(*pen).put_on(page);
    }
    Document document;
    document.title = sheet::on_one_line(sheets.title);
    document.author = sheet::on_one_line(sheets.drawn_by);
    document.description = say(sheets.language, messages::kTailorsSheets, {document.title});
    document.pages.push_back(std::move(page));
    return document;
}

}  // namespace platewright
