// SPDX-License-Identifier: MIT
// Reading and judging conditions.
#include "vocabulary/condition.h"

#include <algorithm>
#include <charconv>
#include <utility>

#include "base/text.h"

namespace platewright {

namespace {

/// No template needs more; a longer condition is a slip.
constexpr std::size_t kLongestCondition = 1000;

constexpr std::string_view kBlanks = " \t\r\n";

/// Length of the word or sign that `text` begins with; `text` is not empty and begins with no
/// blank.
std::size_t first_word_length(std::string_view text) {
    if (text.starts_with('=')) {
        return 1;
    }
    if (text.starts_with("!=")) {
        return 2;
    }
    const std::size_t sign = std::min(text.find("!="), text.find('='));
    return std::min({sign, text.find_first_of(kBlanks), text.size()});
}

/// The words of `text`, with `=` and `!=` as words of their own.
std::vector<std::string_view> words_of(std::string_view text) {
    std::vector<std::string_view> words;
    for (text = trim(text); !text.empty(); text = trim(text)) {
        words.push_back(text.substr(0, first_word_length(text)));
        text.remove_prefix(words.back().size());
    }
    return words;
}

std::string unknown_property(std::string_view key) {
    const std::optional<std::string> near = nearest_property(key);
    return "unknown property " + quoted(key) +
           (near ? "; did you mean " + quoted(*near) + "?"
                 : "; write a property such as 'lapels.cloth'");
}

bool is_whole_number(std::string_view text) {
    int value = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
    return read.ec == std::errc() && read.ptr == text.data() + text.size();
}

std::string unknown_word(PropertyId id, std::string_view word) {
    std::vector<std::string> words;
    for (const Choice& choice : choices_of(id)) {
        words.emplace_back(choice.word);
    }
    const std::optional<std::string> near = nearest_word(word, words);
    const std::string key(properties()[id].key);
    return quoted(key) + " is never " + quoted(word) + "; " +
           (near ? "did you mean " + quoted(*near) + "?" : "write " + expectation(id));
}

/// The word as `word_of` would give it, or nothing with `problem` set.
std::optional<std::string> checked_word(PropertyId id,
                                        std::string_view word,
                                        std::string& problem) {
    const Property& row = properties()[id];
    if (word == "none" && row.may_be_none) {
        return row.kind == Kind::count ? "0" : "none";
    }
    if (row.kind == Kind::choice) {
        if (const std::optional<std::string_view> known = find_choice(id, word)) {
            return std::string(*known);
        }
    } else if (row.kind != Kind::count || is_whole_number(word)) {
        return std::string(word);
    }
    problem = unknown_word(id, word);
    return std::nullopt;
}

/// Goes through the words of a condition once.
class Reader {
  public:
    Reader(std::vector<std::string_view> words, std::string& problem)
        : words_(std::move(words)), problem_(problem) {}

    std::optional<Condition> read() {
        Condition condition;
        do {
            std::optional<Term> term = read_term();
            if (!term) {
                return std::nullopt;
            }
            condition.push_back(std::move(*term));
        } while (take("and"));
        if (at_ < words_.size()) {
            problem_ = "did not expect " + quoted(words_[at_]) +
                       "; join what must hold together with 'and', other values with 'or'";
            return std::nullopt;
        }
        return condition;
    }

  private:
    bool take(std::string_view word) {
        if (at_ < words_.size() && words_[at_] == word) {
            ++at_;
            return true;
        }
        return false;
    }

    std::optional<Term> read_term() {
        Term term;
        term.negated = take("not");
        if (at_ == words_.size()) {
            problem_ = "a property is missing at the end; write for instance 'lapels.cloth'";
            return std::nullopt;
        }
        const std::string_view key = words_[at_++];
        const std::optional<PropertyId> id = find_property(key);
        if (!id) {
            problem_ = unknown_property(key);
            return std::nullopt;
        }
        term.property = *id;
        if (take("!=")) {
            term.negated = !term.negated;
        } else if (!take("=")) {
            return worn(std::move(term));
        }
        return read_words(std::move(term));
    }

    /// A property alone: there is some of it. A count is there unless it is 0.
    static Term worn(Term term) {
        if (properties()[term.property].kind == Kind::count) {
            term.negated = !term.negated;
            term.words = {"0"};
        }
        return term;
    }

    std::optional<Term> read_words(Term term) {
        do {
            std::string word;
            while (at_ < words_.size() && words_[at_] != "or" && words_[at_] != "and") {
                word += word.empty() ? "" : " ";
                word += words_[at_++];
            }
            if (word.empty()) {
                problem_ = "a value is missing for " + quoted(properties()[term.property].key) +
                           "; write " + expectation(term.property);
                return std::nullopt;
            }
            std::optional<std::string> known = checked_word(term.property, word, problem_);
            if (!known) {
                return std::nullopt;
            }
            term.words.push_back(std::move(*known));
        } while (take("or"));
        return term;
    }

    std::vector<std::string_view> words_;
    std::size_t at_ = 0;
    std::string& problem_;
};

bool holds(const Term& term, const std::string& value) {
    const bool is = term.words.empty() ? value != "none"
                                       : std::ranges::find(term.words, value) != term.words.end();
    return is != term.negated;
}

}  // namespace

std::optional<Condition> parse_condition(std::string_view text, std::string& problem) {
    if (text.size() > kLongestCondition) {
        problem = "too long for a condition";
        return std::nullopt;
    }
    if (trim(text).empty()) {
        return Condition{};
    }
    return Reader(words_of(text), problem).read();
}

bool speaks(PropertyId id, const std::function<std::string(PropertyId)>& value_of) {
    static const std::vector<std::vector<Condition>> kAlternatives = [] {
        std::vector<std::vector<Condition>> alternatives;
        for (const Property& row : properties()) {
            std::string problem;
            alternatives.push_back(
                {parse_condition(row.speaks_when, problem).value_or(Condition{})});
            if (!row.or_when.empty()) {
                alternatives.back().push_back(
                    parse_condition(row.or_when, problem).value_or(Condition{}));
            }
        }
        return alternatives;
    }();
    return std::ranges::any_of(kAlternatives.at(id), [&](const Condition& condition) {
        return holds(condition, value_of);
    });
}

bool holds(const Condition& condition, const std::function<std::string(PropertyId)>& value_of) {
    return std::ranges::all_of(
        condition, [&](const Term& term) { return holds(term, value_of(term.property)); });
}

}  // namespace platewright
