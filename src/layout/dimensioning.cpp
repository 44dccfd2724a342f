// SPDX-License-Identifier: MIT
// Places of dimension lines, by what each place would cost.
#include "layout/dimensioning.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>
#include <optional>

#include "layout/edge_map.h"
#include "layout/style.h"
#include "words/message.h"

namespace platewright::sheet {
namespace {

/// Between the drawing and a witness line, and how far that runs beyond the dimension line.
constexpr double kWitnessGap = 0.8;
constexpr double kBeyond = 1.3;
/// What is measured within the drawing has a point, and its witness line begins so far outside.
constexpr double kOutside = 2;
/// Below this there is no room for two arrows; those outside stand on so much more line.
constexpr double kShort = 6.5;
constexpr double kTail = kArrow + 1.6;
/// The words stand so far above their line, and their strip reaches so far round them.
constexpr double kAbove = 1.1;
constexpr double kStripFall = kFigures * 0.27;
constexpr double kStripRise = kFigures * 0.74;
constexpr double kStripSide = 0.6;
/// So far round the words, and beside a line and its arrows, edges of the drawing crowd them.
constexpr double kWordsClear = 1;
constexpr double kArrowClear = 0.8;
constexpr std::array kLineClear = {-2.4, -1.6, -0.8, 0.8, 1.6, 2.4};
/// How far a line is led out at most, and by what steps places are tried.
constexpr double kFarthest = 60;
constexpr double kStep = 1;
/// Parallel lines beside each other are so far apart.
constexpr double kLanesApart = 5.5;
/// What is read at its own height lies so near to it, and best on it; there it needs no witnesses.
constexpr double kLevel = 2;
constexpr double kOffLevel = 2;

/// What is dear about a place, for each mm or as often as it happens. Crossings that the standard
/// forbids cost more than any way round; cloth is dearer than paper, edges are dearer than cloth.
constexpr double kWitnessMm = 0.1;
constexpr double kWitnessOnEdge = 0.15;
constexpr double kWitnessOnCloth = 0.02;
constexpr double kWitnessThroughCloth = 0.25;
constexpr double kLineOnEdge = 0.6;
constexpr double kLineOnCloth = 0.4;
constexpr double kLineNearEdge = 0.25;
constexpr double kArrowOnEdge = 3;
constexpr double kWordsOnCloth = 12;
constexpr double kWordsOnEdge = 5;
constexpr double kWordsNearEdge = 0.7;
constexpr double kWordsMoved = 0.12;
constexpr double kWordsBeyond = 2.5;
constexpr double kWordsOffTheirLine = 15;
constexpr double kLaneTooNear = 3;
constexpr double kWitnessAcrossLine = 5;
constexpr double kWrongSide = 40;
constexpr double kForbidden = 100;

/// A dimension turned so that its words are read from left to right: `s` runs with the words, `c`
/// upward from them.
struct Turned {
    Point reading;
    Point up;
    double s0 = 0;
    double s1 = 0;
    /// Where the measured points are.
    double c0 = 0;
    double c1 = 0;
    double degrees = 0;
    double words_width = 0;
    bool level = false;

    [[nodiscard]] Point at(double s, double c) const { return reading * s + up * c; }

    [[nodiscard]] double length() const { return s1 - s0; }
};

Turned turned(const Dimension& each, double scale) {
    Point a = each.from * (1 / scale);
    Point b = each.to * (1 / scale);
    const Point way = each.way == DimensionWay::across ? Point{1, 0}
                      : each.way == DimensionWay::down ? Point{0, 1}
                                                       : unit(b - a);
    Turned t;
    t.degrees = std::atan2(way.y, way.x) * 180 / std::numbers::pi;
    // Read from below or from the right: never upside down.
    t.degrees += t.degrees > 89.9 ? -180 : t.degrees <= -90.1 ? 180 : 0;
    const double radians = t.degrees * std::numbers::pi / 180;
    t.reading = {std::cos(radians), std::sin(radians)};
    t.up = right_of(t.reading) * -1;
    if (dot(b - a, t.reading) < 0) {
        std::swap(a, b);
    }
    t.s0 = dot(a, t.reading);
    t.s1 = dot(b, t.reading);
    t.c0 = dot(a, t.up);
    t.c1 = dot(b, t.up);
    t.level = each.level;
    return t;
}

std::vector<Point> points(const std::pair<Point, Point>& line) {
    return {line.first, line.second};
}

std::vector<Point> points(const std::array<Point, 4>& strip) {
    return {strip.begin(), strip.end()};
}

bool outside(const DimensionLine& each, const Rect& room) {
    const Rect box = box_of(each);
    return box.left < room.left || box.right > room.right || box.top < room.top ||
           box.bottom > room.bottom;
}

/// What two dimensions cost each other.
double between_both(const DimensionLine& a, const DimensionLine& b) {
    constexpr double clear = 1.2;
    constexpr double touching = -0.1;
    double cost = 0;
    const std::vector<Point> words_a = points(a.ground);
    const std::vector<Point> words_b = points(b.ground);
    const std::vector<Point> line_a = points(a.line);
    const std::vector<Point> line_b = points(b.line);
    cost += meet(words_a, words_b, clear) ? kForbidden : 0;
    cost += meet(words_a, line_b, clear) || meet(words_b, line_a, clear) ? kForbidden : 0;
    cost += meet(line_a, line_b, touching) ? kForbidden : 0;
    for (const auto& witness : a.witnesses) {
        cost += meet(words_b, points(witness), clear / 2) ? kForbidden : 0;
        cost += meet(line_b, points(witness), touching) ? kWitnessAcrossLine : 0;
    }
    for (const auto& witness : b.witnesses) {
        cost += meet(words_a, points(witness), clear / 2) ? kForbidden : 0;
        cost += meet(line_a, points(witness), touching) ? kWitnessAcrossLine : 0;
    }
    const Point way = unit(a.to - a.from);
    if (std::abs(cross(way, unit(b.to - b.from))) < 0.05) {
        const double apart = std::abs(cross(way, b.from - a.from));
        const double end = length(a.to - a.from);
        const double from = dot(b.from - a.from, way);
        const double to = dot(b.to - a.from, way);
        const double shared = std::min(end, std::max(from, to)) - std::max(0.0, std::min(from, to));
        cost += shared > 1 && apart < kLanesApart ? (kLanesApart - apart) * kLaneTooNear : 0;
    }
    return cost;
}

/// Finds the places of all dimensions of a field.
class Laying {
  public:
    Laying(const std::vector<Dimension>& dimensions, const DimensionField& field)
        : dimensions_(dimensions), field_(field), map_(field.room) {
        const double factor = 1 / field.scale;
        for (const FlatPart& part : field.of.flat.parts) {
            add_part(part, factor);
        }
        for (const FlatMarks& marks : field.of.flat.marks) {
            add_marks(marks, factor);
        }
        for (const Dimension& each : dimensions) {
            Turned& t = turned_.emplace_back(turned(each, field.scale));
            words_.push_back(words_of(each));
            t.words_width = field.of.ruler.width(words_.back(), roman(kFigures));
        }
    }

    /// Shortest first, as the standard has it; if that leads into a corner, longest first.
    std::vector<DimensionLine> all() {
        std::vector<DimensionLine> laid = laid_in_order(/*shortest_first=*/true);
        if (total(laid) >= kBadPlace) {
            std::vector<DimensionLine> longest = laid_in_order(/*shortest_first=*/false);
            if (total(longest) < total(laid)) {
                laid = std::move(longest);
            }
        }
        for (DimensionLine& each : laid) {
            add_on_cloth(each.line.first, each.line.second, each);
            for (const auto& [from, to] : each.witnesses) {
                add_on_cloth(from, to, each);
            }
        }
        return laid;
    }

  private:
    const std::vector<Dimension>& dimensions_;
    const DimensionField& field_;
    EdgeMap map_;
    std::vector<Turned> turned_;
    std::vector<std::string> words_;
    std::vector<std::optional<DimensionLine>> laid_;

    std::vector<DimensionLine> laid_in_order(bool shortest_first) {
        laid_.assign(dimensions_.size(), std::nullopt);
        std::vector<std::size_t> order(dimensions_.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::ranges::stable_sort(order, [&](std::size_t a, std::size_t b) {
            const double longer = turned_[b].length() - turned_[a].length();
            return shortest_first ? longer > 0 : longer < 0;
        });
        constexpr int rounds = 4;
        bool moved = true;
        for (int round = 0; round < rounds && moved; ++round) {
            moved = false;
            for (const std::size_t i : order) {
                DimensionLine best = best_place(i);
                moved |= !laid_[i] || !(best.words_at == laid_[i]->words_at);
                laid_[i] = std::move(best);
            }
        }
        std::vector<DimensionLine> all;
        for (const std::optional<DimensionLine>& each : laid_) {
            all.push_back(*each);
        }
        return all;
    }

    static double total(const std::vector<DimensionLine>& all) {
        return std::accumulate(
            all.begin(), all.end(), 0.0, [](double sum, const DimensionLine& each) {
                return sum + each.cost;
            });
    }

    void add_part(const FlatPart& part, double factor) {
        std::vector<Chain> closed = part.outline;
        for (Chain& chain : closed) {
            for (Point& p : chain) {
                p = p * factor;
            }
        }
        map_.add_shape(closed);
        for (const Chain& line : part.lines) {
            add_line(line, factor);
        }
        for (const FlatRow& row : part.rows) {
            for (const Point p : row.kind == FlatRow::Kind::buttons ? row.at : Chain{}) {
                map_.add_disc(p * factor, row.size / 2 * factor);
            }
        }
    }

    void add_line(const Chain& line, double factor) {
        for (std::size_t i = 1; i < line.size(); ++i) {
            map_.add_edge(line[i - 1] * factor, line[i] * factor);
        }
    }

    void add_marks(const FlatMarks& marks, double factor) {
        for (const FlatMarks::Band& band : marks.bands) {
            add_line(band.lower, factor);
            add_line(band.upper, factor);
        }
    }

    /// Millimetres, and the order's own words or its own unit.
    [[nodiscard]] std::string words_of(const Dimension& each) const {
        return number_words(field_.of.language, each.mm(), each.stated ? 1 : 0) + " (" +
               (each.stated ? each.stated->printed : in_eighths(each.mm(), field_.of.unit)) + ")";
    }

    /// Heights at which the line may stand, nearest to what is measured first.
    static std::vector<double> heights(const Turned& t) {
        const double low = std::min(t.c0, t.c1);
        const double high = std::max(t.c0, t.c1);
        std::vector<double> all{low, high};
        const double first = std::ceil(low - kFarthest);
        const int steps = static_cast<int>((high + kFarthest - first) / kStep);
        for (int i = 0; i <= steps; ++i) {
            all.push_back(first + i * kStep);
        }
        const auto away = [&t](double c) { return std::abs(c - t.c0) + std::abs(c - t.c1); };
        std::ranges::stable_sort(all, [&](double a, double b) { return away(a) < away(b); });
        return all;
    }

    /// Middles of the words along the line, and what each costs.
    static std::vector<std::pair<double, double>> middles(const Turned& t) {
        const double half = t.words_width / 2;
        const double middle = (t.s0 + t.s1) / 2;
        std::vector<std::pair<double, double>> all;
        if (t.words_width + 1 <= t.length()) {
            all.emplace_back(middle, 0);
            constexpr double move = 4;
            for (double by = move; by + half + 1 <= t.length() / 2; by += move) {
                all.emplace_back(middle - by, by * kWordsMoved);
                all.emplace_back(middle + by, by * kWordsMoved);
            }
        }
        const double gap = t.length() < kShort ? kTail + kStripSide : 0.9 + kStripSide;
        const double beyond = t.words_width + 1 <= t.length() ? kWordsOffTheirLine : kWordsBeyond;
        all.emplace_back(t.s1 + gap + half, beyond);
        all.emplace_back(t.s0 - gap - half, beyond);
        return all;
    }

    DimensionLine best_place(std::size_t i) {
        const Turned& t = turned_[i];
        std::optional<DimensionLine> best;
        for (const double c : heights(t)) {
            const double away = std::abs(c - t.c0) + std::abs(c - t.c1);
            if (best && away * kWitnessMm >= best->cost) {
                break;
            }
            const double at_height = cost_of_line(t, c) + away * kWitnessMm + astray(i, c, away);
            for (const auto& [middle, moved] : middles(t)) {
                double cost = at_height + moved;
                if (best && cost >= best->cost) {
                    continue;
                }
                DimensionLine tried = line_at(i, c, middle);
                cost += cost_of_words(t, tried) + cost_of_ends(tried) + cost_of_others(i, tried);
                if (!best || cost < best->cost) {
                    tried.cost = cost;
                    best = std::move(tried);
                }
            }
        }
        return std::move(*best);
    }

    /// For a line at the height `c`, `away` from its two points in all, that is not where its kind
    /// is read: beyond its own height, or below what it should stand above.
    [[nodiscard]] double astray(std::size_t i, double c, double away) const {
        const Turned& t = turned_[i];
        if (t.level) {
            return away / 2 * kOffLevel + (away > 2 * kLevel ? kWrongSide : 0);
        }
        return dimensions_[i].above && c < std::max(t.c0, t.c1) ? kWrongSide : 0;
    }

    [[nodiscard]] double cost_of_line(const Turned& t, double c) const {
        const Covered line = map_.under(t.at(t.s0, c), t.at(t.s1, c));
        double cost = line.edges * kLineOnEdge + (t.level ? 0 : line.within * kLineOnCloth);
        for (const double side : kLineClear) {
            cost += map_.under(t.at(t.s0, c + side), t.at(t.s1, c + side)).edges * kLineNearEdge;
        }
        for (const auto& [s, foot] : {std::pair{t.s0, t.c0}, std::pair{t.s1, t.c1}}) {
            const Covered witness = map_.under(t.at(s, foot), t.at(s, c));
            cost += witness.edges * kWitnessOnEdge + witness.within * kWitnessOnCloth;
            const double covered = covered_to(t.at(s, foot), t.at(s, c));
            cost +=
                begins_outside(covered, std::abs(c - foot)) ? 0 : covered * kWitnessThroughCloth;
        }
        return cost;
    }

    [[nodiscard]] double cost_of_words(const Turned& t, DimensionLine& tried) const {
        const double wide = length(tried.ground[1] - tried.ground[0]);
        const Covered under = map_.under(tried.ground[0], t.reading, wide, kStripRise + kStripFall);
        tried.covers_edges = under.edges > 0;
        const Covered round = map_.under(tried.ground[0] - (t.reading + t.up) * kWordsClear,
                                         t.reading,
                                         wide + 2 * kWordsClear,
                                         kStripRise + kStripFall + 2 * kWordsClear);
        return (under.within > 0 && !t.level ? kWordsOnCloth : 0) + under.edges * kWordsOnEdge +
               (round.edges - under.edges) * kWordsNearEdge +
               (outside(tried, field_.room) ? kForbidden : 0);
    }

    /// What runs on beyond what is measured: tails of arrows, and the line under words.
    [[nodiscard]] double cost_of_ends(const DimensionLine& tried) const {
        double cost = 0;
        for (const auto& [from, to] :
             {std::pair{tried.line.first, tried.from}, std::pair{tried.to, tried.line.second}}) {
            const Covered end = map_.under(from, to);
            cost += end.edges * kLineOnEdge + end.within * kLineOnCloth;
        }
        return cost + cost_of_arrow(tried, tried.from, -1) + cost_of_arrow(tried, tried.to, 1);
    }

    /// Under the head of an arrow and close beside it; `way`: 1 where the line ends, -1 where it
    /// begins.
    [[nodiscard]] double cost_of_arrow(const DimensionLine& tried, Point tip, double way) const {
        const Point along = unit(tried.to - tried.from);
        const double inward = tried.arrows_outside ? way : -way;
        const Point back = tip + along * (inward * kArrow);
        const Point from = inward > 0 ? tip : back;
        const Covered under =
            map_.under(from + right_of(along) * kArrowClear, along, kArrow, 2 * kArrowClear);
        return under.edges * kArrowOnEdge / kArrow;
    }

    [[nodiscard]] double cost_of_others(std::size_t i, const DimensionLine& tried) const {
        double cost = 0;
        for (std::size_t j = 0; j < laid_.size(); ++j) {
            cost += j != i && laid_[j] ? between_both(tried, *laid_[j]) : 0;
        }
        return cost;
    }

    /// How far beyond `from` the drawing still lies under the way to `to`.
    [[nodiscard]] double covered_to(Point from, Point to) const {
        const double whole = length(to - from);
        const Point way = unit(to - from);
        double covered = 0;
        for (double s = 0; s < whole; s += kStep) {
            const double end = std::min(s + kStep, whole);
            covered = map_.under(from + way * s, from + way * end).within > 0 ? end : covered;
        }
        return covered;
    }

    /// Whether a witness line of that length can begin beyond the cloth that covers so much of it.
    static bool begins_outside(double covered, double whole) {
        return covered > 2 * kStep && covered + kOutside < whole;
    }

    /// A witness line does not run through the cloth: it begins outside, with a point where it
    /// would have begun. Where the dimension line itself lies on the cloth it is whole.
    void add_witness(Point foot, Point end, DimensionLine& made) const {
        if (length(end - foot) <= kWitnessGap) {
            return;
        }
        const Point way = unit(end - foot);
        const double covered = covered_to(foot, end);
        const Point beyond = end + way * kBeyond;
        if (!begins_outside(covered, length(end - foot))) {
            made.witnesses.emplace_back(foot + way * kWitnessGap, beyond);
            return;
        }
        // On bare paper, between two skirts, a point would stand for nothing.
        constexpr double near = 0.7;
        if (map_.under(foot - way * near, foot + way * near).within > 0) {
            made.within.push_back(foot);
        }
        made.witnesses.emplace_back(foot + way * (covered + kOutside), beyond);
    }

    /// The stretches of a line that lie on cloth: a strip of paper under them rubs out no outline.
    void add_on_cloth(Point from, Point to, DimensionLine& made) const {
        const double whole = length(to - from);
        const Point way = unit(to - from);
        constexpr double step = 0.5;
        std::optional<double> begun;
        for (double s = 0; s < whole + step; s += step) {
            const Covered under =
                s < whole ? map_.under(from + way * s, from + way * std::min(s + step, whole))
                          : Covered{};
            const bool cloth = under.within > 0 && under.edges <= 0;
            if (cloth && !begun) {
                begun = s;
            } else if (!cloth && begun) {
                made.on_cloth.emplace_back(from + way * *begun, from + way * std::min(s, whole));
                begun.reset();
            }
        }
    }

    [[nodiscard]] DimensionLine line_at(std::size_t i, double c, double middle) const {
        const Turned& t = turned_[i];
        DimensionLine made;
        made.from = t.at(t.s0, c);
        made.to = t.at(t.s1, c);
        // On cloth arrows would not be seen.
        made.arrows_outside = t.level || t.length() < kShort;
        const double tail = made.arrows_outside ? kTail : 0;
        const double half = t.words_width / 2 + kStripSide;
        // Words beyond an end stand on the line, which runs on under them.
        const bool before = middle < t.s0;
        const bool behind = middle > t.s1;
        made.line = {t.at(before ? middle - half : t.s0 - tail, c),
                     t.at(behind ? middle + half : t.s1 + tail, c)};
        for (const auto& [s, foot] : {std::pair{t.s0, t.c0}, std::pair{t.s1, t.c1}}) {
            if (!t.level || std::abs(c - foot) > kLevel) {
                add_witness(t.at(s, foot), t.at(s, c), made);
            }
        }
        made.words = words_[i];
        made.words_at = t.at(middle, c + kAbove);
        made.degrees = t.degrees;
        const double low = c + kAbove - kStripFall;
        const double high = c + kAbove + kStripRise;
        made.ground = {t.at(middle - half, low),
                       t.at(middle + half, low),
                       t.at(middle + half, high),
                       t.at(middle - half, high)};
        return made;
    }
};

}  // namespace

std::vector<DimensionLine> lay_dimensions(const std::vector<Dimension>& dimensions,
                                          const DimensionField& field) {
    return Laying(dimensions, field).all();
}

}  // namespace platewright::sheet
