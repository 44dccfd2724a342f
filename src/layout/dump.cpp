// SPDX-License-Identifier: MIT
// Text dump of the stage.
#include <string>

#include "base/text.h"
#include "layout/layout.h"

namespace platewright {
namespace {

/// Hundredths of a mm are finer than a printer's dot.
std::string number(double value) {
    return format_number(value, 2);
}

std::string point(Point p) {
    return "(" + number(p.x) + ", " + number(p.y) + ")";
}

std::string box(const Rect& r) {
    return "[" + number(r.left) + " " + number(r.top) + " " + number(r.right) + " " +
           number(r.bottom) + "]";
}

const char* face_name(Face face) {
    switch (face) {
        case Face::roman:
            return "roman";
        case Face::italic:
            return "italic";
        case Face::small_caps:
            return "small-caps";
        case Face::bold:
            return "bold";
        case Face::roman_small:
            return "roman-small";
        case Face::italic_small:
            return "italic-small";
    }
    return "";
}

const char* align_name(Align align) {
    switch (align) {
        case Align::start:
            return "start";
        case Align::middle:
            return "middle";
        case Align::end:
            return "end";
    }
    return "";
}

std::string text_line(const Text& text) {
    std::string line = "text \"" + text.words + "\" " + align_name(text.align) + " " +
                       point(text.at) + " " + face_name(text.face) + " " + number(text.size) + " " +
                       to_hex(text.colour);
    if (text.tracking != 0) {
        line += " tracking " + number(text.tracking);
    }
    line += text.lining ? " lining" : "";
    if (text.degrees != 0) {
        line += " turned " + number(text.degrees);
    }
    return line;
}

std::string shape_line(const Drawing& drawing, const Shape& shape) {
    const Rect bounds = drawing.paths[shape.path].bounds();
    const Point first = shape.placing().apply({bounds.left, bounds.top});
    const Point last = shape.placing().apply({bounds.right, bounds.bottom});
    std::string line = "shape " + box({first.x, first.y, last.x, last.y});
    if (shape.fill) {
        line += " fill " + to_hex(shape.fill->colour);
        line += shape.fill->alpha < 1 ? " alpha " + number(shape.fill->alpha) : "";
    }
    if (shape.stroke) {
        line += " line " + to_hex(shape.stroke->colour) + " " + number(shape.stroke->width);
    }
    return line;
}

/// Words, and the shapes too if they are this stage's own: a composed drawing is dumped by its own
/// stage.
void write_group(std::string& out, const Drawing& drawing, const Group& group, bool own) {
    for (const Node& node : group.children) {
        if (const auto* text = std::get_if<Text>(&node)) {
            out += "    " + text_line(*text) + "\n";
        } else if (const auto* shape = std::get_if<Shape>(&node)) {
            out += own ? "    " + shape_line(drawing, *shape) + "\n" : "";
        } else if (const auto* inner = std::get_if<Group>(&node)) {
            write_group(out, drawing, *inner, own);
        }
    }
}

void write_layer(std::string& out, const Placed& placed) {
    const bool own = placed.factor == 1 && placed.at == Point{};
    out += "  layer " + placed.drawing.root.name;
    if (!own) {
        out += " at " + point(placed.at) + " times " + format_number(placed.factor, 5);
    }
    out += "\n";
    write_group(out, placed.drawing, placed.drawing.root, own);
}

}  // namespace

std::string dump(const Document& document) {
    std::string out = "document \"" + document.title + "\"\n";
    out += "author \"" + document.author + "\"\n";
    out += "subject \"" + document.subject + "\"\n";
    out += "description \"" + document.description + "\"\n";
    out += "language " + document.language + "\n";
    for (const OutlineEntry& entry : document.outline) {
        out += "outline " + std::to_string(entry.level) + " \"" + entry.title + "\" page " +
               std::to_string(entry.page + 1) + " at " + number(entry.y) + "\n";
    }
    for (const Page& page : document.pages) {
        out += "page " + number(page.width) + " x " + number(page.height) + " mm, paper " +
               to_hex(page.paper) + "\n";
        for (const Placed& placed : page.items) {
            write_layer(out, placed);
        }
        for (const Link& link : page.links) {
            out += "  link " + box(link.area) + " to " +
                   (!link.to.empty() ? link.to
                    : link.uri.empty()
                        ? "page " + std::to_string(link.page + 1) + " at " + number(link.y)
                        : link.uri) +
                   "\n";
        }
        for (const NamedPlace& place : page.places) {
            out += "  place " + place.name + " at " + point(place.at) + "\n";
        }
    }
    return out;
}

}  // namespace platewright
