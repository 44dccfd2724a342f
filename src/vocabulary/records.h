// SPDX-License-Identifier: MIT
// The keys of plates, regulations and regiments that are not groups of properties. Reading,
// suggestions, the JSON Schema and the reference page are all made from these rows.
#pragma once

#include <span>
#include <string_view>
#include <vector>

namespace platewright {

/// A file, or a part of one, with keys of its own.
enum class Record {
    plate,
    regulation,
    regiment,
    block,        // groups of properties and what they rest on
    named_block,  // the same with a title: a class, a way of showing the colour, an order of dress
    series,       // the regiments of one colour
    place,        // one regiment's place there
    rule,
    question,  // what a rule asks of a man
    company,
    battalion,
    rank,
    service_step,
    departure,
    grounds,  // what a statement rests on
    other_source,
    comparison,
    handout,
    unit,      // whom the recruit joins
    kit_item,  // a thing he needs
    chart,
    workshop,
    body,  // a man's measures
};

/// What is written after a key.
enum class Holds {
    line,         // a text of one line
    lines,        // one such text, or a list of them
    note,         // a longer text
    notes,        // one such text, or a list of them
    first_day,    // a day; a month or a year alone is its first day
    last_day,     // a day; a month or a year alone is its last day
    years,        // a number of years, whole or with a fraction
    years_asked,  // `at least 8`, `more than 6`
    number,       // a whole number, 1 to `most`
    yes_or_no,
    choice,      // one of `choices`
    properties,  // a list of keys of properties: `coat.cloth`
    record,      // a group with the keys of `of`
    records,     // a list of such groups
    named,       // such groups, each under a name of the user's own
    numbers,     // whole numbers, each under a name written elsewhere
};

/// One key.
struct Key {
    std::string_view key = {};
    Holds holds = Holds::line;
    /// One line for the reference page.
    std::string_view meaning = {};
    /// What may stand after the colon, for messages and the reference page; empty if it goes
    /// without saying.
    std::string_view example = {};
    bool required = false;
    /// The key that may stand in place of a required one; empty if none may.
    std::string_view or_key = {};
    /// For `record`, `records` and `named`.
    Record of = Record::block;
    /// For `choice`: the words, separated by `|`.
    std::string_view choices = {};
    /// For `number` and `numbers`: the largest.
    int most = 0;
};

/// One kind of record.
struct RecordRow {
    Record record = Record::block;
    /// For messages: `a rule`.
    std::string_view called = {};
    /// In the order they are best written.
    std::span<const Key> keys = {};
    /// Groups of properties may stand here too.
    bool groups = false;
    /// And `source`, `certainty`, `why` and `other sources`.
    bool grounds = false;
    /// A text may stand instead: the value of the first key.
    bool or_text = false;
};

/// The row of a record. Throws std::logic_error for one without a row.
const RecordRow& record_row(Record record);

/// Every kind of record, in the order of the reference page.
std::span<const RecordRow> record_rows();

/// The record's own keys, then those of grounds where it has them.
std::vector<const Key*> keys_of(Record record);

/// The record's key of that name, or null.
const Key* find_key(Record record, std::string_view key);

/// The words of a choice: `as worn`, `as ordered`.
std::vector<std::string_view> words_of(const Key& key);

/// Longest service that is believed, in years.
inline constexpr int kMostYears = 80;

}  // namespace platewright
