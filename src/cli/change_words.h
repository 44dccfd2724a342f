// SPDX-License-Identifier: MIT
// How the difference between two men is told, in words and as JSON; used by `change`.
#pragma once

#include <string>

#include "resolve/change.h"
#include "resolve/uniform.h"

namespace platewright::cli {

/// What is compared.
struct TwoMen {
    const Uniform& before;
    const Uniform& after;
    /// What the user asks to change: `rank=sergeant`; empty where two files are compared.
    std::string wish;
};

/// One thing of a man: `4 chevrons of gold lace, 12 mm wide, 2 on each sleeve above the cuff`.
std::string thing_in_words(const Uniform& man, const Change& change);

/// The whole change as one line under its heading, with both colours where one thing is swapped
/// for another.
std::string change_in_words(const TwoMen& men, const Change& change);

/// The answer: what to buy, sew on, take off, swap and lay aside, and what stays.
std::string comparison_in_words(const TwoMen& men, const Comparison& found);

/// The same as JSON: an object with `from`, `to`, `changes` and `stays`.
std::string comparison_in_json(const TwoMen& men, const Comparison& found);

}  // namespace platewright::cli
