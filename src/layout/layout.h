// SPDX-License-Identifier: MIT
// Fourth stage: figures and captions to pages.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/diagnostic.h"
#include "compose/figure.h"
#include "layout/page.h"
#include "text/typesetter.h"

namespace platewright {

/// A sheet of paper, mm.
struct Paper {
    double width = 210;
    double height = 297;
};

/// `A3` to `A6`, `B4`, `B5`, `letter`, `legal`, `tabloid`, `ledger`, each also with `-landscape` or
/// `-portrait` behind it, or `210x297mm`; empty if it is none of these or not between 80 and 2000
/// mm a side. Capitals do not matter. Source of the sizes: ISO 216:2007 and ASME Y14.1; legal is
/// the trade's 8 1/2 by 14 in.
std::optional<Paper> parse_paper(std::string_view text);

/// The scale's denominator for figures of these frames side by side on a plate of that paper: the
/// largest figures of a usual scale (4, 4.5, 5 ... 10, 12, 15, 20 ...) that leave the captions room
/// at 7 pt or more.
double plate_scale(const std::vector<Rect>& frames,
                   const Captions& captions,
                   const Paper& paper,
                   const Typesetter& type);

/// The denominator at which the button of that frame fills its roundel; below 1 it is drawn larger
/// than life.
double detail_scale(const Rect& frame, const Paper& paper);

/// The denominator at which a part of the figure of that frame fills a roundel.
double window_scale(const Rect& frame, const Paper& paper);

/// How wide a part of figures at 1 : `scale` can be, in mm on the body, to be seen in a roundel at
/// twice their size.
double window_width(double scale, const Paper& paper);

/// A part of the figure enlarged: `cuff` with its picture, cut to its frame.
struct PlateDetail {
    std::string words;
    Figure picture;
};

/// What a plate shows. The button only where it is worn.
struct PlatePictures {
    std::vector<Figure> figures;
    std::optional<Figure> button;
    std::vector<PlateDetail> details;
};

/// The reference plate: figures side by side on one ground line, button and details enlarged where
/// there is room, colour key,
/// particulars, notes. Words are never left out. Where they do not fit, the plate gives up its
/// furniture in this order: colophon, headings, wide spacing; then the type is set smaller than 7
/// pt and the warning layout.too-long added, which has no place in a file.
Document lay_out_plate(const PlatePictures& pictures,
                       const Captions& captions,
                       const Paper& paper,
                       const Typesetter& type,
                       Diagnostics& to);

/// One option with what to write for it.
struct WardrobeSample {
    /// What to write.
    std::string words;
    /// What is to be seen, in mm on the body.
    Rect frame;
    /// Drawn over `room_round(frame)`, so that its tile can be filled.
    Figure picture;
    /// What the trade calls it; empty where `words` say it.
    std::string called = {};
    /// Whether it stands in the middle of a tile higher than its frame; else what is below it is
    /// shown with it.
    bool centred = false;
};

/// What of a man a tile of the index may show around a frame: tiles are of one width, whatever is
/// seen in them, and higher where one in their row is. Where it would reach below `lowest`, what
/// stands above the frame is shown instead.
Rect room_round(const Rect& frame, bool centred = false, double lowest = 1e6);

/// Options that are looked for together.
struct WardrobeSection {
    std::string title;
    std::vector<WardrobeSample> samples;
};

/// Everything a man could wear.
struct WardrobeIndex {
    std::string title;
    std::string subtitle;
    std::vector<WardrobeSection> sections;
};

/// The denominator at which a picture of that frame has the usual height on the index.
double sample_scale(const Rect& frame, const Paper& paper);

/// The index: as many pages as are needed, all filled, with pictures of one height in even rows.
Document lay_out_wardrobe(const WardrobeIndex& index, const Paper& paper, const Typesetter& type);

/// Text dump of the stage: sheet, layers in painting order, and of each its shapes with rounded
/// boxes and its words.
std::string dump(const Document& document);

}  // namespace platewright
