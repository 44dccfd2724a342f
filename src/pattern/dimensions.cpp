// SPDX-License-Identifier: MIT
// What is measured on each flat, and between which points.
#include "pattern/dimensions.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "pattern/draft.h"
#include "pattern/marks.h"
#include "pattern/pockets.h"
#include "pattern/seams.h"
#include "pattern/shapes.h"

namespace platewright {
namespace {

using Way = DimensionWay;
/// One side of a flap, from end to end.
using Side = std::pair<Point, Point>;

Point middle(const Chain& chain) {
    return (chain.front() + chain.back()) * 0.5;
}

Point middle(const Side& side) {
    return (side.first + side.second) * 0.5;
}

class Measuring {
  public:
    Measuring(const std::string& view, const Flat& flat, const StatedMeasures& stated)
        : view_(view), flat_(flat), stated_(stated) {
        for (const FlatPart& part : flat.parts) {
            for (const Chain& chain : part.outline) {
                for (const Point p : chain) {
                    box_.include(p);
                }
            }
        }
    }

    std::vector<Dimension> all() {
        const bool front = view_.ends_with("front");
        if (hang_of(view_) == Hang::legs) {
            legs(front);
        } else if (hang_of(view_) == Hang::calf) {
            calf();
        } else if (view_.find("waistcoat") != std::string::npos) {
            waistcoat(front);
        } else if (front) {
            coat_front();
        } else {
            coat_back();
        }
        return std::move(found_);
    }

  private:
    const std::string& view_;
    const Flat& flat_;
    const StatedMeasures& stated_;
    Rect box_;
    std::vector<Dimension> found_;

    Dimension& add(const char* what, Way way, Point from, Point to, const char* frame = "") {
        found_.push_back({what, way, from, to, frame, std::nullopt});
        return found_.back();
    }

    /// The lowest point of the body of the garment.
    [[nodiscard]] Point hem_of(std::initializer_list<const char*> names) const {
        Point lowest{0, -1e6};
        for (const FlatPart& part : flat_.parts) {
            const bool body = std::ranges::any_of(
                names, [&](const char* name) { return part.name.starts_with(name); });
            for (const Chain& chain : body ? part.outline : std::vector<Chain>{}) {
                for (const Point p : chain) {
                    lowest = p.y > lowest.y ? p : lowest;
                }
            }
        }
        return lowest;
    }

    static Point top_of(const FlatPart& part) {
        return *std::ranges::min_element(part.outline.front(), {}, &Point::y);
    }

    static Point mirrored(Point p) { return {-std::abs(p.x), p.y}; }

    /// From side to side at that height.
    void across_at(const char* what, const char* part_name, double y, bool level = false) {
        const FlatPart* part = flat_.part(part_name);
        if (part == nullptr) {
            return;
        }
        double left = 1e6;
        double right = -1e6;
        for (const Chain& chain : part->outline) {
            const Crossing at = crossing(chain, y);
            left = at.found ? std::min(left, at.least) : left;
            right = at.found ? std::max(right, at.greatest) : right;
        }
        if (left < right) {
            add(what, Way::across, {left, y}, {right, y}).level = level;
        }
    }

    void girth_at(const char* what, const char* part_name, const char* guide, bool level = false) {
        if (const Chain* at = flat_.guide(guide)) {
            across_at(what, part_name, at->front().y, level);
        }
    }

    void coat_front() {
        const Chain* shoulder = flat_.guide("shoulder-left");
        const Point hem = hem_of({"coat-", "coatee-", "surtout-", "jacket-"});
        if (shoulder != nullptr && hem.y > 0) {
            // On the right half of the garment; the left has those of its sleeve.
            add("length", Way::down, mirrored(shoulder->front()), mirrored(hem));
            add("shoulder", Way::along, shoulder->back(), shoulder->front(), "shoulder");
            const Chain* base = flat_.guide("epaulette-left-base");
            if (base != nullptr && flat_.part("epaulette-left") != nullptr) {
                add("epaulette beyond the shoulder",
                    Way::along,
                    middle(*base),
                    shoulder->back(),
                    "shoulder");
            }
        }
        sleeve();
        lapel();
        pocket("pocket");
        turnback("fore turnback");
        marks();
    }

    void sleeve() {
        const Chain* hole = flat_.guide("sleeve-left-seam");
        const Chain* edge = flat_.guide("cuff-edge-left");
        const Chain* hem = flat_.guide("cuff-hem-left");
        if (hole == nullptr || edge == nullptr || hem == nullptr) {
            return;
        }
        add("sleeve", Way::along, hem->back(), hole->front());
        // Down the forearm: the corners of edge and hem need not lie square to one another.
        const Point rise = middle(*edge) - middle(*hem);
        Dimension& height = add("cuff height", Way::along, hem->back(), hem->back() + rise, "cuff");
        height.stated = stated_.cuff_height;
        add("cuff width above", Way::along, edge->front(), edge->back(), "cuff").above = true;
        add("cuff width below", Way::along, hem->back(), hem->front(), "cuff");
        buttons("cuff-left", "cuff button spacing", "cuff");
    }

    void lapel() {
        for (const char* name : {"lapel-left", "lapel-half-left"}) {
            const Chain* inner = flat_.guide(std::string(name) + "-inner");
            const Chain* outer = flat_.guide(std::string(name) + "-outer");
            if (flat_.part(name) == nullptr || inner == nullptr || outer == nullptr) {
                continue;
            }
            const double top = std::max(inner->front().y, outer->front().y);
            const double end = std::min(inner->back().y, outer->back().y);
            const auto across = [&](const char* what, double y) {
                add(what, Way::across, {x_at(*inner, y), y}, {x_at(*outer, y), y}, "breast")
                    .stated = stated_.lapel_width;
            };
            if (stated_.lapel_width) {
                // An ordered width is that of the cloth on one level, near its corners.
                across("lapel width above", top + (end - top) * 0.04);
                across("lapel width below", top + (end - top) * 0.96);
            } else {
                // As its piece is measured: where it is widest above, and between the corners of
                // its foot.
                const auto wide = [&](double y) { return x_at(*outer, y) - x_at(*inner, y); };
                double widest = top;
                for (double y = top; y < top + (end - top) * 0.6; y += 1) {
                    widest = wide(y) > wide(widest) + 0.01 ? y : widest;
                }
                across("lapel width above", widest);
                add("lapel width below", Way::across, inner->back(), outer->back(), "breast");
            }
            add("lapel length", Way::down, outer->back(), outer->front(), "breast");
            buttons(name, "lapel button spacing", "breast");
        }
    }

    /// From one button to the next, and from both ends of their line to the first and the last.
    void buttons(std::string_view part_begins, const char* what, const char* frame) {
        for (const FlatPart& part : flat_.parts) {
            for (const FlatRow& row : part.rows) {
                if (!part.name.starts_with(part_begins) || row.kind != FlatRow::Kind::buttons ||
                    row.at.size() < 2) {
                    continue;
                }
                add(what, Way::along, row.at[1], row.at[0], frame);
                if (!row.line.empty()) {
                    from_end("first button below the end", row.at[0], row.line.front(), frame);
                    from_end("last button above the end", row.at.back(), row.line.back(), frame);
                }
                return;
            }
        }
    }

    void from_end(const char* what, Point button, Point end, const char* frame) {
        constexpr double told_from = 4;
        if (length(end - button) > told_from) {
            add(what, Way::along, button, end, frame);
        }
    }

    void pocket(const char* frame) {
        for (const FlatPart& part : flat_.parts) {
            const bool flap = part.name.starts_with("pocket-left") ||
                              part.name.starts_with("waistcoat-flap-left");
            if (!flap || part.outline.empty()) {
                continue;
            }
            // Along the sewn edge and square to it, as the piece is cut.
            const Chain& outline = part.outline.front();
            const FlapAxes axes = axes_of(outline, free_edge_of(flat_, part));
            const Rect box = axes.box(outline);
            const Point a = axes.at({box.left, box.top});
            const Point b = axes.at({box.right, box.top});
            const Point c = axes.at({box.right, box.bottom});
            const Point d = axes.at({box.left, box.bottom});
            const std::array along{Side{a, b}, Side{d, c}};
            const std::array away{Side{a, d}, Side{b, c}};
            const bool coat = part.name.starts_with("pocket-");
            // The width below the flap, the depth beside it towards the side seam.
            const Side foot = *std::ranges::max_element(
                axes.upright() ? away : along, {}, [](const Side& each) { return middle(each).y; });
            Dimension& width = add("pocket flap width", Way::along, foot.first, foot.second, frame);
            width.stated = coat ? stated_.pocket_width : std::nullopt;
            const Side outer =
                *std::ranges::max_element(axes.upright() ? along : away, {}, [](const Side& each) {
                    return std::abs(middle(each).x);
                });
            Dimension& depth =
                add("pocket flap depth", Way::along, outer.first, outer.second, frame);
            depth.stated = coat ? stated_.pocket_depth : std::nullopt;
            const Point lowest = *std::ranges::max_element(outline, {}, &Point::y);
            const Point hem = hem_of({"coat-", "coatee-", "surtout-", "jacket-"});
            if (hem.y > lowest.y) {
                add("pocket above the hem", Way::down, {lowest.x, hem.y}, lowest);
            }
            buttons(part.name, "pocket button spacing", frame);
        }
    }

    void turnback(const char* what) {
        for (const char* name : {"turnback-left", "turnback-short-left"}) {
            const Chain* edge = flat_.guide(std::string(name) + "-edge");
            const Chain* fold = flat_.guide(std::string(name) + "-fold");
            const FlatPart* part = flat_.part(name);
            if (part == nullptr || edge == nullptr || fold == nullptr) {
                continue;
            }
            if (!part->outline.empty()) {
                held(*part, *edge, *fold);
            }
            add((std::string(what) + " length").c_str(),
                Way::along,
                fold->front(),
                fold->back(),
                "skirts");
            add((std::string(what) + " width").c_str(),
                Way::along,
                fold->back(),
                edge->back(),
                "skirts");
        }
    }

    /// Where the upright at that place crosses the outline.
    static Crossing upright_at(const FlatPart& part, double x) {
        Chain turned;
        for (const Point p : part.outline.front()) {
            turned.push_back({p.y, p.x});
        }
        return crossing(turned, x);
    }

    /// Straight below a place, where the part ends: its hem runs aslant.
    static Point below(const FlatPart& part, Point at) {
        return {at.x, upright_at(part, at.x).greatest};
    }

    /// Fore and hind corner are hooked together under the button of the fore one; a corner without
    /// a button has its hook or eye measured.
    void held(const FlatPart& part, const Chain& edge, const Chain& fold) {
        const auto row = std::ranges::find(part.rows, FlatRow::Kind::buttons, &FlatRow::kind);
        if (row != part.rows.end()) {
            const Point at = row->at.front();
            add("turnback button above the hem", Way::down, below(part, at), at, "skirts");
            return;
        }
        const Point at = hook_on(edge, fold);
        add("turnback hook above the hem", Way::down, below(part, at), at, "skirts");
        add("turnback hook within the edge", Way::along, at, foot_on(edge, at), "skirts");
    }

    /// From the edge to the lowest mark, its breadth, and the cloth to the next.
    void marks() {
        for (const FlatMarks& marks : flat_.marks) {
            if (marks.group == "rings" || marks.bands.empty()) {
                continue;
            }
            const auto at_middle = [](const Chain& chain) { return chain[chain.size() / 2]; };
            const FlatMarks::Band& first = marks.bands.front();
            const std::string frame = marks.left_sleeve ? "cuff" : "right sleeve";
            const Point foot = foot_below(flat_, marks);
            const bool service = marks.group == "service";
            add(service ? "service mark above the edge" : "rank mark above the edge",
                Way::along,
                foot,
                at_middle(first.lower),
                frame.c_str());
            add(service ? "service mark width" : "rank mark width",
                Way::along,
                at_middle(first.lower),
                at_middle(first.upper),
                frame.c_str());
            if (marks.bands.size() > 1) {
                add(service ? "between service marks" : "between rank marks",
                    Way::along,
                    at_middle(first.upper),
                    at_middle(marks.bands[1].lower),
                    frame.c_str());
            }
        }
    }

    /// Where the piece of the back ends beside the vent, its corner let down; without one that hem.
    [[nodiscard]] Point hem_behind(Point hem) const {
        for (const char* name : {"turnback-left", "turnback-short-left"}) {
            const Chain* edge = flat_.guide(std::string(name) + "-edge");
            const Chain* fold = flat_.guide(std::string(name) + "-fold");
            if (flat_.part(name) != nullptr && edge != nullptr && fold != nullptr) {
                return shapes::mirrored({edge->back()}, fold->front(), fold->back()).front();
            }
        }
        return hem;
    }

    void coat_back() {
        const Chain* seam = flat_.guide("back-seam");
        const Point hem = hem_of({"coat-", "coatee-", "surtout-", "jacket-"});
        if (seam != nullptr) {
            add("nape to waist", Way::down, seam->front(), seam->back());
            add("back length", Way::down, seam->front(), hem_behind(hem));
        }
        if (const Chain* side = flat_.guide("side-back-left-seam")) {
            const Point other{-side->front().x, side->front().y};
            add("width of the back", Way::across, side->front(), other);
            add("between the hip buttons",
                Way::across,
                side->back(),
                {-side->back().x, side->back().y});
        }
        const char* body = "coat";
        for (const char* name : {"coat-back",
                                 "coat-closed-back",
                                 "coatee-back",
                                 "coatee-closed-back",
                                 "surtout-back",
                                 "jacket-back"}) {
            body = flat_.part(name) != nullptr ? name : body;
        }
        girth_at("chest, half girth", body, "girth-chest");
        girth_at("waist, half girth", body, "girth-waist", /*level=*/true);
        across_at("hem", body, hem.y - 12);
        collar();
        pocket("pocket");
        turnback("hind turnback");
    }

    void collar() {
        const FlatPart* part = flat_.part("collar-");
        if (part == nullptr || part->outline.empty()) {
            return;
        }
        const Crossing at = upright_at(*part, 0);
        const Rect box = shapes::box(part->outline.front());
        Dimension& height = add("collar height",
                                Way::down,
                                {box.right, at.greatest},
                                {box.right, at.least},
                                "shoulder");
        height.stated = stated_.collar_height;
    }

    void waistcoat(bool front) {
        const char* body = front ? "waistcoat-left" : "waistcoat-back";
        const FlatPart* part = flat_.part(body);
        part = part == nullptr ? flat_.part("waistcoat-double-left") : part;
        if (part == nullptr) {
            return;
        }
        // On the right half of the garment; the left has its pocket.
        const Point top = top_of(*part);
        add("length", Way::down, mirrored(top), mirrored(hem_of({part->name.c_str()})));
        if (!front) {
            girth_at("chest, half girth", body, "girth-chest");
            girth_at("waist, half girth", body, "girth-waist", /*level=*/true);
        }
        buttons("waistcoat-", "button spacing", "");
        pocket("");
    }

    /// Down to the lower edge of the band, where the leg ends. The inner seam lies nearer to the
    /// flat's middle.
    void legs_with_band(Point side, Point fork, const FlatPart& band) {
        const Chain edge = lower_edge(shapes::joined(band.outline));
        if (edge.empty()) {
            return;
        }
        add("side seam and knee band", Way::down, side, edge.back());
        add("inside leg seam and knee band", Way::down, fork, edge.front());
        if (const Chain* waist = flat_.guide("waist-line")) {
            add("whole length with waistband", Way::down, waist->back(), edge.back());
        }
    }

    void legs(bool front) {
        for (const char* name : {"breeches", "overalls"}) {
            const std::string guide = name;
            const Chain* seam = flat_.guide(guide + (front ? "-left-seam" : "-right-seam"));
            const Chain* inner = flat_.guide(guide + (front ? "-left-inseam" : "-right-inseam"));
            if (flat_.part(name) == nullptr || seam == nullptr || inner == nullptr) {
                continue;
            }
            if (const FlatPart* band = flat_.part(front ? "knee-band-left" : "knee-band-right")) {
                legs_with_band(seam->front(), inner->front(), *band);
            } else {
                add("side seam", Way::down, seam->front(), seam->back());
                add("inside leg seam", Way::down, inner->front(), inner->back());
            }
            add("leg below", Way::across, inner->back(), seam->back());
            girth_at("seat, half girth", name, "girth-seat");
        }
        if (const Chain* waist = flat_.guide("waist-line")) {
            add("waist, half girth", Way::across, waist->front(), waist->back());
        }
    }

    void calf() {
        if (const FlatPart* part = flat_.part("gaiter-")) {
            const Rect box = shapes::box(part->outline.front());
            add("height", Way::down, {box.centre().x, box.top}, {box.centre().x, box.bottom});
            // The head is cut lower behind than over the knee: from corner to corner.
            const bool half = part->name == "gaiter-half";
            if (const Chain* head = flat_.guide(half ? "gaiter-short-top" : "gaiter-top")) {
                add("width above", Way::across, head->front(), head->back());
            }
            buttons("gaiter-", "button spacing", "");
        }
    }
};

}  // namespace

double Dimension::mm() const {
    switch (way) {
        case DimensionWay::across:
            return std::abs(to.x - from.x);
        case DimensionWay::down:
            return std::abs(to.y - from.y);
        case DimensionWay::along:
            break;
    }
    return length(to - from);
}

std::vector<Dimension> dimensions_of(const std::string& view,
                                     const Flat& flat,
                                     const StatedMeasures& stated) {
    return Measuring(view, flat, stated).all();
}

}  // namespace platewright
