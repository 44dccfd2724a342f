// SPDX-License-Identifier: MIT
// How decisions and establishments are told, in words and as JSON; used by `explain`.
#pragma once

#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "resolve/uniform.h"

namespace platewright::cli {

/// Who the man is, a line each: `regiment 4, Tannbruck`, `rank corporal (Korporal)`.
std::string facts_in_words(const Uniform& man);

/// Every decision about these properties, the strongest first, with its place and its grounds.
std::string decisions_in_words(const Uniform& man,
                               const std::vector<PropertyId>& asked,
                               const SourceMap& sources);

/// The same as JSON: an object with `plate`, `facts` and `properties`.
std::string decisions_in_json(const Uniform& man,
                              const std::vector<PropertyId>& asked,
                              const SourceMap& sources);

/// A decision with what it comes to.
struct Told {
    const Decision* decision = nullptr;
    /// `straw, as facings.cloth`.
    std::string value;
};

/// The chain, the strongest first, without the steps that only work a decision out.
std::vector<Told> told(const Decided& decided);

}  // namespace platewright::cli
