// SPDX-License-Identifier: MIT
// Rank marks: bars and chevrons on the band between two edges of a sleeve.
#include <algorithm>
#include <cmath>
#include <variant>

#include "compose/easel.h"

namespace platewright {

namespace {

/// Rank marks as the uniform has them; lengths in mm.
struct Marks {
    std::string shape;
    int number = 0;
    double width = 12;
    double spacing = 10;
    /// Cloth left free below the lowest.
    double height = 10;
    /// Where chevrons have their point, from the inner seam (0) to the outer (1).
    double apex = 0.5;
};

/// What a group of properties says of one matter; nothing where the table has no such row.
const Value* said(const Uniform& uniform, const std::string& group, const char* name) {
    const auto id = find_property(group + "." + name);
    return id ? &uniform.value(*id) : nullptr;
}

std::string word(const Uniform& uniform,
                 const std::string& group,
                 const char* name,
                 const char* otherwise) {
    const auto id = find_property(group + "." + name);
    return id ? uniform.word(*id) : otherwise;
}

double millimetres(const Uniform& uniform,
                   const std::string& group,
                   const char* name,
                   double otherwise) {
    const Value* value = said(uniform, group, name);
    const auto* measure = value == nullptr ? nullptr : std::get_if<Measure>(value);
    return measure != nullptr ? measure->mm : otherwise;
}

/// How much higher the mark stands at `u` (0 inner end, 1 outer end) of a band `wide` mm across.
/// Seen from before or behind, a chevron's one limb runs on round the arm.
double rise(const Marks& marks, double u, double wide) {
    if (marks.shape == "slanted") {
        return (u - 0.5) * wide * 0.55;
    }
    const double from_point = std::abs(u - marks.apex) / marks.apex;
    if (marks.shape == "chevrons-up") {
        return (1 - from_point) * wide * 0.38;
    }
    if (marks.shape == "chevrons-down") {
        return from_point * wide * 0.38;
    }
    return 0;
}

/// A mark as wide as it is ordered, measured square to itself, takes so much more of the sleeve's
/// length where it slants.
double stretch(const Marks& marks) {
    return std::hypot(1, (rise(marks, marks.apex, 1) - rise(marks, 0, 1)) / marks.apex);
}

/// The line `height` mm above the lower edge, bent as the marks are.
std::vector<Point> level(const Detail& band, const Marks& marks, double height) {
    constexpr int steps = 6;
    // A little beyond both seams, so that the sleeve's outline cuts the ends.
    constexpr double beyond = 0.03;
    std::vector<Point> line;
    const double wide = band.lower.length();
    for (int i = -steps; i <= steps; ++i) {
        const double limb = i < 0 ? marks.apex + beyond : 1 + beyond - marks.apex;
        const double u = marks.apex + limb * i / steps;
        const Point low = band.lower.at(wide * u).at;
        const Point high = band.upper.at(band.upper.length() * u).at;
        const double full = std::max(1.0, length(high - low));
        line.push_back(low + (high - low) * ((height + rise(marks, u, wide)) / full));
    }
    return line;
}

}  // namespace

std::vector<MarkBand> marks_on(const Uniform& uniform, const Detail& detail) {
    Marks marks;
    marks.apex = detail.apex;
    marks.shape = word(uniform, detail.group, "shape", "bars");
    marks.number = uniform.count(property_id(detail.group + ".number"));
    marks.width = millimetres(uniform, detail.group, "width", 12);
    marks.spacing = millimetres(uniform, detail.group, "spacing", marks.width * 0.8);
    marks.height = millimetres(uniform, detail.group, "height", marks.spacing);
    const std::string sleeves = word(uniform, detail.group, "sleeves", "both");
    const bool this_sleeve =
        sleeves == "both" || sleeves == (detail.side == Side::left ? "left" : "right");
    const Material* cloth = uniform.material(property_id(detail.group + ".cloth"));
    std::vector<MarkBand> bands;
    if (marks.shape == "none" || !this_sleeve || cloth == nullptr) {
        return bands;
    }
    // A slanted mark falls below its middle; it starts so much higher.
    const double start = marks.height - std::min({0.0,
                                                  rise(marks, 0, detail.lower.length()),
                                                  rise(marks, 1, detail.lower.length())});
    const double along = stretch(marks);
    for (int i = 0; i < marks.number; ++i) {
        const double from = start + i * (marks.width + marks.spacing) * along;
        bands.push_back({level(detail, marks, from),
                         level(detail, marks, from + marks.width * along / 2),
                         level(detail, marks, from + marks.width * along),
                         marks.width});
    }
    return bands;
}

void paint_marks(Easel& easel, const Detail& detail, const Trimming& where) {
    const Uniform& uniform = easel.uniform();
    const std::vector<MarkBand> bands = marks_on(uniform, detail);
    if (bands.empty()) {
        return;
    }
    const Material* cloth = uniform.material(property_id(detail.group + ".cloth"));
    const Paint paint = easel.paint_of(*cloth);
    const Surface surface = cloth->metal ? Surface::metal : Surface::braid;
    const Inks inks = easel.inks_of(paint, surface);
    // White tape on a white coat is known by its edge and its shadow alone.
    const bool alike = std::abs(inks.lightness - where.on.inks.lightness) < 0.12;
    for (const MarkBand& band : bands) {
        std::vector<Point> corners = band.lower;
        corners.insert(corners.end(), band.upper.rbegin(), band.upper.rend());
        const Path tape = polygon(corners);
        if (!easel.hatched()) {
            easel.fill(where.clipped,
                       easel.drawing().add(clockwise(tape)),
                       kToLight * -easel.weight(alike ? 4.0 : 2.0) + Point{0, easel.weight(1.6)},
                       where.on.inks.shade,
                       alike ? 0.42 : 0.28);
        }
        paint_applied(
            easel, tape, paint, where, alike ? LineWeight::medium : LineWeight::fine, surface);
        if (band.width >= 6) {
            Shape weave{
                easel.drawing().add(smooth(band.middle)),
                {},
                std::nullopt,
                Stroke{inks.seam, easel.weight(0.7), 0.7, {easel.weight(2.4), easel.weight(1.6)}}};
            where.clipped.children.emplace_back(std::move(weave));
        }
    }
}

}  // namespace platewright
