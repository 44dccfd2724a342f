// SPDX-License-Identifier: MIT
// Area and direction of paths.
#include "base/outline.h"

#include <algorithm>

namespace platewright {

namespace {

/// One subpath: its first point, and the curves or lines that follow.
struct Stretch {
    std::vector<Path::Verb> verbs;
    std::vector<Point> points;
    bool closed = false;
};

std::vector<Stretch> stretches(const Path& path) {
    std::vector<Stretch> made;
    auto point = path.points.begin();
    for (const Path::Verb verb : path.verbs) {
        if (verb == Path::Verb::close) {
            if (!made.empty()) {
                made.back().closed = true;
            }
            continue;
        }
        if (verb == Path::Verb::move || made.empty()) {
            made.emplace_back();
        } else if (made.back().closed) {
            // What follows a closing starts where the closed stretch started.
            const Point start = made.back().points.front();
            made.emplace_back().points.push_back(start);
        }
        Stretch& last = made.back();
        if (verb != Path::Verb::move) {
            last.verbs.push_back(verb);
        }
        const int count = verb == Path::Verb::cubic ? 3 : 1;
        last.points.insert(last.points.end(), point, point + count);
        point += count;
    }
    return made;
}

/// Twice the area between a cubic and the origin.
double swept(Point a, Point b, Point c, Point d) {
    return (6 * cross(a, b) + 3 * cross(a, c) + cross(a, d) + 3 * cross(b, c) + 3 * cross(b, d) +
            6 * cross(c, d)) /
           10;
}

}  // namespace

double signed_area(const Path& path) {
    double twice = 0;
    for (const Stretch& stretch : stretches(path)) {
        const std::vector<Point>& p = stretch.points;
        std::size_t at = 0;
        for (const Path::Verb verb : stretch.verbs) {
            if (verb == Path::Verb::cubic) {
                twice += swept(p[at], p[at + 1], p[at + 2], p[at + 3]);
                at += 3;
            } else {
                twice += cross(p[at], p[at + 1]);
                ++at;
            }
        }
        twice += cross(p[at], p.front());
    }
    return twice / 2;
}

Path reversed(const Path& path) {
    Path made;
    for (Stretch& stretch : stretches(path)) {
        std::reverse(stretch.verbs.begin(), stretch.verbs.end());
        made.verbs.push_back(Path::Verb::move);
        made.verbs.insert(made.verbs.end(), stretch.verbs.begin(), stretch.verbs.end());
        made.points.insert(made.points.end(), stretch.points.rbegin(), stretch.points.rend());
        if (stretch.closed) {
            made.verbs.push_back(Path::Verb::close);
        }
    }
    return made;
}

}  // namespace platewright
