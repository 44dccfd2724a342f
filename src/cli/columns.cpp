// SPDX-License-Identifier: MIT
// Text in columns.
#include "cli/columns.h"

#include <algorithm>
#include <utility>

#include "base/text.h"
#include "cli/excerpt.h"

namespace platewright::cli {

std::size_t columns_of(std::string_view text) {
    std::size_t columns = 0;
    static_cast<void>(visible(text, &columns));
    return columns;
}

std::string padded(std::string_view text, std::size_t columns) {
    std::size_t taken = 0;
    std::string shown = visible(text, &taken);
    return shown + std::string(columns - std::min(taken, columns), ' ');
}

std::string wrapped(std::string_view text, std::size_t indent, std::size_t hanging) {
    std::string all;
    std::string line;
    std::size_t taken = 0;
    for (const std::string_view word : split(text, ' ')) {
        const std::size_t width = columns_of(word);
        if (!line.empty() && indent + taken + 1 + width > kAnswerColumns) {
            all += std::string(indent, ' ') + line + "\n";
            line.clear();
            taken = 0;
            indent += std::exchange(hanging, 0);
        }
        line += (line.empty() ? "" : " ") + visible(word);
        taken += width + (taken > 0 ? 1 : 0);
    }
    return all + std::string(indent, ' ') + line + "\n";
}

std::string and_list(const std::vector<std::string>& words) {
    std::string list;
    for (std::size_t i = 0; i < words.size(); ++i) {
        list += i == 0 ? "" : i + 1 == words.size() ? " and " : ", ";
        list += words[i];
    }
    return list;
}

std::string Columns::text() const {
    std::vector<std::size_t> widths;
    for (const auto& row : rows_) {
        widths.resize(std::max(widths.size(), row.size()));
        for (std::size_t i = 0; i < row.size(); ++i) {
            widths[i] = std::max(widths[i], columns_of(row[i]));
        }
    }
    std::string all;
    for (const auto& row : rows_) {
        std::string line(indent_, ' ');
        for (std::size_t i = 0; i < row.size(); ++i) {
            line += padded(row[i], widths[i] + 2);
        }
        line.erase(line.find_last_not_of(' ') + 1);
        all += line + "\n";
    }
    return all;
}

}  // namespace platewright::cli
