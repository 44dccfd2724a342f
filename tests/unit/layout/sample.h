// SPDX-License-Identifier: MIT
// A plain figure, captions and walks over a document for the tests of this folder.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "base/drawing.h"
#include "compose/figure.h"
#include "layout/layout.h"

namespace platewright::sample {

/// A man of a few ellipses in the frame of the infantry figure, for 1 : `scale`.
inline Figure man(const std::string& view, double scale) {
    Figure figure;
    figure.view = view;
    figure.title = "Man";
    figure.frame = {-440, -170, 440, 1820};
    figure.scale = scale;
    Group& root = figure.drawing.root;
    root.name = "man";
    const auto add = [&](Path path) {
        root.children.emplace_back(Shape{figure.drawing.add(std::move(path)),
                                         {},
                                         Fill{{0x28, 0x38, 0x5f}, 1, false},
                                         std::nullopt});
    };
    add(ellipse({0, -20}, 210, 90));
    add(ellipse({0, 130}, 75, 110));
    add(ellipse({0, 700}, 300, 420));
    add(rectangle({-150, 1000, -20, 1770}));
    add(rectangle({20, 1000, 150, 1770}));
    // A wash as shading is made: far larger than the figure, but clipped to it.
    Group shade;
    shade.name = "shade";
    shade.clip = {0};
    shade.children.emplace_back(Shape{figure.drawing.add(rectangle({-9000, -9000, 9000, 9000})),
                                      {},
                                      Fill{{0, 0, 0}, 0.1, false},
                                      std::nullopt});
    root.children.emplace_back(std::move(shade));
    return figure;
}

inline Figure button(double scale) {
    Figure figure;
    figure.view = "detail";
    figure.frame = {-10, -10, 10, 10};
    figure.scale = scale;
    figure.drawing.root.name = "button";
    figure.drawing.root.children.emplace_back(Shape{figure.drawing.add(ellipse({0, 0}, 8, 8)),
                                                    {},
                                                    Fill{{0xcd, 0xa2, 0x4a}, 1, false},
                                                    std::nullopt});
    return figure;
}

/// An ordinary plate: eight colours, four particulars, two notes.
inline Captions captions() {
    Captions c;
    c.title = "Private, Tannbruck Regiment";
    c.subtitle = "Line infantry of the Duchy of Arvenholt";
    c.rank = "corporal";
    c.year = "1784";
    c.drawn_by = "J. Halvern";
    c.source = "Clothing regulation, 1784 (invented)";
    c.notes = {"The first note.", "The second note."};
    for (const char* name : {"dark green", "buff", "white", "black", "red", "straw", "grey"}) {
        c.key.push_back({name, "a dye", {0x28, 0x38, 0x5f}, false, "coat, cuffs"});
    }
    c.key.push_back({"white metal", "", {0xc6, 0xc7, 0xc4}, true, "buttons"});
    c.particulars = {{"buttons", "white metal, No. 4; 7 to a lapel"},
                     {"cuffs", "round"},
                     {"pockets", "vertical"},
                     {"rank marks", "1 chevron of white, both sleeves, above the cuff"}};
    return c;
}

/// Thirty colours, long words without a break, long everything.
inline Captions crowded_captions() {
    Captions c = captions();
    c.title =
        "Musketeer of the Second Battalion of the Regiment of Foot called Tannbruck in the Order "
        "of "
        "Dress for Great Parades";
    c.subtitle = std::string(120, 'w') + " and more";
    c.drawn_by =
        "a master tailor with a very long name and his nine apprentices, all of whom are named "
        "here one after the other and none of whom may be forgotten";
    c.key.clear();
    for (int i = 0; i < 30; ++i) {
        c.key.push_back({"colour number " + std::to_string(i + 1),
                         "woad, weld, madder and " + std::string(static_cast<std::size_t>(i), 'q'),
                         {0x28, 0x38, 0x5f},
                         i % 7 == 0,
                         "coat, lapels, cuffs, collar, turnbacks"});
    }
    c.notes.emplace_back(std::string(100, 'x'));
    return c;
}

/// All of the figures' side of a plate, scaled as the program does it.
inline Document plate(const Captions& captions,
                      const Paper& paper,
                      const Typesetter& type,
                      Diagnostics& to) {
    const std::vector<Rect> frames{man("front", 1).frame, man("back", 1).frame};
    const double scale = plate_scale(frames, captions, paper, type);
    const Figure detail = button(detail_scale(button(1).frame, paper));
    return lay_out_plate(
        {{man("front", scale), man("back", scale)}, detail, {}}, captions, paper, type, to);
}

inline Rect placed(const Rect& r, const Placed& by) {
    return {by.at.x + r.left * by.factor,
            by.at.y + r.top * by.factor,
            by.at.x + r.right * by.factor,
            by.at.y + r.bottom * by.factor};
}

inline Rect common(const Rect& a, const Rect& b) {
    Rect both;
    both.left = a.left > b.left ? a.left : b.left;
    both.top = a.top > b.top ? a.top : b.top;
    both.right = a.right < b.right ? a.right : b.right;
    both.bottom = a.bottom < b.bottom ? a.bottom : b.bottom;
    return both;
}

/// Where words stand on the page: from the height of small capitals to a little below the baseline.
inline Rect box_of(const Text& text, const Placed& by, const Typesetter& type) {
    const double width = type.width(text.words, {text.face, text.size, text.tracking});
    const double left = text.align == Align::start    ? text.at.x
                        : text.align == Align::middle ? text.at.x - width / 2
                                                      : text.at.x - width;
    return placed({left, text.at.y - text.size * 0.62, left + width, text.at.y + text.size * 0.2},
                  by);
}

using SeeShape = std::function<void(const Placed&, const Shape&, const Rect& seen)>;
using SeeText = std::function<void(const Placed&, const Text&)>;

inline void walk(const Placed& item,
                 const Group& group,
                 const Rect& clip,
                 const SeeShape& shape,
                 const SeeText& text) {
    Rect seen = clip;
    if (!group.clip.empty()) {
        Rect all;
        for (const PathId id : group.clip) {
            all.include(item.drawing.paths[id].bounds());
        }
        seen = common(clip, placed(all, item));
    }
    for (const Node& node : group.children) {
        if (const auto* s = std::get_if<Shape>(&node)) {
            Rect box = item.drawing.paths[s->path].bounds();
            box = {box.left + s->shift.x,
                   box.top + s->shift.y,
                   box.right + s->shift.x,
                   box.bottom + s->shift.y};
            box = box.grown(s->stroke ? s->stroke->width / 2 : 0);
            shape(item, *s, common(placed(box, item), seen));
        } else if (const auto* t = std::get_if<Text>(&node)) {
            text(item, *t);
        } else if (const auto* inner = std::get_if<Group>(&node)) {
            walk(item, *inner, seen, shape, text);
        }
    }
}

/// Visits every shape, with the box that its clips leave of it in mm on paper, and every line of
/// words.
inline void walk(const Document& document, const SeeShape& shape, const SeeText& text) {
    for (const Page& page : document.pages) {
        for (const Placed& item : page.items) {
            walk(item, item.drawing.root, {-1e9, -1e9, 1e9, 1e9}, shape, text);
        }
    }
}

/// All words of the page without spaces, in painting order.
inline std::string all_words(const Document& document) {
    std::string all;
    walk(
        document,
        [](const Placed&, const Shape&, const Rect&) {},
        [&](const Placed&, const Text& text) {
            for (const char c : text.words) {
                if (c != ' ') {
                    all += c;
                }
            }
        });
    return all;
}

}  // namespace platewright::sample
