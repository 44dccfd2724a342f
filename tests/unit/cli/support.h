// SPDX-License-Identifier: MIT
// Everything a sheet is prepared with, from the shipped data.
#pragma once

#include "cli/workshop.h"
#include "files_over_disk.h"

namespace platewright::cli {

/// A workshop over the project's own files, and what it reports.
struct Bench {
    test::FilesOverDisk files;
    SourceMap sources;
    Diagnostics problems;
    Timings timings;
    Workshop workshop{files, PLATEWRIGHT_SOURCE_DIR, sources};
};

}  // namespace platewright::cli
