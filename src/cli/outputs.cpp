// SPDX-License-Identifier: MIT
// Which file each plate is written to.
#include "cli/outputs.h"

#include <array>
#include <filesystem>
#include <map>
#include <system_error>
#include <utility>

#include "base/text.h"
#include "cli/open_file.h"

namespace platewright::cli {
namespace {

namespace fs = std::filesystem;

constexpr std::array<std::pair<Format, std::string_view>, 3> kFormats = {
    {{Format::svg, "svg"}, {Format::pdf, "pdf"}, {Format::png, "png"}}};

bool is_folder(const std::string& path) {
    std::error_code ignored;
    return !path.empty() && (path.back() == '/' || fs::is_directory(path, ignored));
}

/// The same file under another name is still the same file.
std::string identity(const std::string& path) {
    std::error_code problem;
    const fs::path whole = fs::weakly_canonical(fs::absolute(path, problem), problem);
    return problem ? path : whole.string();
}

std::string name_for(const std::string& input, Format format) {
    const std::string stem = input == kDash ? "plate" : fs::path(input).stem().string();
    return stem + "." + std::string(ending_of(format));
}

/// From `--format`, else from the ending of the output, else PDF.
std::optional<Format> choose_format(const std::string& out,
                                    const std::string& format,
                                    UsageProblem& problem) {
    if (!format.empty()) {
        const auto chosen = parse_format(format);
        if (!chosen) {
            problem = {platewright::quoted(format) + " is no format",
                       "write --format svg, pdf or png"};
        }
        return chosen;
    }
    if (out.empty() || out == kDash || is_folder(out)) {
        return Format::pdf;
    }
    const std::string ending = lower(fs::path(out).extension().string());
    const auto chosen = parse_format(ending.empty() ? ending : ending.substr(1));
    if (!chosen) {
        problem = {"the format cannot be told from " + platewright::quoted(out),
                   "let the name end in .svg, .pdf or .png, or write --format"};
    }
    return chosen;
}

/// Refuses two inputs for one output, and an output that is an input.
bool check_collisions(const Outputs& outputs, UsageProblem& problem) {
    std::map<std::string, std::string> taken;
    for (const Output& output : outputs.files) {
        if (output.input != kDash) {
            taken.emplace(identity(output.input), "");
        }
    }
    for (const Output& output : outputs.files) {
        if (output.path == kDash) {
            continue;
        }
        const auto [other, is_new] = taken.emplace(identity(output.path), output.input);
        if (is_new) {
            continue;
        }
        if (other->second.empty()) {
            problem = {platewright::quoted(output.path) +
                           " is itself to be drawn and would be written over",
                       "give another name with -o"};
        } else {
            problem = {platewright::quoted(other->second) + " and " +
                           platewright::quoted(output.input) + " would both be written to " +
                           platewright::quoted(output.path),
                       "draw them one after the other, into different folders"};
        }
        return false;
    }
    return true;
}

}  // namespace

std::optional<Format> parse_format(std::string_view word) {
    for (const auto& [format, name] : kFormats) {
        if (lower(word) == name) {
            return format;
        }
    }
    return std::nullopt;
}

std::string_view ending_of(Format format) {
    for (const auto& [each, name] : kFormats) {
        if (each == format) {
            return name;
        }
    }
    return "";
}

std::optional<Outputs> plan_outputs(const std::vector<std::string>& inputs,
                                    const std::string& out,
                                    const std::string& format,
                                    UsageProblem& problem) {
    const auto chosen = choose_format(out, format, problem);
    if (!chosen) {
        return std::nullopt;
    }
    const bool folder = is_folder(out);
    if (inputs.size() > 1 && !out.empty() && !folder) {
        problem = {std::to_string(inputs.size()) + " plates cannot all be written to " +
                       platewright::quoted(out),
                   "give a folder, such as -o sheets/"};
        return std::nullopt;
    }
    Outputs outputs{*chosen, {}};
    outputs.folder = folder ? out : "";
    for (const std::string& input : inputs) {
        const std::string name = name_for(input, *chosen);
        const std::string path = out.empty() ? name
                                 : folder    ? (fs::path(out) / name).string()
                                             : out;
        outputs.files.push_back({input, path});
    }
    return check_collisions(outputs, problem) ? std::optional(std::move(outputs)) : std::nullopt;
}

}  // namespace platewright::cli
