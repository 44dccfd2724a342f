// SPDX-License-Identifier: MIT
// Ornaments: small templates of their own, set down on a figure wherever one is worn.
#include "compose/ornament.h"

#include <algorithm>

#include "compose/svg_shapes.h"

namespace platewright {

namespace {

/// Lines of an ornament made very small would be lost, of one made large would be ropes.
constexpr double kThinnest = 0.7;
constexpr double kThickest = 1.6;

/// From the ornament's own frame, whose top faces up the page, to its place.
Affine to_place(const Rect& frame, const OrnamentPlace& place) {
    const double scale = place.size / std::max(1.0, frame.height());
    const Point up = place.facing == Point{} ? Point{0, -1} : unit(place.facing);
    const Point across = right_of(up);
    // The frame's right goes along `across`, its top along `up`.
    const Affine turn{across.x * scale, across.y * scale, -up.x * scale, -up.y * scale, 0, 0};
    const Point middle = frame.centre();
    return Affine::translation(place.at.x, place.at.y) * turn *
           Affine::translation(-middle.x, -middle.y);
}

Detail moved(const Detail& detail, const Affine& by, double scale) {
    Detail copy = detail;
    copy.path = detail.path.transformed(by);
    if (!copy.path.empty()) {
        copy.curve = Curve(copy.path);
    }
    copy.width = detail.width * std::clamp(scale, kThinnest, kThickest);
    copy.size = detail.size * scale;
    return copy;
}

/// What an ornament may be drawn with: nothing that follows guides or holds other ornaments.
bool of_itself(DetailKind kind) {
    return kind <= DetailKind::patch || kind == DetailKind::number;
}

std::vector<std::string> with_suffix(std::vector<std::string> names, const std::string& suffix) {
    for (std::string& name : names) {
        name += suffix;
    }
    return names;
}

}  // namespace

std::vector<Part> ornament_at(const Template& ornament,
                              const OrnamentPlace& place,
                              const std::string& suffix) {
    const Affine by = to_place(ornament.frame, place);
    const double scale = place.size / std::max(1.0, ornament.frame.height());
    std::vector<Part> parts;
    for (const Part& part : ornament.parts) {
        Part copy = part;
        copy.name += suffix;
        copy.shape = clockwise(part.shape.transformed(by));
        copy.edge = part.edge.transformed(by);
        copy.zones.clear();
        copy.shadow = part.shadow * scale;
        copy.on = with_suffix(part.on, suffix);
        copy.clip = with_suffix(part.clip, suffix);
        copy.details.clear();
        for (const Detail& detail : part.details) {
            if (of_itself(detail.kind)) {
                copy.details.push_back(moved(detail, by, scale));
            }
        }
        parts.push_back(std::move(copy));
    }
    return parts;
}

void sew_on(std::vector<Part>& parts) {
    constexpr double laid_flat = 0.5;
    constexpr double deep = 0.82;
    for (Part& part : parts) {
        if (!part.cloth.given) {
            continue;
        }
        part.flat = true;
        part.shadow = 0;
        // Petals turned to the light and away from it lie in one plane; only what is seen through
        // the work stays dark.
        if (part.cloth.shade > deep) {
            part.cloth.shade = 1;
        }
        std::erase_if(part.details,
                      [](const Detail& detail) { return detail.kind == DetailKind::light; });
        for (Detail& detail : part.details) {
            if (detail.kind == DetailKind::tone) {
                detail.strength *= laid_flat;
            } else if (detail.kind <= DetailKind::line) {
                detail.kind = DetailKind::stitch;
            }
        }
    }
}

Group shadow_of_sewn(Easel& easel, const std::vector<Part>& parts, double size) {
    constexpr double strength = 0.3;
    Group group;
    group.name = "shadow";
    group.step = true;
    if (!easel.hatched()) {
        for (const Part& part : parts) {
            easel.fill(group,
                       easel.drawing().add(part.shape),
                       Point{0.016, 0.032} * size,
                       kCastShadow,
                       strength);
        }
    }
    return group;
}

Group overcast(Easel& easel, const Path& shape, const Paint& paint, double size) {
    const double reach = 0.042 * size;
    const double apart = std::max(size / 36, easel.weight(1.6));
    const double width = std::max(size / 150, easel.weight(0.45));
    // One thread for the whole, also where the cloth beneath is another.
    const Inks inks = easel.inks_of(paint, Surface::wool);
    constexpr double light = 0.8;
    const bool soft = inks.dark || inks.lightness > light;
    const Colour thread = soft ? inks.seam : inks.contour;
    Path stitches;
    for (const std::vector<Point>& outline : outlines(shape)) {
        const Curve edge(outline);
        const int number = static_cast<int>(edge.length() / apart);
        for (const Curve::Station& station : edge.stations(number, 0, apart)) {
            // A little aslant, as the needle goes on.
            const Point inward = right_of(station.along) + station.along * 0.3;
            stitches.move_to(station.at);
            stitches.line_to(station.at + inward * reach);
        }
    }
    Group group;
    group.name = "overcast";
    group.step = true;
    if (!stitches.empty()) {
        group.clip.push_back(easel.drawing().add(shape));
        easel.stroke(group, easel.drawing().add(stitches), thread, width, 0.75);
    }
    return group;
}

std::vector<OrnamentPlace> ornament_places(const Detail& detail, int number) {
    if (number <= 1) {
        const Point at = detail.path.empty() ? detail.curve.at(0).at : detail.path.points.front();
        const Curve::Station end = detail.curve.at(detail.curve.length());
        return {{at, number == 1 && !detail.count_from ? end.at - at : Point{0, -1}, detail.size}};
    }
    std::vector<OrnamentPlace> places;
    for (const Curve::Station& station : detail.curve.stations(number, detail.start, detail.end)) {
        places.push_back({station.at, {0, -1}, detail.size});
    }
    return places;
}

}  // namespace platewright
