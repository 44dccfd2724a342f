// SPDX-License-Identifier: MIT
// What of a figure can be seen: a coarse raster, painted in the same order as the drawing.
#pragma once

#include <array>
#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "base/drawing.h"
#include "compose/figure.h"
#include "vocabulary/property.h"

namespace platewright {

/// Closed outlines of straight pieces, in mm on the body.
using Outlines = std::vector<std::vector<Point>>;

/// Remembers for every few millimetres of the figure which property's material lies on top.
class Visible {
  public:
    explicit Visible(const Rect& frame);

    /// Whether each cell of the raster lies inside; empty for no outlines.
    using Mask = std::vector<bool>;

    [[nodiscard]] Mask mask_of(const Outlines& outlines) const;

    /// Lays a material over the inside of the outlines, as far as it lies within `clip` (all of it,
    /// if that is empty); no property: something that is no matter of the uniform, such as a face.
    void lay(const Outlines& outlines, const Mask& clip, std::optional<PropertyId> of);

    /// The same of all that a group's nodes from number `first` on paint opaquely.
    void lay(const Group& group,
             std::size_t first,
             const Drawing& drawing,
             const Mask& clip,
             std::optional<PropertyId> of);

    /// A part of the dress lies there whose shape these choices decide.
    void shape(const Outlines& outlines, const Mask& clip, const std::vector<PropertyId>& choices);

    /// By key: how much of each property is seen, and where best; what is not seen is left out.
    [[nodiscard]] std::map<std::string, Seen> seen() const;

    /// What lies on top in each cell.
    [[nodiscard]] Tops tops() const;

  private:
    /// Side of a cell, in mm on the body: a button covers some twenty.
    static constexpr double kCell = 4;

    [[nodiscard]] Point middle(std::size_t cell) const;
    /// What of `clip` lies within what a group is clipped to as well.
    [[nodiscard]] Mask clipped(const Group& group, const Drawing& drawing, const Mask& clip) const;
    /// Calls `each(from, to)` for the cells inside, row by row.
    template <typename Each>
    void for_spans(const Outlines& outlines, const Each& each) const;
    [[nodiscard]] std::vector<int> distances(const std::vector<int>& raster) const;
    /// How far a cell is from others, at most, from what its neighbours in that direction are.
    void carry(const std::vector<int>& raster,
               std::vector<int>& steps,
               std::size_t cell,
               long neighbour) const;
    /// How well a place shows its number: by its room, and of thin things by how much of them alone
    /// is seen round it.
    [[nodiscard]] int merit(const std::vector<int>& raster,
                            const std::vector<int>& steps,
                            std::size_t cell) const;
    /// The outermost places of each number that have room enough.
    void add_edges(const std::vector<int>& raster,
                   const std::vector<int>& steps,
                   std::map<int, Seen>& seen) const;
    /// For each cell how many cells hang together with it.
    [[nodiscard]] std::vector<int> sizes_of_pieces(const std::vector<int>& raster) const;
    /// The leftmost and the rightmost place of a level, with one cell more; of two in one column
    /// the better.
    [[nodiscard]] std::array<std::size_t, 2> outermost(std::array<std::size_t, 2> ends,
                                                       std::size_t cell,
                                                       const std::vector<int>& raster,
                                                       const std::vector<int>& steps) const;
    /// The outermost places of each number on every level, in pieces that are no mere remnants.
    void add_levels(const std::vector<int>& raster,
                    const std::vector<int>& steps,
                    std::map<int, Seen>& seen) const;
    /// What is seen of each number of a raster, without keys; 0 is nothing.
    [[nodiscard]] std::map<int, Seen> seen_in(const std::vector<int>& raster) const;
    /// What lies on top in a cell.
    [[nodiscard]] int thing(std::size_t cell) const;
    /// What level lines to the places of a property cross.
    void count_crossed(std::vector<Site>& sites) const;
    /// The key of the material under most of the cells of a property.
    [[nodiscard]] std::string beneath(int property) const;

    Rect frame_;
    std::size_t columns_ = 0;
    std::size_t rows_ = 0;
    /// Property number and one; 0 where there is none. What lay there before another property did.
    std::vector<int> top_;
    std::vector<int> under_;
    /// Whether anything lies there, be it no matter of the uniform.
    std::vector<bool> covered_;
    /// Number of a part and one, and the choices that give each its shape.
    std::vector<int> parts_;
    std::vector<std::vector<PropertyId>> choices_;
};

}  // namespace platewright
