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

/// What came of a plate. File 0 is the plate, 1 the customs, 2 the palette.
struct Outcome {
    SourceMap sources;
    Diagnostics problems;
    std::optional<Uniform> uniform;

    /// The value of a property as a word; "?" after an error.
    [[nodiscard]] std::string word(std::string_view key) const {
        return uniform ? uniform->word(property_id(key)) : "?";
    }

    /// The last problem as `line:column: message [code]` and its hints, a line each.
    [[nodiscard]] std::string problem() const {
        if (problems.all().empty()) {
            return "";
        }
        const Diagnostic& last = problems.all().back();
        std::string text;
        if (last.span) {
            const SourceMap::Place place = sources.place(last.span->file, last.span->begin);
            text = std::to_string(place.line) + ":" + std::to_string(place.column) + ": ";
        }
        text += last.message + " [" + last.code + "]";
        for (const std::string& hint : last.hints) {
            text += "\n" + hint;
        }
        return text;
    }
};

inline Outcome resolved(const std::string& plate,
                        const std::string& palette = kPalette,
                        const std::string& customs = kCustoms) {
    Outcome outcome;
    SourceMap& sources = outcome.sources;
    const auto specified = read_plate(sources, sources.add("plate.yaml", plate), outcome.problems);
    const auto ranks =
        read_customs(sources, sources.add("customs.yaml", customs), outcome.problems);
    const auto colours =
        read_palette(sources, sources.add("palette.yaml", palette), outcome.problems);
    if (specified && ranks && colours) {
        outcome.uniform = resolve(*specified, {}, *ranks, {*colours}, outcome.problems);
    }
    return outcome;
}

}  // namespace platewright
