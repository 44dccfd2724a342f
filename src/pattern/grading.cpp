// SPDX-License-Identifier: MIT
// Grading: the landmarks of the flats, and how points between them move.
#include "pattern/grading.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <span>
#include <tuple>
#include <utility>

#include "pattern/fit.h"
#include "pattern/pockets.h"
#include "pattern/shapes.h"

namespace platewright {
namespace {

/// Heights on the flats, mm below the neck point. Above the shoulders' line a garment is as wide as
/// the man is built; its ease begins under the arm.
constexpr double kShoulderLine = 80;
constexpr double kWaistLine = 400;
/// Half breadths on the flats: side of the neck, point of the shoulder.
constexpr double kNeckTop = -4;
constexpr double kNeckSide = 74;
constexpr double kShoulderPoint = 184;
/// The neck is cut so much wider than it is drawn under the collar.
constexpr double kNeckRoom = 1.1;
/// How far the shoulder falls to its length.
constexpr double kShoulderSlope = 50.0 / 110;
/// Where the deepening of the neck in front ends: at the side, and below.
constexpr double kDeepeningSide = 150;
constexpr double kDeepeningFoot = 200;
/// The shoulder's point, and the middle of the sleeve's hem, on the wearer's left.
constexpr Point kSleeveTop{kShoulderPoint, 46};
constexpr Point kNeckPoint{kNeckSide, kNeckTop};
constexpr Point kSleeveHem{365, 592.6};
/// Breeches: the fork below the waist.
constexpr double kFork = 292;
/// Gaiters: where the leg ends and the foot begins.
constexpr double kInstep = 470;

/// Straight between the knots, level beyond them.
double level_between(std::span<const Knot> knots, double at) {
    return between(knots, std::clamp(at, knots.front().from, knots.back().from));
}

/// The same without corners: level at every knot, so that no seam is bent there.
double smooth_between(std::span<const Knot> knots, double at) {
    if (at <= knots.front().from) {
        return knots.front().to;
    }
    if (at >= knots.back().from) {
        return knots.back().to;
    }
    std::size_t i = 1;
    while (at > knots[i].from) {
        ++i;
    }
    const double u = (at - knots[i - 1].from) / (knots[i].from - knots[i - 1].from);
    return knots[i - 1].to + (knots[i].to - knots[i - 1].to) * u * u * (3 - 2 * u);
}

double ratio(const Body& body, BodyMeasure measure) {
    return body.of(measure) / reference_body().of(measure);
}

/// The widening at that height; of a garment that has no girths of its own, the man's size.
double widened(std::span<const Knot> girths, const Body& body, double y) {
    return girths.empty() ? ratio(body, BodyMeasure::chest) : smooth_between(girths, y);
}

/// What is cut to the trunk: coat, jacket, waistcoat.
class Trunk {
  public:
    Trunk(const Body& body, const Flat& flat)
        : girths_{{kShoulderLine, ratio(body, BodyMeasure::chest)}},
          lengths_{{{0, 0},
                    {kWaistLine, kWaistLine * ratio(body, BodyMeasure::nape_to_waist)},
                    {kWaistLine + 100,
                     kWaistLine * ratio(body, BodyMeasure::nape_to_waist) +
                         100 * ratio(body, BodyMeasure::inside_leg)}}},
          neck_(ratio(body, BodyMeasure::neck) * kNeckRoom),
          arm_(ratio(body, BodyMeasure::arm)) {
        const std::vector<Knot> eased = widening(flat, body);
        girths_.insert(girths_.end(), eased.begin(), eased.end());
        deepen(body.of(BodyMeasure::neck) + kNeckEase, flat);
    }

    [[nodiscard]] Point operator()(Point p) const { return {across(p), down(p.y) + deepening(p)}; }

    /// A shoulder strap lies on the coat: it is not bent by its neck, but keeps its shape between
    /// the ends.
    [[nodiscard]] Point strap(Point p) const {
        const double side = p.x < 0 ? -1 : 1;
        const Point along = unit(kSleeveTop - kNeckPoint);
        const Point neck{across(kNeckPoint), down(kNeckPoint.y)};
        const Point top{across(kSleeveTop), down(kSleeveTop.y)};
        const Point turned = unit(top - neck);
        const double longer = length(top - neck) / length(kSleeveTop - kNeckPoint);
        const Point from = Point{p.x * side, p.y} - kSleeveTop;
        const Point to = top + turned * (dot(from, along) * longer) +
                         right_of(turned) * dot(from, right_of(along));
        return {to.x * side, to.y};
    }

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
    /// The neck in front is cut as deep as makes the whole neckline that long.
    void deepen(double wanted, const Flat& flat) {
        const Chain* before = flat.guide("neckline-before");
        const Chain* behind = flat.guide("neckline-behind");
        if (before == nullptr || behind == nullptr) {
            return;
        }
        neck_foot_ = before->back().y;
        double least = 0;
        double most = kDeepeningFoot - neck_foot_ - 20;
        for (int i = 0; i < 30; ++i) {
            depth_ = (least + most) / 2;
            const bool shorter = 2 * (moved_length(*before) + behind_length(*behind)) < wanted;
            (shorter ? least : most) = depth_;
        }
    }

    [[nodiscard]] double moved_length(Chain chain) const {
        std::ranges::transform(chain, chain.begin(), [this](Point p) { return (*this)(p); });
        return length_of(chain);
    }

    /// Behind nothing is deepened.
    [[nodiscard]] double behind_length(Chain chain) const {
        std::ranges::transform(chain, chain.begin(), [this](Point p) {
            return Point{across(p), down(p.y)};
        });
        return length_of(chain);
    }

    [[nodiscard]] double deepening(Point p) const {
        if (depth_ <= 0) {
            return 0;
        }
        // The seam of the shoulder stays where it is.
        const double seam = kNeckTop + kShoulderSlope * std::max(0.0, std::abs(p.x) - kNeckSide);
        const std::array<Knot, 3> heights{{{seam, 0}, {neck_foot_, depth_}, {kDeepeningFoot, 0}}};
        const std::array<Knot, 2> sides{{{kNeckSide, 1}, {kDeepeningSide, 0}}};
        return level_between(heights, p.y) * level_between(sides, std::abs(p.x));
    }

    [[nodiscard]] double down(double y) const {
        return y < 0 ? y * std::max(0.5, lengths_[1].to / kWaistLine) : between(lengths_, y);
    }

    [[nodiscard]] double across(Point p) const {
        const double girth = smooth_between(girths_, p.y);
        // From the shoulders up the neck has its own girth.
        const std::array<Knot, 2> neck_ends{{{20, neck_}, {110, girth}}};
        const double near_neck = level_between(neck_ends, p.y);
        const std::array<Knot, 4> knots{{{0, 0},
                                         {kNeckSide, kNeckSide * near_neck},
                                         {kShoulderPoint, kShoulderPoint * girth},
                                         {2 * kShoulderPoint, 2 * kShoulderPoint * girth}}};
        return std::copysign(between(knots, std::abs(p.x)), p.x);
    }

    std::vector<Knot> girths_;
    std::array<Knot, 3> lengths_;
    double neck_;
    double arm_;
    /// Where the neck ends in front, and how much deeper it is cut than drawn.
    double neck_foot_ = 0;
    double depth_ = 0;
};

/// What is cut to the legs: breeches and overalls.
Point on_legs(const Body& body, std::span<const Knot> girths, Point p) {
    const double rise = kFork * ratio(body, BodyMeasure::height);
    const std::array<Knot, 3> lengths{
        {{0, 0}, {kFork, rise}, {kFork + 100, rise + 100 * ratio(body, BodyMeasure::inside_leg)}}};
    return {p.x * widened(girths, body, p.y), between(lengths, p.y)};
}

/// Gaiters: as long as the leg; their foot as large as the man is tall.
Point on_calf(const Body& body, std::span<const Knot> girths, Point p) {
    return {p.x * widened(girths, body, p.y), p.y * ratio(body, BodyMeasure::inside_leg)};
}

bool begins(std::string_view name, std::initializer_list<std::string_view> with) {
    return std::ranges::any_of(with, [&](std::string_view each) { return name.starts_with(each); });
}

/// How the facings are set right after the body has moved them.
class StatedFacings {
  public:
    StatedFacings(Flat flat, const StatedMeasures& stated, Trunk trunk)
        : flat_(std::move(flat)), stated_(stated), trunk_(std::move(trunk)) {
        if (stated_.pocket_width || stated_.pocket_depth) {
            set_flaps();
        }
    }

    [[nodiscard]] const Trunk& trunk() const { return trunk_; }

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
        const Chain* edge = flat_.guide("cuff-edge-left");
        const Chain* hem = flat_.guide("cuff-hem-left");
        if (edge == nullptr || hem == nullptr) {
            return trunk_.sleeve(p);
        }
        const double side = p.x < 0 ? -1 : 1;
        // Down the forearm: the sleeve is bent at the elbow.
        const Point hand = middle(*hem);
        const Point wrist = middle(*edge);
        const Point along = unit({std::abs(hand.x) - std::abs(wrist.x), hand.y - wrist.y});
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

    /// The flap of a pocket is as large as the order has it, measured from the middle of its sewn
    /// edge: along that and square to it.
    [[nodiscard]] Point pocket(std::string_view name, Point p) const {
        const Point at = trunk_(p);
        const auto flap = std::ranges::find_if(
            flaps_, [name](const StatedFlap& each) { return name.starts_with(each.name); });
        if (flap == flaps_.end()) {
            return at;
        }
        const Point place = flap->axes.within(at);
        return flap->axes.at({place.x * flap->longer, place.y * flap->deeper});
    }

  private:
    /// A flap as the body has moved it, and how much larger it is ordered along its sewn edge and
    /// square to that.
    struct StatedFlap {
        std::string name;
        FlapAxes axes;
        double longer = 1;
        double deeper = 1;
    };

    void set_flaps() {
        for (const FlatPart& part : flat_.parts) {
            if (part.name.starts_with("pocket-") && !part.outline.empty()) {
                flaps_.push_back(stated_flap(part));
            }
        }
    }

    [[nodiscard]] StatedFlap stated_flap(const FlatPart& part) const {
        const Chain outline = on_trunk(part.outline.front());
        const Chain* drawn = free_edge_of(flat_, part);
        const Chain edge = drawn == nullptr ? Chain{} : on_trunk(*drawn);
        const FlapAxes axes = axes_of(outline, drawn == nullptr ? nullptr : &edge);
        const Rect box = axes.box(outline);
        const auto ratio = [](const std::optional<Measure>& stated, double worn) {
            return stated && worn > 0 ? stated->mm / worn : 1.0;
        };
        const auto& [along, away] = axes.upright()
                                        ? std::tie(stated_.pocket_depth, stated_.pocket_width)
                                        : std::tie(stated_.pocket_width, stated_.pocket_depth);
        return {part.name, axes, ratio(along, box.width()), ratio(away, box.height())};
    }

    [[nodiscard]] Chain on_trunk(Chain chain) const {
        std::ranges::transform(chain, chain.begin(), [this](Point p) { return trunk_(p); });
        return chain;
    }

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

    Flat flat_;
    StatedMeasures stated_;
    Trunk trunk_;
    std::vector<StatedFlap> flaps_;
};

}  // namespace

Hang hang_of(std::string_view view) {
    if (view.find("breeches") != std::string_view::npos) {
        return Hang::legs;
    }
    return view.find("gaiter") != std::string_view::npos ? Hang::calf : Hang::trunk;
}

Moving grading_of(Hang hang, const Body& body, const StatedMeasures& stated, const Flat& flat) {
    if (hang == Hang::legs) {
        return [body, girths = widening(flat, body)](std::string_view, Point p) {
            return on_legs(body, girths, p);
        };
    }
    if (hang == Hang::calf) {
        std::vector<Knot> girths = widening(flat, body);
        girths.push_back({kInstep, ratio(body, BodyMeasure::height)});
        return [body, girths = std::move(girths)](std::string_view, Point p) {
            return on_calf(body, girths, p);
        };
    }
    return
        [facings = StatedFacings(flat, stated, Trunk(body, flat))](std::string_view name, Point p) {
            const Trunk& trunk = facings.trunk();
            if (begins(name, {"sleeve-", "cuff-", "marks-", "service-"})) {
                return facings.sleeve(p);
            }
            if (begins(name, {"lapel-"})) {
                return facings.lapel(name, p);
            }
            if (begins(name, {"strap-"})) {
                return trunk.strap(p);
            }
            if (begins(name, {"pocket-"})) {
                return facings.pocket(name, p);
            }
            return begins(name, {"collar-"}) ? facings.collar(p) : trunk(p);
        };
}

}  // namespace platewright
