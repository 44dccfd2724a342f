// SPDX-License-Identifier: MIT
// Paints a page with cairo, for pictures made of pixels.
#pragma once

#include <cairo.h>

#include "layout/page.h"
#include "text/typesetter.h"

namespace platewright {

/// Paints the paper and everything on it. One unit of `context` must be one mm. Throws CannotWrite.
void paint(cairo_t* context, const Page& page, const Typesetter& type);

}  // namespace platewright
