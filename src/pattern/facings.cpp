// SPDX-License-Identifier: MIT
// Pieces of the facings: ordered shapes, taken from the flats as they lie or opened out.
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "pattern/draft.h"
#include "pattern/fit.h"
#include "pattern/marks.h"
#include "pattern/named_seams.h"
#include "pattern/pieces.h"
#include "pattern/placing.h"
#include "pattern/pockets.h"
#include "pattern/seams.h"
#include "pattern/shapes.h"
#include "pattern/sleeves.h"

namespace platewright {
namespace {

/// A part of a flat that is a piece as it lies.
struct AsItLies {
    std::string_view part;
    std::string_view name;
    bool lined = false;
};

constexpr std::array kAsTheyLie = std::to_array<AsItLies>({
    {"lapel-left", "lapel", true},
    {"lapel-half-left", "lapel", true},
    {"cuff-left-upright", "cuff flap", true},
    {"pocket-left", "pocket flap", true},
    {"turnback-left", "turnback", false},
    {"turnback-short-left", "turnback", false},
    {"wing-left", "wing", true},
    {"waistcoat-flap-left", "pocket flap", true},
});

/// From the end of a strap to its button, where none is drawn. Common practice, no source.
constexpr double kStrapPoint = 20;
/// How far the edges of a collar bend. Common practice, no source.
constexpr double kCollarRise = 14;
/// A collar that turns over stands so high behind before it falls, and its outer edge is so much
/// longer than half the neck, mm. Common practice, no source.
constexpr double kCollarStand = 40;
constexpr double kFallSpread = 20;

/// Half of what cloth, lining and seams need beneath the collar. Common practice, no source.
constexpr double kThinLapel = 14;

class Facings {
  public:
    Facings(const PatternSource& source, const std::vector<PatternPiece>& garments)
        : source_(source), garments_(garments) {}

    std::vector<PatternPiece> all() {
        for (const auto& [view, flat] : source_.flats) {
            const std::string garment =
                view.find("waistcoat") != std::string::npos ? "waistcoat" : "coat";
            lie_flat(garment, view, flat);
        }
        for (const auto& [view, flat] : source_.flats) {
            if (view == "flat-coat-front" || view == "flat-jacket-front") {
                const char* back_view =
                    view == "flat-coat-front" ? "flat-coat-back" : "flat-jacket-back";
                add_cuff(flat);
                add_collar(flat, back_view);
                add_strap(flat, back_view);
                add_epaulette(flat);
                add_marks(flat);
            }
        }
        add_ornament();
        return std::move(pieces_);
    }

  private:
    const PatternSource& source_;
    const std::vector<PatternPiece>& garments_;
    std::vector<PatternPiece> pieces_;

    void keep(PatternPiece piece) {
        finish(piece, piece.at_line ? 0 : source_.allowance);
        pieces_.push_back(std::move(piece));
    }

    void lie_flat(const std::string& garment, const std::string& view, const Flat& flat) {
        for (const FlatPart& part : flat.parts) {
            for (const AsItLies& row : kAsTheyLie) {
                if (part.name.starts_with(row.part) && !part.outline.empty()) {
                    keep(as_it_lies(row, part, flat, {.garment = garment, .view = view}));
                }
            }
        }
    }

    struct Whose {
        const std::string& garment;
        const std::string& view;
    };

    PatternPiece as_it_lies(const AsItLies& row,
                            const FlatPart& part,
                            const Flat& flat,
                            const Whose& whose) {
        PatternPiece piece{.garment = whose.garment,
                           .name = std::string(row.name),
                           .cloth = part.cloth,
                           .cloth_key = part.cloth_key};
        piece.outline = shapes::joined(part.outline);
        piece.holes = holes_of(part);
        if (row.name == "turnback") {
            piece.name = whose.view.ends_with("back") ? "hind turnback" : "fore turnback";
            place_hook(piece, flat, part);
        }
        if (row.name == "lapel") {
            piece.outline = below_neckline(piece.outline, flat);
            name_lapel_seam(piece, flat, part.name);
        }
        // Lapels are buttoned to the forepart, which shows their buttons.
        if (row.name != "lapel" || piece.holes.empty()) {
            piece.buttons = buttons_of(part);
        }
        if (piece.garment == "coat" && piece.name == "pocket flap") {
            turn_to_mouth(piece, flat);
        }
        piece.number = 2;
        piece.paired = true;
        piece.lined = row.lined;
        return piece;
    }

    /// A flap is cut with the grain of the forepart as it lies over its mouth there.
    void turn_to_mouth(PatternPiece& flap, const Flat& flat) const {
        const std::vector<Mouth> drawn = mouths_of(flat, "pocket-left");
        const auto forepart = std::ranges::find_if(garments_, [](const PatternPiece& piece) {
            return piece.garment == "coat" && piece.name == "forepart" && !piece.slits.empty();
        });
        if (drawn.empty() || forepart == garments_.end()) {
            return;
        }
        const Chain& slit = forepart->slits.front();
        const auto turned = [&](Point p) {
            return carried(p, drawn.front(), {slit.front(), slit.back()});
        };
        std::ranges::transform(flap.outline, flap.outline.begin(), turned);
        std::ranges::transform(flap.buttons, flap.buttons.begin(), turned);
        for (auto& [from, to] : flap.holes) {
            from = turned(from);
            to = turned(to);
        }
    }

    /// A lapel ends at the neckline that it is sewn into with the forepart; there, beneath the
    /// collar, it runs out in no point.
    static Chain below_neckline(const Chain& lapel, const Flat& flat) {
        const Chain* neck = flat.guide("neckline-before");
        const auto body = std::ranges::find_if(
            flat.parts, [](const FlatPart& part) { return is_coat_body(part.name, "-left"); });
        if (neck == nullptr || body == flat.parts.end()) {
            return lapel;
        }
        const double lowest = shapes::box(*neck).bottom;
        constexpr double far = shapes::kBeyondAll;
        const Chain rest{{-far, lowest}, {far, lowest}, {far, far}, {-far, far}};
        std::vector<Chain> kept = body->outline;
        kept.push_back(rest);
        return shapes::without_points(shapes::common({lapel}, shapes::joined(kept)), kThinLapel);
    }

    /// The flat shows half of the cuff; opened out about its hind edge it is whole.
    void add_cuff(const Flat& flat) {
        const Chain* top = flat.guide("cuff-edge-left");
        const Chain* hem = flat.guide("cuff-hem-left");
        const FlatPart* part = nullptr;
        for (const FlatPart& each : flat.parts) {
            const bool cuff =
                each.name.starts_with("cuff-left") && each.name != "cuff-left-upright";
            part = cuff && part == nullptr ? &each : part;
        }
        if (part == nullptr || top == nullptr || hem == nullptr) {
            return;
        }
        const Point upper = top->back();
        const Point lower = hem->back();
        PatternPiece piece{
            .garment = "coat", .name = "cuff", .cloth = part->cloth, .cloth_key = part->cloth_key};
        std::vector<Chain> halves = part->outline;
        for (const Chain& outline : part->outline) {
            halves.push_back(shapes::mirrored(outline, upper, lower));
        }
        piece.outline = shapes::turned_down(shapes::joined(halves), lower - upper);
        piece.lines = {shapes::turned_down({upper, lower}, lower - upper)};
        piece.buttons = shapes::turned_down(buttons_of(*part), lower - upper);
        piece.number = 2;
        piece.paired = true;
        piece.lined = true;
        mark_sleeve_seams(piece);
        say_along(piece, piece.lines.front(), "hind edge");
        const Chain edge = lower_edge(piece.outline);
        name_seam(piece, "hem of the sleeve", edge.front(), edge.back(), Join::set_in);
        keep(std::move(piece));
    }

    /// The seams of the sleeve lie below the folds, on the half that is not drawn: the hind arm's
    /// beside the middle of the cuff, the fore arm's beside its end.
    static void mark_sleeve_seams(PatternPiece& cuff) {
        const Rect box = shapes::box(cuff.outline);
        const double middle = cuff.lines.front().front().x;
        const bool drawn_left = cuff.buttons.empty() || cuff.buttons.front().x < middle;
        const double way = drawn_left ? 1 : -1;
        const double end = drawn_left ? box.right : box.left;
        for (const double x : {middle + way * kHalvesShift, end - way * kHalvesShift}) {
            const Chain edge = lower_edge(cuff.outline);
            const auto at =
                std::ranges::min_element(edge, {}, [x](Point p) { return std::abs(p.x - x); });
            add_notch(cuff, {x, at->y});
        }
    }

    /// Half the collar, its middle on the fold: as long as the neck, as high as the flat's.
    void add_collar(const Flat& front, const std::string& back_view) {
        const Flat* back = source_.flat(back_view);
        const FlatPart* behind = back == nullptr ? nullptr : back->part("collar-");
        const FlatPart* before = front.part("collar-left");
        if (behind == nullptr || before == nullptr || half_neckline(front) <= 0) {
            return;
        }
        const Crossing height = height_at_middle(behind->outline.front());
        const double high = height.greatest - height.least;
        const std::string shape = source_.uniform.word(property_id("collar.shape"));
        const bool falls = shape == "falling" || shape == "stand-and-fall";
        PatternPiece piece{.garment = "coat",
                           .name = "collar",
                           .cloth = before->cloth,
                           .cloth_key = before->cloth_key};
        // The neck's edge rises towards the front, so that the collar leans inward; of one that
        // turns over, by the stand, which ends there.
        const double stand = falls ? kCollarStand : 0;
        const double rise = falls ? kCollarStand : kCollarRise;
        const double spread = falls ? kFallSpread : -kCollarRise * 0.3;
        const Chain neck = neck_edge(half_neckline(front), high + stand, rise);
        const double half = neck.back().x;
        piece.outline = neck;
        for (int i = 20; i >= 0; --i) {
            const double u = i / 20.0;
            piece.outline.push_back({(half + spread) * u, -kCollarRise * 0.5 * u * u});
        }
        if (falls) {
            piece.lines = {{{0, high}, {half, high}}};
            say_along(piece, piece.lines.front(), "fold");
        }
        piece.number = 2;
        piece.on_fold = true;
        name_seam(piece, "neck", neck.front(), neck.back(), Join::set_in);
        // The shoulder's seam meets the neck's edge where the back's neck ends.
        if (const Chain* shoulder = back->guide("shoulder-left")) {
            const double behind_neck = neck_behind(*back, shoulder->front());
            add_notch(piece,
                      point_between(
                          piece.outline, neck.front(), neck.back(), std::min(behind_neck, half)));
        }
        keep(std::move(piece));
    }

    /// As long as the neckline, from the fold of the collar at that height; it rises by so much.
    static Chain neck_edge(double length, double height, double rise) {
        double run = length;
        Chain edge;
        // It is a little longer than it reaches.
        for (int round = 0; round < 6; ++round) {
            edge.clear();
            for (int i = 0; i <= 20; ++i) {
                const double u = i / 20.0;
                edge.push_back({run * u, height - rise * u * u});
            }
            run *= length / length_of(edge);
        }
        return edge;
    }

    /// From the middle of the back along its neck to the shoulder's seam.
    static double neck_behind(const Flat& flat, Point shoulder) {
        for (const FlatPart& part : flat.parts) {
            if (is_coat_body(part.name, "-back")) {
                const Chain outline = shapes::joined(part.outline);
                const Point middle{0, height_at_middle(outline).least};
                return length_between(outline, middle, shoulder);
            }
        }
        return std::abs(shoulder.x);
    }

    /// The outline's height on the line x = 0.
    static Crossing height_at_middle(const Chain& outline) {
        Chain turned;
        for (const Point p : outline) {
            turned.push_back({p.y, p.x});
        }
        return crossing(turned, 0);
    }

    /// The strap lies over the shoulder: half of it is drawn before, half behind. Opened out about
    /// the shoulder it is as long as it is drawn, and as wide as both halves at its ends.
    void add_strap(const Flat& flat, const std::string& back_view) {
        const FlatPart* part = flat.part("strap-left");
        const FlatPart* other = flat.part("strap-right");
        const Chain* shoulder = flat.guide("shoulder-left");
        const Flat* back = source_.flat(back_view);
        const FlatPart* before = part != nullptr ? part : other;
        const FlatPart* behind =
            back == nullptr ? nullptr : back->part(part != nullptr ? "strap-left" : "strap-right");
        if (before == nullptr || behind == nullptr || shoulder == nullptr) {
            return;
        }
        const StrapHalf fore = half_of(*before, *shoulder);
        const StrapHalf hind = half_of(*behind, *shoulder);
        PatternPiece piece{.garment = "coat",
                           .name = "shoulder strap",
                           .cloth = before->cloth,
                           .cloth_key = before->cloth_key};
        const double wide = fore.at_sleeve + hind.at_sleeve;
        piece.outline = strap(fore.along, wide, fore.at_button + hind.at_button);
        piece.holes = {{{wide / 2, fore.to_button - kStrapHole / 5},
                        {wide / 2, fore.to_button + kStrapHole * 4 / 5}}};
        piece.number = part != nullptr && other != nullptr ? 2 : 1;
        piece.lined = true;
        keep(std::move(piece));
    }

    /// What one view shows of a strap: how long, how far from its end to the button, how wide there
    /// and at the sleeve.
    struct StrapHalf {
        double along = 0;
        double to_button = 0;
        double at_button = 0;
        double at_sleeve = 0;
    };

    static StrapHalf half_of(const FlatPart& part, const Chain& shoulder) {
        // Both sides and both views are alike once they are mirrored.
        const auto to_left = [](const Chain& chain) {
            Chain made;
            for (const Point p : chain) {
                made.push_back({std::abs(p.x), p.y});
            }
            return made;
        };
        const Chain line = to_left(shoulder);
        const Point way = line.back() - line.front();
        const Chain outline = shapes::turned_down(to_left(shapes::joined(part.outline)), way);
        const Chain buttons = shapes::turned_down(to_left(buttons_of(part)), way);
        const Rect box = shapes::box(outline);
        const auto width = [&](double y) {
            const Crossing at = crossing(outline, y);
            return at.greatest - at.least;
        };
        // The end at the sleeve is not square to the shoulder.
        constexpr double within = 10;
        StrapHalf half{box.height(), kStrapPoint, 0, width(box.bottom - within)};
        if (!buttons.empty()) {
            half.to_button = buttons.front().y - box.top;
        }
        half.at_button = width(box.top + half.to_button);
        return half;
    }

    /// Broad at the shoulder, round at the neck; the sides run into the round without a corner.
    static Chain strap(double along, double wide, double at_button) {
        const double half = wide / 2;
        const double across = at_button / 2;
        const double side_x = half / across;
        const double side_y = (along - across) / across;
        const double touches =
            std::atan2(side_y, side_x) - std::acos(1 / std::hypot(side_x, side_y));
        Chain outline =
            shapes::arc({half, across}, across, across, -std::numbers::pi - touches, touches);
        outline.push_back({wide, along});
        outline.push_back({0, along});
        return outline;
    }

    void add_epaulette(const Flat& flat) {
        for (const char* name : {"epaulette-left", "epaulette-right"}) {
            const FlatPart* part = flat.part(name);
            const Chain* hem = flat.guide(std::string(name) + "-base");
            const Chain* shoulder = flat.guide("shoulder-left");
            if (part == nullptr || hem == nullptr || shoulder == nullptr) {
                continue;
            }
            PatternPiece piece{.garment = "coat",
                               .name = "epaulette field",
                               .cloth = part->cloth,
                               .cloth_key = part->cloth_key};
            const double long_side = length_of(*shoulder) + 12;
            const Chain field = shapes::arc({45, long_side}, 45, 34, 0, 2 * std::numbers::pi);
            Chain strap{{15, 22}, {30, 0}, {60, 0}, {75, 22}, {80, long_side}, {10, long_side}};
            piece.outline = shapes::joined({strap, field});
            piece.buttons = {{45, 18}};
            piece.number = source_.uniform.word(property_id("epaulettes.worn")) == "both" ? 2 : 1;
            piece.lined = true;
            keep(std::move(piece));
            return;
        }
    }

    /// Marks are cut as long as the upper sleeve is broad where they lie, and caught in its seams.
    void add_marks(const Flat& flat) {
        const auto sleeve = std::ranges::find(garments_, "upper sleeve", &PatternPiece::name);
        if (sleeve == garments_.end()) {
            return;
        }
        for (const PlacedMarks& marks : marks_on_sleeve(flat, sleeve->outline)) {
            add_mark(marks);
        }
    }

    void add_mark(const PlacedMarks& marks) {
        const Uniform& man = source_.uniform;
        const std::string key = marks.group + ".cloth";
        const Material* cloth = man.material(property_id(key));
        if (cloth == nullptr) {
            return;
        }
        PatternPiece piece{.garment = "coat",
                           .name = marks.group == "marks" ? "rank mark" : "service mark",
                           .cloth = *cloth,
                           .cloth_key = key};
        piece.outline = marks.strip;
        const bool both = man.word(property_id(marks.group + ".sleeves")) == "both";
        piece.number = static_cast<int>(marks.lines.size()) * (both ? 2 : 1);
        piece.paired = both && man.word(property_id(marks.group + ".shape")) == "slanted";
        piece.at_line = true;
        keep(std::move(piece));
    }

    void add_ornament() {
        if (source_.ornament == nullptr) {
            return;
        }
        const Material* cloth = source_.uniform.material(property_id("turnbacks.ornament-cloth"));
        std::vector<Chain> chains;
        constexpr double worn_height = 34;
        for (const FlatPart& part : source_.ornament->parts) {
            for (Chain chain : part.outline) {
                for (Point& p : chain) {
                    p = p * (worn_height / source_.ornament_frame);
                }
                chains.push_back(std::move(chain));
            }
        }
        if (cloth == nullptr || chains.empty()) {
            return;
        }
        PatternPiece piece{.garment = "coat",
                           .name = "turnback ornament",
                           .cloth = *cloth,
                           .cloth_key = "turnbacks.ornament-cloth"};
        piece.outline = shapes::joined(chains);
        // Fore and hind corner meet under one.
        piece.number = 2;
        piece.at_line = true;
        keep(std::move(piece));
    }
};

}  // namespace

std::vector<PatternPiece> facing_pieces(const PatternSource& source,
                                        const std::vector<PatternPiece>& garments) {
    return Facings(source, garments).all();
}

}  // namespace platewright
