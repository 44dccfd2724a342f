// SPDX-License-Identifier: MIT
// `platewright check`.
#include <algorithm>
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
#include "cli/sheet.h"
#include "cli/workshop.h"
#include "write/other_reader.h"

namespace platewright::cli {
namespace {

class Check {
  public:
    explicit Check(const CheckOptions& options) : options_(options) {}

    ExitCode run() {
        for (const std::string& path : options_.files) {
            const bool drawing = lower(path).ends_with(".svg");
            const std::size_t limit = drawing ? limits::kTemplateBytes : limits::kYamlBytes;
            if (const auto file = open_file(files_, path, limit, sources_, problems_)) {
                drawing ? check_drawing(*file, path) : check(*file);
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
    void check(FileId file) {
        switch (kind_of_file(sources_.text(file))) {
            case FileKind::regulation:
                return with_workshop([&] { workshop_->check_regulation(file, problems_); });
            case FileKind::regiment:
                return with_workshop([&] { workshop_->check_regiment(file, problems_); });
            case FileKind::palette:
                static_cast<void>(read_palette(sources_, file, problems_));
                return;
            case FileKind::customs:
                static_cast<void>(read_customs(sources_, file, problems_));
                return;
            case FileKind::sizes:
                static_cast<void>(read_sizes(sources_, file, problems_));
                return;
            case FileKind::plate:
                return with_workshop([&] { check_plate(file); });
            case FileKind::comparison:
            case FileKind::handout:
            case FileKind::chart:
            case FileKind::workshop:
                return with_workshop([&] {
                    Timings unused;
                    static_cast<void>(prepare_sheet(*workshop_, file, problems_, unused));
                });
        }
    }

    /// A template must also open in other people's programs: editors and browsers.
    void check_drawing(FileId file, const std::string& path) {
        if (!read_template(sources_, whole_view(file, path), problems_)) {
            return;
        }
        if (const auto refusal = other_reader_refusal(sources_.text(file))) {
            const std::size_t at = offset_of(sources_.text(file), refusal->line, refusal->column);
            problems_
                .error("template.other-programs",
                       {file, at, at},
                       "other programs cannot open this drawing: " + lower(refusal->why))
                .hints.emplace_back("save it again from the vector editor as plain SVG");
        }
    }

    /// A file that is drawn onto another is read with all files of its view.
    std::vector<FileId> whole_view(FileId file, const std::string& path) {
        const std::size_t slash = path.rfind('/');
        const std::string folder = slash == std::string::npos ? "." : path.substr(0, slash);
        const std::string name = slash == std::string::npos ? path : path.substr(slash + 1);
        const std::string own = folder + "/" + name;
        std::vector<FileId> all;
        for (const std::string& each : files_of_view(files_, folder, view_of_file(name))) {
            if (each == own) {
                all.push_back(file);
            } else if (FileResult read = files_.read(each, limits::kTemplateBytes); read.ok()) {
                all.push_back(sources_.add(each, std::move(read.text)));
            }
        }
        return all.empty() ? std::vector<FileId>{file} : all;
    }

    /// The byte at a 1-based line and column; the first if there is no such place.
    static std::size_t offset_of(const std::string& text, std::size_t line, std::size_t column) {
        std::size_t start = 0;
        for (std::size_t i = 1; i < line && start != std::string::npos; ++i) {
            start = text.find('\n', start);
            start += start == std::string::npos ? 0 : 1;
        }
        if (line == 0 || start == std::string::npos) {
            return 0;
        }
        return std::min(start + std::max<std::size_t>(column, 1) - 1, text.size());
    }

    /// Colours, ranks and regulations can only be told with the data.
    template <typename Work>
    void with_workshop(const Work& work) {
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
        work();
        if (workshop_->missed_a_file()) {
            exit_ = worse(exit_, ExitCode::cannot_read_or_write);
        }
    }

    void check_plate(FileId file) {
        Timings unused;
        if (const auto job = workshop_->prepare(file, false, problems_, unused)) {
            static_cast<void>(workshop_->uniform_of(*job, problems_));
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
