// SPDX-License-Identifier: MIT
// The basic shapes and transforms of SVG 1.1 as paths.
#pragma once

#include <optional>
#include <pugixml.hpp>
#include <string>
#include <string_view>

#include "base/geometry.h"

namespace platewright {

/// The outline of a path, rect, circle, ellipse, line, polyline or polygon in its own coordinates.
/// On failure `problem` says why.
std::optional<Path> shape_of(const pugi::xml_node& element, std::string& problem);

/// Whether the element is one that `shape_of` reads.
bool is_shape(std::string_view element_name);

/// A `transform` attribute: matrix, translate, scale, rotate, skewX, skewY in any number.
std::optional<Affine> parse_transform(std::string_view text);

/// Numbers separated by blanks or commas; empty if any is malformed.
std::optional<std::vector<double>> parse_numbers(std::string_view text);

}  // namespace platewright
