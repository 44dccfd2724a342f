// SPDX-License-Identifier: MIT
// Where the templates and palettes are.
#include "cli/data_folder.h"

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <system_error>

#include "base/text.h"

namespace platewright::cli {
namespace {

namespace fs = std::filesystem;

bool is_data_folder(const fs::path& folder) {
    std::error_code ignored;
    return fs::is_directory(folder / "templates", ignored) &&
           fs::is_directory(folder / "palettes", ignored);
}

/// build/release/src/platewright lies three folders deep in the source.
fs::path above_program() {
    constexpr int folders_up = 5;
    std::error_code problem;
    fs::path folder = fs::read_symlink("/proc/self/exe", problem).parent_path();
    for (int i = 0; !problem && i < folders_up && !folder.empty(); ++i) {
        for (const fs::path& candidate : {folder, folder / "share" / "platewright"}) {
            if (is_data_folder(candidate)) {
                return candidate;
            }
        }
        folder = folder == folder.root_path() ? fs::path() : folder.parent_path();
    }
    return {};
}

}  // namespace

std::string find_data_folder(std::string& problem) {
    if (const char* wanted = std::getenv("PLATEWRIGHT_DATA");
        wanted != nullptr && *wanted != '\0') {
        if (!is_data_folder(wanted)) {
            problem = "PLATEWRIGHT_DATA is " + platewright::quoted(wanted) +
                      ", where no 'templates' and 'palettes' are";
            return {};
        }
        return wanted;
    }
    if (const fs::path found = above_program(); !found.empty()) {
        return found.string();
    }
    if (is_data_folder(PLATEWRIGHT_DATA_FOLDER)) {
        return PLATEWRIGHT_DATA_FOLDER;
    }
    problem = "the folders 'templates' and 'palettes' are not found";
    return {};
}

std::vector<std::string> template_sets(const std::string& data_folder) {
    std::vector<std::string> names;
    std::error_code problem;
    fs::directory_iterator at(fs::path(data_folder) / "templates", problem);
    for (; !problem && at != fs::directory_iterator(); at.increment(problem)) {
        std::error_code ignored;
        if (at->is_directory(ignored)) {
            names.push_back(at->path().filename().string());
        }
    }
    std::ranges::sort(names);
    return names;
}

}  // namespace platewright::cli
