// SPDX-License-Identifier: MIT
// Rules: when these hold, wear that; part of the second stage.
#pragma once

#include <vector>

#include "base/diagnostic.h"
#include "resolve/judge.h"
#include "resolve/man.h"
#include "resolve/statements.h"

namespace platewright {

/// Whether a rule holds for a man who is dressed so.
bool holds(const Rule& rule,
           const Man& man,
           const std::vector<Verdict>& dressed,
           const ColourBook& colours);

/// Judges what was said together with the rules. What they ask may depend on what they decide:
/// first without any, then with those that hold, until the same ones hold again, at most once
/// more than there are rules. Errors: those of `judge`, and resolve.circle for rules that chase
/// each other. A man without a regulation has no rules.
std::vector<Verdict> judge_with_rules(const std::vector<Statement>& statements,
                                      const Man& man,
                                      const OfRegiment& regiment,
                                      const ColourBook& colours,
                                      Diagnostics& to);

}  // namespace platewright
