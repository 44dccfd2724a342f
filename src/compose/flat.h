// SPDX-License-Identifier: MIT
// A garment laid flat as plain data, for those who measure and cut: what this man wears of one
// view, without a line of drawing. Lengths in mm on the garment.
#pragma once

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "base/chain.h"
#include "base/geometry.h"
#include "resolve/uniform.h"
#include "vocabulary/measure.h"

namespace platewright {

struct Template;

/// Measures of the facings that an order may state.
struct StatedMeasures {
    std::optional<Measure> lapel_width;
    std::optional<Measure> cuff_height;
    std::optional<Measure> collar_height;
    std::optional<Measure> pocket_width;
    std::optional<Measure> pocket_depth;
};

/// What the uniform says of them: `lapels.width`, `cuffs.height`, `collar.height`,
/// `pockets.width`, `pockets.depth`.
StatedMeasures stated_by(const Uniform& uniform);

/// A place and what it becomes.
struct Knot {
    double from = 0;
    double to = 0;
};

/// Straight between the knots, and on beyond them in the last direction.
double between(std::span<const Knot> knots, double at);

/// What is sewn on along a line.
struct FlatRow {
    enum class Kind { buttons, holes, loops, piping, lace };

    Kind kind = Kind::buttons;
    Chain line;
    /// For buttons, holes and loops: the places; the holes' run along `line` like their buttons.
    std::vector<Point> at;
    /// Diameter of a button, length of a hole or loop, width of piping or lace.
    double size = 0;
    Material material;
    /// Of holes and loops, where each is worked, from its end at the edge.
    std::vector<std::pair<Point, Point>> holes = {};
};

/// Marks of rank or service on one sleeve, the lowest first.
struct FlatMarks {
    /// `marks`, `service` or `rings`.
    std::string group;
    bool left_sleeve = false;
    /// The edge that they are set above.
    Chain edge;

    struct Band {
        Chain lower;
        Chain upper;
        double width = 0;
    };

    std::vector<Band> bands;
};

/// One worn part of the view.
struct FlatPart {
    /// `lapel-left`.
    std::string name;
    /// The property of its cloth: `lapels.cloth`; empty for a fixed colour.
    std::string cloth_key;
    Material cloth;
    /// Closed chains.
    std::vector<Chain> outline;
    std::vector<FlatRow> rows;
    /// Seams, folds and lines that are drawn on it.
    std::vector<Chain> lines = {};
};

/// One view of a garment.
struct Flat {
    /// Title of the template: `Coat, front`.
    std::string title;
    std::map<std::string, Chain> guides;
    std::vector<FlatPart> parts;
    std::vector<FlatMarks> marks;

    /// The first part whose name begins so, or null.
    [[nodiscard]] const FlatPart* part(std::string_view name_begins) const;

    /// The guide of that name, or null.
    [[nodiscard]] const Chain* guide(const std::string& name) const;
};

/// What is worn of this view.
Flat flat_of(const Uniform& uniform, const Template& view);

/// Where a point goes that belongs to the part or guide of that name.
using Moving = std::function<Point(std::string_view name, Point at)>;

/// The template with every point of its parts, guides and anchors moved. Trimmings are set out anew
/// on the moved lines: buttons keep their size and number, not their spacing.
std::shared_ptr<const Template> moved(const Template& view, const Moving& moving);

/// Length along a chain.
double length_of(const Chain& chain);

}  // namespace platewright
