// SPDX-License-Identifier: MIT
// The stage as text, for people and golden tests.
#include <array>
#include <cstdio>
#include <string>
#include <variant>

#include "base/text.h"
#include "read/read.h"
#include "vocabulary/records.h"

namespace platewright {
namespace {

struct Show {
    std::string operator()(None /*none*/) const { return "none"; }

    std::string operator()(const std::string& text) const { return text; }

    std::string operator()(int number) const { return std::to_string(number); }

    std::string operator()(const Measure& measure) const {
        return measure.printed + " (" + format_number(measure.mm, 4) + " mm)";
    }
};

std::string show(const Date& date) {
    std::array<char, 40> text{};
    const int length =
        std::snprintf(text.data(), text.size(), "%04d-%02d-%02d", date.year, date.month, date.day);
    return {text.data(), static_cast<std::size_t>(length)};
}

std::string show_years(double years, bool more_than) {
    constexpr int decimals = 2;
    return (more_than ? "more than " : "at least ") + format_number(years, decimals);
}

std::string_view fact_word(const Asked& asked) {
    switch (asked.fact) {
        case Asked::Fact::property:
            return properties()[asked.property].key;
        case Asked::Fact::corps_class:
            return "class";
        case Asked::Fact::regiment:
            return "regiment";
        case Asked::Fact::company:
            return "company";
        case Asked::Fact::rank:
            return "rank";
        case Asked::Fact::order:
            return "order of dress";
        case Asked::Fact::years:
            return "years of service";
    }
    return {};
}

/// Lines, each under the heading of the record it stands in.
class Dump {
  public:
    explicit Dump(const SourceMap& sources) : sources_(sources) {}

    /// Under this heading from here to the end of the returned value's life.
    class Heading {
      public:
        Heading(Dump& dump, std::string_view name) : dump_(dump), before_(dump.heading_) {
            dump.heading_ += std::string(name) + " / ";
        }

        Heading(const Heading&) = delete;
        Heading& operator=(const Heading&) = delete;

        ~Heading() { dump_.heading_ = std::move(before_); }

      private:
        Dump& dump_;
        std::string before_;
    };

    void line(std::string_view key, std::string_view value, const std::optional<Span>& span) {
        text_ += heading_ + std::string(key) + " = " + std::string(value);
        text_ += (span ? place_of(*span) : "") + "\n";
    }

    /// A name is told even where nothing is said of it.
    void name(const WrittenText& name) {
        text_ += heading_ + name.text + place_of(name.span) + "\n";
    }

    void line(std::string_view key, const std::optional<WrittenText>& text) {
        if (text) {
            line(key, text->text, text->span);
        }
    }

    void line(std::string_view key, const std::optional<WrittenDate>& date) {
        if (date) {
            line(key, show(date->date), date->span);
        }
    }

    void line(std::string_view key, const std::optional<std::pair<int, Span>>& number) {
        if (number) {
            line(key, std::to_string(number->first), number->second);
        }
    }

    void lines(std::string_view key, const std::vector<WrittenText>& texts) {
        for (const WrittenText& text : texts) {
            line(key, text);
        }
    }

    void values(const WrittenValues& values) {
        for (const auto& [id, written] : values) {
            line(properties()[id].key, std::visit(Show{}, written.value), written.span);
        }
    }

    void grounds(const Grounds& grounds) {
        line("source", grounds.source);
        if (grounds.certainty) {
            line("certainty", certainty_word(*grounds.certainty), std::nullopt);
        }
        line("why", grounds.why);
        for (const OtherSource& other : grounds.other_sources) {
            const Heading under(*this, "other source");
            line("source", other.source);
            line("says", other.says);
        }
    }

    void group_grounds(const std::map<std::string, Grounds>& by_group) {
        for (const auto& [group, its] : by_group) {
            const Heading under(*this, group);
            grounds(its);
        }
    }

    void block(const Block& block) {
        values(block.values);
        group_grounds(block.group_grounds);
        grounds(block.grounds);
    }

    void named(const NamedBlock& named) {
        line("title", named.title);
        line("means", named.means);
        block(named.wear);
    }

    void named(std::string_view key, const std::vector<NamedBlock>& blocks) {
        const Heading under(*this, key);
        for (const NamedBlock& each : blocks) {
            name(each.name);
            const Heading of(*this, each.name.text);
            named(each);
        }
    }

    void departures(const std::vector<Departure>& departures) {
        std::size_t number = 0;
        for (const Departure& departure : departures) {
            const Heading under(*this, "departure " + std::to_string(++number));
            line("instead of", departure.instead_of);
            lines("company", departure.companies);
            lines("rank", departure.ranks);
            lines("order of dress", departure.orders);
            line("from", departure.from);
            line("until", departure.until);
            block(departure.wear);
        }
    }

    std::string take() { return std::move(text_); }

  private:
    [[nodiscard]] std::string place_of(const Span& span) const {
        const SourceMap::Place place = sources_.place(span.file, span.begin);
        return "   @" + std::to_string(place.line) + ":" + std::to_string(place.column);
    }

    const SourceMap& sources_;
    std::string heading_;
    std::string text_;
};

void dump_series(const std::vector<SeriesColour>& series, Dump& to) {
    for (const SeriesColour& colour : series) {
        const Dump::Heading under(to, "series / " + colour.colour.text);
        to.line("class", colour.corps_class);
        to.grounds(colour.grounds);
        for (const SeriesPlace& place : colour.regiments) {
            to.line("number", std::to_string(place.number), place.span);
            const Dump::Heading of(to, std::to_string(place.number));
            to.line("name", place.name);
            to.line("shows", place.shows);
            to.line("buttons", place.buttons);
        }
    }
}

void dump_questions(std::string_view key, const std::vector<Asked>& questions, Dump& to) {
    const Dump::Heading under(to, key);
    for (const Asked& asked : questions) {
        if (asked.fact == Asked::Fact::years) {
            to.line(fact_word(asked), show_years(asked.years, asked.more_than), asked.span);
        }
        to.lines(fact_word(asked), asked.words);
    }
}

void dump_rules(const std::vector<Rule>& rules, Dump& to) {
    std::size_t number = 0;
    for (const Rule& rule : rules) {
        const Dump::Heading under(to, "rule " + std::to_string(++number));
        to.line("name", rule.name);
        dump_questions("when", rule.when, to);
        dump_questions("unless", rule.unless, to);
        to.block(rule.wear);
    }
}

void dump_companies(const SpecifiedRegulation& regulation, Dump& to) {
    for (const Company& company : regulation.companies) {
        const Dump::Heading under(to, "companies");
        to.name(company.block.name);
        const Dump::Heading of(to, company.block.name.text);
        if (company.men) {
            to.line("men", std::to_string(*company.men), std::nullopt);
        }
        to.named(company.block);
    }
    for (const Battalion& battalion : regulation.battalions) {
        const Dump::Heading under(to, "battalions / " + battalion.name.text);
        for (const auto& [name, number] : battalion.companies) {
            to.line(name.text, std::to_string(number), name.span);
        }
    }
    to.line("strength", regulation.strength);
}

void dump_ranks(const SpecifiedRegulation& regulation, Dump& to) {
    for (const Rank& rank : regulation.ranks) {
        const Dump::Heading under(to, "ranks");
        to.name(rank.block.name);
        const Dump::Heading of(to, rank.block.name.text);
        to.line("like", rank.like);
        if (rank.officer) {
            to.line("officer", "yes", std::nullopt);
        }
        to.named(rank.block);
    }
    for (const ServiceStep& step : regulation.service) {
        const Dump::Heading under(to, "service / " + show_years(step.years, step.more_than));
        to.lines("rank", step.ranks);
        to.block(step.wear);
    }
}

void dump_place_of_man(const SpecifiedPlate& plate, Dump& to) {
    constexpr int decimals = 2;
    to.line("regiment", plate.regiment);
    to.line("regulation", plate.regulation);
    to.line("class", plate.corps_class);
    to.line("company", plate.company);
    to.line("rank", plate.rank);
    if (const auto& service = plate.years_of_service) {
        to.line("years of service", format_number(service->years, decimals), service->span);
    }
    to.line("order of dress", plate.order_of_dress);
    to.line("as of", plate.as_of);
    if (plate.as_ordered) {
        to.line("worn", "as ordered", std::nullopt);
    }
}

void dump_language(const std::optional<Language>& language, Dump& to) {
    if (language) {
        to.line("language", std::string(language_code(*language)), std::nullopt);
    }
}

void dump_words(std::string_view title, const SheetWords& words, Dump& to) {
    to.line(title, words.title);
    to.line("subtitle", words.subtitle);
    to.line("drawn by", words.drawn_by);
    to.line("source", words.source);
    to.lines("notes", words.notes);
    dump_language(words.language, to);
}

/// The word of a choice by its number.
std::string_view chosen(Record record, std::string_view key, std::size_t number) {
    return words_of(*find_key(record, key))[number];
}

void dump_kit(const KitItem& item, Dump& to) {
    const Dump::Heading under(to, "kit");
    to.name(item.item);
    const Dump::Heading of(to, item.item.text);
    if (item.stage) {
        const auto number = static_cast<std::size_t>(*item.stage);
        to.line("when", chosen(Record::kit_item, "when", number), std::nullopt);
    }
    if (item.way) {
        const auto number = static_cast<std::size_t>(*item.way);
        to.line("way", chosen(Record::kit_item, "way", number), std::nullopt);
    }
    to.line("quantity", item.quantity);
    to.line("material", item.material);
    to.line("cost", item.cost);
    to.line("from", item.from);
    to.line("source", item.source);
    to.line("note", item.note);
}

}  // namespace

std::string dump(const SpecifiedPlate& plate, const SourceMap& sources) {
    Dump to(sources);
    to.line("plate", plate.title);
    to.line("subtitle", plate.subtitle);
    to.line("year", plate.year);
    to.line("drawn by", plate.drawn_by);
    to.line("source", plate.source);
    to.lines("notes", plate.notes);
    dump_language(plate.language, to);
    to.line("figure", plate.figure);
    to.lines("views", plate.views);
    to.lines("details", plate.details);
    if (plate.callouts) {
        to.line("callouts", "yes", std::nullopt);
    }
    dump_place_of_man(plate, to);
    to.values(plate.values);
    to.group_grounds(plate.group_grounds);
    to.departures(plate.departures);
    return to.take();
}

std::string dump(const SpecifiedRegulation& regulation, const SourceMap& sources) {
    Dump to(sources);
    to.line("regulation", regulation.title);
    to.line("in force from", regulation.in_force_from);
    to.line("until", regulation.until);
    to.line("amends", regulation.amends);
    to.grounds(regulation.grounds);
    for (const auto& [id, span] : regulation.must_decide) {
        to.line("must decide", properties()[id].key, span);
    }
    {
        const Dump::Heading under(to, "everyone");
        to.block(regulation.everyone);
    }
    to.named("classes", regulation.classes);
    to.named("shows", regulation.shows);
    dump_series(regulation.series, to);
    dump_rules(regulation.rules, to);
    dump_companies(regulation, to);
    dump_ranks(regulation, to);
    to.named("orders of dress", regulation.orders);
    return to.take();
}

std::string dump(const SpecifiedRegiment& regiment, const SourceMap& sources) {
    Dump to(sources);
    to.line("regiment", regiment.name);
    to.lines("regulation", regiment.regulations);
    to.line("number", regiment.number);
    to.line("class", regiment.corps_class);
    to.block(regiment.wear);
    to.departures(regiment.departures);
    return to.take();
}

std::string dump(const SpecifiedComparison& sheet, const SourceMap& sources) {
    Dump to(sources);
    dump_words("comparison", sheet.words, to);
    to.lines("men", sheet.men);
    to.lines("views", sheet.views);
    return to.take();
}

std::string dump(const SpecifiedHandout& sheet, const SourceMap& sources) {
    Dump to(sources);
    dump_words("handout", sheet.words, to);
    to.line("man", sheet.man);
    {
        const Dump::Heading under(to, "unit");
        to.line("name", sheet.unit.name);
        to.lines("contact", sheet.unit.contact);
        to.lines("notes", sheet.unit.notes);
    }
    for (const KitItem& item : sheet.kit) {
        dump_kit(item, to);
    }
    to.lines("orders of dress", sheet.orders);
    to.lines("putting on", sheet.putting_on);
    to.lines("care", sheet.care);
    to.lines("cautions", sheet.cautions);
    return to.take();
}

std::string dump(const SpecifiedChart& sheet, const SourceMap& sources) {
    Dump to(sources);
    dump_words("chart", sheet.words, to);
    to.line("of", chosen(Record::chart, "of", static_cast<std::size_t>(sheet.of)), std::nullopt);
    to.line("regulation", sheet.regulation);
    to.line("regiment", sheet.regiment);
    to.line("company", sheet.company);
    to.line("rank", sheet.rank);
    to.line("as of", sheet.as_of);
    to.lines("palettes", sheet.palettes);
    return to.take();
}

std::string dump(const SpecifiedWorkshop& sheet, const SourceMap& sources) {
    Dump to(sources);
    dump_words("workshop", sheet.words, to);
    to.line("man", sheet.man);
    to.lines("garments", sheet.garments);
    to.lines("sheets", sheet.sheets);
    to.line("scale", sheet.scale == 0 ? "" : "1:" + std::to_string(sheet.scale), std::nullopt);
    to.line("size", sheet.size);
    for (const BodyRow& row : body_rows()) {
        if (const auto& length = sheet.body[static_cast<std::size_t>(row.measure)]) {
            to.line(row.name, length->measure.printed, length->span);
        }
    }
    if (sheet.allowance) {
        to.line("seam allowance", sheet.allowance->measure.printed, sheet.allowance->span);
    }
    if (sheet.cloth_width) {
        to.line("cloth width", sheet.cloth_width->measure.printed, sheet.cloth_width->span);
    }
    if (sheet.whole_garments) {
        to.line("whole garments", "yes", std::nullopt);
    }
    return to.take();
}

}  // namespace platewright
