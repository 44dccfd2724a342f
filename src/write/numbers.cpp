// SPDX-License-Identifier: MIT
// Short decimal numbers.
#include "write/numbers.h"

#include <array>
#include <charconv>
#include <cmath>

namespace platewright {

namespace {

constexpr std::array<std::int64_t, 7> kPowers = {1, 10, 100, 1'000, 10'000, 100'000, 1'000'000};

std::int64_t power(int places) {
    return kPowers.at(static_cast<std::size_t>(places));
}

}  // namespace

std::int64_t to_steps(double value, int places) {
    // All whole numbers up to here are exact.
    constexpr double most = 9e15;
    const double steps = value * static_cast<double>(power(places));
    return std::abs(steps) < most ? std::llround(steps) : 0;
}

void append_steps(std::string& to, std::int64_t steps, int places) {
    if (steps < 0) {
        to += '-';
        steps = -steps;
    }
    const std::int64_t whole = steps / power(places);
    std::int64_t rest = steps % power(places);
    if (whole != 0 || rest == 0) {
        std::array<char, 24> digits{};
        const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), whole).ptr;
        to.append(digits.data(), end);
    }
    if (rest == 0) {
        return;
    }
    to += '.';
    for (int place = places - 1; rest != 0; --place) {
        to += static_cast<char>('0' + rest / power(place));
        rest %= power(place);
    }
}

void append_short(std::string& to, double value, int places) {
    append_steps(to, to_steps(value, places), places);
}

}  // namespace platewright
