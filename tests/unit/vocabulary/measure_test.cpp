// SPDX-License-Identifier: MIT
// Lengths of the trade, against published values.
#include "vocabulary/measure.h"

#include <gtest/gtest.h>

#include <set>

#include "base/text.h"

namespace platewright {
namespace {

/// The length in mm, or a failed test.
double mm(std::string_view text) {
    std::string problem;
    const std::optional<Measure> length = parse_measure(text, problem);
    EXPECT_TRUE(length) << text << ": " << problem;
    return length ? length->mm : -1;
}

std::string problem_of_measure(std::string_view text) {
    std::string problem;
    EXPECT_FALSE(parse_measure(text, problem)) << text;
    return problem;
}

constexpr double kSixthDecimal = 5e-7;

// Law of 19 frimaire an VIII (10 December 1799): the metre is 443.296 lignes.
TEST(ParisMeasures, MakeUpTheMetre) {
    EXPECT_DOUBLE_EQ(mm("443.296 lignes paris"), 1000);
    EXPECT_NEAR(mm("1 ligne paris"), 2.255829, kSixthDecimal);
    EXPECT_NEAR(mm("1 pouce paris"), 27.069949, kSixthDecimal);
    EXPECT_NEAR(mm("1 pied du roi"), 324.839385, kSixthDecimal);
    EXPECT_DOUBLE_EQ(mm("1 toise paris"), 6 * mm("1 pied paris"));
    EXPECT_DOUBLE_EQ(mm("12 points paris"), mm("1 ligne paris"));
}

// Adjustment of 1748: the aune of Paris is 3 pieds 7 pouces 10 5/6 lignes.
TEST(ParisMeasures, MakeUpTheAune) {
    EXPECT_NEAR(mm("1 aune paris"),
                mm("3 pieds paris") + mm("7 pouces paris") + mm("10 5/6 lignes paris"),
                1e-9);
}

// Prussian Maass- und Gewichtsordnung of 1816: the foot is 139.13 Paris lignes; the ell is 25 1/2
// Zoll.
TEST(RhinelandMeasures, FollowTheOrdinance) {
    EXPECT_DOUBLE_EQ(mm("1 foot rhineland"), mm("139.13 lignes paris"));
    EXPECT_NEAR(mm("1 Fuß rhineland"), 313.853497, kSixthDecimal);
    EXPECT_NEAR(mm("1 Zoll rhineland"), 26.154458, kSixthDecimal);
    EXPECT_NEAR(mm("12 Linien prussian"), mm("1 Zoll rhineland"), 1e-12);
    EXPECT_NEAR(mm("1 Elle berlin"), 666.938682, kSixthDecimal);
}

// Austrian law of 23 July 1871.
TEST(ViennaMeasures, FollowTheLaw) {
    EXPECT_DOUBLE_EQ(mm("1 Schuh vienna"), 316.080720);
    EXPECT_NEAR(mm("1 Zoll vienna"), 26.340060, kSixthDecimal);
    EXPECT_NEAR(mm("1 Linie vienna"), 2.195005, kSixthDecimal);
    EXPECT_DOUBLE_EQ(mm("1 Elle vienna"), 777.558);
}

// International Yard and Pound Agreement, 1959; the nail and the English ell after Hayes (1740).
TEST(EnglishMeasures, FollowTheInch) {
    EXPECT_DOUBLE_EQ(mm("1 in"), 25.4);
    EXPECT_DOUBLE_EQ(mm("1 yd"), 914.4);
    EXPECT_DOUBLE_EQ(mm("16 nails"), 914.4);
    EXPECT_DOUBLE_EQ(mm("20 nails"), mm("1 ell english"));
    EXPECT_DOUBLE_EQ(mm("6 quarters"), 1371.6);
}

// Herder, Conversations-Lexikon (1854), prints the metre values too, to the thousandth of a
// millimetre.
TEST(FeetOfOtherCountries, AgreeWithTheLexicon) {
    EXPECT_NEAR(mm("1 Fuß bavarian"), 291.859, 5e-4);
    EXPECT_NEAR(mm("1 Fuß württemberg"), 286.490, 5e-4);
    EXPECT_NEAR(mm("1 foot danish"), 313.621, 5e-4);
    EXPECT_NEAR(mm("1 foot swedish"), 296.838, 5e-3);
}

// Dictionary of Dry Goods: the button trade counts 40 lines to the inch.
TEST(ButtonLines, AreFortyToTheInch) {
    EXPECT_DOUBLE_EQ(mm("40 lines"), 25.4);
    EXPECT_DOUBLE_EQ(mm("20 line"), 12.7);
    EXPECT_DOUBLE_EQ(mm("24 line"), 15.24);
    EXPECT_DOUBLE_EQ(mm("36 button lines"), 22.86);
}

TEST(ParseMeasure, ReadsFractionsAndDecimals) {
    EXPECT_DOUBLE_EQ(mm("3 1/2 in"), 88.9);
    EXPECT_DOUBLE_EQ(mm("3-1/2 in"), 88.9);
    EXPECT_DOUBLE_EQ(mm("3½ in"), 88.9);
    EXPECT_DOUBLE_EQ(mm("3 ½ in"), 88.9);
    EXPECT_DOUBLE_EQ(mm("½ in"), 12.7);
    EXPECT_DOUBLE_EQ(mm("7/8 in"), 22.225);
    EXPECT_DOUBLE_EQ(mm("6/4 ft"), 457.2);
    EXPECT_DOUBLE_EQ(mm("3.5 in"), 88.9);
    EXPECT_DOUBLE_EQ(mm("3,5 in"), 88.9);
    EXPECT_DOUBLE_EQ(mm("0 mm"), 0);
}

TEST(ParseMeasure, DoesNotMindSpacesCapitalsAndTheOrderOfWords) {
    EXPECT_DOUBLE_EQ(mm("11cm"), 110);
    EXPECT_DOUBLE_EQ(mm("  11   CM "), 110);
    EXPECT_DOUBLE_EQ(mm("3\""), 76.2);
    EXPECT_DOUBLE_EQ(mm("3'"), 914.4);
    EXPECT_DOUBLE_EQ(mm("2 Rhineland  zoll"), mm("2 Zoll rhineland"));
}

TEST(ParseMeasure, KeepsWhatWasPrinted) {
    std::string problem;
    EXPECT_EQ(parse_measure(" 3½  in ", problem)->printed, "3½  in");
}

TEST(ParseMeasure, AsksForAUnit) {
    EXPECT_EQ(problem_of_measure("11"),
              "'11' has no unit; write for instance '11 mm', '11 cm' or '11 in'");
    EXPECT_EQ(problem_of_measure("3 1/2"),
              "'3 1/2' has no unit; write for instance '3 1/2 mm', '3 1/2 cm' or '3 1/2 in'");
}

TEST(ParseMeasure, AsksWhoseUnit) {
    EXPECT_EQ(problem_of_measure("10 ligne"),
              "'ligne' is not the same length in every country; write '10 ligne paris' or, for a "
              "button of the trade, '10 line'");
    EXPECT_EQ(problem_of_measure("2 Zoll"),
              "'Zoll' is not the same length in every country; write '2 Zoll rhineland' or '2 Zoll "
              "vienna'");
    EXPECT_EQ(problem_of_measure("1 Elle"),
              "'Elle' is not the same length in every country; write '1 Elle berlin', '1 Elle "
              "vienna' or '1 ell english'");
    for (const char* each :
         {"1 pouce", "1 pied", "1 Fuß", "1 Schuh", "1 Linie", "1 aune", "1 point"}) {
        EXPECT_NE(problem_of_measure(each).find("not the same length in every country"),
                  std::string::npos);
    }
}

TEST(ParseMeasure, SuggestsUnits) {
    EXPECT_EQ(problem_of_measure("2 zol rhineland"),
              "unknown unit 'zol rhineland'; did you mean 'Zoll rhineland'?");
    EXPECT_EQ(problem_of_measure("5 furlongs"),
              "unknown unit 'furlongs'; write for instance '5 mm', '5 in' or '5 Zoll rhineland'");
}

TEST(ParseMeasure, RefusesWhatIsNoLength) {
    for (const std::string text : {"",
                                   "mm",
                                   "twelve mm",
                                   "1.2.3 mm",
                                   "1,000.5 mm",
                                   "3 5/4 in",
                                   "3.5 1/2 in",
                                   "1/0 in",
                                   "1/ in",
                                   "/2 in",
                                   "1/2/3 in",
                                   "1. mm",
                                   ".5 mm",
                                   "1 2 mm",
                                   "0000000000001 mm"}) {
        EXPECT_EQ(problem_of_measure(text),
                  platewright::quoted(text) +
                      " is not a length; write a number and its unit, such as '12 mm' or '3 1/2 "
                      "in'");
    }
    EXPECT_EQ(problem_of_measure("-3 mm"), "'-3 mm' is less than nothing; a length is 0 or more");
    EXPECT_EQ(problem_of_measure("99999999 m"), "'99999999 m' is longer than 100 m");
    EXPECT_EQ(problem_of_measure(std::string(1000, '1')),
              "too long for a length; write a number and its unit, such as '12 mm' or '3 1/2 in'");
}

TEST(LengthUnits, AreAllReadByEveryNameAndHaveASource) {
    std::set<std::string> names;
    for (const LengthUnit& unit : length_units()) {
        EXPECT_GT(unit.source.size(), 5U) << unit.name;
        EXPECT_DOUBLE_EQ(mm("1 " + std::string(unit.name)), unit.mm);
        EXPECT_TRUE(names.insert(std::string(unit.name)).second) << unit.name;
        for (const std::string_view other : split(unit.other_names, '|')) {
            EXPECT_DOUBLE_EQ(mm("1 " + std::string(other)), unit.mm) << other;
            EXPECT_TRUE(names.insert(std::string(other)).second) << other;
        }
    }
}

}  // namespace
}  // namespace platewright
