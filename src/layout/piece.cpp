// SPDX-License-Identifier: MIT
// Pattern pieces drawn at any size.
#include "layout/piece.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "layout/lettering.h"
#include "layout/room_in.h"
#include "layout/style.h"
#include "pattern/shapes.h"
#include "words/terms.h"

namespace platewright {

using sheet::LineKind;
using sheet::Pen;

namespace {

/// How far the piece reaches up and down at `x`, about the height `y`.
Rect reach_at(const Chain& outline, Point from) {
    Rect reach{from.x, -1e6, from.x, 1e6};
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point a = outline[i];
        const Point b = outline[(i + 1) % outline.size()];
        if ((a.x <= from.x) == (b.x <= from.x)) {
            continue;
        }
        const double y = a.y + (b.y - a.y) * (from.x - a.x) / (b.x - a.x);
        if (y < from.y) {
            reach.top = std::max(reach.top, y);
        } else {
            reach.bottom = std::min(reach.bottom, y);
        }
    }
    return reach;
}

/// Whether the strip lies within the outline from end to end, with room for the head of an arrow.
bool holds(const Chain& outline, const Rect& strip) {
    constexpr double beside = 4;
    constexpr int looks = 6;
    for (int i = 0; i <= looks; ++i) {
        const double y = strip.top + strip.height() * i / looks;
        if (!inside({outline}, {strip.left - beside, y}) ||
            !inside({outline}, {strip.right + beside, y})) {
            return false;
        }
    }
    return true;
}

/// How thin the strip is that an arrow takes, and how far it keeps from other marks, mm.
constexpr double kArrowRoom = 2;
constexpr double kBesideArrow = 6;

void draw_grain(const Lettering& on, Point at, double factor, Pen& pen) {
    const Rect strip = grain_of(on);
    if (strip.height() * factor > 5) {
        const double x = strip.centre().x;
        pen.arrows(at + Point{x, strip.bottom} * factor, at + Point{x, strip.top} * factor);
    }
}

Chain placed(const Chain& chain, Point at, double factor) {
    Chain moved;
    for (const Point p : chain) {
        moved.push_back(at + p * factor);
    }
    return moved;
}

/// A cut within the piece: to its very ends, which are marked across by that much to both sides.
void draw_slit(const Chain& slit, double arm, double width, Pen& pen) {
    pen.chain(slit, false, width, LineKind::continuous);
    const auto bar = [&](Point end, Point along) {
        const Point across = right_of(unit(along)) * arm;
        pen.line(end - across, end + across, width);
    };
    bar(slit.front(), slit[1] - slit.front());
    bar(slit.back(), slit.back() - slit[slit.size() - 2]);
}

/// Half the bar across the end of a slit on paper, and of a buttonhole at full size, mm.
constexpr double kSlitBar = 1;
constexpr double kHoleBar = 1.2;
/// An eyelet at full size, and at least, mm across its half.
constexpr double kEyelet = 2;
constexpr double kLeastEyelet = 0.4;

double thin_line(double factor) {
    return factor < 0.5 ? 0.13 : sheet::kNarrow;
}

/// From the seam to the cut; on a small drawing too it is to be seen.
void draw_notch(const Notch& notch, Point at, double factor, Pen& pen) {
    constexpr double least = 1.6;
    constexpr double apart = 4;
    constexpr double least_apart = 0.7;
    const Point way = unit(notch.out - notch.at);
    const Point to = at + notch.out * factor;
    const Point from = to - way * std::max(least, length(notch.out - notch.at) * factor);
    const Point aside = right_of(way) * (std::max(apart * factor, least_apart) / 2);
    if (!notch.hind) {
        return pen.line(from, to, thin_line(factor));
    }
    pen.line(from - aside, to - aside, thin_line(factor));
    pen.line(from + aside, to + aside, thin_line(factor));
}

/// Notches, eyelets and buttons.
void draw_points(const PatternPiece& piece, Point at, double factor, const PiecePens& pens) {
    const double thin = thin_line(factor);
    for (const Notch& notch : piece.notches) {
        draw_notch(notch, at, factor, *pens.notch);
    }
    for (const Point eyelet : piece.eyelets) {
        pens.eyelet->circle(at + eyelet * factor, std::max(kLeastEyelet, kEyelet * factor), thin);
    }
    for (const Point button : piece.buttons) {
        const Point middle = at + button * factor;
        const double arm = std::max(0.5, 3 * factor);
        pens.button->line(middle - Point{arm, 0}, middle + Point{arm, 0}, thin);
        pens.button->line(middle - Point{0, arm}, middle + Point{0, arm}, thin);
    }
}

}  // namespace

Point middle_of(const Chain& outline) {
    Point sum;
    double twice = 0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point a = outline[i];
        const Point b = outline[(i + 1) % outline.size()];
        sum = sum + (a + b) * (cross(a, b) / 3);
        twice += cross(a, b);
    }
    return twice == 0 ? Point{} : sum * (1 / twice);
}

/// Upright beside the middle, within the piece and clear of its marks where that can be; else at
/// least of its words.
Rect grain_of(const Lettering& on) {
    const PatternPiece& piece = on.piece();
    const Point middle = middle_of(piece.outline);
    const double high = reach_at(piece.outline, middle).height();
    const double wide = shapes::box(piece.outline).width();
    const double aside = std::min({40.0, high * 0.08, wide * 0.25});
    std::vector<Rect> strips;
    for (const double share : {1.0, 0.6}) {
        for (const double steps :
             {-1.0, 1.0, -2.0, 2.0, 0.0, -0.5, 0.5, -3.0, 3.0, -5.0, 5.0, -7.0, 7.0}) {
            const Point from{middle.x + steps * aside, middle.y};
            const Rect reach = reach_at(piece.outline, from);
            const double half = std::min(reach.height() * 0.28, 90.0) * share;
            const double y = reach.centre().y;
            const Rect strip{from.x - kArrowRoom / 2, y - half, from.x + kArrowRoom / 2, y + half};
            if (inside({piece.outline}, from) && holds(piece.outline, strip)) {
                strips.push_back(strip);
            }
        }
    }
    for (const auto& marks : {marks_within(on, kBesideArrow), on.room_of_words()}) {
        for (const Rect& strip : strips) {
            if (std::ranges::none_of(marks, [&](const Rect& mark) { return strip.meets(mark); })) {
                return strip;
            }
        }
    }
    return strips.empty() ? Rect{} : strips.front();
}

PiecePens::PiecePens(Pen& all, Language spoken)
    : cut(&all),
      sew(&all),
      fold(&all),
      pocket(&all),
      hole(&all),
      eyelet(&all),
      button(&all),
      notch(&all),
      grain(&all),
      inlay(&all),
      letters(&all),
      words(&all),
      language(spoken) {}

void draw_piece(const PatternPiece& piece, Point at, double factor, const PiecePens& pens) {
    const double thin = thin_line(factor);
    const double wide = factor < 0.5 ? 0.25 : sheet::kWide;
    // Outlines that were joined have steps too short for any knife.
    const Chain cut = without_steps(placed(piece.cut, at, factor), true);
    pens.cut->chain(cut, true, wide, LineKind::continuous);
    if (piece.cut != piece.outline) {
        const Chain seam = without_steps(placed(piece.outline, at, factor), true);
        pens.sew->chain(seam, true, thin, LineKind::dashed);
    }
    const Lettering lettering(piece, factor, pens.language);
    const std::vector<Chain> lines =
        pens.words != nullptr ? lettering.lines_round_words() : piece.lines;
    for (const Chain& line : lines) {
        pens.fold->chain(placed(line, at, factor), false, thin, LineKind::chain);
    }
    for (const Chain& slit : piece.slits) {
        draw_slit(placed(slit, at, factor), kSlitBar, thin, *pens.pocket);
    }
    for (const auto& [from, to] : piece.holes) {
        draw_slit(placed({from, to}, at, factor), kHoleBar * std::sqrt(factor), thin, *pens.hole);
    }
    pens.inlay->chain(placed(piece.inlay_line, at, factor), false, thin, LineKind::dotted);
    draw_grain(lettering, at, factor, *pens.grain);
    draw_points(piece, at, factor, pens);
    lettering.draw_letters(at, *pens.letters);
    if (pens.words != nullptr) {
        lettering.draw_words(at, *pens.words);
    }
}

namespace {

/// Within the outline, smaller where it is narrow: a number across a line could be of either side.
void draw_number(int number, const Chain& outline, Pen& pen) {
    const std::string words = std::to_string(number);
    const Point middle = middle_of(outline);
    const auto put = [&](Point at, double type) {
        pen.words(words, at + Point{0, type * 0.31}, type, Align::middle);
    };
    for (const double type : {2.5, 2.1, 1.8}) {
        for (const double free : {0.5, 0.25}) {
            const Point half{static_cast<double>(words.size()) * type * 0.24, type * 0.32};
            if (const auto at = sheet::word_place(outline, middle, half, free, {})) {
                return put(*at, type);
            }
        }
    }
    put(middle, 1.8);
}

}  // namespace

void draw_laying(const Laying& laying,
                 const std::vector<PatternPiece>& pieces,
                 Point at,
                 double factor,
                 Pen& pen) {
    const Point size{laying.width * factor, laying.length * factor};
    pen.chain(
        {at, at + Point{size.x, 0}, at + size, at + Point{0, size.y}}, true, 0.13, LineKind::chain);
    for (const LaidPiece& each : laying.pieces) {
        pen.chain(placed(each.outline, at, factor), true, sheet::kNarrow, LineKind::continuous);
        draw_number(pieces[each.piece].number_in_list, placed(each.outline, at, factor), pen);
    }
}

std::vector<Rect> marks_within(const Lettering& on, double clear) {
    const PatternPiece& piece = on.piece();
    constexpr double arm = 3;
    std::vector<Rect> marks;
    for (const Point eyelet : piece.eyelets) {
        marks.push_back(Rect{eyelet.x, eyelet.y, eyelet.x, eyelet.y}.grown(arm + clear));
    }
    for (const Point button : piece.buttons) {
        marks.push_back(Rect{button.x, button.y, button.x, button.y}.grown(arm + clear));
    }
    add_lines(piece, clear, marks);
    for (const Notch& notch : piece.notches) {
        add_line(notch.at, notch.out, clear, marks);
    }
    for (const auto& [from, to] : piece.holes) {
        add_line(from, to, clear, marks);
    }
    for (const std::vector<Rect>& room : {on.room_of_letters(), on.room_of_words()}) {
        for (const Rect& word : room) {
            marks.push_back(word.grown(clear));
        }
    }
    return marks;
}

}  // namespace platewright
