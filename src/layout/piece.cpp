// SPDX-License-Identifier: MIT
// Pattern pieces drawn at any size.
#include "layout/piece.h"

#include <algorithm>
#include <cmath>
#include <numbers>

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

/// How thin the strip is that an arrow takes, and how far it keeps from other marks, mm.
constexpr double kArrowRoom = 2;
constexpr double kBesideArrow = 6;

void draw_grain(const PatternPiece& piece, Point at, double factor, Pen& pen) {
    const Rect strip = grain_of(piece, factor);
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

/// Type of letters and words: on paper at least, and at full size; letters stand so far from their
/// seam, mm on the cloth at full size.
constexpr double kLeastLetter = 2.3;
constexpr double kLetter = 5;
constexpr double kLeastWord = 1.9;
constexpr double kWord = 3.4;
constexpr double kLetterWithin = 7;

/// That share of the way along an edge, and square to it into the piece.
struct Spot {
    Point at;
    Point inward;
};

Spot spot_along(const Chain& line, double share, const Chain& outline) {
    double left = length_of(line) * share;
    for (std::size_t i = 1; i < line.size(); ++i) {
        const Point step = line[i] - line[i - 1];
        if (left <= length(step) || i + 1 == line.size()) {
            const Point at = line[i - 1] + unit(step) * left;
            const Point across = right_of(unit(step));
            const Point middle = (line[i] + line[i - 1]) * 0.5;
            return {at, inside({outline}, middle + across * 0.2) ? across : across * -1};
        }
        left -= length(step);
    }
    return {line.front(), {0, 0}};
}

void add_line(Point from, Point to, double clear, std::vector<Rect>& marks) {
    const int steps = static_cast<int>(length(to - from) / clear) + 1;
    for (int i = 0; i <= steps; ++i) {
        const Point at = from + (to - from) * (static_cast<double>(i) / steps);
        marks.push_back(Rect{at.x, at.y, at.x, at.y}.grown(clear));
    }
}

/// Folds and slits with so much round them, mm on the cloth.
void add_lines(const PatternPiece& piece, double clear, std::vector<Rect>& marks) {
    for (const std::vector<Chain>* lines : {&piece.lines, &piece.slits}) {
        for (const Chain& line : *lines) {
            for (std::size_t i = 1; i < line.size(); ++i) {
                add_line(line[i - 1], line[i], clear, marks);
            }
        }
    }
}

/// What the words beside lines take at that factor, mm on the cloth.
std::vector<Rect> room_of_words(const PatternPiece& piece, double factor) {
    const double type = std::max(kLeastWord / factor, kWord);
    std::vector<Rect> room;
    for (const PieceWord& word : piece.words) {
        const double radians = word.degrees * std::numbers::pi / 180;
        const Point along{std::cos(radians), std::sin(radians)};
        const double half = static_cast<double>(word.word.size()) * type * 0.21;
        for (double s = -half; s <= half; s += type) {
            // They may stand on either side of the line.
            const Point at = word.at + along * s;
            room.push_back(Rect{at.x, at.y, at.x, at.y}.grown(type));
        }
    }
    return room;
}

/// How far from its seam a letter stands, and how large it is, mm on the cloth.
double letter_within(double factor) {
    return std::max(kLeastLetter * 0.8 / factor, kLetterWithin);
}

double letter_type(double factor) {
    return std::max(kLeastLetter / factor, kLetter);
}

/// What a letter takes at that place.
Rect room_of_letter(const Spot& spot, double factor) {
    const Point at = spot.at + spot.inward * letter_within(factor);
    return Rect{at.x, at.y, at.x, at.y}.grown(letter_type(factor) / 2);
}

/// What words, folds and slits take, where no letter is to stand.
std::vector<Rect> not_for_letters(const PatternPiece& piece, double factor) {
    std::vector<Rect> taken = room_of_words(piece, factor);
    add_lines(piece, 1 / factor, taken);
    return taken;
}

/// Beside the middle of the seam, clear of its notches and of what is `taken`.
Spot spot_of_letter(const PatternPiece& piece,
                    const Seam& seam,
                    double factor,
                    const std::vector<Rect>& taken) {
    constexpr double clear = 22;
    for (const double share : {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8}) {
        const Spot spot = spot_along(seam.line, share, piece.outline);
        const Rect room = room_of_letter(spot, factor);
        const bool free =
            std::ranges::none_of(
                piece.notches,
                [&](const Notch& notch) { return length(notch.at - spot.at) < clear; }) &&
            std::ranges::none_of(taken, [&](const Rect& mark) { return mark.meets(room); });
        if (free) {
            return spot;
        }
    }
    return spot_along(seam.line, 0.5, piece.outline);
}

void draw_letters(const PatternPiece& piece, Point at, double factor, Pen& pen) {
    const double type = letter_type(factor) * factor;
    const std::vector<Rect> taken = not_for_letters(piece, factor);
    for (const Seam& seam : piece.seams) {
        if (!seam.letter.empty() && seam.line.size() > 1) {
            const Spot spot = spot_of_letter(piece, seam, factor, taken);
            const Point middle = at + (spot.at + spot.inward * letter_within(factor)) * factor;
            pen.words(seam.letter, middle + Point{0, type * 0.32}, type, Align::middle);
        }
    }
}

/// On how much that is drawn of the piece words would stand whose middle is there.
std::size_t in_the_way(const PatternPiece& piece, Point middle, Point along, Point half) {
    const Point up{along.y, -along.x};
    std::size_t found = 0;
    const auto look_at = [&](Point from, Point to) {
        constexpr int parts = 12;
        for (int i = 0; i <= parts; ++i) {
            const Point at = from + (to - from) * (static_cast<double>(i) / parts) - middle;
            found += std::abs(dot(at, along)) < half.x && std::abs(dot(at, up)) < half.y ? 1U : 0U;
        }
    };
    for (const std::vector<Chain>* lines : {&piece.lines, &piece.slits}) {
        for (const Chain& line : *lines) {
            for (std::size_t i = 1; i < line.size(); ++i) {
                look_at(line[i - 1], line[i]);
            }
        }
    }
    for (const Chain* edge : {&piece.cut, &piece.outline}) {
        for (std::size_t i = 0; i < edge->size(); ++i) {
            look_at((*edge)[i], (*edge)[(i + 1) % edge->size()]);
        }
    }
    for (const auto& [from, to] : piece.holes) {
        look_at(from, to);
    }
    for (const Point button : piece.buttons) {
        look_at(button - up * half.y, button + up * half.y);
    }
    return found;
}

/// A little above the line that they tell of, or below it where less lies in the way.
void draw_words(const PatternPiece& piece, Point at, double factor, const PiecePens& pens) {
    constexpr double above = 0.7;
    for (const PieceWord& word : piece.words) {
        const double radians = word.degrees * std::numbers::pi / 180;
        const Point up{std::sin(radians), -std::cos(radians)};
        const double type = std::max(kLeastWord, kWord * factor);
        const Point along{std::cos(radians), std::sin(radians)};
        const Point half{static_cast<double>(word.word.size()) * type * 0.21 / factor,
                         type * 0.4 / factor};
        const Point aside = up * ((above + type * 0.4) / factor);
        const bool below = in_the_way(piece, word.at - aside, along, half) <
                           in_the_way(piece, word.at + aside, along, half);
        pens.words->words(term(pens.language, word.word),
                          at + word.at * factor + up * (below ? -above - type * 0.66 : above),
                          type,
                          Align::middle,
                          word.degrees,
                          true);
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
Rect grain_of(const PatternPiece& piece, double factor) {
    const Point middle = middle_of(piece.outline);
    const double high = reach_at(piece.outline, middle).height();
    const double wide = shapes::box(piece.outline).width();
    const double aside = std::min({40.0, high * 0.08, wide * 0.25});
    std::vector<Rect> strips;
    for (const double steps : {-1, 1, -2, 2, 0, -3, 3, -5, 5, -7, 7}) {
        const double x = middle.x + steps * aside;
        const Rect reach = reach_at(piece.outline, {x, middle.y});
        if (reach.top > -1e5 && reach.bottom < 1e5) {
            const double half = std::min(reach.height() * 0.28, 90.0);
            const double y = reach.centre().y;
            strips.push_back({x - kArrowRoom / 2, y - half, x + kArrowRoom / 2, y + half});
        }
    }
    for (const auto& marks :
         {marks_within(piece, kBesideArrow, factor), room_of_words(piece, factor)}) {
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
    for (const Chain& line : piece.lines) {
        pens.fold->chain(placed(line, at, factor), false, thin, LineKind::chain);
    }
    for (const Chain& slit : piece.slits) {
        draw_slit(placed(slit, at, factor), kSlitBar, thin, *pens.pocket);
    }
    for (const auto& [from, to] : piece.holes) {
        draw_slit(placed({from, to}, at, factor), kHoleBar * std::sqrt(factor), thin, *pens.hole);
    }
    pens.inlay->chain(placed(piece.inlay_line, at, factor), false, thin, LineKind::dotted);
    draw_grain(piece, at, factor, *pens.grain);
    draw_points(piece, at, factor, pens);
    draw_letters(piece, at, factor, *pens.letters);
    if (pens.words != nullptr) {
        draw_words(piece, at, factor, pens);
    }
}

void draw_laying(const Laying& laying,
                 const std::vector<PatternPiece>& pieces,
                 Point at,
                 double factor,
                 Pen& pen) {
    constexpr double type = 2.5;
    const Point size{laying.width * factor, laying.length * factor};
    pen.chain(
        {at, at + Point{size.x, 0}, at + size, at + Point{0, size.y}}, true, 0.13, LineKind::chain);
    for (const LaidPiece& each : laying.pieces) {
        pen.chain(placed(each.outline, at, factor), true, sheet::kNarrow, LineKind::continuous);
        const Point middle = middle_of(each.outline);
        pen.words(std::to_string(pieces[each.piece].number_in_list),
                  at + middle * factor + Point{0, type * 0.3},
                  type,
                  Align::middle);
    }
}

namespace {

/// Letters of seams and words beside lines.
void add_marks_of_words(const PatternPiece& piece,
                        double clear,
                        double factor,
                        std::vector<Rect>& marks) {
    const std::vector<Rect> taken = not_for_letters(piece, factor);
    for (const Seam& seam : piece.seams) {
        if (!seam.letter.empty() && seam.line.size() > 1) {
            const Spot spot = spot_of_letter(piece, seam, factor, taken);
            marks.push_back(room_of_letter(spot, factor).grown(clear));
        }
    }
    for (const Rect& word : room_of_words(piece, factor)) {
        marks.push_back(word.grown(clear));
    }
}

}  // namespace

std::vector<Rect> marks_within(const PatternPiece& piece, double clear, double factor) {
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
    add_marks_of_words(piece, clear, factor, marks);
    return marks;
}

}  // namespace platewright
