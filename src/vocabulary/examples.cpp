// SPDX-License-Identifier: MIT
// One example for everything the table lets a user write.
#include "vocabulary/examples.h"

#include <algorithm>
#include <stdexcept>

#include "base/text.h"
#include "vocabulary/condition.h"

namespace platewright {

namespace {

/// Chains of conditions in the table are short; a circle would be a slip of ours.
constexpr int kDeepest = 6;

Condition condition_of(const Property& row) {
    std::string problem;
    if (auto condition = parse_condition(row.speaks_when, problem)) {
        return *std::move(condition);
    }
    throw std::logic_error("when " + quoted(row.key) + " speaks: " + problem);
}

/// A value that makes the property be there.
std::string present(const Property& row, PropertyId id) {
    if (!row.example.empty()) {
        return std::string(row.example);
    }
    if (row.initial != "none") {
        return std::string(row.initial);
    }
    switch (row.kind) {
        case Kind::choice:
            return std::string(choices_of(id).front().word);
        case Kind::count:
            return "2";
        case Kind::ornament:
            return "star";
        case Kind::cloth:
        case Kind::metal:
        case Kind::measure:
        case Kind::words:
            break;
    }
    return "white";
}

/// The first word of a choice that is not among those refused.
std::string other_word(PropertyId id, const std::vector<std::string>& refused) {
    for (const Choice& choice : choices_of(id)) {
        if (std::ranges::find(refused, choice.word) == refused.end()) {
            return std::string(choice.word);
        }
    }
    return "none";
}

/// What one term wants of its property.
std::string wanted(const Term& term) {
    const Property& row = properties()[term.property];
    const bool there = term.words.empty() ? !term.negated : term.negated && row.kind == Kind::count;
    if (there) {
        return present(row, term.property);
    }
    if (term.words.empty()) {
        return "none";
    }
    return term.negated ? other_word(term.property, term.words) : term.words.front();
}

/// Adds what makes the property speak, and what makes that speak.
void add_grounds(PropertyId id, std::vector<Setting>& settings, int depth) {
    if (depth == kDeepest) {
        throw std::logic_error("conditions of the table go in a circle at " +
                               quoted(properties()[id].key));
    }
    for (const Term& term : condition_of(properties()[id])) {
        add_grounds(term.property, settings, depth + 1);
        settings.push_back({term.property, wanted(term)});
    }
}

/// As a user would write it.
std::string as_written(const Property& row, const std::string& value) {
    const std::string group(row.group());
    const auto one_word = property_of_word(group, value);
    if (one_word && properties()[*one_word].key == row.key) {
        return group + ": " + value;
    }
    return group + ": {" + std::string(row.name()) + ": " + value + "}";
}

Example example(PropertyId id, std::string value) {
    Example made{id, std::move(value), {}, {}};
    add_grounds(id, made.settings, 0);
    made.settings.push_back({id, made.value});
    made.written = as_written(properties()[id], made.value);
    return made;
}

}  // namespace

std::vector<Example> examples_of(PropertyId id) {
    const Property& row = properties()[id];
    std::vector<Example> made;
    if (row.kind == Kind::choice) {
        for (const Choice& choice : choices_of(id)) {
            made.push_back(example(id, std::string(choice.word)));
        }
    }
    const bool by_default_none = row.initial == "none" || !row.example.empty();
    const bool seen = row.kind != Kind::choice && row.kind != Kind::measure &&
                      row.key != "lace.cloth" && row.key != "lace.pattern";
    if (seen && by_default_none) {
        made.push_back(example(id, present(row, id)));
    } else if (row.may_be_none && !by_default_none && row.kind != Kind::count) {
        made.push_back(example(id, "none"));
    }
    return made;
}

}  // namespace platewright
