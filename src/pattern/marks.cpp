// SPDX-License-Identifier: MIT
// Marks from the flat's sleeve, which shows the half turned to us, to the piece, which reaches
// round to its seams.
#include "pattern/marks.h"

#include <algorithm>
#include <cmath>

#include "pattern/shapes.h"

namespace platewright {
namespace {

/// The point of an open chain at that share of its length.
Point at_share(const Chain& chain, double share) {
    double left = length_of(chain) * share;
    for (std::size_t i = 1; i < chain.size(); ++i) {
        const double step = length(chain[i] - chain[i - 1]);
        if (left <= step && step > 0) {
            return chain[i - 1] + (chain[i] - chain[i - 1]) * (left / step);
        }
        left -= step;
    }
    return chain.back();
}

/// Farther from straight than an edge is drawn that goes level round an arm, mm: one with a point.
constexpr double kPointed = 14;

/// A mark bends or slants less than that in the drawing, mm, and is straight.
constexpr double kStraight = 8;

/// How far a point lies to that side of a line's chord.
double off_chord(const Chain& line, Point p, Point up) {
    const Point chord = unit(line.back() - line.front());
    const Point square = dot(right_of(chord), up) > 0 ? right_of(chord) : right_of(chord) * -1;
    return dot(p - line.front(), square);
}

class OnSleeve {
  public:
    OnSleeve(const Chain& hem, const Chain& cuff, const Chain& sleeve)
        : foot_(at_share(hem, 0.5)),
          up_(unit(at_share(cuff, 0.5) - foot_)),
          sleeve_(sleeve),
          end_(shapes::box(sleeve).bottom) {}

    [[nodiscard]] PlacedMarks place(const FlatMarks& marks) const {
        PlacedMarks placed{.group = marks.group};
        const Chain edge = shown(marks.edge, marks.left_sleeve);
        double wide = 0;
        for (const FlatMarks::Band& band : marks.bands) {
            const Chain lower = laid(shown(band.lower, marks.left_sleeve), edge);
            placed.lines.push_back(lower);
            const double across = lower.back().x - lower.front().x;
            if (across > wide) {
                wide = across;
                placed.strip = strip_of(lower, laid(shown(band.upper, marks.left_sleeve), edge));
            }
        }
        return placed;
    }

  private:
    Point foot_;
    Point up_;
    const Chain& sleeve_;
    double end_;

    /// From the inner side to the outer one of a left sleeve; the flat shows both alike, mirrored.
    static Chain shown(Chain line, bool left) {
        for (Point& p : line) {
            p.x = left ? p.x : -p.x;
        }
        if (line.front().x > line.back().x) {
            std::ranges::reverse(line);
        }
        return line;
    }

    /// How far a line rises above its middle at that share of its length. The edge that it is set
    /// above is drawn round the arm; on the piece it is level, unless it has a point.
    [[nodiscard]] double rise_at(const Chain& line, const Chain& edge, double share) const {
        const double bow = off_chord(edge, at_share(edge, 0.5), up_);
        const auto above = [&](double at) {
            const Point p = at_share(line, at);
            const Point below = at_share(edge, at);
            return std::abs(bow) > kPointed ? off_chord(edge, p, up_) : dot(p - below, up_);
        };
        return above(share) - above(0.5);
    }

    /// A line of the flat with its ends on the seams of the piece.
    [[nodiscard]] Chain laid(const Chain& line, const Chain& edge) const {
        const double height = end_ - dot(at_share(line, 0.5) - foot_, up_);
        const Crossing at = crossing(sleeve_, height);
        const double across = at.greatest - at.least;
        // Slants are as steep on the broader piece as on the half that is drawn.
        const double grown = across / length(line.back() - line.front());
        // Lace is cut in straight lengths: from seam to seam, or from both seams to a point.
        double inner = rise_at(line, edge, 0) * grown;
        double outer = rise_at(line, edge, 1) * grown;
        if (std::abs(inner + outer) < 2 * kStraight) {
            inner = (inner - outer) / 2;
            inner = std::abs(inner) < kStraight / 2 ? 0 : inner;
            outer = -inner;
        }
        Chain placed{{at.least, height - inner},
                     {(at.least + at.greatest) / 2, height},
                     {at.greatest, height - outer}};
        placed.front().x = crossing(sleeve_, placed.front().y).least;
        placed.back().x = crossing(sleeve_, placed.back().y).greatest;
        return placed;
    }

    static Chain strip_of(Chain lower, Chain upper) {
        for (Chain* edge : {&lower, &upper}) {
            const Point first = unit(edge->front() - (*edge)[1]);
            const Point last = unit(edge->back() - (*edge)[edge->size() - 2]);
            edge->insert(edge->begin(), edge->front() + first * kMarkEnd);
            edge->push_back(edge->back() + last * kMarkEnd);
        }
        lower.insert(lower.end(), upper.rbegin(), upper.rend());
        return lower;
    }
};

}  // namespace

std::vector<PlacedMarks> marks_on_sleeve(const Flat& front, const Chain& upper_sleeve) {
    const Chain* hem = front.guide("cuff-hem-left");
    const Chain* edge = front.guide("cuff-edge-left");
    std::vector<PlacedMarks> all;
    if (hem == nullptr || edge == nullptr || upper_sleeve.empty()) {
        return all;
    }
    const OnSleeve sleeve(*hem, *edge, upper_sleeve);
    for (const FlatMarks& marks : front.marks) {
        const bool known = marks.group == "marks" || marks.group == "service";
        const bool placed = std::ranges::find(all, marks.group, &PlacedMarks::group) != all.end();
        if (known && !placed && !marks.bands.empty()) {
            all.push_back(sleeve.place(marks));
        }
    }
    return all;
}

}  // namespace platewright
