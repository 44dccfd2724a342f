// SPDX-License-Identifier: MIT
// Which file each plate is written to.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace platewright::cli {

enum class Format { svg, pdf, png };

std::optional<Format> parse_format(std::string_view word);
std::string_view ending_of(Format format);

struct Output {
    std::string input;
    /// `-` for standard output.
    std::string path;
};

struct Outputs {
    Format format = Format::pdf;
    std::vector<Output> files;
};

/// What is wrong with the command line, and what to do.
struct UsageProblem {
    std::string message;
    std::string hint;
};

/// `out` as given by `-o`, `format` as given by `--format`; both may be empty. No two inputs are
/// written to one file, and no input is written over. If that cannot be, `problem` is set.
std::optional<Outputs> plan_outputs(const std::vector<std::string>& inputs,
                                    const std::string& out,
                                    const std::string& format,
                                    UsageProblem& problem);

}  // namespace platewright::cli
