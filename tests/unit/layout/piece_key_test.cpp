// SPDX-License-Identifier: MIT
// The key over pieces names the lines that occur on them; the bar of the scale is as long as it
// says.
#include "layout/piece_key.h"

#include <gtest/gtest.h>

#include <set>

namespace platewright {
namespace {

std::set<std::string> words_of(const Group& group) {
    std::set<std::string> words;
    for (const Node& node : group.children) {
        if (const auto* text = std::get_if<Text>(&node)) {
            words.insert(text->words);
        }
    }
    return words;
}

PatternPiece square() {
    PatternPiece piece;
    piece.outline = piece.cut = {{0, 0}, {100, 0}, {100, 100}, {0, 100}};
    return piece;
}

std::set<std::string> key_of(const PatternPiece& piece) {
    const Typesetter type;
    sheet::Ruler ruler(type);
    sheet::Pen pen("key");
    EXPECT_GT(draw_line_key({piece}, Language::english, {}, 160, ruler, pen), 0);
    return words_of(pen.root());
}

TEST(PieceKey, NamesOnlyWhatOccurs) {
    PatternPiece piece = square();
    EXPECT_EQ(key_of(piece), (std::set<std::string>{"finished edge: add for seams", "grain"}));
    piece.cut = {{-10, -10}, {110, -10}, {110, 110}, {-10, 110}};
    piece.buttons = {{50, 50}};
    piece.inlay_line = {{0, 0}, {0, 100}};
    piece.notches = {{{0, 50}, {-10, 50}, true}};
    piece.seams = {{"side seam", Join::neighbour, {{0, 0}, {0, 100}}, "A"}};
    EXPECT_EQ(key_of(piece),
              (std::set<std::string>{"A seam: sewn to the edge with that letter",
                                     "button",
                                     "cut here",
                                     "grain",
                                     "limit of the inlay",
                                     "notch",
                                     "notch of a hind edge",
                                     "seam"}));
}

TEST(PieceKey, TheBarIsToScale) {
    const Typesetter type;
    sheet::Ruler ruler(type);
    const sheet::Slab bar = scale_bar(Language::english, 10, ruler);
    ASSERT_EQ(bar.pictures.size(), 1U);
    const Drawing& drawing = bar.pictures.front().drawing;
    Rect black;
    for (const Node& node : drawing.root.children) {
        if (const auto* shape = std::get_if<Shape>(&node); shape != nullptr && shape->fill) {
            const Rect box = drawing.paths[shape->path].bounds();
            black.include(Point{box.left, box.top});
            black.include(Point{box.right, box.bottom});
        }
    }
    // Five squares of 100 mm, the first and the last filled.
    EXPECT_NEAR(black.width(), 50, 1e-6);
    EXPECT_TRUE(words_of(drawing.root).contains("500 mm"));
    EXPECT_TRUE(words_of(drawing.root).contains("squares of 100 mm"));
}

}  // namespace
}  // namespace platewright
