// SPDX-License-Identifier: MIT
// The facings of a figure, as wide and high as an order states them.
#include "compose/fitting.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <limits>
#include <utility>

#include "compose/curve.h"

namespace platewright {
namespace {

/// The ends of what lies inside closed chains on one level line.
struct Extent {
    double least = std::numeric_limits<double>::max();
    double most = std::numeric_limits<double>::lowest();

    [[nodiscard]] bool found() const { return least < most; }

    [[nodiscard]] double middle() const { return (least + most) / 2; }
};

/// Axes to measure along: `across` is level, `down` runs downward.
struct Axes {
    Point from;
    Point down{0, 1};

    [[nodiscard]] Point across() const { return right_of(down) * -1; }

    [[nodiscard]] Point in(Point p) const { return {dot(p - from, across()), dot(p - from, down)}; }

    [[nodiscard]] Point out(Point p) const { return from + across() * p.x + down * p.y; }
};

/// Closed chains in those axes.
std::vector<Chain> in(const Axes& axes, const std::vector<Chain>& chains) {
    std::vector<Chain> all = chains;
    for (Chain& chain : all) {
        for (Point& p : chain) {
            p = axes.in(p);
        }
    }
    return all;
}

Extent at_level(const std::vector<Chain>& chains, double y) {
    Extent extent;
    for (const Chain& chain : chains) {
        if (const Crossing here = crossing(chain, y); here.found) {
            extent.least = std::min(extent.least, here.least);
            extent.most = std::max(extent.most, here.greatest);
        }
    }
    return extent;
}

/// The least and the greatest height of closed chains.
Extent heights(const std::vector<Chain>& chains) {
    Extent extent;
    for (const Chain& chain : chains) {
        for (const Point p : chain) {
            extent.least = std::min(extent.least, p.y);
            extent.most = std::max(extent.most, p.y);
        }
    }
    return extent;
}

/// The true measure at that share of the way from head to foot.
double truth_at(const std::vector<double>& truth, double share) {
    const double steps = static_cast<double>(truth.size() - 1);
    const double at = std::clamp(share, 0.0, 1.0) * steps;
    const auto before = static_cast<std::size_t>(at);
    const std::size_t after = std::min(before + 1, truth.size() - 1);
    return truth[before] + (truth[after] - truth[before]) * (at - static_cast<double>(before));
}

/// A cuff on the forearm: its hem stays, its edge climbs or sinks along the arm, as wide as the
/// sleeve is there.
class Cuff {
  public:
    /// `sleeve`: outlines of the sleeve it is worn on; `ratio`: of the ordered height to the usual.
    Cuff(const Chain& edge, const Chain& hem, const std::vector<Chain>& sleeve, double ratio)
        : axes_{middle(hem), unit(middle(hem) - middle(edge))},
          sleeve_(in(axes_, sleeve)),
          height_(length(middle(hem) - middle(edge))),
          shift_(height_ * (1 - ratio)) {
        const double most = std::min(height_, height_ * ratio) / 3;
        const double above = sag(edge, most);
        const double below = sag(hem, most);
        knots_ = {{{-height_ - above - 100, -height_ - above - 100 + shift_},
                   {-height_ - above, -height_ - above + shift_},
                   {-height_ + above, -height_ + above + shift_},
                   {-below, -below},
                   {100, 100}}};
    }

    /// A point of the cuff.
    [[nodiscard]] Point moved(Point p) const {
        const Point at = axes_.in(p);
        const double to = between(knots_, at.y);
        const Extent before = sleeve_at(at.y);
        const Extent after = sleeve_at(to);
        if (!before.found() || !after.found()) {
            return axes_.out({at.x, to});
        }
        const double wider = (after.most - after.least) / (before.most - before.least);
        return axes_.out({after.middle() + (at.x - before.middle()) * wider, to});
    }

    /// A mark above the cuff keeps its distance from it, one at the elbow its place.
    [[nodiscard]] Point mark(Point p) const {
        constexpr double reach = 260;
        const Point at = axes_.in(p);
        const double share = std::clamp(1 + (at.y + height_) / reach, 0.0, 1.0);
        return axes_.out({at.x, at.y + shift_ * share});
    }

    /// The sleeve's end, so that it reaches under a low cuff.
    [[nodiscard]] Point sleeve(Point p) const {
        constexpr double under = 6;
        const double end = heights(sleeve_).most;
        const double wanted = std::max(end, std::min(-under, end + shift_));
        const double from = std::min(-height_, end) - 40;
        const std::array<Knot, 3> knots{{{from - 100, from - 100}, {from, from}, {end, wanted}}};
        const Point at = axes_.in(p);
        return axes_.out({at.x, between(knots, at.y)});
    }

  private:
    static Point middle(const Chain& line) { return (line.front() + line.back()) * 0.5; }

    /// How far a line strays from square to the arm; edge and hem are moved without being bent.
    [[nodiscard]] double sag(const Chain& line, double most) const {
        double far = 0;
        for (const Point p : line) {
            far = std::max(far, std::abs(axes_.in(p).y - axes_.in(middle(line)).y));
        }
        return std::clamp(far + 0.5, 0.0, most);
    }

    /// The sleeve across the arm at that height; what lies under the cuff is as its last width.
    [[nodiscard]] Extent sleeve_at(double y) const {
        constexpr double from_end = 25;
        return at_level(sleeve_, std::min(y, heights(sleeve_).most - from_end));
    }

    Axes axes_;
    std::vector<Chain> sleeve_;
    double height_;
    /// Down the arm.
    double shift_;
    std::array<Knot, 5> knots_;
};

/// A lapel's inner edge is the coat's and stays; everything else keeps its share of the width.
class Lapel {
  public:
    Lapel(Chain inner, const Part& part, double stated)
        : inner_(std::move(inner)), truth_(part.truth), stated_(stated) {}

    [[nodiscard]] Point moved(Point p) const {
        const double top = inner_.front().y;
        const double share = (p.y - top) / (inner_.back().y - top);
        const double edge = x_at(inner_, p.y);
        return {edge + (p.x - edge) * stated_ / truth_at(truth_, share), p.y};
    }

  private:
    Chain inner_;
    std::vector<double> truth_;
    double stated_;
};

/// A collar grows from the seam of the neck; one that falls, from its fold.
class Collar {
  public:
    Collar(const Part& seamed, bool falls, double ratio)
        : chains_(outlines(seamed.shape)), falls_(falls), ratio_(ratio) {
        // Levels of the turned outline are the places across.
        for (Chain& chain : chains_) {
            for (Point& p : chain) {
                p = {p.y, p.x};
            }
        }
        across_ = heights(chains_);
    }

    [[nodiscard]] Point moved(Point p) const {
        constexpr double from_end = 0.5;
        const double x = std::clamp(p.x, across_.least + from_end, across_.most - from_end);
        const Extent at = at_level(chains_, x);
        if (!at.found()) {
            return p;
        }
        const double still = falls_ ? at.least : at.most;
        return {p.x, still + (p.y - still) * ratio_};
    }

  private:
    std::vector<Chain> chains_;
    Extent across_;
    bool falls_;
    double ratio_;
};

/// A flap as it is drawn, slanting and foreshortened.
struct Flap {
    /// The middle of its sewn edge.
    Point origin;
    Point along;
    /// The way that it hangs, which as drawn is not square to its edge.
    Point away;

    [[nodiscard]] Point moved(Point p, double longer, double deeper) const {
        const double skew = cross(along, away);
        const double at = cross(p - origin, away) / skew;
        const double down = cross(along, p - origin) / skew;
        return origin + along * (at * longer) + away * (down * deeper);
    }
};

bool stands_upright(const Part& flap) {
    return flap.name.find("vertical") != std::string::npos;
}

/// By the cord along its free edge, which begins and ends where it is sewn on; of one without, by
/// the box round it.
Flap flap_of(const Part& drawn) {
    const std::vector<Chain> all = outlines(drawn.shape);
    for (const Detail& detail : drawn.details) {
        const Chain& cord = detail.curve.chain();
        if (detail.kind != DetailKind::piping || cord.size() < 3 || cord.front() == cord.back()) {
            continue;
        }
        const Point along = unit(cord.back() - cord.front());
        const Axes axes{(cord.front() + cord.back()) * 0.5, right_of(along)};
        Rect box;
        for (const Chain& chain : in(axes, all)) {
            for (const Point p : chain) {
                box.include(p);
            }
        }
        const Point away = unit(axes.out(box.centre()) - axes.from);
        if (std::abs(cross(along, away)) > 0.3) {
            return {axes.from, along, away};
        }
    }
    const Rect box = drawn.shape.bounds();
    return stands_upright(drawn) ? Flap{box.centre(), {0, 1}, {1, 0}}
                                 : Flap{{box.centre().x, box.top}, {1, 0}, {0, 1}};
}

/// Everything of one view.
class Fitting {
  public:
    Fitting(StatedMeasures stated, const Template& view)
        : view_(view), stated_(std::move(stated)), fitted_(view) {}

    std::optional<Template> fit() {
        for (std::size_t i = 0; i < view_.parts.size(); ++i) {
            const Part& part = view_.parts[i];
            const std::string key =
                part.cloth.property ? std::string(properties()[*part.cloth.property].key) : "";
            if (part.truth.empty()) {
                continue;
            }
            if (key == "lapels.cloth" && stated_.lapel_width) {
                lapel(part, fitted_.parts[i]);
            } else if (key == "collar.cloth" && stated_.collar_height) {
                collar(part, fitted_.parts[i]);
            } else if (key.starts_with("cuffs.") && stated_.cuff_height) {
                cuff(part, fitted_.parts[i]);
            } else if (part.name.starts_with("pocket-") &&
                       (stated_.pocket_width || stated_.pocket_depth)) {
                pocket(part, fitted_.parts[i]);
            }
        }
        return touched_ ? std::optional(std::move(fitted_)) : std::nullopt;
    }

  private:
    const Template& view_;
    StatedMeasures stated_;
    Template fitted_;
    bool touched_ = false;
    std::vector<std::string> sleeves_;

    void move(Part& part, const std::function<Point(Point)>& to) {
        move_part(part, [&](std::string_view, Point p) { return to(p); });
        touched_ = true;
    }

    [[nodiscard]] const Chain* guide(const std::string& name) const {
        const auto found = view_.guides.find(name);
        return found == view_.guides.end() ? nullptr : &found->second.chain();
    }

    /// The part of that name, or null.
    [[nodiscard]] const Part* part(const std::string& name) const {
        const auto found = std::ranges::find(view_.parts, name, &Part::name);
        return found == view_.parts.end() ? nullptr : &*found;
    }

    void lapel(const Part& drawn, Part& into) {
        if (const Chain* inner = guide(drawn.name + "-inner")) {
            const Lapel lapel(*inner, drawn, stated_.lapel_width->mm);
            move(into, [&](Point p) { return lapel.moved(p); });
        }
    }

    void collar(const Part& drawn, Part& into) {
        const double ratio = stated_.collar_height->mm / drawn.truth.front();
        const bool falls = drawn.name.ends_with("falling");
        // What falls of a collar that stands first goes with what stands.
        const bool over = drawn.name.ends_with("fall");
        const std::string begins = drawn.name.substr(0, drawn.name.find("stand-and-fall"));
        const std::string bare =
            begins.ends_with("fall") ? begins.substr(0, begins.size() - 4) : begins;
        const Part* stand = over ? part(bare + "stand") : nullptr;
        const Collar collar(stand != nullptr ? *stand : drawn, falls, ratio);
        move(into, [&](Point p) { return collar.moved(p); });
    }

    /// A flap grows from the middle of its sewn edge: along that, and the way that it hangs.
    void pocket(const Part& drawn, Part& into) {
        const auto ratio = [](const std::optional<Measure>& stated, double truth) {
            return stated ? stated->mm / truth : 1.0;
        };
        double along = ratio(stated_.pocket_width, drawn.truth.front());
        double away = ratio(stated_.pocket_depth, drawn.truth.back());
        if (stands_upright(drawn)) {
            std::swap(along, away);
        }
        const Flap flap = flap_of(drawn);
        move(into, [&](Point p) { return flap.moved(p, along, away); });
    }

    void cuff(const Part& drawn, Part& into) {
        const std::string side = drawn.name.find("right") != std::string::npos ? "right" : "left";
        // An arm that is not drawn twice alike has a name of its own for what its hand does.
        const std::string doing = drawn.name.ends_with("-musket") ? "-musket"
                                  : drawn.name.ends_with("-idle") ? "-idle"
                                                                  : "";
        const Chain* edge = guide("cuff-edge-" + side + doing);
        const Chain* hem = guide("cuff-hem-" + side + doing);
        const std::string name = "sleeve-" + side + doing;
        const Part* sleeve = part(name);
        if (edge == nullptr || hem == nullptr || sleeve == nullptr) {
            return;
        }
        const double ratio = stated_.cuff_height->mm / drawn.truth.front();
        const Cuff cuff(*edge, *hem, outlines(sleeve->shape), ratio);
        move(into, [&](Point p) { return cuff.moved(p); });
        if (std::ranges::find(sleeves_, name) == sleeves_.end()) {
            sleeves_.push_back(name);
            move_sleeve(cuff, fitted_.parts[static_cast<std::size_t>(sleeve - &view_.parts[0])]);
        }
    }

    static void move_sleeve(const Cuff& cuff, Part& sleeve) {
        Part marked = sleeve;
        move_part(sleeve, [&](std::string_view, Point p) { return cuff.sleeve(p); });
        for (std::size_t i = 0; i < sleeve.details.size(); ++i) {
            if (marked.details[i].kind == DetailKind::marks) {
                sleeve.details[i] = std::move(marked.details[i]);
                move_detail(sleeve.details[i], sleeve.name, [&](std::string_view, Point p) {
                    return cuff.mark(p);
                });
            }
        }
    }
};

}  // namespace

std::optional<Template> fitted(const Uniform& uniform, const Template& view) {
    const StatedMeasures stated = stated_by(uniform);
    const bool any = stated.lapel_width || stated.cuff_height || stated.collar_height ||
                     stated.pocket_width || stated.pocket_depth;
    const bool on_man = view.view == "front" || view.view == "back" || view.view == "side";
    return any && on_man ? Fitting(stated, view).fit() : std::nullopt;
}

}  // namespace platewright
