// SPDX-License-Identifier: MIT
// A day of the calendar as text.
#include "base/date.h"

#include <algorithm>

namespace platewright {

namespace {

std::string padded(int number, std::size_t digits) {
    const std::string text = std::to_string(number);
    return std::string(digits - std::min(digits, text.size()), '0') + text;
}

}  // namespace

std::string to_string(const Date& date) {
    return padded(date.year, 4) + "-" + padded(date.month, 2) + "-" + padded(date.day, 2);
}

}  // namespace platewright
