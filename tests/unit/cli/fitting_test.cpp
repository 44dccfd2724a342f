// SPDX-License-Identifier: MIT
// An ordered measure moves the figure as it moves the tailor's flat.
#include "compose/fitting.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <initializer_list>
#include <map>
#include <string>
#include <vector>

#include "compose/curve.h"
#include "pattern/dimensions.h"
#include "pattern/shapes.h"
#include "support.h"

namespace platewright::cli {
namespace {

/// Figure and flat may differ by so much of a true measure, mm.
constexpr double kTolerance = 2;

constexpr const char* kAllViews = "front, back, side, flat-coat-front, flat-coat-back";

/// One man on all views, with what his order states and without.
class OrderedMan {
  public:
    explicit OrderedMan(const std::string& orders, const std::string& views = kAllViews) {
        const FileId file = bench_.sources.add(
            "trial.yaml",
            "plate: Trial\ncoat: blue\nfacings: red\n" + orders + "views: [" + views + "]\n");
        job_ = bench_.workshop.prepare(file, true, bench_.problems, bench_.timings);
        uniform_ = job_ ? bench_.workshop.uniform_of(*job_, bench_.problems) : std::nullopt;
    }

    [[nodiscard]] bool ready() const { return uniform_ && bench_.problems.all().empty(); }

    [[nodiscard]] const Template& usual(const std::string& view) const {
        return *job_->views.at(view);
    }

    [[nodiscard]] Template ordered(const std::string& view) const {
        return fitted(*uniform_, usual(view)).value_or(usual(view));
    }

    /// The measure of the flat, moved as ordered or as it is drawn.
    [[nodiscard]] double flat(const std::string& view, const char* what, bool as_ordered) const {
        const StatedMeasures stated = as_ordered ? stated_by(*uniform_) : StatedMeasures{};
        const Flat drawn = flat_of(*uniform_, usual(view));
        const Moving moving = grading_of(Hang::trunk, reference_body(), stated, drawn);
        const Flat graded = flat_of(*uniform_, *moved(usual(view), moving));
        for (const Dimension& each : dimensions_of(view, graded, stated)) {
            if (each.what == what) {
                return each.mm();
            }
        }
        return 0;
    }

  private:
    Bench bench_;
    std::optional<Job> job_;
    std::optional<Uniform> uniform_;
};

Chain outline_of(const Template& view, const std::string& name) {
    const auto part = std::ranges::find(view.parts, name, &Part::name);
    return part == view.parts.end() ? Chain{{0, 0}} : outlines(part->shape).front();
}

/// How far an outline reaches square to that direction.
double hang_of_flap(const Chain& outline, Point way) {
    const auto [least, most] =
        std::ranges::minmax(outline, {}, [way](Point p) { return cross(way, p); });
    return cross(way, most) - cross(way, least);
}

/// The cord along the free edge of a flap.
const Chain& cord_of(const Part& flap) {
    return std::ranges::find(flap.details, DetailKind::piping, &Detail::kind)->curve.chain();
}

/// How wide and deep a flap is as it is moved, were it not foreshortened; every flap of that name.
std::vector<Point> flaps(const OrderedMan& man,
                         const std::string& view,
                         const std::string& begins) {
    const Template before = man.usual(view);
    const Template after = man.ordered(view);
    std::vector<Point> found;
    for (std::size_t i = 0; i < before.parts.size(); ++i) {
        const Part& part = before.parts[i];
        if (part.name.starts_with(begins) && part.truth.size() == 2) {
            const Chain& was = cord_of(part);
            const Chain& is = cord_of(after.parts[i]);
            const Point along = unit(was.back() - was.front());
            // The sewn edge keeps its direction; what hangs from it, how far it hangs.
            const double sewn = length(is.back() - is.front()) / length(was.back() - was.front());
            const double hung = hang_of_flap(outlines(after.parts[i].shape).front(), along) /
                                hang_of_flap(outlines(part.shape).front(), along);
            EXPECT_NEAR(dot(along, unit(is.back() - is.front())), 1, 1e-6) << part.name;
            const bool upright = part.name.find("vertical") != std::string::npos;
            found.push_back(
                {part.truth[0] * (upright ? hung : sewn), part.truth[1] * (upright ? sewn : hung)});
        }
    }
    return found;
}

/// From a lapel's inner edge to its outer one, at that share of the way down.
double lapel_width(const Template& view, const std::string& name, double share) {
    const Chain& inner = view.guides.at(name + "-inner").chain();
    const double y = inner.front().y + (inner.back().y - inner.front().y) * share;
    const double edge = x_at(inner, y);
    const Crossing at = crossing(outline_of(view, name), y);
    return std::max(std::abs(at.greatest - edge), std::abs(at.least - edge));
}

/// How long a cuff is along the arm, bent edges and all.
double cuff_length(const Template& view, const std::string& name, Point down) {
    double least = 1e6;
    double most = -1e6;
    for (const Point p : outline_of(view, name)) {
        least = std::min(least, dot(p, down));
        most = std::max(most, dot(p, down));
    }
    return most - least;
}

double collar_height(const Template& view, const std::string& name, double x) {
    Chain turned;
    for (const Point p : outline_of(view, name)) {
        turned.push_back({p.y, p.x});
    }
    const Crossing at = crossing(turned, x);
    return at.greatest - at.least;
}

TEST(OrderedMeasures, LapelsOfFigureAndFlatAgree) {
    for (const char* shape : {"full", "half"}) {
        const std::string orders = std::string("lapels: {shape: ") + shape + ", width: 3 1/2 in}\n";
        const OrderedMan man(orders);
        ASSERT_TRUE(man.ready());
        const std::string part = shape == std::string("half") ? "lapel-half-left" : "lapel-left";
        for (const char* view : {"front", "side"}) {
            for (const double share : {0.2, 0.6}) {
                const double drawn = lapel_width(man.usual(view), part, share);
                const double fits = lapel_width(man.ordered(view), part, share);
                const double true_width = lapel_width(man.usual("flat-coat-front"), part, share);
                EXPECT_NEAR(fits / drawn * true_width, 88.9, kTolerance)
                    << shape << ", " << view << " at " << share;
            }
        }
        EXPECT_NEAR(man.flat("flat-coat-front", "lapel width above", true), 88.9, kTolerance);
        EXPECT_NEAR(man.flat("flat-coat-front", "lapel width below", true), 88.9, kTolerance);
    }
}

TEST(OrderedMeasures, CuffsOfFigureAndFlatAgree) {
    for (const char* height : {"3 in", "6 in"}) {
        const OrderedMan man(std::string("cuffs: {height: ") + height + "}\n");
        ASSERT_TRUE(man.ready());
        const double usual = man.flat("flat-coat-front", "cuff height", false);
        const double ordered = man.flat("flat-coat-front", "cuff height", true);
        for (const char* view : {"front", "back", "side"}) {
            const Template& drawn = man.usual(view);
            const Chain& edge = drawn.guides.at("cuff-edge-left").chain();
            const Chain& hem = drawn.guides.at("cuff-hem-left").chain();
            const Point arm = (hem.front() + hem.back() - edge.front() - edge.back()) * 0.5;
            const double longer = cuff_length(man.ordered(view), "cuff-left-round", unit(arm)) -
                                  cuff_length(drawn, "cuff-left-round", unit(arm));
            EXPECT_NEAR(usual + longer * usual / length(arm), ordered, kTolerance)
                << height << ", " << view;
        }
    }
}

TEST(OrderedMeasures, CollarsOfFigureAndFlatAgree) {
    for (const char* shape : {"standing", "falling", "stand-and-fall"}) {
        const OrderedMan man(std::string("collar: {height: 2 in, shape: ") + shape + "}\n");
        ASSERT_TRUE(man.ready());
        const double usual = man.flat("flat-coat-back", "collar height", false);
        const std::string behind = shape == std::string("stand-and-fall") ? "stand" : shape;
        for (const auto& [view, part, x] : {std::tuple("back", "collar-" + behind, 0.0),
                                            std::tuple("side", "collar-left-" + behind, 20.0)}) {
            const double drawn = collar_height(man.usual(view), part, x);
            const double fits = collar_height(man.ordered(view), part, x);
            EXPECT_NEAR(fits / drawn * usual, 50.8, kTolerance) << shape << ", " << view;
        }
        EXPECT_NEAR(man.flat("flat-coat-back", "collar height", true), 50.8, kTolerance) << shape;
    }
}

// What the figures say of their true measures is what the flats are drawn with.
TEST(OrderedMeasures, FiguresKnowTheMeasuresOfTheFlats) {
    const OrderedMan man("");
    ASSERT_TRUE(man.ready());
    const auto truth = [&](const char* view, const std::string& name) {
        const Template& drawn = man.usual(view);
        return std::ranges::find(drawn.parts, name, &Part::name)->truth;
    };
    EXPECT_NEAR(truth("front", "cuff-left-round").front(),
                man.flat("flat-coat-front", "cuff height", false),
                kTolerance);
    EXPECT_NEAR(truth("back", "collar-falling").front(),
                man.flat("flat-coat-back", "collar height", false),
                kTolerance);
    const std::vector<double> lapel = truth("front", "lapel-left");
    const auto& guides = man.usual("flat-coat-front").guides;
    const Chain& inner = guides.at("lapel-left-inner").chain();
    const Chain& outer = guides.at("lapel-left-outer").chain();
    for (std::size_t i = 0; i < lapel.size(); ++i) {
        const double share = static_cast<double>(i) / static_cast<double>(lapel.size() - 1);
        const double y = inner.front().y + (inner.back().y - inner.front().y) * share;
        EXPECT_NEAR(lapel[i], x_at(outer, y) - x_at(inner, y), kTolerance);
    }
}

// A sleeve that ended where the usual cuff begins would leave the arm bare above a low one.
TEST(OrderedMeasures, SleeveReachesUnderLowCuffAndMarksKeepTheirDistance) {
    const OrderedMan man("cuffs: {height: 2 in}\nmarks: {number: 2, shape: bars, cloth: white}\n");
    ASSERT_TRUE(man.ready());
    const Template low = man.ordered("front");
    const Rect sleeve = shapes::box(outline_of(low, "sleeve-left"));
    const Rect cuff = shapes::box(outline_of(low, "cuff-left-round"));
    EXPECT_GT(sleeve.bottom, cuff.top + 5);
    EXPECT_LT(sleeve.bottom, cuff.bottom);
    const auto lowest_mark = [](const Template& view) {
        const auto part = std::ranges::find(view.parts, "sleeve-left", &Part::name);
        const auto mark = std::ranges::find(part->details, DetailKind::marks, &Detail::kind);
        return mark->lower.chain().front().y;
    };
    const Rect usual = shapes::box(outline_of(man.usual("front"), "cuff-left-round"));
    EXPECT_NEAR(lowest_mark(low) - cuff.top, lowest_mark(man.usual("front")) - usual.top, 1);
}

/// Direction, shape and size of the flap of that name on a figure, as an order words them.
std::string worded(const std::string& name) {
    const auto word = [&](std::initializer_list<const char*> words, const char* usual) {
        const auto* found = std::ranges::find_if(
            words, [&](const char* each) { return name.find(each) != std::string::npos; });
        return std::string(found == words.end() ? usual : *found);
    };
    return "pockets: {direction: " + word({"horizontal", "vertical", "slanted"}, "") +
           ", shape: " + word({"plain", "pointed"}, "scalloped") +
           ", size: " + word({"large"}, "usual") + "}\n";
}

// The true measure that a figure's flap is drawn for is that of the coat laid flat.
TEST(OrderedMeasures, FlapsOfFigureAndFlatAgree) {
    const OrderedMan usual("");
    ASSERT_TRUE(usual.ready());
    std::map<std::string, Point> flat;
    for (const char* view : {"front", "back", "side"}) {
        for (const Part& part : usual.usual(view).parts) {
            if (!part.name.starts_with("pocket-") || part.truth.size() != 2) {
                continue;
            }
            const std::string words = worded(part.name);
            if (!flat.contains(words)) {
                const OrderedMan man(words, "flat-coat-front");
                flat[words] = {man.flat("flat-coat-front", "pocket flap width", false),
                               man.flat("flat-coat-front", "pocket flap depth", false)};
            }
            EXPECT_NEAR(part.truth[0], flat[words].x, 0.5) << view << ", " << part.name;
            EXPECT_NEAR(part.truth[1], flat[words].y, 0.5) << view << ", " << part.name;
        }
    }
    EXPECT_EQ(flat.size(), 18U);
}

TEST(Fitting, FlapsOfPocketsFollowTheirOrder) {
    const OrderedMan man("pockets: {width: 150 mm, depth: 120 mm}\n");
    ASSERT_TRUE(man.ready());
    for (const char* view : {"front", "back", "side"}) {
        const std::vector<Point> all = flaps(man, view, "pocket-left-");
        // Three shapes in three directions, usual and large.
        EXPECT_GE(all.size(), 18U) << view;
        for (const Point flap : all) {
            EXPECT_NEAR(flap.x, 150, 0.5) << view;
            EXPECT_NEAR(flap.y, 120, 0.5) << view;
        }
    }
}

TEST(Fitting, WhatIsNotOrderedOfAFlapStays) {
    const OrderedMan man("pockets: {depth: 120 mm}\n");
    ASSERT_TRUE(man.ready());
    const std::vector<Point> usual = flaps(OrderedMan(""), "back", "pocket-left-");
    const std::vector<Point> all = flaps(man, "back", "pocket-left-");
    ASSERT_EQ(all.size(), usual.size());
    for (std::size_t i = 0; i < all.size(); ++i) {
        // Outlines are measured by their chords.
        EXPECT_NEAR(all[i].x, usual[i].x, 0.05);
        EXPECT_NEAR(all[i].y, 120, 0.5);
    }
}

}  // namespace
}  // namespace platewright::cli
