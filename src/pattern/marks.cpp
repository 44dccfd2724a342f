// SPDX-License-Identifier: MIT
// Marks from the flat's sleeve, which shows the half turned to us, to the piece, which reaches
// round to its seams.
#include "pattern/marks.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "pattern/seams.h"
#include "pattern/shapes.h"

namespace platewright {
namespace {

/// The point of an open chain at that share of its length.
Point at_share(const Chain& chain, double share) {
    return along(chain, length_of(chain) * share);
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
                placed.strip = strip_of(lower, band.width);
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
        // Lace is cut in straight lengths, from seam to seam or from both seams to a point, and as
        // steep on the broader piece as on the half that is drawn.
        const double half = length(line.back() - line.front()) / 2;
        double inner = rise_at(line, edge, 0);
        double outer = rise_at(line, edge, 1);
        const bool straight = std::abs(inner + outer) < 2 * kStraight;
        inner = straight ? (inner - outer) / 2 : (inner + outer) / 2;
        outer = straight ? -inner : inner;
        const bool level = std::abs(inner) < kStraight / 2;
        const Point middle{(at.least + at.greatest) / 2, height};
        const auto end = [&](double rise, bool right) {
            Point p{right ? at.greatest : at.least, height};
            for (int i = 0; i < 4; ++i) {
                p.y = height - (level ? 0 : rise / half) * std::abs(p.x - middle.x);
                const Crossing there = crossing(sleeve_, p.y);
                p.x = right ? there.greatest : there.least;
            }
            return p;
        };
        return {end(inner, false), middle, end(outer, true)};
    }

    /// As wide as it is ordered, square to itself.
    static Chain strip_of(Chain lower, double width) {
        const Point way = lower[1] - lower.front();
        const double high = width * std::hypot(1, way.y / way.x);
        const Point first = unit(lower.front() - lower[1]);
        const Point last = unit(lower.back() - lower[lower.size() - 2]);
        lower.front() = lower.front() + first * kMarkEnd;
        lower.back() = lower.back() + last * kMarkEnd;
        Chain strip = lower;
        for (auto p = lower.rbegin(); p != lower.rend(); ++p) {
            strip.push_back(*p - Point{0, high});
        }
        return strip;
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
        if (known && !placed && !marks.bands.empty() && !marks.edge.empty()) {
            all.push_back(sleeve.place(marks));
        }
    }
    return all;
}

const Chain& edge_below(const Flat& flat, const FlatMarks& marks) {
    // Near the cuff the line itself follows the cuff's shape.
    constexpr double near_cuff = 60;
    const Chain* cuff = flat.guide(marks.left_sleeve ? "cuff-edge-left" : "cuff-edge-right");
    const bool high =
        cuff != nullptr && !marks.edge.empty() &&
        length(marks.edge[marks.edge.size() / 2] - (*cuff)[cuff->size() / 2]) > near_cuff;
    return high ? *cuff : marks.edge;
}

Point foot_on(const Chain& edge, Point from) {
    Point best = edge.front();
    for (std::size_t i = 1; i < edge.size(); ++i) {
        const Point a = edge[i - 1];
        const Point way = edge[i] - a;
        const double u = std::clamp(dot(from - a, way) / std::max(1e-9, dot(way, way)), 0.0, 1.0);
        const Point at = a + way * u;
        best = length(at - from) < length(best - from) ? at : best;
    }
    return best;
}

Point foot_below(const Flat& flat, const FlatMarks& marks) {
    const Chain& edge = edge_below(flat, marks);
    const Chain& mark = marks.bands.front().lower;
    const Point nearest = foot_on(edge, mark[mark.size() / 2]);
    const bool corner = nearest == edge.front() || nearest == edge.back();
    return corner ? edge[edge.size() / 2] : nearest;
}

double angle_of(const FlatMarks::Band& band, const Chain& edge) {
    const Point mark = band.lower[band.lower.size() / 2] - band.lower.front();
    const Point along = edge[edge.size() / 2] - edge.front();
    const double radians = std::atan2(std::abs(cross(along, mark)), dot(along, mark));
    return radians * 180 / std::numbers::pi;
}

}  // namespace platewright
