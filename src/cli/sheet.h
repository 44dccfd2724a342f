// SPDX-License-Identifier: MIT
// A sheet of any kind, ready to be drawn.
#pragma once

#include <memory>
#include <optional>

#include "base/diagnostic.h"
#include "cli/timings.h"
#include "cli/workshop.h"
#include "layout/printing.h"

namespace platewright::cli {

/// What was read and loaded for one sheet. Nothing changes afterwards: any thread may draw it.
class Sheet {
  public:
    Sheet() = default;
    Sheet(const Sheet&) = delete;
    Sheet& operator=(const Sheet&) = delete;
    virtual ~Sheet() = default;

    /// Its pages, hatched where the ink asks for it, but not yet in greys; empty after an error.
    [[nodiscard]] virtual std::optional<Document> draw(const Printing& printing,
                                                       const Typesetter& type,
                                                       Diagnostics& to,
                                                       Timings& timings) const = 0;
};

/// Reads the file of a plate, an index, a comparison, a handout or a chart, loads what it needs and
/// looks through it; null after an error. The sheet stays good as long as `workshop`.
/// Errors: those of reading, of the workshop, and of the sheet's own kind.
std::unique_ptr<Sheet> prepare_sheet(Workshop& workshop,
                                     FileId file,
                                     Diagnostics& to,
                                     Timings& timings);

/// The men of a sheet that names their plates, each to be drawn in these views; nothing of one
/// that could not be had. Errors: those of the plates, cli.cannot-read and cli.wrong-file.
std::vector<std::optional<Job>> men_of(Workshop& workshop,
                                       const std::vector<WrittenText>& paths,
                                       const std::vector<WrittenText>& views,
                                       Diagnostics& to,
                                       Timings& timings);

}  // namespace platewright::cli
