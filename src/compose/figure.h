// SPDX-License-Identifier: MIT
// A composed figure: a drawing in mm on the body, and all that a sheet must say of it as plain
// data.
#pragma once

#include <cstddef>
#include <map>
#include <string>
#include <vector>

#include "base/colour.h"
#include "base/drawing.h"
#include "base/geometry.h"
#include "base/ink.h"
#include "base/language.h"
#include "base/tincture.h"

namespace platewright {

/// A named place on the figure with the way it faces.
struct Anchor {
    Point at;
    Point facing;
};

/// A place where a material is seen well, in mm on the body: nothing else is nearer than `room`.
struct Site {
    Point at;
    double room = 0;
    /// How many other things a level line from the left or from the right crosses on its way there.
    int crossed_from_left = 0;
    int crossed_from_right = 0;
};

/// How much is seen of a property's material, or of the parts that a choice gives their shape, mm²
/// on the body, and where best: one place left of the figure's middle on the page, or right of it,
/// or both.
struct Seen {
    double area = 0;
    std::vector<Site> sites;
    /// The property whose material lies under most of it; empty: none, or not known of a choice.
    std::string beneath = {};
    /// The outermost places with half as much room on the left and on the right: a line from there
    /// crosses least of the figure.
    std::vector<Site> edges = {};
    /// For every few centimetres of its height the outermost places of its larger pieces: a level
    /// line leads to them from words at any of these heights.
    std::vector<Site> levels = {};
};

/// All places that may be pointed at.
inline std::vector<Site> all_sites(const Seen& seen) {
    std::vector<Site> all = seen.sites;
    all.insert(all.end(), seen.edges.begin(), seen.edges.end());
    all.insert(all.end(), seen.levels.begin(), seen.levels.end());
    return all;
}

/// What lies on top in each cell of a coarse raster over the frame, so that lines can be led round
/// it: 0 paper, -1 what has no material of its own (a musket), -2 skin, else a number for each.
struct Tops {
    Rect frame;
    double cell = 0;
    std::size_t columns = 0;
    std::vector<int> things;

    [[nodiscard]] bool empty() const { return things.empty(); }
};

/// As how many things what a line enters counts that comes from another: no hand or face is crossed
/// where there is any other way.
inline int crossing_of(int thing) {
    constexpr int skin = 8;
    constexpr int musket = 4;
    return thing == -2 ? skin : thing == -1 ? musket : thing == 0 ? 0 : 1;
}

/// What shows less than this, in mm² on the body, nobody would find.
inline constexpr double kLeastFound = 150;

/// Contract: the drawing's colours are final and its line weights hold when it is printed at 1 :
/// `scale`.
struct Figure {
    /// `front`, `back`, `detail`.
    std::string view;
    /// Title of the template.
    std::string title;
    Drawing drawing;
    /// What the figure covers, in mm on the body; the template's viewBox.
    Rect frame;
    /// Denominator of the scale it was drawn for.
    double scale = 8;
    std::map<std::string, Anchor> anchors;
    /// What is seen, by the keys of properties; empty for a picture of only a part.
    std::map<std::string, Seen> seen;
    /// What lies where; empty for a picture of only a part.
    Tops tops = {};
};

/// One line of the colour key: where a material is worn.
struct KeyEntry {
    std::string name;
    std::string made_of;
    Colour colour;
    bool metal = false;
    /// "coat, lapels".
    std::string worn;
    /// How it is hatched on a sheet without colour.
    TinctureId tincture = 0;
    /// The properties that are of it, by key.
    std::vector<std::string> properties = {};
    /// Of that colour on every man, and so left white where others are hatched.
    bool fixed = false;
};

/// What is said at the foot of a sheet of things that have its mark: `*`, `†` …; without a mark, of
/// what is named nowhere.
struct Footnote {
    std::string mark;
    std::string words;
};

/// What may be pointed at on a figure: `lapels: sea green`; `key`: the property by which figures
/// tell where it is seen.
struct CalloutWords {
    std::string key;
    std::string words;
    /// The mark of its footnote, which the words end with.
    std::string mark = {};
};

/// Everything that is printed about a man, so that sheets need no uniform.
struct Captions {
    Language language = Language::english;
    /// What the sheet is printed with: its samples are coloured or hatched.
    Ink ink = Ink::colour;
    std::string title;
    std::string subtitle;
    std::string rank;
    std::string year;
    std::string drawn_by;
    std::string source;
    std::vector<std::string> notes;
    std::vector<Footnote> footnotes = {};
    std::vector<KeyEntry> key;
    /// "buttons: white metal, No. 4" and so on: what the figure is too small to show.
    std::vector<std::pair<std::string, std::string>> particulars;
    /// In the order of importance.
    std::vector<CalloutWords> callouts;
};

}  // namespace platewright
