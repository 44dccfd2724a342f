// SPDX-License-Identifier: MIT
// `platewright draw`.
#include <unistd.h>

#include <algorithm>
#include <string>
#include <thread>
#include <vector>

#include "base/text.h"
#include "cli/commands.h"
#include "cli/data_folder.h"
#include "cli/drawing.h"
#include "cli/excerpt.h"
#include "cli/open_file.h"
#include "cli/print.h"

namespace platewright::cli {
namespace {

constexpr double kLeastDpi = 10;
constexpr double kMostDpi = 2400;
constexpr double kMostJobs = 64;

/// A number in digits, with a point at most, from `least` to `most`.
std::optional<double> parse_number(const std::string& text, double least, double most) {
    constexpr std::size_t longest = 12;
    const bool digits = !text.empty() && text.size() <= longest && text.front() != '.' &&
                        text.find_first_not_of("0123456789.") == std::string::npos &&
                        std::ranges::count(text, '.') <= 1;
    if (!digits) {
        return std::nullopt;
    }
    const std::size_t point = std::min(text.find('.'), text.size());
    double number = std::stoi(text.substr(0, std::min<std::size_t>(point, 6)));
    double unit = 1;
    for (std::size_t i = point + 1; i < text.size(); ++i) {
        unit /= 10;
        number += unit * (text[i] - '0');
    }
    const bool fits = point <= 6 && number >= least && number <= most;
    return fits ? std::optional(number) : std::nullopt;
}

std::vector<std::string> ink_names() {
    return {kInkNames.begin(), kInkNames.end()};
}

bool set_language(const DrawOptions& options, DrawSettings& settings, UsageProblem& problem) {
    settings.language = find_language(options.language);
    if (!options.language.empty() && !settings.language) {
        problem = {platewright::quoted(options.language) + " is no language of the sheets",
                   "write en, fr or de"};
        return false;
    }
    return true;
}

bool set_jobs(const DrawOptions& options, DrawSettings& settings, UsageProblem& problem) {
    settings.jobs = std::max(1U, std::thread::hardware_concurrency());
    if (!options.jobs.empty()) {
        const auto jobs = parse_number(options.jobs, 1, kMostJobs);
        if (!jobs || options.jobs.find('.') != std::string::npos) {
            problem = {platewright::quoted(options.jobs) +
                           " is no number of plates to draw at the same time",
                       "write a whole number from 1 to " + format_number(kMostJobs, 0)};
            return false;
        }
        settings.jobs = static_cast<std::size_t>(*jobs);
    }
    return true;
}

/// What the options say, or what is wrong with them.
std::optional<DrawSettings> settings_of(const DrawOptions& options, UsageProblem& problem) {
    DrawSettings settings;
    const auto paper = parse_paper(options.paper);
    if (!paper) {
        problem = {platewright::quoted(options.paper) + " is no size of paper",
                   "write A4, A3, letter, tabloid, or width by height such as 210x297mm"};
        return std::nullopt;
    }
    const auto ink = find_ink(options.ink);
    if (!ink) {
        problem = {platewright::quoted(options.ink) + " is no ink",
                   "write " + or_list(ink_names())};
        return std::nullopt;
    }
    const auto dpi = parse_number(options.dpi, kLeastDpi, kMostDpi);
    if (!dpi) {
        problem = {platewright::quoted(options.dpi) + " is no number of dots to the inch",
                   "write a number from " + format_number(kLeastDpi, 0) + " to " +
                       format_number(kMostDpi, 0)};
        return std::nullopt;
    }
    settings.printing = {*paper, *ink};
    settings.dpi = *dpi;
    return set_language(options, settings, problem) && set_jobs(options, settings, problem)
               ? std::optional(settings)
               : std::nullopt;
}

/// PDF and PNG are no text: on a terminal they would only do harm.
bool would_spoil_terminal(const Outputs& outputs) {
    return outputs.format != Format::svg && outputs.files.front().path == kDash &&
           ::isatty(STDOUT_FILENO) == 1;
}

}  // namespace

ExitCode draw(const DrawOptions& options) {
    UsageProblem usage;
    const auto settings = settings_of(options, usage);
    const auto outputs =
        settings ? plan_outputs(options.files, options.out, options.format, usage) : std::nullopt;
    if (!outputs) {
        return refuse_usage(usage.message, usage.hint);
    }
    if (would_spoil_terminal(*outputs)) {
        return refuse_usage("standard output is a terminal, which cannot show this format",
                            "write it to a file with -o, or pass it on to another program");
    }
    SourceMap sources;
    Diagnostics problems;
    const DiskReader files;
    std::string missing;
    const std::string data = find_data_folder(missing);
    if (data.empty()) {
        problems.file_error("cli.no-data", "", missing);
        write_error(in_words(problems, sources, wants_colour()));
        return ExitCode::cannot_read_or_write;
    }
    Workshop workshop(files, data, sources);
    if (!options.only_template.empty()) {
        workshop.use_template(options.only_template);
    }
    if (settings->language) {
        workshop.use_language(*settings->language);
    }
    const DrawResult result = draw_all(*outputs, *settings, files, workshop, sources, problems);
    problems.sort();
    write_error(in_words(problems, sources, wants_colour()));
    if (options.timings) {
        write_error(result.timings.in_words());
    }
    std::string written;
    for (const std::string& path : result.written) {
        written += "wrote " + visible(path) + "\n";
    }
    return worse(result.exit, answer(written));
}

}  // namespace platewright::cli
