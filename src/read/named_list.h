// SPDX-License-Identifier: MIT
// Files that are one list of named things: ranks of a custom, sizes of men.
#pragma once

#include <functional>
#include <string>
#include <string_view>

#include "read/context.h"
#include "read/specified.h"
#include "read/tree.h"

namespace platewright {

/// Hands on the list below the only key such a file may have; `owner` is what it is called in
/// messages: `a file of sizes`. False after an error. Errors: those of `read_tree`,
/// read.unknown-key, read.missing-key.
bool read_only_key(const SourceMap& sources,
                   FileId file,
                   std::string_view key,
                   const std::string& owner,
                   Diagnostics& to,
                   const std::function<void(const TreeEntry&, const ReadContext&)>& list);

/// Hands on each thing of the list with its name; `how` says how one is written. Errors:
/// read.no-value, read.wrong-kind, read.bad-name, read.duplicate-name.
void read_named(const TreeEntry& list,
                const char* how,
                const ReadContext& context,
                const std::function<void(const TreeEntry&, const WrittenText& name)>& each);

}  // namespace platewright
