// SPDX-License-Identifier: MIT
// What the pieces of a real man take.
#include "pattern/materials.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "support.h"

namespace platewright::cli {
namespace {

TEST(MaterialsOfAMan, FacingsHaveTheLiningThatIsSaidOfThem) {
    Bench bench;
    const auto job = bench.workshop.prepare(SpecifiedPlate{}, false, bench.problems);
    ASSERT_TRUE(job);
    const auto uniform = bench.workshop.uniform_of(*job, bench.problems);
    ASSERT_TRUE(uniform);
    PatternPiece lapel;
    lapel.garment = "coat";
    lapel.name = "lapel";
    lapel.cloth.name = "red";
    lapel.outline = lapel.cut = {{0, 0}, {100, 0}, {100, 400}, {0, 400}};
    lapel.number = 2;
    lapel.lined = true;
    const std::map<std::string, Flat> flats;
    const auto lines = materials_of(PatternSource{*uniform, reference_body(), flats}, {lapel}, {});
    const auto lining = std::ranges::find(lines, "lining", &MaterialLine::kind);
    ASSERT_NE(lining, lines.end());
    EXPECT_DOUBLE_EQ(lining->area, 0.08);
}

}  // namespace
}  // namespace platewright::cli
