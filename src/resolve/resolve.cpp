// SPDX-License-Identifier: MIT
// Second stage: defaults, customs and what was written, weighed to one decision a property.
#include "resolve/resolve.h"

#include <algorithm>
#include <charconv>
#include <stdexcept>
#include <utility>

#include "base/text.h"
#include "resolve/colours.h"

namespace platewright {

namespace {

/// A decision and, where it was written in a file, the checked value.
struct Statement {
    Decision decision;
    std::optional<WrittenValue> value;
};

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

Statement statement_of(const Written& written, Strength strength, std::string reason) {
    return {{strength, written_form(written.value), written.span, std::move(reason)},
            written.value};
}

bool is_colour(PropertyId id) {
    const Kind kind = properties()[id].kind;
    return kind == Kind::cloth || kind == Kind::metal;
}

std::string quoted_key(PropertyId id) {
    return quoted(properties()[id].key);
}

/// A built-in default of the table as a value. Throws std::logic_error on a slip in the table.
WrittenValue initial_value(PropertyId id) {
    const Property& row = properties()[id];
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
        throw std::logic_error("the default of " + quoted_key(id) + ": " + problem);
    }
    return std::string(row.initial);
}

/// Works out every property once; follows `as other.property` where that leads.
class Judge {
  public:
    Judge(const ColourBook& colours, Diagnostics& to)
        : colours_(colours), to_(to), cases_(properties().size()) {
        for (PropertyId id = 0; id < cases_.size(); ++id) {
            const std::string initial(properties()[id].initial);
            cases_[id].statements.push_back(
                {{Strength::initial, initial, std::nullopt, "built-in default"},
                 initial_value(id)});
        }
    }

    /// Statements come in order of strength, weakest first.
    void hear(const WrittenValues& values, Strength strength, const std::string& reason) {
        for (const auto& [id, written] : values) {
            cases_[id].statements.push_back(statement_of(written, strength, reason));
        }
    }

    std::vector<Decided> decide() {
        std::vector<Decided> all;
        for (PropertyId id = 0; id < cases_.size(); ++id) {
            const std::optional<Value> value = value_of(id);
            all.push_back({value.value_or(Absent{}), std::move(cases_[id].chain)});
        }
        return all;
    }

  private:
    enum class State { unheard, being_heard, judged };

    struct Case {
        std::vector<Statement> statements;
        State state = State::unheard;
        /// Empty after an error.
        std::optional<Value> value;
        std::vector<Decision> chain;
    };

    std::optional<Value> value_of(PropertyId id) {
        Case& one = cases_[id];
        if (one.state == State::being_heard) {
            report_circle(id);
            return std::nullopt;
        }
        if (one.state == State::unheard) {
            one.state = State::being_heard;
            open_.push_back(id);
            judge(id, one);
            open_.pop_back();
            one.state = State::judged;
        }
        return one.value;
    }

    void judge(PropertyId id, Case& one) {
        for (const Statement& statement : one.statements) {
            one.chain.push_back(statement.decision);
        }
        one.value = read(id, one.statements.back());
    }

    std::optional<Value> read(PropertyId id, const Statement& statement) {
        const WrittenValue& written = *statement.value;
        if (std::holds_alternative<None>(written)) {
            return properties()[id].kind == Kind::count ? Value(0) : Value(Absent{});
        }
        if (const auto* number = std::get_if<int>(&written)) {
            return Value(*number);
        }
        if (const auto* length = std::get_if<Measure>(&written)) {
            return Value(*length);
        }
        const auto& text = std::get<std::string>(written);
        if (!is_colour(id)) {
            return Value(text);
        }
        const std::vector<std::string_view> keys = followed(text);
        return keys.empty() ? colour(id, text, statement.decision)
                            : follow(id, keys, statement.decision);
    }

    std::optional<Value> colour(PropertyId id, const std::string& name, const Decision& decision) {
        if (std::optional<Material> material = colours_.find(id, name)) {
            return Value(*std::move(material));
        }
        report_colour(id, name, decision);
        return std::nullopt;
    }

    /// The first of `keys` that is not `none`; else `none`, where that may be.
    std::optional<Value> follow(PropertyId id,
                                const std::vector<std::string_view>& keys,
                                const Decision& decision) {
        for (const std::string_view key : keys) {
            const std::optional<PropertyId> other = find_property(key);
            if (!other || !is_colour(*other)) {
                report_key(id, key, decision);
                return std::nullopt;
            }
            const std::optional<Value> value = value_of(*other);
            if (!value) {
                return std::nullopt;
            }
            if (const auto* material = std::get_if<Material>(&*value)) {
                return take(id, *other, *material, decision);
            }
        }
        return take_none(id, keys.back(), decision);
    }

    std::optional<Value> take(PropertyId id,
                              PropertyId from,
                              const Material& material,
                              const Decision& decision) {
        if (properties()[id].kind == Kind::metal && !material.metal) {
            error("resolve.wrong-kind",
                  decision,
                  quoted_key(id) + " must be a metal, and " + quoted_key(from) + " is " +
                      quoted(material.name),
                  "write a metal, such as 'white' or 'yellow'");
            return std::nullopt;
        }
        record_following(id, properties()[from].key, material.name, decision);
        return Value(material);
    }

    std::optional<Value> take_none(PropertyId id, std::string_view key, const Decision& decision) {
        if (!properties()[id].may_be_none) {
            error("resolve.wrong-kind",
                  decision,
                  quoted_key(id) + " cannot be none, but it follows " + quoted(key) + ", which is",
                  "write a colour, or a second property to follow: 'as lapels.cloth or "
                  "facings.cloth'");
            return std::nullopt;
        }
        record_following(id, key, "none", decision);
        return Value(Absent{});
    }

    void record_following(PropertyId id,
                          std::string_view key,
                          std::string value,
                          const Decision& decision) {
        cases_[id].chain.push_back(
            {decision.strength, std::move(value), decision.span, "as " + std::string(key)});
    }

    void report_colour(PropertyId id, const std::string& name, const Decision& decision) {
        const bool metal = properties()[id].kind == Kind::metal;
        const std::string what = metal ? "metal" : "colour";
        const std::optional<std::string> near = colours_.nearest(id, name);
        std::string hint =
            near ? "did you mean " + quoted(*near) + "?"
                 : "write a name of the palettes, such as " +
                       std::string(metal ? "'white' or 'yellow'" : example_colours(id)) +
                       ", or the colour itself in quotes, such as \"#28385f\"";
        if (name.starts_with('#')) {
            error("resolve.unknown-" + what,
                  decision,
                  quoted(name) + " is not a colour",
                  "write # and six figures or letters from a to f, such as \"#28385f\"");
        } else if (decision.span) {
            error(
                "resolve.unknown-" + what, decision, "unknown " + what + " " + quoted(name), hint);
        } else {
            error("resolve.unknown-" + what,
                  decision,
                  "the palettes have no " + what + " " + quoted(name) + ", the default of " +
                      quoted_key(id),
                  "add it to a palette, or write " + quoted_key(id) + " yourself");
        }
    }

    static std::string_view example_colours(PropertyId id) {
        switch (properties()[id].substance) {
            case SubstanceKind::skin:
                return "'fair' or 'brown'";
            case SubstanceKind::hair:
                return "'powdered' or 'brown'";
            case SubstanceKind::leather:
                return "'white' or 'black'";
            case SubstanceKind::cloth:
            case SubstanceKind::metal:
                break;
        }
        return "'red' or 'dark blue'";
    }

    void report_key(PropertyId id, std::string_view key, const Decision& decision) {
        const std::optional<std::string> near = nearest_property(key);
        const bool of_use = near && property_id(*near) != id && is_colour(property_id(*near));
        error("resolve.unknown-property",
              decision,
              quoted(key) + " is not a property that has a colour to follow",
              of_use ? "did you mean 'as " + *near + "'?"
                     : "write for instance 'as facings.cloth' or 'as buttons.metal'");
    }

    /// `id` leads back to itself through the cases that are open.
    void report_circle(PropertyId id) {
        const auto first = std::ranges::find(open_, id);
        std::string way = quoted_key(id);
        const Decision* written = nullptr;
        for (auto at = first; at != open_.end(); ++at) {
            const auto next = at + 1 == open_.end() ? first : at + 1;
            way += at == first ? " follows " : ", which follows ";
            way += quoted_key(*next);
            const Decision& decision = cases_[*at].statements.back().decision;
            written = written == nullptr && decision.span ? &decision : written;
        }
        if (written == nullptr) {
            throw std::logic_error("the table of properties goes in a circle: " + way);
        }
        error("resolve.circle", *written, way, "give one of them a colour of its own");
    }

    void error(std::string code, const Decision& decision, std::string message, std::string hint) {
        Diagnostic problem;
        problem.code = std::move(code);
        problem.message = std::move(message);
        problem.span = decision.span;
        problem.hints.push_back(std::move(hint));
        to_.add(std::move(problem));
    }

    const ColourBook& colours_;
    Diagnostics& to_;
    std::vector<Case> cases_;
    /// The cases being heard, each waiting for the next.
    std::vector<PropertyId> open_;
};

const SpecifiedCustoms::Rank* find_rank(const SpecifiedCustoms& customs, std::string_view name) {
    const std::string wanted = lower(trim(name));
    const auto at = std::ranges::find_if(customs.ranks, [&](const SpecifiedCustoms::Rank& rank) {
        return lower(trim(rank.name.text)) == wanted;
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
    if (const std::optional<std::string> near = nearest_word(rank.text, names)) {
        problem.hints.push_back("did you mean " + quoted(*near) + "?");
    } else if (!names.empty()) {
        problem.hints.push_back("ranks with a custom here are " + or_list(names));
    }
    problem.hints.emplace_back(
        "a rank of your own needs its marks: write 'marks: none' or 'marks: {shape: bars, number: "
        "2}'");
}

std::string text_of(const std::optional<WrittenText>& written) {
    return written ? written->text : std::string();
}

Uniform captions_only(const SpecifiedPlate& plate) {
    Uniform man;
    man.title = plate.title.text;
    man.subtitle = text_of(plate.subtitle);
    man.year = text_of(plate.year);
    man.drawn_by = text_of(plate.drawn_by);
    man.source = text_of(plate.source);
    for (const WrittenText& note : plate.notes) {
        man.notes.push_back(note.text);
    }
    man.rank = text_of(plate.rank);
    man.figure = plate.figure ? plate.figure->text : std::string(kDefaultFigure);
    return man;
}

}  // namespace

std::optional<Uniform> resolve(const SpecifiedPlate& plate,
                               const SpecifiedCustoms& customs,
                               const std::vector<SpecifiedPalette>& palettes,
                               Diagnostics& to) {
    const std::size_t errors_before = to.error_count();
    const ColourBook colours(palettes);
    Uniform man = captions_only(plate);
    Judge judge(colours, to);
    if (plate.rank) {
        if (const SpecifiedCustoms::Rank* rank = find_rank(customs, plate.rank->text)) {
            man.rank = rank->name.text;
            judge.hear(rank->values, Strength::custom, "custom of the rank " + man.rank);
        } else if (!gives_marks(plate)) {
            report_rank(*plate.rank, customs, to);
        }
    }
    judge.hear(plate.values, Strength::plate, "this plate");
    man.decided = judge.decide();
    if (to.error_count() != errors_before) {
        return std::nullopt;
    }
    return man;
}

}  // namespace platewright
