// SPDX-License-Identifier: MIT
// The trade's words: everything that the table of properties can put on a sheet has its terms.
#include "words/terms.h"

#include <gtest/gtest.h>

#include <cctype>
#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "vocabulary/property.h"
#include "words/terms_choices.h"
#include "words/terms_dress.h"

namespace platewright {
namespace {

const std::filesystem::path kTemplates =
    std::filesystem::path(PLATEWRIGHT_SOURCE_DIR) / "templates";

TEST(Terms, EveryNameOfTheTableHasOne) {
    for (const Property& row : properties()) {
        EXPECT_TRUE(has_term(row.called())) << row.called();
        EXPECT_TRUE(row.frame.empty() || has_term(row.frame)) << row.frame;
    }
}

TEST(Terms, EveryChoiceHasOne) {
    for (PropertyId id = 0; id < properties().size(); ++id) {
        for (const Choice& choice : choices_of(id)) {
            EXPECT_TRUE(has_choice_term(properties()[id].key, choice.word))
                << properties()[id].key << ": " << choice.word;
        }
    }
}

TEST(Terms, EveryTraitHasOne) {
    for (const Property& row : properties()) {
        const bool is_matter = row.kind == Kind::cloth || row.kind == Kind::metal;
        EXPECT_TRUE(is_matter || has_trait_term(row.name())) << row.key;
    }
}

TEST(Terms, EveryOrnamentOfTheDataFolderHasOne) {
    for (const auto& file : std::filesystem::directory_iterator(kTemplates / "ornaments")) {
        EXPECT_TRUE(has_term(file.path().stem().string())) << file.path();
    }
}

/// What the pattern's first group finds in a file.
std::vector<std::string> found_in(const std::filesystem::path& path, const char* pattern) {
    std::ostringstream read;
    read << std::ifstream(path).rdbuf();
    const std::string text = read.str();
    const std::regex wanted(pattern);
    std::vector<std::string> found;
    for (std::sregex_iterator at(text.begin(), text.end(), wanted), end; at != end; ++at) {
        found.push_back((*at)[1]);
    }
    return found;
}

// Names of frames stand under details, titles of garments laid flat under their drawings.
TEST(Terms, WhatTemplatesNameHasOne) {
    for (const auto& file : std::filesystem::directory_iterator(kTemplates / "line-infantry")) {
        for (const std::string& frame : found_in(file.path(), "id=\"frame-([a-z-]+)\"")) {
            // What the index alone is cut by stands over no words of its own.
            EXPECT_TRUE(frame.ends_with("-index") || has_term(frame))
                << file.path() << ": " << frame;
        }
        if (file.path().filename().string().starts_with("flat-")) {
            for (std::string title : found_in(file.path(), "<title>([A-Za-z, ]+)</title>")) {
                title.front() = static_cast<char>(std::tolower(title.front()));
                EXPECT_TRUE(has_term(title)) << file.path() << ": " << title;
            }
        }
    }
}

TEST(Terms, TitlesBeginWithACapital) {
    EXPECT_EQ(title_term(Language::english, "Gaiter, outer side"), "Gaiter, outer side");
    EXPECT_EQ(title_term(Language::german, "Gaiter, outer side"),
              title_term(Language::german, "gaiter, outer side"));
    EXPECT_NE(title_term(Language::german, "Gaiter, outer side"), "Gaiter, outer side");
    EXPECT_EQ(title_term(Language::french, "shoulder"), "Épaule");
    EXPECT_EQ(title_term(Language::english, "a user's own"), "A user's own");
    EXPECT_EQ(title_term(Language::english, ""), "");
}

// A term for a word that the table no longer has would never be printed.
TEST(Terms, NoChoiceIsWithoutItsProperty) {
    for (const ChoiceTerm& row : kChoiceTerms) {
        bool found = row.property.empty();
        for (PropertyId id = 0; id < properties().size(); ++id) {
            const std::string_view key = properties()[id].key;
            const bool meant = key == row.property ||
                               (row.property.starts_with('.') && key.ends_with(row.property));
            for (const Choice& choice : choices_of(id)) {
                found = found || (meant && choice.word == row.term.name);
            }
        }
        EXPECT_TRUE(found) << row.property << ": " << row.term.name;
    }
}

TEST(Terms, NoTermIsThereTwice) {
    std::set<std::string_view> seen;
    for (const TradeTerm& row : kTerms) {
        EXPECT_TRUE(seen.insert(row.name).second) << row.name;
    }
    std::set<std::string> choices;
    for (const ChoiceTerm& row : kChoiceTerms) {
        const std::string key = std::string(row.property) + " " + std::string(row.term.name);
        EXPECT_TRUE(choices.insert(key).second) << key;
    }
}

TEST(Terms, AreGivenInTheLanguageAsked) {
    EXPECT_EQ(term(Language::french, "turnbacks"), "retroussis");
    EXPECT_EQ(term(Language::german, "turnbacks"), "Schoßumschläge");
    EXPECT_EQ(term(Language::english, "oak-leaf"), "oak leaf");
    EXPECT_EQ(choice_term(Language::french, "pockets.direction", "horizontal"), "en travers");
    EXPECT_EQ(choice_term(Language::german, "service.sleeves", "left"), "am linken Ärmel");
    EXPECT_EQ(choice_term(Language::german, "collar.shape", "none"), "ohne");
    EXPECT_EQ(trait_term(Language::french, "width"), "largeur");
}

TEST(Terms, AWordOfTheUsersOwnStays) {
    EXPECT_EQ(term(Language::french, "badge.svg"), "badge.svg");
    EXPECT_EQ(choice_term(Language::german, "cuffs.shape", "frilled"), "frilled");
    EXPECT_EQ(choice_term(Language::german, "", ""), "");
    EXPECT_EQ(trait_term(Language::german, ""), "");
}

}  // namespace
}  // namespace platewright
