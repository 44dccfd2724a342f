// SPDX-License-Identifier: MIT
// Last stage: pages to bytes. Writers know no word of uniforms.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <stdexcept>
#include <string>

#include "layout/page.h"
#include "text/typesetter.h"

namespace platewright {

/// A page cannot be made: too many pixels, no memory. `what()` is one line for the user; the
/// command line prints it and leaves with "cannot write".
class CannotWrite : public std::runtime_error {
  public:
    using std::runtime_error::runtime_error;
};

/// One page as a stand-alone SVG with named layers, title, description and embedded subsets of the
/// type. Throws std::out_of_range if there is no such page.
std::string write_svg(const Document& document, std::size_t page, const Typesetter& type);

/// All pages as a vector PDF. `created`: seconds since 1970 for the creation date; none: no date is
/// written. Throws CannotWrite.
std::string write_pdf(const Document& document,
                      const Typesetter& type,
                      std::optional<std::int64_t> created);

/// One page at `dpi` pixels to the inch, with the density recorded. Throws CannotWrite if that
/// makes more pixels than limits::kPngPixels, or less than one; std::out_of_range if there is no
/// such page.
std::string write_png(const Document& document,
                      std::size_t page,
                      const Typesetter& type,
                      double dpi);

/// One page as a DXF drawing (AutoCAD release 12, ASCII), 1 unit a mm, y upward: outlines as
/// polylines in the layer of their item, words as TEXT. Fills are outlines, clips are ignored, and
/// letters outside ASCII become `?`. Throws std::out_of_range if there is no such page.
std::string write_dxf(const Document& document, std::size_t page);

}  // namespace platewright
