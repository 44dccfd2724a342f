// SPDX-License-Identifier: MIT
// What other programs make of our files: xmllint, librsvg, qpdf, poppler.
#include <gtest/gtest.h>

#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "picture.h"
#include "sample.h"
#include "write/write.h"

namespace platewright {
namespace {

/// Averaged over 1 mm squares (10 pixels), two programs' pictures of shapes differ by less than
/// this, of 255.
constexpr double kShapes = 12;
/// Letters differ more: each program smooths and places them its own way.
constexpr double kLetters = 40;
constexpr double kMean = 1.5;

/// A folder of its own for each test, with the sample in every format.
class Outside : public ::testing::Test {
  protected:
    void SetUp() override {
        const auto* test = ::testing::UnitTest::GetInstance()->current_test_info();
        folder_ = std::filesystem::path("outside") / test->name();
        std::filesystem::create_directories(folder_);
        const Typesetter type;
        put("page.svg", write_svg(test::sample(), 0, type));
        put("page.pdf", write_pdf(test::sample(), type, 1'700'000'000));
        put("page.png", write_png(test::sample(), 0, type, 254));
    }

    void put(const std::string& name, const std::string& bytes) const {
        std::ofstream(folder_ / name, std::ios::binary) << bytes;
    }

    [[nodiscard]] std::string get(const std::string& name) const {
        std::ifstream file(folder_ / name, std::ios::binary);
        std::stringstream bytes;
        bytes << file.rdbuf();
        return bytes.str();
    }

    /// Runs a command in the folder; it must succeed. Returns all it printed.
    [[nodiscard]] std::string run(const std::string& command) const {
        const std::string line = "cd '" + folder_.string() + "' && " + command + " 2>&1";
        std::FILE* pipe = popen(line.c_str(), "r");
        if (pipe == nullptr) {
            ADD_FAILURE() << "cannot run " << command;
            return {};
        }
        std::string printed;
        std::array<char, 4096> part{};
        for (std::size_t count = 1; count > 0;) {
            count = std::fread(part.data(), 1, part.size(), pipe);
            printed.append(part.data(), count);
        }
        EXPECT_EQ(pclose(pipe), 0) << command << "\n" << printed;
        return printed;
    }

  private:
    std::filesystem::path folder_;
};

TEST_F(Outside, TheSvgIsGoodXml) {
    EXPECT_EQ(run("xmllint --noout page.svg"), "");
}

TEST_F(Outside, ThePdfIsSound) {
    EXPECT_NE(run("qpdf --check page.pdf").find("No syntax or stream encoding errors found"),
              std::string::npos);
}

TEST_F(Outside, ThePdfHasNoPictures) {
    // Two lines of heading, nothing below.
    const std::string printed = run("pdfimages -list page.pdf");
    EXPECT_EQ(std::count(printed.begin(), printed.end(), '\n'), 2) << printed;
}

TEST_F(Outside, ThePdfHasEveryFontEmbeddedAsASubsetWithItsCharacters) {
    std::istringstream lines(run("pdffonts page.pdf"));
    std::string line;
    std::getline(lines, line);
    std::getline(lines, line);
    int fonts = 0;
    while (std::getline(lines, line)) {
        EXPECT_NE(line.find("yes yes yes"), std::string::npos) << line;
        EXPECT_EQ(line[6], '+') << line;
        ++fonts;
    }
    EXPECT_GE(fonts, 6);
}

TEST_F(Outside, ThePdfSaysWhatItIs) {
    const std::string printed = run("pdfinfo page.pdf");
    for (const char* line : {"Title:           Sample “page” (1)",
                             "Author:          A. Müller",
                             "Subject:         Everything a writer meets",
                             "Creator:         Platewright",
                             "Page size:       340.157 x 255.118 pts",
                             "Pages:           1"}) {
        EXPECT_NE(printed.find(line), std::string::npos) << line << "\n" << printed;
    }
}

TEST_F(Outside, TheWordsOfThePdfCanBeFound) {
    const std::string printed = run("pdftotext -layout page.pdf -");
    for (const char* words : {"The officer's fifth affair, 1784 & <1790>",
                              "Шапка и кафтан",
                              "שלום עולם",
                              "TANNBRUCK",
                              "flush right",
                              "upright"}) {
        EXPECT_NE(printed.find(words), std::string::npos) << words << "\n" << printed;
    }
}

TEST_F(Outside, EveryProgramDrawsTheSamePicture) {
    std::ignore = run("rsvg-convert -w 1200 -h 900 -o rsvg.png page.svg");
    std::ignore = run("pdftoppm -r 254 -png -singlefile page.pdf poppler");
    const test::Picture ours = test::decode_png(get("page.png"));
    constexpr int kSquare = 10;
    constexpr int kWordsFrom = 340;
    for (const char* name : {"rsvg.png", "poppler.png"}) {
        const test::Picture theirs = test::decode_png(get(name));
        const test::Difference shapes = test::difference(test::cut(ours, 0, 0, 1200, kWordsFrom),
                                                         test::cut(theirs, 0, 0, 1200, kWordsFrom),
                                                         kSquare);
        EXPECT_LT(shapes.greatest, kShapes) << name;
    }
    // librsvg joins no ligatures and thickens the roman for the bold face: only poppler's letters
    // are compared.
    const test::Picture poppler = test::decode_png(get("poppler.png"));
    const test::Difference all = test::difference(ours, poppler, kSquare);
    EXPECT_LT(all.greatest, kLetters);
    EXPECT_LT(all.mean, kMean);
}

}  // namespace
}  // namespace platewright
