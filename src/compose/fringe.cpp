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

/// Threads nearer than this run together, in mm on the body for print at 1 : 7.2.
constexpr double kClosestThreads = 2.7;

/// The plies of threads show where threads could stand so much closer, as a share of their pitch.
constexpr double kPliesShow = 0.65;

/// How a thread hangs: out over the round of the shoulder, then straight down by its weight.
Cubic hang_between(Point top, Point foot, Point down) {
    const Point way = foot - top;
    const double drop = dot(way, down);
    const Point aside = way - down * drop;
    return {top, top + aside * 0.7 + down * (drop * 0.22), foot - down * (drop * 0.5), foot};
}

/// One thread: a strip, narrower where it is sewn in, rounded at the foot.
Path thread_along(const Cubic& hang, Point down, double wide) {
    const Point half = right_of(down) * (wide / 2);
    const Point root = half * 0.8;
    const Point end = down * (wide * 0.55);
    const Point knee = hang.end - end * 0.9;
    Path strip;
    strip.move_to(hang.begin - root);
    strip.cubic_to(hang.first - half, hang.second - half, knee - half);
    strip.cubic_to(knee - half + end, knee + half + end, knee + half);
    strip.cubic_to(hang.second + half, hang.first + half, hang.begin + root);
    strip.close();
    return strip;
}

/// Threads cling together by fours and twos: how far each leans to its bundle's middle, in
/// threads, how far it hangs, as a share of the whole, and how deep it lies in its bundle's shade.
struct Lie {
    double lean;
    double hang;
    double shade;
};

constexpr std::array kLies = {Lie{0.12, 0.97, 0.03},
                              Lie{0.1, 0.99, 0},
                              Lie{-0.04, 1, 0.08},
                              Lie{-0.26, 0.985, 0.26},
                              Lie{0.1, 0.975, 0.02},
                              Lie{-0.16, 0.955, 0.16},
                              Lie{0.3, 0.98, 0.05},
                              Lie{0.06, 1, 0},
                              Lie{-0.08, 0.99, 0.12},
                              Lie{-0.3, 0.96, 0.3}};

/// Slanting turns of the cord along one bullion.
void paint_twist(
    Easel& easel, Group& into, const Cubic& hang, Point down, double wide, Colour ink) {
    const double long_is = length(hang.end - hang.begin);
    const Point half = right_of(down) * (wide * 0.42);
    const Point rise = down * (wide * 0.22);
    Path turns;
    const double step = wide * 0.62;
    const int count = std::max(0, static_cast<int>(std::ceil((long_is - wide * 0.9) / step)));
    for (int i = 0; i < count; ++i) {
        const Point middle = hang.at((wide * 0.6 + i * step) / long_is);
        turns.move_to(middle + rise - half);
        turns.line_to(middle - rise + half);
    }
    if (!turns.empty()) {
        easel.stroke(into, easel.drawing().add(std::move(turns)), ink, easel.weight(0.7), 0.7);
    }
}

/// The side of a thread or bullion away from the light; on an enlarged thread its plies instead,
/// short strokes down it.
void paint_side(Easel& easel, Group& into, const Cubic& hang, double wide, Colour ink, bool plies) {
    const Point aside = right_of(unit(hang.end - hang.begin)) * (wide * (plies ? -0.2 : -0.28));
    Path side;
    side.move_to(hang.at(0.12) + aside * 0.8);
    side.cubic_to(hang.at(0.4) + aside, hang.at(0.7) + aside, hang.at(0.96) + aside);
    Stroke stroke{ink, wide * 0.3, 0.34, {}};
    if (plies) {
        stroke = Stroke{ink, wide * 0.2, 0.55, {wide * 0.5, wide * 0.6}};
    }
    into.children.emplace_back(
        Shape{easel.drawing().add(std::move(side)), {}, std::nullopt, std::move(stroke)});
}

}  // namespace

void paint_fringe(Easel& easel, const Detail& detail, const Trimming& where) {
    const auto paint = easel.paint_of(detail.cloth);
    if (!paint) {
        return;
    }
    const bool bullion = detail.style && easel.uniform().word(*detail.style) == "bullion";
    const double closest = easel.printed(kClosestThreads);
    const double pitch = std::max(bullion ? kBullionPitch : kThreadPitch, closest);
    const int threads = std::max(2, static_cast<int>(std::lround(detail.lower.length() / pitch)));
    const Inks inks = easel.inks_of(*paint, Surface::braid);
    const double wide = detail.lower.length() / threads * 1.16;
    const Curve& roots = detail.lower;
    const Curve& hem = detail.upper;
    const bool plies = !bullion && closest < kThreadPitch * kPliesShow;
    const Point down = unit(hem.at(hem.length() / 2).at - roots.at(roots.length() / 2).at);
    // Painted away from the light, so that each thread's shadow falls on what comes after it.
    for (int i = 0; i < threads; ++i) {
        const Lie& lie = kLies[static_cast<std::size_t>(i) % kLies.size()];
        const Point top = roots.at(roots.length() * (i + 0.5) / threads).at;
        const double lean = bullion ? 0 : lie.lean;
        const Point end = hem.at(hem.length() * (i + 0.5 + lean) / threads).at;
        const Cubic hang = hang_between(top, top + (end - top) * lie.hang, down);
        const PathId strip = easel.drawing().add(thread_along(hang, down, wide));
        if (!easel.hatched()) {
            easel.fill(where.free, strip, {0.8, 1.6}, kCastShadow, 0.16);
        }
        easel.fill(where.free, strip, {}, mix(paint->colour, inks.shade, lie.shade));
        easel.stroke(where.free,
                     strip,
                     inks.contour,
                     easel.weight(bullion ? 0.7 : 0.4),
                     bullion ? 0.8 : 0.62);
        paint_side(easel, where.free, hang, wide, inks.seam, plies);
        if (bullion) {
            paint_twist(easel, where.free, hang, down, wide, inks.seam);
        }
    }
}

}  // namespace platewright
