// SPDX-License-Identifier: MIT
// A clothing regulation, or an amendment of one.
#include <map>
#include <string>
#include <utility>
#include <variant>

#include "base/limits.h"
#include "base/text.h"
#include "read/groups.h"
#include "read/keys.h"
#include "read/names.h"
#include "read/numbers.h"
#include "read/read.h"
#include "read/record.h"
#include "read/texts.h"

namespace platewright {
namespace {

/// A value as a rule asks for it.
struct AskedWord {
    std::string operator()(None /*none*/) const { return "none"; }

    std::string operator()(const std::string& text) const { return text; }

    std::string operator()(int number) const { return std::to_string(number); }

    std::string operator()(const Measure& measure) const { return measure.printed; }
};

/// Names that must differ, as they come.
class Names {
  public:
    explicit Names(Diagnostics& to) : to_(to) {}

    void add(const WrittenText& name) {
        const auto [first, is_new] = seen_.emplace(lower(name.text), name.span);
        if (!is_new) {
            report_repeated_name(name, first->second, to_);
        }
    }

  private:
    std::map<std::string, Span> seen_;
    Diagnostics& to_;
};

/// `when:` and `unless:` of a rule.
class QuestionReader {
  public:
    QuestionReader(std::vector<Asked>& into, const ReadContext& context)
        : into_(into), context_(context) {}

    void read(const TreeEntry& entry) {
        TreeEntry facts = entry;
        std::erase_if(facts.value.entries, [](const TreeEntry& part) { return is_property(part); });
        for (const TreeEntry& part : entry.value.entries) {
            if (is_property(part)) {
                read_property(part);
            }
        }
        const auto years = [this](const TreeEntry& part) { read_service(part); };
        const auto names = [this](Asked::Fact fact) {
            return [this, fact](const TreeEntry& part) { read_names(part, fact); };
        };
        read_record(facts,
                    Record::question,
                    quoted(entry.key),
                    {{"class", names(Asked::Fact::corps_class)},
                     {"regiment", names(Asked::Fact::regiment)},
                     {"company", names(Asked::Fact::company)},
                     {"rank", names(Asked::Fact::rank)},
                     {"order of dress", names(Asked::Fact::order)},
                     {"years of service", years}},
                    {},
                    context_);
    }

  private:
    static bool is_property(const TreeEntry& part) {
        return is_group(part.key) || find_property(part.key).has_value();
    }

    void read_names(const TreeEntry& part, Asked::Fact fact) {
        auto words = read_texts(part, limits::kLineCharacters, context_);
        if (!words.empty()) {
            into_.push_back({fact, 0, std::move(words), 0, false, part.key_span});
        }
    }

    void read_service(const TreeEntry& part) {
        if (const auto asked = read_years_asked(part, context_)) {
            into_.push_back(
                {Asked::Fact::years, 0, {}, asked->years, asked->more_than, part.key_span});
        }
    }

    /// `buttons.metal: white`, `buttons: {metal: white}` or `pockets: vertical`.
    void read_property(const TreeEntry& part) {
        if (const auto id = find_property(part.key)) {
            read_values(*id, part);
            return;
        }
        const Item& first = part.value.form == Item::Form::list && !part.value.items.empty()
                                ? part.value.items.front()
                                : part.value;
        const auto main = property_of_word(part.key, trim(first.text));
        if (first.form == Item::Form::text && main) {
            read_values(*main, part);
            return;
        }
        WrittenValues values;
        read_group(part, values, context_);
        for (const auto& [id, written] : values) {
            add(id, {word_of(written)}, part.key_span);
        }
    }

    void read_values(PropertyId id, const TreeEntry& part) {
        std::vector<WrittenText> words;
        TreeEntry one = part;
        if (part.value.form != Item::Form::list) {
            read_word(id, one, words);
        }
        for (const Item& item : part.value.items) {
            one.value = item;
            read_word(id, one, words);
        }
        add(id, std::move(words), part.key_span);
    }

    void read_word(PropertyId id, const TreeEntry& one, std::vector<WrittenText>& words) {
        if (const auto written = read_value(id, one, context_)) {
            words.push_back(word_of(*written));
        }
    }

    static WrittenText word_of(const Written& written) {
        return {std::visit(AskedWord{}, written.value), written.span};
    }

    void add(PropertyId id, std::vector<WrittenText> words, const Span& span) {
        if (!words.empty()) {
            into_.push_back({Asked::Fact::property, id, std::move(words), 0, false, span});
        }
    }

    std::vector<Asked>& into_;
    const ReadContext& context_;
};

class RegulationReader {
  public:
    explicit RegulationReader(const ReadContext& context)
        : context_(context), rule_names_(context.to), battalion_names_(context.to) {}

    void read(const Item& root) {
        SpecifiedRegulation& it = regulation_;
        const auto by = [this](void (RegulationReader::*part)(const TreeEntry&)) {
            return [this, part](const TreeEntry& entry) { (this->*part)(entry); };
        };
        const auto blocks = [this](std::vector<NamedBlock>& into) {
            return [this, &into](const TreeEntry& entry) { read_blocks(entry, into); };
        };
        read_outermost(root,
                       Record::regulation,
                       {{"regulation", &it.title},
                        {"in force from", &it.in_force_from},
                        {"until", &it.until},
                        {"amends", &it.amends},
                        {"must decide", by(&RegulationReader::read_must_decide)},
                        {"everyone", by(&RegulationReader::read_everyone)},
                        {"classes", blocks(it.classes)},
                        {"shows", blocks(it.shows)},
                        {"series", by(&RegulationReader::read_series)},
                        {"rules", by(&RegulationReader::read_rules)},
                        {"companies", by(&RegulationReader::read_companies)},
                        {"battalions", by(&RegulationReader::read_battalions)},
                        {"strength", &it.strength},
                        {"ranks", by(&RegulationReader::read_ranks)},
                        {"service", by(&RegulationReader::read_service)},
                        {"orders of dress", blocks(it.orders)}},
                       {nullptr, &it.grounds},
                       context_);
    }

    SpecifiedRegulation take() { return std::move(regulation_); }

  private:
    void read_must_decide(const TreeEntry& entry) {
        for (const WrittenText& key : read_texts(entry, limits::kLineCharacters, context_)) {
            if (const auto id = find_property(key.text)) {
                regulation_.must_decide.emplace_back(*id, key.span);
                continue;
            }
            Diagnostic& problem = context_.to.error(
                "read.unknown-property", key.span, shown(key.text) + " is not a property");
            if (const auto near = nearest_property(key.text)) {
                problem.hints.push_back("did you mean " + quoted(*near) + "?");
            } else {
                problem.hints.emplace_back("write a group and a name, such as 'coat.cloth'");
            }
        }
    }

    void read_everyone(const TreeEntry& entry) {
        read_block(entry, regulation_.everyone, context_);
    }

    void read_blocks(const TreeEntry& entry, std::vector<NamedBlock>& into) {
        read_named(entry, context_, [&](const WrittenText& name, const TreeEntry& part) {
            NamedBlock block;
            block.name = name;
            read_record(part,
                        Record::named_block,
                        shown(name.text),
                        {{"title", &block.title}, {"means", &block.means}},
                        {&block.wear, nullptr},
                        context_);
            into.push_back(std::move(block));
        });
    }

    void read_series(const TreeEntry& entry) {
        read_list(entry, context_, [&](const Item& item) {
            SeriesColour colour;
            const auto regiments = [&](const TreeEntry& part) {
                read_list(part, context_, [&](const Item& place) {
                    read_place(place, colour.regiments);
                });
            };
            read_record(item,
                        Record::series,
                        "a colour of the series",
                        {{"colour", &colour.colour},
                         {"class", &colour.corps_class},
                         {"alike", &colour.alike},
                         {"regiments", regiments}},
                        {nullptr, &colour.grounds},
                        context_);
            regulation_.series.push_back(std::move(colour));
        });
    }

    void read_place(const Item& item, std::vector<SeriesPlace>& into) {
        if (++places_ > limits::kRecords) {
            if (places_ == limits::kRecords + 1) {
                context_.to
                    .error("read.too-many",
                           head_of(item),
                           "the series holds more regiments than any army had")
                    .hints.push_back("write at most " + std::to_string(limits::kRecords));
            }
            return;
        }
        SeriesPlace place;
        place.span = head_of(item);
        std::optional<std::pair<int, Span>> number;
        read_record(item,
                    Record::place,
                    "a place in the series",
                    {{"number", &number},
                     {"name", &place.name},
                     {"shows", &place.shows},
                     {"buttons", &place.buttons}},
                    {},
                    context_);
        if (number) {
            place.number = number->first;
            place.span = number->second;
        }
        into.push_back(std::move(place));
    }

    void read_rules(const TreeEntry& entry) {
        read_list(entry, context_, [&](const Item& item) { read_rule(item); });
    }

    void read_rule(const Item& item) {
        Rule rule;
        rule.span = head_of(item);
        Grounds own;
        const auto when = [&](const TreeEntry& part) {
            QuestionReader(rule.when, context_).read(part);
        };
        const auto unless = [&](const TreeEntry& part) {
            QuestionReader(rule.unless, context_).read(part);
        };
        const auto wear = [&](const TreeEntry& part) { read_block(part, rule.wear, context_); };
        read_record(item,
                    Record::rule,
                    "a rule",
                    {{"name", &rule.name}, {"when", when}, {"unless", unless}, {"wear", wear}},
                    {nullptr, &own},
                    context_);
        add_missing(rule.wear.grounds, own);
        if (rule.name) {
            rule_names_.add(*rule.name);
        }
        regulation_.rules.push_back(std::move(rule));
    }

    void read_companies(const TreeEntry& entry) {
        read_named(entry, context_, [&](const WrittenText& name, const TreeEntry& part) {
            Company company;
            NamedBlock& block = company.block;
            block.name = name;
            std::optional<std::pair<int, Span>> men;
            read_record(part,
                        Record::company,
                        shown(name.text),
                        {{"title", &block.title}, {"means", &block.means}, {"men", &men}},
                        {&block.wear, nullptr},
                        context_);
            if (men) {
                company.men = men->first;
            }
            regulation_.companies.push_back(std::move(company));
        });
    }

    void read_battalions(const TreeEntry& entry) {
        read_list(entry, context_, [&](const Item& item) {
            Battalion battalion;
            const auto companies = [&](const TreeEntry& part) { read_numbers(part, battalion); };
            read_record(item,
                        Record::battalion,
                        "a battalion",
                        {{"name", &battalion.name}, {"companies", companies}},
                        {},
                        context_);
            if (!battalion.name.text.empty()) {
                battalion_names_.add(battalion.name);
            }
            regulation_.battalions.push_back(std::move(battalion));
        });
    }

    void read_numbers(const TreeEntry& entry, Battalion& battalion) {
        const int most = find_key(Record::battalion, entry.key)->most;
        read_named(entry, context_, [&](const WrittenText& name, const TreeEntry& part) {
            if (const auto number = read_number(part, most, context_)) {
                battalion.companies.emplace_back(name, number->first);
            }
        });
    }

    void read_ranks(const TreeEntry& entry) {
        read_named(entry, context_, [&](const WrittenText& name, const TreeEntry& part) {
            Rank rank;
            NamedBlock& block = rank.block;
            block.name = name;
            read_record(part,
                        Record::rank,
                        shown(name.text),
                        {{"title", &block.title},
                         {"means", &block.means},
                         {"like", &rank.like},
                         {"officer", &rank.officer}},
                        {&block.wear, nullptr},
                        context_);
            regulation_.ranks.push_back(std::move(rank));
        });
    }

    void read_service(const TreeEntry& entry) {
        read_list(entry, context_, [&](const Item& item) {
            ServiceStep step;
            step.span = head_of(item);
            std::optional<WrittenYears> at_least;
            std::optional<WrittenYears> more_than;
            const std::size_t errors = context_.to.error_count();
            read_record(item,
                        Record::service_step,
                        "a step of service",
                        {{"at least", &at_least}, {"more than", &more_than}, {"rank", &step.ranks}},
                        {&step.wear, nullptr},
                        context_);
            if (at_least.has_value() == more_than.has_value() &&
                context_.to.error_count() == errors && context_.complete) {
                context_.to
                    .error("read.missing-key",
                           step.span,
                           "a step of service begins either 'at least' or 'more than' so many "
                           "years")
                    .hints.emplace_back("write at least: 8 years");
            }
            const auto& years = more_than ? more_than : at_least;
            step.years = years ? years->years : 0;
            step.more_than = more_than.has_value();
            step.span = years ? years->span : step.span;
            regulation_.service.push_back(std::move(step));
        });
    }

    const ReadContext& context_;
    SpecifiedRegulation regulation_;
    /// Regiments of the series, of whatever colour.
    std::size_t places_ = 0;
    Names rule_names_;
    Names battalion_names_;
};

}  // namespace

std::optional<SpecifiedRegulation> read_regulation(const SourceMap& sources,
                                                   FileId file,
                                                   Diagnostics& to) {
    const std::size_t errors = to.error_count();
    const auto root = read_tree(sources, file, to);
    const ReadContext context{sources, file, to, to.error_count() == errors};
    RegulationReader reader(context);
    if (root) {
        reader.read(*root);
    }
    return to.error_count() == errors ? std::optional(reader.take()) : std::nullopt;
}

}  // namespace platewright
