// SPDX-License-Identifier: MIT
// Standard sizes: whole men by name.
#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "base/text.h"
#include "read/keys.h"
#include "read/lengths.h"
#include "read/named_list.h"
#include "read/read.h"
#include "read/tree.h"

namespace platewright {
namespace {

constexpr const char* kHowToWrite =
    "write the measures in braces: {height: 1740 mm, chest girth: 980 mm, …}";

/// A size stands for a man of whom nothing is known, so that nothing of it may be missing.
/// `flawed`: what was written has been complained of already.
void check_whole(const TreeEntry& entry, const WrittenBody& body, bool flawed, Diagnostics& to) {
    std::vector<std::string> missing;
    for (const BodyRow& row : body_rows()) {
        const bool written = find_entry(entry.value, row.name) != nullptr;
        if (!body[static_cast<std::size_t>(row.measure)] && !(written && flawed)) {
            missing.push_back(quoted(row.name));
        }
    }
    if (missing.empty()) {
        return;
    }
    std::string list;
    for (const std::string& each : missing) {
        list += (list.empty() ? "" : ", ") + each;
    }
    to.error("read.missing-key", entry.key_span, "the size " + quoted(entry.key) + " lacks " + list)
        .hints.emplace_back(body[0] ? "add what is missing, with its unit" : kHowToWrite);
}

SpecifiedSizes::Size read_size(const TreeEntry& entry,
                               const WrittenText& name,
                               const ReadContext& context) {
    SpecifiedSizes::Size size;
    size.name = name;
    if (entry.value.form == Item::Form::nothing) {
        report_no_value(entry, kHowToWrite, context);
        return size;
    }
    if (entry.value.form != Item::Form::group) {
        report_form(entry.value, entry.key, kHowToWrite, context);
        return size;
    }
    WrittenBody body;
    const std::size_t errors = context.to.error_count();
    read_body(entry, "a size", body, context);
    check_whole(entry, body, context.to.error_count() > errors, context.to);
    for (const BodyRow& row : body_rows()) {
        if (const auto& length = body[static_cast<std::size_t>(row.measure)]) {
            size.body.of(row.measure) = length->measure.mm;
        }
    }
    return size;
}

void read_all(const TreeEntry& list, SpecifiedSizes& sizes, const ReadContext& context) {
    read_named(list,
               "write each size as a key of its own",
               context,
               [&](const TreeEntry& entry, const WrittenText& name) {
                   sizes.sizes.push_back(read_size(entry, name, context));
               });
    const bool usual = std::ranges::any_of(sizes.sizes, [](const SpecifiedSizes::Size& size) {
        return lower(size.name.text) == kUsualSize;
    });
    if (list.value.form == Item::Form::group && !usual) {
        context.to
            .error("read.missing-key", list.key_span, "there is no size " + quoted(kUsualSize))
            .hints.emplace_back("it is taken where a sheet names none: add it");
    }
}

}  // namespace

std::optional<SpecifiedSizes> read_sizes(const SourceMap& sources, FileId file, Diagnostics& to) {
    SpecifiedSizes sizes;
    const auto add = [&](const TreeEntry& entry, const ReadContext& context) {
        read_all(entry, sizes, context);
    };
    const bool good = read_only_key(sources, file, "sizes", "a file of sizes", to, add);
    return good ? std::optional(std::move(sizes)) : std::nullopt;
}

}  // namespace platewright
