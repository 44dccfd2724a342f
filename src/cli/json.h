// SPDX-License-Identifier: MIT
// Problems for editors and scripts.
#pragma once

#include <string>

#include "base/diagnostic.h"

namespace platewright::cli {

/// An array with an object a problem: severity, code, message, hints; file, line, column, end (line
/// and column just after) where there is a place; labels, each with place and text. Lines and
/// columns from 1, columns in characters.
std::string in_json(const Diagnostics& problems, const SourceMap& sources);

}  // namespace platewright::cli
