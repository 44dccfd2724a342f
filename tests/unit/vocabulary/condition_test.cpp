// SPDX-License-Identifier: MIT
// Conditions: reading, judging, and what is said of a wrong one.
#include "vocabulary/condition.h"

#include <gtest/gtest.h>

#include <map>

namespace platewright {
namespace {

/// Judges `text` for a uniform of the given words; everything else is `none`.
bool is_so(std::string_view text, const std::map<std::string, std::string>& uniform) {
    std::string problem;
    const std::optional<Condition> condition = parse_condition(text, problem);
    EXPECT_TRUE(condition) << text << ": " << problem;
    return condition && holds(*condition, [&](PropertyId id) {
               const auto at = uniform.find(std::string(properties()[id].key));
               return at == uniform.end() ? "none" : at->second;
           });
}

std::string problem_of(std::string_view text) {
    std::string problem;
    EXPECT_FALSE(parse_condition(text, problem)) << text;
    return problem;
}

TEST(Condition, AlwaysHoldsWhenEmpty) {
    EXPECT_TRUE(is_so("", {}));
    EXPECT_TRUE(is_so(" \n ", {}));
}

TEST(Condition, ComparesWithOneOfSeveralWords) {
    EXPECT_TRUE(is_so("cuffs.shape = slashed", {{"cuffs.shape", "slashed"}}));
    EXPECT_FALSE(is_so("cuffs.shape = slashed", {{"cuffs.shape", "round"}}));
    EXPECT_TRUE(is_so("belts.worn = crossed or single", {{"belts.worn", "single"}}));
    EXPECT_FALSE(is_so("belts.worn = crossed or single", {}));
    EXPECT_TRUE(is_so("belts.worn = crossed or none", {}));
}

TEST(Condition, TurnsRound) {
    EXPECT_TRUE(is_so("pockets.direction != vertical", {{"pockets.direction", "horizontal"}}));
    EXPECT_FALSE(is_so("pockets.direction != vertical", {{"pockets.direction", "vertical"}}));
    EXPECT_TRUE(is_so("not cuffs.shape = round", {{"cuffs.shape", "slashed"}}));
    EXPECT_TRUE(is_so("not cuffs.shape != round", {{"cuffs.shape", "round"}}));
}

TEST(Condition, AsksWhetherSomethingIsWorn) {
    EXPECT_TRUE(is_so("lapels.cloth", {{"lapels.cloth", "red"}}));
    EXPECT_FALSE(is_so("lapels.cloth", {}));
    EXPECT_TRUE(is_so("not lapels.cloth", {}));
}

TEST(Condition, TakesACountOfNothingAsNone) {
    EXPECT_FALSE(is_so("cuffs.buttons", {{"cuffs.buttons", "0"}}));
    EXPECT_TRUE(is_so("cuffs.buttons", {{"cuffs.buttons", "3"}}));
    EXPECT_TRUE(is_so("not cuffs.buttons", {{"cuffs.buttons", "0"}}));
    EXPECT_TRUE(is_so("cuffs.buttons = none", {{"cuffs.buttons", "0"}}));
    EXPECT_TRUE(is_so("cuffs.buttons = 3 or 4", {{"cuffs.buttons", "4"}}));
}

TEST(Condition, JoinsTerms) {
    const std::string both = "cuffs.shape = slashed or pointed and lapels.cloth and not hat.tape";
    EXPECT_TRUE(is_so(both, {{"cuffs.shape", "pointed"}, {"lapels.cloth", "red"}}));
    EXPECT_FALSE(is_so(both, {{"cuffs.shape", "pointed"}}));
    EXPECT_FALSE(
        is_so(both, {{"cuffs.shape", "pointed"}, {"lapels.cloth", "red"}, {"hat.tape", "white"}}));
}

TEST(Condition, ReadsColoursOfSeveralWordsAndTightSigns) {
    EXPECT_TRUE(is_so("coat.cloth = dark blue or red", {{"coat.cloth", "dark blue"}}));
    EXPECT_TRUE(is_so("coat.cloth=dark blue", {{"coat.cloth", "dark blue"}}));
    EXPECT_TRUE(is_so("coat.cloth!=dark blue", {{"coat.cloth", "red"}}));
}

TEST(Condition, TakesOtherNamesOfWordsAndCapitals) {
    EXPECT_TRUE(is_so("pockets.direction = Cross", {{"pockets.direction", "horizontal"}}));
}

TEST(Condition, SuggestsProperties) {
    EXPECT_EQ(problem_of("lapel.cloth"),
              "unknown property 'lapel.cloth'; did you mean 'lapels.cloth'?");
    EXPECT_EQ(problem_of("not lapels"), "unknown property 'lapels'; did you mean 'lapels.cloth'?");
    EXPECT_EQ(problem_of("weather = rain"),
              "unknown property 'weather'; write a property such as 'lapels.cloth'");
}

TEST(Condition, SuggestsWords) {
    EXPECT_EQ(problem_of("cuffs.shape = slashd"),
              "'cuffs.shape' is never 'slashd'; did you mean 'slashed'?");
    EXPECT_EQ(problem_of("cuffs.shape = square"),
              "'cuffs.shape' is never 'square'; write round, slashed, pointed, flap or open");
    EXPECT_EQ(problem_of("cuffs.shape = none"),
              "'cuffs.shape' is never 'none'; write round, slashed, pointed, flap or open");
    EXPECT_EQ(problem_of("cuffs.buttons = many"),
              "'cuffs.buttons' is never 'many'; write a whole number from 0 to 6");
}

TEST(Condition, SaysWhatIsMissing) {
    EXPECT_EQ(problem_of("cuffs.shape ="),
              "a value is missing for 'cuffs.shape'; write round, slashed, pointed, flap or open");
    EXPECT_EQ(problem_of("cuffs.shape = round or"),
              "a value is missing for 'cuffs.shape'; write round, slashed, pointed, flap or open");
    EXPECT_EQ(problem_of("lapels.cloth and"),
              "a property is missing at the end; write for instance 'lapels.cloth'");
    EXPECT_EQ(problem_of("not"),
              "a property is missing at the end; write for instance 'lapels.cloth'");
}

TEST(Condition, SaysWhatIsTooMuch) {
    EXPECT_EQ(problem_of("lapels.cloth hat.tape"),
              "did not expect 'hat.tape'; join what must hold together with 'and', other values "
              "with 'or'");
    EXPECT_EQ(problem_of(std::string(2000, 'x')), "too long for a condition");
}

}  // namespace
}  // namespace platewright
