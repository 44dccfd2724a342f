// SPDX-License-Identifier: MIT
// Sheets about several men, or about one man in several ways: what was written. Paths count from
// the file they stand in and are not yet opened.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "read/specified.h"
#include "vocabulary/body.h"
#include "vocabulary/measure.h"

namespace platewright {

/// What the heading, the foot and the notes of any such sheet say; empty if not written.
struct SheetWords {
    WrittenText title;
    std::optional<WrittenText> subtitle;
    std::optional<WrittenText> drawn_by;
    std::optional<WrittenText> source;
    std::vector<WrittenText> notes;
    std::optional<Language> language;
};

/// How many men a comparison sets side by side.
inline constexpr std::size_t kFewestCompared = 2;
inline constexpr std::size_t kMostCompared = 6;

/// Two to six men side by side.
struct SpecifiedComparison {
    SheetWords words;
    /// Paths of their plates.
    std::vector<WrittenText> men;
    /// Views to draw of each; empty: the front.
    std::vector<WrittenText> views;
};

/// The recruit's unit, as it wants to be written to.
struct Unit {
    std::optional<WrittenText> name;
    std::vector<WrittenText> contact;
    std::vector<WrittenText> notes;
};

/// When a thing of the kit list is needed.
enum class KitStage { first_muster, season, later, borrow };

/// How a recruit comes by a thing.
enum class KitWay { make, buy, borrow };

/// One thing of the kit list.
struct KitItem {
    WrittenText item;
    std::optional<KitStage> stage;
    std::optional<KitWay> way;
    std::optional<std::pair<int, Span>> quantity;
    std::optional<WrittenText> material;
    std::optional<WrittenText> cost;
    std::optional<WrittenText> from;
    std::optional<WrittenText> source;
    std::optional<WrittenText> note;
};

/// A recruit's own sheets.
struct SpecifiedHandout {
    SheetWords words;
    /// Path of his plate: full dress.
    WrittenText man;
    Unit unit;
    std::vector<KitItem> kit;
    /// Only these orders of dress, in this order; empty: all of the regulation.
    std::vector<WrittenText> orders;
    /// How it is put on and cared for, and cautions besides the usual ones.
    std::vector<WrittenText> putting_on;
    std::vector<WrittenText> care;
    std::vector<WrittenText> cautions;
};

/// What a chart shows.
enum class ChartOf { regiments, ranks, service, colours };

/// All of a kind on one sheet, as many pages as it takes.
struct SpecifiedChart {
    SheetWords words;
    ChartOf of = ChartOf::regiments;
    /// Paths; what the chart needs of them is known to whoever draws it.
    std::optional<WrittenText> regulation;
    std::optional<WrittenText> regiment;
    std::optional<WrittenText> company;
    std::optional<WrittenText> rank;
    std::optional<WrittenDate> as_of;
    /// Names of palettes; empty: all.
    std::vector<WrittenText> palettes;
    Span span;
};

/// A length with its place.
struct WrittenLength {
    Measure measure;
    Span span;
};

/// Standard sizes, whole men by name.
struct SpecifiedSizes {
    struct Size {
        WrittenText name;
        Body body;
    };

    std::vector<Size> sizes;
};

/// The size that is taken where none is named.
inline constexpr std::string_view kUsualSize = "medium";

/// Sheets to cut and sew from.
struct SpecifiedWorkshop {
    SheetWords words;
    /// Path of the man's plate.
    WrittenText man;
    /// Empty: all that he wears, and all sheets.
    std::vector<WrittenText> garments;
    std::vector<WrittenText> sheets;
    /// Denominator of the flats' scale; 0: the largest that fits.
    int scale = 0;
    /// Name of a standard size; empty: the usual one.
    std::optional<WrittenText> size;
    /// In the order of `BodyMeasure`.
    std::array<std::optional<WrittenLength>, kBodyMeasures> body;
    std::optional<WrittenLength> allowance;
    std::optional<WrittenLength> cloth_width;
    bool whole_garments = false;
    Span span;
};

/// What `garments` and `sheets` may name.
inline constexpr std::array<std::string_view, 4> kGarmentNames = {
    "coat", "waistcoat", "breeches", "gaiters"};
inline constexpr std::array<std::string_view, 5> kWorkshopSheets = {
    "flats", "placement", "pieces", "materials", "full size"};

}  // namespace platewright
