// SPDX-License-Identifier: MIT
// The sample page.
#include "sample.h"

#include <initializer_list>

namespace platewright::test {

namespace {

constexpr Colour kInk = {0x22, 0x1c, 0x18};
constexpr Colour kRed = {0xb2, 0x32, 0x30};
constexpr Colour kBlue = {0x28, 0x38, 0x5f};

/// A ring: two circles, the inner one a hole.
Path ring(Point centre, double radius) {
    Path made = ellipse(centre, radius, radius);
    const Path hole = ellipse(centre, radius / 2, radius / 2);
    made.verbs.insert(made.verbs.end(), hole.verbs.begin(), hole.verbs.end());
    made.points.insert(made.points.end(), hole.points.begin(), hole.points.end());
    return made;
}

/// The shapes are drawn ten times their size, as a figure is.
Drawing shapes() {
    Drawing made;
    made.root.name = "Shapes";
    auto& into = made.root.children;

    Group plain;
    plain.name = "plain";
    const PathId square = made.add(polygon({{0, 0}, {150, 0}, {150, 150}, {0, 150}}));
    plain.children.emplace_back(Shape{square, {}, Fill{kRed}, {}});
    plain.children.emplace_back(
        Shape{square, {60, 60}, Fill{kBlue, 0.5}, Stroke{kInk, 4, 0.7, {}}});
    // A soft wash: smaller and smaller about one place.
    for (const double size : {0.3, 0.2}) {
        const Point kept = Point{120, 30} * (1 - size);
        plain.children.emplace_back(Shape{square, kept, Fill{kInk, 0.1}, {}, size});
    }
    into.emplace_back(std::move(plain));

    Group holes;
    holes.name = "holes";
    const PathId circle = made.add(ring({330, 90}, 80));
    holes.children.emplace_back(Shape{circle, {}, Fill{kBlue, 1, true}, {}});
    holes.children.emplace_back(Shape{circle, {0, 0}, {}, Stroke{kRed, 6, 1, {20, 12}}});
    into.emplace_back(std::move(holes));

    // Two outlines that overlap and run opposite ways: the clip must be their union.
    Group clipped;
    clipped.name = "plain";
    clipped.clip = {made.add(polygon({{450, 20}, {560, 20}, {560, 130}, {450, 130}})),
                    made.add(polygon({{500, 70}, {500, 180}, {610, 180}, {610, 70}}))};
    const PathId cover = made.add(rectangle({440, 10, 620, 190}));
    clipped.children.emplace_back(Shape{cover, {}, Fill{{0x2f, 0x5a, 0x3f}}, {}});
    Group shade;
    const PathId bulge = made.add(ring({530, 100}, 110));
    for (int i = 1; i <= 9; ++i) {
        shade.children.emplace_back(Shape{bulge, {-6.0 * i, -2.7 * i}, Fill{kInk, 0.06, true}, {}});
    }
    clipped.children.emplace_back(std::move(shade));
    into.emplace_back(std::move(clipped));

    Group lines;
    lines.name = "lines & strokes";
    Path wave;
    wave.move_to({680, 100});
    wave.cubic_to({720, 0}, {760, 0}, {800, 100});
    wave.cubic_to({840, 200}, {880, 200}, {920, 100});
    lines.children.emplace_back(Shape{made.add(wave), {}, {}, Stroke{kInk, 14, 1, {}}});
    lines.children.emplace_back(Shape{made.add(wave), {0, 50}, {}, Stroke{kBlue, 3, 0.6, {3, 8}}});
    into.emplace_back(std::move(lines));
    return made;
}

Text text(const char* words, Point at, Face face = Face::roman) {
    Text made;
    made.words = words;
    made.at = at;
    made.face = face;
    made.colour = kInk;
    return made;
}

Drawing words() {
    Drawing made;
    made.root.name = "Words";
    auto& into = made.root.children;
    double y = 0;
    for (const Face face : {Face::roman,
                            Face::italic,
                            Face::small_caps,
                            Face::bold,
                            Face::roman_small,
                            Face::italic_small}) {
        into.emplace_back(text("The officer's fifth affair, 1784 & <1790>", {0, y += 6}, face));
    }
    into.emplace_back(text("Шапка и кафтан", {0, y += 6}));
    into.emplace_back(text("שלום עולם.", {40, y}));
    Text spaced = text("TANNBRUCK", {85, 6}, Face::small_caps);
    spaced.tracking = 0.8;
    spaced.align = Align::middle;
    into.emplace_back(spaced);
    Text right = text("flush right", {105, 12}, Face::italic);
    right.align = Align::end;
    into.emplace_back(right);
    Text turned = text("turned", {85, 22});
    turned.degrees = -30;
    turned.colour = kRed;
    into.emplace_back(turned);
    Text upright = text("upright", {103, 40}, Face::italic);
    upright.degrees = 90;
    upright.align = Align::middle;
    into.emplace_back(upright);
    return made;
}

}  // namespace

Document sample() {
    Document made;
    made.title = "Sample “page” (1)";
    made.author = "A. Müller";
    made.subject = "Everything a writer meets";
    made.description = "Squares, a ring, a clipped pair & lines of words";
    Page page;
    page.width = 120;
    page.height = 90;
    page.paper = {0xf7, 0xf2, 0xe6};
    page.items.push_back({{8, 7}, 0.11, shapes()});
    page.items.push_back({{8, 34}, 1, words()});
    made.pages.push_back(std::move(page));
    return made;
}

}  // namespace platewright::test
