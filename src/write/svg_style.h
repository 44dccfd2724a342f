// SPDX-License-Identifier: MIT
// How a shape is painted, as SVG attributes.
#pragma once

#include <map>
#include <string>

#include "base/drawing.h"
#include "write/grid.h"

namespace platewright {

/// The attributes of a shape, each with a space before it. The root sets no fill, no line, round
/// ends and corners.
std::string svg_style(const Shape& shape, const Grid& grid);

/// Styles that many shapes share, each written once as a class.
class SvgClasses {
  public:
    /// Counts one shape painted so; all must be counted before the first `attributes`.
    void count(const std::string& style) { ++uses_[style]; }

    /// The style as it stands on an element: its class where enough shapes share it, else itself.
    std::string attributes(const std::string& style);

    /// The rules of all classes given out, in the order of their names.
    [[nodiscard]] const std::string& rules() const { return rules_; }

  private:
    std::map<std::string, int> uses_;
    std::map<std::string, std::string> names_;
    std::string rules_;
};

/// False if nothing of the shape is seen.
bool is_painted(const Shape& shape);

}  // namespace platewright
