// SPDX-License-Identifier: MIT
// The tables of the tailor's sheets.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "layout/workshop.h"

namespace platewright::cli {

/// What the tables are made from.
struct TableSource {
    Language language;
    const OwnUnit& unit;
    const Body& body;
    const Uniform& uniform;
    const std::map<std::string, Flat>& flats;
    const std::map<std::string, std::vector<Dimension>>& dimensions;
    /// The views of `flats`, as the garments follow one another.
    std::vector<std::string> views;
};

/// The man's measures beside those of the man the flats are drawn for.
WorkshopTable man_table(const TableSource& source);

/// The girths of the garments: the man's, the ease, and what has come of it.
WorkshopTable girth_table(const TableSource& source);

/// Every dimension of every garment, in mm and in the order's own unit.
WorkshopTable garment_table(const TableSource& source);

/// Where buttons and marks sit: how many, how far apart, from where.
std::vector<WorkshopTable> placement_tables(const TableSource& source);

/// What each garment takes, then the man.
std::vector<WorkshopTable> material_tables(Language language,
                                           const std::vector<MaterialLine>& lines);

/// How the pieces of each cloth and lining lie, of those that take some length of it.
std::vector<ClothPlan> cloth_plans(Language language,
                                   const std::vector<MaterialLine>& lines,
                                   const MaterialRules& rules);

/// The pieces with their areas and edges, added up.
WorkshopTable piece_table(Language language, const std::vector<PatternPiece>& pieces);

}  // namespace platewright::cli
