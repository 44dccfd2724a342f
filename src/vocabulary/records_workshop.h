// SPDX-License-Identifier: MIT
// The keys of a workshop sheet and of a man's measures.
#pragma once

#include <array>

#include "vocabulary/records_sheets.h"

namespace platewright::rows {

/// Sheets to cut and sew from.
inline constexpr std::array kWorkshop = std::to_array<Key>({
    {.key = "workshop",
     .meaning = "title of the tailor's sheets",
     .example = "Coat of the Tannbruck Regiment",
     .required = true},
    {.key = "subtitle", .meaning = "second line of the title"},
    {.key = "drawn by", .meaning = "who made the sheets"},
    {.key = "source", .meaning = "where the facts are from, where the plate does not say"},
    {.key = "notes", .holds = Holds::notes, .meaning = "remarks printed on the sheets"},
    kLanguage,
    {.key = "man",
     .meaning = "the path of the man's plate from this file",
     .example = "tannbruck-corporal.yaml",
     .required = true},
    {.key = "garments",
     .holds = Holds::lines,
     .meaning = "what is to be made: `coat`, `waistcoat`, `breeches`, `gaiters`; all that he wears "
                "if not written",
     .example = "[coat, waistcoat]"},
    {.key = "sheets",
     .holds = Holds::lines,
     .meaning = "which sheets, in this order: `flats`, `placement`, `pieces`, `materials`, "
                "`full size`; all of them if not written",
     .example = "[flats, placement]"},
    {.key = "scale",
     .meaning = "the scale of the flats: `1:2`, `1:5`, `1:10` or `1:20`; the largest that fits if "
                "not written",
     .example = "'1:5'"},
    {.key = "size",
     .meaning =
         "a standard size of `templates/NAME/sizes.yaml` (`small`, `medium`, `large`), where "
         "he has not been measured; `medium` if not written",
     .example = "large"},
    {.key = "measures",
     .holds = Holds::record,
     .meaning = "the man's own measures; what is not written follows from his size",
     .of = Record::body},
    {.key = "seam allowance",
     .meaning = "how much is added to the pieces for seams; `none` for finished outlines",
     .example = "10 mm"},
    {.key = "cloth width",
     .meaning = "width of the cloth between its lists; 54 in if not written",
     .example = "54 in"},
    {.key = "whole garments",
     .holds = Holds::yes_or_no,
     .meaning = "`yes` for the full size of backs, foreparts and sleeves as well, and not only of "
                "the facings; `no` if not written"},
});

/// A man's measures, in the order of `BodyMeasure`.
inline constexpr std::array kBody = std::to_array<Key>({
    {.key = "height", .meaning = "from floor to crown, without shoes", .example = "1730 mm"},
    {.key = "chest girth",
     .meaning = "over the shoulder blades, under the arms",
     .example = "96 cm"},
    {.key = "waist girth", .meaning = "at the natural waist", .example = "34 in"},
    {.key = "hip girth", .meaning = "at the fullest part of the seat", .example = "97 cm"},
    {.key = "neck girth", .meaning = "below the Adam's apple, over the nape", .example = "15 in"},
    {.key = "back neck point to waist",
     .meaning = "from the nape down the spine to the waist",
     .example = "16 1/2 in"},
    {.key = "arm length",
     .meaning = "from the point of the shoulder over the bent elbow to the wrist",
     .example = "61 cm"},
    {.key = "inside leg length", .meaning = "from the fork to the floor", .example = "79 cm"},
    {.key = "upper arm girth", .meaning = "at its thickest, hanging", .example = "31 cm"},
    {.key = "knee girth", .meaning = "round the knee, the leg straight", .example = "37 cm"},
    {.key = "lower knee girth",
     .meaning = "below the cap of the knee, where breeches are buckled",
     .example = "34 cm"},
    {.key = "calf girth", .meaning = "at the fullest part of the calf", .example = "37 cm"},
    {.key = "minimum leg girth",
     .meaning = "at the thinnest part of the leg, above the ankle",
     .example = "23 cm"},
});

}  // namespace platewright::rows
