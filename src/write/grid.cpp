// SPDX-License-Identifier: MIT
// Rounding and thinning paths.
#include "write/grid.h"

#include <algorithm>
#include <cmath>

namespace platewright {

namespace {

/// mm on paper.
constexpr double kStep = 0.02;
/// Steps by which a point may be off when it is left out.
constexpr double kSlack = 0.5;
/// Points left out between two that are kept; bounds the work.
constexpr std::size_t kMostLeftOut = 48;

bool near_segment(Point p, Point from, Point to) {
    const Point along = to - from;
    const double square = dot(along, along);
    if (square == 0) {
        return length(p - from) <= kSlack;
    }
    const double part = dot(p - from, along) / square;
    return part >= 0 && part <= 1 && std::abs(cross(along, p - from)) <= kSlack * std::sqrt(square);
}

Point rounded(Point p) {
    // Adding 0 turns -0 into 0.
    return {std::round(p.x) + 0.0, std::round(p.y) + 0.0};
}

/// Takes exact points, in steps; gives rounded ones.
class Thinner {
  public:
    void move(Point p) {
        flush();
        made_.move_to(rounded(p));
        kept_ = start_ = p;
        drawn_ = false;
    }

    void line(Point p) {
        const bool fits = waiting_.size() < kMostLeftOut &&
                          std::all_of(waiting_.begin(), waiting_.end(), [&](Point q) {
                              return near_segment(q, kept_, p);
                          });
        if (!fits) {
            flush();
        }
        waiting_.push_back(p);
    }

    void cubic(Point b, Point c, Point d) {
        const Point from = waiting_.empty() ? kept_ : waiting_.back();
        if (near_segment(b, from, d) && near_segment(c, from, d)) {
            line(d);
            return;
        }
        flush();
        made_.cubic_to(rounded(b), rounded(c), rounded(d));
        kept_ = d;
        drawn_ = true;
    }

    void close() {
        flush();
        made_.close();
        kept_ = start_;
    }

    Path take() {
        flush();
        return std::move(made_);
    }

  private:
    void flush() {
        if (waiting_.empty()) {
            return;
        }
        const Point to = waiting_.back();
        waiting_.clear();
        // A line to where the pen is says nothing, unless it is a dot.
        if (rounded(to) != rounded(kept_) || !drawn_) {
            made_.line_to(rounded(to));
            drawn_ = true;
        }
        kept_ = to;
    }

    Path made_;
    std::vector<Point> waiting_;
    Point kept_;
    Point start_;
    bool drawn_ = false;
};

}  // namespace

double Grid::scale() const {
    return per_mm / std::pow(10, places);
}

Grid grid_for(double factor) {
    return factor == 1 ? Grid() : Grid{factor / kStep, 0, kStep};
}

Path on_grid(const Path& path, const Grid& grid) {
    Thinner thinner;
    auto point = path.points.begin();
    const auto next = [&] { return *point++ * grid.per_mm; };
    for (const Path::Verb verb : path.verbs) {
        switch (verb) {
            case Path::Verb::move:
                thinner.move(next());
                break;
            case Path::Verb::line:
                thinner.line(next());
                break;
            case Path::Verb::cubic: {
                const Point b = next();
                const Point c = next();
                thinner.cubic(b, c, next());
                break;
            }
            case Path::Verb::close:
                thinner.close();
                break;
        }
    }
    return thinner.take();
}

}  // namespace platewright
