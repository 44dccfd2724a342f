// SPDX-License-Identifier: MIT
// Saying a message in three languages.
#include "words/message.h"

#include <gtest/gtest.h>

#include "words/man_messages.h"
#include "words/sheet_messages.h"

namespace platewright {
namespace {

TEST(Message, PutsPartsInTheirPlaces) {
    constexpr Message message{"{2} of {1}", "{1} : {2}", "{1}, {2}"};
    EXPECT_EQ(say(Language::english, message, {"white", "bars"}), "bars of white");
    EXPECT_EQ(say(Language::french, message, {"white", "bars"}), "white\u202f: bars");
    EXPECT_EQ(say(Language::german, message, {"white", "bars"}), "white, bars");
}

TEST(Message, PartsAreNotReadForPlaces) {
    constexpr Message message{"{1} {2}", "{1} {2}", "{1} {2}"};
    EXPECT_EQ(say(Language::english, message, {"{2}", "b"}), "{2} b");
    EXPECT_EQ(say(Language::english, message, {"a"}), "a ");
    EXPECT_EQ(say(Language::english, message), " ");
}

// Lexique des règles typographiques en usage à l'Imprimerie nationale, 2002: a narrow space that
// does not break stands before the high marks. In parts, which are the user's, spaces stay.
TEST(Message, FrenchSpacesBeforeHighMarks) {
    constexpr Message sentence{"{1}", "« quoi ? » oui ; non : {1} !", "{1}"};
    static_assert(places_in("{1} {3} {1} {0} {x} {") == Places{2, 0, 1});
    EXPECT_EQ(say(Language::french, sentence, {"a : b"}),
              "«\u202fquoi\u202f?\u202f» oui\u202f; non\u202f: a : b\u202f!");
    EXPECT_EQ(say(Language::german, sentence, {"a : b"}), "a : b");
}

TEST(Message, AnIncompleteOneIsSeen) {
    EXPECT_TRUE(complete({"a {1}", "{1} b", "{1}"}));
    EXPECT_FALSE(complete({"a", "", "c"}));
    EXPECT_FALSE(complete({"a {1}", "b {1}", "c {2}"}));
    EXPECT_FALSE(complete({"a {1}", "b", "c {1}"}));
}

// Unicode CLDR plural rules (cldr-plurals, cardinal): English and German are "one" for 1 alone,
// French for 0 and 1.
TEST(Message, OneAndMany) {
    constexpr Counted bars{{"{1} bar of {2}", "{1} barre ({2})", "{1} Streifen ({2})"},
                           {"{1} bars of {2}", "{1} barres ({2})", "{1} Streifen ({2})"}};
    EXPECT_EQ(say(Language::english, bars, 0, {"red"}), "0 bars of red");
    EXPECT_EQ(say(Language::english, bars, 1, {"red"}), "1 bar of red");
    EXPECT_EQ(say(Language::english, bars, 2, {"red"}), "2 bars of red");
    EXPECT_EQ(say(Language::french, bars, 0, {"red"}), "0 barre (red)");
    EXPECT_EQ(say(Language::french, bars, 1, {"red"}), "1 barre (red)");
    EXPECT_EQ(say(Language::french, bars, 2, {"red"}), "2 barres (red)");
    EXPECT_EQ(say(Language::german, bars, 2, {"red"}), "2 Streifen (red)");
}

TEST(Message, NumbersHaveTheLanguagesMark) {
    EXPECT_EQ(number_words(Language::english, 12.5, 1), "12.5");
    EXPECT_EQ(number_words(Language::french, 12.5, 1), "12,5");
    EXPECT_EQ(number_words(Language::german, 12.04, 1), "12");
}

TEST(Message, QuotesOfTheLanguage) {
    EXPECT_EQ(in_quotes(Language::english, "red"), "‘red’");
    EXPECT_EQ(in_quotes(Language::french, "red"), "«\u202fred\u202f»");
    EXPECT_EQ(in_quotes(Language::german, "red"), "„red“");
}

TEST(Language, CodesAreThoseOfTheStandard) {
    for (const Language language : kLanguages) {
        EXPECT_EQ(find_language(language_code(language)), language);
    }
    EXPECT_EQ(language_code(Language::german), "de");
    EXPECT_FALSE(find_language("DE"));
    EXPECT_FALSE(find_language(""));
}

}  // namespace
}  // namespace platewright
