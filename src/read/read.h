// SPDX-License-Identifier: MIT
// First stage: YAML text to what was written. Every problem of a file is reported, not only the
// first.
#pragma once

#include <optional>
#include <string>

#include "base/diagnostic.h"
#include "read/specified.h"

namespace platewright {

/// A plate description. Empty exactly when this call added an error.
/// Errors, of the file's shape: those of `read_tree` in read/tree.h; of what it says:
/// read.unknown-key, read.missing-key, read.missing-value, read.no-colon, read.wrong-kind,
/// read.unknown-choice, read.out-of-range, read.bad-name.
std::optional<SpecifiedPlate> read_plate(const SourceMap& sources, FileId file, Diagnostics& to);

/// The same; `rest` becomes what could be read even after errors, for finding further problems,
/// never for drawing.
std::optional<SpecifiedPlate> read_plate(const SourceMap& sources,
                                         FileId file,
                                         Diagnostics& to,
                                         SpecifiedPlate& rest);

/// Ranks and what they wear by custom (`templates/NAME/customs.yaml`). Errors as for a plate, and
/// read.duplicate-name.
std::optional<SpecifiedCustoms> read_customs(const SourceMap& sources,
                                             FileId file,
                                             Diagnostics& to);

/// A palette file. Errors as for a plate, and read.duplicate-name within a section. Warning:
/// read.outside-srgb.
std::optional<SpecifiedPalette> read_palette(const SourceMap& sources,
                                             FileId file,
                                             Diagnostics& to);

/// Text dump of the stage, the golden form: one line a value, `key = value   @line:column`, in
/// table order.
std::string dump(const SpecifiedPlate& plate, const SourceMap& sources);

}  // namespace platewright
