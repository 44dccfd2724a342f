// SPDX-License-Identifier: MIT
// Looking colours up by name.
#include "resolve/colours.h"

#include "base/text.h"

namespace platewright {

namespace {

/// The sections of the palettes a property's colour may come from, best first.
std::vector<SubstanceKind> sections_for(const Property& row) {
    if (row.kind == Kind::metal) {
        return {SubstanceKind::metal};
    }
    switch (row.substance) {
        case SubstanceKind::skin:
        case SubstanceKind::hair:
            return {row.substance};
        case SubstanceKind::leather:
            return {SubstanceKind::leather, SubstanceKind::cloth};
        case SubstanceKind::cloth:
        case SubstanceKind::metal:
            break;
    }
    return {SubstanceKind::cloth, SubstanceKind::metal, SubstanceKind::leather};
}

}  // namespace

ColourBook::ColourBook(const std::vector<SpecifiedPalette>& palettes, Language language)
    : language_(language) {
    for (const SpecifiedPalette& palette : palettes) {
        for (const PaletteEntry& entry : palette.entries) {
            names_.push_back({lower(trim(entry.name.text)), true, &entry});
            for (const WrittenText& other : entry.other_names) {
                names_.push_back({lower(trim(other.text)), false, &entry});
            }
            for (const auto& [of_sheet, words] : entry.in) {
                if (words.name) {
                    names_.push_back({lower(trim(words.name->text)), false, &entry});
                }
            }
        }
    }
}

const PaletteEntry* ColourBook::find_in(SubstanceKind section, std::string_view name) const {
    const PaletteEntry* by_other_name = nullptr;
    for (const Name& each : names_) {
        if (each.entry->kind != section || each.lower_case != name) {
            continue;
        }
        if (each.main) {
            return each.entry;
        }
        by_other_name = by_other_name == nullptr ? each.entry : by_other_name;
    }
    return by_other_name;
}

std::optional<Material> ColourBook::find(PropertyId id, std::string_view written) const {
    const Property& row = properties()[id];
    const std::string name = lower(trim(written));
    if (const std::optional<Colour> colour = parse_hex(name)) {
        return Material{name, *colour, row.kind == Kind::metal, {}};
    }
    for (const SubstanceKind section : sections_for(row)) {
        if (const PaletteEntry* entry = find_in(section, name)) {
            return Material{entry->name.text,
                            entry->colour,
                            section == SubstanceKind::metal,
                            entry->made_of_in(language_),
                            entry->name_in(language_),
                            entry->hatch};
        }
    }
    return std::nullopt;
}

std::optional<std::string> ColourBook::nearest(PropertyId id, std::string_view written) const {
    std::vector<std::string> candidates;
    for (const SubstanceKind section : sections_for(properties()[id])) {
        for (const Name& each : names_) {
            if (each.entry->kind == section) {
                candidates.push_back(each.lower_case);
            }
        }
    }
    return nearest_word(trim(written), candidates);
}

}  // namespace platewright
