// SPDX-License-Identifier: MIT
// What a comparison says of the demonstration plates.
#include "cli/comparison.h"

#include <gtest/gtest.h>

#include "support.h"

namespace platewright::cli {
namespace {

/// The layout of a comparison of these plates as text.
std::string compared(const std::string& men) {
    Bench bench;
    const FileId file = bench.sources.add(PLATEWRIGHT_SOURCE_DIR "/plates/comparison.yaml",
                                          "comparison: A\nmen: " + men + "\n");
    const auto sheet = prepare_sheet(bench.workshop, file, bench.problems, bench.timings);
    if (!sheet) {
        return "";
    }
    const Typesetter type;
    const auto document = sheet->draw({Paper{}, Ink::colour}, type, bench.problems, bench.timings);
    EXPECT_TRUE(bench.problems.all().empty());
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
    EXPECT_EQ(text.find("\"breeches:"), std::string::npos);
}

TEST(ComparisonSheet, MenOfOneLookAreToldToBeHardToTellApart) {
    const std::string text = compared("[tannbruck-musketeer.yaml, tannbruck-musketeer.yaml]");
    EXPECT_NE(text.find("In nothing."), std::string::npos);
    EXPECT_NE(text.find("cannot be told apart at 50 m to all eyes"), std::string::npos);
    EXPECT_NE(text.find("(protan)"), std::string::npos);
}

}  // namespace
}  // namespace platewright::cli
