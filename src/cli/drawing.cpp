// SPDX-License-Identifier: MIT
// Drawing many plates, one thread each at a time.
#include "cli/drawing.h"

#include <algorithm>
#include <atomic>
#include <charconv>
#include <cstdlib>
#include <exception>
#include <filesystem>
#include <memory>
#include <new>
#include <system_error>
#include <thread>
#include <utility>
#include <vector>

#include "base/files.h"
#include "base/limits.h"
#include "base/text.h"
#include "cli/open_file.h"
#include "cli/print.h"
#include "cli/sheet.h"
#include "write/write.h"

namespace platewright::cli {
namespace {

/// One sheet on its way, owned by one thread at a time.
struct Task {
    const Output* output = nullptr;
    std::unique_ptr<Sheet> sheet;
    Diagnostics problems;
    Timings timings;
    ExitCode exit = ExitCode::done;
    std::vector<std::string> written;
};

/// `plate.png`, `plate-2.png`, `plate-3.png` …
std::string path_of_page(const std::string& path, std::size_t page) {
    if (page == 0) {
        return path;
    }
    const std::size_t slash = path.rfind('/');
    const std::size_t dot = path.rfind('.');
    const bool has_ending = dot != std::string::npos && (slash == std::string::npos || dot > slash);
    const std::size_t stem = has_ending ? dot : path.size();
    return path.substr(0, stem) + "-" + std::to_string(page + 1) + path.substr(stem);
}

std::string bytes_of(const Document& document,
                     std::size_t page,
                     Format format,
                     const Typesetter& type,
                     double dpi,
                     std::optional<std::int64_t> created) {
    switch (format) {
        case Format::svg:
            return write_svg(document, page, type);
        case Format::png:
            return write_png(document, page, type, dpi);
        case Format::pdf:
            break;
    }
    return write_pdf(document, type, created);
}

class Drawing {
  public:
    Drawing(const DrawSettings& settings,
            const Outputs& outputs,
            std::optional<std::int64_t> created)
        : settings_(settings),
          format_(outputs.format),
          folder_(outputs.folder),
          created_(created) {}

    /// Every exception ends here: a thread must not let one out.
    void run(Task& task) const {
        const std::string& name = task.output->input;
        try {
            draw(task);
        } catch (const FontsMissing& problem) {
            task.problems.file_error("cli.no-fonts", name, problem.what());
            task.exit = worse(task.exit, ExitCode::cannot_read_or_write);
        } catch (const CannotWrite& problem) {
            task.problems.file_error("cli.cannot-write", task.output->path, problem.what());
            task.exit = worse(task.exit, ExitCode::cannot_read_or_write);
        } catch (const std::bad_alloc&) {
            task.problems.file_error(
                "cli.cannot-write", task.output->path, "there is not enough memory");
            task.exit = worse(task.exit, ExitCode::cannot_read_or_write);
        } catch (const std::exception& fault) {
            task.problems.file_error(
                "cli.internal", name, std::string("a fault of ours: ") + fault.what());
            task.exit = ExitCode::our_fault;
        }
    }

  private:
    void draw(Task& task) const {
        const auto type =
            task.timings.measure("fonts", [] { return std::make_unique<Typesetter>(); });
        auto drawn = task.sheet->draw(settings_.printing, *type, task.problems, task.timings);
        if (!drawn) {
            task.exit = worse(task.exit, ExitCode::bad_data);
            return;
        }
        prepare_for(settings_.printing.ink, *drawn);
        const Document& document = *drawn;
        // A PDF holds all pages; of the others each page is a file.
        const std::size_t files = format_ == Format::pdf ? 1 : document.pages.size();
        if (files > 1 && task.output->path == kDash) {
            task.problems.file_error("cli.cannot-write",
                                     task.output->input,
                                     "several pages cannot go to standard output in this format");
            task.exit = worse(task.exit, ExitCode::bad_usage);
            return;
        }
        // Where one page cannot be written no other can.
        for (std::size_t page = 0; page < files && task.exit == ExitCode::done; ++page) {
            write(document, page, *type, task);
        }
    }

    void write(const Document& document,
               std::size_t page,
               const Typesetter& type,
               Task& task) const {
        const std::string path = path_of_page(task.output->path, page);
        const std::string bytes = task.timings.measure("write", [&] {
            return bytes_of(document, page, format_, type, settings_.dpi, created_);
        });
        const std::string problem = task.timings.measure("save", [&] { return save(path, bytes); });
        if (problem.empty()) {
            task.written.push_back(path);
            return;
        }
        task.problems.file_error("cli.cannot-write", path, "cannot be written: " + problem);
        task.exit = worse(task.exit, ExitCode::cannot_read_or_write);
    }

    /// Returns the problem, or nothing.
    [[nodiscard]] std::string save(const std::string& path, const std::string& bytes) const {
        if (path != kDash) {
            // What is wrong with the folder is told of the file.
            std::error_code ignored;
            std::filesystem::create_directory(folder_, ignored);
            return write_whole(path, bytes);
        }
        return write_output(bytes) ? "" : "standard output broke off";
    }

    const DrawSettings& settings_;
    Format format_;
    const std::string& folder_;
    std::optional<std::int64_t> created_;
};

/// Opens and reads the plates, one after the other: later stages only look at what was loaded.
void prepare_all(std::vector<Task>& tasks,
                 const FileReader& files,
                 Workshop& workshop,
                 SourceMap& sources) {
    for (Task& task : tasks) {
        const auto file =
            open_file(files, task.output->input, limits::kYamlBytes, sources, task.problems);
        if (!file) {
            task.exit = ExitCode::cannot_read_or_write;
            continue;
        }
        task.sheet = prepare_sheet(workshop, *file, task.problems, task.timings);
        if (!task.sheet) {
            task.exit =
                workshop.missed_a_file() ? ExitCode::cannot_read_or_write : ExitCode::bad_data;
        }
    }
}

void run_all(std::vector<Task>& tasks, const Drawing& drawing, std::size_t jobs) {
    std::atomic<std::size_t> next = 0;
    const auto work = [&tasks, &drawing, &next] {
        for (std::size_t i = next++; i < tasks.size(); i = next++) {
            if (tasks[i].sheet) {
                drawing.run(tasks[i]);
            }
        }
    };
    std::vector<std::thread> helpers;
    for (std::size_t i = 1; i < std::min(jobs, tasks.size()); ++i) {
        helpers.emplace_back(work);
    }
    work();
    for (std::thread& helper : helpers) {
        helper.join();
    }
}

/// A problem of the sheet has no place in a file; the plate's name tells which sheet.
Diagnostic with_path(Diagnostic problem, const std::string& input) {
    if (!problem.span && problem.path.empty()) {
        problem.path = input == kDash ? "<stdin>" : input;
    }
    return problem;
}

}  // namespace

DrawResult draw_all(const Outputs& outputs,
                    const DrawSettings& settings,
                    const FileReader& files,
                    Workshop& workshop,
                    SourceMap& sources,
                    Diagnostics& to) {
    std::vector<Task> tasks(outputs.files.size());
    for (std::size_t i = 0; i < tasks.size(); ++i) {
        tasks[i].output = &outputs.files[i];
    }
    prepare_all(tasks, files, workshop, sources);
    const Drawing drawing(settings, outputs, creation_date(to));
    run_all(tasks, drawing, settings.jobs);

    DrawResult result;
    for (const Task& task : tasks) {
        for (const Diagnostic& problem : task.problems.all()) {
            to.add(with_path(problem, task.output->input));
        }
        result.timings.add(task.timings);
        result.exit = worse(result.exit, task.exit);
        if (task.exit == ExitCode::done && task.output->path != kDash) {
            result.written.insert(result.written.end(), task.written.begin(), task.written.end());
        }
    }
    return result;
}

std::optional<std::int64_t> creation_date(Diagnostics& to) {
    // The last second of the year 9999: formats of dates have four digits.
    constexpr std::int64_t last_second = 253402300799;
    const char* written = std::getenv("SOURCE_DATE_EPOCH");
    if (written == nullptr || *written == '\0') {
        return std::nullopt;
    }
    const std::string_view text = written;
    std::int64_t seconds = 0;
    const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), seconds);
    if (problem == std::errc() && end == text.data() + text.size() && seconds >= 0 &&
        seconds <= last_second) {
        return seconds;
    }
    Diagnostic warning;
    warning.severity = Severity::warning;
    warning.code = "cli.bad-date";
    warning.message =
        "SOURCE_DATE_EPOCH is " + platewright::quoted(text) + ", which is no date; none is written";
    warning.hints.emplace_back("give the seconds since the beginning of 1970, in digits only");
    to.add(std::move(warning));
    return std::nullopt;
}

}  // namespace platewright::cli
