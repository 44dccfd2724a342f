// SPDX-License-Identifier: MIT
// Whole numbers, years of service and days.
#include "read/numbers.h"

#include <gtest/gtest.h>

#include "support.h"

namespace platewright {
namespace {

/// An entry with that value, read as that is written.
struct Line {
    explicit Line(const std::string& value) : reading("key: " + value + "\n") {
        root = *read_tree(reading.sources, reading.file, reading.problems);
    }

    [[nodiscard]] const TreeEntry& entry() const { return root.entries.front(); }

    [[nodiscard]] ReadContext context() {
        return {reading.sources, reading.file, reading.problems};
    }

    Reading reading;
    Item root;
};

std::optional<Date> date_of(const std::string& value, DayOfPeriod day = DayOfPeriod::first) {
    Line written(value);
    const auto date = read_date(written.entry(), day, written.context());
    EXPECT_EQ(date.has_value(), written.reading.problems.error_count() == 0);
    return date ? std::optional(date->date) : std::nullopt;
}

std::optional<double> years_of(const std::string& value) {
    Line written(value);
    const auto years = read_years(written.entry(), written.context());
    return years ? std::optional(years->years) : std::nullopt;
}

std::optional<int> number_of(const std::string& value) {
    constexpr int most = 140;
    Line written(value);
    const auto number = read_number(written.entry(), most, written.context());
    return number ? std::optional(number->first) : std::nullopt;
}

TEST(ReadDate, ReadsADayAMonthAndAYear) {
    EXPECT_EQ(date_of("1788-05-01"), (Date{1788, 5, 1}));
    EXPECT_EQ(date_of("1788-05"), (Date{1788, 5, 1}));
    EXPECT_EQ(date_of("1788"), (Date{1788, 1, 1}));
    EXPECT_EQ(date_of("'1788-05-01'"), (Date{1788, 5, 1}));
}

TEST(ReadDate, EndsAPeriodWithItsLastDay) {
    EXPECT_EQ(date_of("1788-05-02", DayOfPeriod::last), (Date{1788, 5, 2}));
    EXPECT_EQ(date_of("1788-02", DayOfPeriod::last), (Date{1788, 2, 29}));
    EXPECT_EQ(date_of("1786-02", DayOfPeriod::last), (Date{1786, 2, 28}));
    EXPECT_EQ(date_of("1800-02", DayOfPeriod::last), (Date{1800, 2, 28}));
    EXPECT_EQ(date_of("1788", DayOfPeriod::last), (Date{1788, 12, 31}));
}

TEST(ReadDate, RefusesWhatIsNoDay) {
    for (const char* bad : {"1 May 1788",
                            "1788-13-01",
                            "1788-00-01",
                            "1788-02-30",
                            "1786-02-29",
                            "1788-05-00",
                            "88-05-01",
                            "1788-5-1",
                            "1788-05-01-01",
                            "1788/05/01",
                            "0999-01-01",
                            "-1788",
                            "soon"}) {
        EXPECT_FALSE(date_of(bad)) << bad;
    }
}

TEST(ReadYears, ReadsWholeAndDecimalYears) {
    EXPECT_EQ(years_of("8"), 8.0);
    EXPECT_EQ(years_of("3.0"), 3.0);
    EXPECT_EQ(years_of("2.5 years"), 2.5);
    EXPECT_EQ(years_of("2,25 years"), 2.25);
    EXPECT_EQ(years_of("1 year"), 1.0);
    EXPECT_EQ(years_of("0"), 0.0);
    EXPECT_EQ(years_of("80"), 80.0);
}

TEST(ReadYears, RefusesWhatNobodyServes) {
    for (const char* bad :
         {"eight", "-8", "8.", ".5", "8.125", "81", "80.01", "1e1", "8 months", "years"}) {
        EXPECT_FALSE(years_of(bad)) << bad;
    }
}

TEST(ReadYears, TellsAtLeastFromMoreThan) {
    Line at_least("At least 8 years");
    const auto first = read_years_asked(at_least.entry(), at_least.context());
    ASSERT_TRUE(first);
    EXPECT_EQ(first->years, 8.0);
    EXPECT_FALSE(first->more_than);
    Line more_than("more than 6.5");
    const auto second = read_years_asked(more_than.entry(), more_than.context());
    ASSERT_TRUE(second);
    EXPECT_EQ(second->years, 6.5);
    EXPECT_TRUE(second->more_than);
    Line alone("8");
    EXPECT_FALSE(read_years_asked(alone.entry(), alone.context()));
    EXPECT_EQ(alone.reading.found(), Lines{"read.wrong-kind 1:6"});
}

TEST(ReadNumber, ReadsWholeNumbersInRange) {
    EXPECT_EQ(number_of("1"), 1);
    EXPECT_EQ(number_of("140"), 140);
    EXPECT_EQ(number_of("140 men"), 140);
    for (const char* bad : {"0", "141", "-1", "1.5", "four", "men", "1234567890123456789"}) {
        EXPECT_FALSE(number_of(bad)) << bad;
    }
}

}  // namespace
}  // namespace platewright
