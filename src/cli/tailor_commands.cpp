// SPDX-License-Identifier: MIT
// `platewright pieces` and `platewright materials`.
#include <algorithm>
#include <cmath>
#include <functional>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "base/limits.h"
#include "base/text.h"
#include "cli/commands.h"
#include "cli/data_folder.h"
#include "cli/excerpt.h"
#include "cli/open_file.h"
#include "cli/outputs.h"
#include "cli/print.h"
#include "cli/tailor.h"
#include "words/terms.h"
#include "words/workshop_messages.h"
#include "write/write.h"

namespace platewright::cli {
namespace {

/// Reads the sheet, does the work, and hands it on; problems go to standard error.
ExitCode with_work(const std::string& path,
                   const std::function<ExitCode(const TailorWork&, Diagnostics&)>& then) {
    const DiskReader files;
    SourceMap sources;
    Diagnostics problems;
    ExitCode exit = ExitCode::bad_data;
    std::string missing;
    const std::string data = find_data_folder(missing);
    const auto file =
        data.empty() ? std::nullopt : open_file(files, path, limits::kYamlBytes, sources, problems);
    if (data.empty()) {
        problems.file_error("cli.no-data", "", missing);
    }
    if (!file) {
        exit = ExitCode::cannot_read_or_write;
    } else {
        Workshop workshop(files, data, sources);
        Timings unused;
        const auto job = prepare_tailor(workshop, *file, problems, unused);
        const Typesetter type;
        const auto work = job ? tailor_work(workshop, *job, Paper{}, type, problems) : std::nullopt;
        if (work) {
            exit = then(*work, problems);
        } else if (workshop.missed_a_file()) {
            exit = ExitCode::cannot_read_or_write;
        }
    }
    problems.sort();
    write_error(in_words(problems, sources, wants_colour()));
    return exit;
}

std::string padded(std::string words, std::size_t width) {
    const std::size_t have = count_characters(words);
    return words.append(have < width ? width - have : 1, ' ');
}

std::string as_text(const std::vector<MaterialLine>& lines, Language language) {
    std::string text;
    std::string garment;
    for (const MaterialLine& line : lines) {
        if (line.garment != garment) {
            garment = line.garment;
            text +=
                (text.empty() ? "" : "\n") +
                (garment == "man" ? say(language, messages::kForOneMan) : term(language, garment)) +
                "\n";
        }
        text += "  " + padded(term(language, line.kind), 13) + padded(line.what, 34) +
                padded(amount_words(line, language), 11) + line.sum + "\n";
    }
    return text;
}

/// A field in quotes, as RFC 4180 has it.
std::string field(const std::string& words) {
    std::string quoted = "\"";
    for (const char c : words) {
        quoted += c;
        quoted += c == '"' ? "\"" : "";
    }
    return quoted + "\"";
}

std::string as_csv(const std::vector<MaterialLine>& lines) {
    std::string text = "garment,material,what,amount,unit,finished_m2,sum\n";
    for (const MaterialLine& line : lines) {
        text += field(line.garment) + "," + field(line.kind) + "," + field(line.what) + "," +
                format_number(line.amount, 3) + "," + field(line.unit) + "," +
                (line.area > 0 ? format_number(line.area, 4) : "") + "," + field(line.sum) + "\n";
    }
    return text;
}

/// Where each piece lies on its cloth, so that another program can cut or check it.
nlohmann::ordered_json laid_as_json(const MaterialLine& line) {
    const auto tenths = [](double mm) { return std::round(mm * 10) / 10; };
    auto pieces = nlohmann::ordered_json::array();
    for (const LaidPiece& each : line.lay.pieces) {
        auto outline = nlohmann::ordered_json::array();
        for (const Point p : each.outline) {
            outline.push_back({tenths(p.x), tenths(p.y)});
        }
        const PatternPiece& piece = line.laid[each.piece];
        pieces.push_back({{"piece", piece.garment + ": " + piece.name},
                          {"number", piece.number_in_list},
                          {"mirrored", each.mirrored},
                          {"turned", each.turned},
                          {"outline_mm", std::move(outline)}});
    }
    return {{"width_mm", tenths(line.lay.width)},
            {"length_mm", tenths(line.lay.length)},
            {"pieces", std::move(pieces)}};
}

std::string as_json(const std::vector<MaterialLine>& lines) {
    auto list = nlohmann::ordered_json::array();
    for (const MaterialLine& line : lines) {
        nlohmann::ordered_json one = {{"garment", line.garment},
                                      {"material", line.kind},
                                      {"what", line.what},
                                      {"amount", std::round(line.amount * 1000) / 1000},
                                      {"unit", line.unit}};
        if (line.area > 0) {
            one["finished_m2"] = std::round(line.area * 1e4) / 1e4;
        }
        one["sum"] = line.sum;
        if (!line.lay.pieces.empty()) {
            one["laid"] = laid_as_json(line);
        }
        list.push_back(std::move(one));
    }
    constexpr int indent = 2;
    return list.dump(indent) + "\n";
}

}  // namespace

ExitCode pieces(const PiecesOptions& options) {
    const std::string out = lower(options.out);
    const bool dxf = out.ends_with(".dxf");
    if (!dxf && !out.ends_with(".svg")) {
        return refuse_usage(platewright::quoted(options.out) + " does not say the format",
                            "let the name end in .dxf or .svg");
    }
    return with_work(options.file, [&](const TailorWork& work, Diagnostics& to) {
        const Typesetter type;
        WorkshopSheets sheets = work.sheets;
        // A cutter has room for everything.
        sheets.full_size = sheets.pieces;
        const Document document = lay_out_cutting(sheets);
        const std::string bytes = dxf ? write_dxf(document, 0) : write_svg(document, 0, type);
        if (const std::string problem = write_whole(options.out, bytes); !problem.empty()) {
            to.file_error("cli.cannot-write", options.out, "cannot be written: " + problem);
            return ExitCode::cannot_read_or_write;
        }
        return answer("wrote " + visible(options.out) + "\n");
    });
}

ExitCode materials(const MaterialsOptions& options) {
    const std::vector<std::string> formats = {"text", "csv", "json"};
    if (std::ranges::find(formats, options.format) == formats.end()) {
        return refuse_usage(platewright::quoted(options.format) + " is no format of this list",
                            "write --format text, csv or json");
    }
    return with_work(options.file, [&](const TailorWork& work, Diagnostics&) {
        return answer(options.format == "csv"    ? as_csv(work.materials)
                      : options.format == "json" ? as_json(work.materials)
                                                 : as_text(work.materials, work.sheets.language));
    });
}

}  // namespace platewright::cli
