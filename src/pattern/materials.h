// SPDX-License-Identifier: MIT
// What a man's clothing takes: cloth, lining, lace, piping, buttons, thread and hooks, each with
// its sum.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/language.h"
#include "pattern/laying.h"
#include "pattern/pieces.h"

namespace platewright {

/// Widths and spares; lengths in mm.
struct MaterialRules {
    /// Width of the cloth between its lists: six quarters of a yard, the usual planning width.
    double cloth_width = 1371.6;
    /// As printed: `54 in`.
    std::string cloth_width_printed = "54 in";
    /// Shares that are lost: of lace in cutting, of piping at its ends. Source: common practice of
    /// the trade, no source.
    double lace_waste = 0.10;
    double piping_waste = 0.05;
    /// One spare button for so many; then whole dozens.
    int buttons_for_a_spare = 12;
    /// Of `MaterialLine::what` and `sum`.
    Language language = Language::english;
};

/// One line of the list.
struct MaterialLine {
    /// `coat`, `waistcoat`, `breeches`, `gaiters`; `man` for all together.
    std::string garment;
    /// `cloth`, `lining`, `interlining`, `lace`, `piping`, `buttons`, `thread`, `hooks`,
    /// `buckles`, `tape`, `leather`.
    std::string kind;
    /// Colour or metal: `dark green`; with the size for buttons: `white metal, 16 mm`.
    std::string what;
    double amount = 0;
    /// `m`, `dozen`, `pair`, `pairs`.
    std::string unit;
    /// For cloth: finished area in m²; else 0.
    double area = 0;
    /// How the amount comes about, in numbers: "5 pieces, finished 0.62 m²; …".
    std::string sum;
    /// For cloth, lining and interlining: how the pieces lie, and which they are; else empty.
    Laying lay = {};
    std::vector<PatternPiece> laid = {};
};

/// `2.1 m`, `3 dozen`.
std::string amount_words(const MaterialLine& line, Language language);

/// `coat`, `waistcoat`, `breeches`, `gaiters`: what a view of a flat shows.
std::string garment_of_view(const std::string& view);

/// What both views of a garment show is told and counted in front.
bool seen_before(const std::string& view, const FlatPart& part);

/// What a part of a flat is called, by the first word of its name: `strap-left` a `shoulder strap`.
std::string name_of_part(std::string_view part_name);

/// A strap is held by buttons through holes that they cover: how many; 0 for other parts.
int holes_under_buttons(const FlatPart& part);

/// By garment, then for the man, cloth first. Pieces of one cloth are laid out on it
/// (`pattern/laying.h`).
std::vector<MaterialLine> materials_of(const PatternSource& source,
                                       const std::vector<PatternPiece>& pieces,
                                       const MaterialRules& rules);

}  // namespace platewright
