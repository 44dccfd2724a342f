// SPDX-License-Identifier: MIT
// How sure a statement is.
#pragma once

#include <string_view>

namespace platewright {

/// Documented: a source says so. Inferred: it follows from what sources say. Conjectural: somebody
/// had to decide.
enum class Certainty { documented, inferred, conjectural };

/// As it is written: `documented`, `inferred`, `conjectural`.
constexpr std::string_view certainty_word(Certainty certainty) {
    switch (certainty) {
        case Certainty::documented:
            return "documented";
        case Certainty::inferred:
            return "inferred";
        case Certainty::conjectural:
            break;
    }
    return "conjectural";
}

}  // namespace platewright
