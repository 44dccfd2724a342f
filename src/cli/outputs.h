// SPDX-License-Identifier: MIT
// Which file each plate is written to.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace platewright::cli {

/// Kinds of file that can be written.
enum class Format { svg, pdf, png };

/// The format of that name, in any case of letters.
std::optional<Format> parse_format(std::string_view word);
/// `svg`, `pdf` or `png`.
std::string_view ending_of(Format format);

/// One plate's way.
struct Output {
    std::string input;
    /// `-` for standard output.
    std::string path;
};

/// All plates of a run, in the order of the command line.
struct Outputs {
    Format format = Format::pdf;
    std::vector<Output> files;
    /// A folder that was named as one (`sheets/`) and is made when the first sheet is written.
    std::string folder = {};
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
