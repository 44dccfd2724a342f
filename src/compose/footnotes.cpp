// SPDX-License-Identifier: MIT
// Footnotes of a plate: what was not worn as ordered, and what is not documented.
#include "compose/footnotes.h"

#include <algorithm>
#include <array>

#include "words/man_messages.h"
#include "words/sheet_messages.h"
#include "words/terms.h"

namespace platewright {

namespace {

/// In the order printers use them; after the last they are doubled.
constexpr std::array<std::string_view, 5> kMarks = {"*", "†", "‡", "§", "¶"};

/// What somebody decided, not how the value followed from it.
const Decision& decision_of(const Decided& decided) {
    for (auto at = decided.chain.rbegin(); at != decided.chain.rend(); ++at) {
        if (!at->follows) {
            return *at;
        }
    }
    return decided.chain.back();
}

/// The words, with the reason, the source and what other sources say.
std::string with_grounds(Language language, std::string words, const Decision& decision) {
    if (!decision.why.empty()) {
        words = say(language, messages::kBecause, {words, decision.why});
    }
    if (decision.source.ends_with(')')) {
        // One bracket after another is hard to read.
        words += "; " + say(language, messages::kAfterSource, {decision.source});
    } else if (!decision.source.empty()) {
        words += " (" + decision.source + ")";
    }
    for (const OtherOpinion& other : decision.other_sources) {
        const std::string otherwise = say(language, messages::kOtherwise, {other.source});
        words += "; " + (other.says.empty()
                             ? otherwise
                             : say(language, messages::kBecause, {otherwise, other.says}));
    }
    return words;
}

/// Empty where everything is as ordered and documented.
std::string words_of(Language language, const Decision& decision) {
    std::string words;
    if (decision.departure) {
        words = say(language, messages::kNotAsOrdered);
        words += decision.instead_of.empty()
                     ? ""
                     : ", " + say(language, messages::kInsteadOf, {decision.instead_of});
    }
    const Certainty certainty = decision.certainty.value_or(Certainty::documented);
    if (certainty != Certainty::documented) {
        words += words.empty() ? "" : "; ";
        words +=
            say(language,
                certainty == Certainty::inferred ? messages::kInferred : messages::kConjecture);
    }
    if (words.empty() && decision.other_sources.empty()) {
        return {};
    }
    return with_grounds(
        language, words.empty() ? say(language, messages::kSourcesDisagree) : words, decision);
}

/// What a thing as a whole is made of, and not only something on it: lapels, not their piping.
bool is_whole(const Property& row) {
    const bool material = row.kind == Kind::cloth || row.kind == Kind::metal;
    return material && row.work != Work::none &&
           (row.place.empty() || row.main || row.name() == "cloth");
}

}  // namespace

std::string mark_of_footnote(std::size_t number) {
    std::string mark;
    for (std::size_t i = 0; i <= number / kMarks.size(); ++i) {
        mark += kMarks[number % kMarks.size()];
    }
    return mark;
}

std::string_view name_in_key(const Uniform& man, PropertyId id) {
    const Property& row = properties()[id];
    if (!row.place.empty()) {
        return seen_as(man, id);
    }
    for (PropertyId other = 0; other < properties().size(); ++other) {
        if (properties()[other].group() == row.group() && is_whole(properties()[other])) {
            return seen_as(man, other);
        }
    }
    return row.called();
}

Footnotes::Footnotes(const Uniform& uniform) : uniform_(uniform), language_(uniform.language) {
    for (PropertyId id = 0; id < uniform.decided.size(); ++id) {
        if (properties()[id].work == Work::none || !uniform.speaks(id)) {
            continue;
        }
        std::string words = words_of(language_, decision_of(uniform.decided[id]));
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
    std::string name = term(language_, name_in_key(uniform_, id));
    if (std::ranges::find(about, name) == about.end()) {
        about.push_back(std::move(name));
    }
    of_[id] = number;
}

std::string Footnotes::mark(PropertyId id) {
    const auto found = of_.find(id);
    if (found == of_.end()) {
        return {};
    }
    borne_.insert(id);
    return mark_of_footnote(found->second);
}

std::string Footnotes::mark_of_thing(PropertyId id) {
    return marks_of([this, id](PropertyId other) {
        return other == id || name_in_key(uniform_, other) == seen_as(uniform_, id);
    });
}

std::string Footnotes::mark_of_rest(std::string_view group) {
    return marks_of([this, group](PropertyId other) {
        return name_in_key(uniform_, other) == group && !borne_.contains(other);
    });
}

template <typename Belongs>
std::string Footnotes::marks_of(const Belongs& belongs) {
    std::set<std::size_t> numbers;
    for (const auto& [other, number] : of_) {
        if (belongs(other)) {
            numbers.insert(number);
            borne_.insert(other);
        }
    }
    std::string marks;
    for (const std::size_t number : numbers) {
        marks += mark_of_footnote(number);
    }
    return marks;
}

std::optional<PropertyId> Footnotes::next_without_mark() const {
    for (const auto& [id, number] : of_) {
        const bool borne = std::ranges::any_of(borne_, [&, id = id, number = number](auto other) {
            return of_.at(other) == number &&
                   name_in_key(uniform_, other) == name_in_key(uniform_, id);
        });
        if (!borne) {
            return id;
        }
    }
    return std::nullopt;
}

std::vector<Footnote> Footnotes::all() const {
    std::vector<Footnote> all;
    for (std::size_t i = 0; i < notes_.size(); ++i) {
        std::string about;
        for (const std::string& name : notes_[i].about) {
            about += (about.empty() ? "" : ", ") + name;
        }
        all.push_back({mark_of_footnote(i),
                       say(language_, messages::kNameAndWords, {about, notes_[i].words})});
    }
    return all;
}

}  // namespace platewright
