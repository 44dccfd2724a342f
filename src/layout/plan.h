// SPDX-License-Identifier: MIT
// The plan of a plate: what goes where and how large, before anything is drawn.
#pragma once

#include <string>
#include <vector>

#include "compose/figure.h"
#include "layout/block.h"
#include "layout/layout.h"
#include "layout/ruler.h"
#include "layout/style.h"

namespace platewright::sheet {

/// What is to be put on which paper.
struct Task {
    /// Boxes of the figures in mm on the body, from left to right, all on one ground line.
    std::vector<Rect> frames;
    const Captions& captions;
    Paper paper;
    /// What stands under each figure: `front`, `gaiter, outer side`.
    std::vector<std::string> labels = {};

    /// Width of the words on each side of the figures that name things, mm; 0 if there are none.
    [[nodiscard]] double callout_width() const;

    /// What of that width the words on each side take; between several figures there is room for
    /// others, which gets the rest.
    [[nodiscard]] double column_width() const;
};

/// What a plate gives up so that its words fit, one after the other: first of all the deep margin
/// at its foot.
enum class Economy { generous, nothing, colophon, headings, wide_spacing };

/// How closely the lists are packed: notes at the foot, or under the particulars, which often costs
/// no height at all.
enum class Packing { airy, notes_in_column };

/// One line of the title block, centred.
struct TitleLine {
    std::string words;
    Type type;
    Colour colour;
    double height = 0;
    double baseline = 0;
};

/// All boxes in mm on paper.
struct Plan {
    Style style;
    Economy economy = Economy::nothing;
    /// The words stand to the right of the figures, not beneath them.
    bool beside = false;
    /// mm on paper for 1 mm on the body.
    double factor = 0.1;

    /// Edge of the copper plate, and the outer line of the frame.
    Rect plate_mark;
    Rect neat;
    /// Where the frames of the figures stand, side by side.
    Rect figures;
    /// Words that name things stand beside them, and nothing else may.
    bool named = false;
    /// The words under each figure, on as many lines as keep clear of the next figure's.
    std::vector<std::vector<std::string>> labels = {};
    /// Where the title, key and notes stand.
    Rect words;
    /// How far down the words the key begins.
    double key_at = 0;

    std::vector<TitleLine> title;
    double title_height = 0;
    Block key;
    /// At the foot; empty if they stand in the last column of the key.
    Block notes;
    Packing packing = Packing::airy;

    /// Height of type for `front` and `back`.
    [[nodiscard]] double label_size() const { return style.body * 1.12 * label_share; }

    /// Below 1 where small figures stand close together.
    double label_share = 1;

    /// From one line of a label to the next.
    [[nodiscard]] double label_leading() const { return label_size() * 1.05; }

    /// Between two labels there is room for the scale; among more it would stand off the middle.
    [[nodiscard]] bool scale_below() const { return labels.size() > 2; }

    /// From the last line of the labels to the scale beneath them.
    [[nodiscard]] double scale_leading() const { return label_size() * 1.6; }

    /// Whether there is a line of credits between the frame and the edge of the plate.
    bool credits = true;

    [[nodiscard]] bool too_small() const { return style.body < kSevenPoint - 1e-6; }
};

/// The usual scale for this task; see `plate_scale`.
double choose_scale(const Task& task, Ruler& ruler);

/// The best plan at 1 : `scale`. There always is one: figures too large are made to fit, and so is
/// the type.
Plan make_plan(const Task& task, double scale, Ruler& ruler);

/// 1 on A4; grows as the side of the sheet.
double unit_of(const Paper& paper);

/// "Drawn by …" in the captions' language.
std::string credit_of(const Captions& captions);

/// Whether that fits on the line of credits; otherwise it stands among the notes.
bool credit_fits(const Task& task, const Style& style, Ruler& ruler);

}  // namespace platewright::sheet
