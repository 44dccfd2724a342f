// SPDX-License-Identifier: MIT
// One named layer of a page, drawn in mm on paper.
#pragma once

#include <string>

#include "base/drawing.h"
#include "base/tincture.h"
#include "layout/page.h"
#include "text/typesetter.h"

namespace platewright::sheet {

/// Collects shapes and words in painting order.
class Layer {
  public:
    explicit Layer(std::string name) { drawing_.root.name = std::move(name); }

    void fill(Path path, Colour colour, double alpha = 1);

    /// A line of `width` mm along the path.
    void stroke(Path path, Colour colour, double width, double alpha = 1);

    /// A straight line.
    void line(Point from, Point to, Colour colour, double width);

    /// Filled, with a line round it.
    void outlined(Path path, Colour inside, Colour edge, double width);

    /// White, hatched as the tincture is, with a black line round it.
    void hatched(Path path, TinctureId tincture, double width);

    void words(const std::string& words,
               Point at,
               const Type& type,
               Colour colour,
               Align align = Align::start);

    /// Everything of another layer, moved by `by`, on top of what is there.
    void append(const Layer& other, Point by);

    [[nodiscard]] bool empty() const { return drawing_.root.children.empty(); }

    /// Puts the layer on the page, if anything is on it.
    void put_on(Page& page) &&;

  private:
    /// A node of another layer whose paths stand here from `first` on.
    Node moved(const Node& node, PathId first, Point by);

    Drawing drawing_;
};

/// A thin line from `from` to `to` that swells to `thickness` in the middle, as a graver cuts it.
void add_swelled_line(Path& to_path, Point from, Point to, double thickness);

}  // namespace platewright::sheet
