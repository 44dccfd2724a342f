// SPDX-License-Identifier: MIT
// The shipped data with a test's own files over it. Nothing is written, so that tests which run at
// the same time cannot meet.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "base/files.h"

namespace platewright::test {

/// Reads what a test has put under a path, and else the disk; remembers what was opened.
class FilesOverDisk : public FileReader {
  public:
    std::map<std::string, std::string> own;
    mutable std::vector<std::string> opened;

    [[nodiscard]] FileResult read(const std::string& path, std::size_t limit) const override {
        opened.push_back(path);
        const auto found = own.find(path);
        return found == own.end() ? disk_.read(path, limit) : FileResult{found->second, ""};
    }

    [[nodiscard]] std::vector<std::string> list(const std::string& folder,
                                                const std::string& ending) const override {
        return disk_.list(folder, ending);
    }

  private:
    DiskReader disk_;
};

}  // namespace platewright::test
