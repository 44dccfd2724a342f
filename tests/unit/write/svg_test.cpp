// SPDX-License-Identifier: MIT
// SVG: names, sharing, text, fonts, sameness.
#include <gtest/gtest.h>

#include <fstream>
#include <pugixml.hpp>
#include <set>
#include <sstream>
#include <thread>

#include "sample.h"
#include "write/write.h"

namespace platewright {
namespace {

std::size_t count(const std::string& in, const std::string& what) {
    std::size_t found = 0;
    for (std::size_t at = in.find(what); at != std::string::npos;
         at = in.find(what, at + what.size())) {
        ++found;
    }
    return found;
}

/// A page with one drawing at a scale of 1 that holds this group.
Document page_of(Drawing drawing) {
    Document document;
    document.title = "T";
    document.pages.emplace_back();
    document.pages[0].items.push_back({{0, 0}, 1, std::move(drawing)});
    return document;
}

Shape filled(PathId path, Colour colour, Point shift = {}) {
    return {path, shift, Fill{colour}, {}};
}

/// The document with every embedded font cut out.
std::string without_fonts(std::string svg) {
    const std::string start = "base64,";
    for (std::size_t at = svg.find(start); at != std::string::npos; at = svg.find(start, at + 1)) {
        svg.erase(at + start.size(), svg.find(')', at) - at - start.size());
    }
    return svg;
}

TEST(WriteSvg, IsTheExpectedText) {
    const std::string found = without_fonts(write_svg(test::sample(), 0, Typesetter()));
    std::ifstream file(PLATEWRIGHT_SOURCE_DIR "/tests/unit/write/sample.expected.svg",
                       std::ios::binary);
    std::stringstream expected;
    expected << file.rdbuf();
    // To accept a change, copy this over the expected file after reading the difference.
    std::ofstream("sample.found.svg", std::ios::binary) << found;
    EXPECT_EQ(found, expected.str()) << "see sample.found.svg in the working folder";
}

// Words lead to a place further down and back; what has no partner on the page is no link.
TEST(WriteSvg, LinksLeadToIdsOnThePage) {
    Drawing drawing;
    const PathId square = drawing.add(rectangle({0, 0, 9, 9}));
    const auto place = [&](const char* name, const char* to) {
        Group group;
        group.anchor = name;
        group.leads_to = to;
        group.children.emplace_back(filled(square, {1, 2, 3}));
        drawing.root.children.emplace_back(std::move(group));
    };
    place("callout-1", "key-1");
    place("key-1", "callout-1");
    place("", "key-1");
    place("lonely", "elsewhere");
    drawing.root.name = "key-1";
    const std::string svg = write_svg(page_of(std::move(drawing)), 0, Typesetter());
    EXPECT_EQ(count(svg, "<a id=\"callout-1\" href=\"#key-1\">"), 1U);
    EXPECT_EQ(count(svg, "<a id=\"key-1\" href=\"#callout-1\">"), 1U);
    EXPECT_EQ(count(svg, "<a href=\"#key-1\">"), 1U);
    EXPECT_EQ(count(svg, "</a>"), 3U);
    EXPECT_EQ(count(svg, "lonely"), 0U);
    EXPECT_EQ(count(svg, "id=\"key-1\""), 1U);
}

TEST(WriteSvg, HasPaperSizeTitleAndDescription) {
    pugi::xml_document xml;
    ASSERT_TRUE(xml.load_string(write_svg(test::sample(), 0, Typesetter()).c_str()));
    const pugi::xml_node root = xml.child("svg");
    EXPECT_STREQ(root.attribute("width").value(), "120mm");
    EXPECT_STREQ(root.attribute("height").value(), "90mm");
    EXPECT_STREQ(root.attribute("viewBox").value(), "0 0 120 90");
    EXPECT_STREQ(root.attribute("lang").value(), "en");
    EXPECT_STREQ(root.child_value("title"), "Sample “page” (1)");
    EXPECT_STREQ(root.child_value("desc"), "Squares, a ring, a clipped pair & lines of words");
}

TEST(WriteSvg, UsesEachIdOnceAndRefersToNoOther) {
    pugi::xml_document xml;
    ASSERT_TRUE(xml.load_string(write_svg(test::sample(), 0, Typesetter()).c_str()));
    std::set<std::string> ids;
    std::set<std::string> wanted;
    for (const auto& found : xml.select_nodes("//*[@id]")) {
        EXPECT_TRUE(ids.insert(found.node().attribute("id").value()).second);
    }
    for (const auto& found :
         xml.select_nodes("//@*[starts-with(., '#P') or starts-with(., 'url(#')]")) {
        std::string value = found.attribute().value();
        value.erase(0, value.find('#') + 1);
        wanted.insert(value.substr(0, value.find(')')));
    }
    EXPECT_FALSE(wanted.empty());
    for (const std::string& id : wanted) {
        EXPECT_EQ(ids.count(id), 1U) << id;
    }
    for (const char* name :
         {"shapes", "words", "plain", "holes", "shapes-plain", "lines-strokes"}) {
        EXPECT_EQ(ids.count(name), 1U) << name;
    }
}

TEST(WriteSvg, WritesAnOutlineOnce) {
    Drawing drawing;
    const PathId first = drawing.add(polygon({{0, 0}, {7, 0}, {7, 9}}));
    const PathId equal = drawing.add(polygon({{0, 0}, {7, 0}, {7, 9}}));
    const PathId other = drawing.add(polygon({{1, 0}, {7, 0}, {7, 9}}));
    drawing.root.children = {
        filled(first, {255, 0, 0}), filled(equal, {0, 0, 255}, {2, 0}), filled(other, {})};
    const std::string svg = write_svg(page_of(std::move(drawing)), 0, Typesetter());
    EXPECT_EQ(count(svg, "m0 0h7v9z"), 1U);
    EXPECT_EQ(count(svg, "<use href=\"#P0\" fill=\"#f00\"/>"), 1U);
    EXPECT_EQ(count(svg, "<use href=\"#P0\" x=\"2\" fill=\"#00f\"/>"), 1U);
    EXPECT_EQ(count(svg, "<path d=\"m1 0h6v9z\" fill=\"#000\"/>"), 1U);
}

TEST(WriteSvg, PaintsAShapeSmallerWithItsOutlineSaidOnce) {
    Drawing drawing;
    const PathId path = drawing.add(polygon({{0, 0}, {7, 0}, {7, 9}}));
    drawing.root.children = {Shape{path, {}, Fill{{255, 0, 0}}, {}},
                             Shape{path, {2, 1}, Fill{{0, 0, 255}}, {}, 0.5}};
    const std::string svg = write_svg(page_of(std::move(drawing)), 0, Typesetter());
    EXPECT_EQ(count(svg, "m0 0h7v9z"), 1U);
    EXPECT_EQ(count(svg, "<use href=\"#P0\" transform=\"translate(2 1)scale(.5)\" fill=\"#00f\"/>"),
              1U);
}

TEST(WriteSvg, SaysACommonStyleOnce) {
    Drawing drawing;
    const PathId path = drawing.add(polygon({{0, 0}, {7, 0}, {7, 9}}));
    Group shade;
    for (int i = 0; i < 4; ++i) {
        shade.children.emplace_back(Shape{path, {1.0 * i, 0}, Fill{{1, 2, 3}, 0.03, true}, {}});
    }
    drawing.root.children.emplace_back(std::move(shade));
    const std::string svg = write_svg(page_of(std::move(drawing)), 0, Typesetter());
    EXPECT_EQ(count(svg, "{fill:#010203;fill-opacity:.03;fill-rule:evenodd}"), 1U);
    EXPECT_EQ(count(svg, "fill-opacity"), 1U);
    EXPECT_EQ(count(svg, "<use "), 4U);
}

TEST(WriteSvg, NamesLayersButNotStepsOfPainting) {
    Drawing drawing;
    const PathId path = drawing.add(polygon({{0, 0}, {7, 0}, {7, 9}}));
    Group coat;
    coat.name = "coat";
    Group shade;
    shade.name = "shade";
    shade.step = true;
    shade.children.emplace_back(filled(path, {}));
    coat.children.emplace_back(std::move(shade));
    drawing.root.children.emplace_back(std::move(coat));
    const std::string svg = write_svg(page_of(std::move(drawing)), 0, Typesetter());
    EXPECT_EQ(count(svg, "<g id=\"coat\">"), 1U);
    EXPECT_EQ(count(svg, "shade"), 0U);
}

TEST(WriteSvg, LeavesOutWhatIsNotSeen) {
    Drawing drawing;
    const PathId path = drawing.add(polygon({{0, 0}, {7, 0}, {7, 9}}));
    Group empty;
    empty.name = "empty";
    drawing.root.children = {Shape{path, {}, {}, {}},
                             Shape{path, {}, Fill{{}, 0}, Stroke{{}, 0, 1, {}}},
                             Shape{drawing.add(Path()), {}, Fill{}, {}},
                             empty};
    const std::string svg = write_svg(page_of(std::move(drawing)), 0, Typesetter());
    EXPECT_EQ(count(svg, "<use"), 0U);
    EXPECT_EQ(count(svg, "empty"), 0U);
}

TEST(WriteSvg, QuotesWhatXmlReserves) {
    Document document = page_of({});
    document.title = "a < b & \"c\" \x01";
    document.pages[0].items[0].drawing.root.name = "<g>";
    Text text;
    text.words = "]]> & <x>  two";
    document.pages[0].items[0].drawing.root.children.emplace_back(text);
    pugi::xml_document xml;
    ASSERT_TRUE(xml.load_string(write_svg(document, 0, Typesetter()).c_str()));
    EXPECT_STREQ(xml.child("svg").child_value("title"), "a < b & \"c\"  ");
    const pugi::xml_node words = xml.child("svg").child("g").child("text");
    EXPECT_STREQ(words.child_value(), "]]> & <x>  two");
    EXPECT_STREQ(words.attribute("xml:space").value(), "preserve");
}

TEST(WriteSvg, EmbedsOnlyTheFacesUsed) {
    Drawing drawing;
    Text text;
    text.words = "Coat";
    text.face = Face::italic;
    drawing.root.children.emplace_back(text);
    const std::string svg = write_svg(page_of(std::move(drawing)), 0, Typesetter());
    EXPECT_EQ(count(svg, "@font-face"), 1U);
    EXPECT_EQ(count(svg, "font-family:'EB Garamond 12';font-style:italic"), 1U);
    EXPECT_LT(svg.size(), 8'000U);
}

TEST(WriteSvg, IgnoresADashOfNothing) {
    for (const std::vector<double>& dash :
         {std::vector<double>{0, 0}, {-1, 2}, {std::stod("nan")}}) {
        Drawing drawing;
        const PathId path = drawing.add(polygon({{0, 0}, {7, 0}, {7, 9}}));
        drawing.root.children.emplace_back(Shape{path, {}, {}, Stroke{{}, 1, 1, dash}});
        EXPECT_EQ(count(write_svg(page_of(std::move(drawing)), 0, Typesetter()), "dasharray"), 0U);
    }
}

TEST(WriteSvg, GivesTheSameBytesInEveryThread) {
    const Document document = test::sample();
    const std::string expected = write_svg(document, 0, Typesetter());
    std::vector<std::string> found(4);
    std::vector<std::thread> threads;
    threads.reserve(found.size());
    for (std::string& bytes : found) {
        threads.emplace_back([&] { bytes = write_svg(document, 0, Typesetter()); });
    }
    for (std::thread& thread : threads) {
        thread.join();
    }
    for (const std::string& bytes : found) {
        EXPECT_EQ(bytes, expected);
    }
}

TEST(WriteSvg, RefusesAPageThatIsNotThere) {
    EXPECT_THROW(write_svg(test::sample(), 1, Typesetter()), std::out_of_range);
}

}  // namespace
}  // namespace platewright
