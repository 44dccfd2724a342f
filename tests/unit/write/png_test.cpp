// SPDX-License-Identifier: MIT
// PNG: size, density, title, colours, limits.
#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <thread>

#include "picture.h"
#include "sample.h"
#include "write/write.h"

namespace platewright {
namespace {

std::size_t number(const std::string& bytes, std::size_t at) {
    std::size_t value = 0;
    for (std::size_t i = at; i < at + 4; ++i) {
        value = value << 8U | static_cast<unsigned char>(bytes.at(i));
    }
    return value;
}

/// Where the data of a chunk begin.
std::size_t chunk(const std::string& bytes, const std::string& name) {
    for (std::size_t at = 8; at + 8 <= bytes.size(); at += number(bytes, at) + 12) {
        if (bytes.compare(at + 4, 4, name) == 0) {
            return at + 8;
        }
    }
    ADD_FAILURE() << "no chunk " << name;
    return 0;
}

TEST(WritePng, RecordsSizeDensityAndTitle) {
    const std::string bytes = write_png(test::sample(), 0, Typesetter(), 254);
    EXPECT_EQ(number(bytes, chunk(bytes, "IHDR")), 1200U);
    EXPECT_EQ(number(bytes, chunk(bytes, "IHDR") + 4), 900U);
    EXPECT_EQ(number(bytes, chunk(bytes, "pHYs")), 10'000U);
    EXPECT_EQ(number(bytes, chunk(bytes, "pHYs") + 4), 10'000U);
    EXPECT_EQ(bytes.at(chunk(bytes, "pHYs") + 8), 1);
    EXPECT_EQ(bytes.compare(chunk(bytes, "iTXt"), 6, std::string("Title\0", 6)), 0);
    EXPECT_NE(bytes.find("Sample “page” (1)"), std::string::npos);
}

TEST(WritePng, PaintsColoursAsGiven) {
    const test::Picture picture = test::decode_png(write_png(test::sample(), 0, Typesetter(), 254));
    const auto expect = [&](double x_mm, double y_mm, Colour colour) {
        const int x = static_cast<int>(x_mm * 10);
        const int y = static_cast<int>(y_mm * 10);
        EXPECT_NEAR(picture.at(x, y, 0), colour.red, 1) << x_mm << " " << y_mm;
        EXPECT_NEAR(picture.at(x, y, 1), colour.green, 1) << x_mm << " " << y_mm;
        EXPECT_NEAR(picture.at(x, y, 2), colour.blue, 1) << x_mm << " " << y_mm;
    };
    const Colour paper = {0xf7, 0xf2, 0xe6};
    const Colour red = {0xb2, 0x32, 0x30};
    const Colour blue = {0x28, 0x38, 0x5f};
    expect(2, 2, paper);
    expect(10, 10, red);
    // Half of the blue over the red, and over the paper.
    expect(20, 20, mix(red, blue, 0.5));
    expect(30, 28, mix(paper, blue, 0.5));
    // Within the larger copy of the wash, and just beside it.
    const Colour ink = {0x22, 0x1c, 0x18};
    expect(8 + 88 * 0.11, 7 + 50 * 0.11, mix(red, ink, 0.1));
    expect(8 + 80 * 0.11, 7 + 50 * 0.11, red);
    // The ring and its hole.
    expect(8 + 330 * 0.11, 7 + 90 * 0.11 - 6, blue);
    expect(8 + 330 * 0.11, 7 + 90 * 0.11, paper);
    // Outside the clip, inside its cover.
    expect(8 + 600 * 0.11, 7 + 30 * 0.11, paper);
}

TEST(WritePng, RefusesWhatWouldNotFitInMemory) {
    const Document document = test::sample();
    const Typesetter type;
    for (const double dpi : {20'000.0,
                             1e9,
                             0.01,
                             0.0,
                             -300.0,
                             std::numeric_limits<double>::infinity(),
                             std::numeric_limits<double>::quiet_NaN()}) {
        EXPECT_THROW(write_png(document, 0, type, dpi), CannotWrite) << dpi;
    }
    try {
        write_png(document, 0, type, 6000);
        FAIL();
    } catch (const CannotWrite& problem) {
        EXPECT_STREQ(problem.what(),
                     "a page of 120 x 90 mm at 6000 dpi would be 28346 x 21260 pixels; choose "
                     "another --dpi, or PDF or "
                     "SVG for large prints");
    }
    EXPECT_THROW(write_png(document, 1, type, 100), std::out_of_range);
}

TEST(WritePng, GivesTheSameBytesInEveryThread) {
    const Document document = test::sample();
    const std::string expected = write_png(document, 0, Typesetter(), 100);
    std::vector<std::string> found(4);
    std::vector<std::thread> threads;
    threads.reserve(found.size());
    for (std::string& bytes : found) {
        threads.emplace_back([&] { bytes = write_png(document, 0, Typesetter(), 100); });
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
