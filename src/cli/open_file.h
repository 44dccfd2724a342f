// SPDX-License-Identifier: MIT
// Files named on the command line.
#pragma once

#include <optional>
#include <string>

#include "base/diagnostic.h"
#include "base/files.h"

namespace platewright::cli {

/// Standard input and output on the command line.
inline constexpr const char* kDash = "-";

/// Reads a file, or standard input for `-`, at most `limit` bytes. Error: cli.cannot-read.
std::optional<FileId> open_file(const FileReader& files,
                                const std::string& path,
                                std::size_t limit,
                                SourceMap& sources,
                                Diagnostics& to);

/// Adds cli.cannot-read.
void report_unreadable(const std::string& path, const std::string& problem, Diagnostics& to);

}  // namespace platewright::cli
