// SPDX-License-Identifier: MIT
// Breeches and overalls: legs with a fork and half the fall, waistband, knee bands, bearers.
#include <algorithm>
#include <cmath>
#include <string>

#include "pattern/draft.h"
#include "pattern/fit.h"
#include "pattern/openings.h"
#include "pattern/seams.h"

namespace platewright {
namespace {

/// The tongue of a knee band reaches so far beyond the fore leg, for the buckle. Common practice,
/// no source.
constexpr double kKneeTongue = 65;
/// How far each half reaches between the legs, as a part of the girth of the seat. Common practice,
/// no source.
constexpr double kForeFork = 1.0 / 24;
constexpr double kHindFork = 1.0 / 10;
/// How far above the fork its curve begins, and below it ends in the inner seam, mm. There the legs
/// are marked to be sewn together.
constexpr double kForkRise = 110;
constexpr double kForkDrop = 270;
/// Eyelets lie so far within the end of the waistband. Common practice, no source.
constexpr double kEyeletWithin = 12;
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
        add_knee_bands();
        add_bearer();
        add_side_flap();
        add_gusset();
        add_waistband();
        return std::move(pieces_);
    }

  private:
    const PatternSource& source_;
    const Flat* front_;
    const Flat* back_;
    std::vector<PatternPiece> pieces_;

    void keep(PatternPiece piece) { keep_drawn(std::move(piece), source_.allowance, pieces_); }

    static const FlatPart* legs(const Flat& flat) {
        const FlatPart* breeches = flat.part("breeches");
        return breeches != nullptr ? breeches : flat.part("overalls");
    }

    /// The inner seam on that side of the flat's middle.
    static const Chain* inner_seam(const Flat& flat, const FlatPart& part, double side) {
        return seam_on(flat, part, {"-left-inseam", "-right-inseam"}, side);
    }

    static const Chain* side_seam(const Flat& flat, const FlatPart& part, double side) {
        return seam_on(flat, part, {"-left-seam", "-right-seam"}, side);
    }

    static const Chain* seam_on(const Flat& flat,
                                const FlatPart& part,
                                std::initializer_list<const char*> names,
                                double side) {
        for (const char* which : names) {
            const Chain* seam = flat.guide(part.name + which);
            if (seam != nullptr && seam->front().x * side > 0) {
                return seam;
            }
        }
        return nullptr;
    }

    /// The wearer's left lies at positive x before, at negative behind.
    void add_legs() {
        double inner = 0;
        if (const FlatPart* part = front_ != nullptr ? legs(*front_) : nullptr) {
            inner = add_fore_leg(*part);
        }
        if (const FlatPart* part = back_ != nullptr ? legs(*back_) : nullptr) {
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
        if (const Chain* mouth = front_->guide("breeches-pocket-left")) {
            piece.slits.push_back(*mouth);
        }
        if (const Chain* seam = inner_seam(*front_, part, 1)) {
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
        const Chain* side = side_seam(*back_, part, -1);
        piece.outline = with_seat(between_uprights(part, -shapes::kBeyondAll, 0));
        if (side != nullptr && front_ != nullptr) {
            open_hind_knee(piece, *front_, *side);
        }
        piece.outline = above_band(piece.outline, *back_);
        if (const Chain* seam = inner_seam(*back_, part, -1)) {
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
        if (side_at_waist() <= 0 || girths.empty()) {
            return;
        }
        const Rect box = shapes::box(piece.outline);
        const double wide = length_between(piece.outline, side.front(), {kSeatWedgeWide, box.top});
        piece.ease = wide - (girths.front().finished / 2 - side_at_waist());
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

    void add_bearer() {
        auto piece = front_ != nullptr ? fall_bearer(*front_) : std::nullopt;
        if (piece) {
            keep(std::move(*piece));
        }
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

    /// One half each side, from the lacing behind to its lap in front: straight, as deep as drawn.
    void add_waistband() {
        const FlatPart* part = front_ != nullptr ? front_->part("waistband") : nullptr;
        const auto girths = front_ != nullptr ? finished_girths(*front_, source_.body)
                                              : std::vector<FinishedGirth>{};
        if (part == nullptr || girths.empty()) {
            return;
        }
        const Chain outline = shapes::joined(part->outline);
        const double depth = shapes::area(outline) / shapes::box(outline).width();
        const double length = girths.front().finished / 2 + kFrontLap;
        PatternPiece piece = draft_of("breeches", "waistband", *part);
        // The grain runs along it, so that it does not stretch.
        piece.outline = {{0, 0}, {depth, 0}, {depth, length}, {0, length}};
        const double middle = length - kFrontLap;
        piece.lines = {{{0, middle}, {depth, middle}}};
        piece.lined = true;
        mark_waistband(piece, *part, middle);
        keep(std::move(piece));
    }

    /// Turned so that its upper edge is the left one: the buttons of one half and the holes of the
    /// other, and the mouth of the fob pocket.
    void mark_waistband(PatternPiece& piece, const FlatPart& part, double middle) const {
        const Chain top = upper_edge(shapes::joined(part.outline));
        const auto turned = [&](Point p) {
            const auto after = std::ranges::find_if(top, [&](Point q) { return q.x >= p.x; });
            const double level = after == top.end() ? top.back().y : after->y;
            return Point{p.y - level, middle - p.x};
        };
        for (const Point button : buttons_of(part)) {
            piece.buttons.push_back(turned(button));
        }
        for (const auto& [from, to] : holes_of(part)) {
            piece.holes.emplace_back(turned(from), turned(to));
        }
        // The fall begins below one mark, the side seam meets the other.
        const double depth = shapes::box(piece.outline).right;
        if (const Chain* slit = front_->guide("fall-edge")) {
            add_notch(piece, {depth, middle - slit->front().x});
        }
        if (const double side = side_at_waist(); side > 0) {
            add_notch(piece, {depth, middle - side});
        }
        piece.closes_in_front = !piece.holes.empty();
        mark_eyelets(piece);
        if (const FlatPart* fob = front_->part("fob-left")) {
            const Chain mouth = upper_edge(shapes::joined(fob->outline));
            piece.slits.push_back({turned(mouth.front()), turned(mouth.back())});
        }
    }

    /// Half of the waistband that lies before the side seam.
    [[nodiscard]] double side_at_waist() const {
        const FlatPart* part = front_ != nullptr ? legs(*front_) : nullptr;
        const Chain* seam = part != nullptr ? side_seam(*front_, *part, 1) : nullptr;
        return seam != nullptr ? seam->front().x : 0;
    }

    /// Of the half on the wearer's left, which lies to the left of the page behind.
    void mark_eyelets(PatternPiece& piece) const {
        const FlatPart* band = back_ != nullptr ? back_->part("waistband") : nullptr;
        if (band == nullptr) {
            return;
        }
        const double top = shapes::box(shapes::joined(band->outline)).top;
        for (const Chain& line : band->lines) {
            // They are drawn as dots.
            if (length_of(line) < 1 && line.front().x < 0) {
                piece.eyelets.push_back({line.front().y - top, kEyeletWithin});
            }
        }
    }

    /// Cut double and folded along its middle, the grain along it: as long as it is before and
    /// behind, what passes under with the hind leg, and its tongue.
    void add_knee_bands() {
        const FlatPart* before = front_ != nullptr ? front_->part("knee-band-left") : nullptr;
        const FlatPart* behind = back_ != nullptr ? back_->part("knee-band-left") : nullptr;
        if (before == nullptr || behind == nullptr) {
            return;
        }
        const Chain outline = shapes::joined(before->outline);
        const double under = knee_underlap(*front_);
        const double length = shapes::box(outline).width() +
                              shapes::box(shapes::joined(behind->outline)).width() + under +
                              kKneeTongue;
        const double height = shapes::area(outline) / shapes::box(outline).width();
        PatternPiece piece = draft_of("breeches", "knee band", *before);
        piece.outline = {{0, 0}, {2 * height, 0}, {2 * height, length}, {0, length}};
        piece.lines = {{{height, 0}, {height, length}},
                       {{0, kKneeTongue}, {2 * height, kKneeTongue}},
                       {{0, length - under}, {2 * height, length - under}}};
        piece.paired = false;
        keep(std::move(piece));
    }
};

}  // namespace

std::vector<PatternPiece> breeches_pieces(const PatternSource& source) {
    return Breeches(source).all();
}

}  // namespace platewright
