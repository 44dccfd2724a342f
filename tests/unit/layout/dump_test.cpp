// SPDX-License-Identifier: MIT
// The text form of a page.
#include <gtest/gtest.h>

#include "layout/layout.h"

namespace platewright {
namespace {

TEST(DumpDocument, ListsOwnLayersAndOnlyPlacesComposedDrawings) {
    Document document;
    document.title = "A";
    Page page;
    page.paper = {0xf7, 0xf2, 0xe6};
    Drawing own;
    own.root.name = "frame";
    own.root.children.emplace_back(Shape{own.add(rectangle({1, 2, 3, 4.005})),
                                         {1, 0},
                                         Fill{{0, 0, 0}, 0.5, false},
                                         Stroke{{0xff, 0, 0}, 0.25, 1, {}}});
    own.root.children.emplace_back(
        Text{"front", {5, 6}, Face::italic, 3, 0.2, {0, 0, 0}, Align::middle, 90});
    Drawing brought;
    brought.root.name = "figure-1-front";
    Group inner;
    inner.name = "coat";
    inner.children.emplace_back(
        Shape{brought.add(rectangle({0, 0, 1, 1})), {}, Fill{{0, 0, 0}, 1, false}, std::nullopt});
    brought.root.children.emplace_back(inner);
    page.items.push_back({{}, 1, own});
    page.items.push_back({{10, 20}, 0.1, brought});
    document.pages.push_back(page);
    EXPECT_EQ(dump(document), R"(document "A"
author ""
subject ""
description ""
language en
page 210 x 297 mm, paper #f7f2e6
  layer frame
    shape [2 2 4 4.01] fill #000000 alpha 0.5 line #ff0000 0.25
    text "front" middle (5, 6) italic 3 #000000 tracking 0.2 turned 90
  layer figure-1-front at (10, 20) times 0.1
)");
}

}  // namespace
}  // namespace platewright
