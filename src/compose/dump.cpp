// SPDX-License-Identifier: MIT
// Text dump of a figure, the golden form of this stage.
#include <string>

#include "base/text.h"
#include "compose/compose.h"

namespace platewright {

namespace {

std::string at(Point p) {
    return format_number(p.x, 1) + "," + format_number(p.y, 1);
}

std::string box_of(const Path& path, const Affine& placing) {
    const Rect box = path.bounds();
    return at(placing.apply({box.left, box.top})) + ".." +
           at(placing.apply({box.right, box.bottom}));
}

std::string paint_of(const Shape& shape) {
    std::string text;
    if (shape.fill) {
        text += " fill " + to_hex(shape.fill->colour) +
                (shape.fill->alpha < 1 ? "/" + format_number(shape.fill->alpha, 3) : "") +
                (shape.fill->even_odd ? " even-odd" : "");
    }
    if (shape.stroke) {
        text += " stroke " + to_hex(shape.stroke->colour) + " " +
                format_number(shape.stroke->width, 2) +
                (shape.stroke->alpha < 1 ? "/" + format_number(shape.stroke->alpha, 3) : "");
    }
    return text;
}

void dump_group(std::string& text, const Drawing& drawing, const Group& group, std::size_t depth) {
    const std::string indent(depth * 2, ' ');
    text += indent + group.name + (group.clip.empty() ? "" : " (clipped)") + "\n";
    for (const Node& node : group.children) {
        if (const auto* inner = std::get_if<Group>(&node)) {
            dump_group(text, drawing, *inner, depth + 1);
        } else if (const auto* shape = std::get_if<Shape>(&node)) {
            const Path& path = drawing.paths[shape->path];
            text += indent + "  " + std::to_string(path.verbs.size()) + " steps " +
                    box_of(path, shape->placing()) + paint_of(*shape) + "\n";
        } else if (const auto* words = std::get_if<Text>(&node)) {
            text += indent + "  \"" + words->words + "\" " + at(words->at) + " size " +
                    format_number(words->size, 2) + "\n";
        }
    }
}

}  // namespace

std::string dump(const Figure& figure) {
    std::string text = "figure " + figure.view + " at 1:" + format_number(figure.scale, 2) + "\n";
    text += "frame " + at({figure.frame.left, figure.frame.top}) + ".." +
            at({figure.frame.right, figure.frame.bottom}) + " mm\n";
    for (const auto& [name, anchor] : figure.anchors) {
        text += "anchor " + name + " " + at(anchor.at) + "\n";
    }
    dump_group(text, figure.drawing, figure.drawing.root, 0);
    return text;
}

}  // namespace platewright
