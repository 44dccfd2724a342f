// SPDX-License-Identifier: MIT
// Files named on the command line.
#include "cli/open_file.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <utility>

namespace platewright::cli {
namespace {

FileResult read_input(std::size_t limit) {
    FileResult result;
    std::array<char, 65536> buffer{};
    while (result.text.size() <= limit) {
        const std::size_t room = std::min(buffer.size(), limit + 1 - result.text.size());
        const std::size_t got = std::fread(buffer.data(), 1, room, stdin);
        result.text.append(buffer.data(), got);
        if (got == 0) {
            break;
        }
    }
    if (std::ferror(stdin) != 0) {
        result.problem = "standard input broke off";
    } else if (result.text.size() > limit) {
        result.problem =
            "larger than " + std::to_string(limit / 1000) + " kB: too much for a file of this kind";
    }
    return result;
}

}  // namespace

std::optional<FileId> open_file(const FileReader& files,
                                const std::string& path,
                                std::size_t limit,
                                SourceMap& sources,
                                Diagnostics& to) {
    const bool input = path == kDash;
    FileResult file = input ? read_input(limit) : files.read(path, limit);
    const std::string name = input ? "<stdin>" : path.empty() ? "''" : path;
    if (!file.ok()) {
        report_unreadable(name, file.problem, to);
        return std::nullopt;
    }
    return sources.add(name, std::move(file.text));
}

void report_unreadable(const std::string& path, const std::string& problem, Diagnostics& to) {
    to.file_error("cli.cannot-read", path, "cannot be read: " + problem);
}

}  // namespace platewright::cli
