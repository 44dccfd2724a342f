// SPDX-License-Identifier: MIT
// The recruit's own sheets: himself in full dress, what to get, where the marks go, what to wear
// when.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "base/diagnostic.h"
#include "base/language.h"
#include "compose/figure.h"
#include "layout/layout.h"
#include "layout/page.h"
#include "text/typesetter.h"

namespace platewright {

/// A part of his dress that has a number on the figure.
struct HandoutPart {
    std::string name;
    /// "dark green, woad over weld"; may be empty.
    std::string material;
    std::optional<Colour> colour = {};
    /// Hatched instead, on a sheet without colour.
    std::optional<TinctureId> hatch = {};
    bool metal = false;
    /// Places on the figure any of which may be pointed at, mm on the body; at least one.
    std::vector<Site> sites;
};

/// One line of the kit list; whatever is empty is not printed.
struct HandoutItem {
    std::string name;
    std::string material = {};
    /// What is on it: "buff: lapels, cuffs; white metal: buttons".
    std::string details = {};
    std::optional<Colour> colour = {};
    /// Hatched instead, on a sheet without colour.
    std::optional<TinctureId> hatch = {};
    bool metal = false;
    /// `2`, `1 pair`.
    std::string quantity = {};
    std::string way = {};
    std::string cost = {};
    /// Who sells or lends it, and what to look for.
    std::string note = {};
    std::string source = {};
};

/// What is needed by the same time, with what it costs together: "610 EUR".
struct HandoutStage {
    std::string title;
    std::string total;
    std::vector<HandoutItem> items;
};

/// A measure of a mark: as the regulation prints it, and in mm.
struct HandoutMeasure {
    std::string what;
    std::string printed;
    std::string mm;
};

/// One kind of mark, and where it goes.
struct HandoutMark {
    std::string name;
    std::string words;
    std::vector<HandoutMeasure> measures;
    /// The part of the figure where it sits; composed for `mark_scale`.
    std::optional<Figure> picture;
};

/// An order of dress; `picture` is composed for `order_scale`.
struct HandoutOrder {
    std::string title;
    std::string means;
    /// "put on: …", "leave off: …", a line each.
    std::vector<std::string> changes;
    Figure picture;
};

/// Everything the sheets say.
struct Handout {
    std::string title;
    std::string subtitle;
    std::string drawn_by;
    std::string source;
    Language language = Language::english;
    std::string unit;
    std::vector<std::string> contact;
    std::vector<std::string> unit_notes;
    std::vector<std::string> notes;
    /// Of what the marks' words say.
    std::vector<Footnote> footnotes = {};
    /// Composed for `handout_scale`.
    Figure man;
    std::vector<HandoutPart> parts;
    /// From behind, composed for `back_scale`; its parts are those that are not seen from before.
    std::optional<Figure> back = {};
    std::vector<HandoutPart> parts_behind = {};
    /// "rank marks, service marks": what is worn only once it is earned; may be empty.
    std::string earned = {};
    std::vector<HandoutStage> stages;
    /// What everything costs: "1040 EUR"; empty if no cost is given.
    std::string total;
    std::vector<HandoutMark> marks;
    std::vector<HandoutOrder> orders;
    std::vector<std::string> putting_on;
    std::vector<std::string> care;
    /// Besides the usual ones.
    std::vector<std::string> cautions;
    /// What type and figures are of their usual size, so that the sheets stay few: the scales below
    /// must have been asked for with it.
    double closeness = 1;
};

/// The denominators for the large figure, for the one from behind, for the small ones of so many
/// orders of dress, and for the part of a figure where a mark sits.
double handout_scale(const Rect& frame, const Paper& paper, double closeness = 1);
double back_scale(const Rect& frame, const Paper& paper, double closeness = 1);
double order_scale(const Rect& frame, std::size_t orders, const Paper& paper, double closeness = 1);
double mark_scale(const Rect& frame, const Paper& paper, double closeness = 1);

/// How closely set sheets may be, from the airiest; the first that needs no more than
/// `most_handout_pages` is right.
inline constexpr std::array<double, 5> kHandoutClosenesses{1, 0.94, 0.88, 0.82, 0.76};

/// Four of A4 or letter are handed over and read; small paper takes two more.
std::size_t most_handout_pages(const Paper& paper);

/// As many pages as are needed, with outline and links. What cannot fit is told: see
/// `sheet::Flow`; layout.too-many if the figure has no room for all its numbers.
Document lay_out_handout(const Handout& handout,
                         const Paper& paper,
                         const Typesetter& type,
                         Diagnostics& to);

}  // namespace platewright
