// SPDX-License-Identifier: MIT
// Whole numbers, years of service and days, as written.
#include "read/numbers.h"

#include <algorithm>
#include <array>
#include <string>

#include "base/text.h"
#include "read/keys.h"
#include "read/texts.h"
#include "vocabulary/records.h"

namespace platewright {
namespace {

constexpr std::size_t kMostDigits = 6;
/// Longest number, date or phrase of years, in characters.
constexpr std::size_t kLongest = 40;

/// Without `unit` at its end: `1400` of `1400 men`.
std::string_view without(std::string_view text, std::string_view unit) {
    if (lower(text).ends_with(unit)) {
        text.remove_suffix(unit.size());
    }
    return trim(text);
}

int to_int(std::string_view digits) {
    int number = 0;
    for (const char digit : digits) {
        number = number * 10 + (digit - '0');
    }
    return number;
}

/// Years as written, decimal point or comma; at most two decimals.
std::optional<double> parse_years(std::string_view words) {
    constexpr std::size_t most_decimals = 2;
    words = without(without(words, "years"), "year");
    const std::size_t point = words.find_first_of(".,");
    const std::string_view whole = words.substr(0, point);
    if (!is_digits(whole) || whole.size() > kMostDigits) {
        return std::nullopt;
    }
    double years = to_int(whole);
    if (point == std::string_view::npos) {
        return years;
    }
    const std::string_view decimals = words.substr(point + 1);
    if (!is_digits(decimals) || decimals.size() > most_decimals) {
        return std::nullopt;
    }
    return years + to_int(decimals) / (decimals.size() == 1 ? 10.0 : 100.0);
}

/// The years, or an error.
std::optional<double> checked_years(std::string_view words,
                                    const WrittenText& text,
                                    const std::string& hint,
                                    const ReadContext& context) {
    const auto years = parse_years(words);
    if (!years) {
        context.to
            .error("read.wrong-kind", text.span, shown(text.text) + " does not say how many years")
            .hints.push_back(hint);
        return std::nullopt;
    }
    if (*years > kMostYears) {
        context.to
            .error(
                "read.out-of-range", text.span, shown(text.text) + " is longer than anybody serves")
            .hints.push_back("write at most " + std::to_string(kMostYears) + " years");
        return std::nullopt;
    }
    return years;
}

bool is_leap(int year) {
    return year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
}

int days_of(int year, int month) {
    constexpr std::array days = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    constexpr int february = 2;
    return days.at(static_cast<std::size_t>(month) - 1) +
           (month == february && is_leap(year) ? 1 : 0);
}

/// The day, or what is wrong with it.
std::optional<Date> parse_date(std::string_view words, DayOfPeriod day, std::string& problem) {
    constexpr std::array<std::size_t, 3> digits = {4, 2, 2};
    constexpr int first_year = 1000;
    constexpr int months = 12;
    const auto parts = split(words, '-');
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (i >= digits.size() || !is_digits(parts[i]) || parts[i].size() != digits.at(i)) {
            problem = "is not a day";
            return std::nullopt;
        }
    }
    const bool last = day == DayOfPeriod::last;
    Date date{to_int(parts[0]), last ? months : 1, 1};
    date.month = parts.size() > 1 ? to_int(parts[1]) : date.month;
    if (date.year < first_year) {
        problem = "has no such year";
        return std::nullopt;
    }
    if (date.month < 1 || date.month > months) {
        problem = "has no such month";
        return std::nullopt;
    }
    date.day = last ? days_of(date.year, date.month) : 1;
    if (parts.size() > 2) {
        date.day = to_int(parts[2]);
    }
    if (date.day < 1 || date.day > days_of(date.year, date.month)) {
        problem = "has no such day in its month";
        return std::nullopt;
    }
    return date;
}

}  // namespace

bool is_digits(std::string_view text) {
    return !text.empty() &&
           std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

std::optional<bool> yes_or_no(std::string_view text) {
    const std::string word = lower(text);
    constexpr std::array<std::string_view, 3> no = {"no", "off", "false"};
    constexpr std::array<std::string_view, 3> yes = {"yes", "on", "true"};
    if (std::ranges::find(no, word) != no.end()) {
        return false;
    }
    return std::ranges::find(yes, word) != yes.end() ? std::optional(true) : std::nullopt;
}

std::optional<int> number_word(std::string_view text) {
    constexpr std::array<std::string_view, 13> words = {"zero",
                                                        "one",
                                                        "two",
                                                        "three",
                                                        "four",
                                                        "five",
                                                        "six",
                                                        "seven",
                                                        "eight",
                                                        "nine",
                                                        "ten",
                                                        "eleven",
                                                        "twelve"};
    const auto found = std::find(words.begin(), words.end(), lower(text));
    return found == words.end() ? std::nullopt
                                : std::optional(static_cast<int>(found - words.begin()));
}

std::optional<std::pair<int, Span>> read_number(const TreeEntry& entry,
                                                int most,
                                                const ReadContext& context) {
    const auto text = read_text(entry, kLongest, context);
    if (!text) {
        return std::nullopt;
    }
    const std::string_view digits = without(text->text, "men");
    const std::string range = "write a whole number from 1 to " + std::to_string(most);
    if (!is_digits(digits)) {
        Diagnostic& problem = context.to.error(
            "read.wrong-kind", text->span, shown(text->text) + " is not a whole number");
        const auto number = number_word(digits);
        problem.hints.push_back(number && *number > 0 ? "write " + std::to_string(*number) : range);
        return std::nullopt;
    }
    const int number = digits.size() > kMostDigits ? 0 : to_int(digits);
    if (number < 1 || number > most) {
        context.to
            .error("read.out-of-range",
                   text->span,
                   shown(text->text) + " is not within what " + quoted(entry.key) + " can be")
            .hints.push_back(range);
        return std::nullopt;
    }
    return std::pair(number, text->span);
}

std::optional<WrittenYears> read_years(const TreeEntry& entry, const ReadContext& context) {
    const auto text = read_text(entry, kLongest, context);
    if (!text) {
        return std::nullopt;
    }
    const auto years =
        checked_years(text->text, *text, "write a number of years, such as 8 or 2.5", context);
    return years ? std::optional(WrittenYears{*years, text->span}) : std::nullopt;
}

std::optional<YearsAsked> read_years_asked(const TreeEntry& entry, const ReadContext& context) {
    constexpr std::string_view at_least = "at least ";
    constexpr std::string_view more_than = "more than ";
    const auto text = read_text(entry, kLongest, context);
    if (!text) {
        return std::nullopt;
    }
    std::string_view words = text->text;
    YearsAsked asked;
    asked.more_than = lower(words).starts_with(more_than);
    if (asked.more_than || lower(words).starts_with(at_least)) {
        words.remove_prefix(asked.more_than ? more_than.size() : at_least.size());
    } else {
        words = {};
    }
    const auto years = checked_years(
        words, *text, "write 'at least 8', or 'more than 8' if not on the day itself", context);
    if (!years) {
        return std::nullopt;
    }
    asked.years = *years;
    return asked;
}

std::optional<WrittenDate> read_date(const TreeEntry& entry,
                                     DayOfPeriod day,
                                     const ReadContext& context) {
    const auto text = read_text(entry, kLongest, context);
    if (!text) {
        return std::nullopt;
    }
    std::string problem;
    if (const auto date = parse_date(text->text, day, problem)) {
        return WrittenDate{*date, text->span};
    }
    context.to.error("read.bad-date", text->span, shown(text->text) + " " + problem)
        .hints.emplace_back("write year, month and day in digits: 1784-03-01, or 1784-03, or 1784");
    return std::nullopt;
}

std::optional<bool> read_yes_or_no(const TreeEntry& entry, const ReadContext& context) {
    const auto text = read_text(entry, kLongest, context);
    if (!text) {
        return std::nullopt;
    }
    const auto answer = yes_or_no(text->text);
    if (!answer) {
        context.to
            .error("read.wrong-kind", text->span, shown(text->text) + " is neither yes nor no")
            .hints.emplace_back("write yes or no");
    }
    return answer;
}

}  // namespace platewright
