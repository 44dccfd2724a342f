// SPDX-License-Identifier: MIT
// What the reader of templates understands and how it complains.
#include <gtest/gtest.h>

#include "sample.h"

namespace platewright {
namespace {

constexpr const char* kGoodPart =
    R"(<g id="coat" data-cloth="coat.cloth" data-zone="body"><path class="shape" d="M -40 0 H 40 V 390 H -40 Z"/></g>)";

/// The problems as `line:column: message [code]`, one a line, hints behind `; `.
std::string problems_of(const std::string& text) {
    const auto reading = read_text(text);
    std::string all;
    for (const Diagnostic& problem : reading->problems.all()) {
        const SourceMap::Place place =
            reading->sources.place(problem.span->file, problem.span->begin);
        all += std::to_string(place.line) + ":" + std::to_string(place.column) + ": " +
               problem.message + " [" + problem.code + "]";
        for (const std::string& hint : problem.hints) {
            all += "; " + hint;
        }
        all += "\n";
    }
    EXPECT_EQ(reading->made == nullptr, reading->problems.error_count() > 0);
    return all;
}

std::string in_part(const std::string& detail) {
    return problems_of(
        template_with("\n<g id=\"coat\" data-cloth=\"coat.cloth\"><path class=\"shape\" d=\"M 0 0 "
                      "H 9 V 9 Z\"/>\n" +
                      detail + "</g>"));
}

TEST(TemplateReader, ReadsAllLayers) {
    const auto reading = read_text(template_with(kGoodPart));
    ASSERT_TRUE(reading->made);
    EXPECT_EQ(reading->made->view, "front");
    EXPECT_EQ(reading->made->title, "Trial");
    EXPECT_EQ(reading->made->frame.left, -100);
    EXPECT_EQ(reading->made->frame.bottom, 400);
    EXPECT_EQ(reading->made->parts.size(), 1U);
    EXPECT_EQ(reading->made->guides.size(), 4U);
    EXPECT_EQ(reading->made->zones.at("body").bulge, 10);
    EXPECT_EQ(reading->made->anchors.at("top").facing, (Point{0, -1}));
}

TEST(TemplateReader, EditorsLeftoversAreSkippedAndTransformsApplied) {
    const auto reading = read_text(
        R"svg(<svg xmlns="http://www.w3.org/2000/svg" xmlns:ed="urn:ed" viewBox="0 0 10 10" data-view="detail">
<ed:view zoom="2"/><metadata/><defs/>
<g id="parts" transform="translate(5 0)"><g transform="scale(2)">
<g id="a" data-cloth="#102030"><path class="shape" d="M 0 0 H 1 V 1 Z"/></g></g></g></svg>)svg");
    ASSERT_TRUE(reading->made);
    EXPECT_EQ(reading->made->parts.front().shape.bounds().right, 7);
}

TEST(TemplateReader, SaysWhereXmlBreaks) {
    EXPECT_EQ(problems_of("<svg>\n<g></svg>"),
              "2:6: this is not well-formed XML: start-end tags mismatch [template.xml]\n");
}

TEST(TemplateReader, WantsAnSvgWithAFrameAViewAndParts) {
    EXPECT_EQ(
        problems_of("<html/>"),
        "1:2: a template is an SVG file: its first element should be 'svg' [template.not-svg]\n");
    EXPECT_EQ(
        problems_of("<svg/>"),
        "1:2: the svg element needs data-view: front, back, side, detail, flat or ornament "
        "[template.missing]\n"
        "1:2: the svg element needs a viewBox of four numbers: left, top, width, height in mm "
        "[template.frame]\n"
        "1:2: there is no layer 'parts', so there is nothing to draw [template.missing]\n");
}

TEST(TemplateReader, SuggestsTheNameThatWasMeant) {
    EXPECT_EQ(problems_of(template_with("\n<g id=\"coat\" data-cloth=\"coat.clot\" "
                                        "data-zone=\"bodi\" data-on=\"coet\" data-shadw=\"3\">"
                                        "<path class=\"shape\" d=\"M 0 0 H 9 V 9 Z\"/></g>")),
              "7:14: there is no property 'coat.clot' [template.unknown-property]; did you mean "
              "'coat.cloth'?\n"
              "7:69: nothing here is called 'data-shadw' [template.unknown-attribute]; did you "
              "mean 'data-shade'?\n"
              "7:37: there is no zone 'bodi' [template.unknown-name]; did you mean 'body'?\n"
              "7:54: there is no part 'coet' [template.unknown-name]; did you mean 'coat'?\n");
}

TEST(TemplateReader, APartNeedsClothAndOneShape) {
    EXPECT_EQ(
        problems_of(template_with("\n<g id=\"coat\"><path class=\"seam\" d=\"M 0 0 L 9 9\"/></g>")),
        "7:2: the part 'coat' needs data-cloth: what it is made of [template.missing]\n"
        "7:2: the part 'coat' has no path with class=\"shape\" [template.missing]\n");
    EXPECT_EQ(in_part("<path class=\"shape\" d=\"M 0 0 H 9 V 9 Z\"/>"),
              "8:2: the part 'coat' has a second shape [template.two-shapes]\n");
}

TEST(TemplateReader, EveryFaultOfADetailIsNamed) {
    EXPECT_EQ(in_part("<path class=\"seem\" d=\"M 0 0 L 9 9\"/>"),
              "8:7: there is no class 'seem' [template.unknown-class]; did you mean 'seam'?\n");
    EXPECT_EQ(in_part("<path class=\"buttons\" data-along=\"edg\"/>"),
              "8:23: there is no guide 'edg' [template.unknown-name]; did you mean 'edge'?\n"
              "8:2: this trimming needs data-number: how many, or the property that says so "
              "[template.missing]\n");
    EXPECT_EQ(in_part("<path class=\"buttons\" data-along=\"edge\" data-number=\"coat.cloth\"/>"),
              "8:41: 'coat.cloth' is not a count [template.not-a-count]\n");
    EXPECT_EQ(in_part("<path class=\"seam\" d=\"M 0 0 L 9 9\" data-width=\"wide\"/>"),
              "8:36: data-width should be a number from 0.1 to 50, not 'wide' [template.number]\n");
    EXPECT_EQ(in_part("<path class=\"marks\" data-between=\"low\" data-sleeve=\"left\"/>"),
              "8:2: this needs data-between: the two edges of its band [template.missing]\n");
    EXPECT_EQ(in_part("<text class=\"seam\">x</text>"),
              "8:2: 'text' cannot be used in a template [template.undrawable]; draw it as a path; "
              "clones are unlinked and text is turned "
              "into paths in the editor\n");
}

TEST(TemplateReader, NamesAreUsedOnce) {
    EXPECT_EQ(problems_of(template_with(std::string(kGoodPart) + "\n" + kGoodPart)),
              "7:4: the name 'coat' is used twice [template.duplicate-id]\n");
}

TEST(TemplateReader, BoundsWhatItReads) {
    std::string many;
    for (int i = 0; i < 21000; ++i) {
        many += "<path class=\"seam\" d=\"M 0 0 L 9 9\"/>";
    }
    EXPECT_NE(in_part(many).find("a template may have at most 20000 elements"), std::string::npos);
    std::string deep;
    for (int i = 0; i < 3000; ++i) {
        deep += "<g>";
    }
    EXPECT_FALSE(problems_of(template_with(deep)).empty());
    EXPECT_EQ(problems_of("<svg>\xff</svg>"),
              "1:6: this file is not UTF-8 text [template.not-utf8]; save it again from the vector "
              "editor as plain SVG\n");
}

}  // namespace
}  // namespace platewright
