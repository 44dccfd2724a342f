// SPDX-License-Identifier: MIT
// How flaps are set and where their pockets are cut, from the guides of their free edges.
#include "pattern/pockets.h"

#include <algorithm>
#include <cmath>

#include "pattern/seams.h"
#include "pattern/shapes.h"

namespace platewright {
namespace {

/// How far a guide may lie from the outline whose edge it is, mm.
constexpr double kBeside = 3;
/// The mouth of the breeches' pocket keeps so far within the drawn ends of its welt, mm. Common
/// practice, no source.
constexpr double kWithinDrawnWelt = 8;

bool lies_on(const Chain& outline, Point p) {
    double nearest = 1e9;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point a = outline[i];
        const Point way = outline[(i + 1) % outline.size()] - a;
        const double share = std::clamp(dot(p - a, way) / std::max(1e-9, dot(way, way)), 0.0, 1.0);
        nearest = std::min(nearest, length(a + way * share - p));
    }
    return nearest <= kBeside;
}

/// Whether the guide is the free edge of that part.
bool is_edge_of(const FlatPart& part, const Chain& guide) {
    return !part.outline.empty() && guide.size() > 2 &&
           std::ranges::all_of(guide, [&](Point p) { return lies_on(part.outline.front(), p); });
}

}  // namespace

bool FlapAxes::upright() const {
    return std::abs(along.y) > std::abs(along.x);
}

Point FlapAxes::within(Point p) const {
    return {dot(p - origin, along), dot(p - origin, away)};
}

Point FlapAxes::at(Point place) const {
    return origin + along * place.x + away * place.y;
}

Rect FlapAxes::box(const Chain& outline) const {
    Rect box;
    for (const Point p : outline) {
        box.include(within(p));
    }
    return box;
}

const Chain* free_edge_of(const Flat& flat, const FlatPart& flap) {
    const Chain* own = flat.guide(flap.name + "-edge");
    if (own != nullptr && is_edge_of(flap, *own)) {
        return own;
    }
    for (const auto& [name, guide] : flat.guides) {
        if (name.ends_with("-edge") && is_edge_of(flap, guide)) {
            return &guide;
        }
    }
    return nullptr;
}

FlapAxes axes_of(const Chain& outline, const Chain* free_edge) {
    const Rect box = shapes::box(outline);
    if (free_edge == nullptr) {
        // What is higher than wide is taken to stand at the side.
        const double side = box.centre().x < 0 ? box.left : box.right;
        return box.height() > box.width()
                   ? FlapAxes{{side, box.centre().y}, {0, 1}, {box.centre().x < 0 ? 1.0 : -1.0, 0}}
                   : FlapAxes{{box.centre().x, box.top}, {1, 0}, {0, 1}};
    }
    FlapAxes axes{(free_edge->front() + free_edge->back()) * 0.5,
                  unit(free_edge->back() - free_edge->front()),
                  {}};
    axes.away = right_of(axes.along);
    if (axes.within(box.centre()).y < 0) {
        axes.away = axes.away * -1;
    }
    return axes;
}

std::vector<Mouth> mouths_of(const Flat& flat, std::string_view flap) {
    std::vector<Mouth> mouths;
    for (const FlatPart& part : flat.parts) {
        const Chain* guide = part.name.starts_with(flap) ? free_edge_of(flat, part) : nullptr;
        if (guide != nullptr) {
            const Point along = unit(guide->back() - guide->front()) * kMouthWithinFlap;
            mouths.emplace_back(guide->front() + along, guide->back() - along);
        }
    }
    return mouths;
}

bool is_mouth(const Chain& slit, const Chain& outline) {
    return !lies_on(outline, slit.front()) && !lies_on(outline, slit.back());
}

Point carried(Point place, const Mouth& from, const Mouth& to) {
    const Point before = unit(from.second - from.first);
    const Point after = unit(to.second - to.first);
    const Point away = place - from.first;
    // Turned by the angle between the two.
    const double level = dot(before, after);
    const double across = before.x * after.y - before.y * after.x;
    return to.first + Point{away.x * level - away.y * across, away.x * across + away.y * level};
}

std::optional<Mouth> breeches_mouth(const Flat& front) {
    const Chain* welt = front.guide("breeches-pocket-left");
    if (welt == nullptr || length(welt->back() - welt->front()) <= 2 * kWithinDrawnWelt) {
        return std::nullopt;
    }
    const Point within = unit(welt->back() - welt->front()) * kWithinDrawnWelt;
    return Mouth{welt->front() + within, welt->back() - within};
}

}  // namespace platewright
