// SPDX-License-Identifier: MIT
// Charts: everything of a kind on as few pages as it takes, in groups.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/language.h"
#include "compose/figure.h"
#include "layout/layout.h"

namespace platewright {

/// One thing of a chart. What it has no picture of is left empty.
struct ChartEntry {
    std::string name;
    /// Beneath the name; the last of them beneath the lens, if there is one.
    std::vector<std::string> lines;
    std::optional<Figure> picture;
    /// Under the picture, beside the words.
    std::optional<Figure> button;
    /// Instead of a picture.
    std::optional<KeyEntry> colour;
    /// What tells this one from the others, enlarged in a lens under the name.
    std::optional<Figure> detail = {};
    /// Whether it will have one.
    bool has_detail = false;
};

/// Things that belong together.
struct ChartGroup {
    std::string title;
    /// Shown before the title.
    std::optional<KeyEntry> colour;
    std::vector<ChartEntry> entries;
};

/// A chart. `aspect`: height of its pictures for a width of 1; `least_aspect`: how low samples may
/// be cut where that saves a page or keeps them wide; 0: not at all.
struct Chart {
    std::string title;
    std::string subtitle;
    std::string drawn_by;
    std::string source;
    std::vector<std::string> notes;
    Language language = Language::english;
    /// Samples of colour are coloured or hatched.
    Ink ink = Ink::colour;
    double aspect = 1;
    double least_aspect = 0;
    /// Whether its pictures are of men who stand in rows on one strip of ground each: they are made
    /// smaller rather than cut.
    bool standing = false;
    std::vector<ChartGroup> groups;
};

/// The denominator at which pictures `width` mm wide on the body fill their cells. Needs no
/// pictures yet.
double chart_scale(const Chart& chart, double width, const Paper& paper, const Typesetter& type);

/// The chart with cells as large as leave it on one page, or on as many as it takes. Warning:
/// layout.too-long, where not even words without pictures fit a page.
Document lay_out_chart(const Chart& chart,
                       const Paper& paper,
                       const Typesetter& type,
                       Diagnostics& to);

}  // namespace platewright
