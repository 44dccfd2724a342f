// SPDX-License-Identifier: MIT
// Last stage: pages to bytes. Writers know no word of uniforms.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "layout/page.h"
#include "text/typesetter.h"

namespace platewright {

/// One page as a stand-alone SVG 1.1 with named layers, title, description and embedded subsets of the type.
std::string write_svg(const Document& document, std::size_t page, const Typesetter& type);

/// All pages as a vector PDF. `created`: seconds since 1970 for the creation date; none: no date is written.
std::string write_pdf(const Document& document, const Typesetter& type, std::optional<std::int64_t> created);

/// One page at `dpi` pixels to the inch, with the density recorded.
std::string write_png(const Document& document, std::size_t page, const Typesetter& type, double dpi);

}  // namespace platewright
