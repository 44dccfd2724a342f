// SPDX-License-Identifier: MIT
// Problems found in what the user wrote, collected while a stage goes on working.
#pragma once

#include <cstddef>
#include <deque>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace platewright {

/// Number of a file in `SourceMap`.
using FileId = std::size_t;

/// A stretch of a source file: bytes `begin` up to but not including `end`.
struct Span {
    FileId file = 0;
    std::size_t begin = 0;
    std::size_t end = 0;

    friend bool operator==(const Span&, const Span&) = default;
};

/// How bad it is: with an error nothing is drawn.
enum class Severity { error, warning, note };

/// `error`, `warning`, `note`.
std::string_view severity_name(Severity severity);

/// A second place that matters, with what it has to do with the problem.
struct Label {
    Span span;
    std::string text;
};

/// One problem. `message` is one line, lower case, no full stop, the user's own words in quotes.
struct Diagnostic {
    Severity severity = Severity::error;
    /// Stable words: stage, full stop, what: `read.unknown-key`.
    std::string code;
    std::string message;
    /// Absent for a file that could not be read; then `path` names it.
    std::optional<Span> span;
    std::string path;
    std::vector<Label> labels;
    /// What to do, each a whole sentence without full stop.
    std::vector<std::string> hints;
};

/// The sink every stage writes to.
class Diagnostics {
  public:
    void add(Diagnostic diagnostic);

    /// Adds an error at `span`; returns it for labels and hints. The reference lives until the next
    /// call.
    Diagnostic& error(std::string code, Span span, std::string message);
    Diagnostic& warning(std::string code, Span span, std::string message);

    /// An error about a whole file, known only by its path.
    Diagnostic& file_error(std::string code, std::string path, std::string message);

    /// Takes over what others have found.
    void add_all(const Diagnostics& found);

    [[nodiscard]] const std::vector<Diagnostic>& all() const { return all_; }

    [[nodiscard]] std::size_t error_count() const { return errors_; }

    /// Orders by file, place and code, so that the order of work does not show; drops exact
    /// repetitions.
    void sort();

  private:
    std::vector<Diagnostic> all_;
    std::size_t errors_ = 0;
};

/// Adds "did you mean …?", or what there is: `classes of the regulation are …`.
void add_suggestion(Diagnostic& problem,
                    std::string_view written,
                    const std::vector<std::string>& known,
                    std::string_view list_begins);

/// The text of every file read in a run, by number. References into it stay good while files are
/// added.
class SourceMap {
  public:
    /// `name` is shown to the user: the path as he gave it, or `<stdin>`.
    FileId add(std::string name, std::string text);

    [[nodiscard]] const std::string& name(FileId file) const { return files_[file].name; }

    [[nodiscard]] const std::string& text(FileId file) const { return files_[file].text; }

    /// 1-based line and column; columns count characters, not bytes.
    struct Place {
        std::size_t line = 1;
        std::size_t column = 1;
    };

    [[nodiscard]] Place place(FileId file, std::size_t offset) const;

    /// The line that holds `offset`, without its line end.
    [[nodiscard]] std::string_view line_at(FileId file, std::size_t offset) const;

  private:
    struct File {
        std::string name;
        std::string text;
    };

    // A deque, so that text once read stays where it is while more files come.
    std::deque<File> files_;
};

}  // namespace platewright
