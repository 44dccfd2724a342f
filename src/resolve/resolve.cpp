// SPDX-License-Identifier: MIT
// Second stage: everything that is said of a man, weighed to one decision a property.
#include "resolve/resolve.h"

#include <algorithm>
#include <utility>

#include "base/text.h"
#include "resolve/checks.h"
#include "resolve/colours.h"
#include "resolve/judge.h"
#include "resolve/man.h"
#include "resolve/rules.h"
#include "vocabulary/condition.h"

namespace platewright {

namespace {

const SpecifiedCustoms::Rank* find_rank(const SpecifiedCustoms& customs, std::string_view name) {
    const auto at = std::ranges::find_if(customs.ranks, [&](const SpecifiedCustoms::Rank& rank) {
        return same_name(rank.name.text, name);
    });
    return at == customs.ranks.end() ? nullptr : &*at;
}

/// A rank without a custom may stand if the plate says itself what marks it has.
bool gives_marks(const SpecifiedPlate& plate) {
    return plate.values.contains(property_id("marks.shape"));
}

void report_rank(const WrittenText& rank, const SpecifiedCustoms& customs, Diagnostics& to) {
    std::vector<std::string> names;
    for (const SpecifiedCustoms::Rank& each : customs.ranks) {
        names.push_back(each.name.text);
    }
    Diagnostic& problem =
        to.error("resolve.unknown-rank", rank.span, "unknown rank " + quoted(rank.text));
    add_suggestion(problem, rank.text, names, "ranks with a custom here are ");
    problem.hints.emplace_back(
        "a rank of your own needs its marks: write 'marks: none' or 'marks: {shape: bars, number: "
        "2}'");
}

Uniform captions_only(const SpecifiedPlate& plate) {
    Uniform man;
    man.title = plate.title.text;
    man.subtitle = text_of(plate.subtitle);
    man.year = text_of(plate.year);
    man.drawn_by = text_of(plate.drawn_by);
    man.language = plate.language.value_or(Language::english);
    man.source = text_of(plate.source);
    for (const WrittenText& note : plate.notes) {
        man.notes.push_back(note.text);
    }
    man.rank = text_of(plate.rank);
    man.figure = plate.figure ? plate.figure->text : std::string(kDefaultFigure);
    return man;
}

/// What would have to be said as well, that the property says anything of the man.
std::string wanted_for(PropertyId id, const Uniform& uniform) {
    std::string problem;
    const auto word = [&](PropertyId other) { return uniform.word(other); };
    const auto condition = parse_condition(properties()[id].speaks_when, problem);
    for (const Term& term : condition.value_or(Condition{})) {
        if (holds(Condition{term}, word)) {
            continue;
        }
        const std::string_view key = properties()[term.property].key;
        const std::string now = quoted(key) + " is " + quoted(word(term.property));
        if (term.negated || term.words.empty()) {
            return now + "; write something else there";
        }
        return now + "; it would have to be " + or_list(term.words);
    }
    return {};
}

void append(std::vector<Statement>& to, const std::vector<Statement>& more) {
    to.insert(to.end(), more.begin(), more.end());
}

/// One run of the stage for one plate.
class Resolver {
  public:
    Resolver(const SpecifiedPlate& plate,
             const Orders& orders,
             const ColourBook& colours,
             Diagnostics& to)
        : plate_(plate), orders_(orders), colours_(colours), to_(to) {}

    Uniform run(const SpecifiedCustoms& customs) {
        Uniform uniform = captions_only(plate_);
        const std::optional<InForce> law = regulation_in_force(orders_, plate_.as_of, to_);
        Man man;
        std::vector<Statement> said;
        if (law) {
            man = find_man(plate_, orders_, *law, to_);
            said = statements_of(man);
        } else {
            take_by_name(man);
            hear_custom(customs, uniform, said);
        }
        hear_others(man, said);
        const InForce* known = law ? &*law : nullptr;
        check_departures(plate_.departures, known, to_);
        if (orders_.regiment) {
            check_departures(orders_.regiment->departures, known, to_);
        }
        uniform.facts = facts_of(man);
        if (!law) {
            name_what_is_written(uniform.facts);
        }
        uniform.facts.as_ordered = plate_.as_ordered;
        uniform.rank = man.rank != nullptr ? man.rank->name : uniform.rank;
        uniform.decided = decide(man, said);
        // The index of the wardrobe dresses its man in everything in turn.
        if (!plate_.wardrobe) {
            report_idle(uniform);
        }
        // What only a rank or a company decides cannot be asked of nobody in particular.
        if (law && !plate_.title.text.empty()) {
            find_undecided(uniform, *law);
        }
        return uniform;
    }

  private:
    /// Without a regulation the words stand for themselves.
    void take_by_name(Man& man) const {
        man.regiment = orders_.regiment ? orders_.regiment->name.text : text_of(plate_.regiment);
        if (orders_.regiment && orders_.regiment->number) {
            man.number = orders_.regiment->number->first;
        }
        if (plate_.as_of) {
            man.day = plate_.as_of->date;
        }
        if (plate_.years_of_service) {
            man.years = plate_.years_of_service->years;
        }
    }

    void name_what_is_written(Facts& facts) const {
        facts.corps_class.name = text_of(plate_.corps_class);
        facts.company.name = text_of(plate_.company);
        facts.rank.name = text_of(plate_.rank);
        facts.order_of_dress.name = text_of(plate_.order_of_dress);
    }

    void hear_custom(const SpecifiedCustoms& customs,
                     Uniform& uniform,
                     std::vector<Statement>& said) {
        if (!plate_.rank) {
            return;
        }
        if (const SpecifiedCustoms::Rank* rank = find_rank(customs, plate_.rank->text)) {
            uniform.rank = rank->name.text;
            append(said, statements_of(*rank));
        } else if (!gives_marks(plate_)) {
            report_rank(*plate_.rank, customs, to_);
        }
    }

    void hear_others(const Man& man, std::vector<Statement>& said) const {
        const auto& regiment = orders_.regiment;
        if (regiment) {
            append(said, statements_of(*regiment));
        }
        if (!plate_.as_ordered) {
            if (regiment) {
                append(said,
                       statements_of(
                           regiment->departures, man, regiment->wear.grounds, Strength::regiment));
            }
            Grounds file;
            file.source = plate_.source;
            append(said, statements_of(plate_.departures, man, file, Strength::plate));
        }
        append(said, statements_of(plate_));
    }

    /// First any man of the regiment, for whatever follows `the regiment's` colours; then this one.
    std::vector<Decided> decide(const Man& man, const std::vector<Statement>& said) {
        std::vector<Statement> of_all;
        std::ranges::copy_if(said, std::back_inserter(of_all), [](const Statement& each) {
            return each.decision.strength <= Strength::regiment;
        });
        Diagnostics found;
        OfRegiment regiment{nullptr, man.number};
        std::vector<Verdict> any;
        if (man.law != nullptr || orders_.regiment) {
            any = judge_with_rules(of_all, man.as_any_of_regiment(), regiment, colours_, found);
            regiment.verdicts = &any;
        }
        std::vector<Verdict> verdicts = judge_with_rules(said, man, regiment, colours_, to_);
        std::vector<Decided> decided;
        bool complete = true;
        for (Verdict& verdict : verdicts) {
            complete = complete && verdict.value.has_value();
            decided.push_back({verdict.value.value_or(Absent{}), std::move(verdict.chain)});
        }
        if (!complete) {
            // What was followed may have failed there.
            to_.add_all(found);
        }
        return decided;
    }

    /// Somebody decided it, or what it follows.
    static bool is_decided(const Uniform& uniform, PropertyId id) {
        const Decision& last = uniform.decided[id].chain.back();
        return last.strength != Strength::initial ||
               (last.follows && is_decided(uniform, *last.follows));
    }

    void find_undecided(const Uniform& uniform, const InForce& law) {
        const auto word = [&](PropertyId id) { return uniform.word(id); };
        std::vector<PropertyId> told;
        for (const auto& [id, span] : law.must_decide) {
            if (is_decided(uniform, id) || !speaks(id, word) ||
                std::ranges::find(told, id) != told.end()) {
                continue;
            }
            told.push_back(id);
            Diagnostic& undecided =
                to_.error("resolve.not-decided",
                          plate_.title.span,
                          "nobody decides " + quoted(properties()[id].key) + " for this man");
            undecided.labels.push_back({span, "the regulation wants it decided"});
            undecided.hints.emplace_back(
                "write it in the regulation, in the regiment's file or on this plate");
        }
    }

    /// What the plate says and nothing comes of: the colour of a sash, where no sash is worn.
    void report_idle(const Uniform& uniform) {
        for (const auto& [id, written] : plate_.values) {
            if (uniform.speaks(id) || uniform.word(id) == "none" || uniform.word(id) == "0") {
                continue;
            }
            Diagnostic& idle =
                to_.warning("resolve.changes-nothing",
                            written.span,
                            quoted(properties()[id].key) + " changes nothing on this man");
            if (const std::string wanted = wanted_for(id, uniform); !wanted.empty()) {
                idle.hints.push_back(wanted);
            }
        }
    }

    const SpecifiedPlate& plate_;
    const Orders& orders_;
    const ColourBook& colours_;
    Diagnostics& to_;
};

}  // namespace

std::optional<Uniform> resolve(const SpecifiedPlate& plate,
                               const Orders& orders,
                               const SpecifiedCustoms& customs,
                               const std::vector<SpecifiedPalette>& palettes,
                               Diagnostics& to) {
    const std::size_t errors_before = to.error_count();
    const ColourBook colours(palettes, plate.language.value_or(Language::english));
    Uniform man = Resolver(plate, orders, colours, to).run(customs);
    if (to.error_count() != errors_before) {
        return std::nullopt;
    }
    return man;
}

void check_regiment(const Orders& orders,
                    const std::vector<SpecifiedPalette>& palettes,
                    Diagnostics& to) {
    const ColourBook colours(palettes);
    const SpecifiedPlate nobody;
    static_cast<void>(Resolver(nobody, orders, colours, to).run({}));
    if (orders.regiment) {
        for (const Departure& departure : orders.regiment->departures) {
            check_colours(departure.wear, colours, to);
        }
    }
}

}  // namespace platewright
