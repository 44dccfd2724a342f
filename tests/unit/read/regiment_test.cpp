// SPDX-License-Identifier: MIT
// A regiment's own file, and how files are told apart.
#include <gtest/gtest.h>

#include "support.h"

namespace platewright {
namespace {

TEST(ReadRegiment, ReadsGroupsAndGroundsBesideItsKeys) {
    Reading reading("regiment: Tannbruck\nregulation: r.yaml\nnumber: 1\ncoat: red\nwhy: w\n");
    const auto it = read_regiment(reading.sources, reading.file, reading.problems);
    ASSERT_TRUE(it);
    EXPECT_EQ(dump(*it, reading.sources),
              "regiment = Tannbruck   @1:11\n"
              "regulation = r.yaml   @2:13\n"
              "number = 1   @3:9\n"
              "coat.cloth = red   @4:7\n"
              "why = w   @5:6\n");
}

TEST(ReadRegiment, TellsEveryMistake) {
    EXPECT_EQ(problems_of_regiment(
                  "number: one\nregulation: {}\ncoats: red\n"
                  "departures:\n  - {pockets: cross}\n  - {wear: {pockets: cross}, until: x}\n"),
              (Lines{"read.missing-key 1:1",
                     "read.wrong-kind 1:9",
                     "read.wrong-kind 2:13",
                     "read.unknown-key 3:1",
                     "read.missing-key 5:5",
                     "read.unknown-key 5:6",
                     "read.bad-date 6:37"}));
}

TEST(KindOfFile, IsToldByTheOutermostKeys) {
    EXPECT_EQ(kind_of_file("plate: A\nregiment: a.yaml\n"), FileKind::plate);
    EXPECT_EQ(kind_of_file("regiment: a.yaml\nplate: A\n"), FileKind::plate);
    EXPECT_EQ(kind_of_file("# words\nregiment: A\nregulation: r.yaml\n"), FileKind::regiment);
    EXPECT_EQ(kind_of_file("regulation: R\nranks: {}\n"), FileKind::regulation);
    EXPECT_EQ(kind_of_file("ranks: {}\n"), FileKind::customs);
    EXPECT_EQ(kind_of_file("palette: P\n"), FileKind::palette);
    EXPECT_EQ(kind_of_file("{regulation: R}"), FileKind::regulation);
    EXPECT_EQ(kind_of_file("\xEF\xBB\xBFregulation : R\r\n"), FileKind::regulation);
    EXPECT_EQ(kind_of_file("a:\n  regulation: R\n"), FileKind::plate);
    EXPECT_EQ(kind_of_file("regulations: R\n"), FileKind::plate);
    EXPECT_EQ(kind_of_file(""), FileKind::plate);
}

}  // namespace
}  // namespace platewright
