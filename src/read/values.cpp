// SPDX-License-Identifier: MIT
// One value of a property, by its kind. The notation's own ideas of numbers and truth are never
// asked.
#include <algorithm>
#include <string>
#include <vector>

#include "base/colour.h"
#include "base/text.h"
#include "read/groups.h"
#include "read/keys.h"
#include "read/numbers.h"
#include "read/texts.h"
#include "vocabulary/phrases.h"

namespace platewright {
namespace {

/// Longest name of a colour or metal, in characters.
constexpr std::size_t kNameLength = 100;

/// A number in any of the notations people try: 12, 1.5, -3, 1e3, .nan, 0x1F.
bool looks_like_number(std::string_view text) {
    if (text.starts_with('-') || text.starts_with('+')) {
        text.remove_prefix(1);
    }
    const bool digit_first = !text.empty() && text.front() >= '0' && text.front() <= '9';
    const bool plain = digit_first && text.find_first_not_of("0123456789.,eExXabcdefABCDEF_+-") ==
                                          std::string_view::npos;
    return plain || lower(text) == ".nan" || lower(text) == ".inf";
}

/// Reads one value; the members say what about it is known.
class ValueReader {
  public:
    ValueReader(PropertyId id, const Item& item, const ReadContext& context)
        : id_(id),
          row_(properties()[id]),
          key_(row_.key),
          item_(item),
          words_(trim(item.text)),
          context_(context) {}

    std::optional<Written> read() {
        if (row_.kind == Kind::words && (item_.quoted || lower(words_) != "none")) {
            return free_words();
        }
        if (lower(words_) == "none") {
            return none();
        }
        if (is_null_word(item_) || words_.empty()) {
            return refuse("read.wrong-kind", shown(words_) + " says nothing here");
        }
        if (row_.kind == Kind::choice) {
            return choice();
        }
        if (row_.kind == Kind::count) {
            return count();
        }
        if (row_.kind == Kind::ornament) {
            return ornament();
        }
        return row_.kind == Kind::measure ? measure() : colour();
    }

  private:
    [[nodiscard]] Written written(WrittenValue value) const {
        return {std::move(value), item_.span};
    }

    [[nodiscard]] std::string wanted() const { return quoted(key_) + " is " + expectation(id_); }

    std::optional<Written> refuse(std::string code,
                                  std::string message,
                                  std::string first_hint = {}) {
        Diagnostic& problem = context_.to.error(std::move(code), item_.span, std::move(message));
        if (!first_hint.empty()) {
            problem.hints.push_back(std::move(first_hint));
        }
        problem.hints.push_back(wanted());
        return std::nullopt;
    }

    std::optional<Written> free_words() {
        const bool number = lower(words_) == kTheRegimentsNumber;
        const std::size_t most =
            number ? kTheRegimentsNumber.size() : static_cast<std::size_t>(std::max(row_.most, 0));
        auto text = read_words(item_, key_, most, context_);
        return text ? std::optional(written(std::move(text->text))) : std::nullopt;
    }

    /// `crossed swords` is the drawing `crossed-swords`; the name of a file stays as it is.
    std::optional<Written> ornament() {
        auto text = read_words(item_, key_, kLongestOrnament, context_);
        if (!text) {
            return std::nullopt;
        }
        std::string name = trimmed_name(text->text);
        return written(std::move(name));
    }

    static std::string trimmed_name(std::string_view text) {
        std::string name(trim(text));
        if (lower(name).ends_with(".svg")) {
            return name;
        }
        std::ranges::replace(name, ' ', '-');
        return lower(name);
    }

    std::optional<Written> none() {
        if (row_.may_be_none) {
            return written(None{});
        }
        return refuse("read.wrong-kind", quoted(key_) + " cannot be none");
    }

    std::optional<Written> choice() {
        if (const auto word = find_choice(id_, words_)) {
            return written(std::string(*word));
        }
        std::vector<std::string> known =
            row_.may_be_none ? std::vector<std::string>{"none"} : std::vector<std::string>{};
        for (const Choice& each : choices_of(id_)) {
            known.emplace_back(each.word);
            if (!each.other_name.empty()) {
                known.emplace_back(each.other_name);
            }
        }
        std::string hint;
        if (const auto answer = yes_or_no(words_)) {
            hint = !*answer && row_.may_be_none ? "write none where it is not worn" : "";
        } else if (const std::string there = written_where_known(id_, words_); !there.empty()) {
            hint = "did you mean " + quoted(there) + "?";
        } else if (const auto near = nearest_word(words_, known)) {
            hint = "did you mean " + quoted(*near) + "?";
        }
        return refuse(
            "read.unknown-choice", quoted(key_) + " cannot be " + shown(words_), std::move(hint));
    }

    std::optional<Written> count() {
        constexpr std::size_t most_digits = 6;
        if (is_digits(words_) && words_.size() <= most_digits &&
            (words_.size() == 1 || words_.front() != '0')) {
            const int number = std::stoi(std::string(words_));
            if (number >= row_.least && number <= row_.most) {
                return written(number);
            }
        }
        if (is_digits(words_) && words_.front() == '0' && words_.size() > 1) {
            return refuse("read.wrong-kind",
                          shown(words_) + " begins with a nought",
                          "write the number without it");
        }
        std::string_view unsigned_words = words_;
        unsigned_words.remove_prefix(words_.starts_with('-') || words_.starts_with('+') ? 1 : 0);
        if (is_digits(unsigned_words)) {
            return refuse("read.out-of-range",
                          shown(words_) + " is not within what " + quoted(key_) + " can be");
        }
        const auto number = number_word(words_);
        return refuse("read.wrong-kind",
                      shown(words_) + " is not a whole number",
                      number ? "write " + std::to_string(*number) : "");
    }

    std::optional<Written> measure() {
        std::string problem;
        auto length = parse_measure(words_, problem);
        if (!length) {
            context_.to
                .error(
                    "read.wrong-kind", item_.span, shown(words_) + " is not a length with its unit")
                .hints.push_back(problem.empty() ? wanted() : problem);
            return std::nullopt;
        }
        if (length->mm < row_.least || length->mm > row_.most) {
            return refuse("read.out-of-range",
                          shown(words_) + " is not within what " + quoted(key_) + " can be");
        }
        return written(std::move(*length));
    }

    std::optional<Written> colour() {
        const std::string kind(kind_name(row_.kind));
        if (words_.starts_with('#') && !parse_hex(words_)) {
            return refuse("read.wrong-kind",
                          shown(words_) + " is not a colour",
                          "after '#' come six digits or letters from a to f, two each for red, "
                          "green and blue");
        }
        if (looks_like_number(words_)) {
            return refuse("read.wrong-kind", shown(words_) + " is a number, not " + kind);
        }
        if (const auto answer = yes_or_no(words_)) {
            return refuse("read.wrong-kind",
                          shown(words_) + " is not " + kind,
                          !*answer && row_.may_be_none ? "write none where it is not worn" : "");
        }
        if (auto reference = reference_of_phrase(words_)) {
            return written(std::move(*reference));
        }
        if (is_like_a_phrase(words_)) {
            const auto near = nearest_phrase(words_);
            return refuse("read.unknown-phrase",
                          shown(words_) + " stands for nothing",
                          near ? "did you mean " + quoted(*near) + "?"
                               : "'the facing colour' and others are in 'platewright reference'");
        }
        auto name = read_words(item_, key_, kNameLength, context_);
        return name ? std::optional(written(std::move(name->text))) : std::nullopt;
    }

    PropertyId id_;
    const Property& row_;
    std::string key_;
    const Item& item_;
    std::string_view words_;
    const ReadContext& context_;
};

}  // namespace

std::optional<Written> read_value(PropertyId id,
                                  const TreeEntry& entry,
                                  const ReadContext& context) {
    const std::string wanted = quoted(std::string(properties()[id].key)) + " is " + expectation(id);
    if (entry.value.form == Item::Form::nothing) {
        report_no_value(entry, wanted, context);
        return std::nullopt;
    }
    if (entry.value.form != Item::Form::text) {
        report_form(entry.value, std::string(properties()[id].key), wanted, context);
        return std::nullopt;
    }
    return ValueReader(id, entry.value, context).read();
}

}  // namespace platewright
