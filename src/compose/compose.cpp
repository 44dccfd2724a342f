// SPDX-License-Identifier: MIT
// Third stage: draws a uniform on a template, part by part from the bottom up.
#include "compose/compose.h"

#include <algorithm>
#include <map>
#include <set>

#include "compose/easel.h"
#include "compose/fitting.h"
#include "compose/fixtures.h"
#include "compose/ornament.h"
#include "compose/sheet_reader.h"
#include "compose/template.h"
#include "compose/visible.h"

namespace platewright {

namespace {

/// Cloth lighter than that is white: its lines must be finer and its shadows deeper.
constexpr double kWhiteFrom = 0.86;

/// One figure under the brush.
class Painting {
  public:
    Painting(const Uniform& uniform,
             const Template& on,
             const Ornaments& ornaments,
             double scale,
             const std::optional<Rect>& window,
             Ink ink)
        : template_(on),
          ornaments_(ornaments),
          window_(window),
          easel_(uniform, scale, on.view == "flat", ink) {
        easel_.look_through(window_);
    }

    /// Keeps note of what is seen.
    void watch(Visible& visible) { visible_ = &visible; }

    Drawing paint() {
        Group figure;
        figure.name = template_.view;
        if (window_) {
            figure.clip.push_back(easel_.drawing().add(rectangle(*window_)));
        }
        prepare();
        figure.children.emplace_back(outline());
        for (std::size_t i = 0; i < worn_.size(); ++i) {
            easel_.hide([this, i](const std::vector<Point>& points) { return covered(points, i); });
            figure.children.emplace_back(paint_part(*worn_[i]));
        }
        easel_.hide({});
        easel_.drawing().root = std::move(figure);
        return std::move(easel_.drawing());
    }

  private:
    const Template& template_;
    const Ornaments& ornaments_;
    const std::optional<Rect>& window_;
    Easel easel_;
    Visible* visible_ = nullptr;
    std::vector<const Part*> worn_;

    /// A worn part as others may be hidden by it; `clip` is empty for one that is not cut off.
    struct Cover {
        Rect box;
        Outlines chains;
        std::vector<Outlines> clip;

        [[nodiscard]] bool hides(Point p) const {
            return inside(chains, p) &&
                   (clip.empty() ||
                    std::ranges::any_of(clip, [p](const Outlines& by) { return inside(by, p); }));
        }
    };

    std::vector<Cover> covers_;
    std::map<std::string, PathId> shapes_;
    std::map<std::string, Volume> volumes_;
    int ornaments_worn_ = 0;

    /// Which parts are worn, and their outlines, which shadows and clips need beforehand.
    void prepare() {
        for (const Part& part : template_.parts) {
            if (in_window(part) && easel_.holds(part.when) && easel_.paint_of(part.cloth)) {
                worn_.push_back(&part);
                shapes_[part.name] = easel_.drawing().add(part.shape);
                covers_.push_back({part.shape.bounds(), outlines(part.shape), {}});
            }
        }
        for (std::size_t i = 0; i < worn_.size(); ++i) {
            for (const PathId by : shapes_of(worn_[i]->clip)) {
                covers_[i].clip.push_back(outlines(easel_.drawing().paths[by]));
            }
        }
    }

    /// Whether one part painted after the one of that index hides all the points. What nobody can
    /// see need not be drawn: it would be most of a file.
    [[nodiscard]] bool covered(const std::vector<Point>& points, std::size_t index) const {
        Rect box;
        for (const Point p : points) {
            box.include(p);
        }
        for (std::size_t i = index + 1; i < covers_.size(); ++i) {
            const Cover& cover = covers_[i];
            const bool within = box.left >= cover.box.left && box.right <= cover.box.right &&
                                box.top >= cover.box.top && box.bottom <= cover.box.bottom;
            if (within && std::ranges::all_of(points, [&](Point p) { return cover.hides(p); })) {
                return true;
            }
        }
        return false;
    }

    /// Whether the part, with its shadow and its outline, can be seen at all.
    [[nodiscard]] bool in_window(const Part& part) const {
        return !window_ || part.shape.bounds().grown(part.shadow + 6).meets(*window_);
    }

    /// The heavy line round the whole figure, underneath everything: every part moved away from the
    /// light, so that it shows below and on the shaded side and leaves the lit side to the contour,
    /// which opens there. A tailor's line is as heavy all round.
    Group outline() {
        Group group;
        group.name = "outline";
        for (const Part* part : worn_) {
            if (!part->silhouette) {
                continue;
            }
            const bool flat = easel_.line_drawing();
            const Colour ink = flat ? kPenInk : outline_ink(*part);
            // Round white cloth a line as heavy as round the rest would stand like a band.
            const double heavy = flat ? 1 : is_white(*part) ? 0.72 : 0.9;
            const Point away = kToLight * -easel_.weight(flat ? 0.4 : 1.1 * heavy);
            const double width = easel_.weight(flat ? 3.0 : 0.5 * heavy);
            const auto filled = flat ? std::nullopt : std::optional(Fill{ink, 1, false});
            group.children.emplace_back(
                Shape{shapes_[part->name], away, filled, Stroke{ink, width, 1, {}}});
        }
        return group;
    }

    [[nodiscard]] bool is_white(const Part& part) const {
        const auto paint = easel_.paint_of(part.cloth);
        return paint && to_oklab(paint->colour).l > kWhiteFrom;
    }

    /// Of the cloth's own line colour: round white gaiters a black rim would stand like a shadow.
    [[nodiscard]] Colour outline_ink(const Part& part) const {
        const auto paint = easel_.paint_of(part.cloth);
        return paint ? easel_.inks_of(*paint, part.surface).contour : kPenInk;
    }

    std::vector<PathId> shapes_of(const std::vector<std::string>& names) {
        std::vector<PathId> found;
        for (const std::string& name : names) {
            if (const auto shape = shapes_.find(name); shape != shapes_.end()) {
                found.push_back(shape->second);
            }
        }
        return found;
    }

    /// The volumes a part lies on: the named zones, or its own shape; none if it is flat.
    std::vector<const Volume*> volumes_of(const Part& part) {
        std::vector<const Volume*> found;
        if (part.zones.empty() && !part.flat) {
            found.push_back(&volume("part " + part.name, Zone{part.shape, std::nullopt, 0}));
        }
        for (const std::string& name : part.zones) {
            found.push_back(&volume("zone " + name, template_.zones.at(name)));
        }
        return found;
    }

    const Volume& volume(const std::string& key, const Zone& zone) {
        const auto [entry, is_new] = volumes_.try_emplace(key);
        if (is_new) {
            entry->second = volume_of(easel_, zone);
        }
        return entry->second;
    }

    /// White on white is told apart by its shadow alone, which must then be deeper.
    bool on_white(const Part& part) {
        return std::ranges::any_of(worn_, [&](const Part* under) {
            const bool beneath = std::ranges::find(part.on, under->name) != part.on.end();
            return beneath && is_white(*under);
        });
    }

    /// The parts painted before this one that its shadow reaches.
    std::vector<PathId> shapes_beneath(const Part& part) {
        const Rect room = part.shape.bounds().grown(part.shadow);
        std::vector<PathId> found;
        for (const Part* under : worn_) {
            if (under == &part) {
                break;
            }
            if (under->shape.bounds().meets(room)) {
                found.push_back(shapes_[under->name]);
            }
        }
        return found;
    }

    void cast_shadow(Group& into, const Part& part) {
        Group shadow;
        shadow.name = "shadow";
        shadow.step = true;
        // What is laid flat lies on whatever is beneath it.
        const bool laid = easel_.line_drawing() && part.on.empty();
        shadow.clip = laid && part.shadow > 0 ? shapes_beneath(part) : shapes_of(part.on);
        if (part.shadow <= 0 || shadow.clip.empty() || easel_.hatched()) {
            return;
        }
        const PathId shape = shapes_[part.name];
        const Point far{0.55 * part.shadow, part.shadow};
        if (easel_.line_drawing()) {
            // No more than the thickness of the cloth, fading out.
            for (const double share : {1.3, 0.9, 0.5}) {
                easel_.fill(shadow, shape, far * share, kCastShadow, 0.12);
            }
            easel_.hatch_cast(shadow, shape, part.shadow);
            into.children.emplace_back(std::move(shadow));
            return;
        }
        // A long shadow has a core; a short one would not show it.
        const bool cored = part.shadow > 4;
        const double depth = on_white(part) ? 1.3 : 1;
        easel_.fill(shadow, shape, far, kCastShadow, depth * (cored ? 0.22 : 0.30));
        if (cored) {
            easel_.fill(shadow, shape, far * 0.5, kCastShadow, depth * 0.18);
        }
        into.children.emplace_back(std::move(shadow));
    }

    [[nodiscard]] bool covered_whole(const Part& part) const {
        const auto chains = outlines(part.shape);
        return !chains.empty() &&
               std::ranges::all_of(chains, [this](const std::vector<Point>& chain) {
                   return easel_.hidden(chain);
               });
    }

    /// Lines and washes; trimmings stand out from their line.
    [[nodiscard]] bool out_of_sight(const Detail& detail) const {
        if (detail.kind > DetailKind::patch || detail.curve.empty() ||
            !easel_.hidden(detail.curve.chain())) {
            return false;
        }
        // One wash may be of many strokes: it is hidden where all of them are.
        return detail.path.empty() ||
               std::ranges::all_of(outlines(detail.path), [this](const std::vector<Point>& chain) {
                   return easel_.hidden(chain);
               });
    }

    Group paint_part(const Part& part) {
        const Paint paint = *easel_.paint_of(part.cloth);
        Piece piece{shapes_[part.name], easel_.inks_of(paint, part.surface), part.line};
        if (!part.edge.empty()) {
            piece.edge = easel_.drawing().add(part.edge);
        }
        piece.folds = easel_.folds_of(part);
        const std::vector<const Volume*> volumes = volumes_of(part);
        Group group;
        group.name = part.name;
        group.clip = shapes_of(part.clip);
        cast_shadow(group, part);
        if (covered_whole(part)) {
            return group;
        }
        easel_.fill(group, piece.shape, {}, piece.inks.base);
        Visible::Mask shown;
        if (visible_ != nullptr) {
            const Outlines shape = outlines(part.shape);
            const Visible::Mask clip = visible_->mask_of(outlines_of(group.clip));
            visible_->lay(shape, clip, part.cloth.property);
            visible_->shape(shape, clip, choices_of(part.when, part.cloth.property));
            shown = visible_->mask_of(shape);
        }
        Group inner;
        inner.name = "modelling";
        inner.step = true;
        inner.clip.push_back(piece.shape);
        easel_.hatch_piece(inner, piece.shape, paint);
        easel_.model(inner, piece, volumes, part.depth);
        for (const std::string& name : part.strokes) {
            easel_.hatch(inner, piece, volume("zone " + name, template_.zones.at(name)));
        }
        Group free;
        free.name = "trimmings";
        free.step = true;
        for (const Detail& detail : part.details) {
            if (easel_.holds(detail.when) && !out_of_sight(detail)) {
                paint_and_watch(detail, part, {inner, free, piece, volumes, part.depth}, shown);
            }
        }
        Group contour;
        contour.name = "contour";
        contour.step = true;
        easel_.contour(contour, inner, piece);
        group.children.emplace_back(std::move(inner));
        group.children.emplace_back(std::move(contour));
        redraw_cut_edges(group, part, piece);
        if (!free.children.empty()) {
            group.children.emplace_back(std::move(free));
        }
        return group;
    }

    /// Where a belt runs over the edge of the body, the edge is drawn again in the belt's own line.
    void redraw_cut_edges(Group& group, const Part& part, const Piece& piece) {
        if (group.clip.empty() || part.line == LineWeight::none) {
            return;
        }
        Group edge;
        edge.name = "edge";
        edge.step = true;
        edge.clip.push_back(piece.shape);
        std::vector<std::vector<Point>> chains;
        for (const PathId shape : group.clip) {
            for (std::vector<Point>& chain : outlines(easel_.drawing().paths[shape])) {
                chains.push_back(std::move(chain));
            }
        }
        const Path outer = outer_edge(chains);
        if (!outer.empty()) {
            easel_.stroke(edge,
                          easel_.drawing().add(outer),
                          piece.inks.contour,
                          easel_.contour_width(LineWeight::heavy));
            group.children.emplace_back(std::move(edge));
        }
    }

    Outlines outlines_of(const std::vector<PathId>& shapes) {
        Outlines all;
        for (const PathId shape : shapes) {
            for (std::vector<Point>& outline : outlines(easel_.drawing().paths[shape])) {
                all.push_back(std::move(outline));
            }
        }
        return all;
    }

    void paint_and_watch(const Detail& detail,
                         const Part& part,
                         const Trimming& where,
                         const Visible::Mask& shown) {
        const std::size_t clipped = where.clipped.children.size();
        const std::size_t free = where.free.children.size();
        paint_detail(detail, where);
        const auto property = property_of(detail);
        if (visible_ != nullptr && property && detail.kind >= DetailKind::patch) {
            const auto of = is_mount(detail, part) ? part.cloth.property : property;
            visible_->lay(where.clipped, clipped, easel_.drawing(), shown, of);
            visible_->lay(where.free, free, easel_.drawing(), {}, of);
        }
    }

    /// The metal at the end of a scabbard belongs to the scabbard, and is not pointed at as the
    /// hilt of the same metal, where that is seen.
    [[nodiscard]] bool is_mount(const Detail& detail, const Part& part) const {
        const auto metal = detail.cloth.property;
        return detail.kind == DetailKind::patch && metal && part.cloth.property &&
               properties()[*metal].substance == SubstanceKind::metal &&
               std::ranges::any_of(template_.parts, [&](const Part& other) {
                   return other.cloth.property == metal && easel_.holds(other.when);
               });
    }

    void paint_detail(const Detail& detail, const Trimming& where) {
        switch (detail.kind) {
            case DetailKind::seam:
            case DetailKind::crease:
            case DetailKind::line:
            case DetailKind::stitch:
            case DetailKind::fold:
            case DetailKind::tone:
            case DetailKind::light:
                paint_line(easel_, detail, where);
                break;
            case DetailKind::patch:
                paint_patch(easel_, detail, where);
                break;
            case DetailKind::buttons:
                paint_buttons(easel_, detail, where);
                break;
            case DetailKind::buttonholes:
                paint_buttonholes(easel_, detail, where);
                break;
            case DetailKind::piping:
                paint_piping(easel_, detail, where);
                break;
            case DetailKind::lace:
                paint_lace(easel_, detail, where);
                break;
            case DetailKind::marks:
                paint_marks(easel_, detail, where);
                break;
            case DetailKind::number:
                paint_number(easel_, detail, where);
                break;
            case DetailKind::fringe:
                paint_fringe(easel_, detail, where);
                break;
            case DetailKind::ornament:
                paint_ornament(detail, where);
                break;
        }
    }

    void paint_ornament(const Detail& detail, const Trimming& where) {
        const auto ornament = ornaments_.find(easel_.uniform().word(*detail.device));
        const auto paint = easel_.paint_of(detail.cloth);
        if (ornament == ornaments_.end() || !paint || ornament->second->view != "ornament") {
            return;
        }
        const int number = easel_.count_of(detail);
        const bool metal = is_metal(detail.cloth);
        for (const OrnamentPlace& place :
             number > 0 ? ornament_places(detail, number) : std::vector<OrnamentPlace>()) {
            std::vector<Part> parts =
                ornament_at(*ornament->second, place, "@" + std::to_string(++ornaments_worn_));
            easel_.give(paint);
            paint_worn(parts, place.size, metal ? std::nullopt : paint, where.free);
            easel_.give(std::nullopt);
        }
    }

    /// The parts of one ornament: of metal, or sewn on with thread of the colour of `sewn`.
    void paint_worn(std::vector<Part>& parts,
                    double size,
                    const std::optional<Paint>& sewn,
                    Group& into) {
        if (sewn) {
            sew_on(parts);
        }
        for (Part& part : parts) {
            part.surface = part.cloth.given && !sewn ? Surface::metal : part.surface;
            shapes_[part.name] = easel_.drawing().add(part.shape);
        }
        std::erase_if(parts, [&](const Part& part) {
            return !easel_.holds(part.when) || !easel_.paint_of(part.cloth);
        });
        if (sewn) {
            into.children.emplace_back(shadow_of_sewn(easel_, parts, size));
        }
        for (const Part& part : parts) {
            Group group = paint_part(part);
            if (sewn && part.cloth.given) {
                group.children.emplace_back(overcast(easel_, part.shape, *sewn, size));
            }
            into.children.emplace_back(std::move(group));
        }
    }

    bool is_metal(const ClothSource& cloth) {
        const Material* material =
            cloth.property ? easel_.uniform().material(*cloth.property) : nullptr;
        return material != nullptr && material->metal;
    }
};

}  // namespace

Figure compose(const Uniform& uniform,
               const Template& drawn,
               const Ornaments& ornaments,
               double scale,
               const std::optional<Rect>& window,
               Ink ink) {
    const std::optional<Template> fitting = fitted(uniform, drawn);
    const Template& on = fitting ? *fitting : drawn;
    Figure figure;
    figure.view = on.view;
    figure.title = on.title;
    figure.frame = window ? *window : frame_of(on, uniform);
    figure.scale = scale;
    figure.anchors = on.anchors;
    Painting painting(uniform, on, ornaments, scale, window, ink);
    Visible visible(window ? Rect{} : figure.frame);
    if (!window) {
        painting.watch(visible);
    }
    figure.drawing = painting.paint();
    figure.seen = visible.seen();
    figure.tops = visible.tops();
    return figure;
}

}  // namespace platewright
