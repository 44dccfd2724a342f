// SPDX-License-Identifier: MIT
// `platewright check`.
#include <optional>
#include <string>
#include <vector>

#include "base/limits.h"
#include "base/text.h"
#include "cli/commands.h"
#include "cli/data_folder.h"
#include "cli/json.h"
#include "cli/open_file.h"
#include "cli/print.h"
#include "cli/workshop.h"

namespace platewright::cli {
namespace {

enum class FileKind { plate, palette, customs, drawing };

/// By the ending and the first outermost key that tells; a file that has none is taken for a plate.
FileKind kind_of(const std::string& path, const std::string& text) {
    if (lower(path).ends_with(".svg")) {
        return FileKind::drawing;
    }
    for (const std::string_view line : split(text, '\n')) {
        if (line.starts_with("plate:")) {
            return FileKind::plate;
        }
        if (line.starts_with("palette:")) {
            return FileKind::palette;
        }
        if (line.starts_with("ranks:")) {
            return FileKind::customs;
        }
    }
    return FileKind::plate;
}

class Check {
  public:
    explicit Check(const CheckOptions& options) : options_(options) {}

    ExitCode run() {
        for (const std::string& path : options_.files) {
            const bool drawing = lower(path).ends_with(".svg");
            const std::size_t limit = drawing ? limits::kTemplateBytes : limits::kYamlBytes;
            if (const auto file = open_file(files_, path, limit, sources_, problems_)) {
                check(*file, kind_of(path, sources_.text(*file)));
            } else {
                exit_ = worse(exit_, ExitCode::cannot_read_or_write);
            }
        }
        if (problems_.error_count() > 0) {
            exit_ = worse(exit_, ExitCode::bad_data);
        }
        problems_.sort();
        return worse(exit_, print());
    }

  private:
    void check(FileId file, FileKind kind) {
        switch (kind) {
            case FileKind::drawing:
                static_cast<void>(read_template(sources_, file, problems_));
                return;
            case FileKind::palette:
                static_cast<void>(read_palette(sources_, file, problems_));
                return;
            case FileKind::customs:
                static_cast<void>(read_customs(sources_, file, problems_));
                return;
            case FileKind::plate:
                return check_plate(file);
        }
    }

    /// Colours and ranks can only be told with the palettes and customs.
    void check_plate(FileId file) {
        if (!workshop_) {
            std::string missing;
            const std::string data = find_data_folder(missing);
            if (data.empty()) {
                problems_.file_error("cli.no-data", "", missing);
                exit_ = worse(exit_, ExitCode::cannot_read_or_write);
                return;
            }
            workshop_.emplace(files_, data, sources_);
        }
        Timings unused;
        if (const auto job = workshop_->prepare(file, false, problems_, unused)) {
            static_cast<void>(workshop_->uniform_of(*job, problems_));
        }
        if (workshop_->missed_a_file()) {
            exit_ = worse(exit_, ExitCode::cannot_read_or_write);
        }
    }

    [[nodiscard]] ExitCode print() const {
        if (options_.json) {
            return answer(in_json(problems_, sources_));
        }
        if (problems_.all().empty()) {
            const std::size_t files = options_.files.size();
            return answer(std::to_string(files) + (files == 1 ? " file" : " files") +
                          ", no problems\n");
        }
        write_error(in_words(problems_, sources_, wants_colour()));
        return ExitCode::done;
    }

    const CheckOptions& options_;
    const DiskReader files_;
    SourceMap sources_;
    Diagnostics problems_;
    std::optional<Workshop> workshop_;
    ExitCode exit_ = ExitCode::done;
};

}  // namespace

ExitCode check(const CheckOptions& options) {
    return Check(options).run();
}

}  // namespace platewright::cli
