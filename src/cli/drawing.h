// SPDX-License-Identifier: MIT
// Drawing many plates, one thread each at a time.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "base/language.h"
#include "cli/exit_code.h"
#include "cli/outputs.h"
#include "cli/timings.h"
#include "cli/workshop.h"

namespace platewright::cli {

/// What holds for every plate of a run.
struct DrawSettings {
    Printing printing;
    double dpi = 300;
    /// Of every sheet; empty: as each says itself.
    std::optional<Language> language;
    /// How many plates are drawn at the same time; what is written does not depend on it.
    std::size_t jobs = 1;
};

/// What came of it.
struct DrawResult {
    ExitCode exit = ExitCode::done;
    /// The files that are there now, in the order of the inputs.
    std::vector<std::string> written;
    Timings timings;
};

/// Reads, draws and writes every plate; one that fails does not keep the others from being written.
/// Problems go to `to`.
DrawResult draw_all(const Outputs& outputs,
                    const DrawSettings& settings,
                    const FileReader& files,
                    Workshop& workshop,
                    SourceMap& sources,
                    Diagnostics& to);

/// The date for files from the environment's SOURCE_DATE_EPOCH (reproducible-builds.org), in
/// seconds since 1970; without it none, so that the same plate gives the same bytes. Warning:
/// cli.bad-date.
std::optional<std::int64_t> creation_date(Diagnostics& to);

}  // namespace platewright::cli
