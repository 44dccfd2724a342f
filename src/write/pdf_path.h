// SPDX-License-Identifier: MIT
// Paths in the operators of a PDF.
#pragma once

#include <string>

#include "base/geometry.h"
#include "write/grid.h"

namespace platewright {

/// Appends the path's operators, on the grid; it is not painted yet.
void append_pdf_path(std::string& to, const Path& path, const Grid& grid);

}  // namespace platewright
