// SPDX-License-Identifier: MIT
// First look at the bytes of a YAML file: what the parser would pass over in silence or misread is
// refused here.
#pragma once

#include <optional>
#include <string>

#include "base/diagnostic.h"

namespace platewright {

/// A text fit for the parser: byte for byte as long as the file up to where it stops.
struct Screened {
    std::string text;
    /// Something was blanked out or cut off, so that what the parser says of the shape of the file
    /// is not to be trusted.
    bool patched = false;
    /// Bytes to pass over at the beginning (a byte order mark).
    std::size_t start = 0;
};

/// Empty if the file is no text at all. Errors: read.too-large, read.not-utf8,
/// read.control-character, read.tab, read.several-documents, read.yaml (instructions to the
/// parser).
std::optional<Screened> screen(const SourceMap& sources, FileId file, Diagnostics& to);

}  // namespace platewright
