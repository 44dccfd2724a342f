// SPDX-License-Identifier: MIT
// A message of a sheet in every language, and how it is said. An incomplete one does not compile.
#pragma once

#include <array>
#include <initializer_list>
#include <string>
#include <string_view>

#include "base/language.h"

namespace platewright {

/// How often each of the places `{1}` to `{9}` stands in a text.
using Places = std::array<int, 9>;

/// The places of a text.
constexpr Places places_in(std::string_view text) {
    Places places{};
    for (std::size_t i = 0; i + 2 < text.size(); ++i) {
        if (text[i] == '{' && text[i + 1] >= '1' && text[i + 1] <= '9' && text[i + 2] == '}') {
            ++places[static_cast<std::size_t>(text[i + 1] - '1')];
        }
    }
    return places;
}

/// Whether every language has words with the same places.
constexpr bool complete(const std::array<std::string_view, kLanguages.size()>& texts) {
    for (const std::string_view text : texts) {
        if (text.empty() || places_in(text) != places_in(texts.front())) {
            return false;
        }
    }
    return true;
}

/// One message in every language. `{1}` to `{9}` are places for what is put in. French is written
/// with plain spaces before `: ; ! ?` and within guillemets; they are printed narrow and unbroken.
class Message {
  public:
    consteval Message(const char* english, const char* french, const char* german)
        : texts_{english, french, german} {
        if (!complete(texts_)) {
            throw "a language has no words, or other places than English";
        }
    }

    /// As it stands in the catalogue.
    [[nodiscard]] constexpr std::string_view text(Language language) const {
        return texts_[static_cast<std::size_t>(language)];
    }

  private:
    std::array<std::string_view, kLanguages.size()> texts_;
};

/// A message about a number of things: of one, and of any other number.
struct Counted {
    Message one;
    Message many;
};

/// The message with `parts` in its places, the first in `{1}`; a place without a part stays empty.
std::string say(Language language,
                const Message& message,
                std::initializer_list<std::string_view> parts = {});

/// The form for that number, which is put in `{1}`; `parts` follow from `{2}` on. French counts
/// nothing as one, the others as many.
std::string say(Language language,
                const Counted& message,
                int number,
                std::initializer_list<std::string_view> parts = {});

/// A number with at most `decimals` places and the language's decimal mark, without trailing zeros.
std::string number_words(Language language, double value, int decimals);

/// What somebody else said or named: ‘red’, « red », „red“.
std::string in_quotes(Language language, std::string_view words);

}  // namespace platewright
