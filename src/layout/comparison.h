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

/// One man: his views, and in what he differs, what matters most first; each is led to from his
/// first view where there is room for it.
struct ComparedMan {
    std::string name;
    std::string note;
    std::vector<CalloutWords> callouts;
    std::vector<Figure> views;
};

/// What one man has of a thing, with its colour.
struct ComparedValue {
    std::string words;
    std::optional<KeyEntry> colour;
};

/// One thing in which the men differ; a value for each man.
struct ComparedThing {
    std::string name;
    std::vector<ComparedValue> values;
};

/// A heading with paragraphs under it.
struct ComparedWords {
    std::string heading;
    std::vector<std::string> paragraphs;
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
    std::vector<ComparedWords> words;
};

/// The denominator at which the frames of that many men stand side by side on the paper.
double comparison_scale(const std::vector<std::vector<Rect>>& frames, const Paper& paper);

/// The comparison on as many pages as it takes. Warnings: layout.too-wide, layout.too-large.
Document lay_out_comparison(const MenCompared& compared,
                            const Paper& paper,
                            const Typesetter& type,
                            Diagnostics& to);

}  // namespace platewright
