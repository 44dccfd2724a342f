// SPDX-License-Identifier: MIT
// The scale of figures and of the enlarged button.
#include <gtest/gtest.h>

#include "layout/ruler.h"
#include "layout/style.h"
#include "sample.h"

namespace platewright {
namespace {

const std::vector<Rect> kTwoMen{{-440, -170, 440, 1820}, {-440, -170, 440, 1820}};

double scale_on(const char* paper, const Captions& captions) {
    const Typesetter type;
    return plate_scale(kTwoMen, captions, *parse_paper(paper), type);
}

TEST(PlateScale, FillsTheSheetWhenThereIsLittleToSay) {
    Captions title_only;
    title_only.title = "Private";
    // Two frames of 880 mm side by side: 176 mm at 1 : 10 on 210, 251 at 1 : 7 on 297, 126 at 1 :
    // 14 on 148.
    EXPECT_EQ(scale_on("A4", title_only), 10);
    EXPECT_EQ(scale_on("A3", title_only), 7);
    EXPECT_EQ(scale_on("A5", title_only), 14);
}

TEST(PlateScale, GivesWayToWords) {
    EXPECT_GT(scale_on("A4", sample::crowded_captions()), scale_on("A4", sample::captions()));
}

TEST(PlateScale, GivesWayOnlySoFar) {
    Captions endless = sample::captions();
    endless.notes.assign(400,
                         "A note of some length that nobody will read, and that is said again.");
    EXPECT_LE(scale_on("A4", endless), 10 * 1.7);
}

TEST(PlateScale, IsAtHomeOnEveryPaper) {
    for (const char* paper : {"A3",
                              "A4",
                              "A5",
                              "A6",
                              "B4",
                              "B5",
                              "letter",
                              "legal",
                              "tabloid",
                              "A4-landscape",
                              "80x80mm",
                              "80x2000mm",
                              "2000x80mm",
                              "2000x2000mm"}) {
        const Typesetter type;
        const Paper sheet = *parse_paper(paper);
        const double scale = plate_scale(kTwoMen, sample::captions(), sheet, type);
        EXPECT_LT(2 * 880 / scale, sheet.width) << paper;
        EXPECT_LT(1990 / scale, sheet.height) << paper;
    }
}

TEST(PlateScale, CopesWithFramesOfAnySize) {
    const Typesetter type;
    const Paper a4;
    EXPECT_GE(plate_scale({}, sample::captions(), a4, type), 1);
    EXPECT_GE(plate_scale({{0, 0, 1, 1}}, sample::captions(), a4, type), 1);
    EXPECT_GT(plate_scale({{0, 0, 1e5, 1e5}}, sample::captions(), a4, type), 100);
}

TEST(DetailScale, IsAUsualScaleThatFillsTheRoundel) {
    const Rect frame{-10, -10, 10, 10};
    EXPECT_DOUBLE_EQ(detail_scale(frame, *parse_paper("A4")), 1);
    EXPECT_DOUBLE_EQ(detail_scale(frame, *parse_paper("A3")), 1 / 1.25);
    EXPECT_DOUBLE_EQ(detail_scale(frame, *parse_paper("A6")), 2);
    EXPECT_GT(detail_scale({0, 0, 0, 0}, *parse_paper("A4")), 0);
}

// "waistco/at, front" was evener than "waistcoat,/front".
TEST(Ruler, LinesAreMadeEvenWithoutBreakingAWord) {
    const Typesetter type;
    sheet::Ruler ruler(type);
    const Type face = sheet::italic(3);
    const std::string words = "waistcoat, front";
    const double room = ruler.width("waistcoat,", face) + 0.1;
    EXPECT_EQ(ruler.even_lines(words, face, room),
              (std::vector<std::string>{"waistcoat,", "front"}));
}

// Two small garments side by side: their labels keep apart and whole.
TEST(Plate, LabelsOfSmallFiguresKeepTheirWordsWhole) {
    const Typesetter type;
    Diagnostics problems;
    const Paper paper = *parse_paper("A4");
    Captions captions;
    captions.title = "Private";
    std::vector<Figure> figures;
    for (const char* title : {"coat, front", "gaiter, outer side", "gaiter, inner side"}) {
        Figure figure = sample::man("flat", 30);
        figure.title = title;
        if (figure.title != "coat, front") {
            figure.frame = {-150, -170, 150, 1820};
        }
        figures.push_back(std::move(figure));
    }
    const Document document =
        lay_out_plate({figures, std::nullopt, {}}, captions, paper, type, problems);
    const std::string text = dump(document);
    EXPECT_NE(text.find("\"gaiter,\""), std::string::npos);
    EXPECT_NE(text.find("\"coat, front\""), std::string::npos);
}

}  // namespace

TEST(Ruler, LeavesNoShortWordAloneOnTheLastLine) {
    const Typesetter type;
    sheet::Ruler ruler(type);
    const Type face = sheet::roman(3);
    const std::string words = "lining, collar piping, waistcoat, breeches, hat tuft";
    const double room = ruler.width("lining, collar piping, waistcoat, breeches, hat", face) + 0.5;
    ASSERT_EQ(ruler.lines(words, face, room).back(), "tuft");
    const auto lines = ruler.lines_in_company(words, face, room);
    EXPECT_EQ(lines.size(), 2U);
    EXPECT_NE(lines.back().find(' '), std::string::npos);
}

TEST(Ruler, PartsNoItemOfAListForCompany) {
    const Typesetter type;
    sheet::Ruler ruler(type);
    const Type face = sheet::roman(3);
    const double room = ruler.width("garters, shoes, cartridge box,", face) + 0.5;
    EXPECT_EQ(ruler.lines_in_company("garters, shoes, cartridge box, scabbard", face, room).back(),
              "scabbard");
}

}  // namespace platewright
