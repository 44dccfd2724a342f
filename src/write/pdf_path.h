// SPDX-License-Identifier: MIT
// Paths in the operators of a PDF.
#pragma once

#include <string>

#include "base/geometry.h"

namespace platewright {

/// Appends the path's operators, coordinates rounded to `places`; it is not painted yet.
void append_pdf_path(std::string& to, const Path& path, int places);

}  // namespace platewright
