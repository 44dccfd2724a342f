// SPDX-License-Identifier: MIT
// Reading and writing files, behind an interface so that tests need no disk.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace platewright {

/// What could go wrong with a file, as one line for the user; empty means nothing.
struct FileResult {
    std::string text;
    std::string problem;

    [[nodiscard]] bool ok() const { return problem.empty(); }
};

/// Where files are read from: the disk, or a test's memory.
class FileReader {
  public:
    virtual ~FileReader() = default;

    /// The whole file, or a problem ("no such file", "is a folder", "larger than 1 MB: …"). Never
    /// reads more than `limit` + 1 bytes.
    [[nodiscard]] virtual FileResult read(const std::string& path, std::size_t limit) const = 0;

    /// Names of the files in a folder that end in `ending`, sorted; empty if there is no such
    /// folder.
    [[nodiscard]] virtual std::vector<std::string> list(const std::string& folder,
                                                        const std::string& ending) const = 0;
};

/// The real disk.
class DiskReader : public FileReader {
  public:
    [[nodiscard]] FileResult read(const std::string& path, std::size_t limit) const override;
    [[nodiscard]] std::vector<std::string> list(const std::string& folder,
                                                const std::string& ending) const override;
};

/// Writes beside `path`, then renames, so that a reader sees the old file or the new one, never
/// half of it. Returns the problem, or an empty string.
std::string write_whole(const std::string& path, const std::string& bytes);

}  // namespace platewright
