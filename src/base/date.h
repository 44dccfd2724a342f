// SPDX-License-Identifier: MIT
// A day of the calendar.
#pragma once

#include <compare>
#include <string>

namespace platewright {

/// A day; a month or a year alone stands for its first day.
struct Date {
    int year = 0;
    int month = 1;
    int day = 1;

    // NOLINTNEXTLINE(modernize-use-nullptr): a fault of clang-tidy 14 with comparisons
    friend auto operator<=>(const Date&, const Date&) = default;
};

/// `1784-03-01`.
std::string to_string(const Date& date);

}  // namespace platewright
