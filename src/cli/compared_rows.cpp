// SPDX-License-Identifier: MIT
// The table of what men differ in.
#include "cli/compared_rows.h"

#include <algorithm>
#include <array>
#include <string_view>

#include "cli/sample.h"
#include "words/sheet_messages.h"
#include "words/terms.h"

namespace platewright::cli {
namespace {

/// What is understood without its name: `full`, `left sleeve`.
constexpr auto kSpeakForThemselves = std::to_array<std::string_view>(
    {"shape", "direction", "cut", "worn", "ornament", "sleeves", "place"});

bool is_material(const Property& row) {
    return row.kind == Kind::cloth || row.kind == Kind::metal;
}

/// What a thing is made of, and not something on it: lapels, not their piping.
bool is_whole_thing(const Property& row) {
    return is_material(row) && (row.place.empty() || row.main || row.name() == "cloth");
}

/// The row of the thing whose shape or number a property tells; `rows.size()` if there is none.
/// Lengths have rows of their own.
std::size_t row_of_whole(std::size_t number, const std::vector<DifferingRow>& rows) {
    const Property& trait = properties()[rows[number].property];
    const auto whole = std::ranges::find_if(rows, [&](const DifferingRow& row) {
        const Property& property = properties()[row.property];
        return property.group() == trait.group() && is_whole_thing(property);
    });
    const bool told_apart = is_material(trait) || trait.kind == Kind::measure;
    return told_apart ? rows.size() : static_cast<std::size_t>(whole - rows.begin());
}

}  // namespace

ComparedRows::ComparedRows(Language language, const std::vector<const Uniform*>& men)
    : language_(language), men_(men), marks_(men.size()) {
    for (const Uniform* man : men) {
        footnotes_.emplace_back(*man);
    }
}

void ComparedRows::fill(const std::vector<DifferingRow>& rows,
                        const std::vector<std::string>& names) {
    thing_of_.assign(rows.size(), 0);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (row_of_whole(i, rows) == rows.size()) {
            thing_of_[i] = things_.size();
            things_.push_back(thing(rows[i], names[i]));
        }
    }
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const std::size_t whole = row_of_whole(i, rows);
        if (whole < rows.size()) {
            thing_of_[i] = thing_of_[whole];
            add_trait(rows[i], things_[thing_of_[i]]);
        }
    }
}

ComparedThing ComparedRows::thing(const DifferingRow& row, const std::string& name) {
    ComparedThing made{name, {}};
    for (std::size_t i = 0; i < men_.size(); ++i) {
        const std::string& words = row.values[i];
        ComparedValue value{words.empty() ? "–" : words + mark(i, row.property), {}};
        const Material* material = men_[i]->material(row.property);
        if (material != nullptr && !words.empty()) {
            value.colour = sample_of(*material);
        }
        made.values.push_back(std::move(value));
    }
    return made;
}

/// Nothing of the shape of what a man has not.
void ComparedRows::add_trait(const DifferingRow& row, ComparedThing& to) {
    const Property& property = properties()[row.property];
    const bool speaks =
        std::ranges::find(kSpeakForThemselves, property.name()) != kSpeakForThemselves.end();
    for (std::size_t i = 0; i < men_.size(); ++i) {
        const std::string& words = row.values[i];
        if (words.empty() || !is_worn(*men_[i], row.property)) {
            continue;
        }
        std::string& note = to.values[i].note;
        note += note.empty() ? "" : ", ";
        note += speaks ? words
                       : say(language_,
                             messages::kNameAndValue,
                             {trait_term(language_, property.name()), words});
        // The italic face has not all marks.
        const std::string sign = mark(i, row.property);
        std::string& whole = to.values[i].words;
        whole += whole.ends_with(sign) ? "" : sign;
    }
}

std::string ComparedRows::mark(std::size_t man, PropertyId id) {
    const std::string on_plate = footnotes_[man].mark(id);
    if (on_plate.empty()) {
        return {};
    }
    const auto known =
        std::ranges::find(marks_[man], on_plate, &std::pair<std::string, std::string>::first);
    if (known != marks_[man].end()) {
        return known->second;
    }
    std::string here = mark_of_footnote(notes_.size());
    marks_[man].emplace_back(on_plate, here);
    for (const Footnote& note : footnotes_[man].all()) {
        if (note.mark == on_plate) {
            notes_.push_back(
                here + " " +
                say(language_, messages::kNameAndValue, {men_[man]->title, note.words}));
        }
    }
    return here;
}

}  // namespace platewright::cli
