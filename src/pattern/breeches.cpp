// SPDX-License-Identifier: MIT
// Breeches and overalls: legs with a fork and half the fall, waistband, knee bands, bearers.
#include <algorithm>
#include <cmath>
#include <optional>

#include "pattern/bands.h"
#include "pattern/draft.h"
#include "pattern/fit.h"
#include "pattern/legs.h"
#include "pattern/named_seams.h"
#include "pattern/openings.h"
#include "pattern/pockets.h"
#include "pattern/seams.h"
#include "pattern/stiffening.h"
#include "words/workshop_messages.h"

namespace platewright {
namespace {

/// How far each half reaches between the legs, as a part of the girth of the seat. Common practice,
/// no source.
constexpr double kForeFork = 1.0 / 24;
constexpr double kHindFork = 1.0 / 10;
/// How far above the fork its curve begins, and below it ends in the inner seam, mm. There the legs
/// are marked to be sewn together.
constexpr double kForkRise = 110;
constexpr double kForkDrop = 270;
/// Beyond the cut at the seat seam at the waist, mm. Common practice, no source.
constexpr double kSeatInlay = 30;
/// How far the inner seam bends above and below that place, mm.
constexpr double kInnerBend = 55;

class Breeches {
  public:
    explicit Breeches(const PatternSource& source)
        : source_(source),
          front_(source.flat("flat-breeches-front")),
          back_(source.flat("flat-breeches-back")) {}

    std::vector<PatternPiece> all() {
        add_legs();
        keep(knee_band_of(source_, cut("fore leg"), cut("hind leg")));
        keep(front_ != nullptr ? fall_bearer(*front_) : std::nullopt);
        keep(front_ != nullptr ? slit_facing(*front_) : std::nullopt);
        add_side_flap();
        add_gusset();
        keep(waistband_of(source_, cut("hind leg").ease));
        stiffen();
        return std::move(pieces_);
    }

  private:
    const PatternSource& source_;
    const Flat* front_;
    const Flat* back_;
    std::vector<PatternPiece> pieces_;

    void keep(std::optional<PatternPiece> piece) {
        if (piece) {
            keep_drawn(std::move(*piece), source_.allowance, pieces_);
        }
    }

    /// What is buttoned, laced or buckled would pull out of shape.
    void stiffen() {
        keep(waistband_canvas(source_, cut("waistband")));
        keep(fall_canvas(source_, cut("fore leg")));
        keep(knee_band_canvas(source_, cut("knee band")));
    }

    /// Finished; without an outline where it was not drawn.
    [[nodiscard]] PatternPiece cut(const char* name) const {
        const auto found = std::ranges::find(pieces_, name, &PatternPiece::name);
        return found != pieces_.end() ? *found : PatternPiece{};
    }

    /// The wearer's left lies at positive x before, at negative behind.
    void add_legs() {
        double inner = 0;
        if (const FlatPart* part = front_ != nullptr ? legs_of(*front_) : nullptr) {
            inner = add_fore_leg(*part);
        }
        if (const FlatPart* part = back_ != nullptr ? legs_of(*back_) : nullptr) {
            add_hind_leg(*part, inner);
        }
    }

    /// Gives the length of its inner seam from the fork to the mark.
    double add_fore_leg(const FlatPart& part) {
        double inner = 0;
        PatternPiece piece = draft_of("breeches", "fore leg", part);
        piece.outline = between_uprights(part, 0, shapes::kBeyondAll);
        if (const Chain* side = side_seam_of(*front_, part, 1)) {
            add_waist(piece.outline, waist_at_side(*side), side->front());
        }
        open_fall(piece, *front_);
        open_fore_knee(piece, *front_);
        piece.outline = above_band(piece.outline, *front_);
        if (const auto mouth = breeches_mouth(*front_)) {
            piece.slits.push_back({mouth->first, mouth->second});
        }
        if (const Chain* seam = inner_seam_of(*front_, part, 1)) {
            const Fork fork{{-hip() * kForeFork, seam->front().y}, seam, 0};
            inner = length(fork.point - fork.foot());
            add_fork(piece.outline, fork);
            add_notches_at(piece, fork.foot().y);
            const Chain hem = lower_edge(piece.outline);
            name_seam(piece, "inside leg seam", fork.point, hem.front());
            name_seam(
                piece, "front seam", fork.point, upper_edge(piece.outline).front(), Join::mirrored);
            name_seam(piece, "knee band", hem.front(), hem.back(), Join::set_in);
        }
        if (const Chain* side = side_seam_of(*front_, part, 1)) {
            const double end = side_ends(*side);
            const Point knee{x_at(*side, end), end};
            name_seam(piece, "side seam", waist_at_side(*side).back(), knee);
        }
        keep(std::move(piece));
        return inner;
    }

    void add_hind_leg(const FlatPart& part, double inner) {
        PatternPiece piece = draft_of("breeches", "hind leg", part);
        piece.outline = between_uprights(part, -shapes::kBeyondAll, 0);
        const Chain* side = side_seam_of(*back_, part, -1);
        Chain waist;
        if (side != nullptr && !piece.outline.empty()) {
            const double top = shapes::box(piece.outline).top;
            waist = waist_behind(*side, top);
            Chain to_side = waist;
            std::ranges::reverse(to_side);
            to_side.insert(to_side.begin(), {0, top + kSeatWedgeDeep});
            add_waist(piece.outline, to_side, side->front());
        }
        if (side != nullptr && front_ != nullptr) {
            open_hind_knee(piece, *front_, *side);
        }
        piece.outline = above_band(piece.outline, *back_);
        if (const Chain* seam = inner_seam_of(*back_, part, -1)) {
            const Fork fork = hind_fork(*seam, inner, piece.outline);
            add_fork(piece.outline, fork);
            add_notches_at(piece, fork.foot().y);
            const Chain hem = lower_edge(piece.outline);
            name_seam(piece, "inside leg seam", fork.point, hem.back());
            name_seam(piece, "knee band", hem.front(), hem.back(), Join::set_in);
            if (!waist.empty()) {
                name_seam(piece, "seat seam", waist.back(), fork.point, Join::mirrored);
                open_behind(piece, waist.back(), fork.point);
                add_seat_inlay(piece, waist.back(), fork.point);
            }
        }
        if (!waist.empty()) {
            const double end = side_ends(*side);
            const Point knee{x_at(*side, end), end};
            name_seam(piece, "side seam", waist.front(), knee);
            gather_top(piece, waist);
        }
        keep(std::move(piece));
    }

    /// The height at which the side is left open for the knee.
    [[nodiscard]] double side_ends(const Chain& side) const {
        const auto opening = front_ != nullptr ? knee_opening(*front_) : std::nullopt;
        return opening ? opening->y : side.back().y;
    }

    /// Cloth up to the waist's edge, which ends at the side seam drawn out beyond its corner.
    static void add_waist(Chain& outline, const Chain& edge, Point corner) {
        constexpr double within = 10;
        const double inward = corner.x > 0 ? -1 : 1;
        Chain shape = edge;
        shape.push_back(corner);
        shape.push_back(corner + Point{inward * within / 2, within});
        shape.push_back({edge.front().x, std::max(edge.front().y, corner.y + within)});
        outline = shapes::joined({outline, shape});
    }

    /// Above the mark the seat seam is open, and the gusset let in.
    void open_behind(PatternPiece& piece, Point top, Point fork) const {
        const FlatPart* gusset = back_->part("gusset");
        const double band = front_ != nullptr ? waistband_depth(*front_) : 0;
        if (gusset == nullptr || band <= 0) {
            return;
        }
        const double open = shapes::box(shapes::joined(gusset->outline)).height() - band;
        if (open > 0) {
            add_notch(piece, point_between(piece.outline, top, fork, open));
            piece.remarks.push_back(say(source_.uniform.language, messages::kSeatOpenAbove));
        }
    }

    /// How much wider it is at the top than the waistband behind the side seam; from mark to mark
    /// it is gathered.
    void gather_top(PatternPiece& piece, const Chain& waist) const {
        const auto girths = front_ != nullptr ? finished_girths(*front_, source_.body)
                                              : std::vector<FinishedGirth>{};
        const double before = front_ != nullptr ? side_at_waist(*front_) : 0;
        if (before <= 0 || girths.empty()) {
            return;
        }
        piece.ease = length_of(waist) - (girths.front().finished / 2 - before);
        for (const double from : {kGatherFrom, kGatherTo}) {
            if (piece.ease > 0) {
                add_notch(piece, point_between(piece.outline, waist.back(), waist.front(), from));
            }
        }
    }

    /// Cloth beyond the seat seam, to let out the waist later.
    static void add_seat_inlay(PatternPiece& piece, Point top, Point fork) {
        piece.inlay = kSeatInlay;
        piece.inlay_runs_out = true;
        piece.inlay_seam = seam_between(piece.outline, top, fork);
    }

    /// The leg is sewn to the knee band's upper edge, which lies over it.
    static Chain above_band(const Chain& leg, const Flat& flat) {
        const FlatPart* band = flat.part("knee-band-left");
        if (band == nullptr || leg.empty()) {
            return leg;
        }
        const Chain edge = upper_edge(shapes::joined(band->outline));
        constexpr double far = shapes::kBeyondAll;
        Chain above{{far, edge.back().y}, {far, -far}, {-far, -far}, {-far, edge.front().y}};
        above.insert(above.end(), edge.begin(), edge.end());
        return shapes::common({leg}, above);
    }

    [[nodiscard]] double hip() const { return source_.body.of(BodyMeasure::hip); }

    /// Where a leg reaches between the legs.
    struct Fork {
        /// Its point, and the inner seam that it runs out into.
        Point point;
        const Chain* seam;
        /// The middle seam where the curve of the fork leaves it.
        double middle = 0;

        [[nodiscard]] double level() const { return seam->front().y; }

        [[nodiscard]] Point foot() const {
            const double y = level() + kForkDrop;
            return {x_at(*seam, y), y};
        }
    };

    /// The middle seam curves out to the fork's point; from there the inner seam runs straight to
    /// where it is drawn.
    static void add_fork(Chain& outline, const Fork& fork) {
        const double inward = fork.point.x < 0 ? 1 : -1;
        const Point from{fork.middle, fork.level() - kForkRise};
        const Point corner{fork.middle, fork.point.y};
        Chain shape;
        constexpr int steps = 16;
        for (int i = 0; i <= steps; ++i) {
            const double u = static_cast<double>(i) / steps;
            shape.push_back(from * ((1 - u) * (1 - u)) + corner * (2 * u * (1 - u)) +
                            fork.point * (u * u));
        }
        shape.push_back(fork.foot());
        // Well into the leg, so that the two are joined.
        constexpr double within = 30;
        shape.push_back(fork.foot() + Point{inward * within, 0});
        shape.push_back({fork.middle + inward * within, from.y});
        outline = rounded_at(shapes::joined({outline, shape}), fork.foot(), kInnerBend);
    }

    /// Lower than the fore leg's, so that their inner seams are as long.
    [[nodiscard]] Fork hind_fork(const Chain& seam, double inner, const Chain& outline) const {
        const double level = seam.front().y;
        Fork fork{{hip() * kHindFork, level}, &seam, 0};
        fork.middle = crossing(outline, level - kForkRise).greatest;
        const Point foot = fork.foot();
        const double across = fork.point.x - foot.x;
        if (inner > std::abs(across)) {
            fork.point.y = foot.y - std::sqrt(inner * inner - across * across);
        }
        return fork;
    }

    /// What is sewn over the opening of overalls.
    void add_side_flap() {
        const FlatPart* part = front_ != nullptr ? front_->part("overalls-flap-left") : nullptr;
        if (part != nullptr) {
            PatternPiece piece = draft_of("breeches", "side flap", *part);
            piece.outline = shapes::joined(part->outline);
            piece.buttons = buttons_of(*part);
            piece.lined = true;
            keep(std::move(piece));
        }
    }

    /// Let in behind, under the lacing.
    void add_gusset() {
        const FlatPart* part = back_ != nullptr ? back_->part("gusset") : nullptr;
        if (part != nullptr) {
            PatternPiece piece = draft_of("breeches", "gusset", *part);
            piece.outline = shapes::joined(part->outline);
            piece.number = 1;
            piece.paired = false;
            piece.lined = true;
            // So far down it is sewn to the waistband, below to the legs.
            const double band = front_ != nullptr ? waistband_depth(*front_) : 0;
            const double seam = shapes::box(piece.outline).top + band;
            if (const Crossing at = crossing(piece.outline, seam); band > 0 && at.found) {
                piece.lines = {{{at.least, seam}, {at.greatest, seam}}};
                add_notches_at(piece, seam);
            }
            keep(std::move(piece));
        }
    }
};

}  // namespace

std::vector<PatternPiece> breeches_pieces(const PatternSource& source) {
    return Breeches(source).all();
}

}  // namespace platewright
