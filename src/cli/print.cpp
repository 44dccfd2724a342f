// SPDX-License-Identifier: MIT
// The one printer of problems, for people.
#include "cli/print.h"

#include <unistd.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>

#include "base/limits.h"
#include "base/text.h"
#include "cli/columns.h"
#include "cli/excerpt.h"

namespace platewright::cli {
namespace {

std::string_view colour_of(Severity severity) {
    switch (severity) {
        case Severity::error:
            return "\x1B[1;31m";
        case Severity::warning:
            return "\x1B[1;35m";
        case Severity::note:
            return "\x1B[1;36m";
    }
    return "";
}

class Printer {
  public:
    Printer(const SourceMap& sources, bool coloured) : sources_(sources), coloured_(coloured) {}

    void print(const Diagnostic& problem) {
        const std::string place = problem.span           ? place_of(*problem.span)
                                  : problem.path.empty() ? std::string("platewright")
                                                         : visible(problem.path);
        paint("\x1B[1m", place + ": ");
        paint(colour_of(problem.severity), std::string(severity_name(problem.severity)) + ":");
        text_ += " " + visible(problem.message);
        if (!problem.code.empty()) {
            paint("\x1B[2m", " [" + problem.code + "]");
        }
        text_ += "\n";
        if (problem.span) {
            show(*problem.span, kIndent);
        }
        for (const Label& label : problem.labels) {
            text_ += std::string(kIndent, ' ') + place_of(label.span) + ": " + visible(label.text) +
                     "\n";
            show(label.span, 2 * kIndent);
        }
        for (const std::string& hint : problem.hints) {
            text_ += std::string(kIndent, ' ');
            paint("\x1B[1;32m", "hint:");
            text_ += " " + visible(hint) + "\n";
        }
    }

    std::string take() { return std::move(text_); }

  private:
    [[nodiscard]] std::string place_of(const Span& span) const {
        const SourceMap::Place place = sources_.place(span.file, span.begin);
        return visible(sources_.name(span.file)) + ":" + std::to_string(place.line) + ":" +
               std::to_string(place.column);
    }

    /// Nothing for an empty line: there is nothing to see.
    void show(const Span& span, std::size_t indent) {
        const std::string_view line = sources_.line_at(span.file, span.begin);
        if (trim(line).empty()) {
            return;
        }
        const std::string& whole = sources_.text(span.file);
        const auto line_begin = static_cast<std::size_t>(line.data() - whole.data());
        const std::size_t begin = span.begin - std::min(line_begin, span.begin);
        const std::size_t end = std::min(span.end - std::min(line_begin, span.end), line.size());
        text_ += excerpt(line, begin, end, indent);
    }

    void paint(std::string_view colour, const std::string& words) {
        text_ += coloured_ ? std::string(colour) + words + "\x1B[0m" : words;
    }

    const SourceMap& sources_;
    bool coloured_;
    std::string text_;
};

std::string counted(std::size_t number, std::string_view what) {
    return std::to_string(number) + " " + std::string(what) + (number == 1 ? "" : "s");
}

}  // namespace

std::string count_of(const Diagnostics& problems) {
    const auto warnings = static_cast<std::size_t>(
        std::ranges::count(problems.all(), Severity::warning, &Diagnostic::severity));
    std::string text;
    if (problems.error_count() > 0) {
        text = counted(problems.error_count(), "error");
    }
    if (warnings > 0) {
        text += (text.empty() ? "" : ", ") + counted(warnings, "warning");
    }
    return text;
}

std::string in_words(const Diagnostics& problems, const SourceMap& sources, bool coloured) {
    Printer printer(sources, coloured);
    const std::size_t all = problems.all().size();
    const std::size_t shown = std::min(all, limits::kProblemsShown);
    for (std::size_t i = 0; i < shown; ++i) {
        printer.print(problems.all()[i]);
    }
    std::string text = printer.take();
    if (const std::string count = count_of(problems); !count.empty()) {
        text += count;
        text +=
            shown < all ? ", of which " + std::to_string(all - shown) + " are not shown\n" : "\n";
    }
    return text;
}

bool wants_colour() {
    const char* no = std::getenv("NO_COLOR");
    const char* terminal = std::getenv("TERM");
    const bool refused = no != nullptr && *no != '\0';
    const bool dumb = terminal == nullptr || std::string_view(terminal) == "dumb";
    return !refused && !dumb && ::isatty(STDERR_FILENO) == 1;
}

void write_error(std::string_view text) {
    // Nothing can be done about an error output that is closed.
    static_cast<void>(std::fwrite(text.data(), 1, text.size(), stderr));
    static_cast<void>(std::fflush(stderr));
}

bool write_output(std::string_view text) {
    const std::size_t written = std::fwrite(text.data(), 1, text.size(), stdout);
    return written == text.size() && std::fflush(stdout) == 0;
}

ExitCode answer(std::string_view text) {
    if (write_output(text)) {
        return ExitCode::done;
    }
    write_error("platewright: error: standard output cannot be written to\n");
    return ExitCode::cannot_read_or_write;
}

}  // namespace platewright::cli
