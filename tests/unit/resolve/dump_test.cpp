// SPDX-License-Identifier: MIT
// The text form of the stage.
#include <gtest/gtest.h>

#include "base/text.h"
#include "support.h"

namespace platewright {
namespace {

/// The line of the dump that begins with `key = `.
std::string line(const std::string& dumped, const std::string& key) {
    for (const std::string_view each : split(dumped, '\n')) {
        if (each.starts_with(key + " = ")) {
            return std::string(each);
        }
    }
    return "";
}

TEST(DumpUniform, HasOneLineForEachPropertyAfterTheCaptions) {
    const Outcome outcome = resolved("plate: A\nrank: corporal\nnotes: [one, two]\n");
    ASSERT_TRUE(outcome.uniform) << outcome.problem();
    const std::string dumped = dump(*outcome.uniform, outcome.sources);
    EXPECT_TRUE(dumped.starts_with(
        "plate = A\nnote = one\nnote = two\nfigure = line-infantry\nrank = corporal\n"));
    EXPECT_EQ(split(dumped, '\n').size(), 5 + properties().size() + 1);
}

TEST(DumpUniform, ShowsColourAndChainWithPlaces) {
    const Outcome outcome =
        resolved("plate: A\nrank: sergeant\ncoat: red\nmarks: {width: 1/2 in}\n");
    ASSERT_TRUE(outcome.uniform) << outcome.problem();
    const std::string dumped = dump(*outcome.uniform, outcome.sources);
    EXPECT_EQ(line(dumped, "coat.cloth"),
              "coat.cloth = red #aa3333   (built-in default: dark blue; this plate: red "
              "@plate.yaml:3:7)");
    EXPECT_EQ(line(dumped, "straps.cloth"),
              "straps.cloth = red #aa3333   (built-in default: as coat.cloth; as coat.cloth: red)");
    EXPECT_EQ(line(dumped, "buttons.metal"),
              "buttons.metal = yellow #ccaa44 metal   (built-in default: yellow)");
    EXPECT_EQ(line(dumped, "marks.width"),
              "marks.width = 1/2 in = 12.7 mm   (built-in default: 12 mm; this plate: 1/2 in "
              "@plate.yaml:4:16)");
    EXPECT_EQ(line(dumped, "marks.cloth"),
              "marks.cloth = yellow #ccaa44 metal   (built-in default: white; custom of the rank "
              "sergeant: as buttons.metal @customs.yaml:4:53; as buttons.metal: yellow "
              "@customs.yaml:4:53)");
    EXPECT_EQ(line(dumped, "marks.spacing"), "marks.spacing = 10 mm   (built-in default: 10 mm)");
    EXPECT_EQ(line(dumped, "hat.tuft"), "hat.tuft = none   (built-in default: none)");
}

}  // namespace
}  // namespace platewright
