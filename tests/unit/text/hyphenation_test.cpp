// SPDX-License-Identifier: MIT
// Parting words. Expected places are those of dictionaries: Duden for German, Oxford for English,
// Larousse's rules for French.
#include "text/hyphenation.h"

#include <gtest/gtest.h>

#include "text/typesetter.h"

namespace platewright {
namespace {

std::string parted(const std::string& words, const std::string& language) {
    std::string made = Hyphenation().soften(words, language);
    for (std::size_t at = made.find(kSoftHyphen); at != std::string::npos;
         at = made.find(kSoftHyphen, at)) {
        made.replace(at, kSoftHyphen.size(), "·");
        at += 2;
    }
    return made;
}

TEST(Soften, PartsWordsOfEachLanguage) {
    EXPECT_EQ(parted("regimental", "en"), "re·gi·mental");
    EXPECT_EQ(parted("Schoßumschlag", "de"), "Schoß·um·schlag");
    EXPECT_EQ(parted("Knopflöcher, Ärmelaufschläge", "de"), "Knopf·lö·cher, Är·mel·auf·schläge");
    EXPECT_EQ(parted("retroussis", "fr-FR"), "re·trous·sis");
}

TEST(Soften, LeavesShortWordsNamesAndOtherLanguagesWhole) {
    EXPECT_EQ(parted("coats", "en"), "coats");
    EXPECT_EQ(parted("Kaldermoor", "en"), "Kaldermoor");
    EXPECT_EQ(parted("regimental", "it"), "regimental");
    EXPECT_EQ(parted("", "de"), "");
    EXPECT_EQ(parted("Шапка гренадерская", "de"), "Шапка гренадерская");
    EXPECT_EQ(parted(std::string(500, 'a'), "en"), std::string(500, 'a'));
}

constexpr Type kFourMm = {Face::roman, 4, 0};

TEST(Wrap, PartsWordsWithAHyphenAndLosesNothing) {
    const Typesetter type;
    const std::string words = "Die Aermelaufschlagklappenknöpfe des Grenadierbataillons";
    for (const double width : {18.0, 22.0, 31.0, 400.0}) {
        std::string joined;
        for (std::string line : type.wrap(words, kFourMm, width, "de")) {
            EXPECT_LE(type.width(line, kFourMm), width + 1e-6) << line;
            EXPECT_EQ(line.find(kSoftHyphen), std::string::npos);
            const bool cut = line.ends_with('-');
            joined += cut ? line.substr(0, line.size() - 1) : line + " ";
        }
        EXPECT_EQ(joined, words + " ");
    }
}

TEST(LeastWidth, IsThatOfTheLongestPiece) {
    const Typesetter type;
    EXPECT_NEAR(type.least_width("the regimental coat", kFourMm, "en"),
                type.width("mental", kFourMm),
                1e-9);
    EXPECT_NEAR(type.least_width("the regimental coat", kFourMm, ""),
                type.width("regimental", kFourMm),
                1e-9);
    EXPECT_EQ(type.least_width(" ", kFourMm, "en"), 0);
}

TEST(RunsLeftward, GoesByTheFirstLetterWithADirection) {
    const Typesetter type;
    EXPECT_TRUE(type.runs_leftward("4 שלום coat"));
    EXPECT_FALSE(type.runs_leftward("coat שלום"));
    EXPECT_FALSE(type.runs_leftward("1784"));
    EXPECT_FALSE(type.runs_leftward("\xFF"));
}

}  // namespace
}  // namespace platewright
