// SPDX-License-Identifier: MIT
// What the pieces of a real man take.
#include "pattern/materials.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>

#include "cli/tailor.h"
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

std::vector<MaterialLine> materials_of_a_man(const std::string& language) {
    Bench bench;
    const FileId file = bench.sources.add(PLATEWRIGHT_SOURCE_DIR "/plates/trial.yaml",
                                          "workshop: Trial\nman: tannbruck-lance-corporal.yaml\n"
                                          "language: " +
                                              language + "\n");
    const auto job = prepare_tailor(bench.workshop, file, bench.problems, bench.timings);
    const Typesetter type;
    const auto work =
        job ? tailor_work(bench.workshop, *job, Paper{}, type, bench.problems) : std::nullopt;
    return work ? work->materials : std::vector<MaterialLine>{};
}

std::string sum_of(const std::vector<MaterialLine>& lines, const char* kind, const char* begins) {
    const auto found = std::ranges::find_if(lines, [&](const MaterialLine& line) {
        return line.garment == "coat" && line.kind == kind && line.sum.starts_with(begins);
    });
    return found == lines.end() ? "none" : found->sum;
}

// What is counted can be counted again on the drawings; one thing is not spoken of as many.
TEST(MaterialsOfAMan, BucklesTapesAndStrapsAreBought) {
    const auto lines = materials_of_a_man("en");
    const auto sum = [&](const char* garment, const char* kind, const char* holds) {
        const auto found = std::ranges::find_if(lines, [&](const MaterialLine& line) {
            return line.garment == garment && line.kind == kind &&
                   line.sum.find(holds) != std::string::npos;
        });
        return found == lines.end() ? "none" : found->sum;
    };
    EXPECT_EQ(sum("breeches", "buckles", ""), "knee buckles 2");
    EXPECT_EQ(sum("gaiters", "buckles", ""), "garter buckles 2");
    EXPECT_EQ(sum("waistcoat", "tape", ""), "4 tapes of 0.35 m");
    EXPECT_EQ(sum("man", "tape", ""), "4 tapes of 0.35 m + 1 lacing of 1 m");
    EXPECT_NE(sum("gaiters", "leather", "garter"), "none");
    EXPECT_NE(sum("gaiters", "thread", " + 46 buttonholes × 1 m"), "none");
    EXPECT_EQ(sum("coat", "buckles", ""), "none");
}

TEST(MaterialsOfAMan, AreNamedInTheLanguageOfTheSheet) {
    for (const MaterialLine& line : materials_of_a_man("de")) {
        for (const char* english : {"buff", "green", "white", "black"}) {
            EXPECT_EQ(line.what.find(english), std::string::npos) << line.what;
        }
    }
}

// A tailor buys large and small ones, not one size for each part that is drawn.
TEST(MaterialsOfAMan, ButtonsOfAClassAreOfOneSize) {
    std::map<std::string, std::string> sizes;
    for (const MaterialLine& line : materials_of_a_man("en")) {
        if (line.kind == "buttons") {
            const std::size_t mark = line.what.rfind(", ");
            ASSERT_NE(mark, std::string::npos) << line.what;
            const auto [known, first] =
                sizes.emplace(line.what.substr(0, mark), line.what.substr(mark));
            EXPECT_TRUE(first || known->second == line.what.substr(mark)) << line.what;
        }
    }
    EXPECT_EQ(sizes.size(), 3U);
}

TEST(MaterialsOfAMan, SumsTellWhatIsCountedWhere) {
    const auto lines = materials_of_a_man("en");
    EXPECT_EQ(sum_of(lines, "lace", "1 "), "1 mark 0.22 m + 10 % waste; rounded up to 10 cm");
    // Fore and hind corner of each skirt share one button.
    EXPECT_EQ(sum_of(lines, "buttons", "24"),
              "24 worn (cuff 6, turnback 2, lapel 14, shoulder strap 2) + at least 2 spare, in "
              "whole dozens 36");
    EXPECT_EQ(sum_of(materials_of_a_man("fr"), "lace", "1 "),
              "1 marque 0,19 m + 10 % de déchet ; arrondi à 10 cm");
}

}  // namespace
}  // namespace platewright::cli
