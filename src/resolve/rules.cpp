// SPDX-License-Identifier: MIT
// Which rules hold, and the way to an answer that bears them all.
#include "resolve/rules.h"

#include <algorithm>
#include <charconv>

#include "base/text.h"

namespace platewright {

namespace {

bool is_none(std::string_view word) {
    return same_name(word, "none");
}

/// The word stands for the same colour, whatever it is called.
bool same_colour(PropertyId id,
                 const Value& value,
                 std::string_view word,
                 const std::vector<Verdict>& dressed,
                 const ColourBook& colours) {
    for (const std::string_view key : followed(word)) {
        const auto other = find_property(key);
        const bool decided = other && dressed[*other].value;
        if (decided && !std::holds_alternative<Absent>(*dressed[*other].value)) {
            return word_of(value) == word_of(*dressed[*other].value);
        }
    }
    const std::optional<Value> asked = plain_value(id, std::string(word), colours);
    return asked && word_of(*asked) == word_of(value);
}

bool same_number(int number, std::string_view word) {
    word = trim(word);
    int asked = 0;
    const auto read = std::from_chars(word.data(), word.data() + word.size(), asked);
    return read.ec == std::errc() && read.ptr == word.data() + word.size() && asked == number;
}

bool is_word(PropertyId id,
             const Value& value,
             std::string_view word,
             const std::vector<Verdict>& dressed,
             const ColourBook& colours) {
    if (std::holds_alternative<Absent>(value)) {
        return is_none(word);
    }
    if (std::holds_alternative<Material>(value)) {
        return same_colour(id, value, word, dressed, colours);
    }
    if (const auto* number = std::get_if<int>(&value)) {
        return same_number(*number, is_none(word) ? "0" : word);
    }
    if (const auto* length = std::get_if<Measure>(&value)) {
        std::string problem;
        const std::optional<Measure> asked = parse_measure(word, problem);
        return asked && asked->mm == length->mm;
    }
    const auto known = find_choice(id, word);
    return same_name(word_of(value), known ? *known : word);
}

bool any_word(const Asked& asked, const auto& is_it) {
    return std::ranges::any_of(asked.words,
                               [&](const WrittenText& word) { return is_it(word.text); });
}

bool is_entry(const Asked& asked, const Entry* entry) {
    return any_word(asked, [&](const std::string& word) {
        return entry == nullptr ? is_none(word) : same_name(entry->name, word);
    });
}

bool is_regiment(const Asked& asked, const Man& man) {
    return any_word(asked, [&](const std::string& word) {
        return man.regiment.empty() ? is_none(word)
                                    : same_name(man.regiment, word) ||
                                          (man.number && same_number(*man.number, word));
    });
}

bool is_so(const Asked& asked,
           const Man& man,
           const std::vector<Verdict>& dressed,
           const ColourBook& colours) {
    switch (asked.fact) {
        case Asked::Fact::corps_class:
            return is_entry(asked, man.corps_class);
        case Asked::Fact::regiment:
            return is_regiment(asked, man);
        case Asked::Fact::company:
            return is_entry(asked, man.company);
        case Asked::Fact::rank:
            return is_entry(asked, man.rank);
        case Asked::Fact::order:
            return is_entry(asked, man.order);
        case Asked::Fact::years:
            return man.years &&
                   (asked.more_than ? *man.years > asked.years : *man.years >= asked.years);
        case Asked::Fact::property:
            break;
    }
    const std::optional<Value>& value = dressed[asked.property].value;
    return value && any_word(asked, [&](const std::string& word) {
               return is_word(asked.property, *value, word, dressed, colours);
           });
}

void report_chase(const InForce& law, const std::vector<bool>& restless, Diagnostics& to) {
    std::vector<const RuleInForce*> rules;
    for (std::size_t i = 0; i < restless.size(); ++i) {
        if (restless[i]) {
            rules.push_back(&law.rules[i]);
        }
    }
    std::string names;
    for (const RuleInForce* each : rules) {
        names += (names.empty() ? "" : each == rules.back() ? " and " : ", ") + each->called();
    }
    Diagnostic& problem = to.error(
        "resolve.circle",
        rules.front()->rule->span,
        rules.size() == 1 ? names + " takes away what it asks for"
                          : names + " chase each other: each changes what another asks for");
    for (std::size_t i = 1; i < rules.size(); ++i) {
        problem.labels.push_back({rules[i]->rule->span, rules[i]->called()});
    }
    problem.hints.emplace_back(
        "let them ask for something that no rule of theirs changes, such as the class or the "
        "button metal of the series");
}

/// The statements and those of the rules in use.
StatementList all_in_use(const std::vector<Statement>& statements,
                         const std::vector<std::vector<Statement>>& of_rules,
                         const std::vector<bool>& in_use) {
    StatementList all;
    for (const Statement& said : statements) {
        all.push_back(&said);
    }
    for (std::size_t i = 0; i < of_rules.size(); ++i) {
        if (in_use[i]) {
            for (const Statement& said : of_rules[i]) {
                all.push_back(&said);
            }
        }
    }
    return all;
}

}  // namespace

bool holds(const Rule& rule,
           const Man& man,
           const std::vector<Verdict>& dressed,
           const ColourBook& colours) {
    const auto so = [&](const Asked& asked) { return is_so(asked, man, dressed, colours); };
    return std::ranges::all_of(rule.when, so) && std::ranges::none_of(rule.unless, so);
}

std::vector<Verdict> judge_with_rules(const std::vector<Statement>& statements,
                                      const Man& man,
                                      const OfRegiment& regiment,
                                      const ColourBook& colours,
                                      Diagnostics& to) {
    const std::size_t count = man.law != nullptr ? man.law->rules.size() : 0;
    std::vector<std::vector<Statement>> of_rules;
    for (std::size_t i = 0; i < count; ++i) {
        of_rules.push_back(statements_of(man.law->rules[i], *man.law));
    }
    std::vector<bool> in_use(count);
    std::vector<bool> restless(count);
    for (std::size_t round = 0; round <= count; ++round) {
        Diagnostics unheard;
        const std::vector<Verdict> dressed =
            judge(all_in_use(statements, of_rules, in_use), regiment, colours, false, unheard);
        bool settled = true;
        for (std::size_t i = 0; i < count; ++i) {
            const bool now = holds(*man.law->rules[i].rule, man, dressed, colours);
            restless[i] = round == count ? restless[i] || now != in_use[i] : now != in_use[i];
            settled = settled && now == in_use[i];
            in_use[i] = now;
        }
        if (settled) {
            break;
        }
        if (round == count) {
            report_chase(*man.law, restless, to);
        }
    }
    return judge(all_in_use(statements, of_rules, in_use), regiment, colours, true, to);
}

}  // namespace platewright
