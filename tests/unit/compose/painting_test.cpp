// SPDX-License-Identifier: MIT
// What is painted for a uniform: parts that are worn, trimmings where they belong.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "sample.h"

namespace platewright {
namespace {

constexpr const char* kShape = R"(<path class="shape" d="M -40 0 H 40 V 390 H -40 Z"/>)";

const Group* find_group(const Group& in, const std::string& name) {
    for (const Node& node : in.children) {
        if (const auto* group = std::get_if<Group>(&node)) {
            if (group->name == name) {
                return group;
            }
            if (const Group* found = find_group(*group, name)) {
                return found;
            }
        }
    }
    return nullptr;
}

/// The boxes of all shapes in a group that are filled with `colour`.
std::vector<Rect> filled(const Figure& figure, const Group& in, Colour colour) {
    std::vector<Rect> found;
    for (const Node& node : in.children) {
        if (const auto* shape = std::get_if<Shape>(&node);
            shape != nullptr && shape->fill && shape->fill->colour == colour) {
            Rect box = figure.drawing.paths[shape->path].bounds();
            found.push_back({box.left + shape->shift.x,
                             box.top + shape->shift.y,
                             box.right + shape->shift.x,
                             box.bottom + shape->shift.y});
        } else if (const auto* group = std::get_if<Group>(&node)) {
            const std::vector<Rect> inner = filled(figure, *group, colour);
            found.insert(found.end(), inner.begin(), inner.end());
        }
    }
    return found;
}

Figure draw(const Uniform& uniform, const std::string& parts) {
    const auto reading = read_text(template_with(parts));
    EXPECT_TRUE(reading->made) << (reading->problems.all().empty()
                                       ? ""
                                       : reading->problems.all().front().message);
    return compose(uniform, *reading->made, {}, 7.2);
}

std::string part(const std::string& attributes, const std::string& details) {
    return "<g id=\"coat\" " + attributes + ">" + kShape + details + "</g>";
}

/// Half a contour lies on either side of the edge it follows, in mm.
constexpr double kLine = 1.5;

TEST(Painting, AnEdgeIsDrawnInsteadOfTheContourAllRound) {
    const std::string edge = R"(<path class="edge" d="M -40 0 V 390"/>)";
    const Figure figure =
        draw(trial_uniform(), part("data-cloth=\"coat.cloth\" data-line=\"heavy\"", edge));
    const Group* contour = find_group(figure.drawing.root, "contour");
    ASSERT_NE(contour, nullptr);
    ASSERT_EQ(contour->children.size(), 1U);
    const auto& line = std::get<Shape>(contour->children.front());
    EXPECT_NEAR(figure.drawing.paths[line.path].bounds().right, -40, kLine);
}

TEST(Painting, APartOfNoClothIsNotWorn) {
    Uniform uniform = trial_uniform();
    const std::string lapel = part("data-cloth=\"lapels.cloth\"", "");
    EXPECT_NE(find_group(draw(uniform, lapel).drawing.root, "coat"), nullptr);
    set(uniform, "lapels.cloth", Absent{});
    EXPECT_EQ(find_group(draw(uniform, lapel).drawing.root, "coat"), nullptr);
}

TEST(Painting, WhenDecidesWhatIsWorn) {
    Uniform uniform = trial_uniform();
    const std::string slashed =
        part("data-cloth=\"cuffs.cloth\" data-when=\"cuffs.shape = slashed\"", "");
    set(uniform, "cuffs.shape", std::string("round"));
    EXPECT_EQ(find_group(draw(uniform, slashed).drawing.root, "coat"), nullptr);
    set(uniform, "cuffs.shape", std::string("slashed"));
    EXPECT_NE(find_group(draw(uniform, slashed).drawing.root, "coat"), nullptr);
}

TEST(Painting, TheCoatTakesTheColourOfItsCloth) {
    Uniform uniform = trial_uniform();
    set(uniform, "coat.cloth", Material{"red", {0xb2, 0x32, 0x30}, false, ""});
    const Figure figure = draw(uniform, part("data-cloth=\"coat.cloth\"", ""));
    EXPECT_EQ(filled(figure, *find_group(figure.drawing.root, "coat"), {0xb2, 0x32, 0x30}).size(),
              1U);
}

TEST(Painting, ButtonsAreAsManyAsTheUniformSaysAndEvenlySpaced) {
    Uniform uniform = trial_uniform();
    const Colour metal{0xd0, 0xa5, 0x41};
    set(uniform, "buttons.metal", Material{"yellow", metal, true, ""});
    for (const int number : {0, 1, 5, 12}) {
        set(uniform, "lapels.buttons", number);
        const Figure figure = draw(uniform,
                                   part("data-cloth=\"coat.cloth\"",
                                        "<path class=\"buttons\" data-along=\"edge\" "
                                        "data-number=\"lapels.buttons\" data-size=\"10\"/>"));
        const Group* coat = find_group(figure.drawing.root, "coat");
        const std::vector<Rect> faces = filled(figure, *coat, metal);
        ASSERT_EQ(faces.size(), static_cast<std::size_t>(number));
        for (std::size_t i = 2; i < faces.size(); ++i) {
            EXPECT_NEAR(faces[i].top - faces[i - 1].top, faces[1].top - faces[0].top, 1e-9);
        }
    }
}

TEST(Painting, ButtonholesStopShortOfTheirLimit) {
    Uniform uniform = trial_uniform();
    const Colour lace{0xff, 0xfe, 0xfd};
    set(uniform, "lapels.lace", Material{"lace", lace, false, ""});
    set(uniform, "lapels.buttonholes", std::string("laced"));
    const Figure figure =
        draw(uniform,
             part("data-cloth=\"coat.cloth\"",
                  "<path class=\"buttonholes\" d=\"M 30 20 V 120\" data-number=\"3\" "
                  "data-length=\"60\" data-limit=\"edge\" "
                  "data-clear=\"8\" data-side=\"right\" data-style=\"lapels.buttonholes\" "
                  "data-lace=\"lapels.lace\"/>"));
    const std::vector<Rect> loops = filled(figure, *find_group(figure.drawing.root, "coat"), lace);
    // The third loop lies below the end of the limiting guide and keeps its whole length.
    ASSERT_EQ(loops.size(), 3U);
    EXPECT_NEAR(loops[0].left, 8, 1e-6);
    EXPECT_NEAR(loops[1].left, 8, 1e-6);
    EXPECT_NEAR(loops[2].left, -40, 1e-6);
}

/// Rank bars: as many, as wide and as far apart as decided, counted from the lower edge, on the
/// named sleeve only.
TEST(Painting, RankBarsStandAboveTheLowerEdge) {
    Uniform uniform = trial_uniform();
    const Colour tape{0xf0, 0xf1, 0xf2};
    set(uniform, "marks.shape", std::string("bars"));
    set(uniform, "marks.number", 2);
    set(uniform, "marks.cloth", Material{"white", tape, false, ""});
    set(uniform, "marks.width", Measure{12, "12 mm"});
    set(uniform, "marks.spacing", Measure{8, "8 mm"});
    set(uniform, "marks.height", Absent{});
    set(uniform, "marks.sleeves", std::string("left"));
    const auto bars = [&](const std::string& sleeve) {
        const Figure figure =
            draw(uniform,
                 part("data-cloth=\"coat.cloth\"",
                      "<path class=\"marks\" data-between=\"low high\" data-sleeve=\"" + sleeve +
                          "\"/>"));
        return filled(figure, *find_group(figure.drawing.root, "coat"), tape);
    };
    const std::vector<Rect> left = bars("left");
    ASSERT_EQ(left.size(), 2U);
    EXPECT_NEAR(left[0].bottom, 292, 1e-6);
    EXPECT_NEAR(left[0].top, 280, 1e-6);
    EXPECT_NEAR(left[1].bottom, 272, 1e-6);
    EXPECT_NEAR(left[1].top, 260, 1e-6);
    EXPECT_TRUE(bars("right").empty());
    set(uniform, "marks.height", Measure{20, "20 mm"});
    EXPECT_NEAR(bars("left")[0].bottom, 280, 1e-6);
}

/// One chevron on a sleeve with these attributes, on a band from 40 mm left of its middle to 40 mm
/// right of it.
Path chevron(const char* shape, const std::string& attributes = "") {
    Uniform uniform = trial_uniform();
    set(uniform, "marks.number", 1);
    set(uniform, "marks.cloth", Material{"white", {0xf0, 0xf1, 0xf2}, false, ""});
    set(uniform, "marks.sleeves", std::string("both"));
    set(uniform, "marks.shape", std::string(shape));
    const Figure figure =
        draw(uniform,
             part("data-cloth=\"coat.cloth\"" + attributes,
                  "<path class=\"marks\" data-between=\"low high\" data-sleeve=\"left\"/>"));
    for (const Path& path : figure.drawing.paths) {
        // The chevron is the one polygon of 26 corners.
        if (path.points.size() == 26) {
            return path;
        }
    }
    ADD_FAILURE() << "no chevron drawn";
    return rectangle({0, 0, 1, 1});
}

TEST(Painting, ChevronsPointTheWayTheyAreNamed) {
    const auto apex_above_ends = [](const char* shape) {
        const Path drawn = chevron(shape);
        const auto level_at = [&drawn](double x) {
            return std::ranges::min_element(
                       drawn.points, {}, [x](Point p) { return std::abs(p.x - x); })
                ->y;
        };
        return level_at(0) < level_at(42);
    };
    EXPECT_TRUE(apex_above_ends("chevrons-up"));
    EXPECT_FALSE(apex_above_ends("chevrons-down"));
}

TEST(Painting, AChevronHasItsPointWhereTheSleeveSays) {
    const auto point_of = [](const std::string& attributes) {
        const Path drawn = chevron("chevrons-up", attributes);
        return std::ranges::min_element(drawn.points, {}, &Point::y)->x;
    };
    EXPECT_NEAR(point_of(""), 0, 0.1);
    EXPECT_NEAR(point_of(" data-apex=\"0.75\""), 20, 0.1);
}

TEST(Painting, PrintedLineWeightIsTheSameAtEveryScale) {
    const Uniform uniform = trial_uniform();
    const auto drawn = [&](const std::string& line, double scale) {
        const auto reading = read_text(
            template_with(part("data-cloth=\"coat.cloth\" data-line=\"" + line + "\"", "")));
        return compose(uniform, *reading->made, {}, scale);
    };
    const auto contour = [](const Figure& figure) {
        const Group* group = find_group(figure.drawing.root, "contour");
        return std::get<Shape>(group->children.front());
    };
    const auto stroke = [&](double scale) {
        return contour(drawn("light", scale)).stroke.value().width / scale;
    };
    EXPECT_NEAR(stroke(5), stroke(12), 1e-12);
    // A swelling one stands out from the shape by a share of its width.
    constexpr double shape_is_broad = 80;
    const auto swollen = [&](double scale) {
        const Figure figure = drawn("heavy", scale);
        const Shape line = contour(figure);
        EXPECT_FALSE(line.stroke);
        const double broad = figure.drawing.paths[line.path].bounds().width();
        return (broad - shape_is_broad) / scale;
    };
    EXPECT_GT(swollen(5), 0);
    EXPECT_NEAR(swollen(5), swollen(12), 1e-9);
}

TEST(Painting, AShadowFallsOnlyOnWhatLiesBeneath) {
    const Uniform uniform = trial_uniform();
    const std::string under =
        R"(<g id="under" data-cloth="coat.cloth"><path class="shape" d="M 0 0 H 90 V 90 H 0 Z"/></g>)";
    const std::string with =
        "<g id=\"coat\" data-cloth=\"coat.cloth\" data-shadow=\"5\" data-on=\"under\">" +
        std::string(kShape) + "</g>";
    const Figure figure = draw(uniform, under + with);
    const Group* shadow = find_group(figure.drawing.root, "shadow");
    ASSERT_NE(shadow, nullptr);
    ASSERT_EQ(shadow->clip.size(), 1U);
    EXPECT_EQ(figure.drawing.paths[shadow->clip.front()].bounds().right, 90);
}

TEST(Painting, AWashIsLeftOutOnlyWhereAllOfItIsCovered) {
    const Uniform uniform = trial_uniform();
    const auto shapes_drawn = [&](const std::string& strokes) {
        const std::string wash =
            strokes.empty() ? "" : "<path class=\"tone\" d=\"" + strokes + "\"/>";
        const std::string over =
            R"(<g id="over" data-cloth="cuffs.cloth"><path class="shape" d="M -40 0 H 0 V 200 H -40 Z"/></g>)";
        return dump(draw(uniform, part("data-cloth=\"coat.cloth\"", wash) + over));
    };
    const std::string covered = "M -30 20 H -10 V 90 H -30 Z";
    EXPECT_EQ(shapes_drawn(covered), shapes_drawn(""));
    EXPECT_NE(shapes_drawn(covered + " M 10 20 H 30 V 90 H 10 Z"), shapes_drawn(""));
}

TEST(Painting, AWashMayHaveAColourOfItsOwn) {
    const Figure figure =
        draw(trial_uniform(),
             part("data-cloth=\"coat.cloth\"",
                  R"(<path class="tone" data-cloth="#b8544a" d="M -30 20 H -10 V 90 H -30 Z"/>)"));
    EXPECT_EQ(filled(figure, *find_group(figure.drawing.root, "coat"), {0xb8, 0x54, 0x4a}).size(),
              1U);
}

/// A belt is cut off by the coat, and hides what is under it all the same.
TEST(Painting, AButtonMoreThanHalfUnderABeltIsLeftOut) {
    Uniform uniform = trial_uniform();
    const Colour metal{0xd0, 0xa5, 0x41};
    set(uniform, "buttons.metal", Material{"yellow", metal, true, ""});
    const auto seen_under = [&](double edge) {
        const std::string belt =
            R"(<g id="belt" data-cloth="#ece4cf" data-clip="coat"><path class="shape" d="M -90 40 H 90 V )" +
            std::to_string(edge) + R"( H -90 Z"/></g>)";
        const Figure figure =
            draw(uniform,
                 part("data-cloth=\"coat.cloth\"",
                      R"(<path class="buttons" d="M 0 60 V 80" data-number="1" data-size="16"/>)") +
                     belt);
        return filled(figure, *find_group(figure.drawing.root, "coat"), metal).size();
    };
    // The one button of a line stands in its middle, from 62 to 78.
    EXPECT_EQ(seen_under(90), 0U);
    EXPECT_EQ(seen_under(74), 0U);
    EXPECT_EQ(seen_under(66), 1U);
}

TEST(Painting, StrokesOfAZoneAreLaidOnWithoutItsShade) {
    Uniform uniform = trial_uniform();
    set(uniform, "coat.cloth", Material{"white", {0xef, 0xea, 0xdd}, false, ""});
    const auto shapes = [&](const std::string& more) {
        const Figure figure =
            draw(uniform, part("data-cloth=\"coat.cloth\" data-zone=\"none\"" + more, ""));
        return find_group(figure.drawing.root, "modelling")->children.size();
    };
    EXPECT_EQ(shapes(" data-strokes=\"body\""), shapes("") + 1);
}

TEST(Painting, TheSameUniformGivesTheSameDrawing) {
    const Uniform uniform = trial_uniform();
    const std::string parts = part("data-cloth=\"coat.cloth\" data-zone=\"body\"",
                                   "<path class=\"fold\" d=\"M 0 0 L 9 90\"/>");
    EXPECT_EQ(dump(draw(uniform, parts)), dump(draw(uniform, parts)));
}

}  // namespace
}  // namespace platewright
