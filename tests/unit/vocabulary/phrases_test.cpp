// SPDX-License-Identifier: MIT
// Phrases for colours that are decided elsewhere.
#include "vocabulary/phrases.h"

#include <gtest/gtest.h>

#include "vocabulary/property.h"

namespace platewright {
namespace {

TEST(Phrases, StandForPropertiesOfTheTable) {
    for (const Phrase& phrase : phrases()) {
        EXPECT_TRUE(find_property(phrase.property)) << phrase.words;
        EXPECT_EQ(reference_of_phrase("the " + std::string(phrase.words)),
                  "as " + std::string(phrase.property));
        EXPECT_EQ(reference_of_phrase("the regiment's " + std::string(phrase.words)),
                  "as the regiment's " + std::string(phrase.property));
    }
}

TEST(Phrases, DoNotAskForSmallLetters) {
    EXPECT_EQ(reference_of_phrase(" The Facing Colour "), "as facings.cloth");
}

TEST(Phrases, AreNothingElse) {
    for (const char* words :
         {"", "the", "the ", "facing colour", "the red", "the regiment's", "as "}) {
        EXPECT_FALSE(reference_of_phrase(words)) << words;
    }
    EXPECT_TRUE(is_like_a_phrase("the red"));
    EXPECT_FALSE(is_like_a_phrase("theatre red"));
}

TEST(Phrases, SuggestTheNearest) {
    EXPECT_EQ(nearest_phrase("the facing colours"), "the facing colour");
    EXPECT_EQ(nearest_phrase("the regiments facing colour"), "the regiment's facing colour");
    EXPECT_EQ(nearest_phrase("the moon"), std::nullopt);
}

}  // namespace
}  // namespace platewright
