// SPDX-License-Identifier: MIT
// A palette: colours by name.
#include <algorithm>
#include <array>
#include <charconv>
#include <map>
#include <string>
#include <utility>
#include <vector>

#include "base/colour.h"
#include "base/limits.h"
#include "base/text.h"
#include "read/keys.h"
#include "read/names.h"
#include "read/read.h"
#include "read/texts.h"
#include "read/tree.h"

namespace platewright {
namespace {

constexpr std::string_view kTitle = "palette";

std::vector<std::string> section_names() {
    std::vector<std::string> names;
    for (const SubstanceKind kind : {SubstanceKind::cloth,
                                     SubstanceKind::metal,
                                     SubstanceKind::leather,
                                     SubstanceKind::skin,
                                     SubstanceKind::hair}) {
        names.emplace_back(substance_name(kind));
    }
    return names;
}

/// A decimal number without exponent, or nothing.
std::optional<double> parse_decimal(std::string_view text) {
    if (text.empty() || text.find_first_not_of("-.0123456789") != std::string_view::npos) {
        return std::nullopt;
    }
    double number = 0;
    const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), number);
    const bool whole = problem == std::errc() && end == text.data() + text.size();
    return whole ? std::optional(number) : std::nullopt;
}

/// One part of a CIE Lab colour with its range.
struct LabPart {
    std::string_view key;
    double least;
    double most;
};

constexpr std::array<LabPart, 3> kLabParts = {{{"L", 0, 100}, {"a", -128, 127}, {"b", -128, 127}}};

class EntryReader {
  public:
    EntryReader(SubstanceKind kind, const ReadContext& context) : context_(context) {
        entry_.kind = kind;
    }

    /// Nothing if the entry is of no use.
    std::optional<PaletteEntry> read(const Item& item) {
        if (item.form != Item::Form::group) {
            if (item.form != Item::Form::broken) {
                context_.to
                    .error("read.wrong-kind",
                           head_of(item),
                           "each colour is a group of a name and a colour")
                    .hints.emplace_back(kExample);
            }
            return std::nullopt;
        }
        bool good = true;
        for (const TreeEntry& part : item.entries) {
            good = read_part(part) && good;
        }
        for (const char* key : {"name", "colour"}) {
            if (find_entry(item, key) == nullptr) {
                context_.to
                    .error("read.missing-key", head_of(item), "this colour has no " + quoted(key))
                    .hints.emplace_back(kExample);
                good = false;
            }
        }
        return good ? std::optional(std::move(entry_)) : std::nullopt;
    }

  private:
    static constexpr const char* kExample =
        "write name: dark blue and colour: \"#28385f\" for each";

    bool read_part(const TreeEntry& part) {
        if (part.key == "name") {
            auto name = read_text(part, limits::kLineCharacters, context_);
            const bool good = name && check_name(*name, context_.to);
            entry_.name = good ? std::move(*name) : WrittenText{};
            return good;
        }
        if (part.key == "colour") {
            return read_colour(part);
        }
        if (part.key == "other names") {
            entry_.other_names = read_texts(part, limits::kLineCharacters, context_);
            bool good = true;
            for (const WrittenText& name : entry_.other_names) {
                good = check_name(name, context_.to) && good;
            }
            return good;
        }
        if (part.key == "hatch") {
            return read_hatch(part);
        }
        const auto language = find_language(part.key);
        return language && *language != Language::english
                   ? read_words_in(part, entry_.in[*language])
                   : read_remark(part);
    }

    /// A name alone, or a group that also says what it is made of.
    bool read_words_in(const TreeEntry& part, PaletteEntry::Words& words) {
        if (part.value.form != Item::Form::group) {
            return read_name_in(part, words);
        }
        bool good = true;
        for (const TreeEntry& each : part.value.entries) {
            if (each.key == "name") {
                good = read_name_in(each, words) && good;
            } else if (each.key == "made of") {
                const auto text = read_text(each, limits::kNoteCharacters, context_);
                words.made_of = text ? text->text : std::string();
                good = good && text;
            } else {
                report_unknown_key(
                    each, "a colour in another language", "", {"name", "made of"}, context_);
                good = false;
            }
        }
        return good;
    }

    bool read_name_in(const TreeEntry& part, PaletteEntry::Words& words) {
        words.name = read_text(part, limits::kLineCharacters, context_);
        return words.name && check_name(*words.name, context_.to);
    }

    bool read_hatch(const TreeEntry& part) {
        const auto text = read_text(part, limits::kLineCharacters, context_);
        if (!text) {
            return false;
        }
        entry_.hatch = find_tincture(lower(text->text));
        if (!entry_.hatch) {
            std::vector<std::string> known;
            for (const Tincture& each : tinctures()) {
                known.emplace_back(each.name);
            }
            Diagnostic& problem = context_.to.error(
                "read.unknown-choice", text->span, "'hatch' cannot be " + shown(text->text));
            add_suggestion(problem, text->text, known, "the tinctures are ");
        }
        return entry_.hatch.has_value();
    }

    bool read_remark(const TreeEntry& part) {
        std::string* to = part.key == "made of"     ? &entry_.made_of
                          : part.key == "source"    ? &entry_.source
                          : part.key == "certainty" ? &entry_.certainty
                                                    : nullptr;
        if (to == nullptr) {
            report_unknown_key(part,
                               "a colour",
                               "",
                               {"name",
                                "colour",
                                "other names",
                                "made of",
                                "source",
                                "certainty",
                                "hatch",
                                "fr",
                                "de"},
                               context_);
            return false;
        }
        const auto text = read_text(part, limits::kNoteCharacters, context_);
        if (!text) {
            return false;
        }
        *to = text->text;
        const bool known = *to == "documented" || *to == "inferred" || *to == "conjectural";
        if (to == &entry_.certainty && !known) {
            context_.to
                .error("read.unknown-choice", text->span, "'certainty' cannot be " + shown(*to))
                .hints.emplace_back("write documented, inferred or conjectural");
            return false;
        }
        return true;
    }

    bool read_colour(const TreeEntry& part) {
        if (part.value.form == Item::Form::group) {
            return read_lab(part);
        }
        const auto text = read_text(part, limits::kLineCharacters, context_);
        if (!text) {
            return false;
        }
        const auto colour = parse_hex(text->text);
        if (!colour) {
            context_.to.error("read.wrong-kind", text->span, shown(text->text) + " is not a colour")
                .hints.emplace_back("write \"#rrggbb\" in quotes, or {L: 24.5, a: 3.1, b: -25.0}");
            return false;
        }
        entry_.colour = *colour;
        return true;
    }

    bool read_lab(const TreeEntry& part) {
        std::array<double, 3> numbers{};
        bool good = true;
        for (std::size_t i = 0; i < kLabParts.size(); ++i) {
            good = read_lab_part(part, kLabParts[i], numbers[i]) && good;
        }
        for (const TreeEntry& each : part.value.entries) {
            if (each.key != "L" && each.key != "a" && each.key != "b") {
                report_unknown_key(each, "a colour by its measures", "", {"L", "a", "b"}, context_);
                good = false;
            }
        }
        if (!good) {
            return false;
        }
        bool clipped = false;
        entry_.colour = from_lab_d65({numbers[0], numbers[1], numbers[2]}, &clipped);
        if (clipped) {
            context_.to
                .warning("read.outside-srgb",
                         part.value.span,
                         "no screen colour is quite so strong; the nearest one is taken")
                .hints.push_back("it is drawn as " + to_hex(entry_.colour));
        }
        return true;
    }

    bool read_lab_part(const TreeEntry& colour, const LabPart& wanted, double& to) {
        const std::string range = "a number from " + format_number(wanted.least, 0) + " to " +
                                  format_number(wanted.most, 0);
        const TreeEntry* entry = find_entry(colour.value, wanted.key);
        if (entry == nullptr) {
            context_.to
                .error("read.missing-key",
                       head_of(colour.value),
                       "this colour has no " + quoted(wanted.key))
                .hints.emplace_back("write {L: 24.5, a: 3.1, b: -25.0}");
            return false;
        }
        const auto text = read_text(*entry, limits::kLineCharacters, context_);
        if (!text) {
            return false;
        }
        const auto number = parse_decimal(text->text);
        if (!number || *number < wanted.least || *number > wanted.most) {
            context_.to
                .error(number ? "read.out-of-range" : "read.wrong-kind",
                       text->span,
                       quoted(entry->key) + " cannot be " + shown(text->text))
                .hints.push_back("write " + range);
            return false;
        }
        to = *number;
        return true;
    }

    const ReadContext& context_;
    PaletteEntry entry_;
};

/// Names and other names of one section, capitals ignored.
class SectionNames {
  public:
    void add(const PaletteEntry& entry, Diagnostics& to) {
        add(entry.name, to);
        for (const WrittenText& name : entry.other_names) {
            add(name, to);
        }
        // One colour may be called the same in two languages, two colours may not.
        std::vector<std::string> own{lower(entry.name.text)};
        for (const WrittenText& name : entry.other_names) {
            own.push_back(lower(name.text));
        }
        for (const auto& [language, words] : entry.in) {
            if (words.name && std::ranges::find(own, lower(words.name->text)) == own.end()) {
                add(*words.name, to);
                own.push_back(lower(words.name->text));
            }
        }
    }

  private:
    void add(const WrittenText& name, Diagnostics& to) {
        const auto [first, is_new] = seen_.emplace(lower(name.text), name.span);
        if (!is_new) {
            report_repeated_name(name, first->second, to);
        }
    }

    std::map<std::string, Span> seen_;
};

void read_section(const TreeEntry& section,
                  SubstanceKind kind,
                  SpecifiedPalette& palette,
                  const ReadContext& context) {
    if (section.value.form == Item::Form::nothing) {
        report_no_value(
            section, "write the colours on the lines below, each after a dash", context);
        return;
    }
    if (section.value.form != Item::Form::list) {
        report_form(section.value,
                    section.key,
                    "write the colours on the lines below, each after a dash",
                    context);
        return;
    }
    SectionNames names;
    for (const Item& item : section.value.items) {
        if (auto entry = EntryReader(kind, context).read(item)) {
            names.add(*entry, context.to);
            palette.entries.push_back(std::move(*entry));
        }
    }
}

SpecifiedPalette read_sections(const Item& root, const ReadContext& context) {
    SpecifiedPalette palette;
    std::vector<std::string> known = section_names();
    known.emplace_back(kTitle);
    for (const TreeEntry& entry : root.entries) {
        if (entry.key == kTitle) {
            const auto title = read_text(entry, limits::kLineCharacters, context);
            palette.name = title ? title->text : "";
        } else if (const auto kind = find_substance(entry.key)) {
            read_section(entry, *kind, palette, context);
        } else {
            report_unknown_key(entry, "a palette", "", known, context);
        }
    }
    return palette;
}

}  // namespace

std::optional<SpecifiedPalette> read_palette(const SourceMap& sources,
                                             FileId file,
                                             Diagnostics& to) {
    const std::size_t errors = to.error_count();
    const auto root = read_tree(sources, file, to);
    const bool complete = to.error_count() == errors;
    SpecifiedPalette palette;
    if (root) {
        palette = read_sections(*root, {sources, file, to});
    }
    if (root && complete && find_entry(*root, kTitle) == nullptr) {
        to.error("read.missing-key", {file, 0, 0}, "the palette has no title")
            .hints.emplace_back("begin with a line such as 'palette: Cloth'");
    }
    if (to.error_count() == errors && palette.entries.empty()) {
        to.error("read.missing-key", {file, 0, 0}, "the palette holds no colours")
            .hints.push_back("write a section, " + or_list(section_names()));
    }
    if (to.error_count() != errors) {
        return std::nullopt;
    }
    return palette;
}

}  // namespace platewright
