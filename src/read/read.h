// SPDX-License-Identifier: MIT
// First stage: YAML text to what was written. Every problem of a file is reported, not only the
// first.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/diagnostic.h"
#include "read/specified.h"
#include "read/specified_sheets.h"

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

/// A clothing regulation or an amendment. Empty exactly when this call added an error.
/// Errors as for a plate, and read.duplicate-name, read.bad-date, read.unknown-property,
/// read.unknown-phrase, read.too-many.
std::optional<SpecifiedRegulation> read_regulation(const SourceMap& sources,
                                                   FileId file,
                                                   Diagnostics& to);

/// A regiment's own file. Errors as for a regulation.
std::optional<SpecifiedRegiment> read_regiment(const SourceMap& sources,
                                               FileId file,
                                               Diagnostics& to);

/// A comparison of two to six men. Errors as for a plate.
std::optional<SpecifiedComparison> read_comparison(const SourceMap& sources,
                                                   FileId file,
                                                   Diagnostics& to);

/// A recruit's handout. Errors as for a plate, and read.too-many.
std::optional<SpecifiedHandout> read_handout(const SourceMap& sources,
                                             FileId file,
                                             Diagnostics& to);

/// A chart. Errors as for a plate.
std::optional<SpecifiedChart> read_chart(const SourceMap& sources, FileId file, Diagnostics& to);

/// A tailor's sheets. Errors as for a plate; lengths as for a property.
std::optional<SpecifiedWorkshop> read_workshop(const SourceMap& sources,
                                               FileId file,
                                               Diagnostics& to);

/// What a YAML file is for.
enum class FileKind {
    plate,
    comparison,
    handout,
    chart,
    workshop,
    regulation,
    regiment,
    palette,
    customs,
    sizes
};

/// Told by the outermost keys: `plate` or `wardrobe`, `comparison`, `handout`, `chart`, `workshop`,
/// `regiment`, `regulation`, `palette`, `ranks`, `sizes`, whichever of them comes first here; a
/// file that has none is taken for a plate.
FileKind kind_of_file(std::string_view text);

/// Ranks and what they wear by custom (`templates/NAME/customs.yaml`). Errors as for a plate, and
/// read.duplicate-name.
std::optional<SpecifiedCustoms> read_customs(const SourceMap& sources,
                                             FileId file,
                                             Diagnostics& to);

/// Standard sizes (`templates/NAME/sizes.yaml`). Errors as for a plate, and read.duplicate-name.
std::optional<SpecifiedSizes> read_sizes(const SourceMap& sources, FileId file, Diagnostics& to);

/// A palette file. Errors as for a plate, and read.duplicate-name within a section. Warning:
/// read.outside-srgb.
std::optional<SpecifiedPalette> read_palette(const SourceMap& sources,
                                             FileId file,
                                             Diagnostics& to);

/// Text dump of the stage, the golden form: one line a value, `key = value   @line:column`, in
/// table order.
std::string dump(const SpecifiedPlate& plate, const SourceMap& sources);

/// The same of a regulation and a regiment, in the order of the file's keys in the reference;
/// `ranks / corporal / marks.number = 2   @12:30`.
std::string dump(const SpecifiedRegulation& regulation, const SourceMap& sources);
std::string dump(const SpecifiedRegiment& regiment, const SourceMap& sources);
std::string dump(const SpecifiedComparison& sheet, const SourceMap& sources);
std::string dump(const SpecifiedHandout& sheet, const SourceMap& sources);
std::string dump(const SpecifiedChart& sheet, const SourceMap& sources);
std::string dump(const SpecifiedWorkshop& sheet, const SourceMap& sources);

}  // namespace platewright
