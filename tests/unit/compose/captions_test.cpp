// SPDX-License-Identifier: MIT
// What a sheet says of a man, in the languages of the catalogue.
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <sstream>

#include "compose/compose.h"
#include "sample.h"

namespace platewright {
namespace {

/// What the particulars say of a thing; empty if nothing.
std::string particular(const Captions& captions, std::string_view name) {
    const auto found =
        std::ranges::find(captions.particulars, name, &std::pair<std::string, std::string>::first);
    return found == captions.particulars.end() ? std::string() : found->second;
}

Uniform marked_man(Language language) {
    Uniform uniform = trial_uniform();
    uniform.language = language;
    set(uniform, "coat.cut", std::string("long"));
    set(uniform, "marks.shape", std::string("chevrons-up"));
    set(uniform, "marks.number", 2);
    set(uniform, "marks.sleeves", std::string("left"));
    set(uniform, "marks.place", std::string("upper-arm"));
    set(uniform, "marks.cloth", Material{"white", {1, 2, 3}, false, "", "blanc"});
    set(uniform, "marks.width", Measure{12, "12 mm"});
    set(uniform, "marks.spacing", Measure{10, "10 mm"});
    return uniform;
}

TEST(Captions, NameEachMaterialOnceWithAllItsPlaces) {
    Uniform uniform = trial_uniform();
    set(uniform, "coat.cloth", Material{"white", {1, 2, 3}, false, "natural wool"});
    set(uniform, "waistcoat.cloth", Material{"white", {1, 2, 3}, false, "natural wool"});
    const Captions captions = captions_of(uniform);
    const auto entry = std::find_if(captions.key.begin(),
                                    captions.key.end(),
                                    [](const KeyEntry& e) { return e.name == "white"; });
    ASSERT_NE(entry, captions.key.end());
    EXPECT_EQ(entry->worn, "coat, waistcoat");
    EXPECT_EQ(entry->made_of, "natural wool");
}

TEST(Captions, MarksOfNoRankAreNotMentioned) {
    Uniform uniform = trial_uniform();
    set(uniform, "marks.number", 0);
    for (const auto& [what, words] : captions_of(uniform).particulars) {
        EXPECT_NE(what, "rank marks");
    }
}

TEST(Captions, MarksOfWhiteMetalAreNotOfWhite) {
    Uniform uniform = marked_man(Language::english);
    set(uniform, "marks.cloth", Material{"white", {190, 190, 195}, true, "pewter"});
    EXPECT_TRUE(particular(captions_of(uniform), "rank marks")
                    .starts_with("2 chevrons of white metal, point up"));
}

TEST(Captions, SpeakTheLanguageOfTheSheet) {
    const Captions english = captions_of(marked_man(Language::english));
    EXPECT_EQ(particular(english, "rank marks"),
              "2 chevrons of blanc, point up, left sleeve, upper arm; 12\u00a0mm wide, 10\u00a0mm "
              "apart");
    const Captions french = captions_of(marked_man(Language::french));
    EXPECT_EQ(french.language, Language::french);
    EXPECT_EQ(particular(french, "marques de grade"),
              "2 chevrons (blanc), pointe en haut, à la manche gauche, au haut du bras; largeur "
              "12\u00a0mm, intervalle 10\u00a0mm");
    const Captions german = captions_of(marked_man(Language::german));
    EXPECT_EQ(particular(german, "Gradabzeichen"),
              "2 Winkel (blanc), Spitze oben, am linken Ärmel, am Oberarm; 12\u00a0mm breit, "
              "Abstand 10\u00a0mm");
}

TEST(Captions, FootnotesSpeakItToo) {
    Uniform uniform = marked_man(Language::german);
    Decision& decision = uniform.decided[property_id("marks.number")].chain.back();
    decision.departure = true;
    decision.instead_of = "Artikel 9";
    decision.why = "alter Rock";
    decision.certainty = Certainty::conjectural;
    decision.other_sources = {{"Kammerbuch", "nichts davon"}};
    const Captions german = captions_of(uniform);
    ASSERT_EQ(german.footnotes.size(), 1U);
    EXPECT_EQ(german.footnotes.front().mark, "*");
    EXPECT_EQ(german.footnotes.front().words,
              "Gradabzeichen: nicht wie befohlen, anstelle von Artikel 9; Vermutung: alter Rock; "
              "anders Kammerbuch: nichts davon.");
    uniform.language = Language::french;
    EXPECT_EQ(captions_of(uniform).footnotes.front().words,
              "marques de grade\u202f: non conforme à l’ordonnance, au lieu de Artikel 9; "
              "conjecture\u202f: alter Rock; autrement Kammerbuch\u202f: nichts davon.");
}

// What is said of the number of marks is said of the marks: their row and callout bear the sign.
TEST(Captions, AFootnoteStandsWhereItsThingIsNamed) {
    Uniform uniform = marked_man(Language::english);
    Decision& decision = uniform.decided[property_id("marks.place")].chain.back();
    decision.certainty = Certainty::conjectural;
    decision.source = "Drawing of a tailor (invented)";
    const Captions made = captions_of(uniform);
    ASSERT_EQ(made.footnotes.size(), 1U);
    EXPECT_EQ(made.footnotes.front().mark, "*");
    EXPECT_EQ(made.footnotes.front().words,
              "rank marks: a conjecture; source: Drawing of a tailor (invented).");
    EXPECT_TRUE(particular(made, "rank marks").ends_with("*"));
    const auto callout = std::ranges::find(made.callouts, "marks.cloth", &CalloutWords::key);
    ASSERT_NE(callout, made.callouts.end());
    EXPECT_TRUE(callout->words.ends_with("*"));
}

TEST(Captions, OneServiceBadgeIsNoBadges) {
    Uniform uniform = trial_uniform();
    set(uniform, "badge.number", 1);
    EXPECT_EQ(called_on(uniform, property_id("badge.cloth")), "service badge");
    set(uniform, "badge.number", 2);
    EXPECT_EQ(called_on(uniform, property_id("badge.cloth")), "service badges");
}

// Wood and brass are of the templates' own colours: those that the key shows.
TEST(Captions, WhatIsOfTheSameMaterialOnEveryManIsInTheKey) {
    const Captions made = captions_of(trial_uniform());
    const auto wood = std::ranges::find(made.key, "walnut", &KeyEntry::name);
    ASSERT_NE(wood, made.key.end());
    EXPECT_EQ(wood->worn, "musket stock, drumsticks");
    EXPECT_TRUE(wood->fixed);
    std::ifstream file(PLATEWRIGHT_SOURCE_DIR "/templates/line-infantry/front-kit.svg");
    std::stringstream svg;
    svg << file.rdbuf();
    for (const char* name : {"walnut", "brass", "vellum"}) {
        const auto entry = std::ranges::find(made.key, name, &KeyEntry::name);
        ASSERT_NE(entry, made.key.end()) << name;
        EXPECT_NE(svg.str().find("data-cloth=\"" + to_hex(entry->colour)), std::string::npos)
            << name;
    }
}

// The two metals without a name of their own would pass for colours.
TEST(Captions, MetalsAreCalledMetal) {
    Uniform uniform = trial_uniform();
    set(uniform, "buttons.metal", Material{"white", {1, 2, 3}, true, ""});
    EXPECT_TRUE(particular(captions_of(uniform), "buttons").starts_with("white metal"));
    uniform.language = Language::french;
    EXPECT_TRUE(particular(captions_of(uniform), "boutons").starts_with("métal blanc"));
    set(uniform, "buttons.metal", Material{"gold", {1, 2, 3}, true, "", "or"});
    EXPECT_TRUE(particular(captions_of(uniform), "boutons").starts_with("or"));
}

// A title is no nearer to English than to another language.
TEST(Captions, ARankGoesByItsTitleOnASheetOfAnotherLanguage) {
    Uniform uniform = trial_uniform();
    uniform.rank = "corporal";
    uniform.facts.rank = {"corporal", "Korporal", "corporal"};
    EXPECT_EQ(captions_of(uniform).rank, "corporal");
    uniform.language = Language::german;
    EXPECT_EQ(captions_of(uniform).rank, "Korporal");
    uniform.facts.rank.title.clear();
    EXPECT_EQ(captions_of(uniform).rank, "corporal");
}

}  // namespace
}  // namespace platewright
