// SPDX-License-Identifier: MIT
// Samples of lines, and the bar of a scale.
#include "layout/piece_key.h"

#include <algorithm>
#include <string>
#include <utility>

#include "layout/style.h"
#include "words/workshop_messages.h"

namespace platewright {
namespace {

using sheet::LineKind;
using sheet::Pen;

constexpr double kType = 2.5;
constexpr double kRow = 4.8;
/// The sample of a line, and how far its words stand from it and from the next.
constexpr double kSample = 11;
/// A buttonhole in the middle of it.
constexpr double kHole = 3;
constexpr double kWordsFrom = 1.4;
constexpr double kApart = 5;
/// Words stand on a baseline so far below the middle of their sample.
constexpr double kBelowMiddle = 0.85;

enum class Sign {
    cut,
    finished,
    seam,
    fold,
    slit,
    inlay,
    grain,
    notch,
    hind_notch,
    letter,
    button,
    hole,
    eyelet
};

struct Entry {
    Sign sign;
    const Message& words;
};

bool any(const std::vector<PatternPiece>& pieces, bool (*holds)(const PatternPiece&)) {
    return std::ranges::any_of(pieces, holds);
}

std::vector<Entry> entries_of(const std::vector<PatternPiece>& pieces) {
    std::vector<Entry> all;
    const bool seams = any(pieces, [](const PatternPiece& p) { return p.cut != p.outline; });
    if (seams) {
        all.push_back({Sign::cut, messages::kLineCut});
        all.push_back({Sign::seam, messages::kLineSeam});
    } else {
        all.push_back({Sign::finished, messages::kLineFinished});
    }
    if (any(pieces, [](const PatternPiece& p) { return !p.inlay_line.empty(); })) {
        all.push_back({Sign::inlay, messages::kLineInlay});
    }
    if (any(pieces, [](const PatternPiece& p) { return !p.lines.empty(); })) {
        all.push_back({Sign::fold, messages::kLineFold});
    }
    if (any(pieces, [](const PatternPiece& p) { return !p.slits.empty(); })) {
        all.push_back({Sign::slit, messages::kLineSlit});
    }
    all.push_back({Sign::grain, messages::kLineGrain});
    if (any(pieces, [](const PatternPiece& p) { return !p.notches.empty(); })) {
        all.push_back({Sign::notch, messages::kLineNotch});
    }
    const auto hind = [](const PatternPiece& p) {
        return std::ranges::any_of(p.notches, [](const Notch& notch) { return notch.hind; });
    };
    if (any(pieces, hind)) {
        all.push_back({Sign::hind_notch, messages::kLineHindNotch});
    }
    const auto lettered = [](const PatternPiece& p) {
        return std::ranges::any_of(p.seams, [](const Seam& seam) { return !seam.letter.empty(); });
    };
    if (any(pieces, lettered)) {
        all.push_back({Sign::letter, messages::kLineLetter});
    }
    if (any(pieces, [](const PatternPiece& p) { return !p.buttons.empty(); })) {
        all.push_back({Sign::button, messages::kLineButton});
    }
    if (any(pieces, [](const PatternPiece& p) { return !p.holes.empty(); })) {
        all.push_back({Sign::hole, messages::kLineHole});
    }
    if (any(pieces, [](const PatternPiece& p) { return !p.eyelets.empty(); })) {
        all.push_back({Sign::eyelet, messages::kLineEyelet});
    }
    return all;
}

void draw_sign(Sign sign, Point from, Pen& pen) {
    constexpr double thin = 0.13;
    constexpr double arm = 1;
    const Point to = from + Point{kSample, 0};
    const Point middle = (from + to) * 0.5;
    switch (sign) {
        case Sign::cut:
        case Sign::finished:
            return pen.line(from, to, 0.25);
        case Sign::seam:
            return pen.line(from, to, thin, LineKind::dashed);
        case Sign::fold:
            return pen.line(from, to, thin, LineKind::chain);
        case Sign::slit:
            pen.line(from, to, thin);
            pen.line(from - Point{0, arm}, from + Point{0, arm}, thin);
            return pen.line(to - Point{0, arm}, to + Point{0, arm}, thin);
        case Sign::inlay:
            return pen.line(from, to, thin, LineKind::dotted);
        case Sign::grain:
            return pen.arrows(from, to);
        case Sign::notch:
            pen.line(from, to, thin, LineKind::dashed);
            return pen.line(middle, middle + Point{0, 2 * arm}, thin);
        case Sign::hind_notch: {
            const Point aside{0.35, 0};
            pen.line(from, to, thin, LineKind::dashed);
            pen.line(middle - aside, middle - aside + Point{0, 2 * arm}, thin);
            return pen.line(middle + aside, middle + aside + Point{0, 2 * arm}, thin);
        }
        case Sign::letter:
            return pen.line(from, to, thin, LineKind::dashed);
        case Sign::button:
            pen.line(middle - Point{arm, 0}, middle + Point{arm, 0}, thin);
            return pen.line(middle - Point{0, arm}, middle + Point{0, arm}, thin);
        case Sign::eyelet:
            return pen.circle(middle, arm / 2, thin);
        case Sign::hole: {
            const Point half{kHole / 2, 0};
            const Point up{0, 0.4};
            pen.line(middle - half, middle + half, thin);
            pen.line(middle - half - up, middle - half + up, thin);
            return pen.line(middle + half - up, middle + half + up, thin);
        }
    }
}

}  // namespace

double draw_line_key(const std::vector<PatternPiece>& pieces,
                     Language language,
                     Point at,
                     double width,
                     sheet::Ruler& ruler,
                     Pen& pen) {
    Point next = at;
    for (const Entry& entry : entries_of(pieces)) {
        const std::string words = say(language, entry.words);
        const double wide = kSample + kWordsFrom + ruler.width(words, sheet::roman(kType));
        if (next.x > at.x && next.x + wide > at.x + width) {
            next = {at.x, next.y + kRow};
        }
        const Point middle = next + Point{0, kRow / 2};
        draw_sign(entry.sign, middle, pen);
        pen.words(words, middle + Point{kSample + kWordsFrom, kBelowMiddle}, kType);
        next.x += wide + kApart;
    }
    return next.y + kRow - at.y;
}

sheet::Slab scale_bar(Language language, double scale, sheet::Ruler& ruler) {
    constexpr int squares = 5;
    constexpr double high = 1.2;
    constexpr double top = 4;
    constexpr double lead = 1;
    const double step = kGridSquare / scale;
    sheet::Slab slab;
    slab.height = 8;
    Pen pen("scale");
    for (int i = 0; i <= squares; ++i) {
        const double x = lead + i * step;
        const std::string words = number_words(language, i * kGridSquare, 0);
        pen.words(i == squares ? say(language, messages::kMillimetres, {words}) : words,
                  {x, top - 1.1},
                  kType,
                  i == squares ? Align::start : Align::middle);
        const Chain box{{x, top}, {x + step, top}, {x + step, top + high}, {x, top + high}};
        if (i < squares && i % 2 == 0) {
            pen.fill(box, sheet::kInk);
        } else if (i < squares) {
            pen.chain(box, /*closed=*/true, 0.13, LineKind::continuous);
        }
    }
    const double words_at =
        lead + squares * step + ruler.width("000 mm", sheet::roman(kType)) + kApart;
    pen.grid({words_at, top - 2.4, words_at + 6, top - 2.4 + 4}, 2);
    pen.words(say(language, messages::kSquaresOf, {number_words(language, kGridSquare, 0)}),
              {words_at + 6 + kWordsFrom, top + high},
              kType);
    std::move(pen).put_on(slab.pictures);
    return slab;
}

}  // namespace platewright
