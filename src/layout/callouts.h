// SPDX-License-Identifier: MIT
// Words beside a picture, each with a line to what it speaks of: no two labels overlap and no two
// lines cross.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "base/geometry.h"
#include "compose/figure.h"
#include "layout/layer.h"
#include "layout/ruler.h"

namespace platewright::sheet {

/// What is to be said, and the places on the page that may be pointed at from the left and from the
/// right; one of the two may be empty.
struct Callout {
    std::string words;
    std::vector<Point> from_left;
    std::vector<Point> from_right;
    /// How many other things a level line to each of them crosses; where not known, none.
    std::vector<int> crossed_from_left = {};
    std::vector<int> crossed_from_right = {};
};

/// Whether the lines from `a` to `b` and from `c` to `d` cross or touch.
bool lines_cross(Point a, Point b, Point c, Point d);

/// Whether the line from `from` to `to` runs through the box or touches it.
bool stroke_meets(Point from, Point to, const Rect& box);

/// Adds a place that no line may reach across the middle of the picture: from the left only what
/// lies left of it. `site` and `middle` are the picture's own, mm.
void add_site(const Site& site, double middle, const Placed& picture, Callout& to);

/// Where words may stand, mm on paper: left and right of the picture; either may be empty.
struct CalloutColumns {
    Rect left;
    Rect right;
};

/// Radius of the dot at the end of a line, in ems: on what is larger than that, and on small
/// things, which it must not hide.
inline constexpr double kDot = 0.16;
inline constexpr double kSmallDot = 0.095;

/// Words set in a column, and their line: level out of the column to `bend`, straight to `turn`,
/// and to `site`.
struct PlacedCallout {
    std::size_t number = 0;
    bool on_left = false;
    std::vector<std::string> lines;
    Rect box;
    Point start;
    Point bend;
    Point turn;
    Point site;
    /// Radius of the dot at the site, in ems.
    double dot = kDot;
    /// Its name and where it leads; the area is that of its words.
    Linked link = {};
};

/// Callouts in place, left column first, each from the top. `left_out`: numbers of those for which
/// the columns had no room or that have no site, the last ones first.
struct CalloutPlan {
    std::vector<PlacedCallout> placed;
    std::vector<std::size_t> left_out;
};

/// Lines are level if all find room that way (`place_level`); otherwise labels stand as near the
/// height of their sites as the others allow (least squares). The two-sided model of M. A. Bekos,
/// M. Kaufmann, A. Symvonis, A. Wolff, "Boundary labeling: Models and efficient algorithms for
/// rectangular maps", Computational Geometry 36, 2007, with straight leaders; crossings are undone
/// by exchanging labels, which always shortens the lines.
CalloutPlan place_callouts(const std::vector<Callout>& callouts,
                           const CalloutColumns& columns,
                           const Type& type,
                           Ruler& ruler);

/// What of its box the words of a callout take.
Rect words_area(const PlacedCallout& callout, const Type& type, Ruler& ruler);

/// Words, lines and a dot at each site.
void draw_callouts(const CalloutPlan& plan, const Type& type, Layer& on);

}  // namespace platewright::sheet
