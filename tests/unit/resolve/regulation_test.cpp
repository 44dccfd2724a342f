// SPDX-License-Identifier: MIT
// Which regulation is in force, what amendments make of it, and which rules hold.
#include <gtest/gtest.h>

#include "support.h"

namespace platewright {
namespace {

using Lines = std::vector<std::string>;

constexpr const char* kBase = R"(regulation: Regulation of 1784
in force from: 1784-03-01
everyone: {coat: dark blue, waistcoat: buff}
shows:
  cuffs alone: {lapels: none}
series:
  - colour: red
    regiments:
      - {number: 1, name: Tannbruck, shows: cuffs alone, buttons: white}
      - {number: 2, name: Seeholm, buttons: yellow}
rules:
  - {name: pockets, when: {buttons.metal: white}, wear: {pockets: vertical}}
ranks:
  corporal: {marks: {shape: bars, number: 1, cloth: white}}
  sergeant: {like: corporal, marks: {number: 2}}
service:
  - {at least: 8 years, service: {number: 1, cloth: red}}
)";

constexpr const char* kAmendment = R"(regulation: Amendment of 1788
amends: base.yaml
in force from: 1788-05-01
everyone: {waistcoat: white}
series:
  - colour: black
    regiments:
      - {number: 1, buttons: yellow}
rules:
  - {name: pockets, when: {buttons.metal: yellow}, wear: {pockets: slanted}}
ranks:
  corporal: {marks: {cloth: the button metal}}
  lance corporal: {marks: {shape: bars, number: 1, cloth: white, sleeves: left}}
service:
  - {at least: 6 years, service: {number: 2}}
  - {at least: 8 years, service: {number: 3}}
)";

Outcome amended_man(const std::string& lines) {
    return resolved(Given{"plate: A\n" + lines, {{kBase, kAmendment}}});
}

TEST(InForce, IsTheNewestWhereNoDayIsAsked) {
    const Outcome outcome = amended_man("");
    ASSERT_TRUE(outcome.uniform) << outcome.problem();
    EXPECT_EQ(outcome.chain("waistcoat.cloth"),
              (Lines{"regulation, everyone: buff", "regulation, everyone, amended 1788: white"}));
    EXPECT_EQ(outcome.uniform->facts.regulations.size(), 2U);
    EXPECT_EQ(outcome.uniform->facts.day, (Date{1788, 5, 1}));
}

TEST(InForce, IsTheBaseAloneBeforeTheAmendment) {
    EXPECT_EQ(amended_man("as of: 1788-04-30\n").word("waistcoat.cloth"), "buff");
    EXPECT_EQ(amended_man("as of: 1788-05-01\n").word("waistcoat.cloth"), "white");
    EXPECT_EQ(amended_man("as of: 1784-03-01\n").uniform->facts.regulations.size(), 1U);
}

TEST(InForce, AnAmendmentThatHasEndedIsForgotten) {
    const std::string trial =
        "regulation: Trial\namends: base.yaml\nin force from: 1785\nuntil: 1785\n"
        "everyone: {coat: red}\n";
    const auto coat = [&](const std::string& day) {
        return resolved(Given{"plate: A\nas of: " + day + "\n", {{kBase, trial}}})
            .word("coat.cloth");
    };
    EXPECT_EQ(coat("1785-12-31"), "red");
    EXPECT_EQ(coat("1786"), "dark blue");
}

TEST(InForce, OfSeveralTheLatestThatHasBegun) {
    const std::string second =
        "regulation: Regulation of 1790\nin force from: 1790\neveryone: {coat: black}\n";
    const auto coat = [&](const std::string& day) {
        return resolved(Given{"plate: A\nas of: " + day + "\n", {{second}, {kBase}}})
            .word("coat.cloth");
    };
    EXPECT_EQ(coat("1789-12-31"), "dark blue");
    EXPECT_EQ(coat("1790"), "black");
}

TEST(InForce, TheSameRegulationOnTwoWaysIsOne) {
    const Outcome outcome =
        resolved(Given{"plate: A\nas of: 1786\n", {{kBase}, {kBase, kAmendment}}});
    EXPECT_TRUE(outcome.uniform) << outcome.problem();
    EXPECT_EQ(resolved(Given{"plate: A\n", {{kBase}, {kBase, kAmendment}}}).word("waistcoat.cloth"),
              "white");
}

TEST(Amendment, ReplacesWhatAPlaceSaysAndLeavesTheRest) {
    const Outcome outcome = amended_man("regiment: Tannbruck\n");
    ASSERT_TRUE(outcome.uniform) << outcome.problem();
    EXPECT_EQ(outcome.chain("facings.cloth"), Lines{"series, black, amended 1788: black"});
    EXPECT_EQ(outcome.word("buttons.metal"), "yellow");
    EXPECT_EQ(outcome.word("lapels.cloth"), "none");
    EXPECT_EQ(amended_man("regiment: Seeholm\n").word("facings.cloth"), "red");
}

TEST(Amendment, ReplacesTheRuleOfItsName) {
    EXPECT_EQ(amended_man("regiment: 1\n").word("pockets.direction"), "slanted");
    EXPECT_EQ(amended_man("regiment: 1\nas of: 1785\n").word("pockets.direction"), "vertical");
    EXPECT_EQ(amended_man("regiment: 1\n").chain("pockets.direction"),
              Lines{"rule 'pockets', amended 1788: slanted"});
}

TEST(Amendment, OverlaysRanksEvenThroughLike) {
    const Outcome outcome = amended_man("rank: sergeant\nbuttons: white\n");
    EXPECT_EQ(outcome.chain("marks.cloth"),
              (Lines{"rank sergeant, like corporal: white",
                     "rank sergeant, like corporal, amended 1788: as buttons.metal",
                     "as buttons.metal: white"}));
    EXPECT_EQ(outcome.word("marks.number"), "2");
    EXPECT_EQ(amended_man("rank: lance corporal\n").word("marks.sleeves"), "left");
}

TEST(Amendment, OverlaysServiceByYears) {
    EXPECT_EQ(amended_man("years of service: 7\n").word("service.number"), "2");
    EXPECT_EQ(amended_man("years of service: 8\n").word("service.number"), "3");
    EXPECT_EQ(amended_man("years of service: 8\n").word("service.cloth"), "red");
}

std::string with_rules(const std::string& rules) {
    return "regulation: R\nclasses: {line: {}, light: {}}\n"
           "companies: {musketeers: {}, grenadiers: {}}\nranks: {private: {}, drummer: {}}\n"
           "orders of dress: {parade: {}}\n"
           "series: [{colour: buff, regiments: [{number: 7, name: Halmgard}]}]\nrules:\n" +
           rules;
}

/// Whether a rule that asks `when` (and `unless`) holds for the man of these lines.
bool holds(const std::string& asks, const std::string& lines) {
    const Outcome outcome = resolved(
        Given{"plate: A\n" + lines, {{with_rules("  - {" + asks + ", wear: {stock: red}}\n")}}});
    EXPECT_TRUE(outcome.uniform) << outcome.problem();
    return outcome.word("stock.cloth") == "red";
}

TEST(Rules, AskForFacts) {
    EXPECT_TRUE(holds("when: {class: light}", "class: light\n"));
    EXPECT_FALSE(holds("when: {class: light}", "class: line\n"));
    EXPECT_FALSE(holds("when: {class: light}", ""));
    EXPECT_TRUE(holds("when: {class: none}", ""));
    EXPECT_TRUE(holds("when: {company: [musketeers, Grenadiers]}", "company: grenadiers\n"));
    EXPECT_TRUE(holds("when: {rank: drummer}", "rank: drummer\n"));
    EXPECT_TRUE(holds("when: {order of dress: parade}", "order of dress: parade\n"));
    EXPECT_TRUE(holds("when: {regiment: 7}", "regiment: Halmgard\n"));
    EXPECT_TRUE(holds("when: {regiment: [Tannbruck, halmgard]}", "regiment: 7\n"));
    EXPECT_FALSE(holds("when: {regiment: 7}", ""));
    EXPECT_TRUE(holds("when: {years of service: at least 8}", "years of service: 8\n"));
    EXPECT_FALSE(holds("when: {years of service: more than 8}", "years of service: 8\n"));
    EXPECT_FALSE(holds("when: {years of service: at least 0}", ""));
}

TEST(Rules, AskForPropertiesOfEveryKind) {
    EXPECT_TRUE(holds("when: {buttons.metal: brass}", "buttons: yellow\n"));
    EXPECT_TRUE(holds("when: {coat.cloth: madder}", "coat: red\n"));
    EXPECT_TRUE(holds("when: {cuffs.cloth: the coat colour}", "coat: red\nfacings: red\n"));
    EXPECT_TRUE(holds("when: {lapels: none}", "lapels: none\n"));
    EXPECT_FALSE(holds("when: {lapels: none}", ""));
    EXPECT_TRUE(holds("when: {cuffs: {shape: slit, buttons: 3}}", "cuffs: {shape: slashed}\n"));
    EXPECT_TRUE(holds("when: {marks.width: 1.2 cm}", ""));
    EXPECT_TRUE(holds("when: {service.number: none}", ""));
    EXPECT_TRUE(holds("when: {buttons.number: 4}", "buttons: {number: 4}\n"));
}

TEST(Rules, WantAllOfWhenAndNothingOfUnless) {
    const std::string asks =
        "when: {class: line, company: grenadiers}, unless: {rank: drummer, buttons.metal: white}";
    EXPECT_TRUE(holds(asks, "class: line\ncompany: grenadiers\n"));
    EXPECT_FALSE(holds(asks, "class: line\n"));
    EXPECT_FALSE(holds(asks, "class: line\ncompany: grenadiers\nrank: drummer\n"));
    EXPECT_FALSE(holds(asks, "class: line\ncompany: grenadiers\nbuttons: white\n"));
}

TEST(Rules, MayRestOnWhatOtherRulesDecide) {
    const Outcome outcome =
        resolved(Given{"plate: A\ncoat: red\n",
                       {{with_rules("  - {when: {stock: red}, wear: {shirt: buff}}\n"
                                    "  - {when: {waistcoat: red}, wear: {stock: red}}\n"
                                    "  - {when: {coat: red}, wear: {waistcoat: red}}\n")}}});
    ASSERT_TRUE(outcome.uniform) << outcome.problem();
    EXPECT_EQ(outcome.word("shirt.cloth"), "buff");
}

TEST(Rules, OfTheRegimentMakeItsColoursAndThoseOfARankDoNot) {
    const Outcome outcome = resolved(
        Given{"plate: A\nrank: drummer\nregiment: 7\n",
              {{with_rules("  - {when: {regiment: 7}, wear: {coat: red}}\n"
                           "  - {when: {rank: drummer}, wear: {waistcoat: the regiment's coat "
                           "colour, facings: the regiment's facing colour}}\n")}}});
    ASSERT_TRUE(outcome.uniform) << outcome.problem();
    EXPECT_EQ(outcome.word("waistcoat.cloth"), "red");
    EXPECT_EQ(outcome.word("facings.cloth"), "buff");
}

}  // namespace
}  // namespace platewright
