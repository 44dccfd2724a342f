// SPDX-License-Identifier: MIT
// What stands under a picture of the index: what the trade calls it, and what to write for it.
#pragma once

#include <string>
#include <vector>

#include "resolve/uniform.h"
#include "vocabulary/examples.h"

namespace platewright::cli {

/// An option of the index.
struct IndexOption {
    Example option;
    /// Others of its group that look the same: words for what holds anyway.
    std::vector<Example> twins;
};

/// Whatever must be written in the group to see it: `cuffs: slashed`, `wings: {cloth: red, shape:
/// roll}`.
std::string as_written(const IndexOption& told);

/// What the trade calls it, in the language of the man's sheets: `cuff piping: white`; empty where
/// what is written says the same.
std::string trade_words(const IndexOption& told, const Uniform& man);

}  // namespace platewright::cli
