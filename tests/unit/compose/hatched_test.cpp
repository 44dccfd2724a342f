// SPDX-License-Identifier: MIT
// Hatched figures: black on white, each cloth in its own lines.
#include <gtest/gtest.h>

#include <functional>

#include "sample.h"

namespace platewright {
namespace {

Figure hatched(const Uniform& uniform, const std::string& parts, double scale = 7.2) {
    const auto reading = read_text(template_with(parts));
    EXPECT_TRUE(reading->made);
    return compose(uniform, *reading->made, {}, scale, {}, Ink::hatched);
}

void each_shape(const Group& in, const std::function<void(const Shape&)>& look) {
    for (const Node& node : in.children) {
        if (const auto* shape = std::get_if<Shape>(&node)) {
            look(*shape);
        } else if (const auto* group = std::get_if<Group>(&node)) {
            each_shape(*group, look);
        }
    }
}

/// The paths stroked with the line of hatching at that scale.
std::vector<Path> hatchings(const Figure& figure) {
    std::vector<Path> found;
    each_shape(figure.drawing.root, [&](const Shape& shape) {
        const double line = kHatchLine * figure.scale;
        if (shape.stroke && shape.stroke->width == line) {
            found.push_back(figure.drawing.paths[shape.path]);
        }
    });
    return found;
}

const std::string kCoat =
    R"(<g id="coat" data-cloth="coat.cloth"><path class="shape" d="M -40 0 H 40 V 390 H -40 Z"/>
<path class="fold" d="M 0 20 L 10 300"/></g>)";
const std::string kCuff =
    R"(<g id="cuff" data-cloth="cuffs.cloth"><path class="shape" d="M 60 0 H 140 V 90 H 60 Z"/></g>)";

Uniform dressed(Colour coat, Colour cuffs) {
    Uniform uniform = trial_uniform();
    set(uniform, "coat.cloth", Material{"one", coat, false, ""});
    set(uniform, "cuffs.cloth", Material{"other", cuffs, false, ""});
    return uniform;
}

TEST(Hatched, IsBlackOnWhite) {
    const Figure figure = hatched(dressed({0x31, 0x56, 0x8e}, {0xc8, 0x28, 0x2c}), kCoat + kCuff);
    each_shape(figure.drawing.root, [](const Shape& shape) {
        const Colour black{0, 0, 0};
        const Colour white{255, 255, 255};
        const Colour outline{0x1d, 0x16, 0x13};
        if (shape.fill) {
            EXPECT_TRUE(shape.fill->colour == black || shape.fill->colour == white)
                << to_hex(shape.fill->colour);
            EXPECT_EQ(shape.fill->alpha, 1);
        }
        if (shape.stroke) {
            EXPECT_TRUE(shape.stroke->colour == black || shape.stroke->colour == outline ||
                        shape.stroke->colour == white)
                << to_hex(shape.stroke->colour);
        }
    });
}

TEST(Hatched, HasOnePathOfLinesForEachPieceInItsOwnDirection) {
    const std::vector<Path> found =
        hatchings(hatched(dressed({0x31, 0x56, 0x8e}, {0xc8, 0x28, 0x2c}), kCoat + kCuff));
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].points[0].y, found[0].points[1].y) << "azure is level";
    EXPECT_EQ(found[1].points[0].x, found[1].points[1].x) << "gules is upright";
}

TEST(Hatched, CoversAPatchWithoutContourToo) {
    const std::string patched =
        R"(<g id="coat" data-cloth="coat.cloth"><path class="shape" d="M -40 0 H 40 V 390 H -40 Z"/>
<path class="patch" data-cloth="cuffs.cloth" data-line="none" d="M -40 100 H 40 V 200 H -40 Z"/></g>)";
    const Uniform uniform = dressed({0x31, 0x56, 0x8e}, {0xc8, 0x28, 0x2c});
    EXPECT_EQ(hatchings(hatched(uniform, patched)).size(), 2U);
}

TEST(Hatched, LeavesWhitePlainAndTakesThePalettesTincture) {
    Uniform uniform = dressed({0xff, 0xff, 0xff}, {0xc8, 0x28, 0x2c});
    EXPECT_EQ(hatchings(hatched(uniform, kCoat)).size(), 0U);
    Material cloth{"white", {0xff, 0xff, 0xff}, false, ""};
    cloth.hatch = find_tincture("azure");
    set(uniform, "coat.cloth", cloth);
    EXPECT_EQ(hatchings(hatched(uniform, kCoat)).size(), 1U);
}

TEST(Hatched, KeepsItsStepOnPaper) {
    const Uniform uniform = dressed({0xc8, 0x28, 0x2c}, {0xc8, 0x28, 0x2c});
    for (const double scale : {4.0, 12.0}) {
        const std::vector<Path> found = hatchings(hatched(uniform, kCoat, scale));
        ASSERT_EQ(found.size(), 1U);
        EXPECT_NEAR(
            std::abs(found[0].points[2].x - found[0].points[0].x) / scale, kHatchPitch, 1e-9);
    }
}

TEST(Hatched, CaptionsTellTheTincture) {
    const Captions captions = captions_of(dressed({0x31, 0x56, 0x8e}, {0xc8, 0x28, 0x2c}));
    ASSERT_FALSE(captions.key.empty());
    EXPECT_EQ(captions.key.front().name, "one");
    EXPECT_EQ(captions.key.front().tincture, find_tincture("azure"));
}

}  // namespace
}  // namespace platewright
