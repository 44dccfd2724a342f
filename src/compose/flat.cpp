// SPDX-License-Identifier: MIT
// A garment laid flat as plain data, and its shapes moved for another man.
#include "compose/flat.h"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>
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

/// A hole is drawn from the rim of its button on; it is worked a little beyond the button's middle.
void reach_buttons(FlatRow& row, const Detail& detail) {
    constexpr double beyond = 2.5;
    const double before = std::max(0.0, detail.gap + beyond);
    const double behind = std::max(0.0, beyond - (detail.gap + detail.length));
    for (auto& [from, to] : row.holes) {
        const Point way = unit(to - from);
        from = from - way * before;
        to = to + way * behind;
    }
    row.size += before + behind;
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
            row.holes = buttonholes_of(easel, detail);
            row.size = detail.length;
            if (!laced) {
                reach_buttons(row, detail);
            }
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

bool is_drawn_line(const Detail& detail) {
    return detail.kind == DetailKind::seam || detail.kind == DetailKind::fold ||
           detail.kind == DetailKind::line;
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

/// A path whose every point is moved, not only those it is drawn by: what the move bends is parted
/// until it follows.
class MovedPath {
  public:
    MovedPath(std::string_view name, const Moving& moving) : name_(name), moving_(moving) {}

    Path of(const Path& path) {
        const Point* next = path.points.data();
        Point at;
        Point first;
        for (const Path::Verb verb : path.verbs) {
            switch (verb) {
                case Path::Verb::move:
                    at = first = *next++;
                    made_.move_to(to(at));
                    break;
                case Path::Verb::line:
                    line(at, *next, kSplits);
                    at = *next++;
                    break;
                case Path::Verb::cubic:
                    cubic({at, next[0], next[1], next[2]}, kSplits);
                    at = next[2];
                    next += 3;
                    break;
                case Path::Verb::close:
                    made_.close();
                    at = first;
                    break;
            }
        }
        return std::move(made_);
    }

  private:
    using Cubic = std::array<Point, 4>;
    /// How far a curve may stray from where its points should go, mm.
    static constexpr double kTrue = 0.15;
    static constexpr int kSplits = 4;

    std::string_view name_;
    const Moving& moving_;
    Path made_;

    [[nodiscard]] Point to(Point p) const { return moving_(name_, p); }

    void line(Point a, Point b, int splits) {
        const Point middle = (a + b) * 0.5;
        if (splits > 0 && length(to(middle) - (to(a) + to(b)) * 0.5) > kTrue) {
            line(a, middle, splits - 1);
            line(middle, b, splits - 1);
        } else {
            made_.line_to(to(b));
        }
    }

    static Point at(const Cubic& c, double u) {
        const double v = 1 - u;
        return c[0] * (v * v * v) + c[1] * (3 * v * v * u) + c[2] * (3 * v * u * u) +
               c[3] * (u * u * u);
    }

    [[nodiscard]] bool follows(const Cubic& drawn, const Cubic& moved) const {
        constexpr std::array between = {0.25, 0.5, 0.75};
        return std::ranges::all_of(
            between, [&](double u) { return length(to(at(drawn, u)) - at(moved, u)) <= kTrue; });
    }

    void cubic(const Cubic& c, int splits) {
        const Cubic moved = {to(c[0]), to(c[1]), to(c[2]), to(c[3])};
        if (splits == 0 || follows(c, moved)) {
            made_.cubic_to(moved[1], moved[2], moved[3]);
            return;
        }
        const Point a = (c[0] + c[1]) * 0.5;
        const Point b = (c[1] + c[2]) * 0.5;
        const Point d = (c[2] + c[3]) * 0.5;
        const Point ab = (a + b) * 0.5;
        const Point bd = (b + d) * 0.5;
        const Point middle = (ab + bd) * 0.5;
        cubic({c[0], a, ab, middle}, splits - 1);
        cubic({middle, bd, d, c[3]}, splits - 1);
    }
};

Curve moved_curve(const Curve& curve, std::string_view name, const Moving& moving) {
    Chain chain = curve.chain();
    for (Point& p : chain) {
        p = moving(name, p);
    }
    return chain.empty() ? Curve() : Curve(chain);
}

}  // namespace

void move_detail(Detail& detail, std::string_view name, const Moving& moving) {
    detail.path = MovedPath(name, moving).of(detail.path);
    detail.curve = moved_curve(detail.curve, name, moving);
    detail.lower = moved_curve(detail.lower, name, moving);
    detail.upper = moved_curve(detail.upper, name, moving);
    if (detail.limit) {
        detail.limit = moved_curve(*detail.limit, name, moving);
    }
}

void move_part(Part& part, const Moving& moving) {
    part.shape = MovedPath(part.name, moving).of(part.shape);
    part.edge = MovedPath(part.name, moving).of(part.edge);
    for (Detail& detail : part.details) {
        move_detail(detail, part.name, moving);
    }
}

StatedMeasures stated_by(const Uniform& uniform) {
    return {stated_measure(uniform, "lapels.width"),
            stated_measure(uniform, "cuffs.height"),
            stated_measure(uniform, "collar.height"),
            stated_measure(uniform, "pockets.width"),
            stated_measure(uniform, "pockets.depth")};
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

namespace {

/// What a detail tells of its part, or of the whole flat.
void add_detail(
    const Uniform& uniform, const Easel& easel, const Detail& detail, FlatPart& part, Flat& flat) {
    if (detail.kind == DetailKind::marks) {
        add_marks(uniform, detail, flat);
    }
    if (is_drawn_line(detail)) {
        part.lines.push_back(detail.curve.chain());
    }
    if (auto row = row_of(uniform, easel, detail)) {
        part.rows.push_back(std::move(*row));
    }
}

}  // namespace

Flat flat_of(const Uniform& uniform, const Template& view) {
    const Easel easel(uniform, 1, true, Ink::colour);
    Flat flat;
    flat.title = view.title;
    for (const auto& [name, guide] : view.guides) {
        flat.guides[name] = guide.chain();
    }
    for (const Part& part : view.parts) {
        const auto cloth = material_of(uniform, part.cloth);
        // Without a contour and of one colour always, it is no cloth but the shadow on the table.
        const bool table = !part.cloth.property && part.line == LineWeight::none;
        if (!cloth || table || !easel.holds(part.when)) {
            continue;
        }
        const std::string key =
            part.cloth.property ? std::string(properties()[*part.cloth.property].key) : "";
        FlatPart made{part.name, key, *cloth, outlines(part.shape), {}};
        for (const Detail& detail : part.details) {
            if (easel.holds(detail.when)) {
                add_detail(uniform, easel, detail, made, flat);
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
