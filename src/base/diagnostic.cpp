// SPDX-License-Identifier: MIT
// Collecting problems and finding places in the text.
#include "base/diagnostic.h"

#include <algorithm>
#include <tuple>
#include <utility>

#include "base/text.h"

namespace platewright {

namespace {

/// Files that could not be read come first, then file by file from the top down.
bool comes_before(const Diagnostic& a, const Diagnostic& b) {
    const auto key = [](const Diagnostic& d) {
        const Span span = d.span.value_or(Span{});
        return std::make_tuple(d.span.has_value(), span.file, span.begin, span.end);
    };
    const auto rest = [](const Diagnostic& d) {
        return std::tie(d.path, d.severity, d.code, d.message);
    };
    return key(a) != key(b) ? key(a) < key(b) : rest(a) < rest(b);
}

bool same_label(const Label& a, const Label& b) {
    return a.span == b.span && a.text == b.text;
}

bool same(const Diagnostic& a, const Diagnostic& b) {
    return a.severity == b.severity && a.code == b.code && a.message == b.message &&
           a.span == b.span && a.path == b.path && a.hints == b.hints &&
           std::ranges::equal(a.labels, b.labels, same_label);
}

/// Where the line that holds `offset` begins.
std::size_t line_begin(const std::string& text, std::size_t offset) {
    const std::size_t newline = offset == 0 ? std::string::npos : text.rfind('\n', offset - 1);
    return newline == std::string::npos ? 0 : newline + 1;
}

}  // namespace

std::string_view severity_name(Severity severity) {
    switch (severity) {
        case Severity::error:
            return "error";
        case Severity::warning:
            return "warning";
        case Severity::note:
            return "note";
    }
    return "error";
}

void Diagnostics::add(Diagnostic diagnostic) {
    errors_ += diagnostic.severity == Severity::error ? 1 : 0;
    all_.push_back(std::move(diagnostic));
}

Diagnostic& Diagnostics::error(std::string code, Span span, std::string message) {
    Diagnostic problem;
    problem.code = std::move(code);
    problem.message = std::move(message);
    problem.span = span;
    add(std::move(problem));
    return all_.back();
}

Diagnostic& Diagnostics::warning(std::string code, Span span, std::string message) {
    Diagnostic problem;
    problem.severity = Severity::warning;
    problem.code = std::move(code);
    problem.message = std::move(message);
    problem.span = span;
    add(std::move(problem));
    return all_.back();
}

Diagnostic& Diagnostics::file_error(std::string code, std::string path, std::string message) {
    Diagnostic problem;
    problem.code = std::move(code);
    problem.message = std::move(message);
    problem.path = std::move(path);
    add(std::move(problem));
    return all_.back();
}

void Diagnostics::add_all(const Diagnostics& found) {
    for (const Diagnostic& each : found.all()) {
        add(each);
    }
}

void Diagnostics::sort() {
    std::ranges::stable_sort(all_, comes_before);
    // Not std::ranges::unique: its result type breaks clang 14 with this standard library.
    all_.erase(std::unique(all_.begin(), all_.end(), same), all_.end());
    errors_ =
        static_cast<std::size_t>(std::ranges::count(all_, Severity::error, &Diagnostic::severity));
}

FileId SourceMap::add(std::string name, std::string text) {
    files_.push_back({std::move(name), std::move(text)});
    return files_.size() - 1;
}

SourceMap::Place SourceMap::place(FileId file, std::size_t offset) const {
    const std::string& whole = files_[file].text;
    offset = std::min(offset, whole.size());
    const std::size_t begin = line_begin(whole, offset);
    const auto lines =
        std::count(whole.begin(), whole.begin() + static_cast<std::ptrdiff_t>(begin), '\n');
    return {static_cast<std::size_t>(lines) + 1,
            count_characters(std::string_view(whole).substr(begin, offset - begin)) + 1};
}

std::string_view SourceMap::line_at(FileId file, std::size_t offset) const {
    const std::string& whole = files_[file].text;
    const std::size_t begin = line_begin(whole, std::min(offset, whole.size()));
    const std::size_t end = std::min(whole.find('\n', begin), whole.size());
    std::string_view line = std::string_view(whole).substr(begin, end - begin);
    if (line.ends_with('\r')) {
        line.remove_suffix(1);
    }
    return line;
}

void add_suggestion(Diagnostic& problem,
                    std::string_view written,
                    const std::vector<std::string>& known,
                    std::string_view list_begins) {
    if (const std::optional<std::string> near = nearest_word(trim(written), known)) {
        problem.hints.push_back("did you mean " + quoted(*near) + "?");
    } else if (!known.empty()) {
        problem.hints.push_back(std::string(list_begins) + or_list(known));
    }
}

}  // namespace platewright
