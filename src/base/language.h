// SPDX-License-Identifier: MIT
// The languages in which sheets speak.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

namespace platewright {

/// The language of what a sheet says of its own accord; what users write is never translated.
enum class Language { english, french, german };

/// All of them, the default first.
inline constexpr std::array kLanguages{Language::english, Language::french, Language::german};

/// As written in files and in the metadata of documents: `en`, `fr`, `de` (ISO 639-1).
constexpr std::string_view language_code(Language language) {
    constexpr std::array<std::string_view, kLanguages.size()> codes{"en", "fr", "de"};
    return codes[static_cast<std::size_t>(language)];
}

/// The language of a code, or nothing.
constexpr std::optional<Language> find_language(std::string_view code) {
    for (const Language language : kLanguages) {
        if (language_code(language) == code) {
            return language;
        }
    }
    return std::nullopt;
}

}  // namespace platewright
