// SPDX-License-Identifier: MIT
// Any bytes as a plate, a regulation, a regiment, customs, a palette and every other sheet; what
// was read is dumped, and resolved if it tells of a man: an answer or an error, never a crash.
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>

#include "base/diagnostic.h"
#include "read/read.h"
#include "require.h"
#include "resolve/resolve.h"
#include "vocabulary/body.h"

namespace platewright::fuzz {
namespace {

/// "Empty exactly when this call added an error" is part of the stage's contract; places lie within
/// the file.
void check_contract(bool has_value, const Diagnostics& problems, std::size_t size) {
    require(has_value == (problems.error_count() == 0));
    for (const Diagnostic& problem : problems.all()) {
        require(!problem.span ||
                (problem.span->begin <= problem.span->end && problem.span->end <= size));
    }
}

/// Colours for the defaults, so that resolving goes its whole way.
const SpecifiedPalette& any_palette() {
    static const SpecifiedPalette kPalette = [] {
        SourceMap sources;
        Diagnostics problems;
        const FileId file = sources.add(
            "palette.yaml",
            "palette: x\n"
            "cloth: [{name: white, colour: \"#eeeeee\"}, {name: red, colour: \"#aa3333\"},\n"
            "  {name: black, colour: \"#222222\"}, {name: dark blue, colour: \"#223355\"},\n"
            "  {name: crimson, colour: \"#882233\"}]\n"
            "metal: [{name: yellow, colour: \"#ccaa44\"}, {name: steel, colour: \"#999999\"},\n"
            "  {name: silver, colour: \"#c8c8c8\"}]\n"
            "leather: [{name: white, colour: \"#eeeecc\"}, {name: black, colour: \"#333333\"}]\n"
            "skin: [{name: fair, colour: \"#ddbb99\"}]\n"
            "hair: [{name: powdered, colour: \"#dddddd\"}]\n");
        const auto palette = read_palette(sources, file, problems);
        require(palette.has_value());
        return *palette;
    }();
    return kPalette;
}

void resolve_under(const SpecifiedPlate& plate,
                   const Orders& orders,
                   const SourceMap& sources,
                   std::size_t size) {
    Diagnostics problems;
    const auto uniform = resolve(plate, orders, {}, {any_palette()}, problems);
    check_contract(uniform.has_value(), problems, size);
    if (uniform) {
        require(uniform->decided.size() == properties().size());
        require(!dump(*uniform, sources).empty());
    }
}

/// Some man of whom the regulation speaks.
SpecifiedPlate man_of(const SpecifiedRegulation& regulation) {
    SpecifiedPlate plate;
    plate.title.text = "x";
    if (!regulation.ranks.empty()) {
        plate.rank = regulation.ranks.back().block.name;
    }
    if (!regulation.companies.empty()) {
        plate.company = regulation.companies.back().block.name;
    }
    if (!regulation.orders.empty()) {
        plate.order_of_dress = regulation.orders.back().name;
    }
    if (!regulation.series.empty() && !regulation.series.back().regiments.empty()) {
        plate.regiment = regulation.series.back().regiments.back().name;
    }
    constexpr double long_service = 30;
    plate.years_of_service = WrittenYears{long_service, {}};
    return plate;
}

void read_as_regulation(const SourceMap& sources, FileId file, std::size_t size) {
    Diagnostics problems;
    const auto regulation = read_regulation(sources, file, problems);
    check_contract(regulation.has_value(), problems, size);
    if (regulation) {
        require(!dump(*regulation, sources).empty());
        resolve_under(man_of(*regulation), {{{*regulation}}, {}}, sources, size);
        Diagnostics of_check;
        check_regulation({*regulation}, {any_palette()}, of_check);
        check_contract(of_check.error_count() == 0, of_check, size);
    }
}

void read_as_regiment(const SourceMap& sources, FileId file, std::size_t size) {
    Diagnostics problems;
    const auto regiment = read_regiment(sources, file, problems);
    check_contract(regiment.has_value(), problems, size);
    if (regiment) {
        require(!dump(*regiment, sources).empty());
        SpecifiedPlate plate;
        plate.title.text = "x";
        resolve_under(plate, {{}, *regiment}, sources, size);
    }
}

/// A sheet of the kind that `read` reads, if the file is one.
template <typename Sheet>
std::optional<Sheet> read_as_sheet(const SourceMap& sources,
                                   FileId file,
                                   std::size_t size,
                                   std::optional<Sheet> (*read)(const SourceMap&,
                                                                FileId,
                                                                Diagnostics&)) {
    Diagnostics problems;
    std::optional<Sheet> sheet = read(sources, file, problems);
    check_contract(sheet.has_value(), problems, size);
    if (sheet) {
        require(!sheet->words.title.text.empty());
        require(!dump(*sheet, sources).empty());
    }
    return sheet;
}

/// Lengths lie where the reader promises; no number that is none.
void check_measures(const SpecifiedWorkshop& sheet) {
    for (const BodyRow& row : body_rows()) {
        const auto& written = sheet.body[static_cast<std::size_t>(row.measure)];
        require(!written || (written->measure.mm >= row.least && written->measure.mm <= row.most));
    }
    require(!sheet.allowance || sheet.allowance->measure.mm >= 0);
    require(!sheet.cloth_width || sheet.cloth_width->measure.mm > 0);
}

/// What is laid out takes these numbers as they are.
void read_as_sheets(const SourceMap& sources, FileId file, std::size_t size) {
    if (const auto comparison = read_as_sheet(sources, file, size, read_comparison)) {
        require(comparison->men.size() >= kFewestCompared);
        require(comparison->men.size() <= kMostCompared);
    }
    if (const auto handout = read_as_sheet(sources, file, size, read_handout)) {
        require(!handout->man.text.empty());
        for (const KitItem& kit : handout->kit) {
            require(!kit.item.text.empty() && (!kit.quantity || kit.quantity->first > 0));
        }
    }
    if (const auto chart = read_as_sheet(sources, file, size, read_chart)) {
        require(chart->of <= ChartOf::colours);
    }
    if (const auto workshop = read_as_sheet(sources, file, size, read_workshop)) {
        require(!workshop->man.text.empty() && workshop->scale >= 0);
        check_measures(*workshop);
    }
}

void read_everything(const std::string& text) {
    // Told from the text as it comes, before anything has looked at it.
    require(kind_of_file(text) <= FileKind::sizes);
    SourceMap sources;
    const FileId file = sources.add("fuzz.yaml", text);
    Diagnostics of_plate;
    const auto plate = read_plate(sources, file, of_plate);
    check_contract(plate.has_value(), of_plate, text.size());
    if (plate) {
        require(!dump(*plate, sources).empty());
        resolve_under(*plate, {}, sources, text.size());
    }
    read_as_regulation(sources, file, text.size());
    read_as_regiment(sources, file, text.size());
    read_as_sheets(sources, file, text.size());
    Diagnostics of_customs;
    const bool customs = read_customs(sources, file, of_customs).has_value();
    check_contract(customs, of_customs, text.size());
    Diagnostics of_sizes;
    const bool sizes = read_sizes(sources, file, of_sizes).has_value();
    check_contract(sizes, of_sizes, text.size());
    Diagnostics of_palette;
    const bool palette = read_palette(sources, file, of_palette).has_value();
    check_contract(palette, of_palette, text.size());
}

}  // namespace
}  // namespace platewright::fuzz

// The name is the fuzzer's.
// NOLINTNEXTLINE(readability-identifier-naming)
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    platewright::fuzz::read_everything(std::string(data, data + size));
    return 0;
}
