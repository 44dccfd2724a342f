// SPDX-License-Identifier: MIT
// Whole numbers, years of service and days, as written.
#pragma once

#include <optional>
#include <string_view>
#include <utility>

#include "read/context.h"
#include "read/specified.h"
#include "read/tree.h"

namespace platewright {

/// Only digits, at least one.
bool is_digits(std::string_view text);

/// True for yes, on, true, false for no, off, false; nothing for any other word.
std::optional<bool> yes_or_no(std::string_view text);

/// 3 for "three", up to twelve.
std::optional<int> number_word(std::string_view text);

/// A whole number from 1 to `most`; `men` may stand behind it. Errors: read.missing-value,
/// read.wrong-kind, read.out-of-range.
std::optional<std::pair<int, Span>> read_number(const TreeEntry& entry,
                                                int most,
                                                const ReadContext& context);

/// `8`, `8 years`, `2.5`: exactly what is written. Errors: read.missing-value, read.wrong-kind,
/// read.out-of-range.
std::optional<WrittenYears> read_years(const TreeEntry& entry, const ReadContext& context);

/// `at least 8` or `more than 6`.
struct YearsAsked {
    double years = 0;
    bool more_than = false;
};

/// Errors as for years.
std::optional<YearsAsked> read_years_asked(const TreeEntry& entry, const ReadContext& context);

/// Which day a month or a year alone stands for.
enum class DayOfPeriod { first, last };

/// `1788-05-01`, `1788-05` or `1788`. Errors: read.missing-value, read.wrong-kind, read.bad-date.
std::optional<WrittenDate> read_date(const TreeEntry& entry,
                                     DayOfPeriod day,
                                     const ReadContext& context);

/// `yes` or `no`. Errors: read.missing-value, read.wrong-kind.
std::optional<bool> read_yes_or_no(const TreeEntry& entry, const ReadContext& context);

}  // namespace platewright
