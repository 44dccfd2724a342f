// SPDX-License-Identifier: MIT
// Sheets without colour, and whether what is written can be read.
#include "layout/printing.h"

#include <gtest/gtest.h>

#include <array>

#include "layout/style.h"
#include "sample.h"
#include "words/tincture_messages.h"

namespace platewright {
namespace {

/// WCAG 2.1, success criterion 1.4.3, level AA.
constexpr double kReadable = 4.5;

bool is_grey(Colour c) {
    return c.red == c.green && c.green == c.blue;
}

void expect_grey(const Group& group) {
    for (const Node& node : group.children) {
        if (const auto* shape = std::get_if<Shape>(&node)) {
            EXPECT_TRUE(!shape->fill || is_grey(shape->fill->colour));
            EXPECT_TRUE(!shape->stroke || is_grey(shape->stroke->colour));
        } else if (const auto* text = std::get_if<Text>(&node)) {
            EXPECT_TRUE(is_grey(text->colour));
            EXPECT_GE(contrast_ratio(text->colour, {255, 255, 255}), kReadable) << text->words;
        } else if (const auto* inner = std::get_if<Group>(&node)) {
            expect_grey(*inner);
        }
    }
}

TEST(Printing, InGreysHasNoColourLeftOnWhitePaper) {
    const Typesetter type;
    Diagnostics problems;
    Document document = sample::plate(sample::captions(), Paper{}, type, problems);
    const std::string before = dump(document);
    prepare_for(Ink::colour, document);
    EXPECT_EQ(dump(document), before);
    prepare_for(Ink::greyscale, document);
    for (const Page& page : document.pages) {
        EXPECT_EQ(to_hex(page.paper), "#ffffff");
        for (const Placed& item : page.items) {
            expect_grey(item.drawing.root);
        }
    }
}

TEST(Printing, InksReadOnEveryGround) {
    constexpr Colour white{255, 255, 255};
    for (const Colour ground : {sheet::kPaper, sheet::kPlateTone, white}) {
        for (const Colour ink : {sheet::kInk, sheet::kSoftInk}) {
            EXPECT_GE(contrast_ratio(ink, ground), kReadable) << to_hex(ink) << to_hex(ground);
        }
    }
}

TEST(Printing, EveryTinctureHasItsWords) {
    ASSERT_EQ(messages::kTinctureWords.size(), tinctures().size());
    for (TinctureId id = 0; id < tinctures().size(); ++id) {
        EXPECT_EQ(messages::kTinctureWords.at(id).name.text(Language::english),
                  tinctures()[id].name);
    }
}

TEST(Printing, HatchedKeysNameTheirTincture) {
    const Typesetter type;
    Diagnostics problems;
    Captions captions = sample::captions();
    captions.key.front().tincture = *find_tincture("vert");
    captions.key.back().tincture = *find_tincture("buff");
    captions.ink = Ink::hatched;
    const std::string text = dump(sample::plate(captions, Paper{}, type, problems));
    EXPECT_NE(text.find("vert: falling lines"), std::string::npos);
    EXPECT_NE(text.find("buff (not heraldic): sparse dots"), std::string::npos);
}

}  // namespace
}  // namespace platewright
