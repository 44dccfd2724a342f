// SPDX-License-Identifier: MIT
// A recruit's own sheets, from the file to the pages.
#include "cli/handout.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "support.h"

namespace platewright::cli {
namespace {

/// A handout in the folder of the demonstration plates.
class DrawnHandout {
  public:
    explicit DrawnHandout(const std::string& text, const Paper& paper = {}, Ink ink = Ink::colour) {
        const FileId file = bench_.sources.add(PLATEWRIGHT_SOURCE_DIR "/plates/handout.yaml", text);
        const auto sheet = prepare_sheet(bench_.workshop, file, bench_.problems, bench_.timings);
        if (sheet) {
            const Typesetter type;
            document_ = sheet->draw({paper, ink}, type, bench_.problems, bench_.timings);
        }
    }

    [[nodiscard]] bool has(const std::string& words) const {
        return document_ && dump(*document_).find(words) != std::string::npos;
    }

    [[nodiscard]] const std::optional<Document>& document() const { return document_; }

    [[nodiscard]] const std::vector<Diagnostic>& problems() const { return bench_.problems.all(); }

  private:
    Bench bench_;
    std::optional<Document> document_;
};

const std::string kShort = "handout: Book\nman: tannbruck-lance-corporal.yaml\n";

TEST(HandoutSheet, ShowsEveryOrderOfDressUnlessTold) {
    const DrawnHandout all(kShort);
    EXPECT_TRUE(all.problems().empty());
    for (const char* order : {"Paradeanzug", "Feldanzug", "Arbeitsanzug", "Ausgehanzug"}) {
        EXPECT_TRUE(all.has(order)) << order;
    }
    const DrawnHandout one(kShort + "orders of dress: [fatigue]\n");
    EXPECT_TRUE(one.has("Arbeitsanzug"));
    EXPECT_FALSE(one.has("Feldanzug"));
}

TEST(HandoutSheet, TellsWhereMarksGoWithTheirMeasures) {
    const DrawnHandout drawn(kShort);
    EXPECT_TRUE(drawn.has("1 bar of white"));
    EXPECT_TRUE(drawn.has("width of each"));
    EXPECT_TRUE(drawn.has("\"12 mm\""));
    // The regulation gives no height, so the mark keeps its spacing from the cuff.
    EXPECT_TRUE(drawn.has("free below"));
}

TEST(HandoutSheet, ShowsHimFromBehindAndSaysWhatIsNotYetHis) {
    const DrawnHandout drawn(kShort);
    EXPECT_TRUE(drawn.has("From behind"));
    EXPECT_TRUE(drawn.has("queue ribbon"));
    EXPECT_TRUE(drawn.has("rank marks, service marks."));
    const DrawnHandout recruit("handout: Book\nman: tannbruck-musketeer.yaml\n");
    ASSERT_TRUE(recruit.document());
    EXPECT_FALSE(recruit.has("when they are earned"));
}

TEST(HandoutSheet, HasAnOutlineAndLinks) {
    const DrawnHandout drawn(kShort);
    ASSERT_TRUE(drawn.document());
    ASSERT_GE(drawn.document()->outline.size(), 4U);
    EXPECT_EQ(drawn.document()->outline.front().title, "What to get");
    const std::vector<Link>& links = drawn.document()->pages.front().links;
    const auto contents =
        std::ranges::count_if(links, [](const Link& link) { return link.to.empty(); });
    EXPECT_EQ(static_cast<std::size_t>(contents), drawn.document()->outline.size());
}

// A number on the figure leads to its line, the line back to the number.
TEST(HandoutSheet, NumbersAndLinesLeadToEachOther) {
    const DrawnHandout drawn(kShort);
    ASSERT_TRUE(drawn.document());
    std::set<std::string> places;
    std::set<std::string> led_to;
    for (const Page& page : drawn.document()->pages) {
        for (const NamedPlace& place : page.places) {
            EXPECT_TRUE(places.insert(place.name).second) << place.name;
        }
        for (const Link& link : page.links) {
            led_to.insert(link.to);
        }
    }
    led_to.erase("");
    EXPECT_TRUE(led_to.contains("part-1"));
    EXPECT_TRUE(led_to.contains("number-1"));
    EXPECT_EQ(places, led_to);
}

// On a sheet without colour the name of each hatching stands beside its sample, once.
TEST(HandoutSheet, HatchingsAreNamed) {
    const DrawnHandout drawn(kShort, {}, Ink::hatched);
    EXPECT_TRUE(drawn.has("\"white (argent)\""));
    EXPECT_TRUE(drawn.has("\"buff\""));
    EXPECT_FALSE(drawn.has("buff (buff)"));
    EXPECT_FALSE(DrawnHandout(kShort).has("argent"));
}

TEST(HandoutSheet, TheMusketHasANumber) {
    const DrawnHandout drawn(kShort);
    EXPECT_TRUE(drawn.has("\"musket\""));
    EXPECT_TRUE(drawn.has("\"walnut\""));
}

// A recruit's book is handed over and read: four pages at most, on small paper six.
TEST(HandoutSheet, HasFewPages) {
    for (const auto& [paper, most] : {std::pair{"A4", 4U}, {"letter", 4U}, {"A5", 6U}}) {
        const DrawnHandout drawn(kShort, *parse_paper(paper));
        ASSERT_TRUE(drawn.document());
        EXPECT_LE(drawn.document()->pages.size(), most) << paper;
    }
}

TEST(HandoutSheet, AddressesCanBeFollowed) {
    const DrawnHandout drawn(kShort +
                             "unit: {contact: [The adjutant, a@tannbruck.example, "
                             "'https://tannbruck.example']}\n");
    EXPECT_TRUE(drawn.has("to mailto:a@tannbruck.example"));
    EXPECT_TRUE(drawn.has("to https://tannbruck.example"));
    EXPECT_FALSE(drawn.has("to mailto:The"));
}

TEST(HandoutSheet, SpeaksTheLanguageItSays) {
    const DrawnHandout drawn(kShort + "language: fr\n");
    ASSERT_TRUE(drawn.document());
    EXPECT_EQ(drawn.document()->language, "fr");
    EXPECT_TRUE(drawn.has("Avant de marcher"));
}

TEST(HandoutSheet, AManWhoStandsAloneNeedsNoRegulation) {
    const DrawnHandout drawn("handout: Book\nman: tannbruck-corporal.yaml\n");
    EXPECT_TRUE(drawn.problems().empty());
    EXPECT_TRUE(drawn.has("What to get"));
    EXPECT_FALSE(drawn.has("What to wear when"));
}

TEST(HandoutSheet, AnUnknownOrderOfDressIsToldWhereItIsWritten) {
    const DrawnHandout drawn(kShort + "orders of dress: [parade, gala]\n");
    EXPECT_FALSE(drawn.document());
    ASSERT_EQ(drawn.problems().size(), 1U);
    EXPECT_EQ(drawn.problems()[0].code, "resolve.unknown-order");
}

TEST(HandoutSheet, NamesOfAnyScriptAndLengthAreLaidOut) {
    const DrawnHandout drawn(
        kShort +
            "unit: {name: Рота Таннбрукского полка пехоты герцогства Арвенгольтского, contact: "
            "[חייל רגלים, 'Grenadierbataillonskommandeursstellvertreter']}\n"
            "kit: [{item: 'a thing with a very long name that goes on and on for several lines', "
            "note: 'and a note that is longer still, so that it has to be wrapped more than "
            "once'}]\n",
        {105, 148});
    ASSERT_TRUE(drawn.document());
    EXPECT_TRUE(drawn.has("חייל רגלים"));
}

}  // namespace
}  // namespace platewright::cli
