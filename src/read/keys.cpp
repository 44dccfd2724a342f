// SPDX-License-Identifier: MIT
// Keys that are not known, entries without a value, and values of the wrong form.
#include "read/keys.h"

#include <algorithm>

#include "base/limits.h"
#include "base/text.h"
#include "read/extent.h"
#include "vocabulary/property.h"
#include "vocabulary/records.h"

namespace platewright {
namespace {

/// The groups that have a property of that name: `lapels`, `cuffs` for `piping`.
std::vector<std::string> groups_with(std::string_view name) {
    std::vector<std::string> found;
    for (const Property& row : properties()) {
        if (row.name() == name) {
            found.emplace_back(row.group());
        }
    }
    return found;
}

bool is_outermost(std::string_view key) {
    const auto names = groups();
    return find_key(Record::plate, key) != nullptr ||
           std::find(names.begin(), names.end(), key) != names.end();
}

/// Where else the key would be right; false if nowhere.
bool hint_other_place(const TreeEntry& entry, const std::string& group, Diagnostic& problem) {
    const std::string& key = entry.key;
    if (const auto row = find_property(key)) {
        const Property& property = properties()[*row];
        problem.hints.push_back("write " + std::string(property.group()) + ": {" +
                                std::string(property.name()) + ": …}");
        return true;
    }
    const std::vector<std::string> places = groups_with(key);
    if (!group.empty() && is_outermost(key) &&
        (places.empty() || entry.value.form == Item::Form::group)) {
        problem.hints.push_back(quoted(key) + " stands by itself, not in " + quoted(group) +
                                ": write it on a line of its own, not indented");
        return true;
    }
    if (places.empty()) {
        return false;
    }
    problem.hints.push_back(quoted(key) + " is said of " + or_list(places) + ": write " +
                            places.front() + ": {" + key + ": …}");
    return true;
}

std::string comma_list(const std::vector<std::string>& words) {
    std::string list;
    for (const std::string& word : words) {
        list += (list.empty() ? "" : ", ") + word;
    }
    return list;
}

/// The unquoted `#aa3344` that the parser took for a remark, or an empty span.
Span hidden_colour(const TreeEntry& entry, const std::string& text) {
    const std::size_t at = text.find_first_not_of(" \t", entry.value.span.begin);
    if (at == std::string::npos || text[at] != '#') {
        return {};
    }
    std::size_t end = at + 1;
    while (end < text.size() &&
           std::string_view("0123456789abcdefABCDEF").find(text[end]) != std::string_view::npos) {
        ++end;
    }
    const std::size_t digits = end - at - 1;
    const bool colour = digits == 3 || digits == 6 || digits == 8;
    return colour ? Span{entry.key_span.file, at, end} : Span{};
}

}  // namespace

void report_unknown_key(const TreeEntry& entry,
                        const std::string& owner,
                        const std::string& group,
                        const std::vector<std::string>& known,
                        const ReadContext& context) {
    Diagnostic& problem = context.to.error(
        "read.unknown-key", entry.key_span, owner + " has no key " + shown(entry.key));
    // Nobody reads the hundredth suggestion, and each costs time.
    if (context.to.error_count() > 2 * limits::kProblemsShown) {
        return;
    }
    if (entry.key == "<<") {
        problem.hints.emplace_back("groups cannot be taken over from elsewhere; write them out");
        return;
    }
    if (hint_other_place(entry, group, problem)) {
        return;
    }
    if (const auto near = nearest_word(entry.key, known)) {
        problem.hints.push_back("did you mean " + quoted(*near) + "?");
        return;
    }
    constexpr std::size_t few = 12;
    problem.hints.push_back(known.size() <= few
                                ? "known keys are " + comma_list(known)
                                : "'platewright reference' lists everything that can be written");
}

void report_no_value(const TreeEntry& entry, const std::string& hint, const ReadContext& context) {
    const std::string& text = context.sources.text(context.file);
    const Span colour = hidden_colour(entry, text);
    const Span after_key = {entry.key_span.file, entry.key_span.begin, entry.value.span.begin};
    if (colour.end != 0) {
        context.to
            .error("read.missing-value",
                   colour,
                   "the colour after " + quoted(entry.key) +
                       " is taken for a remark, since it begins with '#'")
            .hints.push_back("put it in quotes: " + entry.key + ": \"" +
                             text.substr(colour.begin, colour.end - colour.begin) + "\"");
        return;
    }
    context.to
        .error(
            "read.missing-value", after_key, "nothing is written after " + shown(entry.key + ":"))
        .hints.push_back(hint);
}

void report_form(const Item& item,
                 const std::string& key,
                 const std::string& hint,
                 const ReadContext& context) {
    if (item.form == Item::Form::broken) {
        return;
    }
    const std::string form = item.form == Item::Form::list    ? "a list"
                             : item.form == Item::Form::group ? "a group of keys"
                             : item.form == Item::Form::text  ? "a single word or text"
                                                              : "nothing";
    context.to.error("read.wrong-kind", head_of(item), quoted(key) + " cannot be " + form)
        .hints.push_back(hint);
}

Span head_of(const Item& item) {
    if (item.form == Item::Form::text) {
        return item.span;
    }
    if (item.form == Item::Form::group && !item.entries.empty() &&
        item.entries.front().key_span.begin == item.span.begin) {
        return item.entries.front().key_span;
    }
    return {item.span.file, item.span.begin, std::min(item.span.begin + 1, item.span.end)};
}

const TreeEntry* find_entry(const Item& group, std::string_view key) {
    const auto found = std::find_if(group.entries.begin(),
                                    group.entries.end(),
                                    [key](const TreeEntry& entry) { return entry.key == key; });
    return found == group.entries.end() ? nullptr : &*found;
}

std::string shown(std::string_view words) {
    constexpr std::size_t longest = 60;
    if (words.size() <= longest) {
        return quoted(words);
    }
    std::size_t end = longest;
    while (end > 0 && (static_cast<unsigned char>(words[end]) & 0xC0U) == 0x80U) {
        --end;
    }
    return quoted(std::string(words.substr(0, end)) + "…");
}

}  // namespace platewright
