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
    const Body& body;
    const Uniform& uniform;
    const std::map<std::string, Flat>& flats;
    const std::map<std::string, std::vector<Dimension>>& dimensions;
};

/// The man's measures beside those of the man the flats are drawn for, then every dimension of
/// every garment, in mm and in the order's own unit.
std::vector<WorkshopTable> measure_tables(const TableSource& source);

/// Where buttons and marks sit: how many, how far apart, from where.
std::vector<WorkshopTable> placement_tables(const TableSource& source);

/// What each garment takes, then the man.
std::vector<WorkshopTable> material_tables(const std::vector<MaterialLine>& lines);

/// A length in a unit that is written with fractions, to the nearest eighth: `3 1/2 in`.
std::string in_eighths(double mm, const std::string& unit, double unit_mm);

}  // namespace platewright::cli
