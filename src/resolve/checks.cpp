// SPDX-License-Identifier: MIT
// Looking a regulation through that no man has to be dressed by.
#include "resolve/checks.h"

#include <algorithm>
#include <set>
#include <utility>

#include "base/text.h"
#include "resolve/judge.h"
#include "resolve/man.h"
#include "resolve/resolve.h"

namespace platewright {

namespace {

void check_colour(PropertyId id,
                  const std::string& name,
                  const Span& span,
                  const ColourBook& colours,
                  Diagnostics& to) {
    const Kind kind = properties()[id].kind;
    const bool colour = kind == Kind::cloth || kind == Kind::metal;
    if (colour && followed(name).empty() && !same_name(name, "none") && !colours.find(id, name)) {
        report_colour(id, name, span, colours, to);
    }
}

/// Names that the regulation must know.
class NameCheck {
  public:
    NameCheck(const InForce& law, Diagnostics& to) : law_(law), to_(to) {}

    void corps_class(const WrittenText& name) const {
        check(name, law_.classes, "class", "class", "classes");
    }

    void company(const WrittenText& name) const {
        check(name, law_.companies, "company", "company", "companies");
    }

    void rank(const WrittenText& name) const { check(name, law_.ranks, "rank", "rank", "ranks"); }

    void order(const WrittenText& name) const {
        check(name, law_.orders, "order", "order of dress", "orders of dress");
    }

    void shows(const WrittenText& name) const {
        check(name, law_.shows, "shows", "way to show the colour", "ways to show the colour");
    }

  private:
    template <typename T>
    void check(const WrittenText& name,
               const std::vector<T>& entries,
               const std::string& code,
               const std::string& called,
               const std::string& list) const {
        if (find_entry(entries, name.text) != nullptr) {
            return;
        }
        Diagnostic& problem =
            to_.error("resolve.unknown-" + code,
                      name.span,
                      "the regulation has no " + called + " " + quoted(name.text));
        add_suggestion(problem, name.text, names_of(entries), "its " + list + " are ");
        if (entries.empty()) {
            problem.hints.emplace_back("it knows none; add it to the regulation");
        }
    }

    const InForce& law_;
    Diagnostics& to_;
};

/// Goes through one regulation with its amendments once.
class Inspector {
  public:
    Inspector(const InForce& law, const ColourBook& colours, Diagnostics& to)
        : law_(law), names_(law, to), colours_(colours), to_(to) {}

    void inspect() {
        for (const SpecifiedRegulation* edition : law_.editions) {
            inspect_colours(*edition);
            inspect_series(*edition);
            for (const Rule& rule : edition->rules) {
                inspect_block(rule.wear);
                inspect_asked(rule.when);
                inspect_asked(rule.unless);
            }
        }
        inspect_likeness();
        inspect_service();
        inspect_strength();
    }

  private:
    void inspect_colours(const SpecifiedRegulation& edition) {
        inspect_block(edition.everyone);
        for (const auto* blocks : {&edition.classes, &edition.shows, &edition.orders}) {
            for (const NamedBlock& each : *blocks) {
                inspect_block(each.wear);
            }
        }
        for (const Company& each : edition.companies) {
            inspect_block(each.block.wear);
        }
        for (const Rank& each : edition.ranks) {
            inspect_block(each.block.wear);
        }
        for (const ServiceStep& each : edition.service) {
            inspect_block(each.wear);
        }
    }

    void inspect_block(const Block& block) { check_colours(block, colours_, to_); }

    void inspect_colour(PropertyId id, const std::string& name, const Span& span) {
        check_colour(id, name, span, colours_, to_);
    }

    void inspect_series(const SpecifiedRegulation& edition) {
        std::map<int, Span> taken;
        for (const SeriesColour& series : edition.series) {
            inspect_colour(property_id("facings.cloth"), series.colour.text, series.colour.span);
            if (series.corps_class) {
                names_.corps_class(*series.corps_class);
            }
            for (const SeriesPlace& place : series.regiments) {
                const auto [at, is_new] = taken.try_emplace(place.number, place.span);
                if (!is_new) {
                    report_taken(place, at->second);
                }
                if (place.shows) {
                    names_.shows(*place.shows);
                }
                if (place.buttons) {
                    inspect_colour(
                        property_id("buttons.metal"), place.buttons->text, place.buttons->span);
                }
            }
        }
    }

    void report_taken(const SeriesPlace& place, const Span& first) {
        Diagnostic& problem =
            to_.error("resolve.place-taken",
                      place.span,
                      "place " + std::to_string(place.number) + " of the series is taken twice");
        problem.labels.push_back({first, "here first"});
        problem.hints.emplace_back("give every regiment a number of its own");
    }

    void inspect_asked(const std::vector<Asked>& all) {
        for (const Asked& asked : all) {
            for (const WrittenText& word : asked.words) {
                inspect_word(asked, word);
            }
        }
    }

    void inspect_word(const Asked& asked, const WrittenText& word) {
        if (same_name(word.text, "none")) {
            return;
        }
        switch (asked.fact) {
            case Asked::Fact::corps_class:
                return names_.corps_class(word);
            case Asked::Fact::company:
                return names_.company(word);
            case Asked::Fact::rank:
                return names_.rank(word);
            case Asked::Fact::order:
                return names_.order(word);
            case Asked::Fact::property:
                return inspect_colour(asked.property, word.text, word.span);
            case Asked::Fact::regiment:
                return inspect_regiment(word);
            case Asked::Fact::years:
                return;
        }
    }

    /// A name that is nearly that of a place; others belong to corps outside the series.
    void inspect_regiment(const WrittenText& word) {
        std::vector<std::string> names;
        for (const PlaceInForce& place : law_.places) {
            names.push_back(std::to_string(place.number));
            if (place.name.text != nullptr) {
                names.push_back(place.name.text->text);
            }
        }
        const bool known = std::ranges::any_of(
            names, [&](const std::string& name) { return same_name(name, word.text); });
        const bool number = word.text.find_first_not_of("0123456789") == std::string::npos;
        const auto near = nearest_word(word.text, names);
        if (!known && (number || near)) {
            Diagnostic& problem = to_.error("resolve.unknown-regiment",
                                            word.span,
                                            "the regulation has no regiment " + quoted(word.text));
            add_suggestion(problem, word.text, names, "its regiments are ");
        }
    }

    void inspect_service() {
        for (const ServiceInForce& each : law_.service) {
            for (const WrittenText& rank : each.step->ranks) {
                names_.rank(rank);
            }
        }
    }

    void inspect_likeness() {
        std::set<const RankEntry*> told;
        for (const RankEntry& rank : law_.ranks) {
            if (rank.like != nullptr) {
                names_.rank(*rank.like);
            }
            const std::vector<const RankEntry*> line = likeness(rank, law_);
            const RankEntry& last = *line.front();
            const RankEntry* back =
                last.like != nullptr ? find_entry(law_.ranks, last.like->text) : nullptr;
            if (back == &rank && !told.contains(&rank)) {
                report_circle(line);
                told.insert(line.begin(), line.end());
            }
        }
    }

    /// `line`: the last is like the one before it, and the first like the last.
    void report_circle(const std::vector<const RankEntry*>& line) {
        std::string way;
        for (auto each = line.rbegin(); each != line.rend(); ++each) {
            way += quoted((*each)->name) + (each == line.rbegin() ? " is like " : ", who is like ");
        }
        Diagnostic& problem =
            to_.error("resolve.circle", line.back()->like->span, way + quoted(line.back()->name));
        problem.hints.emplace_back("let one of them say himself what he wears");
    }

    void inspect_strength() {
        for (const Battalion* battalion : law_.battalions) {
            for (const auto& [company, number] : battalion->companies) {
                names_.company(company);
            }
        }
        const Establishment sum = establishment_of(law_);
        if (!law_.strength || !sum.men || law_.battalions.empty() ||
            *sum.men == law_.strength->first) {
            return;
        }
        Diagnostic& problem =
            to_.error("resolve.strength",
                      law_.strength->second,
                      "the strength is " + std::to_string(law_.strength->first) +
                          " men, but the battalions come to " + std::to_string(*sum.men));
        for (std::size_t i = 0; i < sum.battalions.size(); ++i) {
            problem.labels.push_back(
                {law_.battalions[i]->name.span,
                 sum.battalions[i].name + ": " + std::to_string(*sum.battalions[i].men) + " men"});
        }
        problem.hints.emplace_back("correct the strength, the companies or their men");
    }

    const InForce& law_;
    NameCheck names_;
    const ColourBook& colours_;
    Diagnostics& to_;
};

}  // namespace

void check_colours(const Block& block, const ColourBook& colours, Diagnostics& to) {
    for (const auto& [id, written] : block.values) {
        if (const auto* text = std::get_if<std::string>(&written.value)) {
            check_colour(id, *text, written.span, colours, to);
        }
    }
}

void check_departures(const std::vector<Departure>& departures,
                      const InForce* law,
                      Diagnostics& to) {
    for (const Departure& each : departures) {
        if (each.from && each.until && each.until->date < each.from->date) {
            to.error("resolve.dates",
                     each.until->span,
                     "the departure ends on " + to_string(each.until->date) + ", before it begins")
                .labels.push_back({each.from->span, "begins on " + to_string(each.from->date)});
        }
        if (law == nullptr) {
            continue;
        }
        const NameCheck names(*law, to);
        for (const WrittenText& name : each.companies) {
            names.company(name);
        }
        for (const WrittenText& name : each.ranks) {
            names.rank(name);
        }
        for (const WrittenText& name : each.orders) {
            names.order(name);
        }
    }
}

Establishment establishment_of(const InForce& law) {
    Establishment all;
    all.men = 0;
    for (const Battalion* battalion : law.battalions) {
        Establishment::Unit unit{battalion->name.text, 0};
        for (const auto& [name, number] : battalion->companies) {
            const CompanyEntry* company = find_entry(law.companies, name.text);
            const bool known = company != nullptr && company->men && unit.men;
            unit.men = known ? std::optional(*unit.men + number * *company->men) : std::nullopt;
        }
        all.men = all.men && unit.men ? std::optional(*all.men + *unit.men) : std::nullopt;
        all.battalions.push_back(std::move(unit));
    }
    return all;
}

void check_regulation(const std::vector<SpecifiedRegulation>& editions,
                      const std::vector<SpecifiedPalette>& palettes,
                      Diagnostics& to) {
    if (editions.empty()) {
        return;
    }
    const std::size_t errors_before = to.error_count();
    check_dates(editions, to);
    const ColourBook colours(palettes);
    std::vector<const SpecifiedRegulation*> all;
    all.reserve(editions.size());
    for (const SpecifiedRegulation& edition : editions) {
        all.push_back(&edition);
    }
    const auto& from = editions.back().in_force_from;
    const InForce law = overlay(all, from ? std::optional(from->date) : std::nullopt);
    Inspector(law, colours, to).inspect();
    if (to.error_count() == errors_before) {
        // What is not known cannot be told apart.
        check_alike(law, colours, to);
    }
}

}  // namespace platewright
