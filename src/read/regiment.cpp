// SPDX-License-Identifier: MIT
// A regiment's own file.
#include "base/limits.h"
#include "read/keys.h"
#include "read/names.h"
#include "read/read.h"
#include "read/record.h"

namespace platewright {

std::optional<SpecifiedRegiment> read_regiment(const SourceMap& sources,
                                               FileId file,
                                               Diagnostics& to) {
    const std::size_t errors = to.error_count();
    const auto root = read_tree(sources, file, to);
    const ReadContext context{sources, file, to, to.error_count() == errors};
    SpecifiedRegiment regiment;
    if (root) {
        const auto departures = [&](const TreeEntry& entry) {
            regiment.departures = read_departures(entry, context);
        };
        read_outermost(*root,
                       Record::regiment,
                       {{"regiment", &regiment.name},
                        {"regulation", &regiment.regulations},
                        {"number", &regiment.number},
                        {"class", &regiment.corps_class},
                        {"departures", departures}},
                       {&regiment.wear, nullptr},
                       context);
    }
    return to.error_count() == errors ? std::optional(std::move(regiment)) : std::nullopt;
}

}  // namespace platewright
