// SPDX-License-Identifier: MIT
// The basic shapes and transforms of SVG 1.1 as paths.
#include "compose/svg_shapes.h"

#include <charconv>
#include <cmath>
#include <numbers>
#include <vector>

#include "base/limits.h"
#include "base/text.h"
#include "compose/curve.h"

namespace platewright {

namespace {

constexpr std::string_view kBlanks = " \t\r\n,";

std::optional<double> number_of(const pugi::xml_node& element, const char* name, double missing) {
    const pugi::xml_attribute attribute = element.attribute(name);
    if (attribute.empty()) {
        return missing;
    }
    const auto numbers = parse_numbers(attribute.value());
    if (!numbers || numbers->size() != 1 || std::abs(numbers->front()) > limits::kCoordinate) {
        return std::nullopt;
    }
    return numbers->front();
}

std::optional<Path> rect_of(const pugi::xml_node& element) {
    const auto x = number_of(element, "x", 0);
    const auto y = number_of(element, "y", 0);
    const auto w = number_of(element, "width", 0);
    const auto h = number_of(element, "height", 0);
    if (!x || !y || !w || !h || *w <= 0 || *h <= 0) {
        return std::nullopt;
    }
    return rectangle({*x, *y, *x + *w, *y + *h});
}

std::optional<Path> ellipse_of(const pugi::xml_node& element, const char* rx, const char* ry) {
    const auto x = number_of(element, "cx", 0);
    const auto y = number_of(element, "cy", 0);
    const auto w = number_of(element, rx, 0);
    const auto h = number_of(element, ry, 0);
    if (!x || !y || !w || !h || *w <= 0 || *h <= 0) {
        return std::nullopt;
    }
    return ellipse({*x, *y}, *w, *h);
}

std::optional<Path> line_of(const pugi::xml_node& element) {
    const auto x1 = number_of(element, "x1", 0);
    const auto y1 = number_of(element, "y1", 0);
    const auto x2 = number_of(element, "x2", 0);
    const auto y2 = number_of(element, "y2", 0);
    if (!x1 || !y1 || !x2 || !y2) {
        return std::nullopt;
    }
    Path path;
    path.move_to({*x1, *y1});
    path.line_to({*x2, *y2});
    return path;
}

std::optional<Path> poly_of(const pugi::xml_node& element, bool closed) {
    const auto numbers = parse_numbers(element.attribute("points").value());
    if (!numbers || numbers->size() < 4 || numbers->size() % 2 != 0 ||
        numbers->size() > limits::kPathSegments) {
        return std::nullopt;
    }
    Path path;
    for (std::size_t i = 0; i < numbers->size(); i += 2) {
        const Point p{(*numbers)[i], (*numbers)[i + 1]};
        if (path.empty()) {
            path.move_to(p);
        } else {
            path.line_to(p);
        }
    }
    if (closed) {
        path.close();
    }
    return path;
}

double radians(double degrees) {
    return degrees * std::numbers::pi / 180;
}

/// A turn by `v[0]` degrees about the origin, or about the point in `v[1]`, `v[2]`.
Affine turn_of(const std::vector<double>& v) {
    const double c = std::cos(radians(v[0]));
    const double s = std::sin(radians(v[0]));
    const Affine about{c, s, -s, c, 0, 0};
    if (v.size() == 1) {
        return about;
    }
    return Affine::translation(v[1], v[2]) * about * Affine::translation(-v[1], -v[2]);
}

std::optional<Affine> transform_step(std::string_view name, const std::vector<double>& v) {
    const std::size_t count = v.size();
    const bool pair = count == 1 || count == 2;
    if (name == "matrix" && count == 6) {
        return Affine{v[0], v[1], v[2], v[3], v[4], v[5]};
    }
    if (name == "translate" && pair) {
        return Affine::translation(v[0], count == 2 ? v[1] : 0);
    }
    if (name == "scale" && pair) {
        return Affine{v[0], 0, 0, v.back(), 0, 0};
    }
    if (name == "rotate" && (count == 1 || count == 3)) {
        return turn_of(v);
    }
    if (name == "skewX" && count == 1) {
        return Affine{1, 0, std::tan(radians(v[0])), 1, 0, 0};
    }
    if (name == "skewY" && count == 1) {
        return Affine{1, std::tan(radians(v[0])), 0, 1, 0, 0};
    }
    return std::nullopt;
}

}  // namespace

std::optional<std::vector<double>> parse_numbers(std::string_view text) {
    std::vector<double> numbers;
    std::size_t at = text.find_first_not_of(kBlanks);
    while (at != std::string_view::npos) {
        if (text[at] == '+') {
            ++at;
        }
        double value = 0;
        const auto [end, error] =
            std::from_chars(text.data() + at, text.data() + text.size(), value);
        if (error != std::errc() || !std::isfinite(value)) {
            return std::nullopt;
        }
        numbers.push_back(value);
        at = text.find_first_not_of(kBlanks, static_cast<std::size_t>(end - text.data()));
    }
    return numbers;
}

bool is_shape(std::string_view name) {
    return name == "path" || name == "rect" || name == "circle" || name == "ellipse" ||
           name == "line" || name == "polyline" || name == "polygon";
}

std::optional<Path> shape_of(const pugi::xml_node& element, std::string& problem) {
    const std::string_view name = element.name();
    if (name == "path") {
        return parse_path_data(element.attribute("d").value(), problem);
    }
    problem = "the measures of this shape cannot be read";
    if (name == "rect") {
        return rect_of(element);
    }
    if (name == "circle") {
        return ellipse_of(element, "r", "r");
    }
    if (name == "ellipse") {
        return ellipse_of(element, "rx", "ry");
    }
    if (name == "line") {
        return line_of(element);
    }
    return poly_of(element, name == "polygon");
}

std::optional<Affine> parse_transform(std::string_view text) {
    Affine all;
    std::string_view rest = trim(text);
    while (!rest.empty()) {
        const std::size_t open = rest.find('(');
        const std::size_t shut = rest.find(')');
        if (open == std::string_view::npos || shut == std::string_view::npos || shut < open) {
            return std::nullopt;
        }
        const auto numbers = parse_numbers(rest.substr(open + 1, shut - open - 1));
        const auto step =
            numbers ? transform_step(trim(rest.substr(0, open)), *numbers) : std::nullopt;
        if (!step) {
            return std::nullopt;
        }
        all = all * *step;
        rest.remove_prefix(shut + 1);
        const std::size_t next = rest.find_first_not_of(kBlanks);
        rest.remove_prefix(next == std::string_view::npos ? rest.size() : next);
    }
    return all;
}

}  // namespace platewright
