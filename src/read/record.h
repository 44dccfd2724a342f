// SPDX-License-Identifier: MIT
// A record of vocabulary/records.h: its own keys, groups of properties, and what it rests on.
#pragma once

#include <functional>
#include <string>
#include <variant>
#include <vector>

#include "read/context.h"
#include "read/specified.h"
#include "read/tree.h"
#include "vocabulary/records.h"

namespace platewright {

/// Where the value of a key goes; the place decides how it is read.
using Target = std::variant<WrittenText*,
                            std::optional<WrittenText>*,
                            std::vector<WrittenText>*,
                            std::optional<WrittenDate>*,
                            std::optional<WrittenYears>*,
                            std::optional<std::pair<int, Span>>*,
                            bool*,
                            std::optional<Language>*,
                            std::function<void(const TreeEntry&)>>;

/// One key of a record and where its value goes.
struct KeyTarget {
    std::string_view key;
    Target to;
};

/// What a record may hold besides its own keys; null where its row does not allow it.
struct Holding {
    Block* block = nullptr;
    Grounds* grounds = nullptr;
};

/// Reads a group with the keys of `record`. `owner` is its name in messages. Targets must be given
/// for all keys of its row. Errors: read.unknown-key, read.missing-key, read.missing-value,
/// read.wrong-kind and those of values.
void read_record(const TreeEntry& entry,
                 Record record,
                 const std::string& owner,
                 const std::vector<KeyTarget>& targets,
                 const Holding& holding,
                 const ReadContext& context);

/// The same of what stands after a dash, or of a whole file.
void read_record(const Item& item,
                 Record record,
                 const std::string& owner,
                 const std::vector<KeyTarget>& targets,
                 const Holding& holding,
                 const ReadContext& context);

/// Reads a whole file of that kind; a missing title is an error of its own.
void read_outermost(const Item& root,
                    Record record,
                    const std::vector<KeyTarget>& targets,
                    const Holding& holding,
                    const ReadContext& context);

/// Groups of properties with their grounds and nothing else: `everyone`, `wear`.
void read_block(const TreeEntry& entry, Block& block, const ReadContext& context);

/// Calls `read` for each group of a list, or for the one group that stands instead of a list.
/// Error: read.too-many.
void read_list(const TreeEntry& entry,
               const ReadContext& context,
               const std::function<void(const Item&)>& read);

/// Calls `read` for each entry of a group whose keys are names of the user's own. Errors:
/// read.bad-name, read.duplicate-name, read.too-many.
void read_named(const TreeEntry& entry,
                const ReadContext& context,
                const std::function<void(const WrittenText& name, const TreeEntry&)>& read);

/// The number of the word among the key's choices. Errors: read.missing-value, read.unknown-choice.
std::optional<std::size_t> read_choice(const TreeEntry& entry,
                                       const Key& key,
                                       const ReadContext& context);

/// Reads `entry` if its key is one of grounds; false if it is not.
bool read_ground(const TreeEntry& entry, Grounds& grounds, const ReadContext& context);

/// What `grounds` leaves empty is taken from `rest`.
void add_missing(Grounds& grounds, const Grounds& rest);

/// The departures of a regiment or a plate.
std::vector<Departure> read_departures(const TreeEntry& entry, const ReadContext& context);

}  // namespace platewright
