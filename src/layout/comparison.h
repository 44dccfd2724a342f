// SPDX-License-Identifier: MIT
// Men side by side: pictures at one scale, a table of what differs, what is the same said once.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/ink.h"
#include "base/language.h"
#include "compose/figure.h"
#include "layout/layout.h"

namespace platewright {

/// What sets a man apart, and where it is seen.
struct ComparedCallout {
    /// `cuffs: sea green, slashed`.
    std::string words;
    /// Number of the row of `MenCompared::differ` that tells of the thing first.
    std::size_t row = 0;
    /// Number of the view it is led to on, and places on that figure, mm on the body; at least one.
    std::size_t view = 0;
    std::vector<Site> sites;
};

/// One man: his views, and what sets him apart, what matters most first; each is led to where there
/// is room for it, by its words, or by the letter of its row.
struct ComparedMan {
    std::string name;
    std::string note;
    std::vector<ComparedCallout> callouts;
    std::vector<Figure> views;
};

/// What one man has of a thing, with its colour.
struct ComparedValue {
    std::string words;
    std::optional<KeyEntry> colour;
    /// What else is said of it: `full, buttons: 7`.
    std::string note = {};
};

/// One thing in which the men differ; a value for each man.
struct ComparedThing {
    std::string name;
    std::vector<ComparedValue> values;
};

/// A part of the dress in which the men differ, of each man, composed for `near_scale`.
struct ComparedDetail {
    std::string name;
    std::vector<Figure> pictures;
};

/// A heading with paragraphs under it.
struct ComparedWords {
    std::string heading;
    std::vector<std::string> paragraphs;
};

/// The same with a table under it, a column for each man; nothing is said without rows and
/// paragraphs.
struct ComparedTable {
    ComparedWords words;
    std::vector<ComparedThing> rows = {};
};

/// All that a comparison says.
struct MenCompared {
    std::string title;
    std::string subtitle;
    std::string drawn_by;
    std::string source;
    std::vector<std::string> notes;
    Language language = Language::english;
    /// Whether samples are coloured or hatched.
    Ink ink = Ink::colour;
    std::vector<ComparedMan> men;
    std::vector<ComparedThing> differ;
    std::vector<ComparedDetail> details;
    /// What passes from hand to hand, of more than two men.
    ComparedTable carried = {};
    std::vector<ComparedWords> words;
};

/// The denominator at which the frames of that many men stand side by side on the paper.
double comparison_scale(const std::vector<std::vector<Rect>>& frames, const Paper& paper);

/// What is shown of a detail of that frame: as wide as a column of the table, in measure.
Rect near_window(const Rect& frame, std::size_t men, const Paper& paper);

/// The same for a detail of that frame, of that many men.
double near_scale(const Rect& frame, std::size_t men, const Paper& paper);

/// The comparison on as many pages as it takes; details, what matters most first, as far as they
/// fill pages that are there anyway, or one more where none would be seen. Warnings:
/// layout.too-wide, layout.too-large.
Document lay_out_comparison(const MenCompared& compared,
                            const Paper& paper,
                            const Typesetter& type,
                            Diagnostics& to);

}  // namespace platewright
