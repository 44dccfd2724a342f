// SPDX-License-Identifier: MIT
// Where the templates and palettes are.
#pragma once

#include <string>
#include <vector>

namespace platewright::cli {

/// The folder that holds `templates/` and `palettes/`: $PLATEWRIGHT_DATA; else the nearest folder
/// above the program, or `share/platewright` there; else where it was built from. Empty if there is
/// none; then `problem` says where was looked.
std::string find_data_folder(std::string& problem);

/// Names of the template sets in it, sorted.
std::vector<std::string> template_sets(const std::string& data_folder);

}  // namespace platewright::cli
