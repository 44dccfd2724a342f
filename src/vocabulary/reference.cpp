// SPDX-License-Identifier: MIT
// The reference page, made from the table.
#include <string>
#include <string_view>
#include <vector>

#include "base/text.h"
#include "vocabulary/measure.h"
#include "vocabulary/property.h"
#include "vocabulary/schema.h"

namespace platewright {

namespace {

constexpr std::string_view kIntroduction = R"(# What may be written on a plate

This page is made by the program from its own table of properties; `platewright schema` gives the same table to editors.

- **A colour** is a name from `palettes/`, the colour itself in quotes (`"#28385f"`), or another property:
  `as lapels.cloth`; `as lapels.cloth or facings.cloth` takes the second where the first is `none`.
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

void add_plate_keys(std::string& page) {
    page += "## The plate\n\n| key | what may be written | meaning |\n| --- | --- | --- |\n";
    for (const PlateKey& key : plate_keys()) {
        std::string form = key.may_be_list ? "a text, or a list of texts" : "a text";
        form += key.required ? "; must be written" : "";
        add_row(page, {code(key.key), form, std::string(key.meaning)});
    }
    page += '\n';
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
    add_plate_keys(page);
    for (const std::string_view group : groups()) {
        add_group(page, group);
    }
    add_units(page);
    return page;
}

}  // namespace platewright
