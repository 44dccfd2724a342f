// SPDX-License-Identifier: MIT
// The second stage as text, the golden form of its tests.
#include <string>
#include <string_view>
#include <vector>

#include "base/text.h"
#include "resolve/resolve.h"

namespace platewright {

namespace {

/// Text on one line, whatever it holds.
std::string on_one_line(std::string_view text) {
    std::string line;
    for (const char c : text) {
        if (c == '\n') {
            line += "\\n";
        } else {
            line += c;
        }
    }
    return line;
}

void add_caption(std::string& to, std::string_view key, std::string_view text) {
    if (!text.empty()) {
        to += key;
        to += " = ";
        to += on_one_line(text);
        to += '\n';
    }
}

std::string colour_of(const Value& value) {
    const auto* material = std::get_if<Material>(&value);
    if (material == nullptr) {
        return {};
    }
    std::string text = " ";
    text += to_hex(material->colour);
    text += material->metal ? " metal" : "";
    return text;
}

/// What a printed length is in mm, unless it was printed in mm.
std::string exact_length(const Value& value) {
    const auto* length = std::get_if<Measure>(&value);
    if (length == nullptr) {
        return {};
    }
    constexpr int decimals = 6;
    const std::string exact = format_number(length->mm, decimals) + " mm";
    return exact == length->printed ? std::string() : " = " + exact;
}

void add_named(std::string& to, std::string_view key, const Named& named) {
    std::string text = named.name;
    text += named.title.empty() ? "" : " (" + named.title;
    text += named.means.empty() || named.title.empty() ? "" : ", " + named.means;
    text += named.title.empty() ? "" : ")";
    add_caption(to, key, text);
}

void add_facts(std::string& to, const Facts& facts) {
    constexpr int decimals = 3;
    for (const NamedRegulation& each : facts.regulations) {
        add_caption(
            to,
            "regulation",
            each.title + (each.in_force_from ? ", in force from " + to_string(*each.in_force_from)
                                             : std::string()));
    }
    add_caption(to, "regiment", facts.regiment);
    add_caption(to, "number", facts.number ? std::to_string(*facts.number) : std::string());
    add_named(to, "class", facts.corps_class);
    add_named(to, "company", facts.company);
    add_named(to, "rank", facts.rank);
    add_caption(to, "officer", facts.officer ? "yes" : "");
    add_caption(
        to,
        "years of service",
        facts.years_of_service ? format_number(*facts.years_of_service, decimals) : std::string());
    add_named(to, "order of dress", facts.order_of_dress);
    add_caption(to, "as of", facts.day ? to_string(*facts.day) : std::string());
    add_caption(to, "worn", facts.as_ordered ? "as ordered" : "");
}

/// ` {inferred; article 9; because …}`; empty where nothing was said.
std::string grounds_of(const Decision& decision) {
    std::vector<std::string> said;
    if (decision.certainty && *decision.certainty != Certainty::documented) {
        said.emplace_back(certainty_word(*decision.certainty));
    }
    if (!decision.source.empty()) {
        said.push_back(decision.source);
    }
    if (!decision.why.empty()) {
        said.push_back("because " + decision.why);
    }
    if (!decision.instead_of.empty()) {
        said.push_back("instead of " + decision.instead_of);
    }
    for (const OtherOpinion& other : decision.other_sources) {
        said.push_back("but " + other.source +
                       (other.says.empty() ? std::string() : ": " + other.says));
    }
    std::string text;
    for (const std::string& each : said) {
        text += (text.empty() ? " {" : "; ") + on_one_line(each);
    }
    return text.empty() ? text : text + "}";
}

std::string decision_line(const Decision& decision, const SourceMap& sources) {
    std::string line = decision.reason + ": " + on_one_line(decision.as_written);
    if (decision.span) {
        const SourceMap::Place place = sources.place(decision.span->file, decision.span->begin);
        line += " @" + sources.name(decision.span->file) + ":" + std::to_string(place.line) + ":" +
                std::to_string(place.column);
    }
    // What follows rests on what the decision to follow rests on.
    return decision.worked_out ? line : line + grounds_of(decision);
}

}  // namespace

std::string dump(const Uniform& uniform, const SourceMap& sources) {
    std::string text;
    add_caption(text, "plate", uniform.title);
    add_caption(text, "subtitle", uniform.subtitle);
    add_caption(text, "year", uniform.year);
    add_caption(text, "drawn by", uniform.drawn_by);
    add_caption(text, "source", uniform.source);
    for (const std::string& note : uniform.notes) {
        add_caption(text, "note", note);
    }
    add_caption(text,
                "language",
                uniform.language == Language::english ? std::string_view()
                                                      : language_code(uniform.language));
    add_caption(text, "figure", uniform.figure);
    if (uniform.facts.rank.name.empty()) {
        add_caption(text, "rank", uniform.rank);
    }
    add_facts(text, uniform.facts);
    for (PropertyId id = 0; id < uniform.decided.size(); ++id) {
        const Decided& decided = uniform.decided[id];
        text += properties()[id].key;
        text += " = " + on_one_line(uniform.word(id));
        text += colour_of(decided.value);
        text += exact_length(decided.value);
        text += "   (";
        for (const Decision& decision : decided.chain) {
            text += &decision == decided.chain.data() ? "" : "; ";
            text += decision_line(decision, sources);
        }
        text += ")\n";
    }
    return text;
}

}  // namespace platewright
