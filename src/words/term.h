// SPDX-License-Identifier: MIT
// How a row of the tables of terms is written.
#pragma once

#include <string_view>

#include "words/message.h"

namespace platewright {

/// A word of the program and what is printed for it.
struct TradeTerm {
    std::string_view name;
    Message words;

    /// Printed in English as it is.
    consteval TradeTerm(const char* english, const char* french, const char* german)
        : name(english), words(english, french, german) {}

    /// Printed in English in other words: `oak-leaf`, "oak leaf".
    consteval TradeTerm(const char* word,
                        const char* english,
                        const char* french,
                        const char* german)
        : name(word), words(english, french, german) {}
};

}  // namespace platewright
