// SPDX-License-Identifier: MIT
// What each rank wears by custom.
#include <string>
#include <utility>
#include <vector>

#include "base/limits.h"
#include "base/text.h"
#include "read/groups.h"
#include "read/keys.h"
#include "read/named_list.h"
#include "read/read.h"
#include "read/tree.h"

namespace platewright {
namespace {

std::vector<std::string> group_names() {
    const auto names = groups();
    return {names.begin(), names.end()};
}

void read_rank(const TreeEntry& entry, SpecifiedCustoms::Rank& rank, const ReadContext& context) {
    if (entry.value.form == Item::Form::nothing) {
        report_no_value(entry, "write the groups it wears, or {} if nothing special", context);
        return;
    }
    if (entry.value.form != Item::Form::group) {
        report_form(
            entry.value, entry.key, "write the groups it wears, or {} if nothing special", context);
        return;
    }
    for (const TreeEntry& group : entry.value.entries) {
        if (is_group(group.key)) {
            read_group(group, rank.values, context);
        } else {
            report_unknown_key(group, "a rank", "", group_names(), context);
        }
    }
}

}  // namespace

std::optional<SpecifiedCustoms> read_customs(const SourceMap& sources,
                                             FileId file,
                                             Diagnostics& to) {
    SpecifiedCustoms customs;
    const auto add = [&](const TreeEntry& entry, const ReadContext& context) {
        const char* how = "write each rank as a key, with what it wears after the colon";
        read_named(entry, how, context, [&](const TreeEntry& part, const WrittenText& name) {
            SpecifiedCustoms::Rank rank;
            rank.name = name;
            read_rank(part, rank, context);
            customs.ranks.push_back(std::move(rank));
        });
    };
    const bool good = read_only_key(sources, file, "ranks", "a file of customs", to, add);
    return good ? std::optional(std::move(customs)) : std::nullopt;
}

}  // namespace platewright
