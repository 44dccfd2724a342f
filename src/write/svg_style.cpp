// SPDX-License-Identifier: MIT
// Fill and line attributes.
#include "write/svg_style.h"

#include "write/colour_name.h"
#include "write/numbers.h"
#include "write/stroke.h"

namespace platewright {

namespace {

bool fills(const Shape& shape) {
    return shape.fill && shape.fill->alpha > 0;
}

bool strokes(const Shape& shape) {
    return shape.stroke && shape.stroke->alpha > 0 && shape.stroke->width > 0;
}

void append_opacity(std::string& to, const char* name, double alpha) {
    if (alpha < 1) {
        to += std::string(" ") + name + "=\"";
        append_short(to, alpha, 3);
        to += '"';
    }
}

void append_stroke(std::string& to, const Stroke& stroke, const Grid& grid) {
    to += " stroke=\"" + colour_name(stroke.colour) + "\" stroke-width=\"";
    append_short(to, stroke.width * grid.scale(), grid.places + 1);
    to += '"';
    append_opacity(to, "stroke-opacity", stroke.alpha);
    const std::vector<double> dash = usable_dash(stroke);
    for (std::size_t i = 0; i < dash.size(); ++i) {
        to += i == 0 ? " stroke-dasharray=\"" : " ";
        append_short(to, dash[i] * grid.scale(), grid.places + 1);
    }
    to += dash.empty() ? "" : "\"";
}

/// Attributes as declarations: ` fill="#fff" fill-opacity=".5"` is `fill:#fff;fill-opacity:.5`.
std::string declarations(const std::string& attributes) {
    std::string made;
    bool inside = false;
    for (const char c : attributes) {
        if (c == '"') {
            inside = !inside;
        } else if (c == ' ' && !inside) {
            made += made.empty() ? "" : ";";
        } else {
            made += c == '=' && !inside ? ':' : c;
        }
    }
    return made;
}

}  // namespace

std::string SvgClasses::attributes(const std::string& style) {
    constexpr int worthwhile = 4;
    const auto counted = uses_.find(style);
    const bool plain = style.find("dasharray") == std::string::npos;
    if (style.empty() || !plain || counted == uses_.end() || counted->second < worthwhile) {
        return style;
    }
    const auto [name, is_new] = names_.try_emplace(style);
    if (is_new) {
        name->second = "s" + std::to_string(names_.size());
        rules_ += "." + name->second + "{" + declarations(style) + "}\n";
    }
    return " class=\"" + name->second + '"';
}

bool is_painted(const Shape& shape) {
    return fills(shape) || strokes(shape);
}

std::string svg_style(const Shape& shape, const Grid& grid) {
    std::string made;
    if (fills(shape)) {
        made += " fill=\"" + colour_name(shape.fill->colour) + '"';
        append_opacity(made, "fill-opacity", shape.fill->alpha);
        made += shape.fill->even_odd ? " fill-rule=\"evenodd\"" : "";
    }
    if (strokes(shape)) {
        append_stroke(made, *shape.stroke, grid);
    }
    return made;
}

}  // namespace platewright
