// SPDX-License-Identifier: MIT
// What each rank wears by custom.
#include <map>
#include <string>
#include <utility>
#include <vector>

#include "base/limits.h"
#include "base/text.h"
#include "read/groups.h"
#include "read/keys.h"
#include "read/names.h"
#include "read/read.h"
#include "read/tree.h"

namespace platewright {
namespace {

constexpr std::string_view kRanks = "ranks";

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

void read_ranks(const TreeEntry& entry, SpecifiedCustoms& customs, const ReadContext& context) {
    if (entry.value.form == Item::Form::nothing) {
        report_no_value(entry, "name the ranks on the lines below, indented", context);
        return;
    }
    if (entry.value.form != Item::Form::group) {
        report_form(entry.value,
                    entry.key,
                    "write each rank as a key, with what it wears after the colon",
                    context);
        return;
    }
    std::map<std::string, Span> seen;
    for (const TreeEntry& part : entry.value.entries) {
        SpecifiedCustoms::Rank rank;
        rank.name = {part.key, part.key_span};
        check_name(rank.name, context.to);
        const auto [first, is_new] = seen.emplace(lower(part.key), part.key_span);
        if (!is_new) {
            report_repeated_name(rank.name, first->second, context.to);
        }
        read_rank(part, rank, context);
        customs.ranks.push_back(std::move(rank));
    }
}

}  // namespace

std::optional<SpecifiedCustoms> read_customs(const SourceMap& sources,
                                             FileId file,
                                             Diagnostics& to) {
    const std::size_t errors = to.error_count();
    const auto root = read_tree(sources, file, to);
    const ReadContext context{sources, file, to};
    const bool complete = to.error_count() == errors;
    SpecifiedCustoms customs;
    if (root) {
        for (const TreeEntry& entry : root->entries) {
            if (entry.key == kRanks) {
                read_ranks(entry, customs, context);
            } else {
                report_unknown_key(entry, "a file of customs", "", {std::string(kRanks)}, context);
            }
        }
    }
    if (root && complete && find_entry(*root, kRanks) == nullptr) {
        to.error("read.missing-key", {file, 0, 0}, "the file names no ranks")
            .hints.emplace_back(
                "begin with a line 'ranks:' and write the ranks below it, indented");
    }
    if (to.error_count() != errors) {
        return std::nullopt;
    }
    return customs;
}

}  // namespace platewright
