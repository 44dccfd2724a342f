// SPDX-License-Identifier: MIT
// Fringe: threads or twisted bullion hanging from one edge to another.
#include <algorithm>
#include <array>
#include <cmath>

#include "compose/easel.h"

namespace platewright {

namespace {

constexpr double kThreadPitch = 3.4;
constexpr double kBullionPitch = 8.5;

/// One thread: a strip that hangs with a little swing, rounded at the foot.
Path thread_between(Point top, Point foot, double wide) {
    const Point along = unit(foot - top);
    const Point half = right_of(along) * (wide / 2);
    const Point knee = foot - along * (wide * 0.5);
    Path strip;
    strip.move_to(top - half);
    strip.line_to(knee - half);
    strip.cubic_to(foot - half, foot - half, foot);
    strip.cubic_to(foot + half, foot + half, knee + half);
    strip.line_to(top + half);
    strip.close();
    return strip;
}

/// How far threads hang, one after the other, as a share of the whole: no fringe is cut even.
constexpr std::array kHang = {1.0, 0.965, 0.99, 0.945, 0.98};

/// Slanting turns of the cord along one bullion.
void paint_twist(Easel& easel, Group& into, Point top, Point foot, double wide, Colour ink) {
    const double long_is = length(foot - top);
    const Point along = unit(foot - top);
    const Point half = right_of(along) * (wide * 0.42);
    Path turns;
    const double step = wide * 0.62;
    const int count = std::max(0, static_cast<int>(std::ceil((long_is - wide * 0.9) / step)));
    for (int i = 0; i < count; ++i) {
        const double at = wide * 0.6 + i * step;
        turns.move_to(top + along * (at + wide * 0.22) - half);
        turns.line_to(top + along * (at - wide * 0.22) + half);
    }
    if (!turns.empty()) {
        easel.stroke(into, easel.drawing().add(std::move(turns)), ink, easel.weight(0.7), 0.7);
    }
}

}  // namespace

void paint_fringe(Easel& easel, const Detail& detail, const Trimming& where) {
    const auto paint = easel.paint_of(detail.cloth);
    if (!paint) {
        return;
    }
    const bool bullion = detail.style && easel.uniform().word(*detail.style) == "bullion";
    const double pitch = std::max(bullion ? kBullionPitch : kThreadPitch, easel.printed(2.1));
    const int threads = std::max(2, static_cast<int>(std::lround(detail.lower.length() / pitch)));
    const Inks inks = easel.inks_of(*paint, Surface::braid);
    const double wide = detail.lower.length() / threads * 1.16;
    // Painted away from the light, so that each thread's shadow falls on what comes after it.
    for (int i = 0; i < threads; ++i) {
        const double share = (i + 0.5) / threads;
        const Point top = detail.lower.at(detail.lower.length() * share).at;
        const Point hem = detail.upper.at(detail.upper.length() * share).at;
        const Point foot = top + (hem - top) * kHang[static_cast<std::size_t>(i) % kHang.size()];
        const PathId strip = easel.drawing().add(thread_between(top, foot, wide));
        // Every third thread hangs a little deeper in shade.
        const Colour own = mix(paint->colour,
                               inks.shade,
                               i % 3 == 1   ? 0.14
                               : i % 3 == 2 ? 0.05
                                            : 0.0);
        if (!easel.hatched()) {
            easel.fill(where.free, strip, {0.8, 1.6}, kCastShadow, 0.16);
        }
        easel.fill(where.free, strip, {}, own);
        easel.stroke(where.free, strip, inks.contour, easel.weight(bullion ? 0.7 : 0.45), 0.85);
        if (bullion) {
            paint_twist(easel, where.free, top, foot, wide, inks.seam);
        }
    }
}

}  // namespace platewright
