// SPDX-License-Identifier: MIT
// Saying a message: places, plurals, and the spaces of French.
#include "words/message.h"

#include <vector>

#include "base/text.h"

namespace platewright {
namespace {

constexpr std::string_view kNarrowSpace = "\u202f";
constexpr std::string_view kOpeningGuillemet = "«";
constexpr std::string_view kClosingGuillemet = "»";

/// Whether French sets its space before this close and unbroken.
bool clings_to_word(std::string_view rest) {
    return rest.starts_with(kClosingGuillemet) ||
           (!rest.empty() && std::string_view(":;!?").find(rest.front()) != std::string_view::npos);
}

std::string spaced_as_french(std::string_view text) {
    std::string spaced;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool narrow = text[i] == ' ' && (clings_to_word(text.substr(i + 1)) ||
                                               text.substr(0, i).ends_with(kOpeningGuillemet));
        spaced += narrow ? kNarrowSpace : text.substr(i, 1);
    }
    return spaced;
}

std::string fill(std::string_view text, const std::vector<std::string_view>& parts) {
    std::string filled;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const std::string_view place = text.substr(i, 3);
        if (place.size() == 3 && place[0] == '{' && place[2] == '}' && place[1] >= '1' &&
            place[1] <= '9') {
            const auto number = static_cast<std::size_t>(place[1] - '1');
            filled += number < parts.size() ? parts[number] : std::string_view();
            i += 2;
        } else {
            filled += text[i];
        }
    }
    return filled;
}

std::string said(Language language,
                 const Message& message,
                 const std::vector<std::string_view>& parts) {
    const std::string_view text = message.text(language);
    return language == Language::french ? fill(spaced_as_french(text), parts) : fill(text, parts);
}

}  // namespace

std::string say(Language language,
                const Message& message,
                std::initializer_list<std::string_view> parts) {
    return said(language, message, parts);
}

std::string say(Language language,
                const Counted& message,
                int number,
                std::initializer_list<std::string_view> parts) {
    const bool one = number == 1 || (number == 0 && language == Language::french);
    const std::string figures = std::to_string(number);
    std::vector<std::string_view> all{figures};
    all.insert(all.end(), parts);
    return said(language, one ? message.one : message.many, all);
}

std::string number_words(Language language, double value, int decimals) {
    std::string words = format_number(value, decimals);
    if (const std::size_t point = words.find('.');
        point != std::string::npos && language != Language::english) {
        words[point] = ',';
    }
    return words;
}

std::string in_quotes(Language language, std::string_view words) {
    constexpr Message quoted{"‘{1}’", "« {1} »", "„{1}“"};
    return say(language, quoted, {words});
}

}  // namespace platewright
