// SPDX-License-Identifier: MIT
// Letters stand at the middle of their seam, words at their line, unless something lies there.
#include "layout/lettering.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <tuple>
#include <utility>

#include "base/language.h"
#include "pattern/shapes.h"
#include "words/terms.h"

namespace platewright {
namespace {

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

/// How far from its seam a letter stands, and how large it is, mm on the cloth.
double letter_within(double factor) {
    return std::max(kLeastLetter * 0.8 / factor, kLetterWithin);
}

double letter_type(double factor) {
    return std::max(kLeastLetter / factor, kLetter);
}

Point letter_at(const Spot& spot, double factor) {
    return spot.at + spot.inward * letter_within(factor);
}

/// What a letter takes at that place.
Rect room_of_letter(Point at, double factor) {
    return Rect{at.x, at.y, at.x, at.y}.grown(letter_type(factor) / 2);
}

/// Half the width of a word at type 1.
double half_width(const PieceWord& word, Language language) {
    constexpr double of_a_letter = 0.185;
    return static_cast<double>(term(language, word.word).size()) * of_a_letter;
}

/// From where to where, as shares of it, the line runs through the word with so much round it;
/// empty if the first is not the lesser.
std::pair<double, double> stretch_under(const PlacedWord& word,
                                        Point from,
                                        Point to,
                                        double round) {
    const Point along = word.along();
    const Point up = word.up();
    const auto within = [&](Point p) {
        return Point{dot(p - word.at, along), dot(p - word.at, up)};
    };
    const Point a = within(from);
    const Point step = within(to) - a;
    double first = 0;
    double last = 1;
    for (const auto& [start, way, half] : {std::tuple{a.x, step.x, word.half.x + round},
                                           std::tuple{a.y, step.y, word.half.y + round}}) {
        if (std::abs(way) < 1e-9) {
            last = std::abs(start) > half ? 0 : last;
            continue;
        }
        const double enters = (-half - start) / way;
        const double leaves = (half - start) / way;
        first = std::max(first, std::min(enters, leaves));
        last = std::min(last, std::max(enters, leaves));
    }
    return {first, last};
}

/// How much of the line; one that only crosses the word spoils it too.
double length_under(const PlacedWord& word, Point from, Point to, double round) {
    const auto [first, last] = stretch_under(word, from, to, round);
    return last > first ? (last - first) * length(to - from) + word.half.y : 0;
}

/// What a word costs that is not wholly on its piece: more than any lines in its way.
constexpr double kOutside = 1e5;

bool holds(const Chain& outline, const PlacedWord& word) {
    for (const double x : {-1.0, -0.5, 0.0, 0.5, 1.0}) {
        for (const double y : {-1.0, 1.0}) {
            const Point at =
                word.at + word.along() * (word.half.x * x) + word.up() * (word.half.y * y);
            if (!inside({outline}, at)) {
                return false;
            }
        }
    }
    return true;
}

/// On how much that is drawn of the piece the word would stand, as lengths of line, mm on the
/// cloth.
double in_the_way(const PatternPiece& piece,
                  const PlacedWord& word,
                  const std::vector<PlacedWord>& others) {
    const double round = word.half.y * 0.25;
    double found = 0;
    const auto look_at = [&](Point from, Point to) {
        found += length_under(word, from, to, round);
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
    const Point side = word.up() * word.half.y + word.along() * word.half.y;
    for (const auto& [from, to] : piece.holes) {
        // With the bars across its ends.
        look_at(from, to);
        look_at(from - side, from + side);
        look_at(to - side, to + side);
    }
    for (const Notch& notch : piece.notches) {
        look_at(notch.at, notch.out);
    }
    for (const Point button : piece.buttons) {
        look_at(button - word.up() * word.half.y, button + word.up() * word.half.y);
    }
    const double lines_alone = found;
    for (const PlacedWord& other : others) {
        const Point half = other.along() * other.half.x;
        for (const double high : {-1.0, 0.0, 1.0}) {
            const Point middle = other.at + other.up() * (other.half.y * high);
            look_at(middle - half, middle + half);
        }
    }
    // Word upon word is worse than a line through it.
    found += (found - lines_alone) * 4;
    return found + (holds(piece.cut, word) ? 0 : kOutside);
}

/// Where a word may stand: a little above its line, or below it, farther along it or a line's
/// height away, or square to it. `share` of the usual type; with what each of them costs.
void add_places(const PieceWord& word,
                double factor,
                Language language,
                double share,
                std::vector<std::pair<PlacedWord, double>>& all) {
    const double usual = std::max(kLeastWord / factor, kWord);
    const double type = usual * share;
    const double above = 0.7 / factor;
    const PlacedWord plain{
        &word, word.at, word.degrees, type, {half_width(word, language) * type, type * 0.36}};
    const Point along = plain.along();
    const Point up = plain.up();
    const double turned = word.degrees - 90 < -90.5 ? word.degrees + 90 : word.degrees - 90;
    for (const double side : {1.0, -1.0}) {
        for (const double aside : {0.0, -0.4, 0.4, -0.8, 0.8, -1.2, 1.2, -1.8, 1.8}) {
            const double cost =
                type * (std::abs(aside) * 0.35 + (side < 0 ? 0.1 : 0)) + (usual - type) * 6;
            const Point from = word.at + along * (aside * plain.half.x);
            for (const double away : {0.0, 0.9, 1.8}) {
                const Point at = from + up * (side * (above + plain.half.y + away * type));
                all.push_back({plain, cost + type * away * 0.8});
                all.back().first.at = at;
            }
            for (const double away : {0.0, 0.9, 1.8, 2.7}) {
                const Point at = from + up * (side * (above + plain.half.x + away * type));
                all.push_back({plain, cost + type * (1.6 + away * 0.8)});
                all.back().first.at = at;
                all.back().first.degrees = turned;
            }
        }
    }
}

/// Each where the least lies in its way.
std::vector<PlacedWord> placed_words(const PatternPiece& piece, double factor, Language language) {
    std::vector<PlacedWord> placed;
    for (const PieceWord& word : piece.words) {
        double least = 1e18;
        PlacedWord best;
        std::vector<std::pair<PlacedWord, double>> places;
        for (const double share : {1.0, 0.85}) {
            add_places(word, factor, language, share, places);
        }
        for (const auto& [tried, farther] : places) {
            const double cost = in_the_way(piece, tried, placed) + farther;
            if (cost < least - 1e-9) {
                least = cost;
                best = tried;
            }
        }
        placed.push_back(best);
    }
    return placed;
}

}  // namespace

void add_line(Point from, Point to, double clear, std::vector<Rect>& marks) {
    const int steps = static_cast<int>(length(to - from) / clear) + 1;
    for (int i = 0; i <= steps; ++i) {
        const Point at = from + (to - from) * (static_cast<double>(i) / steps);
        marks.push_back(Rect{at.x, at.y, at.x, at.y}.grown(clear));
    }
}

void add_lines(const PatternPiece& piece, double clear, std::vector<Rect>& marks) {
    for (const std::vector<Chain>* lines : {&piece.lines, &piece.slits}) {
        for (const Chain& line : *lines) {
            for (std::size_t i = 1; i < line.size(); ++i) {
                add_line(line[i - 1], line[i], clear, marks);
            }
        }
    }
}

Point PlacedWord::along() const {
    const double radians = degrees * std::numbers::pi / 180;
    return {std::cos(radians), std::sin(radians)};
}

Point PlacedWord::up() const {
    return {along().y, -along().x};
}

namespace {

/// Beside the middle of the seam, clear of its notches and of what is `taken`.
Spot spot_of_letter(const PatternPiece& piece,
                    const Seam& seam,
                    double factor,
                    const std::vector<Rect>& taken) {
    constexpr double clear = 22;
    for (const double share : {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8}) {
        const Spot spot = spot_along(seam.line, share, piece.outline);
        const Rect room = room_of_letter(letter_at(spot, factor), factor);
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

}  // namespace

Lettering::Lettering(const PatternPiece& piece, double factor, Language language)
    : piece_(piece),
      factor_(factor),
      language_(language),
      words_(placed_words(piece, factor, language)) {
    // No letter stands where words, folds and slits are.
    std::vector<Rect> taken = room_of_words();
    add_lines(piece, 1 / factor, taken);
    for (const Seam& seam : piece.seams) {
        if (!seam.letter.empty() && seam.line.size() > 1) {
            const Spot spot = spot_of_letter(piece, seam, factor, taken);
            letters_.push_back({seam.letter, letter_at(spot, factor)});
        }
    }
}

std::vector<Rect> Lettering::room_of_words() const {
    std::vector<Rect> room;
    for (const PlacedWord& word : words_) {
        const double step = word.half.y * 2;
        for (double s = -word.half.x; s <= word.half.x; s += step) {
            const Point at = word.at + word.along() * s;
            room.push_back(Rect{at.x, at.y, at.x, at.y}.grown(step * 0.6));
        }
    }
    return room;
}

std::vector<Rect> Lettering::room_of_letters() const {
    std::vector<Rect> room;
    room.reserve(letters_.size());
    for (const PlacedLetter& each : letters_) {
        room.push_back(room_of_letter(each.at, factor_));
    }
    return room;
}

void Lettering::draw_letters(Point at, sheet::Pen& pen) const {
    const double type = letter_type(factor_) * factor_;
    for (const PlacedLetter& each : letters_) {
        pen.words(each.letter, at + each.at * factor_ + Point{0, type * 0.32}, type, Align::middle);
    }
}

std::vector<Chain> Lettering::lines_round_words() const {
    std::vector<Chain> all;
    for (const Chain& line : piece_.lines) {
        Chain open;
        const auto close = [&] {
            if (open.size() > 1) {
                all.push_back(open);
            }
            open.clear();
        };
        for (std::size_t i = 1; i < line.size(); ++i) {
            const Point from = line[i - 1];
            const Point to = line[i];
            std::vector<std::pair<double, double>> gaps;
            gaps.reserve(words_.size());
            for (const PlacedWord& word : words_) {
                gaps.push_back(stretch_under(word, from, to, word.half.y * 0.1));
            }
            std::ranges::sort(gaps);
            if (open.empty()) {
                open.push_back(from);
            }
            for (const auto& [first, last] : gaps) {
                if (first < last) {
                    open.push_back(from + (to - from) * first);
                    close();
                    open.push_back(from + (to - from) * last);
                }
            }
            open.push_back(to);
        }
        close();
    }
    return all;
}

void Lettering::draw_words(Point at, sheet::Pen& pen) const {
    for (const PlacedWord& word : words_) {
        pen.words(term(language_, word.word->word),
                  at + (word.at - word.up() * (word.type * 0.28)) * factor_,
                  word.type * factor_,
                  Align::middle,
                  word.degrees,
                  true);
    }
}

}  // namespace platewright
