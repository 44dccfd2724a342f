// SPDX-License-Identifier: MIT
// Where words may be parted, by the patterns of a language.
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace platewright {

/// The sign that stands where a word may be parted, and is not seen unless it is.
inline constexpr std::string_view kSoftHyphen = "\u00ad";

/// A file of patterns, in whatever code it is written. The library needs seconds to load the
/// largest as a whole, so that each word is given only the patterns that occur in it.
struct PatternFile {
    /// Patterns by their letters, sorted: `.da` of `.d2a`.
    using Level = std::vector<std::pair<std::string, std::string_view>>;

    std::string text;
    bool utf8 = true;
    /// Settings, as lines.
    std::string head;
    /// Compounds first, then their parts; often there is only one.
    std::vector<Level> levels;
};

/// Patterns of the languages asked for so far. Not for two threads.
class Hyphenation {
  public:
    /// `words`, valid UTF-8, with soft hyphens where its long words may be parted. `language`:
    /// `en`, `fr`, `de`, with or without a country; of other languages nothing is parted. Names are
    /// left whole in languages that write only names with a capital, unless they are long. Throws
    /// FontsMissing if the patterns are not on this machine.
    std::string soften(std::string_view words, std::string_view language);

  private:
    struct Language {
        PatternFile patterns;
        /// Words parted so far, as coded, with the places behind their letters.
        std::map<std::string, std::vector<bool>> parted;
    };

    Language* find(std::string_view language);

    std::map<std::string, Language, std::less<>> languages_;
};

}  // namespace platewright
