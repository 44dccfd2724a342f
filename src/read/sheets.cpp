// SPDX-License-Identifier: MIT
// Comparisons, handouts and charts.
#include <optional>
#include <string_view>
#include <utility>
#include <vector>

#include "base/limits.h"
#include "read/read.h"
#include "read/record.h"
#include "read/texts.h"
#include "read/tree.h"

namespace platewright {
namespace {

/// The number of a choice's word as one of an enumeration with as many values.
template <typename E>
void read_word(const TreeEntry& entry, Record record, E& to, const ReadContext& context) {
    if (const auto chosen = read_choice(entry, *find_key(record, entry.key), context)) {
        to = static_cast<E>(*chosen);
    }
}

template <typename E>
void read_word(const TreeEntry& entry,
               Record record,
               std::optional<E>& to,
               const ReadContext& context) {
    if (const auto chosen = read_choice(entry, *find_key(record, entry.key), context)) {
        to = static_cast<E>(*chosen);
    }
}

/// The keys of every sheet, the title's first.
std::vector<KeyTarget> targets_of(std::string_view title, SheetWords& words) {
    return {{title, &words.title},
            {"subtitle", &words.subtitle},
            {"drawn by", &words.drawn_by},
            {"source", &words.source},
            {"notes", &words.notes},
            {"language", &words.language}};
}

std::vector<KeyTarget> joined(std::vector<KeyTarget> first, std::vector<KeyTarget> rest) {
    for (KeyTarget& target : rest) {
        first.push_back(std::move(target));
    }
    return first;
}

KitItem read_kit_item(const Item& item, const ReadContext& context) {
    KitItem kit;
    if (item.form == Item::Form::text) {
        if (auto name = read_words(item, "kit", limits::kLineCharacters, context)) {
            kit.item = std::move(*name);
        }
        return kit;
    }
    const auto stage = [&](const TreeEntry& entry) {
        read_word(entry, Record::kit_item, kit.stage, context);
    };
    const auto way = [&](const TreeEntry& entry) {
        read_word(entry, Record::kit_item, kit.way, context);
    };
    read_record(item,
                Record::kit_item,
                "kit",
                {{"item", &kit.item},
                 {"when", stage},
                 {"way", way},
                 {"quantity", &kit.quantity},
                 {"material", &kit.material},
                 {"cost", &kit.cost},
                 {"from", &kit.from},
                 {"source", &kit.source},
                 {"note", &kit.note}},
                {},
                context);
    return kit;
}

void read_unit(const TreeEntry& entry, Unit& unit, const ReadContext& context) {
    read_record(entry,
                Record::unit,
                "unit",
                {{"name", &unit.name}, {"contact", &unit.contact}, {"notes", &unit.notes}},
                {},
                context);
}

/// Reads the file with `targets` and returns `sheet` if nothing was wrong. `targets` point into
/// `sheet` and are made once the context is known.
template <typename T, typename Targets>
std::optional<T> read_sheet(
    const SourceMap& sources, FileId file, Record record, Diagnostics& to, const Targets& targets) {
    const std::size_t errors = to.error_count();
    const auto root = read_tree(sources, file, to);
    const ReadContext context{sources, file, to, to.error_count() == errors};
    T sheet;
    if (root) {
        read_outermost(*root, record, targets(sheet, context), {}, context);
    }
    return to.error_count() == errors ? std::optional(std::move(sheet)) : std::nullopt;
}

void report_number_of_men(const SpecifiedComparison& sheet, FileId file, Diagnostics& to) {
    to.error("read.out-of-range",
             sheet.men.empty() ? Span{file, 0, 0} : sheet.men.back().span,
             "a comparison is of " + std::to_string(kFewestCompared) + " to " +
                 std::to_string(kMostCompared) + " men, and these are " +
                 std::to_string(sheet.men.size()))
        .hints.emplace_back("write their plates in a list: 'men: [a.yaml, b.yaml]'");
}

}  // namespace

std::optional<SpecifiedComparison> read_comparison(const SourceMap& sources,
                                                   FileId file,
                                                   Diagnostics& to) {
    auto sheet = read_sheet<SpecifiedComparison>(
        sources,
        file,
        Record::comparison,
        to,
        [](SpecifiedComparison& made, const ReadContext& /*context*/) {
            return joined(targets_of("comparison", made.words),
                          {{"men", &made.men}, {"views", &made.views}});
        });
    if (sheet && (sheet->men.size() < kFewestCompared || sheet->men.size() > kMostCompared)) {
        report_number_of_men(*sheet, file, to);
        return std::nullopt;
    }
    return sheet;
}

std::optional<SpecifiedHandout> read_handout(const SourceMap& sources,
                                             FileId file,
                                             Diagnostics& to) {
    return read_sheet<SpecifiedHandout>(
        sources, file, Record::handout, to, [](SpecifiedHandout& made, const ReadContext& context) {
            const auto unit = [&made, &context](const TreeEntry& entry) {
                read_unit(entry, made.unit, context);
            };
            const auto kit = [&made, &context](const TreeEntry& entry) {
                read_list(entry, context, [&](const Item& item) {
                    made.kit.push_back(read_kit_item(item, context));
                });
            };
            return joined(targets_of("handout", made.words),
                          {{"man", &made.man},
                           {"unit", unit},
                           {"kit", kit},
                           {"orders of dress", &made.orders},
                           {"putting on", &made.putting_on},
                           {"care", &made.care},
                           {"cautions", &made.cautions}});
        });
}

std::optional<SpecifiedChart> read_chart(const SourceMap& sources, FileId file, Diagnostics& to) {
    return read_sheet<SpecifiedChart>(
        sources, file, Record::chart, to, [file](SpecifiedChart& made, const ReadContext& context) {
            made.span = {file, 0, 0};
            const auto of = [&made, &context](const TreeEntry& entry) {
                read_word(entry, Record::chart, made.of, context);
            };
            return joined(targets_of("chart", made.words),
                          {{"of", of},
                           {"regulation", &made.regulation},
                           {"regiment", &made.regiment},
                           {"company", &made.company},
                           {"rank", &made.rank},
                           {"as of", &made.as_of},
                           {"palettes", &made.palettes}});
        });
}

}  // namespace platewright
