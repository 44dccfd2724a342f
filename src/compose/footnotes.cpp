// SPDX-License-Identifier: MIT
// Footnotes of a plate: what was not worn as ordered, and what is not documented.
#include "compose/footnotes.h"

#include <algorithm>
#include <array>

namespace platewright {

namespace {

/// In the order printers use them; after the last they are doubled.
constexpr std::array<std::string_view, 5> kMarks = {"*", "†", "‡", "§", "¶"};

std::string mark_of(std::size_t number) {
    std::string mark;
    for (std::size_t i = 0; i <= number / kMarks.size(); ++i) {
        mark += kMarks[number % kMarks.size()];
    }
    return mark;
}

/// What somebody decided, not how the value followed from it.
const Decision& decision_of(const Decided& decided) {
    for (auto at = decided.chain.rbegin(); at != decided.chain.rend(); ++at) {
        if (!at->follows) {
            return *at;
        }
    }
    return decided.chain.back();
}

std::string grounds_of(const Decision& decision) {
    std::string words;
    if (!decision.why.empty()) {
        words += ": " + decision.why;
    }
    if (!decision.source.empty()) {
        words += " (" + decision.source + ")";
    }
    for (const OtherOpinion& other : decision.other_sources) {
        words += "; otherwise " + other.source;
        words += other.says.empty() ? "" : ": " + other.says;
    }
    return words;
}

/// Empty where everything is as ordered and documented.
std::string words_of(const Decision& decision) {
    std::string words;
    if (decision.departure) {
        words = "not as ordered";
        words += decision.instead_of.empty() ? "" : ", instead of " + decision.instead_of;
    }
    const Certainty certainty = decision.certainty.value_or(Certainty::documented);
    if (certainty != Certainty::documented) {
        words += words.empty() ? "" : "; ";
        words += certainty == Certainty::inferred ? "inferred" : "a conjecture";
    }
    if (words.empty() && decision.other_sources.empty()) {
        return {};
    }
    return (words.empty() ? "sources disagree" : words) + grounds_of(decision);
}

}  // namespace

Footnotes::Footnotes(const Uniform& uniform) {
    for (PropertyId id = 0; id < uniform.decided.size(); ++id) {
        if (properties()[id].work == Work::none || !uniform.speaks(id)) {
            continue;
        }
        std::string words = words_of(decision_of(uniform.decided[id]));
        if (!words.empty()) {
            add(id, std::move(words));
        }
    }
}

void Footnotes::add(PropertyId id, std::string words) {
    const auto same = std::ranges::find(notes_, words, &Note::words);
    const auto number = static_cast<std::size_t>(same - notes_.begin());
    if (same == notes_.end()) {
        notes_.push_back({std::move(words), {}});
    }
    std::vector<std::string>& about = notes_[number].about;
    std::string name(properties()[id].called());
    if (std::ranges::find(about, name) == about.end()) {
        about.push_back(std::move(name));
    }
    of_[id] = number;
}

std::string Footnotes::mark(PropertyId id) const {
    const auto found = of_.find(id);
    return found == of_.end() ? std::string() : mark_of(found->second);
}

std::vector<std::string> Footnotes::lines() const {
    std::vector<std::string> lines;
    for (std::size_t i = 0; i < notes_.size(); ++i) {
        std::string about;
        for (const std::string& name : notes_[i].about) {
            about += (about.empty() ? "" : ", ") + name;
        }
        lines.push_back(mark_of(i) + " " + about + ": " + notes_[i].words + ".");
    }
    return lines;
}

}  // namespace platewright
