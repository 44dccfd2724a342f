// SPDX-License-Identifier: MIT
// Reads the tables of published values in data/: a comment line with the source, a line of column
// names, rows.
#pragma once

#include <fstream>
#include <stdexcept>
#include <string>
#include <vector>

namespace platewright::outside {

using Row = std::vector<std::string>;

/// The rows of `data/NAME`, each cut at its commas. Throws if the file does not name its source and
/// certainty, or has no rows.
inline std::vector<Row> published(const std::string& name) {
    std::ifstream file(std::string(PLATEWRIGHT_SOURCE_DIR "/tests/outside/data/") + name);
    std::string line;
    std::getline(file, line);
    if (!line.starts_with("# ") || line.find("certainty: ") == std::string::npos) {
        throw std::runtime_error(name + " does not say where its values come from");
    }
    std::getline(file, line);
    std::vector<Row> rows;
    while (std::getline(file, line)) {
        Row row(1);
        for (const char c : line) {
            if (c == ',') {
                row.emplace_back();
            } else {
                row.back() += c;
            }
        }
        rows.push_back(row);
    }
    if (rows.empty()) {
        throw std::runtime_error(name + " has no rows");
    }
    return rows;
}

}  // namespace platewright::outside
