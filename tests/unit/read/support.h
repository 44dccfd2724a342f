// SPDX-License-Identifier: MIT
// Files from text, and what was found in them as short lines, for the tests of this stage.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "read/read.h"
#include "read/tree.h"

namespace platewright {

/// One read of a text with all that belongs to it.
struct Reading {
    explicit Reading(std::string text) : file(sources.add("x.yaml", std::move(text))) {}

    SourceMap sources;
    FileId file;
    Diagnostics problems;

    /// `code line:column`, in the order of the file.
    std::vector<std::string> found() {
        problems.sort();
        std::vector<std::string> lines;
        for (const Diagnostic& problem : problems.all()) {
            const SourceMap::Place at = sources.place(file, problem.span ? problem.span->begin : 0);
            lines.push_back(problem.code + " " + std::to_string(at.line) + ":" +
                            std::to_string(at.column));
        }
        return lines;
    }

    /// What the user wrote there.
    [[nodiscard]] std::string words(const Span& span) const {
        return sources.text(span.file).substr(span.begin, span.end - span.begin);
    }
};

inline std::vector<std::string> problems_of_plate(const std::string& text) {
    Reading reading(text);
    static_cast<void>(read_plate(reading.sources, reading.file, reading.problems));
    return reading.found();
}

inline std::vector<std::string> problems_of_regiment(const std::string& text) {
    Reading reading(text);
    static_cast<void>(read_regiment(reading.sources, reading.file, reading.problems));
    return reading.found();
}

inline std::string dump_of_plate(const std::string& text) {
    Reading reading(text);
    const auto plate = read_plate(reading.sources, reading.file, reading.problems);
    return plate ? dump(*plate, reading.sources) : "";
}

using Lines = std::vector<std::string>;

}  // namespace platewright
