// SPDX-License-Identifier: MIT
// One named layer of a page, drawn in mm on paper.
#pragma once

#include <string>

#include "base/drawing.h"
#include "base/tincture.h"
#include "layout/page.h"
#include "text/typesetter.h"

namespace platewright::sheet {

/// A stretch of a layer that leads somewhere, or is led to, or both.
struct Linked {
    /// Its own name; empty: nothing leads here.
    std::string anchor;
    /// The name of the place it leads to; empty: none.
    std::string to;
    /// What of the paper answers to it, mm.
    Rect area;

    [[nodiscard]] bool empty() const { return anchor.empty() && to.empty(); }
};

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

    /// What is added from here to `end_link` is one place; without names it changes nothing. Places
    /// do not lie in each other.
    void begin_link(const Linked& place);

    void end_link() { in_link_ = false; }

    /// Everything of another layer, moved by `by`, on top of what is there.
    void append(const Layer& other, Point by);

    [[nodiscard]] bool empty() const { return drawing_.root.children.empty(); }

    /// Puts the layer on the page, if anything is on it.
    void put_on(Page& page) &&;

  private:
    /// Where the next node goes.
    [[nodiscard]] std::vector<Node>& nodes();

    /// A node of another layer whose paths stand here from `first` on.
    Node moved(const Node& node, PathId first, Point by);

    Drawing drawing_;
    std::vector<Linked> links_;
    bool in_link_ = false;
};

/// A thin line from `from` to `to` that swells to `thickness` in the middle, as a graver cuts it.
void add_swelled_line(Path& to_path, Point from, Point to, double thickness);

}  // namespace platewright::sheet
