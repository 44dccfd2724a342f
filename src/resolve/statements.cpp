// SPDX-License-Identifier: MIT
// Who says what of a man's dress, with the grounds it rests on.
#include "resolve/statements.h"

#include <algorithm>
#include <charconv>
#include <stdexcept>
#include <utility>

#include "base/text.h"

namespace platewright {

namespace {

/// A built-in default of the table as a value.
WrittenValue initial_value(const Property& row) {
    if (row.initial == "none") {
        return None{};
    }
    if (row.kind == Kind::count) {
        int number = 0;
        std::from_chars(row.initial.data(), row.initial.data() + row.initial.size(), number);
        return number;
    }
    if (row.kind == Kind::measure) {
        std::string problem;
        if (std::optional<Measure> length = parse_measure(row.initial, problem)) {
            return *std::move(length);
        }
        throw std::logic_error("the default of " + quoted(row.key) + ": " + problem);
    }
    return std::string(row.initial);
}

/// The first that says something, from the nearest to the furthest.
class GroundsInOrder {
  public:
    void add(const Grounds& grounds) { all_.push_back(&grounds); }

    /// Regulations and regiments are documented unless they say otherwise; so is what names a
    /// source.
    void fill(Decision& decision, bool documented) const {
        for (const Grounds* each : all_) {
            add_missing(decision, *each);
        }
        if (!decision.certainty && (documented || !decision.source.empty())) {
            decision.certainty = Certainty::documented;
        }
    }

  private:
    static void add_missing(Decision& decision, const Grounds& grounds) {
        if (decision.source.empty() && grounds.source) {
            decision.source = grounds.source->text;
        }
        if (!decision.certainty) {
            decision.certainty = grounds.certainty;
        }
        if (decision.why.empty() && grounds.why) {
            decision.why = grounds.why->text;
        }
        if (!decision.other_sources.empty()) {
            return;
        }
        for (const OtherSource& other : grounds.other_sources) {
            decision.other_sources.push_back(
                {other.source.text, other.says ? other.says->text : std::string()});
        }
    }

    std::vector<const Grounds*> all_;
};

/// Who speaks, and how loudly.
struct Speaker {
    Strength strength = Strength::initial;
    std::string reason;
    int layer = 0;
    bool documented = true;
};

Statement statement_of(PropertyId id,
                       const Written& written,
                       const Speaker& speaker,
                       const GroundsInOrder& grounds) {
    Statement statement{id, {}, written.value, speaker.layer};
    Decision& decision = statement.decision;
    decision.strength = speaker.strength;
    decision.as_written = written_form(written.value);
    decision.span = written.span;
    decision.reason = speaker.reason;
    grounds.fill(decision, speaker.documented);
    return statement;
}

void say_all(std::vector<Statement>& to,
             const WrittenValues& values,
             const std::map<std::string, Grounds>& of_groups,
             const std::vector<const Grounds*>& wider,
             const Speaker& speaker) {
    for (const auto& [id, written] : values) {
        GroundsInOrder grounds;
        const auto of_group = of_groups.find(std::string(properties()[id].group()));
        if (of_group != of_groups.end()) {
            grounds.add(of_group->second);
        }
        for (const Grounds* each : wider) {
            grounds.add(*each);
        }
        to.push_back(statement_of(id, written, speaker, grounds));
    }
}

void say(std::vector<Statement>& to,
         const Block& block,
         const Grounds& file,
         const Speaker& speaker) {
    say_all(to, block.values, block.group_grounds, {&block.grounds, &file}, speaker);
}

/// All editions of an entry, each over the one before; `layer` counts on.
void say_entry(std::vector<Statement>& to,
               const Entry& entry,
               const InForce& law,
               Strength strength,
               const std::string& reason,
               int& layer) {
    for (const EditionPart& part : entry.parts) {
        say(to,
            part.block->wear,
            law.file_grounds(part.edition),
            {strength, reason + law.amended(part.edition), layer++});
    }
}

void say_entry(std::vector<Statement>& to,
               const Entry* entry,
               const InForce& law,
               Strength strength,
               std::string_view what) {
    if (entry != nullptr) {
        int layer = 0;
        say_entry(to, *entry, law, strength, std::string(what) + " " + entry->name, layer);
    }
}

/// A word of the series that decides one property.
void say_word(std::vector<Statement>& to,
              std::string_view key,
              const SeriesWord& word,
              const PlaceInForce& place,
              const InForce& law) {
    if (word.text == nullptr) {
        return;
    }
    GroundsInOrder grounds;
    grounds.add(*word.grounds);
    grounds.add(law.file_grounds(word.edition));
    const bool none = same_name(word.text->text, "none");
    const Written written{none ? WrittenValue(None{}) : WrittenValue(word.text->text),
                          word.text->span};
    const std::string colour = place.colour.text->text;
    to.push_back(
        statement_of(property_id(key),
                     written,
                     {Strength::series, "series, " + colour + law.amended(word.edition), 0},
                     grounds));
}

void say_place(std::vector<Statement>& to, const PlaceInForce& place, const InForce& law) {
    say_word(to, "facings.cloth", place.colour, place, law);
    say_word(to, "buttons.metal", place.buttons, place, law);
    const Entry* shows =
        place.shows.text != nullptr ? find_entry(law.shows, place.shows.text->text) : nullptr;
    if (shows != nullptr) {
        int layer = 0;
        say_entry(to, *shows, law, Strength::series, "series, shows " + shows->name, layer);
    }
}

void say_rank(std::vector<Statement>& to, const RankEntry& rank, const InForce& law) {
    int layer = 0;
    for (const RankEntry* each : likeness(rank, law)) {
        const std::string reason =
            "rank " + rank.name + (each == &rank ? std::string() : ", like " + each->name);
        say_entry(to, *each, law, Strength::rank, reason, layer);
    }
}

bool among(const std::vector<WrittenText>& names, const Entry* entry) {
    return names.empty() ||
           (entry != nullptr && std::ranges::any_of(names, [&](const WrittenText& name) {
                return same_name(name.text, entry->name);
            }));
}

void say_service(std::vector<Statement>& to, const Man& man, const InForce& law) {
    constexpr int decimals = 3;
    int layer = -1;
    const ServiceInForce* before = nullptr;
    for (const ServiceInForce& each : law.service) {
        const ServiceStep& step = *each.step;
        if (!reaches(*man.years, step) || !among(step.ranks, man.rank)) {
            continue;
        }
        const bool same = before != nullptr && before->step->years == step.years &&
                          before->step->more_than == step.more_than &&
                          before->edition == each.edition;
        layer += same ? 0 : 1;
        before = &each;
        const std::string reason = std::string(step.more_than ? "more than " : "at least ") +
                                   format_number(step.years, decimals) + " years of service";
        say(to,
            step.wear,
            law.file_grounds(each.edition),
            {Strength::service, reason + law.amended(each.edition), layer});
    }
}

bool concerns(const Departure& departure, const Man& man) {
    const bool begun = !departure.from || (man.day && departure.from->date <= *man.day);
    const bool lasts = !departure.until || (man.day && *man.day <= departure.until->date);
    return begun && lasts && among(departure.companies, man.company) &&
           among(departure.ranks, man.rank) && among(departure.orders, man.order);
}

}  // namespace

std::string written_form(const WrittenValue& value) {
    if (const auto* text = std::get_if<std::string>(&value)) {
        return *text;
    }
    if (const auto* number = std::get_if<int>(&value)) {
        return std::to_string(*number);
    }
    if (const auto* length = std::get_if<Measure>(&value)) {
        return length->printed;
    }
    return "none";
}

const std::vector<Statement>& built_in_defaults() {
    static const std::vector<Statement> kDefaults = [] {
        std::vector<Statement> defaults;
        for (PropertyId id = 0; id < properties().size(); ++id) {
            Statement statement{id, {}, initial_value(properties()[id])};
            statement.decision.as_written = properties()[id].initial;
            statement.decision.reason = "built-in default";
            defaults.push_back(std::move(statement));
        }
        return defaults;
    }();
    return kDefaults;
}

std::vector<Statement> statements_of(const SpecifiedCustoms::Rank& rank) {
    std::vector<Statement> said;
    const Speaker speaker{
        Strength::custom, "custom of the rank " + rank.name.text, 0, /*documented=*/false};
    say_all(said, rank.values, {}, {}, speaker);
    return said;
}

std::vector<Statement> statements_of(const Man& man) {
    std::vector<Statement> said;
    const InForce& law = *man.law;
    for (std::size_t i = 0; i < law.editions.size(); ++i) {
        const int edition = static_cast<int>(i);
        say(said,
            law.editions[i]->everyone,
            law.file_grounds(edition),
            {Strength::regulation, "regulation, everyone" + law.amended(edition), edition});
    }
    say_entry(said, man.corps_class, law, Strength::corps_class, "class");
    if (man.place != nullptr) {
        say_place(said, *man.place, law);
    }
    say_entry(said, man.company, law, Strength::company, "company");
    if (man.rank != nullptr) {
        say_rank(said, *man.rank, law);
    }
    if (man.years) {
        say_service(said, man, law);
    }
    say_entry(said, man.order, law, Strength::order, "order of dress");
    return said;
}

std::vector<Statement> statements_of(const RuleInForce& rule, const InForce& law) {
    std::vector<Statement> said;
    say(said,
        rule.rule->wear,
        law.file_grounds(rule.edition),
        {Strength::rule, rule.called() + law.amended(rule.edition), rule.edition});
    return said;
}

std::vector<Statement> statements_of(const SpecifiedRegiment& regiment) {
    std::vector<Statement> said;
    say(said,
        regiment.wear,
        regiment.wear.grounds,
        {Strength::regiment, "regiment " + regiment.name.text, 0});
    return said;
}

std::vector<Statement> statements_of(const SpecifiedPlate& plate) {
    std::vector<Statement> said;
    Grounds file;
    file.source = plate.source;
    const Speaker speaker{Strength::plate, "this plate", 0, /*documented=*/false};
    say_all(said, plate.values, plate.group_grounds, {&file}, speaker);
    return said;
}

std::vector<Statement> statements_of(const std::vector<Departure>& departures,
                                     const Man& man,
                                     const Grounds& file,
                                     Strength of) {
    std::vector<Statement> said;
    const bool of_plate = of == Strength::plate;
    const Speaker speaker{Strength::departure,
                          of_plate ? "departure of this plate" : "departure of the regiment",
                          of_plate ? 1 : 0};
    for (const Departure& departure : departures) {
        if (!concerns(departure, man)) {
            continue;
        }
        const std::size_t first = said.size();
        say(said, departure.wear, file, speaker);
        for (std::size_t i = first; i < said.size(); ++i) {
            said[i].decision.departure = true;
            said[i].decision.instead_of =
                departure.instead_of ? departure.instead_of->text : std::string();
        }
    }
    return said;
}

}  // namespace platewright
