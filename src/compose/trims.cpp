// SPDX-License-Identifier: MIT
// Trimmings made along guides: buttons, buttonholes, piping, lace, numbers.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "compose/easel.h"

namespace platewright {

namespace {

/// A row of like buttons, from their shadows to the light on them, painted layer by layer: buttons
/// never overlap, and a file says the colour of a whole layer once.
class ButtonRow {
  public:
    ButtonRow(Easel& easel, Group& into, double radius, double squash)
        : easel_(easel), into_(into), radius_(radius), squash_(squash) {}

    void paint(const std::vector<Curve::Station>& stations, const Inks& metal) {
        if (easel_.line_drawing()) {
            draw_in_line(stations, metal);
            return;
        }
        // A low disc with a dull light: a bright dot would make a bead of it. Under one millimetre
        // printed there is no room for a rim round its face.
        const bool small = radius_ < easel_.printed(7.2);
        layer(stations, 1, {0.20, 0.34}, Fill{kCastShadow, 0.34, false}, std::nullopt);
        const Stroke rim{metal.contour, easel_.weight(0.95), 1, {}};
        const Colour edge = mix(metal.base, metal.shade, 0.46);
        layer(stations, 1, {}, Fill{edge, 1, false}, rim);
        const double face = small ? 0.80 : 0.86;
        layer(stations, face, {face - 0.96, face - 0.96}, {metal.base, 1, false}, std::nullopt);
        if (!small) {
            const Colour hollow = mix(metal.base, metal.shade, 0.2);
            layer(stations, 0.66, {-0.04, -0.05}, Fill{hollow, 1, false}, std::nullopt);
            const Colour raised = mix(metal.base, metal.light, 0.12);
            layer(stations, 0.62, {0.01, 0.02}, Fill{raised, 1, false}, std::nullopt);
        }
        const Colour lit = mix(metal.base, metal.light, 0.42);
        layer(stations, small ? 0.44 : 0.34, {-0.22, -0.26}, Fill{lit, 1, false}, std::nullopt);
    }

    /// As a line engraver does them: white metal plain, yellow metal with a point, black metal
    /// filled.
    void engrave(const std::vector<Curve::Station>& stations, TinctureId tincture) {
        constexpr Colour black{0, 0, 0};
        constexpr Colour white{0xff, 0xff, 0xff};
        const std::string_view name = tinctures()[tincture].name;
        const Fill face{name == "sable" ? black : white, 1, false};
        layer(stations, 1, {}, face, Stroke{black, easel_.weight(1.1), 1, {}});
        if (name != "argent" && name != "sable") {
            layer(stations, 0.3, {}, Fill{black, 1, false}, std::nullopt);
        }
    }

  private:
    /// Domed, with a sharp pen: a ring within the rim would read as an eyelet.
    void draw_in_line(const std::vector<Curve::Station>& stations, const Inks& metal) {
        for (const Curve::Station& station : stations) {
            easel_.keep_clear(station.at, radius_);
        }
        layer(stations, 1, {0.20, 0.30}, Fill{kCastShadow, 0.26, false}, std::nullopt);
        layer(stations, 1, {}, Fill{mix(metal.base, metal.shade, 0.22), 1, false}, pen(1.1));
        layer(stations, 0.74, {-0.10, -0.12}, Fill{metal.base, 1, false}, std::nullopt);
        const Colour lit = mix(metal.base, metal.light, 0.75);
        layer(stations, 0.36, {-0.24, -0.28}, Fill{lit, 1, false}, std::nullopt);
    }

    [[nodiscard]] Stroke pen(double width) const { return {kPenInk, easel_.weight(width), 1, {}}; }

    /// One disc on every button; size and place as shares of the radius.
    void layer(const std::vector<Curve::Station>& stations,
               double size,
               Point place,
               Fill fill,
               const std::optional<Stroke>& stroke) {
        const PathId disc = easel_.disc(radius_ * squash_ * size, radius_ * size);
        for (const Curve::Station& station : stations) {
            into_.children.emplace_back(Shape{disc, station.at + place * radius_, fill, stroke});
        }
    }

    Easel& easel_;
    Group& into_;
    double radius_;
    double squash_;
};

/// How far a hole may run from `from` along `way` before it comes too near the limit.
double free_length(const Curve& limit, Point from, Point way, double wanted, double clear) {
    double nearest = wanted;
    const std::vector<Point>& chain = limit.chain();
    for (std::size_t i = 1; i < chain.size(); ++i) {
        const auto at = meeting(from, way, chain[i - 1], chain[i]);
        if (at && *at > 0) {
            nearest = std::min(nearest, *at - clear);
        }
    }
    return nearest;
}

void paint_hole(Easel& easel, Group& into, Point from, Point to, const Inks& cloth) {
    const Curve line(std::vector<Point>{from, to});
    const Point across = right_of(unit(to - from));
    if (easel.line_drawing()) {
        Path cut;
        cut.move_to(from);
        cut.line_to(to);
        cut.move_to(to - across * 3.2);
        cut.line_to(to + across * 3.2);
        const Colour ink = cloth.dark ? cloth.seam : cloth.contour;
        easel.stroke(into, easel.drawing().add(std::move(cut)), ink, easel.weight(1.35));
        return;
    }
    // A worked hole: a cord of thread each side of the cut, and a bar at the end.
    easel.fill(into, band(line, 3.4, Side::both), mix(cloth.base, cloth.shade, 0.30));
    easel.fill(into, easel.tapered(line, easel.weight(1.2)), cloth.seam);
    easel.fill(into,
               easel.tapered(Curve(std::vector<Point>{to - across * 3, to + across * 3}),
                             easel.weight(1.3)),
               cloth.seam);
}

/// A lace loop with a pointed end, `wide` mm from edge to edge.
void paint_loop(Easel& easel, Group& into, Point from, Point to, const Paint& paint) {
    constexpr double half = 5;
    const Inks inks = easel.inks_of(paint, Surface::braid);
    const Point way = unit(to - from);
    const Point across = right_of(way) * half;
    const Point neck = to - way * (half * 1.1);
    const PathId loop = easel.drawing().add(
        polygon({from - across, neck - across, to, neck + across, from + across}));
    if (!easel.hatched()) {
        easel.fill(into, loop, {1.2, 2}, kCastShadow, 0.25);
    }
    easel.fill(into, loop, {}, paint.colour);
    easel.stroke(into, loop, inks.contour, easel.weight(0.9));
    easel.fill(
        into, easel.tapered(Curve(std::vector<Point>{from, neck}), easel.weight(0.9)), inks.seam);
}

/// Whether more than half of a button lies under something: what is left of it at the edge of a
/// belt would read as a chip.
bool mostly_hidden(const Easel& easel, Point middle, double radius) {
    constexpr int around = 12;
    int under = 0;
    for (int i = 0; i < around; ++i) {
        const double turn = 2 * std::numbers::pi * i / around;
        under +=
            easel.hidden({middle + Point{std::cos(turn), std::sin(turn)} * (radius * 0.7)}) ? 1 : 0;
    }
    return under * 2 > around;
}

}  // namespace

void paint_buttons(Easel& easel, const Detail& detail, const Trimming& where) {
    const Material* metal = easel.uniform().material(*detail.style);
    if (metal == nullptr) {
        return;
    }
    const double radius = detail.size / 2;
    std::vector<Curve::Station> stations =
        detail.curve.stations(easel.count_of(detail), detail.start, detail.end);
    std::erase_if(stations, [&](const Curve::Station& station) {
        return mostly_hidden(easel, station.at, radius);
    });
    ButtonRow row(easel, where.free, radius, detail.squash);
    const Paint paint = easel.paint_of(*metal);
    if (paint.hatch) {
        row.engrave(stations, *paint.hatch);
        return;
    }
    row.paint(stations, easel.inks_of(paint, Surface::metal));
}

std::vector<std::pair<Point, Point>> buttonholes_of(const Easel& easel, const Detail& detail) {
    std::vector<std::pair<Point, Point>> holes;
    for (const Curve::Station& station :
         detail.curve.stations(easel.count_of(detail), detail.start, detail.end)) {
        const Point way = right_of(station.along) * (detail.side == Side::left ? -1 : 1);
        const Point from = station.at + way * detail.gap;
        const double wanted = detail.length;
        const double long_is =
            detail.limit ? free_length(*detail.limit, from, way, wanted, detail.clear) : wanted;
        constexpr double least = 8;
        if (long_is >= least) {
            holes.emplace_back(from, from + way * long_is);
        }
    }
    return holes;
}

void paint_buttonholes(Easel& easel, const Detail& detail, const Trimming& where) {
    const std::string style = detail.style ? easel.uniform().word(*detail.style) : "plain";
    if (style == "none") {
        return;
    }
    const auto lace = detail.cloth.property ? easel.paint_of(detail.cloth) : std::nullopt;
    for (const auto& [from, to] : buttonholes_of(easel, detail)) {
        if (style == "laced" && lace) {
            // A loop begins beneath its button.
            const Point button = from - unit(to - from) * (detail.gap + 2);
            paint_loop(easel, where.clipped, button, to, *lace);
        } else {
            paint_hole(easel, where.clipped, from, to, where.on.inks);
        }
    }
}

void paint_piping(Easel& easel, const Detail& detail, const Trimming& where) {
    const auto paint = easel.paint_of(detail.cloth);
    if (!paint) {
        return;
    }
    const Inks inks = easel.inks_of(*paint, Surface::wool);
    const PathId line = easel.drawing().add(smooth(detail.curve.simplified(0.4)));
    // A cord this thin would be lost at small scales: it is never printed under a quarter
    // millimetre.
    const double width = std::max(detail.width, easel.weight(2.2));
    easel.stroke(where.free, line, inks.contour, width + easel.weight(1.5));
    easel.stroke(where.free, line, paint->colour, width);
    Shape lit{line,
              {-width * 0.2, -width * 0.2},
              std::nullopt,
              Stroke{inks.light, width * 0.3, 0.35, {}}};
    where.free.children.emplace_back(std::move(lit));
}

namespace {

/// Round a corner lace is folded over and sewn down aslant.
void paint_mitres(Easel& easel, const Detail& detail, Group& into, Colour ink) {
    constexpr double sharp = 0.5;
    const auto [from, to] = reach_of(detail.width, detail.side);
    Path seams;
    for (const Curve::Corner& corner : detail.curve.corners(sharp)) {
        seams.move_to(corner.at + corner.mitre * from);
        seams.line_to(corner.at + corner.mitre * to);
    }
    if (!seams.empty()) {
        easel.stroke(into, easel.drawing().add(std::move(seams)), ink, easel.weight(0.7));
    }
}

}  // namespace

void paint_lace(Easel& easel, const Detail& detail, const Trimming& where) {
    const auto paint = easel.paint_of(detail.cloth);
    if (!paint) {
        return;
    }
    const bool outlined = !detail.path.empty() && detail.path.verbs.back() == Path::Verb::close;
    if (outlined) {
        paint_applied(easel, detail.path, *paint, where, LineWeight::fine, Surface::braid);
        return;
    }
    const Path lace = band(detail.curve, detail.width, detail.side);
    paint_applied(easel, lace, *paint, where, LineWeight::fine, Surface::braid);
    paint_mitres(easel, detail, where.clipped, easel.inks_of(*paint, Surface::braid).seam);
}

namespace {

/// How far the middle of the lettering's ink stands above its baseline, in ems: old-style figures
/// stand on it, rise above it or hang below it. The heights are those of EB Garamond.
double ink_middle(std::string_view words) {
    constexpr double small_top = 0.40;
    constexpr double tall_top = 0.65;
    constexpr double hanging_foot = -0.24;
    double top = 0;
    double foot = 0;
    for (const char c : words) {
        const bool figure = c >= '0' && c <= '9';
        const bool hangs = std::string_view("34579").find(c) != std::string_view::npos;
        const bool tall = !figure || c == '6' || c == '8';
        top = std::max(top, tall ? tall_top : small_top);
        foot = std::min(foot, hangs ? hanging_foot : 0);
    }
    return (top + foot) / 2;
}

}  // namespace

void paint_number(Easel& easel, const Detail& detail, const Trimming& where) {
    const std::string words = easel.uniform().word(property_id("buttons.number"));
    if (words.empty() || words == "none") {
        return;
    }
    const Curve::Station left = detail.curve.at(0);
    const double room = detail.curve.length();
    // Figures of the face are half as wide as the em; more than two must be smaller.
    const double em =
        std::min(detail.size * 1.45, room / (0.5 * static_cast<double>(words.size())));
    // The line is the baseline of capitals; other lettering is moved so that its ink is centred.
    const double raise = (ink_middle("A") - ink_middle(words)) * em;
    const Point middle = left.at + left.along * (room / 2) - right_of(left.along) * raise;
    const Inks& metal = where.on.inks;
    const auto strike = [&](Point shift, Colour colour) {
        Text text;
        text.words = words;
        text.at = middle + shift;
        text.size = em;
        text.face = Face::bold;
        text.align = Align::middle;
        text.colour = colour;
        where.clipped.children.emplace_back(std::move(text));
    };
    const double step = em * 0.034;
    if (easel.hatched()) {
        strike({0, 0}, metal.contour);
        return;
    }
    if (step < easel.weight(2)) {
        // Too small for a relief to be read.
        strike({step, step * 1.2}, mix(metal.base, metal.light, 0.7));
        strike({0, 0}, metal.contour);
        return;
    }
    // Struck up from behind, not cut in: a low shadow thrown, an outline finer than the thinnest
    // stroke of a figure, an edge that catches the light.
    strike({step * 1.3, step * 1.5}, mix(metal.base, metal.shade, 0.8));
    for (const Point aside : {Point{1, 1}, Point{1, -1}, Point{-1, 1}, Point{-1, -1}}) {
        strike(aside * (step * 0.55), metal.contour);
    }
    strike({-step * 0.15, -step * 0.15}, metal.light);
    strike({step * 0.25, step * 0.25}, mix(metal.base, metal.shade, 0.12));
}

}  // namespace platewright
