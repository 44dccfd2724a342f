// SPDX-License-Identifier: MIT
// An etched strip of ground under the feet: level strokes of the graver on a thin wash, with a few
// stones and tufts of grass.
#include "layout/ground.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <utility>

#include "layout/style.h"

namespace platewright::sheet {
namespace {

constexpr Colour kEarth{0x97, 0x80, 0x58};
constexpr Colour kGrass{0x7c, 0x83, 0x55};
constexpr Colour kStone{0xdc, 0xd0, 0xb6};
constexpr Colour kGraver{0x54, 0x46, 0x35};
/// The lowest part of a figure, as a share of its height, that counts as its feet.
constexpr double kFeet = 0.04;
constexpr double kTurn = 6.283185307179586;

/// Irregular but always the same numbers from 0 to 1 for the same name (the MINSTD generator).
class Irregular {
  public:
    explicit Irregular(std::string_view name) {
        for (const char letter : name) {
            state_ = (state_ * 31 + static_cast<unsigned char>(letter)) % 2147483646 + 1;
        }
        next();
    }

    double next() {
        state_ = state_ * 48271 % 2147483647;
        return static_cast<double>(state_) / 2147483647.0;
    }

    double between(double low, double high) { return low + (high - low) * next(); }

  private:
    std::uint64_t state_ = 1784;
};

/// The whole strip: from end to end, and the line the men stand on. `mm`: paper for 1 mm of body.
struct Strip {
    double left = 0;
    double right = 0;
    double sole = 0;
    double lowest = 0;
    double mm = 1;
    /// From one row of strokes to the next, mm of body: the more men on a sheet, the smaller they
    /// are; and how much stronger each stroke is for it.
    double pitch = 4.3;
    double weight = 1;
};

/// A bell of height 1 about 0.
double bell(double off) {
    return std::exp(-off * off);
}

/// A smooth closed line through all points.
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

/// A colourist's thin wash along the strip, drawn out to both ends; `size` of the whole.
Path wash(const Strip& strip, double size, Irregular& irregular) {
    constexpr int corners = 22;
    const double mm = strip.mm;
    const Point centre{(strip.left + strip.right) / 2, strip.sole - 20 * mm};
    std::vector<Point> p;
    for (int i = 0; i < corners; ++i) {
        const double turn = kTurn * i / corners;
        const double far = irregular.between(0.82, 1.06) * size;
        p.push_back(centre + Point{std::cos(turn) * (strip.right - strip.left) / 2 * far,
                                   std::sin(turn) * 40 * mm * far});
    }
    return through(p);
}

/// How dark the ground is there, 0 to 1: darkest beneath and between the feet of each man and
/// towards the lower right of them, almost light between the men, nothing at the ends of the strip.
double tone_at(Point at, const std::vector<Footing>& feet, const Strip& strip) {
    const double mm = strip.mm;
    double tone = 0.17;
    for (const Footing& foot : feet) {
        const double middle = (foot.left + foot.right) / 2;
        const double half = (foot.right - foot.left) / 2;
        const double off = at.x - middle - 18 * mm;
        const double reach = half + (off > 0 ? 120 : 75) * mm;
        const double down = (at.y - foot.sole + (16 - 0.05 * off / mm) * mm) / mm;
        tone += 0.75 * bell(off / reach) * bell(down / 30);
    }
    const double end = std::min(at.x - strip.left, strip.right - at.x) / (150 * mm);
    const double level = (at.y - strip.sole + 20 * mm) / (46 * mm);
    return std::clamp(tone, 0.0, 1.0) * std::clamp(end, 0.0, 1.0) *
           std::clamp(1.5 - std::abs(level), 0.0, 1.0);
}

/// A stroke of the graver, hardly bowed: it swells where it is pressed, nearer its one end or the
/// other. So fine, it needs no curves.
void add_cut(Path& path, Point from, Point to, double thickness, double bow) {
    const Point along = to - from;
    const Point swell{0, thickness / 2};
    path.move_to(from);
    path.line_to(from + along * 0.35 + Point{0, bow} - swell);
    path.line_to(to);
    path.line_to(from + along * 0.6 + Point{0, bow} + swell);
    path.close();
}

/// All level strokes: one row under the other, wider apart towards the eye, each stroke as long and
/// as strong as the ground is dark there.
Path cut_rows(const std::vector<Footing>& feet, const Strip& strip, Irregular& irregular) {
    const double mm = strip.mm;
    Path path;
    double pitch = strip.pitch;
    for (double down = -58; strip.sole + down * mm < strip.lowest; down += pitch) {
        pitch *= 1.035;
        const double y = strip.sole + down * mm;
        double x = strip.left + irregular.between(0, 90) * mm;
        while (x < strip.right) {
            const double tone = tone_at({x + 45 * mm, y}, feet, strip);
            const double length = irregular.between(40, 90) * (0.5 + 1.5 * tone) * mm;
            const double end = std::min(x + length, strip.right);
            const double drawn = 2.2 * tone - 0.2;
            if (irregular.next() < drawn) {
                const double lift = irregular.between(-0.9, 0.9) * mm;
                const double thickness =
                    (0.65 + 2.1 * tone) * strip.weight * irregular.between(0.8, 1.15) * mm;
                // One after the other: compilers take arguments in what order they like.
                const double bow = irregular.between(-0.6, 1.0) * mm;
                const double fall = irregular.between(-0.7, 0.9) * mm;
                add_cut(path, {x, y + lift}, {end, y + lift + fall}, thickness, bow);
            }
            x = end + irregular.between(3, 8 + 46 * (1 - tone) * (1 - tone)) * mm;
        }
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
        const double swell = std::sqrt(std::max(std::sin(std::acos(-1.0) * along), 0.0));
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

/// The stretches of such an edge that rest on the ground, each of one foot, without the sides that
/// rise from it.
std::vector<std::vector<Point>> resting(const std::vector<Point>& edge, double mm) {
    const double steep = 12 * mm;
    std::vector<std::vector<Point>> stretches;
    for (std::size_t i = 0; i < edge.size(); ++i) {
        if (i == 0 || std::abs(edge[i].y - edge[i - 1].y) > steep) {
            stretches.emplace_back();
        }
        stretches.back().push_back(edge[i]);
    }
    return stretches;
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
    constexpr std::size_t least = 4;
    Path slivers;
    Path strokes;
    for (const Footing& foot : feet) {
        for (const std::vector<Point>& all : foot.edges) {
            for (const std::vector<Point>& edge : resting(all, strip.mm)) {
                if (edge.size() >= least) {
                    const Cast cast = cast_of(edge, strip);
                    add_sliver(slivers, cast);
                    cut_cast(strokes, cast, strip.mm, irregular);
                    on.fill(close_shadow(edge, 7, strip.mm, strip.right), kGraver, 0.6);
                }
            }
        }
    }
    if (!slivers.empty()) {
        on.fill(std::move(slivers), kGraver, 0.16);
        on.fill(std::move(strokes), kGraver, 0.8);
    }
}

/// A tuft of grass, its blades parting from one root; green is the colourist's.
void put_tuft(Point root, double mm, Irregular& irregular, Layer& on) {
    constexpr int blades = 7;
    const double height = irregular.between(26, 40) * mm;
    const double lean = irregular.between(-0.15, 0.3);
    Path path;
    for (int i = 0; i < blades; ++i) {
        const double side = 2.0 * i / (blades - 1) - 1;
        const double tall = height * (1 - 0.5 * std::abs(side)) * irregular.between(0.75, 1.1);
        const Point foot = root + Point{side * 7 * mm, 0};
        const Point tip = foot + Point{(0.75 * side + lean) * tall, -tall};
        const Point stem = foot + Point{0.12 * side * tall, -0.6 * tall};
        const double half = 1.1 * mm;
        path.move_to(foot - Point{half, 0});
        path.cubic_to(stem - Point{half, 0}, stem - Point{half, 0.2 * tall}, tip);
        path.cubic_to(
            stem + Point{half, -0.2 * tall}, stem + Point{half, 0}, foot + Point{half, 0});
        path.close();
    }
    for (int i = 0; i < 3; ++i) {
        const Point from = root + Point{(2.0 * i - 12) * mm, (1.5 + 3.2 * i) * mm};
        add_cut(path, from, from + Point{(44 - 7 * i) * mm, 0}, 2.2 * mm, 0);
    }
    on.fill(through({root + Point{-11 * mm, 1 * mm},
                     root + Point{-10 * mm, -0.45 * height},
                     root + Point{lean * height, -0.75 * height},
                     root + Point{12 * mm, -0.45 * height},
                     root + Point{14 * mm, 2 * mm}}),
            kGrass,
            0.3);
    on.fill(std::move(path), kGraver, 0.85);
}

/// A stone half in the earth, with its shaded side and what it casts to the right.
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

/// What lies and grows between `left` and `right`, if there is room: a tuft or a stone with a
/// smaller one by it.
void put_growth(
    double left, double right, bool tuft, const Strip& strip, Irregular& irregular, Layer& on) {
    const double mm = strip.mm;
    if (right - left < 70 * mm) {
        return;
    }
    const double x = irregular.between(left + 25 * mm, right - 45 * mm);
    const double y = strip.sole + irregular.between(-34, -8) * mm;
    if (tuft) {
        put_tuft({x, y}, mm, irregular, on);
    } else {
        put_stone({x, y}, mm, irregular, on);
    }
    const double side = irregular.next() < 0.5 ? -1 : 1;
    const double beside = x + side * irregular.between(30, 60) * mm;
    if (beside > left && beside < right - 20 * mm && irregular.next() < 0.7) {
        put_stone({beside, y + irregular.between(8, 20) * mm}, 0.6 * mm, irregular, on);
    }
}

/// The stretches beside and between the men, not nearer than what their feet cast.
void put_growths(const std::vector<Footing>& feet,
                 const Strip& strip,
                 Irregular& irregular,
                 Layer& on) {
    const double mm = strip.mm;
    bool tuft = irregular.next() < 0.6;
    double left = strip.left + 50 * mm;
    for (const Footing& foot : feet) {
        put_growth(left, foot.left - 20 * mm, tuft, strip, irregular, on);
        tuft = !tuft;
        left = foot.right + 60 * mm;
    }
    put_growth(left, strip.right - 50 * mm, tuft, strip, irregular, on);
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
    strip.pitch = feet.size() > 2 ? 5.2 : 4.3;
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
    Strip strip{feet.left - 90 * factor, feet.right + 130 * factor, feet.sole, 0, factor};
    strip.lowest = feet.sole + 14 * factor;
    strip.pitch = 7.5;
    strip.weight = 1.6;
    on.fill(cut_rows({feet}, strip, irregular), kGraver, 0.6);
    put_shadows({feet}, strip, irregular, on);
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
    for (const double size : {1.0, 0.8}) {
        on.fill(wash(strip, size, irregular), kEarth, 0.09);
    }
    on.fill(cut_rows(feet, strip, irregular), kGraver, 0.72);
    put_shadows(feet, strip, irregular, on);
    put_growths(feet, strip, irregular, on);
}

}  // namespace platewright::sheet
