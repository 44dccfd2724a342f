// SPDX-License-Identifier: MIT
// Points, rectangles and paths shared by every stage. All lengths are millimetres; y grows
// downward.
#pragma once

#include <cmath>
#include <cstdint>
#include <optional>
#include <vector>

namespace platewright {

/// An English inch, mm (International Yard and Pound Agreement 1959).
inline constexpr double kInch = 25.4;

/// A place or a displacement, in mm.
struct Point {
    double x = 0;
    double y = 0;

    friend Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y}; }

    friend Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }

    friend Point operator*(Point a, double k) { return {a.x * k, a.y * k}; }

    friend bool operator==(const Point&, const Point&) = default;
};

/// Length of the displacement, in mm.
inline double length(Point p) {
    return std::sqrt(p.x * p.x + p.y * p.y);
}

/// The same direction with length 1; (0, 0) stays (0, 0).
inline Point unit(Point p) {
    const double long_is = length(p);
    return long_is > 0 ? p * (1 / long_is) : Point{};
}

/// A quarter turn to the right-hand side of someone walking along `p` on a page whose y grows
/// downward.
inline Point right_of(Point p) {
    return {-p.y, p.x};
}

/// The product of two displacements, along each other.
inline double dot(Point a, Point b) {
    return a.x * b.x + a.y * b.y;
}

/// Their product across each other: positive where `b` turns to the right of `a` on the page.
inline double cross(Point a, Point b) {
    return a.x * b.y - a.y * b.x;
}

/// How far one turns from the way `before` to the way `after`, to whichever side, in radians.
double turn(Point before, Point after);

/// How far along `way`, of length 1, the straight line through `from` meets the edge from `a` to
/// `b`, in mm; negative behind `from`, nothing where it passes the edge by.
inline std::optional<double> meeting(Point from, Point way, Point a, Point b) {
    const Point to_a = a - from;
    const Point to_b = b - from;
    const double side_a = cross(way, to_a);
    const double side_b = cross(way, to_b);
    if ((side_a > 0) == (side_b > 0)) {
        return std::nullopt;
    }
    const double share = side_a / (side_a - side_b);
    return dot(way, to_a) + (dot(way, to_b) - dot(way, to_a)) * share;
}

/// How far a place is from the nearest point of the straight line from `a` to `b`, in mm.
double distance_from_line(Point from, Point a, Point b);

/// From 0 to 1 as `t` does, but slow at both ends.
inline double eased(double t) {
    return t * t * (3 - 2 * t);
}

/// An upright rectangle; empty while `right < left`.
struct Rect {
    double left = 1;
    double top = 1;
    double right = -1;
    double bottom = -1;

    [[nodiscard]] bool empty() const { return right < left || bottom < top; }

    [[nodiscard]] double width() const { return empty() ? 0 : right - left; }

    [[nodiscard]] double height() const { return empty() ? 0 : bottom - top; }

    [[nodiscard]] Point centre() const { return {(left + right) / 2, (top + bottom) / 2}; }

    /// Grows the rectangle until it holds `p`.
    void include(Point p);
    void include(const Rect& other);

    /// The rectangle `by` mm larger on every side.
    [[nodiscard]] Rect grown(double by) const;
    /// Whether they have more than an edge in common.
    [[nodiscard]] bool meets(const Rect& other) const;

    /// The smallest square about the same centre that holds the rectangle.
    [[nodiscard]] Rect squared() const;

    /// The rectangle `factor` times as wide, about the same centre.
    [[nodiscard]] Rect widened(double factor) const;
};

/// x' = a x + c y + e, y' = b x + d y + f, as in SVG's `matrix(a b c d e f)`.
struct Affine {
    double a = 1, b = 0, c = 0, d = 1, e = 0, f = 0;

    [[nodiscard]] Point apply(Point p) const {
        return {a * p.x + c * p.y + e, b * p.x + d * p.y + f};
    }

    [[nodiscard]] double determinant() const { return a * d - b * c; }

    static Affine translation(double x, double y) { return {1, 0, 0, 1, x, y}; }

    static Affine scaling(double k) { return {k, 0, 0, k, 0, 0}; }
};

/// First `inner`, then `outer`.
Affine operator*(const Affine& outer, const Affine& inner);

/// A path of moves, lines, cubic curves and closings. `points` holds 1, 1, 3 and 0 entries for each
/// verb in turn.
struct Path {
    enum class Verb : std::uint8_t { move, line, cubic, close };

    std::vector<Verb> verbs;
    std::vector<Point> points;

    void move_to(Point p);
    void line_to(Point p);
    void cubic_to(Point c1, Point c2, Point p);
    void close();

    /// The other path's subpaths after one's own.
    void append(const Path& other);

    [[nodiscard]] bool empty() const { return verbs.empty(); }

    /// Box of the control points: never smaller than the drawn shape.
    [[nodiscard]] Rect bounds() const;
    [[nodiscard]] Path transformed(const Affine& by) const;

    friend bool operator==(const Path&, const Path&) = default;
};

/// A closed polygon through `corners`.
Path polygon(const std::vector<Point>& corners);

/// An ellipse of four cubic curves about `centre`, turned by `radians`.
Path ellipse(Point centre, double half_width, double half_height, double radians = 0);

/// A closed rectangle.
Path rectangle(const Rect& r);

}  // namespace platewright
