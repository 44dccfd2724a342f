// SPDX-License-Identifier: MIT
// Where dimension lines and their figures stand: led out of the drawing, short ones nearest to it,
// figures clear of every line (ISO 129-1). All in mm on paper, from the garment's origin.
#pragma once

#include <array>
#include <string>
#include <utility>
#include <vector>

#include "base/language.h"
#include "compose/flat.h"
#include "layout/pen.h"
#include "layout/ruler.h"
#include "pattern/dimensions.h"

namespace platewright::sheet {

/// One dimension as it is drawn.
struct DimensionLine {
    /// Tips of the arrows, in the order in which the words are read.
    Point from;
    Point to;
    /// There is no room for arrows between them.
    bool arrows_outside = false;
    /// The line itself; longer where arrows or words stand beyond an end.
    std::pair<Point, Point> line;
    /// From what is measured to the dimension line.
    std::vector<std::pair<Point, Point>> witnesses;
    /// What is measured within the drawing, of which the witness lines begin outside it.
    std::vector<Point> within;
    /// Where any of these lines lies on cloth, from one edge of it to the next.
    std::vector<std::pair<Point, Point>> on_cloth;
    std::string words;
    /// Middle of their baseline, and how they are turned.
    Point words_at;
    double degrees = 0;
    /// The strip of paper they stand on, and whether it covers edges of the drawing.
    std::array<Point, 4> ground;
    bool covers_edges = false;
    /// How much is wrong with this place; `kBadPlace` and more: something is crossed or does not
    /// fit.
    double cost = 0;
};

/// What costs so much has no good place.
inline constexpr double kBadPlace = 50;

/// What dimensions are laid round, and how they speak.
struct MeasuredFlat {
    /// The parts that are drawn, mm on the garment.
    const Flat& flat;
    Language language = Language::english;
    const OwnUnit& unit;
    Ruler& ruler;
};

/// Where dimensions are laid.
struct DimensionField {
    const MeasuredFlat& of;
    /// Denominator of the scale.
    double scale = 1;
    /// Where lines and words may stand, mm on paper.
    Rect room;
};

/// The dimensions in the order they were given. Shortest first each takes the place that costs
/// least: near the drawing, outside its cloth, clear of its edges and of all that stands already;
/// then each in turn is moved if a better place has come free.
std::vector<DimensionLine> lay_dimensions(const std::vector<Dimension>& dimensions,
                                          const DimensionField& field);

/// The box round all that is drawn of one.
Rect box_of(const DimensionLine& dimension);

/// Whether two convex outlines come nearer to each other than `clearance`, or, where that is
/// negative, reach farther into each other.
bool meet(const std::vector<Point>& a, const std::vector<Point>& b, double clearance);

/// What lies under dimension lines: on cloth a strip of paper, which stops short of every edge;
/// over a pattern's own lines nothing that would cut them.
enum class Casing { none, paper };

/// Draws them with the garment's origin at `origin`: all lines, then all words.
void draw_dimensions(const std::vector<DimensionLine>& dimensions,
                     Point origin,
                     Pen& pen,
                     Casing casing = Casing::none);

}  // namespace platewright::sheet
