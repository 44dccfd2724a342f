// SPDX-License-Identifier: MIT
// A garment laid flat as plain data, and its shapes moved for another man.
#include "compose/flat.h"

#include <algorithm>
#include <optional>
#include <variant>

#include "compose/easel.h"
#include "compose/fitting.h"
#include "compose/template.h"

namespace platewright {
namespace {

/// What the uniform says of one cloth; nothing where it is not worn. What an ornament is made of is
/// said where it is worn.
std::optional<Material> material_of(const Uniform& uniform, const ClothSource& cloth) {
    if (!cloth.property) {
        return Material{"", cloth.fixed, false, ""};
    }
    const Material* material = uniform.material(*cloth.property);
    return material != nullptr ? std::optional(*material) : std::nullopt;
}

std::vector<Point> places_of(const Easel& easel, const Detail& detail) {
    std::vector<Point> places;
    for (const Curve::Station& station :
         detail.curve.stations(easel.count_of(detail), detail.start, detail.end)) {
        places.push_back(station.at);
    }
    return places;
}

/// The metal of buttons, the lace of loops.
std::optional<Material> style_material(const Uniform& uniform, const Detail& detail) {
    const Material* material = detail.style ? uniform.material(*detail.style) : nullptr;
    return material != nullptr ? std::optional(*material) : std::nullopt;
}

std::optional<FlatRow> row_of(const Uniform& uniform, const Easel& easel, const Detail& detail) {
    FlatRow row;
    row.line = detail.curve.chain();
    switch (detail.kind) {
        case DetailKind::buttons: {
            row.kind = FlatRow::Kind::buttons;
            row.at = places_of(easel, detail);
            row.size = detail.size;
            row.material = style_material(uniform, detail).value_or(Material{});
            return row.at.empty() ? std::nullopt : std::optional(row);
        }
        case DetailKind::buttonholes: {
            const bool laced = detail.style && uniform.word(*detail.style) == "laced";
            row.kind = laced ? FlatRow::Kind::loops : FlatRow::Kind::holes;
            row.at = places_of(easel, detail);
            row.size = detail.length;
            row.material = material_of(uniform, detail.cloth).value_or(Material{});
            return row.at.empty() ? std::nullopt : std::optional(row);
        }
        case DetailKind::piping:
        case DetailKind::lace: {
            const auto material = material_of(uniform, detail.cloth);
            row.kind =
                detail.kind == DetailKind::piping ? FlatRow::Kind::piping : FlatRow::Kind::lace;
            row.size = detail.width;
            row.material = material.value_or(Material{});
            return material ? std::optional(row) : std::nullopt;
        }
        case DetailKind::seam:
        case DetailKind::crease:
        case DetailKind::line:
        case DetailKind::stitch:
        case DetailKind::fold:
        case DetailKind::tone:
        case DetailKind::light:
        case DetailKind::patch:
        case DetailKind::marks:
        case DetailKind::number:
        case DetailKind::fringe:
        case DetailKind::ornament:
            break;
    }
    return std::nullopt;
}

void add_marks(const Uniform& uniform, const Detail& detail, Flat& flat) {
    FlatMarks marks{detail.group, detail.side == Side::left, detail.lower.chain(), {}};
    for (const MarkBand& band : marks_on(uniform, detail)) {
        marks.bands.push_back({band.lower, band.upper, band.width});
    }
    if (!marks.bands.empty()) {
        flat.marks.push_back(std::move(marks));
    }
}

std::optional<Measure> stated_measure(const Uniform& uniform, std::string_view key) {
    const auto* measure = std::get_if<Measure>(&uniform.value(property_id(key)));
    return measure != nullptr ? std::optional(*measure) : std::nullopt;
}

Path moved_path(const Path& path, std::string_view name, const Moving& moving) {
    Path copy = path;
    for (Point& p : copy.points) {
        p = moving(name, p);
    }
    return copy;
}

Curve moved_curve(const Curve& curve, std::string_view name, const Moving& moving) {
    Chain chain = curve.chain();
    for (Point& p : chain) {
        p = moving(name, p);
    }
    return chain.empty() ? Curve() : Curve(chain);
}

}  // namespace

void move_detail(Detail& detail, std::string_view name, const Moving& moving) {
    detail.path = moved_path(detail.path, name, moving);
    detail.curve = moved_curve(detail.curve, name, moving);
    detail.lower = moved_curve(detail.lower, name, moving);
    detail.upper = moved_curve(detail.upper, name, moving);
    if (detail.limit) {
        detail.limit = moved_curve(*detail.limit, name, moving);
    }
}

void move_part(Part& part, const Moving& moving) {
    part.shape = moved_path(part.shape, part.name, moving);
    part.edge = moved_path(part.edge, part.name, moving);
    for (Detail& detail : part.details) {
        move_detail(detail, part.name, moving);
    }
}

StatedMeasures stated_by(const Uniform& uniform) {
    return {stated_measure(uniform, "lapels.width"),
            stated_measure(uniform, "cuffs.height"),
            stated_measure(uniform, "collar.height")};
}

double between(std::span<const Knot> knots, double at) {
    std::size_t i = 1;
    while (i + 1 < knots.size() && at > knots[i].from) {
        ++i;
    }
    const Knot& a = knots[i - 1];
    const Knot& b = knots[i];
    return a.to + (b.to - a.to) * (at - a.from) / (b.from - a.from);
}

const FlatPart* Flat::part(std::string_view name_begins) const {
    const auto found = std::ranges::find_if(
        parts, [&](const FlatPart& part) { return part.name.starts_with(name_begins); });
    return found == parts.end() ? nullptr : &*found;
}

const Chain* Flat::guide(const std::string& name) const {
    const auto found = guides.find(name);
    return found == guides.end() ? nullptr : &found->second;
}

Flat flat_of(const Uniform& uniform, const Template& view) {
    const Easel easel(uniform, 1, true, Ink::colour);
    Flat flat;
    flat.title = view.title;
    for (const auto& [name, guide] : view.guides) {
        flat.guides[name] = guide.chain();
    }
    for (const Part& part : view.parts) {
        const auto cloth = material_of(uniform, part.cloth);
        if (!cloth || !easel.holds(part.when)) {
            continue;
        }
        const std::string key =
            part.cloth.property ? std::string(properties()[*part.cloth.property].key) : "";
        FlatPart made{part.name, key, *cloth, outlines(part.shape), {}};
        for (const Detail& detail : part.details) {
            if (detail.kind == DetailKind::marks && easel.holds(detail.when)) {
                add_marks(uniform, detail, flat);
            }
            auto row = easel.holds(detail.when) ? row_of(uniform, easel, detail) : std::nullopt;
            if (row) {
                made.rows.push_back(std::move(*row));
            }
        }
        flat.parts.push_back(std::move(made));
    }
    return flat;
}

std::shared_ptr<const Template> moved(const Template& view, const Moving& moving) {
    auto copy = std::make_shared<Template>(view);
    for (auto& [name, guide] : copy->guides) {
        guide = moved_curve(guide, name, moving);
    }
    for (auto& [name, anchor] : copy->anchors) {
        anchor.at = moving(name, anchor.at);
    }
    for (Part& part : copy->parts) {
        move_part(part, moving);
    }
    return copy;
}

double length_of(const Chain& chain) {
    double sum = 0;
    for (std::size_t i = 1; i < chain.size(); ++i) {
        sum += length(chain[i] - chain[i - 1]);
    }
    return sum;
}

}  // namespace platewright
