// SPDX-License-Identifier: MIT
// Standard sizes: whole men by name.
#include <map>
#include <string>
#include <utility>
#include <vector>

#include "base/text.h"
#include "read/keys.h"
#include "read/lengths.h"
#include "read/names.h"
#include "read/read.h"
#include "read/tree.h"

namespace platewright {
namespace {

constexpr std::string_view kSizes = "sizes";
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

SpecifiedSizes::Size read_size(const TreeEntry& entry, const ReadContext& context) {
    SpecifiedSizes::Size size;
    size.name = {entry.key, entry.key_span};
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

void read_all(const TreeEntry& entry, SpecifiedSizes& sizes, const ReadContext& context) {
    if (entry.value.form == Item::Form::nothing) {
        report_no_value(entry, "name the sizes on the lines below, indented", context);
        return;
    }
    if (entry.value.form != Item::Form::group) {
        report_form(entry.value, entry.key, "write each size as a key of its own", context);
        return;
    }
    std::map<std::string, Span> seen;
    for (const TreeEntry& each : entry.value.entries) {
        SpecifiedSizes::Size size = read_size(each, context);
        check_name(size.name, context.to);
        const auto [first, is_new] = seen.emplace(lower(each.key), each.key_span);
        if (!is_new) {
            report_repeated_name(size.name, first->second, context.to);
        }
        sizes.sizes.push_back(std::move(size));
    }
    if (!seen.contains(std::string(kUsualSize))) {
        context.to
            .error("read.missing-key", entry.key_span, "there is no size " + quoted(kUsualSize))
            .hints.emplace_back("it is taken where a sheet names none: add it");
    }
}

}  // namespace

std::optional<SpecifiedSizes> read_sizes(const SourceMap& sources, FileId file, Diagnostics& to) {
    const std::size_t errors = to.error_count();
    const auto root = read_tree(sources, file, to);
    const ReadContext context{sources, file, to};
    const bool complete = to.error_count() == errors;
    SpecifiedSizes sizes;
    if (root) {
        for (const TreeEntry& entry : root->entries) {
            if (entry.key == kSizes) {
                read_all(entry, sizes, context);
            } else {
                report_unknown_key(entry, "a file of sizes", "", {std::string(kSizes)}, context);
            }
        }
    }
    if (root && complete && find_entry(*root, kSizes) == nullptr) {
        to.error("read.missing-key", {file, 0, 0}, "the file names no sizes")
            .hints.emplace_back(
                "begin with a line 'sizes:' and write the sizes below it, indented");
    }
    return to.error_count() == errors ? std::optional(std::move(sizes)) : std::nullopt;
}

}  // namespace platewright
