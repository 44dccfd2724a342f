// SPDX-License-Identifier: MIT
// A record of vocabulary/records.h: its own keys, groups of properties, and what it rests on.
#include "read/record.h"

#include <algorithm>
#include <map>
#include <stdexcept>
#include <utility>

#include "base/limits.h"
#include "base/text.h"
#include "read/groups.h"
#include "read/keys.h"
#include "read/names.h"
#include "read/numbers.h"
#include "read/texts.h"

namespace platewright {
namespace {

/// Longest text a key holds, in characters.
std::size_t most_characters(const Key& key) {
    return key.holds == Holds::note || key.holds == Holds::notes ? limits::kNoteCharacters
                                                                 : limits::kLineCharacters;
}

/// Reads one value to its place.
struct ReadTarget {
    const TreeEntry& entry;
    const Key& key;
    const ReadContext& context;

    void operator()(WrittenText* to) const {
        if (auto text = read_text(entry, most_characters(key), context)) {
            *to = std::move(*text);
        }
    }

    void operator()(std::optional<WrittenText>* to) const {
        *to = read_text(entry, most_characters(key), context);
    }

    void operator()(std::vector<WrittenText>* to) const {
        *to = read_texts(entry, most_characters(key), context);
    }

    void operator()(std::optional<WrittenDate>* to) const {
        const bool last = key.holds == Holds::last_day;
        *to = read_date(entry, last ? DayOfPeriod::last : DayOfPeriod::first, context);
    }

    void operator()(std::optional<WrittenYears>* to) const { *to = read_years(entry, context); }

    void operator()(std::optional<std::pair<int, Span>>* to) const {
        *to = read_number(entry, key.most, context);
    }

    void operator()(bool* to) const { *to = read_yes_or_no(entry, context).value_or(*to); }

    void operator()(std::optional<Language>* to) const {
        if (const auto chosen = read_choice(entry, key, context)) {
            *to = find_language(words_of(key)[*chosen]);
        }
    }

    void operator()(const std::function<void(const TreeEntry&)>& read) const { read(entry); }
};

/// Everything that may be written in a record.
std::vector<std::string> known_in(const RecordRow& row) {
    std::vector<std::string> known;
    for (const Key* key : keys_of(row.record)) {
        known.emplace_back(key->key);
    }
    // A rule may ask of any property, too.
    const bool asks = row.record == Record::question;
    for (const Property& property : properties()) {
        if (asks) {
            known.emplace_back(property.key);
        }
    }
    if (row.groups || asks) {
        for (const std::string_view group : groups()) {
            if (std::ranges::find(known, group) == known.end()) {
                known.emplace_back(group);
            }
        }
    }
    return known;
}

/// `coat:` right in a rule belongs under its `wear:`.
bool hint_block(const TreeEntry& entry,
                const RecordRow& row,
                const std::string& owner,
                const ReadContext& context) {
    const auto block = std::ranges::find_if(row.keys, [](const Key& key) {
        return key.holds == Holds::record && key.of == Record::block;
    });
    if (row.groups || !is_group(entry.key) || block == row.keys.end()) {
        return false;
    }
    const std::string place(block->key);
    context.to
        .error("read.unknown-key",
               entry.key_span,
               quoted(entry.key) + " does not stand in " + owner + " itself")
        .hints.push_back("write it under " + quoted(place) + ": " + place + ": {" + entry.key +
                         ": …}");
    return true;
}

std::string written_with(const Key& key) {
    const std::string colon = std::string(key.key) + ": ";
    return "write " + colon + (key.example.empty() ? "…" : std::string(key.example));
}

bool is_missing(const Item& item, const Key& key) {
    return key.required && find_entry(item, key.key) == nullptr &&
           (key.or_key.empty() || find_entry(item, key.or_key) == nullptr);
}

void report_missing(const Item& item,
                    const RecordRow& row,
                    const std::string& owner,
                    const ReadContext& context) {
    for (const Key& key : row.keys) {
        if (is_missing(item, key)) {
            context.to
                .error("read.missing-key", head_of(item), owner + " has no " + quoted(key.key))
                .hints.push_back(written_with(key));
        }
    }
}

void read_entries(const Item& item,
                  const RecordRow& row,
                  const std::string& owner,
                  const std::vector<KeyTarget>& targets,
                  const Holding& holding,
                  const ReadContext& context) {
    Grounds* grounds = holding.grounds;
    if (grounds == nullptr && holding.block != nullptr) {
        grounds = &holding.block->grounds;
    }
    for (const TreeEntry& entry : item.entries) {
        const auto target = std::ranges::find(targets, entry.key, &KeyTarget::key);
        if (target != targets.end()) {
            const Key* key = find_key(row.record, entry.key);
            if (key == nullptr) {
                throw std::logic_error("a key that is not in the table of records");
            }
            std::visit(ReadTarget{entry, *key, context}, target->to);
        } else if (row.groups && holding.block != nullptr && is_group(entry.key)) {
            read_group(entry, *holding.block, context);
        } else if (row.grounds && grounds != nullptr && read_ground(entry, *grounds, context)) {
            continue;
        } else if (!hint_block(entry, row, owner, context)) {
            report_unknown_key(entry, owner, "", known_in(row), context);
        }
    }
}

const Span& place_of(const Item& item) {
    return item.span;
}

const Span& place_of(const TreeEntry& entry) {
    return entry.key_span;
}

/// Not more of them than anybody needs.
template <typename Part>
bool check_number(const std::vector<Part>& parts,
                  const std::string& key,
                  const ReadContext& context) {
    if (parts.size() <= limits::kRecords) {
        return true;
    }
    context.to
        .error("read.too-many",
               place_of(parts[limits::kRecords]),
               quoted(key) + " holds " + std::to_string(parts.size()) + " of them")
        .hints.push_back("write at most " + std::to_string(limits::kRecords));
    return false;
}

/// `source` alone, or `{source: …, says: …}`.
void read_other_source(const Item& item, Grounds& grounds, const ReadContext& context) {
    OtherSource other;
    if (item.form == Item::Form::text) {
        if (auto source = read_words(item, "source", limits::kLineCharacters, context)) {
            other.source = std::move(*source);
            grounds.other_sources.push_back(std::move(other));
        }
        return;
    }
    read_record(item,
                Record::other_source,
                "another source",
                {{"source", &other.source}, {"says", &other.says}},
                {},
                context);
    grounds.other_sources.push_back(std::move(other));
}

void read_departure(const Item& item, Departure& departure, const ReadContext& context) {
    departure.span = head_of(item);
    Grounds own;
    const auto wear = [&](const TreeEntry& entry) { read_block(entry, departure.wear, context); };
    read_record(item,
                Record::departure,
                "a departure",
                {{"wear", wear},
                 {"instead of", &departure.instead_of},
                 {"company", &departure.companies},
                 {"rank", &departure.ranks},
                 {"order of dress", &departure.orders},
                 {"from", &departure.from},
                 {"until", &departure.until}},
                {nullptr, &own},
                context);
    add_missing(departure.wear.grounds, own);
}

}  // namespace

void read_record(const Item& item,
                 Record record,
                 const std::string& owner,
                 const std::vector<KeyTarget>& targets,
                 const Holding& holding,
                 const ReadContext& context) {
    if (item.form == Item::Form::nothing) {
        context.to.error("read.missing-value", item.span, owner + " is empty")
            .hints.emplace_back("write its keys, or leave the dash out");
        return;
    }
    if (item.form != Item::Form::group) {
        report_form(item, owner, "write its keys, each with a colon and its value", context);
        return;
    }
    const RecordRow& row = record_row(record);
    read_entries(item, row, owner, targets, holding, context);
    if (context.complete) {
        report_missing(item, row, owner, context);
    }
}

void read_record(const TreeEntry& entry,
                 Record record,
                 const std::string& owner,
                 const std::vector<KeyTarget>& targets,
                 const Holding& holding,
                 const ReadContext& context) {
    if (entry.value.form == Item::Form::nothing) {
        report_no_value(entry, "write what belongs to it, or {} if nothing does", context);
        return;
    }
    if (entry.value.form != Item::Form::group) {
        report_form(
            entry.value, entry.key, "write its keys, each with a colon and its value", context);
        return;
    }
    read_record(entry.value, record, owner, targets, holding, context);
}

void read_outermost(const Item& root,
                    Record record,
                    const std::vector<KeyTarget>& targets,
                    const Holding& holding,
                    const ReadContext& context) {
    const RecordRow& row = record_row(record);
    const std::string owner(row.called);
    read_entries(root, row, owner, targets, holding, context);
    const Key& title = row.keys.front();
    if (context.complete && is_missing(root, title)) {
        context.to
            .error("read.missing-key",
                   {context.file, 0, 0},
                   "the " + std::string(title.key) + " has no title")
            .hints.push_back("begin with a line such as '" + std::string(title.key) + ": " +
                             std::string(title.example) + "'");
    }
    for (const Key& key : row.keys.subspan(1)) {
        if (context.complete && is_missing(root, key)) {
            context.to
                .error(
                    "read.missing-key", {context.file, 0, 0}, owner + " has no " + quoted(key.key))
                .hints.push_back("add a line such as '" + std::string(key.key) + ": " +
                                 std::string(key.example) + "'");
        }
    }
}

void read_block(const TreeEntry& entry, Block& block, const ReadContext& context) {
    read_record(entry, Record::block, quoted(entry.key), {}, {&block, nullptr}, context);
}

void read_list(const TreeEntry& entry,
               const ReadContext& context,
               const std::function<void(const Item&)>& read) {
    if (entry.value.form == Item::Form::nothing) {
        report_no_value(entry, "write a list below it, each item after a dash", context);
    } else if (entry.value.form == Item::Form::group) {
        read(entry.value);
    } else if (entry.value.form != Item::Form::list) {
        report_form(entry.value, entry.key, "write a list, each item after a dash", context);
    } else if (check_number(entry.value.items, entry.key, context)) {
        std::ranges::for_each(entry.value.items, read);
    }
}

void read_named(const TreeEntry& entry,
                const ReadContext& context,
                const std::function<void(const WrittenText& name, const TreeEntry&)>& read) {
    if (entry.value.form == Item::Form::nothing) {
        report_no_value(entry, "write the names on the lines below, indented", context);
        return;
    }
    if (entry.value.form != Item::Form::group) {
        report_form(
            entry.value, entry.key, "write each name with a colon, and what it means", context);
        return;
    }
    if (!check_number(entry.value.entries, entry.key, context)) {
        return;
    }
    std::map<std::string, Span> seen;
    for (const TreeEntry& part : entry.value.entries) {
        const WrittenText name = {part.key, part.key_span};
        check_name(name, context.to);
        const auto [first, is_new] = seen.emplace(lower(part.key), part.key_span);
        if (!is_new) {
            report_repeated_name(name, first->second, context.to);
        }
        read(name, part);
    }
}

std::optional<std::size_t> read_choice(const TreeEntry& entry,
                                       const Key& key,
                                       const ReadContext& context) {
    const auto text = read_text(entry, limits::kLineCharacters, context);
    if (!text) {
        return std::nullopt;
    }
    const auto words = words_of(key);
    const auto found = std::ranges::find(words, lower(text->text));
    if (found != words.end()) {
        return static_cast<std::size_t>(found - words.begin());
    }
    const std::vector<std::string> known(words.begin(), words.end());
    Diagnostic& problem = context.to.error(
        "read.unknown-choice", text->span, quoted(entry.key) + " cannot be " + shown(text->text));
    if (const auto near = nearest_word(text->text, known)) {
        problem.hints.push_back("did you mean " + quoted(*near) + "?");
    }
    problem.hints.push_back(quoted(entry.key) + " is " + or_list(known));
    return std::nullopt;
}

bool read_ground(const TreeEntry& entry, Grounds& grounds, const ReadContext& context) {
    const Key* key = find_key(Record::grounds, entry.key);
    if (key == nullptr) {
        return false;
    }
    const auto certainty = [&](const TreeEntry& part) {
        if (const auto word = read_choice(part, *key, context)) {
            grounds.certainty = static_cast<Certainty>(*word);
        }
    };
    const auto others = [&](const TreeEntry& part) {
        if (part.value.form == Item::Form::text) {
            read_other_source(part.value, grounds, context);
            return;
        }
        read_list(
            part, context, [&](const Item& item) { read_other_source(item, grounds, context); });
    };
    const std::vector<KeyTarget> targets = {{"source", &grounds.source},
                                            {"certainty", certainty},
                                            {"why", &grounds.why},
                                            {"other sources", others}};
    std::visit(ReadTarget{entry, *key, context},
               std::ranges::find(targets, entry.key, &KeyTarget::key)->to);
    return true;
}

void add_missing(Grounds& grounds, const Grounds& rest) {
    grounds.source = grounds.source ? grounds.source : rest.source;
    grounds.certainty = grounds.certainty ? grounds.certainty : rest.certainty;
    grounds.why = grounds.why ? grounds.why : rest.why;
    grounds.other_sources.insert(
        grounds.other_sources.end(), rest.other_sources.begin(), rest.other_sources.end());
}

std::vector<Departure> read_departures(const TreeEntry& entry, const ReadContext& context) {
    std::vector<Departure> departures;
    read_list(entry, context, [&](const Item& item) {
        Departure departure;
        read_departure(item, departure, context);
        departures.push_back(std::move(departure));
    });
    return departures;
}

}  // namespace platewright
