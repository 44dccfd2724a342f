// SPDX-License-Identifier: MIT
// `platewright dump`: what a stage hands on, as text.
#include <algorithm>
#include <array>
#include <string>

#include "base/limits.h"
#include "base/text.h"
#include "cli/commands.h"
#include "cli/data_folder.h"
#include "cli/open_file.h"
#include "cli/print.h"
#include "cli/workshop.h"

namespace platewright::cli {
namespace {

/// Figures are dumped as drawn for print at 1 : 8, whatever paper they may go on.
constexpr double kScale = 8;

constexpr std::array<std::string_view, 4> kStages = {"read", "resolve", "compose", "layout"};

class Dump {
  public:
    Dump(const DumpOptions& options, const Paper& paper) : options_(options), paper_(paper) {}

    ExitCode run() {
        ExitCode exit = ExitCode::bad_data;
        const auto file = open_file(files_, options_.file, limits::kYamlBytes, sources_, problems_);
        if (!file) {
            exit = ExitCode::cannot_read_or_write;
        } else if (options_.stage == kStages[0]) {
            const std::string text = read_stage(*file);
            exit = text.empty() ? exit : answer(text);
        } else {
            exit = later_stage(*file);
        }
        problems_.sort();
        write_error(in_words(problems_, sources_, wants_colour()));
        return exit;
    }

  private:
    /// What was read of a plate, a regulation or a regiment; empty after an error.
    std::string read_stage(FileId file) {
        const auto shown = [this](const auto& written) {
            return written ? dump(*written, sources_) : std::string();
        };
        switch (kind_of_file(sources_.text(file))) {
            case FileKind::regulation:
                return shown(read_regulation(sources_, file, problems_));
            case FileKind::regiment:
                return shown(read_regiment(sources_, file, problems_));
            case FileKind::plate:
            case FileKind::palette:
            case FileKind::customs:
                break;
        }
        return shown(read_plate(sources_, file, problems_));
    }

    ExitCode later_stage(FileId file) {
        std::string missing;
        const std::string data = find_data_folder(missing);
        if (data.empty()) {
            problems_.file_error("cli.no-data", "", missing);
            return ExitCode::cannot_read_or_write;
        }
        Workshop workshop(files_, data, sources_);
        if (!options_.only_template.empty()) {
            workshop.use_template(options_.only_template);
        }
        const bool drawn = options_.stage != kStages[1];
        const auto job = workshop.prepare(file, drawn, problems_, timings_);
        const auto uniform = job ? workshop.uniform_of(*job, problems_) : std::nullopt;
        if (!uniform) {
            return workshop.missed_a_file() ? ExitCode::cannot_read_or_write : ExitCode::bad_data;
        }
        return answer(drawn ? drawn_stage(*uniform, *job) : dump(*uniform, sources_));
    }

    std::string drawn_stage(const Uniform& uniform, const Job& job) {
        if (options_.stage == kStages[3]) {
            const Typesetter type;
            return dump(plate_of(uniform, job, paper_, type, problems_, timings_));
        }
        std::string text;
        for (const Figure& figure : figures_of(uniform, job, kScale)) {
            text += dump(figure);
        }
        if (const auto button = job.views.find("button"); button != job.views.end()) {
            text += dump(compose(uniform, *button->second, job.ornaments, kScale));
        }
        return text;
    }

    const DumpOptions& options_;
    Paper paper_;
    const DiskReader files_;
    SourceMap sources_;
    Diagnostics problems_;
    Timings timings_;
};

}  // namespace

ExitCode dump(const DumpOptions& options) {
    if (std::ranges::find(kStages, options.stage) == kStages.end()) {
        return refuse_usage(platewright::quoted(options.stage) + " is no stage",
                            "write --stage read, resolve, compose or layout");
    }
    const auto paper = parse_paper(options.paper);
    if (!paper) {
        return refuse_usage(platewright::quoted(options.paper) + " is no size of paper",
                            "write A4, A3, letter, tabloid, or width by height such as 210x297mm");
    }
    return Dump(options, *paper).run();
}

}  // namespace platewright::cli
