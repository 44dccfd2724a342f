// SPDX-License-Identifier: MIT
// A sweep down the outline; at each height the block is moved as near the middle as it can stand.
#include "layout/room_in.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <utility>

#include "pattern/shapes.h"

namespace platewright::sheet {

namespace {

/// Free on all sides of the block, and how far the sweep goes at a time, mm.
constexpr double kFreeAround = 2;
constexpr double kStep = 2;

/// From where to where words may go from `top` to `bottom`; empty if the first is not the lesser.
std::pair<double, double> between(const Chain& outline, double top, double bottom) {
    std::pair<double, double> room{-1e9, 1e9};
    constexpr int looks = 4;
    for (int i = 0; i <= looks; ++i) {
        const double y = top + (bottom - top) * i / looks;
        const Crossing here = crossing(outline, y);
        if (!here.found) {
            return {0, 0};
        }
        room.first = std::max(room.first, here.least + kFreeAround);
        room.second = std::min(room.second, here.greatest - kFreeAround);
    }
    return room;
}

/// Whether nothing of the outline, however it is bent, runs through the block.
bool holds_block(const Chain& outline, const Rect& block) {
    constexpr int looks = 8;
    for (int i = 0; i <= looks; ++i) {
        const double x = block.left + block.width() * i / looks;
        for (const double y : {block.top, block.centre().y, block.bottom}) {
            if (!inside({outline}, {x, y})) {
                return false;
            }
        }
    }
    return true;
}

bool touches_any(const Rect& block, const std::vector<Rect>& marks) {
    return std::ranges::any_of(marks, [&block](const Rect& mark) { return block.meets(mark); });
}

}  // namespace

std::optional<Point> room_in(const Chain& outline,
                             double width,
                             double height,
                             const Rect& arrow,
                             const std::vector<Rect>& marks) {
    const Rect box = shapes::box(outline);
    const Point middle = box.centre();
    const Rect clear = arrow.grown(kFreeAround);
    std::optional<Point> best;
    double nearest = 1e9;
    for (double top = box.top + kFreeAround; top + height <= box.bottom - kFreeAround;
         top += kStep) {
        const auto [left, right] = between(outline, top, top + height);
        std::array<std::pair<double, double>, 2> gaps{{{left, right}, {0, 0}}};
        if (!arrow.empty() && top < clear.bottom && top + height > clear.top) {
            gaps = {{{left, std::min(right, clear.left)}, {std::max(left, clear.right), right}}};
        }
        for (const auto& [from, to] : gaps) {
            if (to - from < width) {
                continue;
            }
            const double x = std::clamp(middle.x, from + width / 2, to - width / 2);
            const double away = std::hypot(x - middle.x, top + height / 2 - middle.y);
            const Rect block{x - width / 2, top, x + width / 2, top + height};
            if (away < nearest && holds_block(outline, block) && !touches_any(block, marks)) {
                nearest = away;
                best = Point{x, top};
            }
        }
    }
    return best;
}

std::optional<Point> word_place(
    const Chain& outline, Point near, Point half, double free, const std::vector<Rect>& marks) {
    const Rect box = shapes::box(outline);
    const double farthest = length(Point{box.width(), box.height()});
    constexpr double ring = 0.6;
    for (double away = 0; away <= farthest; away += ring) {
        const int looks = 1 + static_cast<int>(away * 8);
        for (int i = 0; i < looks; ++i) {
            const double turn = 2 * std::numbers::pi * i / looks;
            const Point at = near + Point{std::cos(turn), std::sin(turn)} * away;
            const Rect word{at.x - half.x, at.y - half.y, at.x + half.x, at.y + half.y};
            const Rect block = word.grown(free);
            if (block.left >= box.left && block.right <= box.right && block.top >= box.top &&
                block.bottom <= box.bottom && holds_block(outline, block) &&
                !touches_any(word, marks)) {
                return at;
            }
        }
    }
    return std::nullopt;
}

}  // namespace platewright::sheet
