// SPDX-License-Identifier: MIT
// A draughtsman's pen.
#include "layout/pen.h"

#include <utility>

#include "layout/ruler.h"
#include "layout/style.h"

namespace platewright::sheet {
namespace {

constexpr double kArrowHalf = 0.42;

Stroke stroke_of(double width, LineKind kind) {
    Stroke stroke{kInk, width, 1, {}};
    if (kind == LineKind::dashed) {
        stroke.dash = {2.4, 1.2};
    } else if (kind == LineKind::chain) {
        stroke.dash = {6, 1.2, 0.4, 1.2};
    } else if (kind == LineKind::dotted) {
        stroke.dash = {0.5, 0.9};
    }
    return stroke;
}

}  // namespace

void Pen::line(Point from, Point to, double width, LineKind kind) {
    chain({from, to}, false, width, kind);
}

void Pen::chain(const Chain& points, bool closed, double width, LineKind kind) {
    if (points.size() < 2) {
        return;
    }
    Path path;
    path.move_to(points.front());
    for (std::size_t i = 1; i < points.size(); ++i) {
        path.line_to(points[i]);
    }
    if (closed) {
        path.close();
    }
    const PathId id = drawing_.add(std::move(path));
    drawing_.root.children.emplace_back(Shape{id, {}, std::nullopt, stroke_of(width, kind)});
}

void Pen::fill(const Chain& points, Colour colour) {
    paint(polygon(points), colour);
}

void Pen::paint(Path path, Colour colour) {
    const PathId id = drawing_.add(std::move(path));
    drawing_.root.children.emplace_back(Shape{id, {}, Fill{colour, 1, false}, std::nullopt});
}

void Pen::grid(const Rect& over, double step) {
    constexpr Colour light{0xd3, 0xc9, 0xb6};
    constexpr double width = 0.1;
    Path path;
    const auto add = [&path](Point from, Point to) {
        path.move_to(from);
        path.line_to(to);
    };
    const int columns = static_cast<int>(over.width() / step);
    for (int i = 0; i <= columns; ++i) {
        const double x = over.left + i * step;
        add({x, over.top}, {x, over.bottom});
    }
    const int rows = static_cast<int>(over.height() / step);
    for (int i = 0; i <= rows; ++i) {
        const double y = over.top + i * step;
        add({over.left, y}, {over.right, y});
    }
    add({over.right, over.top}, {over.right, over.bottom});
    add({over.left, over.bottom}, {over.right, over.bottom});
    const PathId id = drawing_.add(std::move(path));
    drawing_.root.children.emplace_back(Shape{id, {}, std::nullopt, Stroke{light, width, 1, {}}});
}

void Pen::circle(Point middle, double radius, double width) {
    const PathId id = drawing_.add(ellipse(middle, radius, radius));
    drawing_.root.children.emplace_back(
        Shape{id, {}, std::nullopt, stroke_of(width, LineKind::continuous)});
}

void Pen::disc(Point middle, double radius, Colour colour) {
    paint(ellipse(middle, radius, radius), colour);
}

void Pen::arrow(Point tip, Point way) {
    const Point along = unit(way);
    const Point back = tip - along * kArrow;
    const Point across = right_of(along) * kArrowHalf;
    fill({tip, back + across, back - across}, kInk);
}

void Pen::arrows(Point from, Point to) {
    line(from, to);
    arrow(from, from - to);
    arrow(to, to - from);
}

void Pen::words(
    const std::string& words, Point at, double size, Align align, double degrees, bool slanted) {
    const Type type = with_figures(words, slanted ? italic(size) : roman(size));
    drawing_.root.children.emplace_back(text_in(type, words, at, kInk, align, degrees));
}

void Pen::heading(const std::string& words, Point at, double size, Align align) {
    drawing_.root.children.emplace_back(text_in(small_capitals(size), words, at, kInk, align));
}

void Pen::clip(const Rect& to) {
    drawing_.root.clip.push_back(drawing_.add(rectangle(to)));
}

void Pen::put_on(std::vector<Placed>& items) && {
    if (!drawing_.root.children.empty()) {
        items.push_back(Placed{{}, 1, std::move(drawing_)});
    }
}

}  // namespace platewright::sheet
