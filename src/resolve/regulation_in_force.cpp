// SPDX-License-Identifier: MIT
// Which regulation is in force, and what its amendments make of it.
#include "resolve/regulation_in_force.h"

#include <algorithm>
#include <tuple>

#include "base/text.h"

namespace platewright {

namespace {

/// Adds what an edition says of something to what earlier ones said; returns the entry.
template <typename T>
T& add_part(std::vector<T>& entries, const NamedBlock& block, int edition) {
    auto entry = std::ranges::find_if(
        entries, [&](const T& each) { return same_name(each.name, block.name.text); });
    if (entry == entries.end()) {
        entries.emplace_back();
        entry = std::prev(entries.end());
        entry->name = std::string(trim(block.name.text));
    }
    entry->parts.push_back({&block, edition});
    return *entry;
}

void replace(SeriesWord& word,
             const std::optional<WrittenText>& text,
             int edition,
             const Grounds& grounds) {
    if (text) {
        word = {&*text, edition, &grounds};
    }
}

void add_place(InForce& law, const SeriesColour& series, const SeriesPlace& place, int edition) {
    auto at = std::ranges::lower_bound(law.places, place.number, {}, &PlaceInForce::number);
    if (at == law.places.end() || at->number != place.number) {
        at = law.places.insert(at, PlaceInForce{});
        at->number = place.number;
    } else if (at->colour.edition == edition) {
        return;
    }
    at->span = place.span;
    at->colour = {&series.colour, edition, &series.grounds};
    at->alike = series.alike;
    replace(at->corps_class, series.corps_class, edition, series.grounds);
    replace(at->name, place.name, edition, series.grounds);
    replace(at->shows, place.shows, edition, series.grounds);
    replace(at->buttons, place.buttons, edition, series.grounds);
}

void add_rule(InForce& law, const Rule& rule, int edition) {
    const auto same = std::ranges::find_if(law.rules, [&](const RuleInForce& each) {
        return rule.name && each.rule->name && each.edition != edition &&
               same_name(rule.name->text, each.rule->name->text);
    });
    if (same != law.rules.end()) {
        *same = {&rule, edition};
    } else {
        law.rules.push_back({&rule, edition});
    }
}

void add_battalion(InForce& law, const Battalion& battalion) {
    const auto same = std::ranges::find_if(law.battalions, [&](const Battalion* each) {
        return same_name(each->name.text, battalion.name.text);
    });
    if (same != law.battalions.end()) {
        *same = &battalion;
    } else {
        law.battalions.push_back(&battalion);
    }
}

void add_establishment(InForce& law, const SpecifiedRegulation& regulation, int edition) {
    for (const Company& company : regulation.companies) {
        CompanyEntry& entry = add_part(law.companies, company.block, edition);
        entry.men = company.men ? company.men : entry.men;
    }
    for (const Rank& rank : regulation.ranks) {
        RankEntry& entry = add_part(law.ranks, rank.block, edition);
        entry.like = rank.like ? &*rank.like : entry.like;
        entry.officer = entry.officer || rank.officer;
    }
    for (const Battalion& battalion : regulation.battalions) {
        add_battalion(law, battalion);
    }
    law.strength = regulation.strength ? regulation.strength : law.strength;
}

void add_edition(InForce& law, const SpecifiedRegulation& regulation, int edition) {
    for (const NamedBlock& block : regulation.classes) {
        add_part(law.classes, block, edition);
    }
    for (const NamedBlock& block : regulation.shows) {
        add_part(law.shows, block, edition);
    }
    for (const NamedBlock& block : regulation.orders) {
        add_part(law.orders, block, edition);
    }
    for (const SeriesColour& series : regulation.series) {
        for (const SeriesPlace& place : series.regiments) {
            add_place(law, series, place, edition);
        }
    }
    for (const Rule& rule : regulation.rules) {
        add_rule(law, rule, edition);
    }
    for (const ServiceStep& step : regulation.service) {
        law.service.push_back({&step, edition});
    }
    law.must_decide.insert(
        law.must_decide.end(), regulation.must_decide.begin(), regulation.must_decide.end());
    add_establishment(law, regulation, edition);
}

/// A regulation and what amends it, as far as they are in force on a day.
struct Candidate {
    std::vector<const SpecifiedRegulation*> editions;
    /// The newest of them.
    const SpecifiedRegulation* newest = nullptr;
};

std::optional<Date> from(const SpecifiedRegulation& regulation) {
    return regulation.in_force_from ? std::optional(regulation.in_force_from->date) : std::nullopt;
}

bool is_in_force(const SpecifiedRegulation& regulation, const std::optional<Date>& day) {
    return !day || ((!regulation.in_force_from || regulation.in_force_from->date <= *day) &&
                    (!regulation.until || *day <= regulation.until->date));
}

/// Nothing if the base is not in force. An amendment of an amendment falls with it.
std::optional<Candidate> candidate(const std::vector<SpecifiedRegulation>& chain,
                                   const std::optional<Date>& day) {
    Candidate found;
    for (const SpecifiedRegulation& edition : chain) {
        if (is_in_force(edition, day)) {
            found.editions.push_back(&edition);
            found.newest = &edition;
        } else if (found.editions.empty()) {
            return std::nullopt;
        }
    }
    return found.newest != nullptr ? std::optional(found) : std::nullopt;
}

/// The same file may be read on two ways: named itself, and as what another amends.
bool same_regulation(const SpecifiedRegulation& a, const SpecifiedRegulation& b) {
    return a.title.span == b.title.span || (a.title.text == b.title.text && from(a) == from(b));
}

/// Both claim the day: they begin together, or the older says that it lasts longer.
bool both_claim(const Candidate& older, const Candidate& newer) {
    const bool amends = std::ranges::any_of(newer.editions, [&](const auto* edition) {
        return same_regulation(*edition, *older.newest);
    });
    const bool lasts = std::ranges::any_of(
        older.editions, [](const auto* edition) { return edition->until.has_value(); });
    return !amends && (lasts || from(*older.newest) == from(*newer.newest));
}

void report_two(const SpecifiedRegulation& older,
                const SpecifiedRegulation& newer,
                const std::optional<Date>& day,
                Diagnostics& to) {
    Diagnostic& problem =
        to.error("resolve.dates",
                 newer.title.span,
                 "two regulations are in force" + (day ? " on " + to_string(*day) : std::string()) +
                     ": " + quoted(older.title.text) + " and " + quoted(newer.title.text));
    problem.labels.push_back({older.title.span, "the other one"});
    problem.hints.emplace_back(
        "let one end with 'until:' before the other begins with 'in force from:'");
}

std::optional<Date> newest_day(const Orders& orders) {
    std::optional<Date> newest;
    for (const auto& chain : orders.regulations) {
        for (const SpecifiedRegulation& edition : chain) {
            newest = std::max(newest, from(edition));
        }
    }
    return newest;
}

/// Nothing is in force: the first day that would do, if the day lies before it.
void report_none(const Orders& orders, const WrittenDate& as_of, Diagnostics& to) {
    std::optional<Date> first;
    std::optional<Span> place;
    for (const auto& chain : orders.regulations) {
        if (!chain.empty() && chain.front().in_force_from &&
            (!first || chain.front().in_force_from->date < *first)) {
            first = chain.front().in_force_from->date;
            place = chain.front().in_force_from->span;
        }
    }
    Diagnostic& problem = to.error(
        "resolve.dates", as_of.span, "no regulation is in force on " + to_string(as_of.date));
    if (first && as_of.date < *first) {
        problem.labels.push_back({*place, "the first begins on " + to_string(*first)});
    }
    problem.hints.emplace_back("ask for another day, or name the regulation of that day as well");
}

std::vector<const SpecifiedRegulation*> all_of(const std::vector<SpecifiedRegulation>& chain) {
    std::vector<const SpecifiedRegulation*> editions;
    editions.reserve(chain.size());
    for (const SpecifiedRegulation& edition : chain) {
        editions.push_back(&edition);
    }
    return editions;
}

}  // namespace

Named Entry::named() const {
    Named found{name, {}, {}};
    for (const EditionPart& part : parts) {
        found.title = part.block->title ? part.block->title->text : found.title;
        found.means = part.block->means ? part.block->means->text : found.means;
    }
    return found;
}

std::string PlaceInForce::called() const {
    return "regiment " + std::to_string(number) +
           (name.text != nullptr ? " (" + name.text->text + ")" : std::string());
}

std::string RuleInForce::called() const {
    return rule->name ? "rule " + quoted(rule->name->text) : "a rule without a name";
}

const Grounds& InForce::file_grounds(int edition) const {
    return editions[static_cast<std::size_t>(edition)]->grounds;
}

std::string InForce::amended(int edition) const {
    if (edition == 0) {
        return {};
    }
    const auto& date = editions[static_cast<std::size_t>(edition)]->in_force_from;
    return ", amended" + (date ? " " + std::to_string(date->date.year) : std::string());
}

bool same_name(std::string_view a, std::string_view b) {
    return lower(trim(a)) == lower(trim(b));
}

InForce overlay(const std::vector<const SpecifiedRegulation*>& editions, std::optional<Date> day) {
    InForce law;
    law.editions = editions;
    law.day = day;
    for (std::size_t i = 0; i < editions.size(); ++i) {
        add_edition(law, *editions[i], static_cast<int>(i));
    }
    std::ranges::stable_sort(law.service, {}, [](const ServiceInForce& each) {
        return std::tuple(each.step->years, each.step->more_than, each.edition);
    });
    return law;
}

void check_dates(const std::vector<SpecifiedRegulation>& editions, Diagnostics& to) {
    for (const SpecifiedRegulation& each : editions) {
        if (each.in_force_from && each.until && each.until->date < each.in_force_from->date) {
            to.error("resolve.dates",
                     each.until->span,
                     quoted(each.title.text) + " ends on " + to_string(each.until->date) +
                         ", before it begins")
                .labels.push_back(
                    {each.in_force_from->span, "begins on " + to_string(each.in_force_from->date)});
        }
    }
    for (std::size_t i = 1; i < editions.size(); ++i) {
        const auto& before = editions[i - 1].in_force_from;
        const auto& after = editions[i].in_force_from;
        if (before && after && after->date < before->date) {
            to.error("resolve.dates",
                     after->span,
                     quoted(editions[i].title.text) + " is in force before what it amends")
                .labels.push_back(
                    {before->span,
                     quoted(editions[i - 1].title.text) + " begins on " + to_string(before->date)});
        }
    }
}

std::optional<InForce> regulation_in_force(const Orders& orders,
                                           const std::optional<WrittenDate>& as_of,
                                           Diagnostics& to) {
    const std::optional<Date> day = as_of ? std::optional(as_of->date) : newest_day(orders);
    std::optional<Candidate> best;
    for (const auto& chain : orders.regulations) {
        check_dates(chain, to);
        std::optional<Candidate> next = candidate(chain, day);
        if (!next) {
            continue;
        }
        if (best && from(*next->newest) < from(*best->newest)) {
            std::swap(*best, *next);
        }
        if (best && !same_regulation(*best->newest, *next->newest) && both_claim(*best, *next)) {
            report_two(*best->newest, *next->newest, day, to);
        }
        const bool longer = !best || from(*best->newest) < from(*next->newest) ||
                            best->editions.size() < next->editions.size();
        best = longer ? next : best;
    }
    if (best) {
        return overlay(best->editions, day);
    }
    for (auto chain = orders.regulations.rbegin(); chain != orders.regulations.rend(); ++chain) {
        if (!chain->empty()) {
            if (as_of) {
                report_none(orders, *as_of, to);
            }
            return overlay(all_of(*chain), day);
        }
    }
    return std::nullopt;
}

}  // namespace platewright
