// SPDX-License-Identifier: MIT
// Which parts of a man are worth a closer look.
#include "resolve/notable.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "support.h"

namespace platewright {
namespace {

using Frames = std::vector<std::string_view>;

Frames frames_of_note(const Given& given) {
    const Outcome outcome = resolved(given);
    return outcome.uniform ? frames_that_matter(*outcome.uniform) : Frames{"error"};
}

constexpr const char* kOrderOfTheLine = R"(regulation: Regulation of 1784
in force from: 1784-03-01
everyone: {coat: dark blue, waistcoat: buff, cuffs: {shape: slashed}, hat: round}
series:
  - colour: red
    regiments:
      - {number: 1, name: Tannbruck, buttons: white}
rules:
  - {name: pockets, when: {buttons.metal: white}, wear: {pockets: vertical}}
ranks:
  private: {}
  corporal: {marks: {shape: bars, number: 1, cloth: white, place: upper-arm}}
)";

Given man_of_the_line(const std::string& more) {
    return {"plate: A\nregulation: a.yaml\nregiment: Tannbruck\n" + more, {{kOrderOfTheLine}}};
}

TEST(Notable, NothingMattersOfAManOfWhomNothingIsSaid) {
    EXPECT_EQ(frames_of_note({"plate: A\n"}), Frames{});
}

TEST(Notable, TheRegimentsOwnGoesBeforeShapesThatAllWear) {
    const Frames frames = frames_of_note(man_of_the_line("rank: private\n"));
    ASSERT_FALSE(frames.empty());
    const auto place = [&](std::string_view frame) {
        return std::ranges::find(frames, frame) - frames.begin();
    };
    EXPECT_LT(place("flap"), place("hat"));
    EXPECT_LT(place("hat"), static_cast<std::ptrdiff_t>(frames.size()));
}

TEST(Notable, MarksOfRankGoBeforeTheRegimentsOwn) {
    const Frames frames = frames_of_note(man_of_the_line("rank: corporal\n"));
    ASSERT_FALSE(frames.empty());
    EXPECT_EQ(frames.front(), "upper-arm");
}

TEST(Notable, DeparturesGoBeforeEverything) {
    const Frames frames = frames_of_note(
        man_of_the_line("rank: corporal\ndepartures:\n  - {wear: {collar: {shape: falling}}}\n"));
    ASSERT_FALSE(frames.empty());
    EXPECT_EQ(frames.front(), "collar");
}

TEST(Notable, WhatAPlateSaysOfAManAloneMatters) {
    const Frames frames = frames_of_note({"plate: A\npockets: vertical\n"});
    EXPECT_EQ(frames, Frames{"flap"});
}

TEST(Notable, MarksAreEarnedAndTheCoatIsNot) {
    const Outcome corporal = resolved(man_of_the_line("rank: corporal\n"));
    ASSERT_TRUE(corporal.uniform);
    EXPECT_TRUE(is_earned(*corporal.uniform, property_id("marks.cloth")));
    EXPECT_FALSE(is_earned(*corporal.uniform, property_id("coat.cloth")));
    const Outcome recruit = resolved(man_of_the_line("rank: private\n"));
    ASSERT_TRUE(recruit.uniform);
    EXPECT_FALSE(is_earned(*recruit.uniform, property_id("marks.cloth")));
}

}  // namespace
}  // namespace platewright
