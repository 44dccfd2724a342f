// SPDX-License-Identifier: MIT
// Any bytes as a plate, as customs and as a palette: an answer or an error, never a crash.
#include <cstdint>
#include <string>

#include "base/diagnostic.h"
#include "read/read.h"
#include "require.h"

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

void read_everything(const std::string& text) {
    SourceMap sources;
    const FileId file = sources.add("fuzz.yaml", text);
    Diagnostics of_plate;
    const auto plate = read_plate(sources, file, of_plate);
    check_contract(plate.has_value(), of_plate, text.size());
    if (plate) {
        require(!dump(*plate, sources).empty());
    }
    Diagnostics of_customs;
    const bool customs = read_customs(sources, file, of_customs).has_value();
    check_contract(customs, of_customs, text.size());
    Diagnostics of_palette;
    const bool palette = read_palette(sources, file, of_palette).has_value();
    check_contract(palette, of_palette, text.size());
}

}  // namespace
}  // namespace platewright::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    platewright::fuzz::read_everything(std::string(data, data + size));
    return 0;
}
