// SPDX-License-Identifier: MIT
// A draughtsman's pen.
#include "layout/pen.h"

#include <cmath>
#include <numbers>
#include <utility>

#include "layout/style.h"

namespace platewright::sheet {
namespace {

constexpr double kArrow = 2.4;
constexpr double kArrowHalf = 0.42;
/// Between the drawing and an extension line, and how far that runs beyond the dimension line.
constexpr double kWitnessGap = 0.8;
constexpr double kBeyond = 1.3;
/// Below this there is no room for two arrows.
constexpr double kShort = 6.5;

Stroke stroke_of(double width, LineKind kind) {
    Stroke stroke{kInk, width, 1, {}};
    if (kind == LineKind::dashed) {
        stroke.dash = {2.4, 1.2};
    } else if (kind == LineKind::chain) {
        stroke.dash = {6, 1.2, 0.4, 1.2};
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
    const PathId id = drawing_.add(polygon(points));
    drawing_.root.children.emplace_back(Shape{id, {}, Fill{colour, 1, false}, std::nullopt});
}

void Pen::circle(Point middle, double radius, double width) {
    const PathId id = drawing_.add(ellipse(middle, radius, radius));
    drawing_.root.children.emplace_back(
        Shape{id, {}, std::nullopt, stroke_of(width, LineKind::continuous)});
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
    const Type type = slanted ? italic(size) : roman(size);
    drawing_.root.children.emplace_back(
        Text{words, at, type.face, type.size, type.tracking, kInk, align, degrees});
}

void Pen::heading(const std::string& words, Point at, double size, Align align) {
    const Type type = small_capitals(size);
    drawing_.root.children.emplace_back(
        Text{words, at, type.face, type.size, type.tracking, kInk, align, 0});
}

void Pen::dimension(Point from, Point to, double aside, const std::string& words) {
    const Point along = unit(to - from);
    const Point out = right_of(along) * (aside < 0 ? -1 : 1);
    const double far = std::abs(aside);
    const Point a = from + out * far;
    const Point b = to + out * far;
    for (const auto& [foot, end] : {std::pair{from, a}, std::pair{to, b}}) {
        if (far > kWitnessGap) {
            line(foot + out * kWitnessGap, end + out * kBeyond);
        }
    }
    if (length(b - a) >= kShort) {
        arrows(a, b);
    } else {
        line(a - along * (kArrow + 1.6), b + along * (kArrow + 1.6));
        arrow(a, along);
        arrow(b, along * -1);
    }
    dimension_words(a, b, words);
}

void Pen::dimension_words(Point from, Point to, const std::string& words) {
    double degrees = std::atan2(to.y - from.y, to.x - from.x) * 180 / std::numbers::pi;
    // Read from below or from the right: never upside down.
    const bool turned = degrees > 89.9 || degrees <= -90.1;
    degrees += degrees > 89.9 ? -180 : degrees <= -90.1 ? 180 : 0;
    const double radians = degrees * std::numbers::pi / 180;
    const Point reading{std::cos(radians), std::sin(radians)};
    const Point up = right_of(reading) * -1;
    const double wide = ruler_.width(words, roman(kFigures));
    Point at = (from + to) * 0.5 + up * 0.8;
    if (wide + 1 > length(to - from)) {
        // Beyond the end that comes last in reading; of steep lines beyond the upper one.
        const bool backwards = std::abs(reading.y) > std::abs(reading.x) && reading.y > 0;
        const Point end = turned != backwards ? from : to;
        const Point away = reading * (backwards ? -1 : 1);
        const bool arrows_outside = length(to - from) < kShort;
        at = end + away * ((arrows_outside ? kArrow + 2.2 : 0.9) + wide / 2) + up * 0.8;
    }
    // A strip of paper under the words, so that lines of the drawing do not run through them.
    const Point side = reading * (wide / 2 + 0.4);
    const Point rise = up * (kFigures * 0.74);
    const Point fall = up * -(kFigures * 0.16);
    fill({at - side + fall, at + side + fall, at + side + rise, at - side + rise}, kPaper);
    this->words(words, at, kFigures, Align::middle, degrees);
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
