// SPDX-License-Identifier: MIT
// Basic shapes and transforms of SVG.
#include "compose/svg_shapes.h"

#include <gtest/gtest.h>

#include "base/outline.h"

namespace platewright {
namespace {

std::optional<Path> shape_in(const std::string& xml) {
    pugi::xml_document document;
    EXPECT_TRUE(document.load_string(xml.c_str())) << xml;
    std::string problem;
    return shape_of(document.document_element(), problem);
}

TEST(Shapes, AreReadAsOutlinesOfTheSameArea) {
    const auto area = [](const std::string& xml) {
        const auto path = shape_in(xml);
        return path ? signed_area(*path) : 0.0;
    };
    EXPECT_DOUBLE_EQ(area("<rect x='1' y='2' width='10' height='20'/>"), 200);
    EXPECT_NEAR(area("<circle cx='3' cy='4' r='10'/>"), 314.16, 0.2);
    EXPECT_NEAR(area("<ellipse rx='10' ry='5'/>"), 157.08, 0.1);
    EXPECT_DOUBLE_EQ(area("<polygon points='0,0 10,0 10,10'/>"), 50);
}

TEST(Shapes, ALineAndAPolylineStayOpen) {
    using enum Path::Verb;
    EXPECT_EQ(shape_in("<line x1='1' y1='2' x2='3' y2='4'/>")->verbs, (std::vector{move, line}));
    EXPECT_EQ(shape_in("<polyline points='0 0 5 5 9 1'/>")->verbs, (std::vector{move, line, line}));
}

TEST(Shapes, RefuseMeasuresThatAreNone) {
    for (const char* bad : {"<rect width='10'/>",
                            "<rect width='a' height='3'/>",
                            "<circle r='-1'/>",
                            "<circle/>",
                            "<polygon points='1 2 3'/>",
                            "<polyline points='1,2'/>",
                            "<line x1='1e30'/>",
                            "<path/>"}) {
        EXPECT_FALSE(shape_in(bad)) << bad;
    }
}

TEST(Transform, StepsApplyFromTheRight) {
    const auto moved = parse_transform("translate(10, 5) scale(2)");
    ASSERT_TRUE(moved);
    EXPECT_EQ(moved->apply({1, 1}), (Point{12, 7}));
}

TEST(Transform, TurnsAboutACentre) {
    const auto turned = parse_transform(" rotate(90 10 10) ");
    ASSERT_TRUE(turned);
    EXPECT_NEAR(turned->apply({20, 10}).x, 10, 1e-9);
    EXPECT_NEAR(turned->apply({20, 10}).y, 20, 1e-9);
}

TEST(Transform, MatrixMirrors) {
    const auto mirrored = parse_transform("matrix(-1 0 0 1 0 0)");
    ASSERT_TRUE(mirrored);
    EXPECT_EQ(mirrored->apply({7, 3}), (Point{-7, 3}));
    EXPECT_LT(mirrored->determinant(), 0);
}

TEST(Transform, RefusesWhatIsNone) {
    for (const char* bad :
         {"translate", "translate(", "turn(3)", "scale(a)", "matrix(1 2 3)", ")(", "rotate(1 2)"}) {
        EXPECT_FALSE(parse_transform(bad)) << bad;
    }
}

}  // namespace
}  // namespace platewright
