// SPDX-License-Identifier: MIT
// `platewright dump`: what a stage hands on, as text.
#include <algorithm>
#include <array>
#include <string>

#include "base/ink.h"
#include "base/limits.h"
#include "base/text.h"
#include "cli/commands.h"
#include "cli/data_folder.h"
#include "cli/open_file.h"
#include "cli/print.h"
#include "cli/sheet.h"
#include "cli/workshop.h"
#include "layout/printing.h"

namespace platewright::cli {
namespace {

/// Figures are dumped as drawn for print at 1 : 8, whatever paper they may go on.
constexpr double kScale = 8;

constexpr std::array<std::string_view, 4> kStages = {"read", "resolve", "compose", "layout"};

class Dump {
  public:
    Dump(const DumpOptions& options, const Printing& printing)
        : options_(options), printing_(printing) {}

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
            case FileKind::comparison:
                return shown(read_comparison(sources_, file, problems_));
            case FileKind::handout:
                return shown(read_handout(sources_, file, problems_));
            case FileKind::chart:
                return shown(read_chart(sources_, file, problems_));
            case FileKind::workshop:
                return shown(read_workshop(sources_, file, problems_));
            case FileKind::plate:
            case FileKind::palette:
            case FileKind::customs:
            case FileKind::sizes:
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
        if (options_.stage == kStages[3]) {
            return laid_out(file, workshop);
        }
        const bool drawn = options_.stage == kStages[2];
        const auto job = workshop.prepare(file, drawn, problems_, timings_);
        const auto uniform = job ? workshop.uniform_of(*job, problems_) : std::nullopt;
        if (!uniform) {
            return failed(workshop);
        }
        return answer(drawn ? composed(*uniform, *job) : dump(*uniform, sources_));
    }

    static ExitCode failed(const Workshop& workshop) {
        return workshop.missed_a_file() ? ExitCode::cannot_read_or_write : ExitCode::bad_data;
    }

    ExitCode laid_out(FileId file, Workshop& workshop) {
        const auto sheet = prepare_sheet(workshop, file, problems_, timings_);
        const Typesetter type;
        auto document = sheet ? sheet->draw(printing_, type, problems_, timings_) : std::nullopt;
        if (document) {
            prepare_for(printing_.ink, *document);
        }
        return document ? answer(dump(*document)) : failed(workshop);
    }

    [[nodiscard]] std::string composed(const Uniform& uniform, const Job& job) const {
        std::string text;
        for (const Figure& figure : figures_of(uniform, job, kScale, printing_.ink)) {
            text += dump(figure);
        }
        if (const auto button = job.views.find("button"); button != job.views.end()) {
            text +=
                dump(compose(uniform, *button->second, job.ornaments, kScale, {}, printing_.ink));
        }
        return text;
    }

    const DumpOptions& options_;
    Printing printing_;
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
    const auto ink = find_ink(options.ink);
    if (!ink) {
        return refuse_usage(platewright::quoted(options.ink) + " is no ink",
                            "write colour, greyscale or hatched");
    }
    return Dump(options, {*paper, *ink}).run();
}

}  // namespace platewright::cli
