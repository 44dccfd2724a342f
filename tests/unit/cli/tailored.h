// SPDX-License-Identifier: MIT
// Pieces cut for one man, for tests.
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "base/chain.h"
#include "cli/tailor.h"
#include "support.h"

namespace platewright::cli {

/// What is made with these measures for a man of Tannbruck, or for one of another file.
inline std::optional<TailorWork> work_for(const std::string& measures,
                                          const std::string& man = "tannbruck-corporal.yaml",
                                          const std::string& plate = "") {
    Bench bench;
    const std::string folder = PLATEWRIGHT_SOURCE_DIR "/plates/";
    if (!plate.empty()) {
        bench.files.own[folder + man] = plate;
    }
    const FileId file =
        bench.sources.add(folder + "trial.yaml",
                          "workshop: Trial\nman: " + man + "\nseam allowance: 10 mm\n" + measures);
    const auto job = prepare_tailor(bench.workshop, file, bench.problems, bench.timings);
    const Typesetter type;
    return job ? tailor_work(bench.workshop, *job, Paper{}, type, bench.problems) : std::nullopt;
}

inline std::vector<PatternPiece> pieces_of_a_man(const std::string& measures = "") {
    const auto work = work_for(measures);
    return work ? work->sheets.pieces : std::vector<PatternPiece>{};
}

inline const PatternPiece& piece(const std::vector<PatternPiece>& pieces,
                                 const std::string& garment,
                                 const std::string& name,
                                 const std::string& stuff = "cloth") {
    const auto found = std::ranges::find_if(pieces, [&](const PatternPiece& each) {
        return each.garment == garment && each.name == name && each.stuff == stuff;
    });
    static const PatternPiece kNone;
    return found == pieces.end() ? kNone : *found;
}

inline Point middle_of_notch(const PatternPiece& of, std::size_t which) {
    return of.notches[which].at;
}

inline double height_of_notch(const PatternPiece& of, std::size_t which) {
    return middle_of_notch(of, which).y;
}

inline double width_at(const PatternPiece& of, double y) {
    const Crossing at = crossing(of.outline, y);
    return at.greatest - at.least;
}

}  // namespace platewright::cli
