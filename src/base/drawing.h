// SPDX-License-Identifier: MIT
// The drawing tree: what is painted, in order, from few kinds of node. Written contract:
// every colour is final, every path is in the drawing's own mm, clip paths are oriented alike,
// names are unique in a group.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "base/colour.h"
#include "base/geometry.h"

namespace platewright {

/// A flat colour over the inside of a path. `alpha` 0 to 1.
struct Fill {
    Colour colour;
    double alpha = 1;
    bool even_odd = false;
};

/// A round-ended, round-cornered line; `dash` alternates drawn and skipped lengths. All in the
/// drawing's mm.
struct Stroke {
    Colour colour;
    double width = 1;
    double alpha = 1;
    std::vector<double> dash;
};

/// Index into `Drawing::paths`. Paths are shared, so that shading repeats a number and not an
/// outline.
using PathId = std::size_t;

/// A path painted once: filled first, then stroked.
struct Shape {
    PathId path = 0;
    /// Where the path is moved before it is painted.
    Point shift;
    std::optional<Fill> fill;
    std::optional<Stroke> stroke;
    /// How many times as large it is painted, about the drawing's origin before it is moved; other
    /// than 1 only without a stroke.
    double size = 1;

    /// From the path to where it is painted.
    [[nodiscard]] Affine placing() const { return {size, 0, 0, size, shift.x, shift.y}; }
};

/// Faces of the one type family, and `symbol` for the certainty marks. Names of font files stay in
/// `text/`.
enum class Face { roman, italic, small_caps, bold, roman_small, italic_small };
enum class Align { start, middle, end };

/// One line of live text on a baseline.
struct Text {
    std::string words;
    Point at;
    Face face = Face::roman;
    /// Size of the em and extra space between letters, in the drawing's mm.
    double size = 4;
    double tracking = 0;
    Colour colour;
    Align align = Align::start;
    /// Clockwise turn about `at`.
    double degrees = 0;
    /// Figures as high as capitals.
    bool lining = false;
};

struct Group;
using Node = std::variant<Shape, Text, Group>;

/// Nodes painted in order under one name; `clip`, if not empty, is the union of those paths.
struct Group {
    std::string name;
    /// A step of painting within a layer: its name stands in dumps but not in finished files.
    bool step = false;
    std::vector<PathId> clip;
    std::vector<Node> children;
    /// What links in the document call this place, and which place one gets to from here; empty if
    /// none.
    std::string anchor = {};
    std::string leads_to = {};
};

/// A picture: its paths, and the tree that paints them.
struct Drawing {
    std::vector<Path> paths;
    Group root;

    PathId add(Path path) {
        paths.push_back(std::move(path));
        return paths.size() - 1;
    }
};

}  // namespace platewright
