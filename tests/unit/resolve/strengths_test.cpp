// SPDX-License-Identifier: MIT
// Who decides under a regulation: every strength over the one before.
#include <gtest/gtest.h>

#include "support.h"

namespace platewright {
namespace {

using Lines = std::vector<std::string>;

constexpr const char* kClothing = R"(regulation: Clothing of the line
in force from: 1784-03-01
source: Printed at the ducal press
everyone:
  coat: {cloth: dark blue, lining: buff, source: article 9}
  waistcoat: white
  certainty: inferred
classes:
  line: {title: Line infantry, coat: red}
  foreign corps: {coat: black}
shows:
  lapels and cuffs: {lapels: the facing colour, cuffs: the facing colour}
  cuffs alone: {lapels: {cloth: the coat colour, piping: the facing colour}}
series:
  - colour: buff
    class: line
    source: table 1
    regiments:
      - {number: 1, name: Tannbruck, shows: lapels and cuffs, buttons: yellow}
      - {number: 2, name: Seeholm, shows: cuffs alone, buttons: white}
rules:
  - name: upright pockets
    when: {buttons.metal: white}
    wear: {pockets: vertical}
    why: to be told apart from behind
companies:
  musketeers: {straps: white}
  grenadiers: {straps: crimson, hat: {shape: fur-cap}}
ranks:
  private: {title: Gemeiner, means: private soldier}
  corporal: {title: Korporal, marks: {shape: bars, number: 2, cloth: white}}
  sergeant: {like: corporal, officer: no, marks: {number: 1, cloth: the button metal}}
  drummer: {coat: the regiment's facing colour, facings: the regiment's coat colour}
  captain: {officer: yes}
service:
  - {at least: 8 years, service: {number: 1}}
  - {more than: 12 years, service: {number: 2}}
  - {at least: 24 years, service: {number: none}, badge: grenade}
orders of dress:
  parade: {gaiters: {cloth: white}}
  fatigue: {belts: none}
)";

Outcome line_man(const std::string& lines, const std::string& regiment = "") {
    return resolved(Given{"plate: A\n" + lines, {{kClothing}}, regiment});
}

TEST(Strengths, EveryoneIsOverTheDefaultsAndTheCustomIsSilent) {
    const Outcome outcome = line_man("rank: corporal\n");
    ASSERT_TRUE(outcome.uniform) << outcome.problem();
    EXPECT_EQ(outcome.chain("coat.lining"), Lines{"regulation, everyone: buff"});
    EXPECT_EQ(outcome.word("marks.number"), "2");
    EXPECT_EQ(outcome.chain("marks.number"), Lines{"rank corporal: 2"});
}

TEST(Strengths, ClassIsOverEveryone) {
    const Outcome outcome = line_man("class: foreign corps\n");
    EXPECT_EQ(outcome.chain("coat.cloth"),
              (Lines{"regulation, everyone: dark blue", "class foreign corps: black"}));
}

TEST(Strengths, TheSeriesGivesColourButtonsAndHowItShows) {
    const Outcome outcome = line_man("regiment: Seeholm\n");
    ASSERT_TRUE(outcome.uniform) << outcome.problem();
    EXPECT_EQ(outcome.chain("facings.cloth"), Lines{"series, buff: buff"});
    EXPECT_EQ(outcome.chain("buttons.metal"), Lines{"series, buff: white"});
    EXPECT_EQ(outcome.chain("lapels.cloth"),
              (Lines{"series, shows cuffs alone: as coat.cloth", "as coat.cloth: red"}));
    EXPECT_EQ(outcome.word("lapels.piping"), "buff");
    EXPECT_EQ(outcome.uniform->facts.corps_class.title, "Line infantry");
}

TEST(Strengths, APlaceIsFoundByNameOrNumberWhateverTheCapitals) {
    EXPECT_EQ(line_man("regiment: SEEHOLM\n").word("buttons.metal"), "white");
    const Outcome outcome = line_man("regiment: 2\n");
    EXPECT_EQ(outcome.word("buttons.metal"), "white");
    EXPECT_EQ(outcome.uniform->facts.regiment, "Seeholm");
    EXPECT_EQ(outcome.uniform->facts.number, 2);
}

TEST(Strengths, ARuleIsOverTheSeriesWhereItHolds) {
    const Outcome outcome = line_man("regiment: Seeholm\n");
    EXPECT_EQ(outcome.chain("pockets.direction"), Lines{"rule 'upright pockets': vertical"});
    EXPECT_EQ(outcome.last("pockets.direction").why, "to be told apart from behind");
    EXPECT_EQ(line_man("regiment: Tannbruck\n").word("pockets.direction"), "horizontal");
}

TEST(Strengths, TheRegimentIsOverRules) {
    const Outcome outcome =
        line_man("", "regiment: Seeholm\nnumber: 2\npockets: slanted\nsource: order of 1785\n");
    ASSERT_TRUE(outcome.uniform) << outcome.problem();
    EXPECT_EQ(outcome.chain("pockets.direction"),
              (Lines{"rule 'upright pockets': vertical", "regiment Seeholm: slanted"}));
    EXPECT_EQ(outcome.last("pockets.direction").source, "order of 1785");
}

TEST(Strengths, CompanyRankServiceOrderAndPlateFollow) {
    const Outcome outcome = line_man(
        "company: grenadiers\nrank: sergeant\nyears of service: 9\norder of dress: parade\n"
        "regiment: Tannbruck\ngaiters: {height: half, cloth: black}\n");
    ASSERT_TRUE(outcome.uniform) << outcome.problem();
    EXPECT_EQ(outcome.chain("straps.cloth"), Lines{"company grenadiers: crimson"});
    EXPECT_EQ(outcome.chain("marks.number"),
              (Lines{"rank sergeant, like corporal: 2", "rank sergeant: 1"}));
    EXPECT_EQ(outcome.chain("service.number"), Lines{"at least 8 years of service: 1"});
    EXPECT_EQ(outcome.chain("gaiters.cloth"),
              (Lines{"order of dress parade: white", "this plate: black"}));
}

TEST(Strengths, LikeBringsWhatTheRankDoesNotSayItself) {
    const Outcome outcome = line_man("rank: sergeant\n");
    EXPECT_EQ(outcome.word("marks.shape"), "bars");
    EXPECT_EQ(outcome.word("marks.cloth"), "yellow");
    EXPECT_TRUE(outcome.uniform->material(property_id("marks.cloth"))->metal);
}

TEST(Strengths, ReversedColoursAreNoCircle) {
    const Outcome outcome = line_man("rank: drummer\nregiment: Tannbruck\n");
    ASSERT_TRUE(outcome.uniform) << outcome.problem();
    EXPECT_EQ(outcome.word("coat.cloth"), "buff");
    EXPECT_EQ(outcome.word("facings.cloth"), "red");
    EXPECT_EQ(outcome.word("cuffs.cloth"), "red");
    EXPECT_EQ(outcome.chain("coat.cloth").back(), "as the regiment's facings.cloth: buff");
}

TEST(Strengths, TheRegimentsColoursAreThoseOfItsOwnFile) {
    const Outcome outcome = line_man("rank: drummer\n", "regiment: Tannbruck\ncoat: black\n");
    EXPECT_EQ(outcome.word("facings.cloth"), "black");
}

TEST(Service, CountsAtLeastAndMoreThanToTheDay) {
    const auto marks = [](const std::string& years) {
        return line_man("years of service: " + years + "\n").word("service.number");
    };
    EXPECT_EQ(marks("7.9"), "0");
    EXPECT_EQ(marks("8"), "1");
    EXPECT_EQ(marks("8.0"), "1");
    EXPECT_EQ(marks("12"), "1");
    EXPECT_EQ(marks("12.5"), "2");
    EXPECT_EQ(marks("24"), "0");
}

TEST(Service, ExactlyThreeIsNotMoreThanThree) {
    const auto marks = [](const std::string& years) {
        const std::string regulation =
            "regulation: R\nservice:\n  - {more than: 3 years, service: {number: 1}}\n";
        return resolved(Given{"plate: A\nyears of service: " + years + "\n", {{regulation}}})
            .word("service.number");
    };
    EXPECT_EQ(marks("3"), "0");
    EXPECT_EQ(marks("3.0"), "0");
    EXPECT_EQ(marks("3.1"), "1");
}

TEST(Service, TheLaterStepOverlaysAndTheEarlierStaysOnRecord) {
    const Outcome outcome = line_man("years of service: 30\n");
    EXPECT_EQ(outcome.chain("service.number"),
              (Lines{"at least 8 years of service: 1",
                     "more than 12 years of service: 2",
                     "at least 24 years of service: none"}));
    EXPECT_EQ(outcome.word("badge.device"), "grenade");
}

TEST(Grounds, ComeFromTheGroupThenTheBlockThenTheFile) {
    const Outcome outcome = line_man("regiment: Tannbruck\n");
    ASSERT_TRUE(outcome.uniform) << outcome.problem();
    EXPECT_EQ(outcome.last("coat.lining").source, "article 9");
    EXPECT_EQ(outcome.last("coat.lining").certainty, Certainty::inferred);
    EXPECT_EQ(outcome.last("waistcoat.cloth").source, "Printed at the ducal press");
    EXPECT_EQ(outcome.last("waistcoat.cloth").certainty, Certainty::inferred);
    EXPECT_EQ(outcome.last("facings.cloth").source, "table 1");
    EXPECT_EQ(outcome.last("facings.cloth").certainty, Certainty::documented);
    EXPECT_FALSE(outcome.last("stock.cloth").certainty);
}

TEST(Grounds, StayWithADecisionThatFollows) {
    const Outcome outcome = line_man("regiment: Tannbruck\n");
    const Decision& last = outcome.last("cuffs.cloth");
    EXPECT_EQ(last.follows, property_id("facings.cloth"));
    EXPECT_EQ(last.strength, Strength::series);
    EXPECT_EQ(last.source, "Printed at the ducal press");
}

TEST(Departures, AreWornInsteadUnlessTheManIsAsOrdered) {
    const std::string regiment =
        "regiment: Seeholm\ndepartures:\n"
        "  - wear: {pockets: horizontal}\n    instead of: upright pockets\n"
        "    why: the old coats were worn out first\n    certainty: inferred\n";
    const Outcome worn = line_man("", regiment);
    ASSERT_TRUE(worn.uniform) << worn.problem();
    EXPECT_EQ(worn.chain("pockets.direction"),
              (Lines{"rule 'upright pockets': vertical", "departure of the regiment: horizontal"}));
    const Decision& last = worn.last("pockets.direction");
    EXPECT_TRUE(last.departure);
    EXPECT_EQ(last.instead_of, "upright pockets");
    EXPECT_EQ(last.why, "the old coats were worn out first");
    EXPECT_EQ(last.certainty, Certainty::inferred);
    EXPECT_EQ(line_man("worn: as ordered\n", regiment).word("pockets.direction"), "vertical");
}

TEST(Departures, ConcernOnlyThoseTheyName) {
    const std::string regiment =
        "regiment: Tannbruck\ndepartures:\n"
        "  - {wear: {stock: white}, company: grenadiers, rank: [corporal, sergeant]}\n"
        "  - {wear: {shirt: buff}, order of dress: fatigue}\n"
        "  - {wear: {ribbon: red}, from: 1785, until: 1786}\n";
    EXPECT_EQ(line_man("company: grenadiers\nrank: sergeant\n", regiment).word("stock.cloth"),
              "white");
    EXPECT_EQ(line_man("company: grenadiers\nrank: private\n", regiment).word("stock.cloth"),
              "black");
    EXPECT_EQ(line_man("rank: sergeant\n", regiment).word("stock.cloth"), "black");
    EXPECT_EQ(line_man("order of dress: fatigue\n", regiment).word("shirt.cloth"), "buff");
    EXPECT_EQ(line_man("order of dress: parade\n", regiment).word("shirt.cloth"), "white");
    EXPECT_EQ(line_man("as of: 1784-12-31\n", regiment).word("ribbon.cloth"), "black");
    EXPECT_EQ(line_man("as of: 1785\n", regiment).word("ribbon.cloth"), "red");
    EXPECT_EQ(line_man("as of: 1786-12-31\n", regiment).word("ribbon.cloth"), "red");
    EXPECT_EQ(line_man("as of: 1787\n", regiment).word("ribbon.cloth"), "black");
}

TEST(Departures, OfThePlateOverlayThoseOfTheRegimentAndThePlateBoth) {
    const std::string regiment = "regiment: Tannbruck\ndepartures:\n  - {wear: {stock: white}}\n";
    const Outcome outcome = line_man("departures:\n  - {wear: {stock: red}}\n", regiment);
    EXPECT_EQ(outcome.chain("stock.cloth"),
              (Lines{"departure of the regiment: white", "departure of this plate: red"}));
    EXPECT_EQ(line_man("departures:\n  - {wear: {stock: red}}\nstock: buff\n", regiment)
                  .word("stock.cloth"),
              "buff");
}

TEST(Facts, AreKeptWithTheirTitles) {
    const Outcome outcome = line_man(
        "regiment: Tannbruck\nrank: private\ncompany: musketeers\nyears of service: 3\n"
        "order of dress: parade\nas of: 1785-06\n");
    ASSERT_TRUE(outcome.uniform) << outcome.problem();
    const Facts& facts = outcome.uniform->facts;
    ASSERT_EQ(facts.regulations.size(), 1U);
    EXPECT_EQ(facts.regulations[0].title, "Clothing of the line");
    EXPECT_EQ(facts.rank.title, "Gemeiner");
    EXPECT_EQ(facts.rank.means, "private soldier");
    EXPECT_EQ(facts.company.name, "musketeers");
    EXPECT_EQ(facts.years_of_service, 3);
    EXPECT_EQ(facts.order_of_dress.name, "parade");
    EXPECT_EQ(facts.day, (Date{1785, 6, 1}));
    EXPECT_FALSE(facts.officer);
    EXPECT_TRUE(line_man("rank: captain\n").uniform->facts.officer);
}

TEST(Facts, TheRegimentsNumberMayStandOnItsButtons) {
    const std::string regulation =
        "regulation: R\neveryone: {buttons: {number: the regiment's number}}\n"
        "series: [{colour: red, regiments: [{number: 14, name: Halmgard}]}]\n";
    const Outcome outcome = resolved(Given{"plate: A\nregiment: Halmgard\n", {{regulation}}});
    ASSERT_TRUE(outcome.uniform) << outcome.problem();
    EXPECT_EQ(outcome.word("buttons.number"), "14");
    EXPECT_EQ(resolved(Given{"plate: A\n", {{regulation}}}).word("buttons.number"), "none");
}

}  // namespace
}  // namespace platewright
