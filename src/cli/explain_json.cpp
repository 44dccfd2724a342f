// SPDX-License-Identifier: MIT
// Decisions for scripts.

#include "cli/explain.h"
#include "cli/json.h"
#include "cli/json_value.h"

namespace platewright::cli {
namespace {

Json named(const Named& named) {
    if (named.name.empty()) {
        return {};
    }
    return {{"name", named.name},
            {"title", text_or_null(named.title)},
            {"means", text_or_null(named.means)}};
}

Json day(const std::optional<Date>& date) {
    return date ? Json(to_string(*date)) : Json();
}

Json facts_of(const Uniform& man) {
    const Facts& facts = man.facts;
    Json object = Json::object();
    object["regulations"] = Json::array();
    for (const NamedRegulation& each : facts.regulations) {
        object["regulations"].push_back({{"title", each.title},
                                         {"source", text_or_null(each.source)},
                                         {"in force from", day(each.in_force_from)}});
    }
    object["regiment"] = text_or_null(facts.regiment);
    object["number"] = facts.number ? Json(*facts.number) : Json();
    object["class"] = named(facts.corps_class);
    object["company"] = named(facts.company);
    object["rank"] = named(facts.rank.name.empty() ? Named{man.rank, {}, {}} : facts.rank);
    object["officer"] = facts.officer;
    object["years of service"] = facts.years_of_service ? Json(*facts.years_of_service) : Json();
    object["order of dress"] = named(facts.order_of_dress);
    object["day"] = day(facts.day);
    object["worn"] = facts.as_ordered ? "as ordered" : "as worn";
    return object;
}

Json decision_of(const Told& each, const SourceMap& sources) {
    const Decision& decision = *each.decision;
    Json object = Json::object();
    object["strength"] = strength_name(decision.strength);
    object["who"] = decision.reason;
    object["written"] = decision.as_written;
    object["value"] = each.value;
    const bool placed = decision.span.has_value();
    const SourceMap::Place at =
        placed ? sources.place(decision.span->file, decision.span->begin) : SourceMap::Place{};
    object["file"] = placed ? Json(sources.name(decision.span->file)) : Json();
    object["line"] = placed ? Json(at.line) : Json();
    object["column"] = placed ? Json(at.column) : Json();
    object["source"] = text_or_null(decision.source);
    object["certainty"] = decision.certainty ? Json(certainty_word(*decision.certainty)) : Json();
    object["why"] = text_or_null(decision.why);
    object["departure"] = decision.departure;
    object["instead of"] = text_or_null(decision.instead_of);
    object["other sources"] = Json::array();
    for (const OtherOpinion& other : decision.other_sources) {
        object["other sources"].push_back(
            {{"source", other.source}, {"says", text_or_null(other.says)}});
    }
    return object;
}

Json property_of(const Uniform& man, PropertyId id, const SourceMap& sources) {
    Json object = Json::object();
    object["property"] = properties()[id].key;
    object["value"] = man.word(id);
    const Material* material = man.material(id);
    object["colour"] = material != nullptr ? Json(to_hex(material->colour)) : Json();
    const auto* length = std::get_if<Measure>(&man.value(id));
    object["mm"] = length != nullptr ? Json(length->mm) : Json();
    object["seen"] = man.speaks(id);
    object["decisions"] = Json::array();
    for (const Told& each : told(man.decided[id])) {
        object["decisions"].push_back(decision_of(each, sources));
    }
    return object;
}

}  // namespace

std::string decisions_in_json(const Uniform& man,
                              const std::vector<PropertyId>& asked,
                              const SourceMap& sources) {
    Json object = Json::object();
    object["plate"] = text_or_null(man.title);
    object["facts"] = facts_of(man);
    object["properties"] = Json::array();
    for (const PropertyId id : asked) {
        object["properties"].push_back(property_of(man, id, sources));
    }
    return object.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace platewright::cli
