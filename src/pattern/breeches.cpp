// SPDX-License-Identifier: MIT
// Breeches and overalls: legs with a fork and half the fall, waistband, knee bands, bearers.
#include <algorithm>
#include <cmath>
#include <optional>

#include "pattern/bands.h"
#include "pattern/draft.h"
#include "pattern/fit.h"
#include "pattern/legs.h"
#include "pattern/openings.h"
#include "pattern/pockets.h"
#include "pattern/seams.h"

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
        keep(knee_band_of(source_, leg("fore leg"), leg("hind leg")));
        keep(front_ != nullptr ? fall_bearer(*front_) : std::nullopt);
        keep(front_ != nullptr ? slit_facing(*front_) : std::nullopt);
        add_side_flap();
        add_gusset();
        keep(waistband_of(source_));
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

    /// Finished; without an outline where it was not drawn.
    [[nodiscard]] PatternPiece leg(const char* name) const {
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
        }
        keep(std::move(piece));
        return inner;
    }

    void add_hind_leg(const FlatPart& part, double inner) {
        PatternPiece piece = draft_of("breeches", "hind leg", part);
        const Chain* side = side_seam_of(*back_, part, -1);
        piece.outline = with_seat(between_uprights(part, -shapes::kBeyondAll, 0));
        if (side != nullptr && front_ != nullptr) {
            open_hind_knee(piece, *front_, *side);
        }
        piece.outline = above_band(piece.outline, *back_);
        if (const Chain* seam = inner_seam_of(*back_, part, -1)) {
            const Fork fork = hind_fork(*seam, inner, piece.outline);
            add_fork(piece.outline, fork);
            add_notches_at(piece, fork.foot().y);
        }
        if (side != nullptr) {
            const auto opening = front_ != nullptr ? knee_opening(*front_) : std::nullopt;
            const double end = opening ? opening->y : side->back().y;
            piece.inlay = kInlay;
            piece.inlay_seam = seam_between(piece.outline, side->front(), {x_at(*side, end), end});
            gather_top(piece, *side);
        }
        keep(std::move(piece));
    }

    /// How much wider it is at the top than the waistband behind the side seam.
    void gather_top(PatternPiece& piece, const Chain& side) const {
        const auto girths = front_ != nullptr ? finished_girths(*front_, source_.body)
                                              : std::vector<FinishedGirth>{};
        const double side_before = front_ != nullptr ? side_at_waist(*front_) : 0;
        if (side_before <= 0 || girths.empty()) {
            return;
        }
        const Rect box = shapes::box(piece.outline);
        const double wide = length_between(piece.outline, side.front(), {kSeatWedgeWide, box.top});
        piece.ease = wide - (girths.front().finished / 2 - side_before);
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

    static Chain with_seat(const Chain& half) {
        if (half.empty()) {
            return half;
        }
        const double top = shapes::box(half).top;
        return shapes::joined(
            {half, {{0, top}, {kSeatWedgeWide, top - kSeatWedgeRise}, {0, top + kSeatWedgeDeep}}});
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
            keep(std::move(piece));
        }
    }
};

}  // namespace

std::vector<PatternPiece> breeches_pieces(const PatternSource& source) {
    return Breeches(source).all();
}

}  // namespace platewright
