// SPDX-License-Identifier: MIT
// Pieces of a whole man on tiles of paper.
#include "layout/tiles.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <variant>

#include "tailored.h"

namespace platewright::cli {
namespace {

const Drawing* drawing_named(const Page& page, const std::string& name) {
    const auto found = std::ranges::find_if(
        page.items, [&](const Placed& item) { return item.drawing.root.name == name; });
    return found == page.items.end() ? nullptr : &found->drawing;
}

/// `B3`: the words that stand first among its marks.
std::string tile_of(const Page& page) {
    const Drawing* marks = drawing_named(page, "marks");
    if (marks != nullptr) {
        for (const Node& node : marks->root.children) {
            if (const auto* words = std::get_if<Text>(&node)) {
                return words->words;
            }
        }
    }
    return "";
}

// What lies beyond the outermost match lines is cut away, and no neighbour has it.
TEST(TilesOfAMan, NothingLiesBeyondTheOutermostMatchLines) {
    const auto work = work_for("");
    ASSERT_TRUE(work);
    const Typesetter type;
    sheet::Ruler ruler(type);
    const auto pages = lay_out_tiles(work->sheets, Paper{}, ruler);
    constexpr double match_line = 9 + 6;
    int at_edges = 0;
    for (const Page& page : pages) {
        const std::string tile = tile_of(page);
        const Drawing* pieces = drawing_named(page, "pieces");
        if (tile.empty() || pieces == nullptr) {
            continue;
        }
        for (std::size_t i = 0; i < pieces->paths.size(); ++i) {
            if (std::ranges::count(pieces->root.clip, i) > 0) {
                continue;
            }
            for (const Point p : pieces->paths[i].points) {
                if (tile.substr(1) == "1") {
                    EXPECT_GT(p.x, match_line) << tile;
                    ++at_edges;
                }
                if (tile[0] == 'A') {
                    EXPECT_GT(p.y, match_line) << tile;
                    ++at_edges;
                }
            }
        }
    }
    EXPECT_GT(at_edges, 100);
}

}  // namespace
}  // namespace platewright::cli
