// SPDX-License-Identifier: MIT
// From a man's plate to the tailor's sheets: his flats graded, measured, cut and added up.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "cli/sheet.h"
#include "layout/workshop.h"
#include "pattern/materials.h"
#include "read/specified_sheets.h"

namespace platewright::cli {

/// A workshop sheet with the man it is for, read and loaded.
struct TailorJob {
    SpecifiedWorkshop sheet;
    Job job;
    /// The standard size from which follows what has not been measured.
    Body size;
};

/// Reads the file; a plate stands for a workshop sheet that says nothing but its man. Errors: those
/// of reading and of the plate; cli.unknown-size.
std::optional<TailorJob> prepare_tailor(Workshop& workshop,
                                        FileId file,
                                        Diagnostics& to,
                                        Timings& timings);

/// Everything that is made of it; empty after an error. Warnings: cli.unlikely-measures where a
/// man's measures do not go together, cli.stated-measure where the drawing cannot have what is
/// ordered.
struct TailorWork {
    /// The man's measures, taken or of his size.
    Body body;
    WorkshopSheets sheets;
    std::vector<MaterialLine> materials;
};

/// The work itself; for any thread after `prepare_tailor`.
std::optional<TailorWork> tailor_work(const Workshop& workshop,
                                      const TailorJob& job,
                                      const Paper& paper,
                                      const Typesetter& type,
                                      Diagnostics& to);

/// The sheet of a workshop file; null after an error.
std::unique_ptr<Sheet> prepare_workshop_sheet(Workshop& workshop,
                                              FileId file,
                                              Diagnostics& to,
                                              Timings& timings);

}  // namespace platewright::cli
