// SPDX-License-Identifier: MIT
// The tables of the tailor's sheets.
#include "cli/tailor_tables.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <set>
#include <variant>

#include "base/text.h"
#include "vocabulary/body.h"

namespace platewright::cli {
namespace {

std::string in_mm(double mm) {
    return format_number(mm, 0);
}

/// The unit in which the orders write, or the inch.
struct OwnUnit {
    std::string name = "in";
    double mm = 25.4;
};

OwnUnit own_unit(const Uniform& uniform) {
    for (PropertyId id = 0; id < properties().size(); ++id) {
        const auto* measure = std::get_if<Measure>(&uniform.value(id));
        if (measure == nullptr || uniform.decided[id].chain.back().strength == Strength::initial) {
            continue;
        }
        for (const LengthUnit& unit : length_units()) {
            const bool metric = unit.name == "mm" || unit.name == "cm" || unit.name == "m";
            if (!metric && measure->printed.ends_with(" " + std::string(unit.name))) {
                return {std::string(unit.name), unit.mm};
            }
        }
    }
    return {};
}

WorkshopTable table(std::string title, TableRow headings, std::vector<double> shares) {
    WorkshopTable made;
    made.title = std::move(title);
    made.headings = std::move(headings);
    made.shares = std::move(shares);
    return made;
}

std::string upper_first(std::string words) {
    if (!words.empty() && words.front() >= 'a' && words.front() <= 'z') {
        words.front() = static_cast<char>(words.front() - 'a' + 'A');
    }
    return words;
}

/// How many, how large, how far from the end of the line and from one another.
std::string row_words(const FlatRow& row, const OwnUnit& unit) {
    std::string words = std::to_string(row.at.size());
    if (row.kind == FlatRow::Kind::buttons) {
        words += row.at.size() == 1 ? " button, " : " buttons, ";
        words += in_mm(row.size) + " mm across";
    } else {
        words += row.kind == FlatRow::Kind::loops ? " loops of lace, " : " buttonholes, ";
        words += in_mm(row.size) + " mm long";
    }
    if (row.at.size() > 1) {
        double apart = 0;
        for (std::size_t i = 1; i < row.at.size(); ++i) {
            apart += length(row.at[i] - row.at[i - 1]);
        }
        apart /= static_cast<double>(row.at.size() - 1);
        words += "; " + format_number(apart, 1) + " mm (" + in_eighths(apart, unit.name, unit.mm) +
                 ") from middle to middle; the first " +
                 in_mm(row.line.empty() ? 0 : length(row.at.front() - row.line.front())) +
                 " mm from the upper or inner end of its line";
    }
    return words;
}

std::string mark_words(const FlatMarks& marks, const OwnUnit& unit) {
    const FlatMarks::Band& first = marks.bands.front();
    const std::size_t middle = first.lower.size() / 2;
    double above = 1e9;
    for (const Point p : marks.edge) {
        above = std::min(above, length(p - first.lower[middle]));
    }
    std::string words = std::to_string(marks.bands.size()) + " of " + in_mm(first.width) + " mm (" +
                        in_eighths(first.width, unit.name, unit.mm) + "), the lowest " +
                        in_mm(above) + " mm above the edge at its middle";
    if (marks.bands.size() > 1) {
        const double apart = length(marks.bands[1].lower[middle] - first.upper[middle]);
        words += ", " + in_mm(apart) + " mm of cloth between them";
    }
    words += "; at " + format_number(angle_of(first, marks.edge), 0) + "\u00b0 to the edge";
    return words;
}

}  // namespace

std::string in_eighths(double mm, const std::string& unit, double unit_mm) {
    const long eighths = std::lround(mm / unit_mm * 8);
    const long whole = eighths / 8;
    const long rest = eighths % 8;
    std::string words = whole > 0 || rest == 0 ? std::to_string(whole) : "";
    if (rest > 0) {
        const long divisor = std::gcd(rest, 8L);
        words += (words.empty() ? "" : " ") + std::to_string(rest / divisor) + "/" +
                 std::to_string(8 / divisor);
    }
    return words + " " + unit;
}

std::vector<WorkshopTable> measure_tables(const TableSource& source) {
    const OwnUnit unit = own_unit(source.uniform);
    std::vector<WorkshopTable> tables;
    WorkshopTable man = table(
        "The man",
        {"measure (ISO 8559-1)", "how it is taken", "mm", unit.name, "as the flats are drawn, mm"},
        {0.22, 0.42, 0.09, 0.12, 0.15});
    for (const BodyRow& row : body_rows()) {
        const double mm = source.body.of(row.measure);
        man.rows.push_back({std::string(row.name),
                            std::string(row.taken),
                            in_mm(mm),
                            in_eighths(mm, unit.name, unit.mm),
                            in_mm(reference_body().of(row.measure))});
    }
    man.remarks = {"Standard sizes: " + std::string(source_of_sizes()) + "."};
    tables.push_back(std::move(man));
    WorkshopTable made = table("The garments, measured on the drawings",
                               {"garment", "what", "mm", unit.name, "ordered"},
                               {0.24, 0.34, 0.12, 0.14, 0.16});
    for (const auto& [view, dimensions] : source.dimensions) {
        for (const Dimension& each : dimensions) {
            made.rows.push_back({source.flats.at(view).title,
                                 each.what,
                                 in_mm(each.mm()),
                                 in_eighths(each.mm(), unit.name, unit.mm),
                                 each.stated ? each.stated->printed : ""});
        }
    }
    made.remarks = {
        "Girths are half of the garment as it lies. Fractions are the nearest eighth; the "
        "millimetres are what was measured."};
    tables.push_back(std::move(made));
    return tables;
}

std::vector<WorkshopTable> placement_tables(const TableSource& source) {
    const OwnUnit unit = own_unit(source.uniform);
    WorkshopTable made = table("Buttons, holes and marks", {"on", "where"}, {0.3, 0.7});
    std::set<std::string> told;
    for (const auto& [view, flat] : source.flats) {
        for (const FlatMarks& marks : flat.marks) {
            const std::string sleeve =
                (marks.group == "service" ? "service marks, "
                 : marks.group == "rings" ? "cuff rings, "
                                          : "rank marks, ") +
                std::string(marks.left_sleeve ? "the wearer's left sleeve" : "his right sleeve");
            if (told.insert(sleeve).second) {
                made.rows.push_back({upper_first(sleeve), mark_words(marks, unit)});
            }
        }
        for (const FlatPart& part : flat.parts) {
            // What is alike on both sides is told of the left.
            if (part.name.find("right") != std::string::npos) {
                continue;
            }
            for (const FlatRow& row : part.rows) {
                const std::string words = row.at.empty() ? "" : row_words(row, unit);
                const std::string key =
                    flat.title + ": " + part.name.substr(0, part.name.find('-'));
                if (!words.empty() && told.insert(key + words).second) {
                    made.rows.push_back({key, words});
                }
            }
        }
    }
    return {std::move(made)};
}

std::vector<WorkshopTable> material_tables(const std::vector<MaterialLine>& lines) {
    std::vector<WorkshopTable> tables;
    std::string garment;
    for (const MaterialLine& line : lines) {
        if (line.garment != garment) {
            garment = line.garment;
            tables.push_back(
                table(garment == "man" ? "All together, for one man" : upper_first(garment),
                      {"material", "colour or kind", "amount", "how it comes about"},
                      {0.14, 0.22, 0.14, 0.5}));
        }
        tables.back().rows.push_back(
            {line.kind, line.what, format_number(line.amount, 2) + " " + line.unit, line.sum});
    }
    if (!tables.empty()) {
        tables.back().remarks = {
            "Soak and dry woollen cloth before it is cut. Pieces are laid out on shelves, one "
            "beside the other, the longest first (first-fit decreasing height: Coffman, Garey, "
            "Johnson, Tarjan 1980); who cuts well needs less. Waste of lace and piping, spare "
            "buttons, thread and hooks: common practice, no source."};
    }
    return tables;
}

}  // namespace platewright::cli
