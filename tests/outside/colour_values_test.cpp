// SPDX-License-Identifier: MIT
// Colour arithmetic against published values.
#include <gtest/gtest.h>

#include <array>
#include <fstream>
#include <sstream>
#include <utility>

#include "base/colour.h"
#include "base/tincture.h"
#include "base/vision.h"
#include "layout/block.h"
#include "layout/style.h"
#include "table.h"

namespace platewright::outside {
namespace {

Lab lab_at(const Row& row, std::size_t column) {
    return {std::stod(row[column]), std::stod(row[column + 1]), std::stod(row[column + 2])};
}

TEST(ColourDifference, AgreesWithTheThirtyFourPublishedPairs) {
    const std::vector<Row> pairs = published("ciede2000.csv");
    ASSERT_EQ(pairs.size(), 34U);
    for (const Row& pair : pairs) {
        const Lab first = lab_at(pair, 1);
        const Lab second = lab_at(pair, 4);
        // Published to four decimals.
        EXPECT_NEAR(delta_e_2000(first, second), std::stod(pair[7]), 0.00005) << "pair " << pair[0];
        EXPECT_NEAR(delta_e_2000(second, first), std::stod(pair[7]), 0.00005)
            << "pair " << pair[0] << " turned";
    }
}

TEST(Lab, AgreesWithTheStandardsForBothWhites) {
    for (const Row& row : published("srgb_lab.csv")) {
        const std::optional<Colour> colour = parse_hex(row[0]);
        ASSERT_TRUE(colour) << row[0];
        const Lab d65 = to_lab_d65(*colour);
        const Lab d50 = to_lab_d50(*colour);
        const Lab wanted_d65 = lab_at(row, 4);
        const Lab wanted_d50 = lab_at(row, 7);
        // The published matrices carry four to seven digits; a hundredth of a unit is far below
        // what an eye can see.
        constexpr double near = 0.01;
        EXPECT_NEAR(d65.l, wanted_d65.l, near) << row[0];
        EXPECT_NEAR(d65.a, wanted_d65.a, near) << row[0];
        EXPECT_NEAR(d65.b, wanted_d65.b, near) << row[0];
        EXPECT_NEAR(d50.l, wanted_d50.l, near) << row[0];
        EXPECT_NEAR(d50.a, wanted_d50.a, near) << row[0];
        EXPECT_NEAR(d50.b, wanted_d50.b, near) << row[0];
        EXPECT_NEAR(relative_luminance(*colour), std::stod(row[10]), 0.0001) << row[0];
    }
}

TEST(Lab, ComesBackToTheSameColour) {
    for (const Row& row : published("srgb_lab.csv")) {
        const Lab lab = lab_at(row, 4);
        EXPECT_EQ(to_hex(from_lab_d65(lab)), row[0]);
    }
}

TEST(Contrast, AgreesWithTheGuidelines) {
    for (const Row& row : published("wcag_contrast.csv")) {
        const std::optional<Colour> first = parse_hex(row[0]);
        const std::optional<Colour> second = parse_hex(row[1]);
        ASSERT_TRUE(first && second);
        EXPECT_NEAR(contrast_ratio(*first, *second), std::stod(row[2]), 0.0001)
            << row[0] << " on " << row[1];
        EXPECT_NEAR(contrast_ratio(*second, *first), std::stod(row[2]), 0.0001)
            << row[1] << " on " << row[0];
    }
}

/// The columns of `colour_vision.csv`, in its order.
constexpr std::array<std::pair<Sight, double>, 6> kSeen{{{Sight::protan, 1},
                                                         {Sight::deutan, 1},
                                                         {Sight::tritan, 1},
                                                         {Sight::protan, 0.5},
                                                         {Sight::deutan, 0.5},
                                                         {Sight::tritan, 0.5}}};

TEST(OtherEyes, SeeAsThePublishedMatricesSay) {
    for (const Row& row : published("colour_vision.csv")) {
        for (std::size_t i = 0; i < kSeen.size(); ++i) {
            const auto [sight, severity] = kSeen[i];
            EXPECT_EQ(to_hex(as_seen(*parse_hex(row[0]), sight, severity)), row[i + 1])
                << row[0] << " " << sight_name(sight) << " " << severity;
        }
    }
}

TEST(OtherEyes, HaveEveryPublishedMatrix) {
    // Primaries at half light show a matrix column by column, as far as 8 bits and the limits of
    // sRGB let it be seen.
    for (const Row& row : published("colour_vision_matrices.csv")) {
        const Sight sight = row[0] == "protan"   ? Sight::protan
                            : row[0] == "deutan" ? Sight::deutan
                                                 : Sight::tritan;
        for (std::size_t column = 0; column < 3; ++column) {
            const double amount = to_light({188, 188, 188}).red;
            const Colour primary{static_cast<std::uint8_t>(column == 0 ? 188 : 0),
                                 static_cast<std::uint8_t>(column == 1 ? 188 : 0),
                                 static_cast<std::uint8_t>(column == 2 ? 188 : 0)};
            const Light wanted{amount * std::stod(row[2 + column]),
                               amount * std::stod(row[5 + column]),
                               amount * std::stod(row[8 + column])};
            EXPECT_EQ(to_hex(as_seen(primary, sight, std::stod(row[1]))),
                      to_hex(from_light(wanted)))
                << row[0] << " " << row[1] << " column " << column;
        }
    }
}

/// The way lines run as the table writes it.
std::string way(Point p) {
    return p == Point{} ? std::string()
                        : std::to_string(static_cast<int>(p.x)) + " " +
                              std::to_string(static_cast<int>(p.y));
}

TEST(Tinctures, AreHatchedAsTheHandbooksPrint) {
    for (const Row& row : published("hatching.csv")) {
        const auto id = find_tincture(row[0]);
        ASSERT_TRUE(id) << row[0];
        const Tincture& tincture = tinctures()[*id];
        EXPECT_TRUE(tincture.of_convention);
        const std::string first = tincture.manner == HatchManner::dots    ? "dots"
                                  : tincture.manner == HatchManner::plain ? "plain"
                                                                          : way(tincture.first);
        EXPECT_EQ(first, row[1]) << row[0];
        EXPECT_EQ(way(tincture.second), row[2]) << row[0];
    }
}

// WCAG 2.2, success criterion 1.4.3: small text has a contrast of 4.5 to 1 with its ground. Words
// stand beside samples and never on them, so the ground is the paper, the plate tone and, hatched,
// white.
TEST(Contrast, TextIsReadOnEveryGroundWithEveryInk) {
    for (const Colour ground : {sheet::kPaper, sheet::kPlateTone}) {
        for (const Colour ink : {sheet::kInk, sheet::kSoftInk}) {
            EXPECT_GE(contrast_ratio(ink, ground), 4.5);
            EXPECT_GE(contrast_ratio(grey_of(ink), grey_of(ground)), 4.5);
            EXPECT_GE(contrast_ratio(ink, {0xff, 0xff, 0xff}), 4.5);
        }
    }
}

// Success criterion 1.4.11: what is needed to make out a graphic has a contrast of 3 to 1 with what
// adjoins it. Of a sample that is its outline: white cloth on paper would be lost without it.
TEST(Contrast, ASampleOfEveryPaletteColourStandsOutWithEveryInk) {
    for (const char* palette : {"cloth", "leather", "metals", "figure"}) {
        std::ifstream file(PLATEWRIGHT_SOURCE_DIR "/palettes/" + std::string(palette) + ".yaml");
        std::stringstream text;
        text << file.rdbuf();
        const std::string yaml = text.str();
        int colours = 0;
        for (std::size_t at = yaml.find("colour: \"#"); at != std::string::npos;
             at = yaml.find("colour: \"#", at + 1)) {
            const auto colour = parse_hex(yaml.substr(at + 9, 7));
            ASSERT_TRUE(colour) << palette;
            const Colour edge = sheet::swatch_edge(*colour);
            EXPECT_GE(contrast_ratio(edge, sheet::kPaper), 3) << to_hex(*colour);
            EXPECT_GE(contrast_ratio(grey_of(edge), grey_of(sheet::kPaper)), 3) << to_hex(*colour);
            ++colours;
        }
        EXPECT_GT(colours, 3) << palette;
    }
}

}  // namespace
}  // namespace platewright::outside
