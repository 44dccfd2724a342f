// SPDX-License-Identifier: MIT
// What is said of orders that contradict each other or name what nobody knows.
#include <gtest/gtest.h>

#include "support.h"

namespace platewright {
namespace {

constexpr const char* kRegulation = R"(regulation: R
in force from: 1784
classes: {line: {}, artillery: {}}
series:
  - {colour: red, class: line, regiments: [{number: 1, name: Tannbruck, buttons: white}]}
companies: {musketeers: {}, grenadiers: {title: Grenadierkompanie}}
ranks:
  private: {title: Gemeiner}
  sergeant: {}
orders of dress: {parade: {}, fatigue: {}}
)";

std::string told(const std::string& lines,
                 const std::string& regiment = "",
                 const std::string& regulation = kRegulation) {
    return resolved(Given{"plate: A\n" + lines, {{regulation}}, regiment}).problem();
}

TEST(Conflict, OfTwoRulesShowsBothPlaces) {
    EXPECT_EQ(told("",
                   "",
                   "regulation: R\nrules:\n"
                   "  - {name: one, wear: {pockets: vertical}}\n"
                   "  - {name: two, wear: {pockets: slanted}}\n"),
              "4:33: 'pockets.direction' is 'vertical' by rule 'one', and 'slanted' by rule 'two' "
              "[resolve.conflict]\n"
              "3:33: rule 'one': 'vertical'\n"
              "say under 'unless:' of one of them when it does not hold");
}

TEST(Conflict, IsNoneWhereBothSayTheSame) {
    EXPECT_EQ(told("",
                   "",
                   "regulation: R\nrules:\n"
                   "  - {wear: {coat: red, facings: buff, marks: {width: 10 mm}}}\n"
                   "  - {wear: {coat: madder, facings: the waistcoat colour, marks: {width: 1 "
                   "cm}}}\neveryone: {waistcoat: buff}\n"),
              "");
}

TEST(Conflict, OfSeriesAndItsShow) {
    EXPECT_EQ(
        told("regiment: 1\n",
             "",
             "regulation: R\nshows: {so: {buttons: yellow}}\n"
             "series: [{colour: red, regiments: [{number: 1, shows: so, buttons: white}]}]\n"),
        "2:23: 'buttons.metal' is 'white' by series, red, and 'yellow' by series, shows so "
        "[resolve.conflict]\n"
        "3:68: series, red: 'white'\n"
        "leave one of them out: neither is stronger than the other");
}

TEST(Conflict, OfDepartures) {
    EXPECT_EQ(told("departures:\n  - {wear: {stock: red}}\n  - {wear: {stock: white}}\n"),
              "4:20: 'stock.cloth' is 'red' by departure of this plate, and 'white' by departure "
              "of this plate [resolve.conflict]\n"
              "3:20: departure of this plate: 'red'\n"
              "give one of them a company, a rank, an order of dress or dates");
}

TEST(Conflict, OfServiceStepsOfTheSameYears) {
    EXPECT_EQ(told("years of service: 9\n",
                   "",
                   "regulation: R\nservice:\n  - {at least: 8 years, service: {number: 1}}\n"
                   "  - {at least: 8 years, service: {number: 2}}\n"),
              "4:43: 'service.number' is '1' by at least 8 years of service, and '2' by at least 8 "
              "years of service [resolve.conflict]\n"
              "3:43: at least 8 years of service: '1'\n"
              "leave one of them out: neither is stronger than the other");
}

TEST(Conflict, OfClasses) {
    EXPECT_EQ(told("regiment: Tannbruck\nclass: artillery\n"),
              "3:8: he cannot be of the classes 'line' and 'artillery' at once "
              "[resolve.conflict]\n5:26: here 'line'\nleave one of them out");
}

TEST(Unknown, NamesAreToldWithWhatIsMeant) {
    EXPECT_EQ(told("class: lime\n"),
              "2:8: the regulation has no class 'lime' [resolve.unknown-class]\n"
              "did you mean 'line'?");
    EXPECT_EQ(told("company: grenadeers\n"),
              "2:10: the regulation has no company 'grenadeers' [resolve.unknown-company]\n"
              "did you mean 'grenadiers'?");
    EXPECT_EQ(told("company: Grenadierkompanie\n"),
              "2:10: the regulation has no company 'Grenadierkompanie' [resolve.unknown-company]\n"
              "did you mean 'grenadiers'?");
    EXPECT_EQ(told("order of dress: marching\n"),
              "2:17: the regulation has no order of dress 'marching' [resolve.unknown-order]\n"
              "its orders of dress are parade or fatigue");
    EXPECT_EQ(told("rank: sargeant\n"),
              "2:7: the regulation has no rank 'sargeant' [resolve.unknown-rank]\n"
              "did you mean 'sergeant'?\n"
              "a rank of your own needs its marks: write 'marks: none' or 'marks: {shape: bars, "
              "number: 2}'");
    EXPECT_EQ(told("rank: gemeiner\n").find("did you mean 'private'?") != std::string::npos, true);
    EXPECT_EQ(told("regiment: Tanbruck\n"),
              "2:11: the regulation has no regiment 'Tanbruck' [resolve.unknown-regiment]\n"
              "did you mean 'Tannbruck'?");
}

TEST(Unknown, ARankOfYourOwnStandsWithItsMarks) {
    EXPECT_EQ(told("rank: vice-corporal\nmarks: none\n"), "");
}

TEST(Idle, ValuesAreToldWithWhatTheyWouldNeed) {
    EXPECT_EQ(told("sash: crimson\n"),
              "2:7: 'sash.cloth' changes nothing on this man [resolve.changes-nothing]\n"
              "'sash.worn' is 'none'; write something else there");
    EXPECT_EQ(told("sash: {cloth: crimson, worn: waist}\n"), "");
    EXPECT_EQ(told("sash: none\n"), "");
}

TEST(Unknown, ARegimentsNameOrNumber) {
    EXPECT_EQ(told("", "regiment: Tanbruck\nclass: line\n"),
              "1:11: the regulation has no place for the regiment 'Tanbruck' "
              "[resolve.unknown-regiment]\ndid you mean 'Tannbruck'?");
    EXPECT_EQ(told("", "regiment: Oster Legion\n"),
              "1:11: the regulation has no place for the regiment 'Oster Legion' "
              "[resolve.unknown-regiment]\nwrite 'number:', its place in the series, or 'class:' "
              "for a corps outside the series");
    EXPECT_EQ(told("", "regiment: Oster Legion\nclass: line\n"), "");
    EXPECT_EQ(told("", "regiment: Tannbruck\nnumber: 4\n"),
              "2:9: the regulation has no regiment 4 [resolve.unknown-regiment]\n"
              "its regiments are numbered 1 to 1");
    EXPECT_EQ(told("", "regiment: Seeholm\nnumber: 1\n"),
              "2:9: place 1 of the series is taken by 'Tannbruck', not by 'Seeholm' "
              "[resolve.place-taken]\n5:62: here\ncorrect the number, or the name");
}

TEST(Dates, BeforeTheFirstAndAfterTheLast) {
    EXPECT_EQ(told("as of: 1783\n"),
              "2:8: no regulation is in force on 1783-01-01 [resolve.dates]\n"
              "2:16: the first begins on 1784-01-01\n"
              "ask for another day, or name the regulation of that day as well");
    EXPECT_EQ(told("as of: 1790\n", "", "regulation: R\nin force from: 1784\nuntil: 1788\n"),
              "2:8: no regulation is in force on 1790-01-01 [resolve.dates]\n"
              "ask for another day, or name the regulation of that day as well");
}

TEST(Dates, ThatContradictEachOther) {
    EXPECT_EQ(told("", "", "regulation: R\nin force from: 1784\nuntil: 1783\n"),
              "3:8: 'R' ends on 1783-12-31, before it begins [resolve.dates]\n"
              "2:16: begins on 1784-01-01");
    EXPECT_EQ(resolved(Given{"plate: A\n",
                             {{"regulation: R\nin force from: 1784\n",
                               "regulation: S\namends: r.yaml\nin force from: 1783\n"}}})
                  .problem(),
              "3:16: 'S' is in force before what it amends [resolve.dates]\n"
              "2:16: 'R' begins on 1784-01-01");
    EXPECT_EQ(told("",
                   "regiment: Tannbruck\ndepartures:\n"
                   "  - {wear: {stock: red}, from: 1786, until: 1785}\n"),
              "3:45: the departure ends on 1785-12-31, before it begins [resolve.dates]\n"
              "3:32: begins on 1786-01-01");
}

TEST(Dates, TwoInForceOnOneDay) {
    const auto two = [](const std::string& first, const std::string& second) {
        return resolved(Given{"plate: A\nas of: 1787\n",
                              {{"regulation: R\n" + first}, {"regulation: S\n" + second}}})
            .problem();
    };
    EXPECT_EQ(two("in force from: 1784\nuntil: 1788\n", "in force from: 1786\n"),
              "1:13: two regulations are in force on 1787-01-01: 'R' and 'S' [resolve.dates]\n"
              "1:13: the other one\n"
              "let one end with 'until:' before the other begins with 'in force from:'");
    EXPECT_NE(two("in force from: 1784\n", "in force from: 1784\n"), "");
    EXPECT_EQ(two("in force from: 1784\n", "in force from: 1786\n"), "");
    EXPECT_EQ(two("in force from: 1784\nuntil: 1785\n", "in force from: 1786\n"), "");
}

TEST(NotDecided, IsAnErrorWhereOnlyADefaultDecides) {
    const std::string regulation =
        "regulation: R\nmust decide: [coat.cloth, lapels.cloth, pockets.direction]\n"
        "everyone: {coat: red, facings: buff}\n";
    EXPECT_EQ(told("", "", regulation),
              "1:8: nobody decides 'pockets.direction' for this man [resolve.not-decided]\n"
              "2:41: the regulation wants it decided\n"
              "write it in the regulation, in the regiment's file or on this plate");
    EXPECT_EQ(told("pockets: horizontal\n", "", regulation), "");
    EXPECT_EQ(told("coat: {cut: none}\n", "", regulation), "");
}

TEST(Circle, OfRulesNamesThem) {
    EXPECT_EQ(told("",
                   "",
                   "regulation: R\nrules:\n"
                   "  - {name: one, when: {stock: black}, wear: {stock: red}}\n"),
              "3:5: rule 'one' takes away what it asks for [resolve.circle]\n"
              "let them ask for something that no rule of theirs changes, such as the class or "
              "the button metal of the series");
    EXPECT_EQ(told("",
                   "",
                   "regulation: R\nrules:\n"
                   "  - {name: one, when: {stock: black}, wear: {shirt: red}}\n"
                   "  - {name: two, when: {shirt: red}, wear: {stock: red}}\n"
                   "  - {when: {coat: red}, wear: {hat: {tuft: red}}}\n"),
              "3:5: rule 'one' and rule 'two' chase each other: each changes what another asks for "
              "[resolve.circle]\n4:5: rule 'two'\n"
              "let them ask for something that no rule of theirs changes, such as the class or "
              "the button metal of the series");
}

TEST(Circle, ThroughTheRegimentsColours) {
    EXPECT_EQ(told("",
                   "regiment: Tannbruck\ncoat: the facing colour\nfacings: the regiment's coat "
                   "colour\n"),
              "2:7: 'coat.cloth' follows 'facings.cloth', which follows 'coat.cloth' "
              "[resolve.circle]\ngive one of them a colour of its own");
}

TEST(CheckRegulation, FindsNamesNobodyKnows) {
    EXPECT_EQ(checked({"regulation: R\nseries: [{colour: red, regiments: [{number: 1, shows: "
                       "cuffs}]}]\nshows: {cuff: {}}\n"})
                  .problem(),
              "2:55: the regulation has no way to show the colour 'cuffs' "
              "[resolve.unknown-shows]\ndid you mean 'cuff'?");
    EXPECT_EQ(checked({"regulation: R\nranks: {a: {like: b}}\n"}).problem(),
              "2:19: the regulation has no rank 'b' [resolve.unknown-rank]\nits ranks are a");
    EXPECT_EQ(checked({"regulation: R\nranks: {corporal: {coat: rde}}\n"}).problem(),
              "2:26: unknown colour 'rde' [resolve.unknown-colour]\ndid you mean 'red'?");
    EXPECT_EQ(
        checked({"regulation: R\nrules: [{when: {company: x}, wear: {stock: red}}]\n"}).problem(),
        "2:26: the regulation has no company 'x' [resolve.unknown-company]\n"
        "it knows none; add it to the regulation");
    EXPECT_EQ(checked({"regulation: R\nbattalions: [{name: first, companies: {grenadiers: 1}}]\n"})
                  .problem(),
              "2:40: the regulation has no company 'grenadiers' [resolve.unknown-company]\n"
              "it knows none; add it to the regulation");
}

TEST(CheckRegulation, FindsRanksInACircle) {
    EXPECT_EQ(checked({"regulation: R\nranks:\n  a: {like: b}\n  b: {like: c}\n  c: {like: b}\n"})
                  .problem(),
              "4:13: 'b' is like 'c', who is like 'b' [resolve.circle]\n"
              "let one of them say himself what he wears");
}

TEST(CheckRegulation, FindsPlacesTakenTwice) {
    EXPECT_EQ(checked({"regulation: R\nseries:\n"
                       "  - {colour: red, regiments: [{number: 1}]}\n"
                       "  - {colour: buff, regiments: [{number: 1}]}\n"})
                  .problem(),
              "4:41: place 1 of the series is taken twice [resolve.place-taken]\n"
              "3:40: here first\ngive every regiment a number of its own");
}

TEST(CheckRegulation, FindsRegimentsThatComeOutAlike) {
    const std::string series =
        "series: [{colour: red, regiments: [{number: 1, name: A, buttons: white}, {number: 2, "
        "buttons: pewter}, {number: 3, buttons: yellow}]}]\n";
    EXPECT_EQ(checked({"regulation: R\n" + series}).problem(),
              "2:83: regiment 1 (A) and regiment 2 come out alike [resolve.place-taken]\n"
              "2:45: the other one\n"
              "give one another colour, button metal or 'shows:', or write 'buttons: {number: the "
              "regiment's number}' under 'everyone:'");
    const Outcome numbered = checked(
        {"regulation: R\n" + series + "everyone: {buttons: {number: the regiment's number}}\n"});
    EXPECT_EQ(numbered.problems.error_count(), 0U);
    EXPECT_EQ(numbered.problem(),
              "2:83: only the number on the buttons tells regiment 2 from regiment 1 (A) "
              "[resolve.place-taken]\n2:45: the other one\n"
              "if that is meant, leave it; else give one another colour, button metal or 'shows:'");
}

TEST(CheckRegulation, SumsTheMen) {
    const std::string regulation =
        "regulation: R\ncompanies: {musketeers: {men: 140}, grenadiers: {men: 120}}\n"
        "battalions:\n"
        "  - {name: first, companies: {musketeers: 4, grenadiers: 1}}\n"
        "  - {name: second, companies: {musketeers: 5}}\n";
    EXPECT_EQ(checked({regulation + "strength: 1380 men\n"}).problem(), "");
    EXPECT_EQ(checked({regulation + "strength: 1400 men\n"}).problem(),
              "6:11: the strength is 1400 men, but the battalions come to 1380 "
              "[resolve.strength]\n4:12: first: 680 men\n5:12: second: 700 men\n"
              "correct the strength, the companies or their men");
}

}  // namespace
}  // namespace platewright
