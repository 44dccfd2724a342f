// SPDX-License-Identifier: MIT
// One key, and below it things by name.
#include "read/named_list.h"

#include <map>

#include "base/text.h"
#include "read/keys.h"
#include "read/names.h"

namespace platewright {

bool read_only_key(const SourceMap& sources,
                   FileId file,
                   std::string_view key,
                   const std::string& owner,
                   Diagnostics& to,
                   const std::function<void(const TreeEntry&, const ReadContext&)>& list) {
    const std::size_t errors = to.error_count();
    const auto root = read_tree(sources, file, to);
    const ReadContext context{sources, file, to};
    const bool complete = to.error_count() == errors;
    const std::string name(key);
    if (root) {
        for (const TreeEntry& entry : root->entries) {
            if (entry.key == key) {
                list(entry, context);
            } else {
                report_unknown_key(entry, owner, "", {name}, context);
            }
        }
    }
    if (root && complete && find_entry(*root, key) == nullptr) {
        to.error("read.missing-key", {file, 0, 0}, "the file names no " + name)
            .hints.push_back("begin with a line '" + name + ":' and write the " + name +
                             " below it, indented");
    }
    return to.error_count() == errors;
}

void read_named(const TreeEntry& list,
                const char* how,
                const ReadContext& context,
                const std::function<void(const TreeEntry&, const WrittenText& name)>& each) {
    if (list.value.form == Item::Form::nothing) {
        report_no_value(list, "name the " + list.key + " on the lines below, indented", context);
        return;
    }
    if (list.value.form != Item::Form::group) {
        report_form(list.value, list.key, how, context);
        return;
    }
    std::map<std::string, Span> seen;
    for (const TreeEntry& entry : list.value.entries) {
        const WrittenText name{entry.key, entry.key_span};
        check_name(name, context.to);
        const auto [first, is_new] = seen.emplace(lower(entry.key), entry.key_span);
        if (!is_new) {
            report_repeated_name(name, first->second, context.to);
        }
        each(entry, name);
    }
}

}  // namespace platewright
