// SPDX-License-Identifier: MIT
// A template as read: shapes with the words written on them, all checked. templates/README.md is
// the convention.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "base/colour.h"
#include "base/geometry.h"
#include "compose/curve.h"
#include "compose/figure.h"
#include "compose/inks.h"
#include "vocabulary/condition.h"

namespace platewright {

/// What a piece is made of: what a property says, or always one colour; `shade` is a factor on its
/// lightness.
struct ClothSource {
    std::optional<PropertyId> property;
    Colour fixed;
    /// In an ornament: whatever it is made of where it is worn.
    bool given = false;
    double shade = 1;
};

/// `data-side` and `data-line` of a template.
enum class Side { left, right, both };
enum class LineWeight { none, fine, light, medium, heavy };

/// `class` of a line or trimming inside a part.
enum class DetailKind {
    seam,
    crease,
    line,
    stitch,
    fold,
    tone,
    light,
    patch,
    buttons,
    buttonholes,
    piping,
    lace,
    marks,
    number,
    fringe,
    ornament
};

/// A line, tone or trimming inside a part. Lengths in mm on the body; widths are for print at 1
/// : 7.2.
struct Detail {
    DetailKind kind = DetailKind::seam;
    Condition when;
    Path path;
    Curve curve;
    ClothSource cloth;
    /// For `buttonholes`: plain or laced, and the loops' colour. For `buttons`: the metal.
    std::optional<PropertyId> style;
    std::optional<PropertyId> count_from;
    int count = 0;
    double width = 1;
    double strength = 0.15;
    /// For `tone` and `light`: fading towards the edge.
    bool soft = false;
    /// For `tone` and `light`: laid in the colour of `cloth`, not in the part's own shade or light.
    bool tinted = false;
    double size = 16;
    double start = 0;
    double end = 0;
    double squash = 1;
    double length = 40;
    double gap = 10;
    double clear = 14;
    Side side = Side::right;
    std::optional<Curve> limit;
    /// For `marks` and `fringe`: the lower and the upper edge of the band.
    Curve lower;
    Curve upper;
    /// For `marks`: the group of properties that says what they are.
    std::string group = "marks";
    /// For `marks`: where chevrons have their point, from the inner seam (0) to the outer (1).
    double apex = 0.5;
    /// For `ornament`: which.
    std::optional<PropertyId> device;
    LineWeight line = LineWeight::fine;
};

/// One piece of cloth, leather, skin or metal: a group of the layer `parts`.
struct Part {
    std::string name;
    Condition when;
    ClothSource cloth;
    Surface surface = Surface::wool;
    Path shape;
    /// Where its contour is drawn; empty: all round the shape.
    Path edge;
    /// The volumes it lies on; with none, and not flat, its own shape is the volume.
    std::vector<std::string> zones;
    /// Volumes whose hatching alone is laid on it besides: how a skirt falls below the chest.
    std::vector<std::string> strokes;
    bool flat = false;
    double depth = 1;
    LineWeight line = LineWeight::medium;
    double shadow = 0;
    std::vector<std::string> on;
    std::vector<std::string> clip;
    bool silhouette = true;
    /// True measures of a facing as it lies flat, at equal steps from head to foot; empty: it does
    /// not follow what an order states.
    std::vector<double> truth;
    std::vector<Detail> details;
};

/// A volume of the body: shading follows it, not the single piece.
struct Zone {
    Path path;
    std::optional<Curve> axis;
    double bulge = 0;
    /// It hangs: its hatching runs along the axis.
    bool falls = false;
};

/// A template as read and checked: zones, guides, anchors and parts.
struct Template {
    std::string view;
    std::string title;
    Rect frame;
    std::map<std::string, Zone> zones;
    std::map<std::string, Curve> guides;
    std::map<std::string, Anchor> anchors;
    /// What to show enlarged: `cuff`, `hat`.
    std::map<std::string, Rect> frames;
    std::vector<Part> parts;
};

}  // namespace platewright
