// SPDX-License-Identifier: MIT
// What men could wear of each other's.
#include "cli/carried.h"

#include <algorithm>
#include <string>
#include <string_view>
#include <utility>

#include "base/text.h"
#include "resolve/change.h"
#include "words/comparison_messages.h"
#include "words/terms.h"

namespace platewright::cli {
namespace {

/// "coat (to change: lapels, buttons)".
std::string kept_words(const Kept& kept, Language language) {
    std::vector<std::string> renewed;
    for (const std::string_view each : kept.renewed) {
        renewed.push_back(term(language, each));
    }
    const std::string name = term(language, kept.thing);
    return renewed.empty() ? name : say(language, messages::kToChange, {name, comma_list(renewed)});
}

/// A sign for each man of a party: a letter where there are several parties.
ComparedThing row_of_parties(const Shared& shared, std::size_t men, Language language) {
    ComparedThing row{term(language, shared.thing), std::vector<ComparedValue>(men)};
    char letter = 'a';
    for (const std::vector<std::size_t>& party : shared.parties) {
        for (const std::size_t i : party) {
            row.values[i].words =
                shared.parties.size() > 1 ? std::string(1, letter) : std::string("•");
        }
        ++letter;
    }
    return row;
}

/// In the row of what passes among the same men, if there is one.
void add_row(ComparedThing row, std::vector<ComparedThing>& to) {
    const auto at = std::ranges::find_if(to, [&row](const ComparedThing& other) {
        return std::ranges::equal(
            other.values, row.values, {}, &ComparedValue::words, &ComparedValue::words);
    });
    if (at == to.end()) {
        to.push_back(std::move(row));
    } else {
        at->name += ", " + row.name;
    }
}

ComparedTable carried_among_many(const std::vector<const Uniform*>& men, Language language) {
    ComparedTable made{{say(language, messages::kWhatCarriesOver), {}}};
    std::vector<std::string> among_all;
    for (const Shared& shared : shared_things(men)) {
        if (shared.parties.front().size() == men.size()) {
            among_all.push_back(term(language, shared.thing));
        } else {
            add_row(row_of_parties(shared, men.size(), language), made.rows);
        }
    }
    if (!among_all.empty()) {
        made.words.paragraphs.push_back(
            say(language, messages::kAmongAll, {comma_list(among_all)}));
    }
    if (!made.rows.empty()) {
        made.words.paragraphs.push_back(say(language, messages::kAmongSome));
    }
    return made;
}

}  // namespace

void add_carried_over(const std::vector<const Uniform*>& men, Language language, MenCompared& to) {
    if (men.size() > 2) {
        to.carried = carried_among_many(men, language);
        return;
    }
    std::vector<std::string> kept;
    for (const Kept& each : compare(*men.front(), *men.back()).stays) {
        kept.push_back(kept_words(each, language));
    }
    to.words.push_back(
        {say(language, messages::kWhatCarriesOver),
         {(kept.empty() ? say(language, messages::kNothing) : comma_list(kept)) + "."}});
}

}  // namespace platewright::cli
