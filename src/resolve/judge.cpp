// SPDX-License-Identifier: MIT
// Weighing statements: the strongest holds, what follows another property takes its value.
#include "resolve/judge.h"

#include <algorithm>
#include <stdexcept>
#include <utility>

#include "base/text.h"
#include "vocabulary/phrases.h"

namespace platewright {

namespace {

bool is_colour(PropertyId id) {
    const Kind kind = properties()[id].kind;
    return kind == Kind::cloth || kind == Kind::metal;
}

std::string quoted_key(PropertyId id) {
    return quoted(properties()[id].key);
}

/// Works out every property once; follows `as other.property` where that leads.
class Judge {
  public:
    Judge(const StatementList& statements,
          const OfRegiment& regiment,
          const ColourBook& colours,
          bool on_record,
          Diagnostics& to)
        : regiment_(regiment),
          colours_(colours),
          on_record_(on_record),
          to_(to),
          cases_(properties().size()) {
        for (const Statement& said : built_in_defaults()) {
            cases_[said.property].statements.push_back(&said);
        }
        for (const Statement* said : statements) {
            cases_[said->property].statements.push_back(said);
        }
        for (Case& one : cases_) {
            std::ranges::stable_sort(one.statements, {}, [](const Statement* said) {
                return std::pair(said->decision.strength, said->layer);
            });
        }
    }

    std::vector<Verdict> decide() {
        std::vector<Verdict> all;
        all.reserve(cases_.size());
        for (PropertyId id = 0; id < cases_.size(); ++id) {
            std::optional<Value> value = value_of(id);
            all.push_back({std::move(value), std::move(cases_[id].chain)});
        }
        return all;
    }

  private:
    enum class State { unheard, being_heard, judged };

    struct Case {
        StatementList statements;
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
        if (on_record_) {
            for (const Statement* statement : one.statements) {
                one.chain.push_back(statement->decision);
            }
        }
        find_conflicts(id, one.statements);
        one.value = read(id, *one.statements.back());
    }

    /// Neighbours of one strength and layer must agree.
    void find_conflicts(PropertyId id, const StatementList& statements) {
        for (std::size_t i = 1; i < statements.size(); ++i) {
            const Statement& first = *statements[i - 1];
            const Statement& second = *statements[i];
            if (first.decision.strength == second.decision.strength &&
                first.layer == second.layer && !agree(id, first, second)) {
                report_conflict(id, first, second);
            }
        }
    }

    /// They say the same, if not in the same words.
    bool agree(PropertyId id, const Statement& first, const Statement& second) {
        if (same_name(written_form(first.value), written_form(second.value))) {
            return true;
        }
        const std::optional<Value> a = quiet_value(id, first);
        const std::optional<Value> b = quiet_value(id, second);
        if (!a || !b) {
            // The one that is wrong is told elsewhere, or it leads in a circle.
            return false;
        }
        const auto* one = std::get_if<Measure>(&*a);
        const auto* other = std::get_if<Measure>(&*b);
        return one != nullptr && other != nullptr ? one->mm == other->mm
                                                  : word_of(*a) == word_of(*b);
    }

    std::optional<Value> quiet_value(PropertyId id, const Statement& statement) {
        const auto* text = std::get_if<std::string>(&statement.value);
        if (text == nullptr || !is_colour(id) || followed(*text).empty()) {
            return plain_value(id, statement.value, colours_);
        }
        for (const std::string_view key : followed(*text)) {
            const auto other = find_property(key);
            if (!other || cases_[*other].state == State::being_heard) {
                return std::nullopt;
            }
            std::optional<Value> value = value_of(*other);
            if (!value || std::holds_alternative<Material>(*value)) {
                return value;
            }
        }
        return Value(Absent{});
    }

    std::optional<Value> read(PropertyId id, const Statement& statement) {
        const auto* text = std::get_if<std::string>(&statement.value);
        if (text == nullptr) {
            return plain_value(id, statement.value, colours_);
        }
        if (!is_colour(id)) {
            return number_of_regiment(id, *text, statement.decision);
        }
        const std::vector<std::string_view> keys = followed(*text);
        if (!keys.empty()) {
            return follow(id, keys, statement.decision);
        }
        std::optional<Value> value = plain_value(id, statement.value, colours_);
        if (!value) {
            report_colour(id, *text, statement.decision.span, colours_, to_);
        }
        return value;
    }

    /// Words are taken as they are, but for `the regiment's number`.
    std::optional<Value> number_of_regiment(PropertyId id,
                                            const std::string& text,
                                            const Decision& decision) {
        if (properties()[id].kind != Kind::words || !same_name(text, kTheRegimentsNumber)) {
            return Value(text);
        }
        const std::string number =
            regiment_.number ? std::to_string(*regiment_.number) : std::string("none");
        if (!on_record_) {
            return regiment_.number ? Value(number) : Value(Absent{});
        }
        Decision following = decision;
        following.as_written = number;
        following.reason = kTheRegimentsNumber;
        following.worked_out = true;
        cases_[id].chain.push_back(std::move(following));
        return regiment_.number ? Value(number) : Value(Absent{});
    }

    /// The first of `keys` that is not `none`; else `none`, where that may be.
    std::optional<Value> follow(PropertyId id,
                                const std::vector<std::string_view>& keys,
                                const Decision& decision) {
        for (const std::string_view key : keys) {
            const bool regiments = lower(key).starts_with(kTheRegiments);
            const std::string_view bare = regiments ? key.substr(kTheRegiments.size()) : key;
            const std::optional<PropertyId> other = find_property(bare);
            if (!other || !is_colour(*other)) {
                report_key(id, bare, decision);
                return std::nullopt;
            }
            const std::optional<Value> value = regiments && regiment_.verdicts != nullptr
                                                   ? (*regiment_.verdicts)[*other].value
                                                   : value_of(*other);
            if (!value) {
                return std::nullopt;
            }
            if (const auto* material = std::get_if<Material>(&*value)) {
                return take(id, key, *material, decision);
            }
        }
        return take_none(id, keys.back(), decision);
    }

    std::optional<Value> take(PropertyId id,
                              std::string_view from,
                              const Material& material,
                              const Decision& decision) {
        if (properties()[id].kind == Kind::metal && !material.metal) {
            error("resolve.wrong-kind",
                  decision,
                  quoted_key(id) + " must be a metal, and " + quoted(from) + " is " +
                      quoted(material.name),
                  "write a metal, such as 'white' or 'yellow'");
            return std::nullopt;
        }
        record_following(id, from, material.name, decision);
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
        if (!on_record_) {
            return;
        }
        Decision following = decision;
        following.as_written = std::move(value);
        following.reason = "as " + std::string(key);
        following.worked_out = true;
        const bool regiments = lower(key).starts_with(kTheRegiments);
        following.follows = find_property(regiments ? key.substr(kTheRegiments.size()) : key);
        cases_[id].chain.push_back(std::move(following));
    }

    void report_conflict(PropertyId id, const Statement& first, const Statement& second) {
        const Decision& one = first.decision;
        const Decision& other = second.decision;
        Diagnostic problem;
        problem.code = "resolve.conflict";
        problem.message = quoted_key(id) + " is " + quoted(one.as_written) + " by " + one.reason +
                          ", and " + quoted(other.as_written) + " by " + other.reason;
        problem.span = other.span;
        if (one.span) {
            problem.labels.push_back({*one.span, one.reason + ": " + quoted(one.as_written)});
        }
        problem.hints.push_back(
            one.strength == Strength::rule
                ? "say under 'unless:' of one of them when it does not hold"
            : one.strength == Strength::departure
                ? "give one of them a company, a rank, an order of dress or dates"
                : "leave one of them out: neither is stronger than the other");
        to_.add(std::move(problem));
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
            const Decision& decision = cases_[*at].statements.back()->decision;
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

    const OfRegiment& regiment_;
    const ColourBook& colours_;
    bool on_record_;
    Diagnostics& to_;
    std::vector<Case> cases_;
    /// The cases being heard, each waiting for the next.
    std::vector<PropertyId> open_;
};

std::string_view example_colours(PropertyId id) {
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

}  // namespace

std::optional<Value> plain_value(PropertyId id,
                                 const WrittenValue& written,
                                 const ColourBook& colours) {
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
    if (!followed(text).empty()) {
        return std::nullopt;
    }
    std::optional<Material> material = colours.find(id, text);
    return material ? std::optional<Value>(*std::move(material)) : std::nullopt;
}

void report_colour(PropertyId id,
                   const std::string& name,
                   const std::optional<Span>& span,
                   const ColourBook& colours,
                   Diagnostics& to) {
    const bool metal = properties()[id].kind == Kind::metal;
    const std::string what = metal ? "metal" : "colour";
    Diagnostic problem;
    problem.code = "resolve.unknown-" + what;
    problem.span = span;
    if (name.starts_with('#')) {
        problem.message = quoted(name) + " is not a colour";
        problem.hints.emplace_back(
            "write # and six figures or letters from a to f, such as \"#28385f\"");
    } else if (!span) {
        problem.message = "the palettes have no " + what + " " + quoted(name) +
                          ", the default of " + quoted_key(id);
        problem.hints.push_back("add it to a palette, or write " + quoted_key(id) + " yourself");
    } else {
        problem.message = "unknown " + what + " " + quoted(name);
        if (const std::string there = written_where_known(id, name); !there.empty()) {
            problem.hints.push_back("did you mean " + quoted(there) + "?");
        }
        const std::optional<std::string> near = colours.nearest(id, name);
        problem.hints.push_back(
            near ? "did you mean " + quoted(*near) + "?"
                 : "write a name of the palettes, such as " +
                       std::string(metal ? "'white' or 'yellow'" : example_colours(id)) +
                       ", or the colour itself in quotes, such as \"#28385f\"");
    }
    to.add(std::move(problem));
}

std::vector<Verdict> judge(const StatementList& statements,
                           const OfRegiment& regiment,
                           const ColourBook& colours,
                           bool on_record,
                           Diagnostics& to) {
    return Judge(statements, regiment, colours, on_record, to).decide();
}

}  // namespace platewright
