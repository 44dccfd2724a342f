// SPDX-License-Identifier: MIT
// Ease by garment, and how wide each is drawn.
#include "pattern/fit.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <span>
#include <string_view>

#include "pattern/sleeves.h"

namespace platewright {
namespace {

using Of = BodyMeasure;

/// What the width of one flat is a part of.
enum class Round {
    /// A quarter of the garment lies on either side of its middle.
    middle,
    /// A half lies between the edges of one leg.
    leg,
};

struct FitLine {
    Of measure;
    const char* guide;
    double ease;
    Round round = Round::middle;
};

/// Common practice, no source; tight as the period cut. A jacket draft of 1954 for a chest of
/// 1000 mm has 120 mm at the chest, 95 at the waist, 85 at the seat, and calls it a matter of
/// taste.
constexpr std::array kCoat = {FitLine{Of::chest, "girth-chest", 90},
                              FitLine{Of::waist, "girth-waist", 80},
                              FitLine{Of::hip, "girth-hip", 100}};
constexpr std::array kSurtout = {FitLine{Of::chest, "girth-chest", 140},
                                 FitLine{Of::waist, "girth-waist", 140},
                                 FitLine{Of::hip, "girth-hip", 160}};
/// Jacket and waistcoat end above the seat.
constexpr std::array kJacket = {FitLine{Of::chest, "girth-chest", 70},
                                FitLine{Of::waist, "girth-waist", 60}};
constexpr std::array kWaistcoat = {FitLine{Of::chest, "girth-chest", 50},
                                   FitLine{Of::waist, "girth-waist", 50}};
constexpr std::array kBreeches = {FitLine{Of::waist, "girth-waist", 20},
                                  FitLine{Of::hip, "girth-seat", 110},
                                  FitLine{Of::knee, "girth-knee", 15, Round::leg}};
constexpr std::array kOveralls = {FitLine{Of::waist, "girth-waist", 20},
                                  FitLine{Of::hip, "girth-seat", 110},
                                  FitLine{Of::knee, "girth-knee", 40, Round::leg}};
/// Over the breeches, whose knee is of two cloths, buttoned and buckled.
constexpr std::array kLongGaiter = {FitLine{Of::knee, "girth-knee", 38, Round::leg},
                                    FitLine{Of::calf, "girth-calf", 10, Round::leg},
                                    FitLine{Of::least_leg, "girth-least-leg", 18, Round::leg}};
constexpr std::array kHalfGaiter = {FitLine{Of::calf, "girth-calf", 10, Round::leg},
                                    FitLine{Of::least_leg, "girth-least-leg", 18, Round::leg}};

struct Fitted {
    /// How the parts of its body begin.
    std::string_view part;
    std::string_view name;
    std::span<const FitLine> lines;
};

constexpr std::array kFitted = std::to_array<Fitted>({
    {"coat-", "coat", kCoat},
    {"coatee-", "coat", kCoat},
    {"surtout-", "coat", kSurtout},
    {"jacket-", "coat", kJacket},
    {"waistcoat-", "waistcoat", kWaistcoat},
    {"breeches", "breeches", kBreeches},
    {"overalls", "breeches", kOveralls},
    {"gaiter-long", "gaiters", kLongGaiter},
    {"gaiter-half", "gaiters", kHalfGaiter},
});

const Fitted* garment_of(const Flat& flat) {
    const auto worn = std::ranges::find_if(
        kFitted, [&](const Fitted& each) { return flat.part(each.part) != nullptr; });
    return worn == kFitted.end() ? nullptr : &*worn;
}

/// The legs are sewn into the waistband, which has the girth of the waist.
bool belongs(const FlatPart& part, const Fitted& garment) {
    return part.name.starts_with(garment.part) ||
           (garment.name == "breeches" && part.name == "waistband");
}

/// The flat's share of the girth at that height; nothing where the garment has ended.
std::optional<double> share_at(const Flat& flat, const Fitted& garment, Round round, double y) {
    double reach = 0;
    double least = 0;
    double greatest = 0;
    for (const FlatPart& part : flat.parts) {
        for (const Chain& chain : belongs(part, garment) ? part.outline : std::vector<Chain>{}) {
            const Crossing at = crossing(chain, y);
            if (at.found && std::max(std::abs(at.least), std::abs(at.greatest)) > reach) {
                reach = std::max(std::abs(at.least), std::abs(at.greatest));
                least = at.least;
                greatest = at.greatest;
            }
        }
    }
    if (reach <= 0) {
        return std::nullopt;
    }
    return round == Round::middle ? reach : greatest - least;
}

/// Between the legs of breeches the outline is crossed four times; the inner seam parts them.
std::optional<double> leg_at(const Flat& flat, const Fitted& garment, double y) {
    for (const char* side : {"-left", "-right"}) {
        const std::string name = std::string(garment.part) + side;
        const Chain* outer = flat.guide(name + "-seam");
        const Chain* inner = flat.guide(name + "-inseam");
        if (outer != nullptr && inner != nullptr) {
            return std::abs(x_at(*outer, y) - x_at(*inner, y));
        }
    }
    return share_at(flat, garment, Round::leg, y);
}

/// The garment's girth all round at that height of the flat.
std::optional<double> girth_at(const Flat& flat,
                               const Fitted& garment,
                               const FitLine& line,
                               double y) {
    if (line.round == Round::leg) {
        const auto width = leg_at(flat, garment, y);
        return width ? std::optional(2 * *width) : std::nullopt;
    }
    const auto reach = share_at(flat, garment, Round::middle, y);
    return reach ? std::optional(4 * *reach) : std::nullopt;
}

std::optional<double> height_of(const Flat& flat, const FitLine& line) {
    const Chain* guide = flat.guide(line.guide);
    return guide == nullptr || guide->empty() ? std::nullopt : std::optional(guide->front().y);
}

/// What is added at this line by what the flat does not show.
double beyond_flat(const Flat& flat, const Fitted& garment, const FitLine& line, double y) {
    if (garment.name != "breeches" || line.measure != Of::hip) {
        return 0;
    }
    double top = y;
    for (const Chain& chain : flat.part(garment.part)->outline) {
        for (const Point p : chain) {
            top = std::min(top, p.y);
        }
    }
    return seat_wedge(y - top);
}

/// A line of a garment as the flat has it: where, how wide, and what is added beside the flat.
struct FoundLine {
    FitLine line;
    double y = 0;
    double girth = 0;
    double beyond = 0;
};

std::vector<FoundLine> lines_of(const Flat& flat, const Fitted& garment) {
    std::vector<FoundLine> found;
    for (const FitLine& line : garment.lines) {
        const auto y = height_of(flat, line);
        if (const auto girth = y ? girth_at(flat, garment, line, *y) : std::nullopt) {
            found.push_back({line, *y, *girth, beyond_flat(flat, garment, line, *y)});
        }
    }
    return found;
}

}  // namespace

double seat_wedge(double below_top) {
    return 2 * kSeatWedgeWide *
           std::clamp((kSeatWedgeDeep - below_top) / (kSeatWedgeDeep + kSeatWedgeRise), 0.0, 1.0);
}

double half_neckline(const Flat& flat) {
    const Chain* before = flat.guide("neckline-before");
    const Chain* behind = flat.guide("neckline-behind");
    return before != nullptr && behind != nullptr ? length_of(*before) + length_of(*behind) : 0;
}

std::vector<FinishedGirth> finished_girths(const Flat& flat, const Body& body) {
    const Fitted* garment = garment_of(flat);
    if (garment == nullptr) {
        return {};
    }
    std::vector<FinishedGirth> girths;
    const auto add = [&](Of measure, double ease, double finished) {
        girths.push_back({std::string(garment->name), measure, body.of(measure), ease, finished});
    };
    if (const double neck = half_neckline(flat); neck > 0) {
        add(Of::neck, kNeckEase, 2 * neck);
    }
    for (const FoundLine& each : lines_of(flat, *garment)) {
        add(each.line.measure, each.line.ease, each.girth + each.beyond);
    }
    if (flat.part("knee-band-left") != nullptr) {
        add(Of::lower_knee, kBuckledEase, body.of(Of::lower_knee) + kBuckledEase);
    }
    if (flat.part("sleeve-left") != nullptr) {
        add(Of::upper_arm, kArmEase, body.of(Of::upper_arm) + kArmEase);
    }
    return girths;
}

std::vector<Knot> widening(const Flat& flat, const Body& body) {
    std::vector<Knot> knots;
    if (const Fitted* garment = garment_of(flat)) {
        for (const FoundLine& each : lines_of(flat, *garment)) {
            const double wanted = body.of(each.line.measure) + each.line.ease - each.beyond;
            knots.push_back({each.y, wanted / each.girth});
        }
    }
    return knots;
}

}  // namespace platewright
