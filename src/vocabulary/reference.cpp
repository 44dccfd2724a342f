// SPDX-License-Identifier: MIT
// The reference page, made from the table.
#include <algorithm>
#include <cctype>
#include <string>
#include <string_view>
#include <vector>

#include "base/text.h"
#include "vocabulary/guide.h"
#include "vocabulary/measure.h"
#include "vocabulary/phrases.h"
#include "vocabulary/property.h"
#include "vocabulary/records.h"
#include "vocabulary/schema.h"

namespace platewright {

namespace {

constexpr std::string_view kIntroduction = R"(# What may be written

This page is made by the program from its own table of properties; `platewright schema` gives the same table to editors.

- **A colour** is a name from `palettes/`, the colour itself in quotes (`"#28385f"`), a phrase such as `the facing colour`
  (all stand near the end), or another property: `as lapels.cloth`; `as lapels.cloth or facings.cloth` takes the second
  where the first is `none`.
  Where lace or tape is asked for, a metal of the palettes gives metal lace.
- **A metal** is a name from `palettes/`, or a colour itself in quotes.
- **A length** is a number and its unit: `12 mm`, `3 1/2 in`, `2 Zoll rhineland`, `24 line`. All units stand at the end.
- `none` means not worn, or left off; for a number it is 0.
- A group that has a short form may be written with one word: `pockets: vertical` is `pockets: {direction: vertical}`.

)";

std::string code(std::string_view text) {
    std::string quoted_text = "`";
    quoted_text += text;
    quoted_text += '`';
    return quoted_text;
}

void add_row(std::string& page, const std::vector<std::string>& cells) {
    page += '|';
    for (const std::string& cell : cells) {
        page += ' ';
        page += cell;
        page += " |";
    }
    page += '\n';
}

/// "`round` (or `plain`), `slashed`, `none`".
std::string choice_words(PropertyId id) {
    std::string list;
    for (const Choice& choice : choices_of(id)) {
        list += list.empty() ? "" : ", ";
        list += code(choice.word);
        if (!choice.other_name.empty()) {
            list += " (or ";
            list += code(choice.other_name);
            list += ')';
        }
    }
    return properties()[id].may_be_none ? list + ", `none`" : list;
}

std::string allowed(PropertyId id) {
    const Property& row = properties()[id];
    const std::string none = row.may_be_none ? ", or `none`" : "";
    switch (row.kind) {
        case Kind::choice:
            return choice_words(id);
        case Kind::cloth:
        case Kind::metal:
            return std::string(kind_name(row.kind)) + none;
        case Kind::count:
        case Kind::measure:
        case Kind::ornament:
        case Kind::words:
            break;
    }
    return expectation(id);
}

/// "`as worn`, `as ordered`".
std::string word_list(const std::vector<std::string_view>& words) {
    std::string list;
    for (const std::string_view word : words) {
        list += (list.empty() ? "" : ", ") + code(word);
    }
    return list;
}

/// What may be written after a key.
std::string form_of(const Key& key) {
    const std::string_view of = record_row(key.of).called;
    switch (key.holds) {
        case Holds::line:
        case Holds::note:
            return "a text";
        case Holds::lines:
        case Holds::notes:
            return "a text, or a list of texts";
        case Holds::first_day:
        case Holds::last_day:
            return "a day, a month or a year";
        case Holds::years:
            return "a number of years";
        case Holds::years_asked:
            return "`at least` or `more than`, and a number of years";
        case Holds::number:
            return "a whole number from 1 to " + std::to_string(key.most);
        case Holds::yes_or_no:
            return "`yes` or `no`";
        case Holds::choice:
            return "one of " + word_list(words_of(key));
        case Holds::properties:
            return "a list of properties, each with its group";
        case Holds::record:
            return std::string(of);
        case Holds::records:
            return "a list, each item " + std::string(of);
        case Holds::named:
            return "names of your own, each with " + std::string(of);
        case Holds::numbers:
            return "names, each with a whole number";
    }
    return {};
}

/// "For `rules`."
std::string stands_in(Record record) {
    std::vector<std::string_view> places;
    for (const RecordRow& row : record_rows()) {
        for (const Key& key : row.keys) {
            const bool holds_it = key.holds == Holds::record || key.holds == Holds::records ||
                                  key.holds == Holds::named;
            if (holds_it && key.of == record &&
                std::ranges::find(places, key.key) == places.end()) {
                places.push_back(key.key);
            }
        }
    }
    return places.empty() ? "" : "For " + word_list(places) + ". ";
}

/// Where a record stands, and what else may be written in it.
std::string about(const RecordRow& row) {
    std::string text = stands_in(row.record);
    if (row.groups) {
        text += "Any group of properties may stand here too. ";
    }
    if (row.grounds) {
        text += "`source`, `certainty`, `why` and `other sources` tell what it rests on. ";
    }
    if (row.record == Record::question) {
        text += "Besides, any property: `buttons.metal: white`; of a list, any word will do. ";
    }
    if (row.or_text) {
        text += "A text alone is its " + code(row.keys.front().key) + ". ";
    }
    return text.empty() ? text : text.substr(0, text.size() - 1) + "\n\n";
}

void add_record(std::string& page, const RecordRow& row, std::string_view heading) {
    std::string title(row.called);
    title.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(title.front())));
    page += std::string(heading) + " " + title + "\n\n" + about(row);
    if (!row.keys.empty()) {
        page += "| key | what may be written | meaning |\n| --- | --- | --- |\n";
    }
    for (const Key& key : row.keys) {
        std::string form = form_of(key);
        form += key.example.empty() ? "" : ", such as " + code(key.example);
        form += key.required ? "; must be written" : "";
        add_row(page, {code(key.key), form, std::string(key.meaning)});
    }
    page += row.keys.empty() ? "" : "\n";
}

/// "Short form: `collar: falling` (shape)."
std::string short_forms(std::string_view group) {
    std::string forms;
    for (const Property& row : properties()) {
        if (row.group() != group || !row.main) {
            continue;
        }
        const bool follows = !followed(row.initial).empty() || row.initial == "none";
        const std::string_view example = follows && row.kind != Kind::choice ? "red" : row.initial;
        forms += forms.empty() ? "Short form: " : ", ";
        forms += code(std::string(group) + ": " + std::string(example));
        forms += " for " + code(row.name());
    }
    return forms.empty() ? forms : forms + ".\n\n";
}

void add_group(std::string& page, std::string_view group) {
    page += "## " + std::string(group) + "\n\n" + short_forms(group);
    page += "| key | what may be written | if not written | meaning |\n| --- | --- | --- | --- |\n";
    for (PropertyId id = 0; id < properties().size(); ++id) {
        const Property& row = properties()[id];
        if (row.group() == group) {
            add_row(page,
                    {code(row.name()), allowed(id), code(row.initial), std::string(row.meaning)});
        }
    }
    page += '\n';
}

void add_phrases(std::string& page) {
    page += "## Phrases for colours\n\n";
    page +=
        "`the` speaks of the man's own dress, `the regiment's` of what his regiment wears before "
        "company, rank, service and order of dress are looked at: a drummer in reversed colours "
        "has `coat: the regiment's facing colour`.\n\n";
    page += "| phrase | stands for |\n| --- | --- |\n";
    for (const Phrase& phrase : phrases()) {
        add_row(
            page,
            {code("the " + std::string(phrase.words)), code("as " + std::string(phrase.property))});
    }
    page += '\n';
}

void add_units(std::string& page) {
    constexpr int decimals = 6;
    page += "## Units of length\n\nCapitals and the order of the words do not matter.\n\n";
    page += "| unit | mm | source |\n| --- | --- | --- |\n";
    for (const LengthUnit& unit : length_units()) {
        add_row(page,
                {code(unit.name), format_number(unit.mm, decimals), std::string(unit.source)});
    }
}

}  // namespace

std::string reference_page() {
    std::string page(kIntroduction);
    add_record(page, record_row(Record::plate), "##");
    for (const std::string_view group : groups()) {
        add_group(page, group);
    }
    page += regulation_guide();
    page += "## The keys of regulations, regiments and other sheets\n\n";
    for (const RecordRow& row : record_rows()) {
        if (row.record != Record::plate) {
            add_record(page, row, "###");
        }
    }
    add_phrases(page);
    add_units(page);
    page += "\n";
    page += answers_guide();
    return page;
}

}  // namespace platewright
