// SPDX-License-Identifier: MIT
// One named layer of a page.
#include "layout/layer.h"

#include <utility>

#include "layout/style.h"

namespace platewright::sheet {

std::vector<Node>& Layer::nodes() {
    std::vector<Node>& all = drawing_.root.children;
    return in_link_ ? std::get<Group>(all.back()).children : all;
}

void Layer::begin_link(const Linked& place) {
    in_link_ = !place.empty();
    if (in_link_) {
        Group group;
        group.anchor = place.anchor;
        group.leads_to = place.to;
        drawing_.root.children.emplace_back(std::move(group));
        links_.push_back(place);
    }
}

void Layer::fill(Path path, Colour colour, double alpha) {
    const PathId id = drawing_.add(std::move(path));
    nodes().emplace_back(Shape{id, {}, Fill{colour, alpha, false}, std::nullopt});
}

void Layer::stroke(Path path, Colour colour, double width, double alpha) {
    const PathId id = drawing_.add(std::move(path));
    nodes().emplace_back(Shape{id, {}, std::nullopt, Stroke{colour, width, alpha, {}}});
}

void Layer::line(Point from, Point to, Colour colour, double width) {
    Path path;
    path.move_to(from);
    path.line_to(to);
    stroke(std::move(path), colour, width);
}

void Layer::outlined(Path path, Colour inside, Colour edge, double width) {
    const PathId id = drawing_.add(std::move(path));
    nodes().emplace_back(Shape{id, {}, Fill{inside, 1, false}, Stroke{edge, width, 1, {}}});
}

void Layer::hatched(Path path, TinctureId tincture, double width) {
    constexpr Colour black{0, 0, 0};
    Hatching hatching = hatching_over(path.bounds(), tincture, 1);
    const PathId id = drawing_.add(std::move(path));
    nodes().emplace_back(Shape{id, {}, Fill{{0xff, 0xff, 0xff}, 1, false}, std::nullopt});
    if (!hatching.empty()) {
        Group within;
        within.name = "hatching";
        within.step = true;
        within.clip.push_back(id);
        within.children.emplace_back(
            Shape{drawing_.add(std::move(hatching.path)),
                  {},
                  std::nullopt,
                  Stroke{black, hatching.width, 1, std::move(hatching.dash)}});
        nodes().emplace_back(std::move(within));
    }
    nodes().emplace_back(Shape{id, {}, std::nullopt, Stroke{black, width, 1, {}}});
}

void Layer::words(
    const std::string& words, Point at, const Type& type, Colour colour, Align align) {
    nodes().emplace_back(text_in(type, words, at, colour, align));
}

void Layer::append(const Layer& other, Point by) {
    const PathId first = drawing_.paths.size();
    drawing_.paths.insert(
        drawing_.paths.end(), other.drawing_.paths.begin(), other.drawing_.paths.end());
    for (const Node& node : other.drawing_.root.children) {
        nodes().push_back(moved(node, first, by));
    }
    for (Linked link : other.links_) {
        link.area = {link.area.left + by.x,
                     link.area.top + by.y,
                     link.area.right + by.x,
                     link.area.bottom + by.y};
        links_.push_back(std::move(link));
    }
}

Node Layer::moved(const Node& node, PathId first, Point by) {
    if (const auto* shape = std::get_if<Shape>(&node)) {
        Shape made = *shape;
        made.path += first;
        made.shift = made.shift + by;
        return made;
    }
    if (const auto* text = std::get_if<Text>(&node)) {
        Text made = *text;
        made.at = made.at + by;
        return made;
    }
    Group made = std::get<Group>(node);
    for (PathId& id : made.clip) {
        // A clip is not shifted where it is used: its path has to move.
        id = drawing_.add(drawing_.paths[id + first].transformed(Affine::translation(by.x, by.y)));
    }
    for (Node& child : made.children) {
        child = moved(child, first, by);
    }
    return made;
}

void Layer::put_on(Page& page) && {
    for (const Linked& link : links_) {
        if (!link.to.empty()) {
            page.links.push_back({link.area, {}, 0, 0, link.to});
        }
        if (!link.anchor.empty()) {
            page.places.push_back({link.anchor, {link.area.left, link.area.top}});
        }
    }
    if (!empty()) {
        page.items.push_back(Placed{{}, 1, std::move(drawing_)});
    }
}

void add_swelled_line(Path& to_path, Point from, Point to, double thickness) {
    const Point along = to - from;
    // A cubic with both handles at height h rises to 3/4 h in the middle.
    const Point swell = right_of(unit(along)) * (thickness / 2 / 0.75);
    to_path.move_to(from);
    to_path.cubic_to(from + along * 0.35 + swell, from + along * 0.65 + swell, to);
    to_path.cubic_to(from + along * 0.65 - swell, from + along * 0.35 - swell, from);
    to_path.close();
}

}  // namespace platewright::sheet
