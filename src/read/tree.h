// SPDX-License-Identifier: MIT
// What a YAML file holds, before anyone knows what it means: nothing left out, every piece with its
// place.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/diagnostic.h"

namespace platewright {

struct TreeEntry;

/// One value of a file. `broken` was reported already and is to be passed over in silence.
struct Item {
    enum class Form { nothing, text, list, group, broken };

    Form form = Form::nothing;
    /// A text with its quotes, a group in braces with its braces; for `nothing` the place just
    /// after the colon.
    Span span;
    /// Of `text`: what it says, quotes and escapes undone.
    std::string text;
    bool quoted = false;
    std::vector<Item> items;
    std::vector<TreeEntry> entries;
};

/// `key: value`.
struct TreeEntry {
    std::string key;
    Span key_span;
    Item value;
};

/// The file as one group of entries. Whatever could be read is given even after an error, so that
/// all problems of a file are told at once; empty if nothing could. Every key of a group is there
/// once, and nothing is nested deeper or counts more than `base/limits.h` allows. Errors:
/// read.too-large, read.not-utf8, read.control-character, read.tab, read.several-documents,
/// read.yaml, read.alias, read.tag, read.too-deep, read.duplicate-key, read.empty. Warning:
/// read.remark-in-value.
std::optional<Item> read_tree(const SourceMap& sources, FileId file, Diagnostics& to);

}  // namespace platewright
