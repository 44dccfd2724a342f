// SPDX-License-Identifier: MIT
// Curves walked by arc length.
#include "compose/curve.h"

#include <2geom/bezier-curve.h>
#include <2geom/elliptical-arc.h>
#include <2geom/path-sink.h>
#include <2geom/sbasis-to-bezier.h>
#include <2geom/svg-path-parser.h>

#include <algorithm>
#include <cmath>

#include "base/limits.h"
#include "base/outline.h"

namespace platewright {

namespace {

Point ours(const Geom::Point& p) {
    return {p.x(), p.y()};
}

Geom::Point theirs(Point p) {
    return {p.x, p.y};
}

/// Takes what the parser finds and keeps it as moves, lines and cubic curves.
class PathTaker : public Geom::PathSink {
  public:
    Path path;

    void moveTo(const Geom::Point& p) override { path.move_to(ours(p)); }

    void lineTo(const Geom::Point& p) override { path.line_to(ours(p)); }

    void curveTo(const Geom::Point& a, const Geom::Point& b, const Geom::Point& p) override {
        path.cubic_to(ours(a), ours(b), ours(p));
    }

    void quadTo(const Geom::Point& c, const Geom::Point& p) override {
        const Point from = path.points.back();
        const Point control = ours(c);
        path.cubic_to(from + (control - from) * (2.0 / 3),
                      ours(p) + (control - ours(p)) * (2.0 / 3),
                      ours(p));
    }

    void arcTo(
        double rx, double ry, double angle, bool large, bool sweep, const Geom::Point& p) override {
        const Geom::EllipticalArc arc(theirs(path.points.back()), rx, ry, angle, large, sweep, p);
        const Geom::Path curves = Geom::cubicbezierpath_from_sbasis(arc.toSBasis(), 0.01);
        for (const Geom::Curve& curve : curves) {
            if (const auto* cubic = dynamic_cast<const Geom::CubicBezier*>(&curve)) {
                curveTo((*cubic)[1], (*cubic)[2], (*cubic)[3]);
            } else {
                lineTo(curve.finalPoint());
            }
        }
    }

    bool backspace() override { return false; }

    void flush() override {}

    void closePath() override { path.close(); }
};

bool finite_and_near(const Path& path) {
    return std::ranges::all_of(path.points, [](Point p) {
        return std::abs(p.x) < limits::kCoordinate && std::abs(p.y) < limits::kCoordinate;
    });
}

/// Appends the curve's chords after its first point. The count follows the bend: a flat curve needs
/// few.
void append_cubic(std::vector<Point>& chain, Point a, Point c1, Point c2, Point b) {
    const Geom::CubicBezier curve(theirs(a), theirs(c1), theirs(c2), theirs(b));
    const double bend = std::max(length(a - c1 * 2 + c2), length(c1 - c2 * 2 + b));
    // Chord error of a cubic is at most 0.75 bend / n² (Wang's bound); 0.05 mm is wanted.
    const int count = std::clamp(static_cast<int>(std::ceil(std::sqrt(0.75 * bend / 0.05))), 1, 64);
    for (int i = 1; i <= count; ++i) {
        chain.push_back(ours(curve.pointAt(static_cast<double>(i) / count)));
    }
}

/// Calls `take` with each subpath's chain and whether it was closed.
template <typename Take>
void walk(const Path& path, Take take) {
    std::vector<Point> chain;
    std::size_t next = 0;
    bool closed = false;
    const auto finish = [&] {
        if (chain.size() > 1) {
            take(chain, closed);
        }
        closed = false;
    };
    for (const Path::Verb verb : path.verbs) {
        switch (verb) {
            case Path::Verb::move:
                finish();
                chain.assign(1, path.points[next++]);
                break;
            case Path::Verb::line:
                chain.push_back(path.points[next++]);
                break;
            case Path::Verb::cubic:
                append_cubic(chain,
                             chain.back(),
                             path.points[next],
                             path.points[next + 1],
                             path.points[next + 2]);
                next += 3;
                break;
            case Path::Verb::close:
                closed = true;
                break;
        }
    }
    finish();
}

void simplify(const std::vector<Point>& chain,
              std::size_t from,
              std::size_t to,
              double tolerance,
              std::vector<bool>& keep) {
    // An explicit stack: a traced outline may be long, and recursion would follow it.
    std::vector<std::pair<std::size_t, std::size_t>> open{{from, to}};
    while (!open.empty()) {
        const auto [low, high] = open.back();
        open.pop_back();
        const Point chord = unit(chain[high] - chain[low]);
        double worst = tolerance;
        std::size_t at = 0;
        for (std::size_t i = low + 1; i < high; ++i) {
            const Point to_point = chain[i] - chain[low];
            const double away =
                chord == Point{} ? length(to_point) : std::abs(cross(chord, to_point));
            if (away > worst) {
                worst = away;
                at = i;
            }
        }
        if (at != 0) {
            keep[at] = true;
            open.emplace_back(low, at);
            open.emplace_back(at, high);
        }
    }
}

/// Where a chord from the open goes under what covers it: without it outlines that cross at a
/// narrow angle would leave a gap of a whole chord.
template <typename Covered>
Point turning_point(Point open, Point hidden, const Covered& covered) {
    constexpr int halvings = 12;
    for (int i = 0; i < halvings; ++i) {
        const Point middle = (open + hidden) * 0.5;
        (covered(middle) ? hidden : open) = middle;
    }
    return open;
}

/// The ways, of length 1, that a chain comes to its point `i` and leaves it; none at its ends.
struct Ways {
    Point before;
    Point after;
};

Ways ways_at(const std::vector<Point>& chain, std::size_t i) {
    return {i > 0 ? unit(chain[i] - chain[i - 1]) : Point{},
            i + 1 < chain.size() ? unit(chain[i + 1] - chain[i]) : Point{}};
}

/// No mitre reaches further than so many widths of what is mitred.
constexpr double kLongestMitre = 4;

/// From a corner to where the edges meet that run one mm to the right of the lines to and from it.
Point mitre(const Ways& ways) {
    const Point middle = unit(ways.before + ways.after);
    const double closing = std::max(dot(middle, ways.before), dot(middle, ways.after));
    return right_of(middle) * (1 / std::max(closing, 1 / kLongestMitre));
}

}  // namespace

std::optional<Path> parse_path_data(const std::string& data, std::string& problem) {
    PathTaker taker;
    try {
        Geom::parse_svg_path(data, taker);
    } catch (const std::exception&) {
        problem = "this is not a path that can be read";
        return std::nullopt;
    }
    if (taker.path.verbs.size() > limits::kPathSegments) {
        problem = "this path has more than " + std::to_string(limits::kPathSegments) + " segments";
        return std::nullopt;
    }
    if (taker.path.points.size() < 2) {
        problem = "this path has no length";
        return std::nullopt;
    }
    if (!finite_and_near(taker.path)) {
        problem = "this path has a point further than 100 m from the figure";
        return std::nullopt;
    }
    return std::move(taker.path);
}

Curve::Curve(const Path& path) {
    walk(path, [this](const std::vector<Point>& chain, bool closed) {
        if (!chain_.empty()) {
            return;
        }
        std::vector<Point> whole = chain;
        if (closed && !(whole.front() == whole.back())) {
            whole.push_back(whole.front());
        }
        *this = Curve(whole);
    });
}

Curve::Curve(const std::vector<Point>& chain) {
    for (const Point p : chain) {
        const double step = chain_.empty() ? 1 : platewright::length(p - chain_.back());
        if (step > 1e-9) {
            run_.push_back(chain_.empty() ? 0 : run_.back() + step);
            chain_.push_back(p);
        }
    }
}

double Curve::turning() const {
    double sum = 0;
    for (std::size_t i = 2; i < chain_.size(); ++i) {
        sum += turn(chain_[i - 1] - chain_[i - 2], chain_[i] - chain_[i - 1]);
    }
    return sum;
}

Curve::Station Curve::at(double distance) const {
    const auto after = std::ranges::upper_bound(run_, distance);
    const std::size_t high =
        std::clamp<std::size_t>(static_cast<std::size_t>(after - run_.begin()), 1, run_.size() - 1);
    const Point along = unit(chain_[high] - chain_[high - 1]);
    return {chain_[high - 1] + along * (distance - run_[high - 1]), along};
}

std::vector<Curve::Station> Curve::stations(int count, double start, double end) const {
    std::vector<Station> found;
    if (empty() || count <= 0) {
        return found;
    }
    const double first = std::min(start, length());
    const double last = std::max(first, length() - end);
    for (int i = 0; i < std::min(count, limits::kStations); ++i) {
        found.push_back(
            at(count == 1 ? (first + last) / 2 : first + (last - first) * i / (count - 1)));
    }
    return found;
}

std::vector<Curve::Corner> Curve::corners(double least) const {
    std::vector<Corner> found;
    for (std::size_t i = 1; i + 1 < chain_.size(); ++i) {
        const Ways ways = ways_at(chain_, i);
        if (turn(ways.before, ways.after) > least) {
            found.push_back({chain_[i], mitre(ways)});
        }
    }
    return found;
}

Curve Curve::offset(double by) const {
    // As few chords as show no bend: each is compared with all that are near.
    const Curve plain(simplified(0.02));
    const std::vector<Point>& chain = plain.chain_;
    const double reach = std::abs(by) * 2 * kLongestMitre;
    // Within a corner what runs beside one of its lines is too near the other.
    const auto too_near = [&](Point p, std::size_t own) {
        for (std::size_t i = 1; i < chain.size(); ++i) {
            if (std::abs(plain.run_[i] - plain.run_[own]) < reach &&
                distance_from_line(p, chain[i - 1], chain[i]) < std::abs(by) * 0.98) {
                return true;
            }
        }
        return false;
    };
    std::vector<Point> moved;
    for (std::size_t i = 0; i < chain.size(); ++i) {
        const Point there = chain[i] + mitre(ways_at(chain, i)) * by;
        const bool end = i == 0 || i + 1 == chain.size();
        if (end || !too_near(there, i)) {
            moved.push_back(there);
        }
    }
    return Curve(moved);
}

std::vector<Point> Curve::simplified(double tolerance) const {
    if (empty()) {
        return chain_;
    }
    std::vector<bool> keep(chain_.size(), false);
    keep.front() = keep.back() = true;
    simplify(chain_, 0, chain_.size() - 1, tolerance, keep);
    std::vector<Point> kept;
    for (std::size_t i = 0; i < chain_.size(); ++i) {
        if (keep[i]) {
            kept.push_back(chain_[i]);
        }
    }
    return kept;
}

std::vector<std::vector<Point>> outlines(const Path& path) {
    std::vector<std::vector<Point>> found;
    walk(path, [&](const std::vector<Point>& chain, bool) { found.push_back(chain); });
    return found;
}

Path outer_edge(const std::vector<std::vector<Point>>& shapes) {
    Path edge;
    for (std::size_t own = 0; own < shapes.size(); ++own) {
        std::vector<std::vector<Point>> others = shapes;
        others.erase(others.begin() + static_cast<std::ptrdiff_t>(own));
        const auto covered = [&](Point p) {
            return std::ranges::any_of(others,
                                       [p](const auto& other) { return inside({other}, p); });
        };
        bool drawing = false;
        const std::vector<Point>& chain = shapes[own];
        for (std::size_t i = 0; i <= chain.size(); ++i) {
            const Point p = chain[i % chain.size()];
            const Point before = chain[(i + chain.size() - 1) % chain.size()];
            if (covered(p)) {
                if (drawing) {
                    edge.line_to(turning_point(before, p, covered));
                }
                drawing = false;
                continue;
            }
            if (drawing) {
                edge.line_to(p);
            } else if (i == 0) {
                edge.move_to(p);
            } else {
                edge.move_to(turning_point(p, before, covered));
                edge.line_to(p);
            }
            drawing = true;
        }
    }
    return edge;
}

std::vector<Path> subpaths(const Path& path) {
    std::vector<Path> parts;
    std::size_t next = 0;
    for (const Path::Verb verb : path.verbs) {
        if (verb == Path::Verb::move || parts.empty()) {
            parts.emplace_back();
        }
        Path& part = parts.back();
        part.verbs.push_back(verb);
        const std::size_t takes = verb == Path::Verb::cubic ? 3 : verb == Path::Verb::close ? 0 : 1;
        part.points.insert(part.points.end(),
                           path.points.begin() + static_cast<std::ptrdiff_t>(next),
                           path.points.begin() + static_cast<std::ptrdiff_t>(next + takes));
        next += takes;
    }
    return parts;
}

Path clockwise(const Path& path) {
    Path turned;
    for (const Path& part : subpaths(path)) {
        turned.append(signed_area(part) < 0 ? reversed(part) : part);
    }
    return turned;
}

Path smooth(const std::vector<Point>& through) {
    Path path;
    if (through.empty()) {
        return path;
    }
    path.move_to(through[0]);
    // A sharper turn is meant as a corner.
    constexpr double cosine_of_40 = 0.766;
    const auto bends_on = [&](std::size_t i) {
        const Ways ways = ways_at(through, i);
        return i > 0 && i + 1 < through.size() && dot(ways.before, ways.after) >= cosine_of_40;
    };
    for (std::size_t i = 0; i + 1 < through.size(); ++i) {
        const Point p1 = through[i];
        const Point p2 = through[i + 1];
        const Point p0 = i > 0 ? through[i - 1] : p1;
        const Point p3 = i + 2 < through.size() ? through[i + 2] : p2;
        const double d1 = std::sqrt(std::max(1e-9, length(p1 - p0)));
        const double d2 = std::sqrt(std::max(1e-9, length(p2 - p1)));
        const double d3 = std::sqrt(std::max(1e-9, length(p3 - p2)));
        Point c1 = p1;
        Point c2 = p2;
        if (bends_on(i)) {
            c1 = (p2 * (d1 * d1) - p0 * (d2 * d2) + p1 * (2 * d1 * d1 + 3 * d1 * d2 + d2 * d2)) *
                 (1 / (3 * d1 * (d1 + d2)));
        }
        if (bends_on(i + 1)) {
            c2 = (p1 * (d3 * d3) - p3 * (d2 * d2) + p2 * (2 * d3 * d3 + 3 * d3 * d2 + d2 * d2)) *
                 (1 / (3 * d3 * (d3 + d2)));
        }
        path.cubic_to(c1, c2, p2);
    }
    return path;
}

}  // namespace platewright
