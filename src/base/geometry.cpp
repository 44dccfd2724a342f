// SPDX-License-Identifier: MIT
// Points, rectangles and paths.
#include "base/geometry.h"

#include <algorithm>
#include <cmath>

namespace platewright {

double turn(Point before, Point after) {
    return std::abs(std::atan2(cross(before, after), dot(before, after)));
}

double distance_from_line(Point from, Point a, Point b) {
    const Point along = b - a;
    const double squared = dot(along, along);
    const double share = squared > 0 ? std::clamp(dot(from - a, along) / squared, 0.0, 1.0) : 0;
    return length(from - (a + along * share));
}

void Rect::include(Point p) {
    if (empty()) {
        left = right = p.x;
        top = bottom = p.y;
        return;
    }
    left = std::min(left, p.x);
    right = std::max(right, p.x);
    top = std::min(top, p.y);
    bottom = std::max(bottom, p.y);
}

void Rect::include(const Rect& other) {
    if (other.empty()) {
        return;
    }
    include(Point{other.left, other.top});
    include(Point{other.right, other.bottom});
}

Rect Rect::widened(double factor) const {
    const double more = width() * (factor - 1) / 2;
    return {left - more, top, right + more, bottom};
}

Rect Rect::squared() const {
    const double half = (width() > height() ? width() : height()) / 2;
    const Point middle = centre();
    return {middle.x - half, middle.y - half, middle.x + half, middle.y + half};
}

bool Rect::meets(const Rect& other) const {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
}

Rect Rect::grown(double by) const {
    return empty() ? *this : Rect{left - by, top - by, right + by, bottom + by};
}

Affine operator*(const Affine& outer, const Affine& inner) {
    return {outer.a * inner.a + outer.c * inner.b,
            outer.b * inner.a + outer.d * inner.b,
            outer.a * inner.c + outer.c * inner.d,
            outer.b * inner.c + outer.d * inner.d,
            outer.a * inner.e + outer.c * inner.f + outer.e,
            outer.b * inner.e + outer.d * inner.f + outer.f};
}

void Path::move_to(Point p) {
    verbs.push_back(Verb::move);
    points.push_back(p);
}

void Path::line_to(Point p) {
    verbs.push_back(Verb::line);
    points.push_back(p);
}

void Path::cubic_to(Point c1, Point c2, Point p) {
    verbs.push_back(Verb::cubic);
    points.insert(points.end(), {c1, c2, p});
}

void Path::close() {
    verbs.push_back(Verb::close);
}

void Path::append(const Path& other) {
    verbs.insert(verbs.end(), other.verbs.begin(), other.verbs.end());
    points.insert(points.end(), other.points.begin(), other.points.end());
}

Rect Path::bounds() const {
    Rect box;
    for (const Point p : points) {
        box.include(p);
    }
    return box;
}

Path Path::transformed(const Affine& by) const {
    Path moved = *this;
    for (Point& p : moved.points) {
        p = by.apply(p);
    }
    return moved;
}

Path polygon(const std::vector<Point>& corners) {
    Path path;
    for (const Point p : corners) {
        if (path.empty()) {
            path.move_to(p);
        } else {
            path.line_to(p);
        }
    }
    if (!path.empty()) {
        path.close();
    }
    return path;
}

Path ellipse(Point centre, double half_width, double half_height, double radians) {
    // The usual four-curve circle: 0.5523 keeps the radius true to 0.03 %.
    constexpr double handle = 0.5522847498;
    const double cosine = std::cos(radians);
    const double sine = std::sin(radians);
    const Affine place{cosine * half_width,
                       sine * half_width,
                       -sine * half_height,
                       cosine * half_height,
                       centre.x,
                       centre.y};
    Path path;
    path.move_to({1, 0});
    path.cubic_to({1, handle}, {handle, 1}, {0, 1});
    path.cubic_to({-handle, 1}, {-1, handle}, {-1, 0});
    path.cubic_to({-1, -handle}, {-handle, -1}, {0, -1});
    path.cubic_to({handle, -1}, {1, -handle}, {1, 0});
    path.close();
    return path.transformed(place);
}

Path rectangle(const Rect& r) {
    return polygon({{r.left, r.top}, {r.right, r.top}, {r.right, r.bottom}, {r.left, r.bottom}});
}

}  // namespace platewright
