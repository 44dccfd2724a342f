// SPDX-License-Identifier: MIT
// An etched strip of ground under the feet: patches of level strokes on a thin wash, closest where
// something rests on it, with here and there a stone or some grass.
#include "layout/ground.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

#include "layout/growth.h"
#include "layout/style.h"

namespace platewright::sheet {
namespace {

constexpr Colour kEarth{0x97, 0x80, 0x58};
/// The lowest part of a figure, as a share of its height, that counts as its feet.
constexpr double kFeet = 0.04;
/// Edges of fewer points are no feet.
constexpr std::size_t kLeastEdge = 4;

/// The whole strip: from end to end, and the line the men stand on. `mm`: paper for 1 mm of body.
struct Strip {
    double left = 0;
    double right = 0;
    double sole = 0;
    double lowest = 0;
    double mm = 1;
    /// How much stronger each stroke is, since small men are printed small.
    double weight = 1;
};

/// A colourist's thin wash along the strip, drawn out to both ends; its edge is what a brush
/// leaves.
Path wash(const Strip& strip, Irregular& irregular) {
    constexpr int corners = 20;
    const double mm = strip.mm;
    const Point centre{(strip.left + strip.right) / 2, strip.sole - 17 * mm};
    const double half = (strip.right - strip.left) / 2;
    std::vector<Point> p;
    for (int i = 0; i < corners; ++i) {
        const double turn = 2 * std::numbers::pi * i / corners;
        const double high = 36 * irregular.between(0.8, 1.08) * mm;
        // Pointed at both ends: a brush is set down there and lifted.
        const double fall = std::abs(std::sin(turn)) * std::sin(turn);
        p.push_back(centre + Point{std::cos(turn) * half, fall * high});
    }
    return through(p);
}

/// Strokes side by side that make one patch of tone: longest and strongest in the middle.
struct Patch {
    Point middle;
    double width = 0;
    int strokes = 0;
    double pitch = 0;
    double thickness = 0;
};

void cut_patch(Path& path, const Patch& patch, const Strip& strip, Irregular& irregular) {
    const double mm = strip.mm;
    const double slope = irregular.between(-0.012, 0.018);
    for (int i = 0; i < patch.strokes; ++i) {
        const double v = patch.strokes > 1 ? 2.0 * i / (patch.strokes - 1) - 1 : 0;
        const double half = patch.width / 2 * std::sqrt(1.3 - v * v);
        const double y = patch.middle.y + (i - 0.5 * (patch.strokes - 1)) * patch.pitch;
        // One after the other: compilers take arguments in what order they like.
        const double before = half * irregular.between(0.6, 1.1);
        const double after = half * irregular.between(0.7, 1.15);
        const double bow = irregular.between(-0.9, 1.3) * mm;
        const double thickness =
            patch.thickness * (1 - 0.4 * std::abs(v)) * irregular.between(0.75, 1.15);
        const double left = std::max(patch.middle.x - before, strip.left);
        const double right = std::min(patch.middle.x + after, strip.right);
        if (right - left > 8 * mm && y < strip.lowest) {
            add_cut(path,
                    {left, y + (left - patch.middle.x) * slope},
                    {right, y + (right - patch.middle.x) * slope},
                    thickness * strip.weight * mm,
                    bow);
        }
    }
}

/// What rests on the ground: from where to where, and how low.
struct Rest {
    double left = 0;
    double right = 0;
    double sole = 0;
};

/// Under all that rests the ground is close and dark, behind it and towards the lower right.
void cut_under(Path& path, const Rest& rest, const Strip& strip, Irregular& irregular) {
    const double mm = strip.mm;
    const double width = rest.right - rest.left;
    const double middle = (rest.left + rest.right) / 2;
    cut_patch(path,
              {{middle + 14 * mm, rest.sole - 15 * mm}, width + 110 * mm, 9, 4.2 * mm, 1.9},
              strip,
              irregular);
    cut_patch(path,
              {{middle + 0.3 * width + 34 * mm, rest.sole + 1 * mm},
               0.7 * width + 90 * mm,
               5,
               4.4 * mm,
               2.2},
              strip,
              irregular);
}

/// Between the men the ground lies in the light: few patches, further apart, near and far.
void cut_open(Path& path, const Strip& strip, Irregular& irregular) {
    const double mm = strip.mm;
    double x = strip.left + irregular.between(50, 90) * mm;
    bool near = false;
    while (x < strip.right - 60 * mm) {
        const double width = irregular.between(90, 230) * mm;
        const double depth = near ? irregular.between(-12, 8) : irregular.between(-48, -24);
        const int strokes = 2 + static_cast<int>(irregular.between(0, 4));
        // Thin towards both ends of the strip.
        const double end = std::min(x - strip.left, strip.right - x) / (180 * mm);
        cut_patch(path,
                  {{x, strip.sole + depth * mm},
                   width * std::clamp(0.4 + end, 0.0, 1.0),
                   strokes,
                   irregular.between(4.6, 6.4) * mm,
                   std::clamp(0.7 + 0.5 * end, 0.7, 1.2)},
                  strip,
                  irregular);
        x += irregular.between(40, 100) * mm;
        near = !near;
    }
}

Path cut_ground(const std::vector<Rest>& all, const Strip& strip, Irregular& irregular) {
    Path path;
    cut_open(path, strip, irregular);
    for (const Rest& rest : all) {
        cut_under(path, rest, strip, irregular);
    }
    return path;
}

/// The darkest ground, close under an edge that rests on it: deepest in the middle, and drawn out
/// to the right, away from the light, up to `right`. Its upper side lies hidden behind the figure.
Path close_shadow(const std::vector<Point>& edge, double depth, double mm, double right) {
    constexpr std::size_t step = 3;
    std::vector<Point> upper;
    std::vector<Point> lower;
    const double width = std::max(edge.back().x - edge.front().x, 1e-6);
    for (std::size_t i = 0; i < edge.size(); i += step) {
        const double along = (edge[i].x - edge.front().x) / width;
        upper.push_back(edge[i] + Point{0, -5 * mm});
        const double swell = std::sqrt(std::max(std::sin(std::numbers::pi * along), 0.0));
        lower.push_back(edge[i] + Point{depth * along * mm, depth * swell * mm});
    }
    Path path;
    path.move_to(upper.front());
    for (const Point p : lower) {
        path.line_to(p);
    }
    const Point tip = edge.back() + Point{3.2 * depth * mm, 1.5 * mm};
    path.line_to({std::min(tip.x, right), tip.y});
    path.line_to(edge.back() + Point{0, -5 * mm});
    for (auto p = upper.rbegin(); p != upper.rend(); ++p) {
        path.line_to(*p);
    }
    path.close();
    return path;
}

/// The stretches of the edges that rest on the ground, each of one shoe or butt, without the sides
/// that rise from it.
std::vector<std::vector<Point>> resting(const Footing& foot, double mm) {
    const double steep = 12 * mm;
    std::vector<std::vector<Point>> stretches;
    for (const std::vector<Point>& edge : foot.edges) {
        for (std::size_t i = 0; i < edge.size(); ++i) {
            if (i == 0 || std::abs(edge[i].y - edge[i - 1].y) > steep) {
                stretches.emplace_back();
            }
            stretches.back().push_back(edge[i]);
        }
    }
    std::erase_if(stretches,
                  [](const std::vector<Point>& stretch) { return stretch.size() < kLeastEdge; });
    return stretches;
}

/// All that rests on the ground, each shoe and butt by itself.
std::vector<Rest> rests_of(const std::vector<Footing>& feet, double mm) {
    std::vector<Rest> all;
    for (const Footing& foot : feet) {
        for (const std::vector<Point>& edge : resting(foot, mm)) {
            const auto lowest = std::ranges::max_element(edge, {}, &Point::y);
            all.push_back({edge.front().x, edge.back().x, lowest->y});
        }
        if (foot.edges.empty()) {
            all.push_back({foot.left, foot.right, foot.sole});
        }
    }
    return all;
}

/// What a foot casts on the ground: a sliver drawn out to the right of it, away from the light.
struct Cast {
    Point from;
    Point tip;
    double depth = 0;
};

Cast cast_of(const std::vector<Point>& edge, const Strip& strip) {
    const double width = edge.back().x - edge.front().x;
    const Point from{edge.front().x + 0.45 * width, (edge.front().y + edge.back().y) / 2};
    const double far = std::clamp(0.9 * width, 50 * strip.mm, 120 * strip.mm);
    return {from,
            {std::min(edge.back().x + far, strip.right), edge.back().y + 4 * strip.mm},
            std::clamp(0.24 * width, 8 * strip.mm, 22 * strip.mm)};
}

void add_sliver(Path& path, const Cast& cast) {
    const Point along = cast.tip - cast.from;
    path.move_to(cast.from);
    path.cubic_to(cast.from + along * 0.3 + Point{0, -0.9 * cast.depth},
                  cast.from + along * 0.7 + Point{0, -0.7 * cast.depth},
                  cast.tip);
    path.cubic_to(cast.from + along * 0.7 + Point{0, 0.35 * cast.depth},
                  cast.from + along * 0.3 + Point{0, 0.6 * cast.depth},
                  cast.from);
    path.close();
}

/// Close strokes in the same shadow, from under the foot outwards.
void cut_cast(Path& path, const Cast& cast, double mm, Irregular& irregular) {
    constexpr int strokes = 7;
    const Point along = cast.tip - cast.from;
    for (int i = 0; i < strokes; ++i) {
        const double v = 2.0 * i / (strokes - 1) - 1;
        const Point from = cast.from + along * irregular.between(0.05, 0.2) +
                           Point{0, (v * 0.55 - 0.12) * cast.depth};
        const double share = (1 - 0.45 * v * v) * irregular.between(0.72, 0.95);
        const Point to{from.x + (cast.tip.x - from.x) * share,
                       from.y + (cast.tip.y - from.y) * 0.4 * share};
        add_cut(path, from, to, 2.4 * mm, 0);
    }
}

/// Shadows of what rests on the ground: the sliver that is cast, its strokes, and the dark close
/// under the edge.
void put_shadows(const std::vector<Footing>& feet,
                 const Strip& strip,
                 Irregular& irregular,
                 Layer& on) {
    Path slivers;
    Path strokes;
    for (const Footing& foot : feet) {
        for (const std::vector<Point>& edge : resting(foot, strip.mm)) {
            const Cast cast = cast_of(edge, strip);
            add_sliver(slivers, cast);
            cut_cast(strokes, cast, strip.mm, irregular);
            on.fill(close_shadow(edge, 8, strip.mm, strip.right), kGraver, 0.66);
        }
    }
    if (!slivers.empty()) {
        on.fill(std::move(slivers), kGraver, 0.16);
        on.fill(std::move(strokes), kGraver, 0.8);
    }
}

/// What lies or grows between `left` and `right`, if there is room.
void put_growth(
    double left, double right, bool stone, const Strip& strip, Irregular& irregular, Layer& on) {
    const double mm = strip.mm;
    const double x = irregular.between(left + 20 * mm, right - 30 * mm);
    const double y = strip.sole + irregular.between(-36, -4) * mm;
    const double size = irregular.between(0.75, 1.1);
    const double beside = x + irregular.between(-60, 60) * mm;
    if (right - left < 60 * mm) {
        return;
    }
    if (stone) {
        put_stone({x, y}, size * mm, irregular, on);
    } else {
        put_grass({x, y}, size * mm, irregular, on);
    }
    if (std::abs(beside - x) > 26 * mm && beside > left && beside < right - 20 * mm) {
        // Towards the eye if it is a pebble, so that it does not stand on the other's head.
        put_grass({beside, y + 7 * mm}, 0.6 * mm, irregular, on);
    }
}

/// The stretches beside and between the men, not nearer than what their feet cast. Most stay empty.
void put_growths(const std::vector<Footing>& feet,
                 const Strip& strip,
                 Irregular& irregular,
                 Layer& on) {
    const double mm = strip.mm;
    int since = irregular.next() < 0.5 ? 1 : 0;
    double left = strip.left + 60 * mm;
    for (std::size_t i = 0; i <= feet.size(); ++i) {
        const double right = i < feet.size() ? feet[i].left - 25 * mm : strip.right - 60 * mm;
        if (++since > 1 && irregular.next() < 0.6) {
            put_growth(left, right, irregular.next() < 0.4, strip, irregular, on);
            since = 0;
        }
        left = i < feet.size() ? feet[i].right + 60 * mm : right;
    }
}

/// The strip without what grows on it: the wash, the strokes and the shadows, so strong.
void put_strip(const std::vector<Footing>& feet,
               const Strip& strip,
               double washed,
               double cut,
               Irregular& irregular,
               Layer& on) {
    on.fill(wash(strip, irregular), kEarth, washed);
    on.fill(cut_ground(rests_of(feet, strip.mm), strip, irregular), kGraver, cut);
    put_shadows(feet, strip, irregular, on);
}

/// From beyond the first foot to further beyond the last, as far as there is paper.
Strip strip_of(const std::vector<Footing>& feet, const Rect& within, double mm) {
    Strip strip{within.right, within.left, 0, 0, mm};
    for (const Footing& foot : feet) {
        strip.left = std::min(strip.left, foot.left - 230 * mm);
        strip.right = std::max(strip.right, foot.right + 280 * mm);
        strip.sole = std::max(strip.sole, foot.sole);
    }
    strip.left = std::max(strip.left, within.left);
    strip.right = std::min(strip.right, within.right);
    strip.lowest = std::min(strip.sole + 20 * mm, within.bottom);
    return strip;
}

}  // namespace

std::optional<Footing> footing_of(const Silhouette& silhouette, Point at, double factor) {
    const Rect& box = silhouette.box();
    if (box.empty()) {
        return std::nullopt;
    }
    const double ankles = box.bottom - box.height() * kFeet;
    const auto reach = silhouette.reach(ankles, box.bottom);
    if (!reach) {
        return std::nullopt;
    }
    auto edges = silhouette.undersides(ankles);
    for (std::vector<Point>& edge : edges) {
        for (Point& p : edge) {
            p = at + p * factor;
        }
    }
    return Footing{at.x + reach->first * factor,
                   at.x + reach->second * factor,
                   at.y + box.bottom * factor,
                   std::move(edges)};
}

void draw_footing(const Footing& feet, double factor, std::string_view name, Layer& on) {
    Irregular irregular(name);
    Strip strip{feet.left - 120 * factor, feet.right + 170 * factor, feet.sole, 0, factor, 1.3};
    strip.lowest = feet.sole + 16 * factor;
    put_strip({feet}, strip, 0.11, 0.66, irregular, on);
}

void draw_ground(const std::vector<Footing>& feet,
                 const Rect& within,
                 double factor,
                 std::string_view name,
                 Layer& on) {
    if (feet.empty()) {
        return;
    }
    Irregular irregular(name);
    const Strip strip = strip_of(feet, within, factor);
    if (strip.right <= strip.left) {
        return;
    }
    put_strip(feet, strip, 0.12, 0.72, irregular, on);
    put_growths(feet, strip, irregular, on);
}

}  // namespace platewright::sheet
