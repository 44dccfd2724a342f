// SPDX-License-Identifier: MIT
// A group of properties: its one-word form and its full form.
#include "read/groups.h"

#include <algorithm>
#include <string>
#include <vector>

#include "base/text.h"
#include "read/keys.h"
#include "read/parse.h"
#include "read/record.h"

namespace platewright {
namespace {

std::vector<std::string> names_in(std::string_view group) {
    std::vector<std::string> names;
    for (const Property& row : properties()) {
        if (row.group() == group) {
            names.emplace_back(row.name());
        }
    }
    return names;
}

/// `{felt: …, tape: …}`, of at most three names.
std::string example_of(std::string_view group) {
    constexpr std::size_t most = 3;
    std::string names;
    for (const std::string& name : names_in(group)) {
        if (static_cast<std::size_t>(std::count(names.begin(), names.end(), ':')) < most) {
            names += (names.empty() ? "" : ", ") + name + ": …";
        }
    }
    return std::string(group) + ": {" + names + "}";
}

/// `cloth:red` or `cloth red` on a line of its own is one word to the parser, but the user meant a
/// key and its value.
bool is_lost_entry(std::string_view group, const Item& item) {
    const std::string_view first =
        std::string_view(item.text).substr(0, item.text.find_first_of(": "));
    return !item.quoted && first.size() < item.text.size() &&
           find_property(std::string(group) + "." + std::string(first)).has_value();
}

void read_one_word(const TreeEntry& entry, WrittenValues& into, const ReadContext& context) {
    if (is_lost_entry(entry.key, entry.value)) {
        report_no_colon(entry.value.text, entry.value.span, context.to);
        return;
    }
    const auto id = property_of_word(entry.key, trim(entry.value.text));
    if (!id) {
        context.to
            .error("read.wrong-kind",
                   entry.value.span,
                   "one word does not say which part of " + quoted(entry.key) + " is meant")
            .hints.push_back("write " + example_of(entry.key));
        return;
    }
    if (auto written = read_value(*id, entry, context)) {
        into.insert_or_assign(*id, std::move(*written));
    }
}

void read_parts(const TreeEntry& entry, WrittenValues& into, const ReadContext& context) {
    if (entry.value.entries.empty()) {
        context.to
            .error("read.missing-value",
                   entry.value.span,
                   "nothing is written in " + quoted(entry.key))
            .hints.push_back("write " + example_of(entry.key) + ", or leave it out");
    }
    for (const TreeEntry& part : entry.value.entries) {
        if (const auto id = find_property(entry.key + "." + part.key)) {
            if (auto written = read_value(*id, part, context)) {
                into.insert_or_assign(*id, std::move(*written));
            }
        } else {
            report_unknown_key(part, quoted(entry.key), entry.key, names_in(entry.key), context);
        }
    }
}

}  // namespace

bool is_group(std::string_view key) {
    const auto names = groups();
    return std::find(names.begin(), names.end(), key) != names.end();
}

void read_group(const TreeEntry& entry, Block& into, const ReadContext& context) {
    const auto is_ground = [](const TreeEntry& part) {
        return find_key(Record::grounds, part.key) != nullptr;
    };
    if (std::ranges::none_of(entry.value.entries, is_ground)) {
        return read_group(entry, into.values, context);
    }
    Grounds& grounds = into.group_grounds[entry.key];
    for (const TreeEntry& part : entry.value.entries) {
        static_cast<void>(read_ground(part, grounds, context));
    }
    TreeEntry parts = entry;
    std::erase_if(parts.value.entries, is_ground);
    read_group(parts, into.values, context);
}

void read_group(const TreeEntry& entry, WrittenValues& into, const ReadContext& context) {
    switch (entry.value.form) {
        case Item::Form::text:
            return read_one_word(entry, into, context);
        case Item::Form::group:
            return read_parts(entry, into, context);
        case Item::Form::nothing:
            return report_no_value(
                entry,
                "write " + example_of(entry.key) + ", or indent the lines below that belong to it",
                context);
        case Item::Form::list:
        case Item::Form::broken:
            return report_form(entry.value, entry.key, "write " + example_of(entry.key), context);
    }
}

}  // namespace platewright
