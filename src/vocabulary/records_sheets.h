// SPDX-License-Identifier: MIT
// The keys of sheets about several men, or about one man in several ways, and of what they list.
#pragma once

#include <array>

#include "vocabulary/records.h"

namespace platewright::rows {

/// Of every sheet.
inline constexpr Key kLanguage{
    .key = "language",
    .holds = Holds::choice,
    .meaning =
        "the language of headings, names of garments and footnotes: English, French or "
        "German; `en` if not written. What is written in the file is printed as it is",
    .choices = "en|fr|de"};

/// A comparison.
inline constexpr std::array kComparison = std::to_array<Key>({
    {.key = "comparison",
     .meaning = "title of a sheet that sets men side by side",
     .example = "Two green regiments",
     .required = true},
    {.key = "subtitle", .meaning = "second line of the title"},
    {.key = "drawn by", .meaning = "who made the sheet"},
    {.key = "source", .meaning = "where the facts are from, where the plates do not say"},
    {.key = "notes", .holds = Holds::notes, .meaning = "remarks printed on the sheet"},
    kLanguage,
    {.key = "men",
     .holds = Holds::lines,
     .meaning = "the men, two to six: the paths of their plates from this file, in this order",
     .example = "[tannbruck-corporal.yaml, kaldermoor-private.yaml]",
     .required = true},
    {.key = "views",
     .holds = Holds::lines,
     .meaning = "the views to draw of each: `front`, `back`, `side`; the front if not written"},
});

/// A handout.
inline constexpr std::array kHandout = std::to_array<Key>({
    {.key = "handout",
     .meaning = "title of a recruit's own sheets",
     .example = "For the recruit of the Tannbruck Regiment",
     .required = true},
    {.key = "subtitle", .meaning = "second line of the title"},
    {.key = "drawn by", .meaning = "who made the sheets"},
    {.key = "source", .meaning = "where the facts are from, where the plate does not say"},
    {.key = "notes", .holds = Holds::notes, .meaning = "remarks printed on the sheets"},
    kLanguage,
    {.key = "man",
     .meaning = "the path of the recruit's plate from this file: himself in full dress",
     .example = "tannbruck-corporal.yaml",
     .required = true},
    {.key = "unit",
     .holds = Holds::record,
     .meaning = "whom he joins, and where to ask",
     .of = Record::unit},
    {.key = "kit",
     .holds = Holds::records,
     .meaning = "what is said of a thing of his kit, or a thing that no plate shows",
     .of = Record::kit_item},
    {.key = "orders of dress",
     .holds = Holds::lines,
     .meaning = "the orders of dress to show, in this order; all of the regulation if not written",
     .example = "[parade, field, fatigue]"},
    {.key = "putting on", .holds = Holds::notes, .meaning = "how it is put on, step by step"},
    {.key = "care", .holds = Holds::notes, .meaning = "how it is cared for"},
    {.key = "cautions", .holds = Holds::notes, .meaning = "cautions besides the usual ones"},
});

/// The recruit's unit, of a handout.
inline constexpr std::array kUnit = std::to_array<Key>({
    {.key = "name", .meaning = "its name", .example = "The Tannbruck Company"},
    {.key = "contact",
     .holds = Holds::lines,
     .meaning = "where to ask: names and addresses, a line each"},
    {.key = "notes", .holds = Holds::notes, .meaning = "what it wants every recruit to know"},
});

/// One thing of its kit list.
inline constexpr std::array kKitItem = std::to_array<Key>({
    {.key = "item",
     .meaning = "what it is called; a thing of the plate goes by the plate's word for it",
     .example = "coat",
     .required = true},
    {.key = "when",
     .holds = Holds::choice,
     .meaning = "by when it is needed",
     .choices = "first muster|season|later|borrow"},
    {.key = "way",
     .holds = Holds::choice,
     .meaning = "how to come by it",
     .choices = "make|buy|borrow"},
    {.key = "quantity", .holds = Holds::number, .meaning = "how many", .most = 99},
    {.key = "material", .meaning = "what it is made of"},
    {.key = "cost", .meaning = "what it costs, with its currency", .example = "220 EUR"},
    {.key = "from", .meaning = "who sells it, lends it or shows how to make it"},
    {.key = "source", .meaning = "on what it rests that it was worn"},
    {.key = "note", .meaning = "what to look for"},
});

/// A chart.
inline constexpr std::array kChart = std::to_array<Key>({
    {.key = "chart",
     .meaning = "title of a chart",
     .example = "The regiments of the line",
     .required = true},
    {.key = "subtitle", .meaning = "second line of the title"},
    {.key = "drawn by", .meaning = "who made the chart"},
    {.key = "source", .meaning = "where the facts are from, where the regulation does not say"},
    {.key = "notes", .holds = Holds::notes, .meaning = "remarks printed on the chart"},
    kLanguage,
    {.key = "of",
     .holds = Holds::choice,
     .meaning = "what it shows; the regiments of the regulation if not written",
     .choices = "regiments|ranks|service|colours"},
    {.key = "regulation",
     .meaning = "the path of the regulation from this file",
     .example = "arvenholt/regulation-1784.yaml"},
    {.key = "regiment",
     .meaning = "for ranks and service: in whose coat they are shown; a name of the series, or the "
                "path of its file",
     .example = "Tannbruck"},
    {.key = "company", .meaning = "in which company the men stand"},
    {.key = "rank", .meaning = "the rank of the men, where ranks are not what is shown"},
    {.key = "as of",
     .holds = Holds::first_day,
     .meaning = "the day whose regulations hold",
     .example = "1788-05-01"},
    {.key = "palettes",
     .holds = Holds::lines,
     .meaning = "for colours: the palettes to show, by their names; all if not written",
     .example = "[Cloth, Metals]"},
});

}  // namespace platewright::rows
