// SPDX-License-Identifier: MIT
// A plate, customs and a palette from text, resolved, for the tests of this stage.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "read/read.h"
#include "resolve/resolve.h"

namespace platewright {

/// A small palette that has every colour the defaults ask for.
inline constexpr const char* kPalette = R"(palette: Test
cloth:
  - {name: white, colour: "#eeeeee"}
  - {name: red, colour: "#aa3333", other names: [madder], made of: madder on alum}
  - {name: buff, colour: "#ddbb88"}
  - {name: dark blue, colour: "#223355"}
  - {name: black, colour: "#222222"}
  - {name: crimson, colour: "#882233"}
metal:
  - {name: white, colour: "#cccccc", other names: [pewter]}
  - {name: yellow, colour: "#ccaa44", other names: [brass]}
  - {name: steel, colour: "#999999"}
  - {name: silver, colour: "#c8c8c8"}
leather:
  - {name: white, colour: "#eeeecc"}
  - {name: black, colour: "#333333"}
skin:
  - {name: fair, colour: "#ddbb99"}
hair:
  - {name: powdered, colour: "#dddddd"}
)";

inline constexpr const char* kCustoms = R"(ranks:
  private: {}
  corporal: {marks: {shape: bars, number: 1, cloth: white}}
  sergeant: {marks: {shape: bars, number: 3, cloth: as buttons.metal}}
)";

/// What came of a plate. Its files are, by number: the plate, the customs, the palette, the
/// regulations and their amendments, the regiment.
struct Outcome {
    SourceMap sources;
    Diagnostics problems;
    std::optional<Uniform> uniform;

    /// The value of a property as a word; "?" after an error.
    [[nodiscard]] std::string word(std::string_view key) const {
        return uniform ? uniform->word(property_id(key)) : "?";
    }

    /// The chain of a property as `reason: as written`, weakest first, without the default.
    [[nodiscard]] std::vector<std::string> chain(std::string_view key) const {
        std::vector<std::string> lines;
        if (uniform) {
            const auto& decisions = uniform->decided[property_id(key)].chain;
            for (auto each = decisions.begin() + 1; each != decisions.end(); ++each) {
                lines.push_back(each->reason + ": " + each->as_written);
            }
        }
        return lines;
    }

    /// The decision that holds. Throws after an error.
    [[nodiscard]] const Decision& last(std::string_view key) const {
        return uniform.value().decided[property_id(key)].chain.back();
    }

    [[nodiscard]] std::string place(const Span& span) const {
        const SourceMap::Place at = sources.place(span.file, span.begin);
        return std::to_string(at.line) + ":" + std::to_string(at.column);
    }

    /// The last problem as `line:column: message [code]`, then its labels and its hints, a line
    /// each.
    [[nodiscard]] std::string problem() const {
        if (problems.all().empty()) {
            return "";
        }
        const Diagnostic& last = problems.all().back();
        std::string text = last.span ? place(*last.span) + ": " : std::string();
        text += last.message + " [" + last.code + "]";
        for (const Label& label : last.labels) {
            text += "\n" + place(label.span) + ": " + label.text;
        }
        for (const std::string& hint : last.hints) {
            text += "\n" + hint;
        }
        return text;
    }
};

/// What a plate is resolved with.
struct Given {
    std::string plate;
    /// One list for each regulation: the base, then its amendments.
    std::vector<std::vector<std::string>> regulations = {};
    /// Empty: none.
    std::string regiment = {};
    std::string palette = kPalette;
    std::string customs = kCustoms;
};

/// Reads the regulations and the regiment. Nothing if one has an error.
inline std::optional<Orders> read_orders(const Given& given, SourceMap& sources, Diagnostics& to) {
    Orders orders;
    for (const auto& editions : given.regulations) {
        orders.regulations.emplace_back();
        for (const std::string& text : editions) {
            auto regulation = read_regulation(sources, sources.add("regulation.yaml", text), to);
            if (!regulation) {
                return std::nullopt;
            }
            orders.regulations.back().push_back(*std::move(regulation));
        }
    }
    if (!given.regiment.empty()) {
        orders.regiment = read_regiment(sources, sources.add("regiment.yaml", given.regiment), to);
        if (!orders.regiment) {
            return std::nullopt;
        }
    }
    return orders;
}

inline Outcome resolved(const Given& given) {
    Outcome outcome;
    SourceMap& sources = outcome.sources;
    Diagnostics& problems = outcome.problems;
    const auto plate = read_plate(sources, sources.add("plate.yaml", given.plate), problems);
    const auto customs =
        read_customs(sources, sources.add("customs.yaml", given.customs), problems);
    const auto palette =
        read_palette(sources, sources.add("palette.yaml", given.palette), problems);
    const auto orders = read_orders(given, sources, problems);
    if (plate && customs && palette && orders) {
        outcome.uniform = resolve(*plate, *orders, *customs, {*palette}, problems);
    }
    return outcome;
}

inline Outcome resolved(const std::string& plate,
                        const std::string& palette = kPalette,
                        const std::string& customs = kCustoms) {
    return resolved(Given{plate, {}, {}, palette, customs});
}

/// The problems of a regulation by itself; its editions, base first.
inline Outcome checked(const std::vector<std::string>& editions) {
    Outcome outcome;
    const auto palette = read_palette(
        outcome.sources, outcome.sources.add("palette.yaml", kPalette), outcome.problems);
    const auto orders = read_orders(Given{{}, {editions}}, outcome.sources, outcome.problems);
    if (palette && orders) {
        check_regulation(orders->regulations.front(), {*palette}, outcome.problems);
    }
    return outcome;
}

}  // namespace platewright
