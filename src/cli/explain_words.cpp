// SPDX-License-Identifier: MIT
// Decisions in words: what holds, who says so, and what it overruled.
#include <algorithm>

#include "base/text.h"
#include "cli/columns.h"
#include "cli/explain.h"

namespace platewright::cli {
namespace {

constexpr std::size_t kGroundsIndent = 6;
/// Longer cells are not waited for by the others.
constexpr std::size_t kWidestCell = 44;

std::string place_of(const Decision& decision, const SourceMap& sources) {
    if (!decision.span) {
        return {};
    }
    const SourceMap::Place at = sources.place(decision.span->file, decision.span->begin);
    return sources.name(decision.span->file) + ":" + std::to_string(at.line) + ":" +
           std::to_string(at.column);
}

std::string titled(const Named& named) {
    std::string in_brackets = named.title;
    if (!named.means.empty() && named.means != named.name) {
        in_brackets += (in_brackets.empty() ? "" : ", ") + named.means;
    }
    return in_brackets.empty() ? named.name : named.name + " (" + in_brackets + ")";
}

/// What a decision rests on, in lines.
std::vector<std::string> grounds_of(const Decision& decision) {
    std::vector<std::string> lines;
    if (!decision.instead_of.empty()) {
        lines.push_back("instead of: " + decision.instead_of);
    }
    const bool doubtful = decision.certainty && *decision.certainty != Certainty::documented;
    const std::string certainty =
        doubtful ? std::string(certainty_word(*decision.certainty)) : std::string();
    if (!decision.source.empty()) {
        lines.push_back("source: " + decision.source +
                        (doubtful ? "; " + certainty : std::string()));
    } else if (doubtful) {
        lines.push_back(certainty);
    }
    if (!decision.why.empty()) {
        lines.push_back("why: " + decision.why);
    }
    for (const OtherOpinion& other : decision.other_sources) {
        lines.push_back("but " + other.source +
                        (other.says.empty() ? std::string(" differs") : " says: " + other.says));
    }
    return lines;
}

std::size_t width_of(const std::vector<Told>& all, const auto& cell_of) {
    std::size_t width = 0;
    for (const Told& each : all) {
        const std::size_t columns = columns_of(cell_of(each));
        width = columns <= kWidestCell ? std::max(width, columns) : width;
    }
    return width;
}

std::string property_in_words(const Uniform& man, PropertyId id, const SourceMap& sources) {
    const std::vector<Told> all = told(man.decided[id]);
    std::string text(properties()[id].key);
    text += ": " + padded(man.word(id), 0);
    text += man.speaks(id) ? "\n" : "   (not seen on this man)\n";
    const auto who = [](const Told& each) { return each.decision->reason; };
    const auto value = [](const Told& each) { return each.value; };
    const std::size_t who_width = width_of(all, who);
    const std::size_t value_width = width_of(all, value);
    for (const Told& each : all) {
        std::string line = std::string(kIndent, ' ') + padded(who(each), who_width) + "  " +
                           padded(value(each), value_width) + "  " +
                           padded(place_of(*each.decision, sources), 0);
        line.erase(line.find_last_not_of(' ') + 1);
        text += line + "\n";
        for (const std::string& ground : grounds_of(*each.decision)) {
            text += wrapped(ground, kGroundsIndent);
        }
    }
    return text;
}

}  // namespace

std::vector<Told> told(const Decided& decided) {
    std::vector<Told> all;
    for (const Decision& decision : decided.chain) {
        if (decision.worked_out && !all.empty()) {
            all.back().value = decision.as_written + ", " + decision.reason;
        } else {
            all.push_back({&decision, decision.as_written});
        }
    }
    std::ranges::reverse(all);
    return all;
}

std::string facts_in_words(const Uniform& man) {
    constexpr int decimals = 3;
    const Facts& facts = man.facts;
    std::string text = man.title.empty() ? std::string() : wrapped(man.title, 0);
    Columns rows(kIndent);
    const auto add = [&rows](std::string key, const std::string& value) {
        if (!value.empty()) {
            rows.add({std::move(key), value});
        }
    };
    for (const NamedRegulation& each : facts.regulations) {
        add(each.title == facts.regulations.front().title ? "regulation" : "amended by",
            each.title +
                (each.in_force_from ? ", from " + to_string(*each.in_force_from) : std::string()));
    }
    const bool named =
        !facts.number || facts.regiment != "regiment " + std::to_string(*facts.number);
    add("regiment",
        (named ? facts.regiment : std::string()) +
            (facts.number ? (named ? ", No. " : "No. ") + std::to_string(*facts.number)
                          : std::string()));
    add("class", titled(facts.corps_class));
    add("company", titled(facts.company));
    add("rank", facts.rank.name.empty() ? man.rank : titled(facts.rank));
    add("service",
        facts.years_of_service ? format_number(*facts.years_of_service, decimals) +
                                     (*facts.years_of_service == 1 ? " year" : " years")
                               : std::string());
    add("order of dress", titled(facts.order_of_dress));
    add("day", facts.day ? to_string(*facts.day) : std::string());
    add("worn", facts.as_ordered ? "as ordered: departures are left out" : "");
    return text + rows.text();
}

std::string decisions_in_words(const Uniform& man,
                               const std::vector<PropertyId>& asked,
                               const SourceMap& sources) {
    std::string text;
    for (const PropertyId id : asked) {
        text += (text.empty() ? "" : "\n") + property_in_words(man, id, sources);
    }
    return text;
}

}  // namespace platewright::cli
