// SPDX-License-Identifier: MIT
// What stopped the reading, in words of the user's own: the parser's wording never reaches him.
#include <algorithm>
#include <string>

#include "base/limits.h"
#include "base/text.h"
#include "read/extent.h"
#include "read/parse.h"

namespace platewright {
namespace {

constexpr std::string_view kColonHint = "every line is a key, a colon, a space and a value";

/// A fault with what stands round it.
class Explainer {
  public:
    Explainer(const Fault& fault, std::string_view text, FileId file, Diagnostics& to)
        : fault_(fault), text_(text), file_(file), to_(to), at_(std::min(fault.at, text.size())) {}

    void run() {
        if (fault_.trouble == Trouble::dash && !open_) {
            open_ = left_open_before();
        }
        if ((fault_.trouble == Trouble::dash || fault_.trouble == Trouble::colon) && open_) {
            return brace();
        }
        switch (fault_.trouble) {
            case Trouble::colon:
                return colon();
            case Trouble::stray:
                return stray();
            case Trouble::brace:
                return brace();
            case Trouble::quote:
                return quote();
            case Trouble::escape:
                return escape();
            case Trouble::first_character:
                return first_character();
            case Trouble::dash:
                add("read.yaml", word_at(at_), "a list begins in the middle of a line")
                    .hints.emplace_back(
                        "put every item on a line of its own, indented, or write [one, two]");
                return;
            case Trouble::alias:
            case Trouble::tag:
                return report_reference(text_, at_, file_, to_);
            case Trouble::outdented:
                add("read.yaml", rest_of_line(), "this line begins further left than the first one")
                    .hints.emplace_back(
                        "begin the outermost keys all at the same place, best without any space "
                        "before them");
                return;
            case Trouble::too_deep:
                add("read.too-deep",
                    word_at(at_),
                    "groups lie more than " + std::to_string(limits::kYamlDepth) +
                        " deep in one another")
                    .hints.emplace_back("a description needs no more than three");
                return;
            case Trouble::too_many:
                add("read.too-large",
                    word_at(at_),
                    "the file holds more than " + std::to_string(limits::kYamlNodes) +
                        " words and values")
                    .hints.emplace_back("a description is a page or two; is this the right file?");
                return;
            case Trouble::other:
                add("read.yaml", rest_of_line(), "this cannot be understood here")
                    .hints.emplace_back(kColonHint);
                return;
        }
    }

  private:
    Diagnostic& add(std::string code, Span span, std::string message) {
        return to_.error(std::move(code), span, std::move(message));
    }

    [[nodiscard]] Span word_at(std::size_t at) const { return {file_, at, end_of_word(text_, at)}; }

    [[nodiscard]] std::size_t line_begin() const {
        const std::size_t found = at_ == 0 ? std::string_view::npos : text_.rfind('\n', at_ - 1);
        return found == std::string_view::npos ? 0 : found + 1;
    }

    [[nodiscard]] std::size_t line_end() const {
        return std::min(text_.find('\n', at_), text_.size());
    }

    /// From the place to the end of its line; blanks at both ends left out.
    [[nodiscard]] Span rest_of_line() const {
        std::size_t begin = at_;
        if (begin == line_begin()) {
            begin = std::min(text_.find_first_not_of(' ', begin), text_.size());
        }
        const std::string_view rest = text_.substr(begin, std::max(line_end(), begin) - begin);
        const std::size_t last = rest.find_last_not_of(" \r");
        return {file_, begin, last == std::string_view::npos ? begin : begin + last + 1};
    }

    /// What stands before the place on its line.
    [[nodiscard]] std::string_view before() const {
        return text_.substr(line_begin(), at_ - line_begin());
    }

    void colon() {
        const std::size_t first = before().find(": ");
        if (first == std::string_view::npos) {
            Diagnostic& problem =
                add("read.yaml", whole_line(), "this line does not fit under the one before it");
            problem.hints.emplace_back(
                "keys of one group begin at the same place, and a key with a group under it has no "
                "value of its own");
            problem.hints.emplace_back(
                "look whether the line before lacks its colon, or the space after the colon");
            return;
        }
        std::size_t value = line_begin() + first + 2;
        value = std::min(text_.find_first_not_of(' ', value), at_);
        Diagnostic& problem =
            add("read.yaml", {file_, at_, at_ + 1}, "a second colon stands in this line");
        const std::size_t end = rest_of_line().end;
        problem.hints.push_back("if it belongs to the text, put the whole text in quotes: " +
                                in_quotes(text_.substr(value, std::max(end, value) - value)));
    }

    [[nodiscard]] Span whole_line() const {
        const std::size_t begin =
            std::min(text_.find_first_not_of(' ', line_begin()), text_.size());
        const std::string_view words =
            trim(text_.substr(begin, std::max(line_end(), begin) - begin));
        return {file_, begin, begin + words.size()};
    }

    /// The words in quotes that can hold them, shortened if long.
    [[nodiscard]] static std::string in_quotes(std::string_view words) {
        constexpr std::size_t longest = 60;
        if (words.size() > longest || words.find_first_of("\"\\") != std::string_view::npos) {
            return "\"…\"";
        }
        std::string text = "\"";
        text += words;
        return text + '"';
    }

    void stray() {
        const std::string_view earlier = trim(before());
        const char sign = at_ < text_.size() ? text_[at_] : ' ';
        if (!earlier.empty() && (earlier.back() == '"' || earlier.back() == '\'')) {
            add("read.yaml", rest_of_line(), "words stand after the closing quote")
                .hints.emplace_back("put the quotes round the whole text, or leave them out");
        } else if (!earlier.empty() && (earlier.back() == '}' || earlier.back() == ']')) {
            add("read.yaml", rest_of_line(), "words stand after the closing brace")
                .hints.emplace_back("put every key on a line of its own");
        } else if (earlier.empty() && sign == '-') {
            add("read.yaml", rest_of_line(), "a list item stands where a key is expected")
                .hints.emplace_back("a list belongs under a key that has nothing after its colon");
        } else if (earlier.empty()) {
            add("read.yaml",
                rest_of_line(),
                "this line is indented differently from the lines it belongs to")
                .hints.emplace_back("keys of one group begin at the same place");
        } else {
            add("read.yaml", rest_of_line(), "this cannot be understood here")
                .hints.emplace_back(kColonHint);
        }
    }

    void brace() {
        if (!open_) {
            add("read.yaml", word_at(at_), "a closing brace without an opening one")
                .hints.emplace_back(
                    "leave it out, or put the text in quotes if it belongs to the text");
            return;
        }
        const std::size_t open = *open_;
        if (hidden_by_remark(open) || at_ >= text_.size() || newline_between(open)) {
            return unclosed(open);
        }
        Diagnostic& problem =
            add("read.yaml", word_at(at_), "something is wrong between these braces");
        problem.labels.push_back({{file_, open, open + 1}, "opened here"});
        problem.hints.push_back(hint_within(open));
    }

    [[nodiscard]] std::string hint_within(std::size_t open) const {
        const bool is_group = text_[open] == '{';
        const char sign = at_ < text_.size() ? text_[at_] : ' ';
        if ((sign == ']' && is_group) || (sign == '}' && !is_group)) {
            return std::string("close it with ") + (is_group ? "'}'" : "']'");
        }
        return is_group ? "put a comma between two entries: {cloth: red, lining: white}"
                        : "put a comma between two items: [one, two]";
    }

    /// A brace that the line before leaves open: the parser reads ahead and does not always tell.
    [[nodiscard]] std::optional<std::size_t> left_open_before() const {
        const std::size_t end = line_begin();
        const std::size_t found = end < 2 ? std::string_view::npos : text_.rfind('\n', end - 2);
        const std::size_t begin = found == std::string_view::npos ? 0 : found + 1;
        std::string_view line = text_.substr(begin, end - begin);
        line = line.substr(0, line.find(" #"));
        const std::size_t last = line.find_last_of("{[");
        const bool closed = last == std::string_view::npos ||
                            line.find_first_of("}]", last) != std::string_view::npos;
        return closed ? std::nullopt : std::optional(begin + last);
    }

    [[nodiscard]] bool newline_between(std::size_t open) const {
        return text_.substr(open, at_ - std::min(open, at_)).find('\n') != std::string_view::npos;
    }

    /// Where a remark hides the rest of the line the brace is opened on.
    [[nodiscard]] std::optional<std::size_t> hidden_by_remark(std::size_t open) const {
        const std::size_t end = std::min(text_.find('\n', open), text_.size());
        const std::size_t found = text_.substr(0, end).find(" #", open);
        return found == std::string_view::npos ? std::nullopt : std::optional(found + 1);
    }

    void unclosed(std::size_t open) {
        const std::string sign = text_[open] == '{' ? "}" : "]";
        Diagnostic& problem = add("read.yaml",
                                  {file_, open, open + 1},
                                  "the brace opened here is not closed with " + quoted(sign));
        if (const auto remark = hidden_by_remark(open)) {
            problem.labels.push_back(
                {word_at(*remark), "from '#' on the line is a remark and is not read"});
            problem.hints.push_back(
                "put a colour in quotes: \"" +
                std::string(text_.substr(*remark, word_at(*remark).end - *remark)) + "\"");
        } else {
            problem.hints.push_back("put " + quoted(sign) + " after the last entry");
        }
    }

    void quote() {
        const std::size_t open = open_.value_or(at_);
        add("read.yaml",
            {file_, open, std::min(open + 1, text_.size())},
            "the quote opened here is not closed")
            .hints.emplace_back("put the same quote at the end of the text");
    }

    void escape() {
        // The parser stops behind the sign that it does not know.
        const std::size_t back = text_.rfind('\\', at_ == 0 ? 0 : at_ - 1);
        const std::size_t begin = back == std::string_view::npos ? at_ : back;
        add("read.yaml",
            {file_, begin, std::min(begin + 2, text_.size())},
            "a backslash in double quotes has a meaning of its own")
            .hints.emplace_back(
                "put the text in single quotes instead, or write the backslash twice");
    }

    void first_character() {
        const std::string sign(text_.substr(at_, 1));
        add("read.yaml", word_at(at_), "a value cannot begin with " + quoted(sign))
            .hints.push_back("put the value in quotes: " +
                             in_quotes(text_.substr(at_, rest_of_line().end - at_)));
    }

    const Fault& fault_;
    std::optional<std::size_t> open_ = fault_.opened;
    std::string_view text_;
    FileId file_;
    Diagnostics& to_;
    std::size_t at_;
};

}  // namespace

void explain(const Fault& fault, std::string_view text, FileId file, Diagnostics& to) {
    Explainer(fault, text, file, to).run();
}

void report_reference(std::string_view text, std::size_t at, FileId file, Diagnostics& to) {
    const char sign = at < text.size() ? text[at] : ' ';
    const Span span = {file, at, end_of_word(text, at)};
    if (sign == '*') {
        to.error("read.alias",
                 span,
                 "a value cannot begin with '*', which stands for something written elsewhere")
            .hints.emplace_back(
                "write the value itself here, or put it in quotes if it is meant as it stands");
    } else if (sign == '&') {
        to.error("read.alias",
                 span,
                 "a value cannot begin with '&', which would name it for use elsewhere")
            .hints.emplace_back("leave the first word out, or put the whole value in quotes");
    } else {
        to.error("read.tag", span, "a value cannot begin with '!'")
            .hints.emplace_back("leave the first word out, or put the whole value in quotes");
    }
}

void report_no_colon(std::string_view words, Span span, Diagnostics& to) {
    constexpr std::size_t longest = 40;
    constexpr std::string_view no_break_space = "\xC2\xA0";
    const std::string shown = words.size() > longest ? "this line" : quoted(words);
    const std::size_t colon = words.find(':');
    const bool glued = colon != std::string_view::npos && colon > 0 && colon + 1 < words.size();
    Diagnostic& problem = to.error("read.no-colon",
                                   span,
                                   glued ? "no space stands after the colon in " + shown
                                         : shown + " has no colon and no value");
    if (glued && words.substr(colon + 1).starts_with(no_break_space)) {
        problem.hints.emplace_back(
            "the space there is one that does not break lines; write an ordinary space");
    } else if (glued && words.size() <= longest) {
        problem.hints.push_back("write " + quoted(std::string(words.substr(0, colon)) + ": " +
                                                  std::string(trim(words.substr(colon + 1)))));
    } else {
        problem.hints.emplace_back(kColonHint);
    }
}

}  // namespace platewright
