// SPDX-License-Identifier: MIT
// Strokes of the pen and the brush as filled shapes.
#include "compose/brush.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <numbers>
#include <optional>
#include <utility>

#include "compose/chance.h"

namespace platewright {

namespace {

/// Less than anyone sees in print at 1 : 7, in mm on the body.
constexpr double kUnseen = 0.22;

/// Light thrown back by what is round it keeps the very edge of a form free of strokes, in mm.
constexpr double kFreeEdge = 2.2;

/// More than any figure needs; a page of nothing but hatching is of use to nobody.
constexpr std::uint32_t kMostStrokes = 1500;

/// Joins two chains into one closed, smooth-sided shape.
Path between(const std::vector<Point>& there, std::vector<Point> back) {
    std::ranges::reverse(back);
    Path shape = smooth(there);
    const Path home = smooth(back);
    shape.line_to(back.front());
    shape.verbs.insert(shape.verbs.end(), home.verbs.begin() + 1, home.verbs.end());
    shape.points.insert(shape.points.end(), home.points.begin() + 1, home.points.end());
    shape.close();
    return shape;
}

/// How wide a tapered line is at `t` of its length: 12 % at the ends, full from 35 % on.
double taper(double t) {
    const double from_end = std::min(t, 1 - t) / 0.35;
    const double rise = std::clamp(from_end, 0.0, 1.0);
    return 0.12 + 0.88 * rise * (2 - rise);
}

/// At which share of the way from `a` to `b` it first meets the chain.
std::optional<double> first_crossing(Point a, Point b, const std::vector<Point>& chain) {
    const double whole = length(b - a);
    const Point way = unit(b - a);
    std::optional<double> first;
    for (std::size_t i = 1; i < chain.size(); ++i) {
        const auto at = meeting(a, way, chain[i - 1], chain[i]);
        if (at && *at >= 0 && *at <= (first ? *first : whole)) {
            first = at;
        }
    }
    return first ? std::optional(*first / whole) : std::nullopt;
}

struct FormCrossing {
    double near = 0;
    double far = 0;
};

/// Where the straight line from `from` along `way` leaves the outline on either side; false if it
/// does not.
bool cross_form(const std::vector<Point>& outline, Point from, Point way, FormCrossing& found) {
    double ahead = 1e9;
    double behind = -1e9;
    for (std::size_t i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
        const auto x = meeting(from, way, outline[j], outline[i]);
        if (x && *x >= 0) {
            ahead = std::min(ahead, *x);
        } else if (x) {
            behind = std::max(behind, *x);
        }
    }
    found = {behind, ahead};
    return ahead < 1e8 && behind > -1e8;
}

/// One ring's stroke from its dark end. The ring sags by `sag` in the middle, as a parabola; a
/// quadratic curve is one exactly.
struct Ring {
    Point origin;
    Point across;
    Point down;
    double near = 0;
    double far = 0;
    double sag = 0;
    double tilt = 0;

    [[nodiscard]] double height(double x) const {
        const double half = (far - near) / 2;
        const double v = (x - (near + far) / 2) / half;
        return sag * (1 - v * v) + tilt * (x - far);
    }

    [[nodiscard]] Point at(double x) const { return origin + across * x + down * height(x); }
};

/// A stroke of the graver: it swells where the shade is deepest, a little within the dark edge, and
/// is drawn out to a point towards the light. Of one that hardly bends nobody sees that its sides
/// are straight, and a plate has some thousands.
HatchStroke stroke_of(Point begin, Point belly, Point end, double width) {
    constexpr double seen_to_bend = 0.9;
    constexpr double straight = 0.25;
    constexpr double deepest = 0.24;
    // A parabola through the three points.
    const Point pole = belly * 2 - (begin + end) * 0.5;
    const Point core = begin * ((1 - deepest) * (1 - deepest)) +
                       pole * (2 * deepest * (1 - deepest)) + end * (deepest * deepest);
    const Point aside = right_of(unit(end - begin)) * (width / 2);
    const double bend = length(belly - (begin + end) * 0.5);
    if (bend < straight) {
        return {polygon({begin, core - aside, end, core + aside}), begin, belly, end, width};
    }
    if (bend < seen_to_bend) {
        const Point farther = (belly + (pole + end) * 0.5) * 0.5;
        const Point thinner = aside * 0.45;
        return {
            polygon({begin, core - aside, farther - thinner, end, farther + thinner, core + aside}),
            begin,
            belly,
            end,
            width};
    }
    // One cubic on either side, drawn apart so that it is broadest towards its beginning.
    const Point first = begin + (pole - begin) * (2.0 / 3);
    const Point second = end + (pole - end) * (2.0 / 3);
    Path shape;
    shape.move_to(begin);
    shape.cubic_to(first - aside * 2.1, second - aside * 0.2, end);
    shape.cubic_to(second + aside * 0.2, first + aside * 2.1, begin);
    shape.close();
    return {std::move(shape), begin, belly, end, width};
}

HatchStroke ring_stroke(const Ring& ring, double reach, const HatchPen& pen, double width) {
    const double edge = pen.from_light ? ring.near : ring.far;
    const double inward = pen.from_light ? reach : -reach;
    const double free = std::min(0.12, kFreeEdge / std::max(1.0, reach));
    return stroke_of(ring.at(edge + inward * free),
                     ring.at(edge + inward * (0.5 + free / 2)),
                     ring.at(edge + inward),
                     width);
}

/// Rows of hatching swell in from nothing at the ends of a volume; `share`: how far the row lies
/// from the nearer end, of the whole length.
double from_nothing(double share) {
    constexpr double swollen_at = 0.2;
    const double t = std::clamp(share / swollen_at, 0.0, 1.0);
    return 0.3 + 0.7 * eased(t);
}

/// The stretch of a curve from `from` to `to` (shares of its length) as one cubic.
/// Empty if it bends so that one would miss it by more than `tolerance`.
std::optional<Cubic> bow_of(const Curve& along, double from, double to, double tolerance) {
    const double begin = along.length() * from;
    const double span = along.length() * (to - from);
    const Curve::Station a = along.at(begin);
    const Curve::Station b = along.at(begin + span);
    const Cubic bow{a.at, a.at + a.along * (span / 3), b.at - b.along * (span / 3), b.at};
    for (const double t : {0.2, 0.4, 0.6, 0.8}) {
        if (length(bow.at(t) - along.at(begin + span * t).at) > tolerance) {
            return std::nullopt;
        }
    }
    return bow;
}

/// A line as a leaf with two curved sides: a third of the numbers that straight pieces would need,
/// and no corners.
std::optional<Path> leaf(const Curve& along, double peak, double tolerance) {
    const double swell = peak / 2 / 0.75;
    if (const auto bow = bow_of(along, 0, 1, tolerance)) {
        const Point aside = right_of(unit(bow->end - bow->begin)) * swell;
        Path shape;
        shape.move_to(bow->begin);
        shape.cubic_to(bow->first - aside, bow->second - aside, bow->end);
        shape.cubic_to(bow->second + aside, bow->first + aside, bow->begin);
        shape.close();
        return shape;
    }
    const auto half = bow_of(along, 0, 0.5, tolerance);
    const auto rest = bow_of(along, 0.5, 1, tolerance);
    if (!half || !rest) {
        return std::nullopt;
    }
    const Point out = right_of(unit(half->first - half->begin)) * (peak * 0.4);
    const Point wide = right_of(along.at(along.length() / 2).along) * (peak / 2);
    const Point in = right_of(unit(rest->end - rest->second)) * (peak * 0.4);
    Path shape;
    shape.move_to(half->begin);
    shape.cubic_to(half->first - out, half->second - wide, half->end - wide);
    shape.cubic_to(rest->first - wide, rest->second - in, rest->end);
    shape.cubic_to(rest->second + in, rest->first + wide, half->end + wide);
    shape.cubic_to(half->second + wide, half->first + out, half->begin);
    shape.close();
    return shape;
}

}  // namespace

Path tapered(const Curve& along, double peak, double unseen) {
    if (auto shape = leaf(along, peak, unseen * 2)) {
        return *std::move(shape);
    }
    // Where the width changes, and where the line bends: straight pieces between are enough.
    std::vector<double> places{0, 0.12, 0.35, 0.65, 0.88, 1};
    double run = 0;
    const std::vector<Point> bends = along.simplified(unseen);
    for (std::size_t i = 1; i + 1 < bends.size(); ++i) {
        run += length(bends[i] - bends[i - 1]);
        places.push_back(run / along.length());
    }
    std::ranges::sort(places);
    std::vector<Point> left;
    std::vector<Point> right;
    double last = -1;
    for (const double t : places) {
        if (t > 1 || (t - last) * along.length() < 8 * unseen) {
            continue;
        }
        last = t;
        const Curve::Station station = along.at(along.length() * t);
        const Point aside = right_of(station.along) * (peak * taper(t) / 2);
        left.push_back(station.at - aside);
        right.push_back(station.at + aside);
    }
    left.insert(left.end(), right.rbegin(), right.rend());
    return polygon(left);
}

std::optional<HatchStroke> HatchStroke::up_to(const Curve& fold) const {
    constexpr int pieces = 4;
    constexpr double clear = 0.94;
    constexpr double least = 3;
    const Point pole = middle * 2 - (begin + end) * 0.5;
    const auto at = [&](double t) {
        return begin * ((1 - t) * (1 - t)) + pole * (2 * t * (1 - t)) + end * (t * t);
    };
    for (int i = 0; i < pieces; ++i) {
        const double from = static_cast<double>(i) / pieces;
        const double to = static_cast<double>(i + 1) / pieces;
        if (const auto share = first_crossing(at(from), at(to), fold.chain())) {
            const double t = (from + (to - from) * *share) * clear;
            if (length(at(t) - begin) < least) {
                return std::nullopt;
            }
            return stroke_of(begin, at(t / 2), at(t), width);
        }
    }
    return *this;
}

std::pair<double, double> reach_of(double width, Side side) {
    const double right = side == Side::right ? width : side == Side::left ? 0 : width / 2;
    return {right - width, right};
}

Path band(const Curve& along, double width, Side side) {
    const auto [from, to] = reach_of(width, side);
    return between(along.offset(from).simplified(kUnseen), along.offset(to).simplified(kUnseen));
}

namespace {

/// What of a zone lies on the line across its axis.
std::optional<Ring> ring_at(const Zone& zone,
                            const std::vector<Point>& outline,
                            double place,
                            double tilt) {
    const Curve::Station station = zone.axis->at(place);
    Point across = right_of(station.along) * -1;
    if (dot(across, kToLight) > 0) {
        across = across * -1;
    }
    FormCrossing form;
    if (!cross_form(outline, station.at, across, form) || form.far - form.near < 4) {
        return std::nullopt;
    }
    const double wide = form.far - form.near;
    const double sag = std::clamp(1.35 * zone.bulge, -wide / 2.6, wide / 2.6);
    return Ring{station.at, across, station.along, form.near, form.far, sag, tilt};
}

/// How long strokes are, one after the other: long and short by turns, so that the tone ends
/// softly, and every fourth runs on into the half shade.
constexpr std::array kTurns = {1.3, 0.72, 1.05, 0.72};

std::vector<HatchStroke> rings_of(const Zone& zone,
                                  const std::vector<Point>& outline,
                                  const HatchPen& pen) {
    std::vector<HatchStroke> strokes;
    double place = pen.pitch / 2;
    for (std::uint32_t i = 0; place <= zone.axis->length() && i < kMostStrokes; ++i) {
        const double from_end = std::min(place, zone.axis->length() - place);
        const auto ring = ring_at(zone, outline, place, pen.tilt);
        // An engraver's lines crowd where he wants the tone deeper and part again.
        const double step = pen.pitch * (0.7 + 0.8 * drift(i / 6.0 + 0.37 * zone.axis->length()) +
                                         0.16 * scatter(i * 7919U + 5U));
        place += step;
        if (!ring) {
            continue;
        }
        const double turn = kTurns[i % kTurns.size()];
        const double wander = 0.72 + 0.42 * drift(i / 13.0) + 0.1 * scatter(i * 104729U + 3U);
        const double body = from_nothing(from_end / zone.axis->length());
        const double wide = ring->far - ring->near;
        const double reach = std::min(wide * pen.reach, 70.0) * turn * wander * body;
        strokes.push_back(ring_stroke(*ring, reach, pen, pen.width * body));
        // Between lines that stand apart a short fine one deepens the edge.
        const auto between = step > 1.05 * pen.pitch && pen.tilt == 0
                                 ? ring_at(zone, outline, place - step / 2, pen.tilt)
                                 : std::nullopt;
        if (between) {
            strokes.push_back(ring_stroke(*between, reach * 0.34, pen, pen.width * body * 0.7));
        }
    }
    return strokes;
}

/// Where a line hangs: so much of the form's width in from its edge, and from where to where along
/// the axis.
struct Fall {
    double inner = 0;
    double from = 0;
    double to = 0;
};

/// A line that hangs with the cloth: it spreads as the cloth does.
std::optional<HatchStroke> hanging(const Zone& zone,
                                   const std::vector<Point>& outline,
                                   const Fall& fall,
                                   const HatchPen& pen,
                                   double width) {
    std::vector<Point> line;
    constexpr int pieces = 4;
    for (int i = 0; i <= pieces; ++i) {
        const double place = fall.from + (fall.to - fall.from) * i / pieces;
        const auto ring = ring_at(zone, outline, place, 0);
        if (!ring) {
            return std::nullopt;
        }
        const double in = fall.inner * (ring->far - ring->near);
        line.push_back(ring->at(pen.from_light ? ring->near + in : ring->far - in));
    }
    constexpr double unseen = 0.6;
    return HatchStroke{tapered(Curve(line), width, unseen), line.front(), line[2], line.back()};
}

/// Lines that fall with the cloth: long and close beside the dark edge, farther in shorter and
/// finer, and beginning lower, where the cloth has room to fold.
std::vector<HatchStroke> falling(const Zone& zone,
                                 const std::vector<Point>& outline,
                                 const HatchPen& pen) {
    // Hanging lines may reach farther into the light than rings: they are few.
    constexpr double farther = 1.8;
    std::vector<HatchStroke> strokes;
    const double whole = zone.axis->length();
    const auto middle = ring_at(zone, outline, whole / 2, 0);
    const double wide = middle ? middle->far - middle->near : 0;
    const auto columns = static_cast<std::uint32_t>(
        std::min<double>(kMostStrokes, wide * pen.reach * farther / pen.pitch));
    for (std::uint32_t column = 0; column < columns; ++column) {
        const double inner = (column + 0.6) / columns;
        const double place = (column * pen.pitch + 3) / wide;
        double at = whole * (0.05 + 0.3 * inner + 0.16 * scatter(column * 37U + 1U));
        for (std::uint32_t i = 0; at < whole * 0.9; ++i) {
            const std::uint32_t key = column * 7919U + i;
            const double share = (0.62 - 0.36 * inner) * (0.7 + 0.6 * scatter(key + 11U));
            const double end = std::min(at + whole * share, whole * 0.985);
            const double width = pen.width * (1.25 - 0.6 * inner);
            if (auto stroke = hanging(zone, outline, {place, at, end}, pen, width)) {
                strokes.push_back(*std::move(stroke));
            }
            at = end + whole * (0.04 + 0.22 * inner * scatter(key + 5U));
        }
    }
    return strokes;
}

}  // namespace

std::vector<HatchStroke> hatch(const Zone& zone, const HatchPen& pen) {
    const auto chains = outlines(zone.path);
    if (!zone.axis || chains.empty()) {
        return {};
    }
    const std::vector<Point> outline = Curve(chains.front()).simplified(0.8);
    return zone.falls ? falling(zone, outline, pen) : rings_of(zone, outline, pen);
}

namespace {

/// One patch of light: `share` of the breadth of the broadest, and shorter as it is narrower. Empty
/// where the axis leaves the zone.
std::optional<Path> lit_patch(const Zone& zone, const std::vector<Point>& outline, double share) {
    // Light from the upper left falls fullest on what faces it, not on the edge.
    constexpr double centre = 0.36;
    constexpr double half_breadth = 0.21;
    constexpr int places = 6;
    const double skip = 0.03 + 0.12 * (1 - share);
    std::vector<Point> towards;
    std::vector<Point> away;
    for (int i = 0; i < places; ++i) {
        const double t = static_cast<double>(i) / (places - 1);
        const double place = zone.axis->length() * (skip + (1 - 2 * skip) * t);
        const auto ring = ring_at(zone, outline, place, 0);
        if (!ring) {
            continue;
        }
        const double wander = 0.85 + 0.35 * drift(1.1 * i + 15 * (1 - share));
        const double swell = std::sqrt(std::sin(std::numbers::pi * (0.04 + 0.92 * t)));
        const double half = half_breadth * share * wander * swell;
        const double wide = ring->far - ring->near;
        towards.push_back(ring->at(ring->near + wide * (centre - half)));
        away.push_back(ring->at(ring->near + wide * (centre + half)));
    }
    if (towards.size() < 3) {
        return std::nullopt;
    }
    return between(towards, away);
}

}  // namespace

std::vector<Path> glow(const Zone& zone, int steps) {
    const auto chains = outlines(zone.path);
    if (!zone.axis || chains.empty()) {
        return {};
    }
    const std::vector<Point> outline = Curve(chains.front()).simplified(0.8);
    std::vector<Path> patches;
    for (int step = 0; step < steps; ++step) {
        if (auto patch = lit_patch(zone, outline, 1 - static_cast<double>(step) / steps)) {
            patches.push_back(*std::move(patch));
        }
    }
    return patches;
}

}  // namespace platewright
