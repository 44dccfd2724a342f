// SPDX-License-Identifier: MIT
// What lies and grows on etched ground.
#include "layout/growth.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace platewright::sheet {
namespace {

constexpr Colour kGrass{0x7c, 0x83, 0x55};
constexpr Colour kStone{0xdc, 0xd0, 0xb6};

/// A blade of grass that bends over to `tip`.
void add_blade(Path& path, Point foot, Point tip, double half) {
    const Point up{0, tip.y - foot.y};
    const Point stem = foot + up * 0.62 + Point{0.16 * (tip.x - foot.x), 0};
    path.move_to(foot - Point{half, 0});
    path.cubic_to(foot + up * 0.3 - Point{half, 0}, stem - Point{0.6 * half, 0}, tip);
    path.cubic_to(
        stem + Point{0.7 * half, 0}, foot + up * 0.3 + Point{half, 0}, foot + Point{half, 0});
    path.close();
}

}  // namespace

Path through(const std::vector<Point>& p) {
    const std::size_t n = p.size();
    Path path;
    path.move_to(p[0]);
    for (std::size_t i = 0; i < n; ++i) {
        // Catmull-Rom.
        const Point from = p[i];
        const Point to = p[(i + 1) % n];
        path.cubic_to(from + (to - p[(i + n - 1) % n]) * (1.0 / 6),
                      to - (p[(i + 2) % n] - from) * (1.0 / 6),
                      to);
    }
    path.close();
    return path;
}

void add_cut(Path& path, Point from, Point to, double thickness, double bow) {
    const Point along = to - from;
    const Point swell{0, thickness / 2};
    path.move_to(from);
    path.line_to(from + along * 0.35 + Point{0, bow} - swell);
    path.line_to(to);
    path.line_to(from + along * 0.6 + Point{0, bow} + swell);
    path.close();
}

void put_grass(Point root, double mm, Irregular& irregular, Layer& on) {
    const int blades = 3 + static_cast<int>(irregular.between(0, 5.99));
    // Few blades grow tall, many make a cushion.
    const double height = (blades < 6 ? irregular.between(24, 44) : irregular.between(13, 24)) * mm;
    const double apart = irregular.between(2, 4.2) * mm;
    const double part = irregular.between(0.25, 0.8);
    const double lean = irregular.between(-0.25, 0.45);
    Path path;
    double left = root.x;
    double right = root.x;
    for (int i = 0; i < blades; ++i) {
        const double off = i - 0.5 * (blades - 1);
        const double side = 2 * off / blades;
        const double tall = height * irregular.between(0.45, 1.1) * (1 - 0.3 * std::abs(side));
        const double rise = irregular.between(-1.5, 1.5) * mm;
        const double bend = irregular.between(-0.15, 0.15);
        const Point foot = root + Point{off * apart, rise};
        const Point tip = foot + Point{(part * side + lean + bend) * tall, -tall};
        add_blade(path, foot, tip, 0.9 * mm);
        left = std::min({left, foot.x, 0.5 * (foot.x + tip.x)});
        right = std::max({right, foot.x, 0.5 * (foot.x + tip.x)});
    }
    for (int i = 0; i < 3; ++i) {
        const double from = irregular.between(-0.7, 0.1) * blades * apart;
        const double length = irregular.between(18, 46) * mm;
        add_cut(path,
                root + Point{from, (1.5 + 2.8 * i) * mm},
                root + Point{from + length, (1.5 + 2.8 * i) * mm},
                1.7 * mm,
                0);
    }
    const Point middle{(left + right) / 2, root.y - 0.26 * height};
    on.fill(ellipse(middle, (right - left) / 2 + 3 * mm, 0.34 * height), kGrass, 0.22);
    on.fill(std::move(path), kGraver, 0.8);
}

void put_stone(Point at, double mm, Irregular& irregular, Layer& on) {
    const double wide = irregular.between(10, 17) * mm;
    const double high = wide * irregular.between(0.6, 0.8);
    const double crest = irregular.between(-0.35, 0.1) * wide;
    const auto body = [&](double grow, Point move) {
        return through({at + move + Point{-wide - grow, 0},
                        at + move + Point{-0.75 * wide, -0.65 * high - grow},
                        at + move + Point{crest, -high - grow},
                        at + move + Point{0.8 * wide, -0.6 * high - grow},
                        at + move + Point{wide + grow, 0},
                        at + move + Point{0.1 * wide, 0.25 * high + grow}});
    };
    on.fill(body(0.9 * mm, {0.5 * mm, 0.4 * mm}), kGraver, 0.9);
    on.fill(body(0, {}), kStone);
    Path cuts;
    for (int i = 0; i < 4; ++i) {
        const double y = at.y - (0.62 - 0.24 * i) * high;
        add_cut(cuts,
                {at.x + (0.28 - 0.12 * i) * wide, y},
                {at.x + (0.82 + 0.04 * i) * wide, y + 0.5 * mm},
                1.5 * mm,
                0.8 * mm);
    }
    for (int i = 0; i < 3; ++i) {
        const Point from = at + Point{(0.5 - 0.3 * i) * wide, (0.5 + 2.6 * i) * mm};
        add_cut(cuts, from, from + Point{(2.1 - 0.25 * i) * wide, 0}, 2 * mm, 0);
    }
    on.fill(std::move(cuts), kGraver, 0.85);
}

}  // namespace platewright::sheet
