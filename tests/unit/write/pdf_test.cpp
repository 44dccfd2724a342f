// SPDX-License-Identifier: MIT
// PDF: bytes, dates, sizes. What other programs make of it is in outside_test.cpp.
#include <gtest/gtest.h>

#include <thread>

#include "sample.h"
#include "write/write.h"

namespace platewright {
namespace {

bool has(const std::string& bytes, const std::string& what) {
    return bytes.find(what) != std::string::npos;
}

TEST(WritePdf, DatesItselfOnlyWhenTold) {
    const Typesetter type;
    const std::string dated = write_pdf(test::sample(), type, 1'700'000'000);
    EXPECT_TRUE(has(dated, "/CreationDate (D:20231114221320Z)"));
    EXPECT_FALSE(has(write_pdf(test::sample(), type, std::nullopt), "CreationDate"));
    EXPECT_FALSE(has(write_pdf(test::sample(), type, INT64_MAX), "CreationDate"));
    EXPECT_TRUE(has(write_pdf(test::sample(), type, 0), "(D:19700101000000Z)"));
}

TEST(WritePdf, HoldsNoPicturesAndNoSoftMasks) {
    const std::string bytes = write_pdf(test::sample(), Typesetter(), std::nullopt);
    EXPECT_FALSE(has(bytes, "/SMask"));
    EXPECT_FALSE(has(bytes, "/Image"));
    EXPECT_FALSE(has(bytes, "/XObject"));
}

TEST(WritePdf, HasOneBookmarkAPage) {
    Document document = test::sample();
    document.title = "Coat";
    document.pages.push_back(document.pages[0]);
    document.pages[1].width = 200;
    const std::string bytes = write_pdf(document, Typesetter(), std::nullopt);
    EXPECT_TRUE(has(bytes, "/Title (Coat \\(1\\))"));
    EXPECT_TRUE(has(bytes, "/Title (Coat \\(2\\))"));
    EXPECT_TRUE(has(bytes, "/MediaBox [0 0 340.157 255.118]"));
    EXPECT_TRUE(has(bytes, "/MediaBox [0 0 566.929 255.118]"));
}

TEST(WritePdf, WritesTheOutlineOfTheDocument) {
    Document document = test::sample();
    document.pages.push_back(document.pages[0]);
    const double height = document.pages[0].height;
    document.outline = {{"What to get", 1, 0, 0},
                        {"Where the marks go", 1, 1, height / 2},
                        {"Chevrons (two)", 2, 1, height},
                        {"nowhere", 1, 7, 0}};
    const std::string bytes = write_pdf(document, Typesetter(), std::nullopt);
    EXPECT_TRUE(has(bytes, "/Title (What to get)"));
    EXPECT_TRUE(has(bytes, "/Title (Chevrons \\(two\\))"));
    EXPECT_TRUE(has(bytes, "/XYZ null 255.1 null]"));
    EXPECT_TRUE(has(bytes, "/XYZ null 127.6 null]"));
    EXPECT_TRUE(has(bytes, "/XYZ null 0 null]"));
    EXPECT_TRUE(has(bytes, "/Count 3 >>"));
    EXPECT_FALSE(has(bytes, "nowhere"));
}

TEST(WritePdf, AnOutlineDeeperThanAnythingEnds) {
    Document document = test::sample();
    document.outline = {{"deep", 9, 0, 0}, {"negative", -4, 0, 0}, {"deeper", 2'000'000, 0, 0}};
    EXPECT_TRUE(has(write_pdf(document, Typesetter(), std::nullopt), "/Title (deeper)"));
}

TEST(WritePdf, WritesLinks) {
    Document document = test::sample();
    const double height = document.pages[0].height;
    document.pages[0].links = {{{10, height - 20, 30, height - 10}, "", 0, 0},
                               {{0, 0, 10, 10}, "mailto:a(b)@example.org", 0, 0},
                               {{0, 0, 10, 10}, "", 5, 0}};
    const std::string bytes = write_pdf(document, Typesetter(), std::nullopt);
    EXPECT_TRUE(has(bytes, "/Rect [28.35 28.35 85.04 56.69 ] /Dest ["));
    EXPECT_TRUE(has(bytes, "/URI (mailto:a\\(b\\)@example.org)"));
    EXPECT_FALSE(has(write_pdf(test::sample(), Typesetter(), std::nullopt), "/Annots"));
}

// A link to a name without a place would be dead, and a place that nothing leads to is ballast.
TEST(WritePdf, LinksLeadToPlacesByTheirNames) {
    Document document = test::sample();
    const double height = document.pages[0].height;
    document.pages[0].links = {{{0, 0, 10, 10}, {}, 0, 0, "key-2"},
                               {{0, 0, 10, 10}, {}, 0, 0, "nowhere"}};
    document.pages[0].places = {{"key-2", {5, height / 2}}, {"lonely", {5, 5}}};
    const std::string bytes = write_pdf(document, Typesetter(), std::nullopt);
    EXPECT_TRUE(has(bytes, "/Dest (key-2)"));
    EXPECT_TRUE(has(bytes, "/Names [ (key-2) ["));
    EXPECT_TRUE(has(bytes, "/XYZ null 127.6 null] ]"));
    EXPECT_FALSE(has(bytes, "nowhere"));
    EXPECT_FALSE(has(bytes, "lonely"));
}

TEST(WritePdf, HoldsMetadataInPlainText) {
    Document document = test::sample();
    document.title = "Lapels & cuffs <1784>";
    document.language = "de";
    const std::string bytes = write_pdf(document, Typesetter(), 0);
    EXPECT_TRUE(
        has(bytes, "<rdf:li xml:lang=\"x-default\">Lapels &amp; cuffs &lt;1784&gt;</rdf:li>"));
    EXPECT_TRUE(has(bytes, "<dc:language><rdf:Bag><rdf:li>de</rdf:li>"));
    EXPECT_TRUE(has(bytes, "<xmp:CreateDate>1970-01-01T00:00:00Z</xmp:CreateDate>"));
    EXPECT_FALSE(has(write_pdf(document, Typesetter(), std::nullopt), "CreateDate"));
}

TEST(WritePdf, PacksShiftedCopiesOfAnOutline) {
    Document document;
    document.pages.emplace_back();
    Drawing drawing;
    Path zigzag;
    zigzag.move_to({0, 0});
    for (int i = 1; i < 60; ++i) {
        zigzag.cubic_to({i * 3.1, i * 1.7}, {i * 2.3, i * 0.9}, {i * 1.1, (i * 7919 % 613) / 10.0});
    }
    const PathId path = drawing.add(zigzag);
    const auto size_with = [&](int copies) {
        Document made = document;
        Drawing repeated = drawing;
        for (int i = 0; i < copies; ++i) {
            repeated.root.children.emplace_back(
                Shape{path, {0.1 * i, 0.2 * i}, Fill{{}, 0.03}, {}});
        }
        made.pages[0].items.push_back({{}, 0.14, std::move(repeated)});
        return write_pdf(made, Typesetter(), std::nullopt).size();
    };
    EXPECT_LT(size_with(100), size_with(1) + 100 * 40);
}

TEST(WritePdf, RefusesADocumentWithoutPages) {
    EXPECT_THROW(write_pdf({}, Typesetter(), std::nullopt), CannotWrite);
}

TEST(WritePdf, GivesTheSameBytesInEveryThread) {
    const Document document = test::sample();
    const std::string expected = write_pdf(document, Typesetter(), 0);
    std::vector<std::string> found(4);
    std::vector<std::thread> threads;
    threads.reserve(found.size());
    for (std::string& bytes : found) {
        threads.emplace_back([&] { bytes = write_pdf(document, Typesetter(), 0); });
    }
    for (std::thread& thread : threads) {
        thread.join();
    }
    for (const std::string& bytes : found) {
        EXPECT_EQ(bytes, expected);
    }
}

}  // namespace
}  // namespace platewright
