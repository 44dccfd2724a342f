// SPDX-License-Identifier: MIT
// Where words may be parted, by the patterns of a language.
#include "text/hyphenation.h"

#include <glib.h>
#include <hyphen.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <memory>
#include <set>

#include "base/files.h"
#include "base/text.h"
#include "text/typesetter.h"

namespace platewright {

namespace {

/// A language with the file of its patterns and the Debian package that brings it.
struct Source {
    std::string_view language;
    std::string_view file;
    std::string_view package;
    /// Only names have a capital.
    bool capital_is_name;
};

constexpr std::string_view kFolder = "/usr/share/hyphen/";
constexpr std::array<Source, 3> kSources{{{"en", "hyph_en_GB.dic", "hyphen-en-gb", true},
                                          {"fr", "hyph_fr.dic", "hyphen-fr", true},
                                          {"de", "hyph_de_DE.dic", "hyphen-de", false}}};
/// Pattern files are no larger.
constexpr std::size_t kMostBytes = 4U << 20U;
/// Shorter words are never parted, nor names shorter than that; longer ones than the last are no
/// words.
constexpr std::size_t kShortest = 6;
constexpr std::size_t kShortestName = 13;
constexpr std::size_t kLongest = 80;
/// Letters that stay together at the beginning and the end of a word.
constexpr int kAtBeginning = 2;
constexpr int kAtEnd = 3;

const Source* source_of(std::string_view language) {
    for (const Source& row : kSources) {
        if (language.substr(0, language.find('-')) == row.language) {
            return &row;
        }
    }
    return nullptr;
}

/// A pattern without its figures and without what it changes: `.da` of `.d2a`.
std::string letters_of(std::string_view pattern) {
    std::string letters;
    for (const char c : pattern.substr(0, pattern.find('/'))) {
        if (c < '0' || c > '9') {
            letters += c;
        }
    }
    return letters;
}

/// Sorted, and of patterns of the same letters only the last, which counts: the library would lose
/// the memory of the others.
void keep_last_of_each(PatternFile::Level& level) {
    std::ranges::reverse(level);
    std::ranges::stable_sort(level, {}, &PatternFile::Level::value_type::first);
    const auto same = [](const auto& one, const auto& other) { return one.first == other.first; };
    level.erase(std::unique(level.begin(), level.end(), same), level.end());
}

PatternFile parsed(std::string text) {
    PatternFile made;
    made.text = std::move(text);
    made.levels.emplace_back();
    bool first = true;
    for (std::string_view line : split(made.text, '\n')) {
        line = line.substr(0, line.find_first_of("\r%#"));
        if (first) {
            made.utf8 = line.starts_with("UTF-8");
            first = false;
        } else if (line == "NEXTLEVEL") {
            made.levels.emplace_back();
        } else if (line.find("HYPHENMIN ") != std::string_view::npos) {
            made.head += std::string(line) + "\n";
        } else if (!line.empty() && !line.starts_with("NOHYPHEN")) {
            made.levels.back().emplace_back(letters_of(line), line);
        }
    }
    std::ranges::for_each(made.levels, keep_last_of_each);
    return made;
}

/// Those patterns of a level whose letters stand somewhere in the word, a line each. Each once, for
/// the same reason as above, however often its letters stand there.
std::string patterns_in(const PatternFile::Level& level, const std::string& dotted) {
    std::set<std::string_view> found;
    for (std::size_t from = 0; from < dotted.size(); ++from) {
        for (std::size_t count = 1; count <= dotted.size() - from; ++count) {
            const std::string letters = dotted.substr(from, count);
            const auto at = std::ranges::lower_bound(
                level, letters, {}, [](const auto& each) -> const std::string& {
                    return each.first;
                });
            if (at == level.end() || !at->first.starts_with(letters)) {
                break;
            }
            if (at->first == letters) {
                found.insert(at->second);
            }
        }
    }
    std::string lines;
    for (const std::string_view line : found) {
        lines += std::string(line) + "\n";
    }
    return lines;
}

struct Free {
    void operator()(HyphenDict* patterns) const { hnj_hyphen_free(patterns); }

    void operator()(std::FILE* stream) const { std::fclose(stream); }
};

/// What of the patterns matters for one word, loaded.
std::unique_ptr<HyphenDict, Free> load_for(const PatternFile& patterns, const std::string& word) {
    std::string text = (patterns.utf8 ? "UTF-8\n" : "ISO8859-1\n") + patterns.head;
    for (std::size_t i = 0; i < patterns.levels.size(); ++i) {
        text += (i == 0 ? "" : "NEXTLEVEL\n") + patterns_in(patterns.levels[i], "." + word + ".");
    }
    const std::unique_ptr<std::FILE, Free> stream(fmemopen(text.data(), text.size(), "r"));
    return std::unique_ptr<HyphenDict, Free>(
        stream == nullptr ? nullptr : hnj_hyphen_load_file(stream.get()));
}

void append(std::string& to, gunichar character) {
    std::array<char, 6> bytes{};
    const int count = g_unichar_to_utf8(character, bytes.data());
    to.append(bytes.data(), static_cast<std::size_t>(count));
}

/// The word in small letters and in the patterns' own code; empty if a letter is not in it.
std::string coded(const std::vector<gunichar>& word, bool utf8) {
    std::string made;
    for (const gunichar letter : word) {
        const gunichar small = g_unichar_tolower(letter);
        if (utf8) {
            append(made, small);
        } else if (small < 0x100) {  // ISO 8859-1 has the first 256 characters of Unicode
            made += static_cast<char>(small);
        } else {
            return {};
        }
    }
    return made;
}

/// For each of `count` letters of a coded word whether the word may be parted behind it.
std::vector<bool> places(const PatternFile& patterns, const std::string& word, std::size_t count) {
    std::vector<bool> found(count, false);
    const auto loaded = load_for(patterns, word);
    if (loaded == nullptr) {
        return found;
    }
    const int size = static_cast<int>(word.size());
    std::vector<char> marks(word.size() + 5, '0');
    char** changes = nullptr;
    int* from = nullptr;
    int* cut = nullptr;
    const bool failed = hnj_hyphen_hyphenate3(loaded.get(),
                                              word.c_str(),
                                              size,
                                              marks.data(),
                                              nullptr,
                                              &changes,
                                              &from,
                                              &cut,
                                              kAtBeginning,
                                              kAtEnd,
                                              0,
                                              0) != 0;
    for (std::size_t i = 0; i < count && !failed; ++i) {
        // A place where the spelling would change is passed over: the words are the user's.
        const bool changed = changes != nullptr && changes[i] != nullptr;
        found[i] = (static_cast<unsigned char>(marks[i]) & 1U) != 0 && !changed;
    }
    for (std::size_t i = 0; changes != nullptr && i < word.size(); ++i) {
        std::free(changes[i]);
    }
    std::free(changes);
    std::free(from);
    std::free(cut);
    return found;
}

bool may_be_parted(const std::vector<gunichar>& word, bool capital_is_name) {
    const bool name = capital_is_name && !word.empty() && g_unichar_isupper(word.front()) != FALSE;
    return word.size() >= (name ? kShortestName : kShortest) && word.size() <= kLongest;
}

/// Appends the word with soft hyphens behind those letters.
void append_parted(std::string& to,
                   const std::vector<gunichar>& word,
                   const std::vector<bool>& parts) {
    for (std::size_t i = 0; i < word.size(); ++i) {
        append(to, word[i]);
        to += parts[i] ? kSoftHyphen : std::string_view();
    }
}

}  // namespace

Hyphenation::Language* Hyphenation::find(std::string_view language) {
    const Source* source = source_of(language);
    if (source == nullptr) {
        return nullptr;
    }
    const auto known = languages_.find(source->language);
    if (known != languages_.end()) {
        return &known->second;
    }
    const std::string path = std::string(kFolder) + std::string(source->file);
    FileResult file = DiskReader().read(path, kMostBytes);
    if (!file.ok()) {
        throw FontsMissing("the patterns for parting words are not installed (no file " + path +
                           "); install the package " + std::string(source->package));
    }
    Language& made = languages_[std::string(source->language)];
    made.patterns = parsed(std::move(file.text));
    return &made;
}

std::string Hyphenation::soften(std::string_view words, std::string_view language) {
    Language* found = find(language);
    if (found == nullptr) {
        return std::string(words);
    }
    const bool capital_is_name = source_of(language)->capital_is_name;
    std::string made;
    std::vector<gunichar> word;
    const auto end_word = [&] {
        const std::string code = may_be_parted(word, capital_is_name)
                                     ? coded(word, found->patterns.utf8)
                                     : std::string();
        const auto [at, is_new] = found->parted.try_emplace(code);
        if (is_new && !code.empty()) {
            at->second = places(found->patterns, code, word.size());
        }
        append_parted(
            made, word, code.empty() ? std::vector<bool>(word.size(), false) : at->second);
        word.clear();
    };
    const char* end = words.data() + words.size();
    for (const char* at = words.data(); at < end; at = g_utf8_next_char(at)) {
        const gunichar character = g_utf8_get_char(at);
        if (g_unichar_isalpha(character) != FALSE) {
            word.push_back(character);
            continue;
        }
        end_word();
        append(made, character);
    }
    end_word();
    return made;
}

}  // namespace platewright
