// SPDX-License-Identifier: MIT
// First look at the bytes of a YAML file: size, encoding, control characters, tabs, several
// documents.
#include "read/screen.h"

#include <string_view>

#include "base/limits.h"
#include "base/text.h"

namespace platewright {
namespace {

/// A file full of the same slip is told a few times, not a thousand.
constexpr int kRepeats = 5;

constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

class Screen {
  public:
    Screen(const SourceMap& sources, FileId file, Diagnostics& to)
        : file_(file), to_(to), out_{sources.text(file), false, 0} {}

    std::optional<Screened> run() {
        if (out_.text.size() > limits::kYamlBytes) {
            to_.error(
                   "read.too-large",
                   {file_, 0, 0},
                   "the file is larger than " + std::to_string(limits::kYamlBytes / 1000) + " KB")
                .hints.emplace_back("a description is a page or two; is this the right file?");
            return std::nullopt;
        }
        if (const auto bad = invalid_utf8(out_.text)) {
            refuse_encoding(*bad);
            return std::nullopt;
        }
        if (out_.text.starts_with(kByteOrderMark)) {
            out_.start = kByteOrderMark.size();
        }
        check_lines();
        return std::move(out_);
    }

  private:
    void refuse_encoding(std::size_t bad) {
        Diagnostic& problem = to_.error("read.not-utf8",
                                        {file_, bad, bad + 1},
                                        "the file is not plain text in UTF-8 from here on");
        const std::string_view head = std::string_view(out_.text).substr(0, 2);
        problem.hints.emplace_back(
            head == "\xFF\xFE" || head == "\xFE\xFF"
                ? "it was saved as UTF-16; save it again as UTF-8 in the text editor"
                : "save it again as UTF-8 in the text editor");
    }

    void check_lines() {
        std::size_t begin = out_.start;
        while (begin < out_.text.size()) {
            const std::size_t found = out_.text.find('\n', begin);
            const std::size_t end = found == std::string::npos ? out_.text.size() : found;
            if (!check_markers(begin, end)) {
                return;
            }
            check_bytes(begin, end);
            begin = end + 1;
        }
    }

    /// False if the file was cut off here.
    bool check_markers(std::size_t begin, std::size_t end) {
        const std::string_view line = std::string_view(out_.text).substr(begin, end - begin);
        const std::string_view words = trim(line);
        if (line.starts_with('%')) {
            to_.error("read.yaml", {file_, begin, begin + 1}, "a line cannot begin with '%'")
                .hints.emplace_back("leave the line out, or put # before it if it is a remark");
            blank(begin, end);
            out_.patched = true;
            return true;
        }
        const bool mark =
            (line.starts_with("---") || line.starts_with("...")) &&
            (line.size() == 3 || line[3] == ' ' || line[3] == '\t' || line[3] == '\r');
        if (!mark) {
            seen_words_ = seen_words_ || (!words.empty() && words.front() != '#');
            return true;
        }
        if (!seen_words_ && !seen_mark_ && line.starts_with("---")) {
            seen_mark_ = true;
            seen_words_ = words.size() > 3 && trim(words.substr(3)).front() != '#';
            return true;
        }
        refuse_second(begin, line.starts_with("...") && only_remarks_from(end));
        return false;
    }

    [[nodiscard]] bool only_remarks_from(std::size_t at) const {
        for (const std::string_view line : split(std::string_view(out_.text).substr(at), '\n')) {
            const std::string_view words = trim(line);
            if (!words.empty() && words.front() != '#') {
                return false;
            }
        }
        return true;
    }

    /// Cuts the file off at `begin`; `harmless` if nothing that counts comes after.
    void refuse_second(std::size_t begin, bool harmless) {
        if (!harmless) {
            to_.error("read.several-documents",
                      {file_, begin, begin + 3},
                      "a second description begins here, and a file holds only one")
                .hints.emplace_back(
                    "put what follows into a file of its own, or leave out this line");
            out_.patched = true;
        }
        out_.text.resize(begin);
    }

    void check_bytes(std::size_t begin, std::size_t end) {
        bool indentation = true;
        for (std::size_t at = begin; at < end; ++at) {
            const auto byte = static_cast<unsigned char>(out_.text[at]);
            if (byte == '\t') {
                if (indentation) {
                    at = refuse_tabs(at, end);
                }
                continue;
            }
            const bool line_end = byte == '\r' && at + 1 == end && end < out_.text.size();
            const bool second_half = byte == 0xC2 && at + 1 < end &&
                                     static_cast<unsigned char>(out_.text[at + 1]) < 0xA0;
            if ((byte < 0x20 && !line_end) || byte == 0x7F || second_half) {
                refuse_control(at, second_half ? 2 : 1);
                at += second_half ? 1 : 0;
            }
            indentation = indentation && byte == ' ';
        }
    }

    /// Returns the last tab of the run.
    std::size_t refuse_tabs(std::size_t at, std::size_t end) {
        std::size_t last = at;
        while (last + 1 < end && out_.text[last + 1] == '\t') {
            ++last;
        }
        const std::string_view rest =
            trim(std::string_view(out_.text).substr(last + 1, end - last - 1));
        if (!rest.empty() && rest.front() != '#') {
            if (++tabs_ <= kRepeats) {
                to_.error("read.tab", {file_, at, last + 1}, "the line is indented with a tab")
                    .hints.emplace_back(
                        "indent with spaces; most editors can put spaces for the tab key");
            }
            out_.patched = true;
        }
        blank(at, last + 1);
        return last;
    }

    void refuse_control(std::size_t at, std::size_t bytes) {
        if (++controls_ <= kRepeats) {
            const bool line_end = out_.text[at] == '\r';
            to_.error("read.control-character",
                      {file_, at, at + bytes},
                      line_end ? "a line end that is not understood stands here"
                               : "a character that cannot be seen stands here")
                .hints.emplace_back(line_end ? "save the file with the line ends of Unix or Windows"
                                             : "delete it and write the words again");
        }
        blank(at, at + bytes);
        out_.patched = true;
    }

    void blank(std::size_t begin, std::size_t end) {
        out_.text.replace(begin, end - begin, end - begin, ' ');
    }

    FileId file_;
    Diagnostics& to_;
    Screened out_;
    bool seen_words_ = false;
    bool seen_mark_ = false;
    int tabs_ = 0;
    int controls_ = 0;
};

}  // namespace

std::optional<Screened> screen(const SourceMap& sources, FileId file, Diagnostics& to) {
    return Screen(sources, file, to).run();
}

}  // namespace platewright
