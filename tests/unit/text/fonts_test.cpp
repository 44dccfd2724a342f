// SPDX-License-Identifier: MIT
// Finding the type family.
#include "text/fonts.h"

#include <gtest/gtest.h>

#include <filesystem>

#include "text/typesetter.h"

namespace platewright {
namespace {

TEST(Fonts, EveryFaceHasItsOwnRowInTheOrderOfTheFaces) {
    for (std::size_t i = 0; i < face_names().size(); ++i) {
        EXPECT_EQ(static_cast<std::size_t>(face_names()[i].face), i);
        EXPECT_EQ(face_name(face_names()[i].face).file, face_names()[i].file);
    }
}

TEST(Fonts, EveryFaceHasAFile) {
    for (const FaceName& face : face_names()) {
        const std::filesystem::path file = find_font_file(face);
        EXPECT_EQ(file.filename(), face.file);
        EXPECT_TRUE(std::filesystem::is_regular_file(file)) << file;
    }
}

TEST(Fonts, AFaceThatIsNowhereSaysHowToInstallIt) {
    const FaceName absent{Face::roman, "NoSuchFace.otf", "No Such Family", "None", false, false};
    try {
        find_font_file(absent);
        FAIL() << "found a file for a face that does not exist";
    } catch (const FontsMissing& problem) {
        EXPECT_STREQ(problem.what(),
                     "the type family EB Garamond is not installed (no file NoSuchFace.otf); "
                     "install the packages "
                     "fonts-ebgaramond and fonts-ebgaramond-extra");
    }
}

TEST(Fonts, TheConfigurationOfAFaceKnowsNothingElse) {
    for (const FaceName& face : face_names()) {
        const FcFontSet* system = FcConfigGetFonts(face_fonts(face.face), FcSetSystem);
        EXPECT_TRUE(system == nullptr || system->nfont == 0);
        EXPECT_EQ(FcConfigGetFonts(face_fonts(face.face), FcSetApplication)->nfont, 1);
    }
}

}  // namespace
}  // namespace platewright
