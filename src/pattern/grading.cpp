// SPDX-License-Identifier: MIT
// Grading: the landmarks of the flats, and how points between them move.
#include "pattern/grading.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <span>
#include <utility>

#include "pattern/shapes.h"

namespace platewright {
namespace {

/// Heights on the flats, mm below the neck point: where girths are taken.
constexpr double kChestLine = 220;
constexpr double kWaistLine = 400;
constexpr double kHipLine = 560;
/// Half breadths on the flats: side of the neck, point of the shoulder.
constexpr double kNeckSide = 74;
constexpr double kShoulderPoint = 184;
/// The shoulder's point, and the middle of the sleeve's hem, on the wearer's left.
constexpr Point kSleeveTop{kShoulderPoint, 46};
constexpr Point kSleeveHem{363.5, 590};
/// Breeches: the fork below the waist.
constexpr double kFork = 292;
constexpr double kSeatLine = 200;

/// Straight between the knots, level beyond them.
double level_between(std::span<const Knot> knots, double at) {
    return between(knots, std::clamp(at, knots.front().from, knots.back().from));
}

double ratio(const Body& body, BodyMeasure measure) {
    return body.of(measure) / reference_body().of(measure);
}

/// What is cut to the trunk: coat, jacket, waistcoat.
class Trunk {
  public:
    explicit Trunk(const Body& body)
        : girths_{{{0, ratio(body, BodyMeasure::chest)},
                   {kChestLine, ratio(body, BodyMeasure::chest)},
                   {kWaistLine, ratio(body, BodyMeasure::waist)},
                   {kHipLine, ratio(body, BodyMeasure::hip)}}},
          lengths_{{{0, 0},
                    {kWaistLine, kWaistLine * ratio(body, BodyMeasure::nape_to_waist)},
                    {kWaistLine + 100,
                     kWaistLine * ratio(body, BodyMeasure::nape_to_waist) +
                         100 * ratio(body, BodyMeasure::inside_leg)}}},
          neck_(ratio(body, BodyMeasure::neck)),
          arm_(ratio(body, BodyMeasure::arm)) {}

    [[nodiscard]] Point operator()(Point p) const { return {across(p), down(p.y)}; }

    /// Sleeves turn with the shoulder's point, as long as the arm and as wide as the chest asks.
    [[nodiscard]] Point sleeve(Point p) const {
        const double side = p.x < 0 ? -1 : 1;
        const Point top = (*this)(kSleeveTop);
        const Point along = unit(kSleeveHem - kSleeveTop);
        const Point from = Point{p.x * side, p.y} - kSleeveTop;
        const double wide = girths_.front().to;
        const Point to = top + along * (dot(from, along) * arm_) +
                         right_of(along) * (dot(from, right_of(along)) * wide);
        return {to.x * side, to.y};
    }

  private:
    [[nodiscard]] double down(double y) const {
        return y < 0 ? y * std::max(0.5, lengths_[1].to / kWaistLine) : between(lengths_, y);
    }

    [[nodiscard]] double across(Point p) const {
        const double girth = level_between(girths_, p.y);
        // From the shoulders up the neck has its own girth.
        const std::array<Knot, 2> neck_ends{{{20, neck_}, {110, girth}}};
        const double near_neck = level_between(neck_ends, p.y);
        const std::array<Knot, 4> knots{{{0, 0},
                                         {kNeckSide, kNeckSide * near_neck},
                                         {kShoulderPoint, kShoulderPoint * girth},
                                         {2 * kShoulderPoint, 2 * kShoulderPoint * girth}}};
        return std::copysign(between(knots, std::abs(p.x)), p.x);
    }

    std::array<Knot, 4> girths_;
    std::array<Knot, 3> lengths_;
    double neck_;
    double arm_;
};

/// What is cut to the legs: breeches and overalls.
Point on_legs(const Body& body, Point p) {
    const std::array<Knot, 2> girths{
        {{40, ratio(body, BodyMeasure::waist)}, {kSeatLine, ratio(body, BodyMeasure::hip)}}};
    const double rise = kFork * ratio(body, BodyMeasure::height);
    const std::array<Knot, 3> lengths{
        {{0, 0}, {kFork, rise}, {kFork + 100, rise + 100 * ratio(body, BodyMeasure::inside_leg)}}};
    return {p.x * level_between(girths, p.y), between(lengths, p.y)};
}

/// Gaiters: as long as the leg, as wide as the man is tall.
Point on_calf(const Body& body, Point p) {
    return {p.x * ratio(body, BodyMeasure::height), p.y * ratio(body, BodyMeasure::inside_leg)};
}

bool begins(std::string_view name, std::initializer_list<std::string_view> with) {
    return std::ranges::any_of(with, [&](std::string_view each) { return name.starts_with(each); });
}

/// How the facings are set right after the body has moved them.
class StatedFacings {
  public:
    StatedFacings(const Flat& flat, const StatedMeasures& stated, const Trunk& trunk)
        : flat_(flat), stated_(stated), trunk_(trunk) {}

    /// A lapel is as wide as drawn, or as ordered, at every height; its inner edge is the coat's.
    [[nodiscard]] Point lapel(std::string_view name, Point p) const {
        const std::string side = name.find("right") != std::string_view::npos ? "right" : "left";
        const std::string kind = name.starts_with("lapel-half") ? "lapel-half-" : "lapel-";
        const Chain* inner = flat_.guide(kind + side + "-inner");
        const Chain* outer = flat_.guide(kind + side + "-outer");
        if (inner == nullptr || outer == nullptr) {
            return trunk_(p);
        }
        const double y = std::clamp(p.y, inner->front().y, inner->back().y);
        const double edge = x_at(*inner, y);
        const double drawn = x_at(*outer, y) - edge;
        double from_edge = p.x - edge;
        if (stated_.lapel_width && std::abs(drawn) > 1) {
            from_edge *= stated_.lapel_width->mm / std::abs(drawn);
        }
        const Point moved_edge = trunk_({edge, p.y});
        return {moved_edge.x + from_edge, moved_edge.y};
    }

    /// The cuff is as high as drawn, or as ordered, from the hem up; the sleeve above gives way.
    [[nodiscard]] Point sleeve(Point p) const {
        const Point along = unit(kSleeveHem - kSleeveTop);
        const Chain* edge = flat_.guide("cuff-edge-left");
        const Chain* hem = flat_.guide("cuff-hem-left");
        if (edge == nullptr || hem == nullptr) {
            return trunk_.sleeve(p);
        }
        const double side = p.x < 0 ? -1 : 1;
        const auto station = [&](Point at) {
            return dot(Point{std::abs(at.x), at.y} - kSleeveTop, along);
        };
        const double lower = station(middle(*hem));
        const double upper = station(middle(*edge));
        const double longer = sleeve_growth(along);
        const double height = stated_.cuff_height ? stated_.cuff_height->mm : lower - upper;
        const double rise = height / longer;
        // Edge and hem are moved as they are, without being bent.
        const double most = std::min(rise, lower - upper) / 3;
        const auto spread = [&](const Chain& line, double at) {
            double far = 0;
            for (const Point each : line) {
                far = std::max(far, std::abs(station(each) - at));
            }
            return std::clamp(far + 0.5, 0.0, std::max(0.0, most));
        };
        const double above = spread(*edge, upper);
        const double below = spread(*hem, lower);
        const std::array<Knot, 5> knots{{{0, 0},
                                         {upper - above, lower - rise - above},
                                         {upper + above, lower - rise + above},
                                         {lower - below, lower - below},
                                         {lower, lower}}};
        const double at = station(p);
        const double shift = at <= 0 ? 0 : between(knots, at) - at;
        return trunk_.sleeve({p.x + along.x * shift * side, p.y + along.y * shift});
    }

    /// The collar is as high as drawn, or as ordered, from the neck's edge up.
    [[nodiscard]] Point collar(Point p) const {
        const Point at = trunk_(p);
        const auto [top, foot] = collar_behind();
        const double higher = stated_.collar_height ? stated_.collar_height->mm / (foot - top) : 1;
        return {at.x, p.y < foot ? trunk_({0, foot}).y + (p.y - foot) * higher : at.y};
    }

  private:
    /// Top and foot of the collar at the middle of the back: as it is drawn there; from in front,
    /// where it is not seen, those of the usual collar.
    [[nodiscard]] std::pair<double, double> collar_behind() const {
        constexpr double usual_top = -59;
        constexpr double usual_foot = 4;
        const FlatPart* part =
            flat_.guide("back-seam") != nullptr ? flat_.part("collar-") : nullptr;
        Chain turned;
        for (const Point p :
             part != nullptr && !part->outline.empty() ? part->outline.front() : Chain{}) {
            turned.push_back({p.y, p.x});
        }
        const Crossing at = crossing(turned, 0);
        return at.found ? std::pair(at.least, at.greatest) : std::pair(usual_top, usual_foot);
    }

    static Point middle(const Chain& chain) { return (chain.front() + chain.back()) * 0.5; }

    [[nodiscard]] double sleeve_growth(Point along) const {
        const Point from = trunk_.sleeve(kSleeveTop);
        return length(trunk_.sleeve(kSleeveTop + along * 100) - from) / 100;
    }

    const Flat& flat_;
    const StatedMeasures& stated_;
    const Trunk& trunk_;
};

}  // namespace

Hang hang_of(std::string_view view) {
    if (view.find("breeches") != std::string_view::npos) {
        return Hang::legs;
    }
    return view.find("gaiter") != std::string_view::npos ? Hang::calf : Hang::trunk;
}

Point sleeve_direction() {
    return unit(kSleeveHem - kSleeveTop);
}

Moving grading_of(Hang hang, const Body& body, const StatedMeasures& stated, const Flat& flat) {
    if (hang == Hang::legs) {
        return [body](std::string_view, Point p) { return on_legs(body, p); };
    }
    if (hang == Hang::calf) {
        return [body](std::string_view, Point p) { return on_calf(body, p); };
    }
    return [trunk = Trunk(body), stated, flat](std::string_view name, Point p) {
        const StatedFacings facings(flat, stated, trunk);
        if (begins(name, {"sleeve-", "cuff-", "marks-", "service-"})) {
            return facings.sleeve(p);
        }
        if (begins(name, {"lapel-"})) {
            return facings.lapel(name, p);
        }
        return begins(name, {"collar-"}) ? facings.collar(p) : trunk(p);
    };
}

}  // namespace platewright
