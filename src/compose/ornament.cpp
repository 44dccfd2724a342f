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
