// SPDX-License-Identifier: MIT
// A regulation as an establishment, in words.
#include "cli/establishment.h"

#include <algorithm>
#include <array>
#include <utility>

#include "base/text.h"
#include "cli/columns.h"
#include "resolve/checks.h"
#include "resolve/man.h"
#include "resolve/statements.h"

namespace platewright::cli {
namespace {

constexpr int kDecimals = 3;

/// What the table of regiments may show, with its heading; a column in which all are alike is told
/// once below the table.
constexpr std::array<std::pair<std::string_view, std::string_view>, 16> kLook = {
    {{"coat.cloth", "coat"},
     {"lapels.cloth", "lapels"},
     {"collar.cloth", "collar"},
     {"cuffs.cloth", "cuffs"},
     {"buttons.metal", "buttons"},
     {"pockets.direction", "pockets"},
     {"coat.cut", "cut"},
     {"coat.lining", "lining"},
     {"lapels.piping", "lapel piping"},
     {"collar.piping", "collar piping"},
     {"cuffs.piping", "cuff piping"},
     {"cuffs.shape", "cuffs cut"},
     {"turnbacks.cloth", "turnbacks"},
     {"lace.cloth", "lace"},
     {"waistcoat.cloth", "waistcoat"},
     {"breeches.cloth", "breeches"}}};

std::string seen(const Uniform& man, std::string_view key) {
    const PropertyId id = property_id(key);
    return man.speaks(id) ? man.word(id) : std::string("-");
}

bool all_alike(const Regiments& regiments, std::string_view key) {
    return std::ranges::all_of(regiments, [&](const Uniform& man) {
        return seen(man, key) == seen(regiments.front(), key);
    });
}

/// "No. 4".
std::string number_of(const Uniform& man) {
    return std::to_string(man.facts.number.value_or(0));
}

std::string heading(const std::string& words) {
    return "\n" + words + "\n";
}

/// A column of the table, its heading first.
using Cells = std::vector<std::string>;

std::size_t width_of(const Cells& column) {
    std::size_t width = 0;
    for (const std::string& cell : column) {
        width = std::max(width, columns_of(cell));
    }
    return width + 2;
}

/// Columns side by side as far as they fit, the others below; the first two stand in every part.
std::string parted(const std::vector<Cells>& columns) {
    std::string text;
    for (std::size_t next = 2; next < columns.size();) {
        std::vector<const Cells*> part{columns.data(), columns.data() + 1};
        std::size_t width = kIndent + width_of(columns[0]) + width_of(columns[1]);
        do {
            width += width_of(columns[next]);
            part.push_back(&columns[next++]);
        } while (next < columns.size() && width + width_of(columns[next]) <= kAnswerColumns);
        Columns rows(kIndent);
        for (std::size_t i = 0; i < columns[0].size(); ++i) {
            std::vector<std::string> row;
            row.reserve(part.size());
            for (const Cells* column : part) {
                row.push_back((*column)[i]);
            }
            rows.add(std::move(row));
        }
        text += (text.empty() ? "" : "\n") + rows.text();
    }
    return text;
}

Cells column_of(const Regiments& regiments, std::string_view head, const auto& cell_of) {
    Cells cells{std::string(head)};
    for (const Uniform& man : regiments) {
        cells.push_back(cell_of(man));
    }
    return cells;
}

std::string regiments_in_words(const Regiments& regiments) {
    if (regiments.empty()) {
        return {};
    }
    const auto name = [](const Uniform& man) {
        const bool nameless = man.facts.regiment == "regiment " + number_of(man);
        return nameless ? std::string() : man.facts.regiment;
    };
    const auto corps_class = [](const Uniform& man) { return man.facts.corps_class.name; };
    const auto colour = [](const Uniform& man) { return man.word(property_id("facings.cloth")); };
    std::vector<Cells> columns{column_of(regiments, "No.", number_of),
                               column_of(regiments, "regiment", name),
                               column_of(regiments, "class", corps_class),
                               column_of(regiments, "colour", colour)};
    std::vector<std::string> alike;
    for (const auto& [key, head] : kLook) {
        const auto look = [key = key](const Uniform& man) { return seen(man, key); };
        if (!all_alike(regiments, key)) {
            columns.push_back(column_of(regiments, head, look));
        } else if (const std::string word = look(regiments.front());
                   word != "-" && word != "none") {
            alike.push_back(std::string(head) + " " + word);
        }
    }
    std::string text = heading("Regiments") + parted(columns);
    if (!alike.empty() && regiments.size() > 1) {
        text += wrapped("in all: " + and_list(alike), kIndent);
    }
    return text;
}

template <typename T>
std::string entries_in_words(const std::string& title,
                             const std::vector<T>& entries,
                             const auto& more_of) {
    Columns rows(kIndent);
    for (const T& entry : entries) {
        const Named named = entry.named();
        const std::string means = named.means == named.name ? std::string() : named.means;
        rows.add({named.name, named.title, means, more_of(entry)});
    }
    return rows.empty() ? std::string() : heading(title) + rows.text();
}

std::string battalions_in_words(const InForce& law) {
    Columns rows(kIndent);
    const Establishment sum = establishment_of(law);
    for (std::size_t i = 0; i < sum.battalions.size(); ++i) {
        std::vector<std::string> companies;
        for (const auto& [name, number] : law.battalions[i]->companies) {
            companies.push_back(std::to_string(number) + " " + name.text);
        }
        const auto& men = sum.battalions[i].men;
        rows.add({sum.battalions[i].name,
                  men ? std::to_string(*men) + " men" : std::string("men not said"),
                  and_list(companies)});
    }
    if (rows.empty()) {
        return {};
    }
    if (sum.men) {
        const bool agrees = law.strength && law.strength->first == *sum.men;
        rows.add({"regiment",
                  std::to_string(*sum.men) + " men",
                  agrees         ? "as the strength says"
                  : law.strength ? "but the strength says " + std::to_string(law.strength->first)
                                 : ""});
    }
    return heading("Battalions") + rows.text();
}

std::string rules_in_words(const InForce& law) {
    std::string text;
    for (const RuleInForce& each : law.rules) {
        const Grounds& grounds = each.rule->wear.grounds;
        const std::string name = each.rule->name ? each.rule->name->text : "without a name";
        text += wrapped(name + law.amended(each.edition) +
                            (grounds.why ? ": " + grounds.why->text : std::string()),
                        kIndent);
    }
    return text.empty() ? text : heading("Rules") + text;
}

/// `coat.cloth red, cuffs.shape slashed`.
std::string block_in_words(const Block& block) {
    std::vector<std::string> said;
    for (const auto& [id, written] : block.values) {
        said.push_back(std::string(properties()[id].key) + " " + written_form(written.value));
    }
    return and_list(said);
}

std::string service_in_words(const InForce& law) {
    std::string text;
    for (const ServiceInForce& each : law.service) {
        text += wrapped(std::string(each.step->more_than ? "more than " : "at least ") +
                            format_number(each.step->years, kDecimals) + " years" +
                            law.amended(each.edition) + ": " + block_in_words(each.step->wear),
                        kIndent);
    }
    return text.empty() ? text : heading("Service") + text;
}

std::string titles_in_words(const InForce& law) {
    std::string text;
    for (const SpecifiedRegulation* edition : law.editions) {
        text += wrapped(edition->title.text, 0);
        std::string when;
        if (edition->in_force_from) {
            when = "in force from " + to_string(edition->in_force_from->date);
        }
        if (edition->until) {
            when += (when.empty() ? "until " : " until ") + to_string(edition->until->date);
        }
        text += when.empty() ? "" : wrapped(when, kIndent);
        text += edition->grounds.source
                    ? wrapped("source: " + edition->grounds.source->text, kIndent)
                    : std::string();
    }
    return text;
}

InForce all_of(const std::vector<SpecifiedRegulation>& editions) {
    std::vector<const SpecifiedRegulation*> all;
    all.reserve(editions.size());
    for (const SpecifiedRegulation& edition : editions) {
        all.push_back(&edition);
    }
    return overlay(all, std::nullopt);
}

}  // namespace

std::vector<int> numbers_of(const std::vector<SpecifiedRegulation>& editions) {
    std::vector<int> numbers;
    for (const PlaceInForce& place : all_of(editions).places) {
        numbers.push_back(place.number);
    }
    return numbers;
}

std::string establishment_in_words(const std::vector<SpecifiedRegulation>& editions,
                                   const Regiments& regiments) {
    const InForce law = all_of(editions);
    const auto nothing = [](const auto&) { return std::string(); };
    const auto men = [](const CompanyEntry& each) {
        return each.men ? std::to_string(*each.men) + " men" : std::string();
    };
    const auto likeness = [](const RankEntry& each) {
        const std::string officer = each.officer ? "officer" : "";
        return each.like == nullptr
                   ? officer
                   : officer + (officer.empty() ? "" : ", ") + "like " + each.like->text;
    };
    return titles_in_words(law) + entries_in_words("Classes", law.classes, nothing) +
           regiments_in_words(regiments) + rules_in_words(law) +
           entries_in_words("Companies", law.companies, men) + battalions_in_words(law) +
           entries_in_words("Ranks", law.ranks, likeness) + service_in_words(law) +
           entries_in_words("Orders of dress", law.orders, nothing);
}

}  // namespace platewright::cli
