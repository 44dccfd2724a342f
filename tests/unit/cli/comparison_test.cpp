// SPDX-License-Identifier: MIT
// What a comparison says of the demonstration plates.
#include "cli/comparison.h"

#include <gtest/gtest.h>

#include "support.h"

namespace platewright::cli {
namespace {

/// The layout of a comparison of these plates as text.
std::string compared(const std::string& men,
                     const std::string& more = {},
                     const Paper& paper = {}) {
    Bench bench;
    const FileId file = bench.sources.add(PLATEWRIGHT_SOURCE_DIR "/plates/comparison.yaml",
                                          "comparison: A\nmen: " + men + "\n" + more);
    const auto sheet = prepare_sheet(bench.workshop, file, bench.problems, bench.timings);
    if (!sheet) {
        return "";
    }
    const Typesetter type;
    const auto document = sheet->draw({paper, Ink::colour}, type, bench.problems, bench.timings);
    // On small paper a title may be broken, and that is told.
    EXPECT_TRUE(bench.problems.all().empty() || paper.width < Paper{}.width);
    return document ? dump(*document) : "";
}

TEST(ComparisonSheet, ListsOnlyTrueDifferencesAndTheRestOnce) {
    const std::string text = compared("[tannbruck-musketeer.yaml, birkenfels-private.yaml]");
    EXPECT_NE(text.find("In what they differ"), std::string::npos);
    EXPECT_NE(text.find("pockets, direction"), std::string::npos);
    EXPECT_NE(text.find("waistcoat:"), std::string::npos);
    EXPECT_NE(text.find("The two are told apart at 50 m"), std::string::npos);
}

TEST(ComparisonSheet, LeadsToWhatDiffersAndPutsWhatIsSeenMostFirst) {
    const std::string text = compared("[tannbruck-musketeer.yaml, birkenfels-private.yaml]");
    EXPECT_NE(text.find("lapels:"), std::string::npos);
    const std::size_t lapels = text.find("\"lapels\"");
    const std::size_t loop = text.find("\"cockade loop\"");
    ASSERT_NE(lapels, std::string::npos);
    ASSERT_NE(loop, std::string::npos);
    EXPECT_LT(lapels, loop);
    // Alike on both, so that no line leads there.
    EXPECT_EQ(text.find("\"breeches: buff\""), std::string::npos);
}

TEST(ComparisonSheet, LeadsToShapesAsWellAsColours) {
    const std::string text = compared("[tannbruck-musketeer.yaml, birkenfels-private.yaml]");
    // Beside narrow figures words stand on several lines.
    EXPECT_NE(text.find("\"pockets:"), std::string::npos);
    const std::string figures = text.substr(0, text.find("text \"In what they differ\""));
    EXPECT_NE(figures.find("\"vertical\""), std::string::npos);
    EXPECT_NE(figures.find("\"horizontal\""), std::string::npos);
}

TEST(ComparisonSheet, LeadsOfManyMenOnlyToWhatIsSeenMost) {
    const std::string text =
        compared("[tannbruck-musketeer.yaml, varrenau-corporal.yaml, kaldermoor-private.yaml]");
    const std::string figures = text.substr(0, text.find("text \"In what they differ\""));
    EXPECT_NE(figures.find("\"coat"), std::string::npos);
    // In the table alone.
    EXPECT_EQ(figures.find("\"hat tuft"), std::string::npos);
    EXPECT_NE(text.find("\"hat tuft\""), std::string::npos);
}

/// The plate is of the belts, of which much is seen, but is small itself.
TEST(ComparisonSheet, LeadsOfManyMenToFacingsRatherThanToABeltPlate) {
    const std::string text = compared(
        "[tannbruck-musketeer.yaml, seeholm-sergeant.yaml, varrenau-corporal.yaml, "
        "kaldermoor-private.yaml, oster-legion-lance-corporal.yaml, artillery-bombardier.yaml]");
    const std::string figures = text.substr(0, text.find("text \"In what they differ\""));
    EXPECT_EQ(figures.find("\"belt plate"), std::string::npos);
    EXPECT_NE(figures.find("\"lapels\""), std::string::npos);
}

TEST(ComparisonSheet, LeadsToNothingThatAManLacks) {
    const std::string text = compared("[tannbruck-musketeer.yaml, kaldermoor-private.yaml]");
    EXPECT_EQ(text.find("\"lapels: none\""), std::string::npos);
    EXPECT_NE(text.find("buttons: 10\u00a0down the front"), std::string::npos);
}

TEST(ComparisonSheet, WhatIsSeenFromBehindIsLedToThere) {
    const std::string men = "[tannbruck-musketeer.yaml, kaldermoor-private.yaml]";
    EXPECT_EQ(compared(men).find("\"cartridge box:"), std::string::npos);
    EXPECT_NE(compared(men, "views: [front, back]\n").find("\"cartridge box:"), std::string::npos);
}

// Six men: letters beside them are those of the rows that tell what they mean, and they leave the
// men larger than words would.
TEST(ComparisonSheet, LettersStandWhereWordsWouldLeaveTheMenSmall) {
    const std::string men =
        "[tannbruck-musketeer.yaml, seeholm-sergeant.yaml, varrenau-corporal.yaml, "
        "kaldermoor-private.yaml, oster-legion-lance-corporal.yaml, artillery-bombardier.yaml]";
    for (const char* paper : {"A4", "A6"}) {
        const std::string text = compared(men, {}, *parse_paper(paper));
        EXPECT_EQ(text.find("\"coat: red\""), std::string::npos);
        EXPECT_NE(text.find("text \"a\" middle"), std::string::npos);
    }
}

// One row tells all of a thing; departures bear the marks of their footnotes.
TEST(ComparisonSheet, ShapeAndNumberStandWithTheColourAndDeparturesAreMarked) {
    const std::string text =
        compared("[tannbruck-musketeer.yaml, varrenau-corporal.yaml, seeholm-sergeant.yaml]");
    EXPECT_EQ(text.find("\"cuffs, shape\""), std::string::npos);
    EXPECT_NE(text.find("\"round, buttons"), std::string::npos);
    EXPECT_NE(text.find("text \"gold*\""), std::string::npos);
    EXPECT_NE(text.find("* Sergeant, Seeholm Regiment: "), std::string::npos);
}

TEST(ComparisonSheet, WhatCannotBeSeenOrCountsNothingIsNoRow) {
    const std::string text =
        compared("[tannbruck-musketeer.yaml, seeholm-sergeant.yaml, kaldermoor-private.yaml]");
    EXPECT_EQ(text.find("\"shoe buckles\""), std::string::npos);
    EXPECT_EQ(text.find("\"tip of the"), std::string::npos);
    EXPECT_EQ(text.find("text \"0\""), std::string::npos);
}

TEST(ComparisonSheet, TellsWhoAloneHasAThing) {
    const std::string text = compared("[tannbruck-musketeer.yaml, ostrand-drummer.yaml]");
    EXPECT_NE(text.find("told apart at 50 m"), std::string::npos);
    const std::string alike = compared("[tannbruck-musketeer.yaml, tannbruck-musketeer.yaml]");
    EXPECT_EQ(alike.find("only Private"), std::string::npos);
}

TEST(ComparisonSheet, MenOfOneLookAreToldToBeHardToTellApart) {
    const std::string text = compared("[tannbruck-musketeer.yaml, tannbruck-musketeer.yaml]");
    EXPECT_NE(text.find("In nothing."), std::string::npos);
    EXPECT_NE(text.find("cannot be told apart at 50 m to all eyes"), std::string::npos);
    EXPECT_NE(text.find("(protan)"), std::string::npos);
}

}  // namespace
}  // namespace platewright::cli
