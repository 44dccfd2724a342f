// SPDX-License-Identifier: MIT
// Views drawn in several files, frames, ornaments, fringe, windows and line drawings.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <string>
#include <variant>

#include "compose/edge_hatch.h"
#include "sample.h"

namespace platewright {
namespace {

std::string sheet(const std::string& layers, const std::string& view = "front") {
    return R"(<svg xmlns="http://www.w3.org/2000/svg" viewBox="-100 0 200 400" data-view=")" +
           view + "\">" + layers + "</svg>";
}

std::string square(const std::string& name, double left, const std::string& more = "") {
    const std::string x = std::to_string(static_cast<int>(left));
    return "<g id=\"" + name + "\" data-cloth=\"#804020\"" + more +
           "><path class=\"shape\" d=\"M " + x + " 10 h 20 v 20 h -20 Z\"/></g>";
}

std::string layer(const std::string& id, const std::string& after, const std::string& parts) {
    return "<g id=\"" + id + "\"" + (after.empty() ? "" : " data-after=\"" + after + "\"") + ">" +
           parts + "</g>";
}

std::unique_ptr<Reading> read_sheets(const std::vector<std::string>& texts) {
    auto reading = std::make_unique<Reading>();
    std::vector<FileId> files;
    for (const std::string& text : texts) {
        files.push_back(
            reading->sources.add("sheet" + std::to_string(files.size()) + ".svg", text));
    }
    reading->made = read_template(reading->sources, files, reading->problems);
    return reading;
}

std::string order_of(const Template& made) {
    std::string names;
    for (const Part& part : made.parts) {
        names += (names.empty() ? "" : " ") + part.name;
    }
    return names;
}

std::string codes_of(const Reading& reading) {
    std::string codes;
    for (const Diagnostic& problem : reading.problems.all()) {
        codes += (codes.empty() ? "" : " ") + problem.code;
    }
    return codes;
}

TEST(Assembly, LayersLieOnThePartTheyName) {
    const auto reading =
        read_sheets({sheet(layer("parts", "", square("coat", 0) + square("collar", 1)) +
                           layer("parts-2", "hat", square("plume", 2))),
                     sheet(layer("parts", "coat", square("belt", 3)) +
                           layer("parts-2", "collar", square("hat", 4)) +
                           layer("parts-3", "coat", square("sash", 5)))});
    ASSERT_TRUE(reading->made) << codes_of(*reading);
    EXPECT_EQ(order_of(*reading->made), "coat belt sash collar hat plume");
}

TEST(Assembly, NamesAreSharedByTheFiles) {
    const auto reading = read_sheets(
        {sheet(layer("parts", "", square("coat", 0)) +
               R"(<g id="guides"><path id="g" d="M 0 0 L 9 9"/></g>)"),
         sheet(
             layer("parts",
                   "coat",
                   square("belt", 3, " data-clip=\"coat\" data-shadow=\"2\" data-on=\"coat\"")))});
    EXPECT_TRUE(reading->made) << codes_of(*reading);
    EXPECT_EQ(codes_of(*read_sheets({sheet(layer("parts", "", square("coat", 0))),
                                     sheet(layer("parts", "coat", square("coat", 3)))})),
              "template.duplicate-id");
}

TEST(Assembly, TellsWhatDoesNotFitTogether) {
    const std::string base = sheet(layer("parts", "", square("coat", 0)));
    EXPECT_EQ(codes_of(*read_sheets({base, sheet(layer("parts", "cote", square("belt", 3)))})),
              "template.unknown-name");
    EXPECT_EQ(codes_of(*read_sheets({base,
                                     sheet(layer("parts", "hat", square("belt", 3)) +
                                           layer("parts-2", "belt", square("hat", 3)))})),
              "template.circle");
    EXPECT_EQ(
        codes_of(*read_sheets({base, sheet(layer("parts", "coat", square("belt", 3)), "back")})),
        "template.wrong-view");
}

TEST(Assembly, FramesAreRead) {
    const auto reading = read_text(
        sheet(layer("parts", "", square("coat", 0)) +
              R"(<g id="frames"><rect id="frame-cuff" x="1" y="2" width="30" height="40"/></g>)"));
    ASSERT_TRUE(reading->made);
    const auto frame = frame_of(*reading->made, "cuff");
    ASSERT_TRUE(frame);
    EXPECT_EQ(frame->right, 31);
    EXPECT_FALSE(frame_of(*reading->made, "hat"));
}

Figure drawn(const std::string& parts,
             const Ornaments& ornaments = {},
             const std::optional<Rect>& window = {},
             const std::string& view = "front") {
    const auto reading = read_text(sheet(
        R"(<g id="guides"><path id="base" d="M 0 0 H 40"/><path id="hem" d="M 0 30 H 40"/></g>)" +
            layer("parts", "", parts),
        view));
    EXPECT_TRUE(reading->made) << codes_of(*reading);
    Uniform uniform = trial_uniform();
    set(uniform, "turnbacks.ornament", std::string("star"));
    set(uniform, "badge.number", 2);
    return compose(uniform, *reading->made, ornaments, 7.2, window);
}

std::shared_ptr<const Template> star() {
    return read_text(
               R"(<svg xmlns="http://www.w3.org/2000/svg" viewBox="-30 -30 60 60" data-view="ornament">
<g id="parts"><g id="star" data-cloth="ornament" data-line="light"><path class="shape" d="M 0 -30 L 20 30 H -20 Z"/>
<path class="seam" d="M 0 -20 V 20"/></g></g></svg>)")
        ->made;
}

/// The box of all shapes in groups of that name.
Rect box_of(const Figure& figure,
            const Group& group,
            const std::string& name,
            bool inside = false) {
    Rect box;
    const bool here = inside || group.name == name;
    for (const Node& node : group.children) {
        if (const auto* child = std::get_if<Group>(&node)) {
            box.include(box_of(figure, *child, name, here));
        } else if (const auto* shape = std::get_if<Shape>(&node); shape != nullptr && here) {
            if (shape->fill && shape->fill->alpha == 1 && shape->shift == Point{}) {
                box.include(figure.drawing.paths[shape->path].bounds());
            }
        }
    }
    return box;
}

std::string part_with(const std::string& detail) {
    return "<g id=\"coat\" data-cloth=\"#804020\" data-zone=\"none\"><path class=\"shape\" d=\"M 0 "
           "0 H 60 V 60 H 0 "
           "Z\"/>" +
           detail + "</g>";
}

TEST(Ornament, StandsWhereItIsToldAsLargeAsItIsTold) {
    const Figure figure = drawn(
        part_with(
            R"(<path class="ornament" d="M 30 40 l 0 -20" data-of="turnbacks.ornament" data-cloth="collar.cloth" data-size="30"/>)"),
        {{"star", star()}});
    const Rect box = box_of(figure, figure.drawing.root, "star@1");
    EXPECT_NEAR(box.top, 25, 1e-6);
    EXPECT_NEAR(box.bottom, 55, 1e-6);
    EXPECT_NEAR(box.left, 20, 1e-6);
}

TEST(Ornament, TurnsItsTopTheWayTheLineGoes) {
    const Figure figure = drawn(
        part_with(
            R"(<path class="ornament" d="M 30 40 l 20 0" data-of="turnbacks.ornament" data-cloth="collar.cloth" data-size="30"/>)"),
        {{"star", star()}});
    const Rect box = box_of(figure, figure.drawing.root, "star@1");
    EXPECT_NEAR(box.right, 45, 1e-6);
    EXPECT_NEAR(box.left, 15, 1e-6);
}

TEST(Ornament, OfANumberStandInARow) {
    const Figure figure = drawn(
        part_with(
            R"(<path class="ornament" d="M 10 10 h 40" data-of="turnbacks.ornament" data-number="badge.number" data-cloth="collar.cloth" data-size="6"/>)"),
        {{"star", star()}});
    EXPECT_NEAR(box_of(figure, figure.drawing.root, "star@1").left, 8, 1e-6);
    EXPECT_NEAR(box_of(figure, figure.drawing.root, "star@2").right, 52, 1e-6);
}

TEST(Ornament, NobodyHasIsLeftOff) {
    const Figure figure = drawn(part_with(
        R"(<path class="ornament" d="M 30 40 l 0 -9" data-of="turnbacks.ornament" data-cloth="collar.cloth"/>)"));
    EXPECT_EQ(dump(figure).find("star"), std::string::npos);
}

TEST(Fringe, HangsFromEdgeToEdge) {
    const Figure figure = drawn(part_with(
        R"(<path class="fringe" data-between="base hem" data-cloth="collar.cloth" data-kind="epaulettes.fringe-kind"/>)"));
    const Rect box = box_of(figure, figure.drawing.root, "trimmings");
    EXPECT_NEAR(box.top, 0, 0.5);
    EXPECT_NEAR(box.bottom, 30, 0.5);
    EXPECT_GT(box.width(), 38);
}

TEST(Window, LeavesOutWhatCannotBeSeen) {
    const std::string parts = square("near", 0) + square("far", 70);
    const Figure whole = drawn(parts);
    const Figure cut = drawn(parts, {}, Rect{0, 0, 30, 40});
    EXPECT_NE(dump(whole).find("far"), std::string::npos);
    EXPECT_EQ(dump(cut).find("far"), std::string::npos);
    EXPECT_EQ(cut.frame.right, 30);
    EXPECT_EQ(cut.drawing.root.clip.size(), 1U);
}

/// What is laid on the first part of a figure before its trimmings.
const Group& modelling_of(const Figure& figure) {
    const Group* found = nullptr;
    const auto search = [&](const auto& self, const Group& group) -> void {
        if (found == nullptr && group.name == "modelling") {
            found = &group;
        }
        for (const Node& child : group.children) {
            if (const auto* inner = std::get_if<Group>(&child)) {
                self(self, *inner);
            }
        }
    };
    search(search, figure.drawing.root);
    EXPECT_NE(found, nullptr);
    static const Group none;
    return found != nullptr ? *found : none;
}

constexpr std::string_view kSquareCoat =
    R"(<g id="coat" data-cloth="coat.cloth"><path class="shape" d="M 0 0 H 60 V 60 H 0 Z"/></g>)";

TEST(LineDrawing, HasWashAndStrokesAlongItsEdgesOnly) {
    const Figure flat = drawn(std::string(kSquareCoat), {}, {}, "flat");
    const Group& modelling = modelling_of(flat);
    ASSERT_FALSE(modelling.children.empty());
    // Most of the cloth stays as it is.
    constexpr double most = 60 / 5.0;
    for (const Node& child : modelling.children) {
        const auto* wash = std::get_if<Shape>(&child);
        ASSERT_NE(wash, nullptr);
        const Path& path = flat.drawing.paths[wash->path];
        if (wash->fill) {
            const auto near_an_edge = [](Point p) { return p.x > 60 - most || p.y > 60 - most; };
            EXPECT_TRUE(std::ranges::all_of(path.points, near_an_edge));
            continue;
        }
        ASSERT_TRUE(wash->stroke);
        // The outline itself, so moved and so broad that it keeps to the edge.
        const Rect edge = path.bounds();
        EXPECT_NEAR(edge.width(), 60, 1e-6);
        EXPECT_NEAR(edge.height(), 60, 1e-6);
        const double inwards = std::max(std::abs(wash->shift.x), std::abs(wash->shift.y));
        EXPECT_LT(inwards + wash->stroke->width / 2, most);
    }
}

TEST(LineDrawing, StrokesStandAtEdgesAwayFromTheLight) {
    const Path square = rectangle({0, 0, 60, 60});
    const HatchPen pen{3, 1, 0, 8};
    for (const HatchStroke& stroke : edge_hatch(square, pen, FromEdge::inwards)) {
        EXPECT_TRUE(stroke.begin.x > 59 || stroke.begin.y > 59);
        EXPECT_TRUE(stroke.end.x < stroke.begin.x && stroke.end.y < stroke.begin.y);
    }
    EXPECT_FALSE(edge_hatch(square, pen, FromEdge::outwards).empty());
    EXPECT_NEAR(breadth_of(rectangle({0, 0, 400, 20})), 20, 1);
}

TEST(LineDrawing, StrokesBesideAVeryLongEdgeAreBounded) {
    const Path land = polygon({{0, 0}, {1e9, 0}, {1e9, 1e9}, {0, 1e9}});
    EXPECT_LT(edge_hatch(land, {2, 1, 0, 10}, FromEdge::inwards).size(), 10000U);
}

TEST(EdgeHatch, LinesFallOnTheShadedSideOfALongFold) {
    // A fold straight down the page: light comes from the left, the shade is to its right.
    const Curve fold(std::vector<Point>{{100, 0}, {100, 300}});
    const HatchPen pen{3, 1};
    const auto lines = fall_hatch(fold, pen);
    ASSERT_GE(lines.size(), 3U);
    for (const HatchStroke& line : lines) {
        for (const Point p : {line.begin, line.middle, line.end}) {
            EXPECT_GT(p.x, 100);
            // Further apart the further they are from it, never twice as far.
            EXPECT_LE(p.x, 100 + 2 * pen.pitch * static_cast<double>(lines.size()));
            EXPECT_GT(p.y, 0);
            // They lean a little away from the light and never leave the fold's own length by more.
            EXPECT_LT(p.y, 300 + pen.pitch * static_cast<double>(lines.size()));
        }
    }
    // A wrinkle has fewer.
    const Curve wrinkle(std::vector<Point>{{100, 0}, {100, 40}});
    EXPECT_LT(fall_hatch(wrinkle, pen).size(), lines.size());
    for (const HatchStroke& line : fall_hatch(fold, pen, FoldSide::lit)) {
        EXPECT_LT(line.middle.x, 100);
    }
    // Drawn the other way the fold is shaded on the same side.
    const Curve upwards(std::vector<Point>{{100, 300}, {100, 0}});
    for (const HatchStroke& line : fall_hatch(upwards, pen)) {
        EXPECT_GT(line.middle.x, 100);
    }
}

/// The chroma of the only part of a flat made of that cloth.
double chroma_of_flat(const std::string& cloth) {
    const std::string words =
        dump(drawn("<g id=\"coat\" data-cloth=\"" + cloth +
                       "\"><path class=\"shape\" d=\"M 0 0 H 60 V 60 H 0 Z\"/></g>",
                   {},
                   {},
                   "flat"));
    const std::size_t at = words.find("fill #");
    if (at == std::string::npos) {
        ADD_FAILURE() << words;
        return 0;
    }
    const unsigned long rgb = std::stoul(words.substr(at + 6, 6), nullptr, 16);
    const OkLab tint = to_oklab({static_cast<std::uint8_t>(rgb >> 16U),
                                 static_cast<std::uint8_t>(rgb >> 8U & 255U),
                                 static_cast<std::uint8_t>(rgb & 255U)});
    return std::hypot(tint.a, tint.b);
}

TEST(LineDrawing, IsOfTheColourOfItsCloth) {
    const OkLab green = to_oklab({0x2a, 0x4f, 0x3a});
    EXPECT_NEAR(chroma_of_flat("#2a4f3a"), std::hypot(green.a, green.b), 0.01);
    const OkLab red = to_oklab({0xa3, 0x31, 0x2b});
    EXPECT_NEAR(chroma_of_flat("#a3312b"), std::hypot(red.a, red.b), 0.01);
}

/// On it the pen's finer lines would vanish.
TEST(LineDrawing, HasItsSeamsInChalkOnDarkCloth) {
    const auto seam_on = [](const std::string& cloth) {
        return dump(drawn("<g id=\"coat\" data-cloth=\"" + cloth +
                              "\"><path class=\"shape\" d=\"M 0 0 H 60 V 60 H 0 Z\"/><path "
                              "class=\"seam\" d=\"M 5 9 V 50\"/></g>",
                          {},
                          {},
                          "flat"));
    };
    const auto lightness = [](const std::string& text) {
        const std::size_t at = text.rfind("stroke #", text.find("contour"));
        const unsigned long rgb = std::stoul(text.substr(at + 8, 6), nullptr, 16);
        return to_oklab({static_cast<std::uint8_t>(rgb >> 16U),
                         static_cast<std::uint8_t>(rgb >> 8U & 255U),
                         static_cast<std::uint8_t>(rgb & 255U)})
            .l;
    };
    EXPECT_GT(lightness(seam_on("#28385f")), 0.5);
    EXPECT_LT(lightness(seam_on("#efeadd")), 0.35);
}

TEST(LineDrawing, IsDrawnWithOnePenWhateverTheCloth) {
    const std::string white =
        R"(<g id="shirt" data-cloth="#f0ece0"><path class="shape" d="M 0 0 H 60 V 60 H 0 Z"/><path class="seam" d="M 5 9 V 50"/></g>)";
    EXPECT_NE(
        dump(drawn(white, {}, {}, "flat")).find("contour\n      5 steps 0,0..60,60 stroke #1d1613"),
        std::string::npos)
        << dump(drawn(white, {}, {}, "flat"));
}

TEST(LineDrawing, ShadowsFallOnWhateverLiesBeneath) {
    const std::string parts =
        "<g id=\"coat\" data-cloth=\"coat.cloth\"><path class=\"shape\" d=\"M 0 0 H 60 V 60 H 0 "
        "Z\"/></g><g id=\"flap\" data-cloth=\"coat.cloth\" data-shadow=\"4\"><path "
        "class=\"shape\" d=\"M 10 10 H 30 V 30 H 10 Z\"/></g>";
    EXPECT_NE(dump(drawn(parts, {}, {}, "flat")).find("shadow"), std::string::npos);
    EXPECT_EQ(dump(drawn(parts)).find("shadow"), std::string::npos);
}

}  // namespace
}  // namespace platewright
