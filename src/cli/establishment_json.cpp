// SPDX-License-Identifier: MIT
// A regulation as an establishment, for scripts.

#include "cli/establishment.h"
#include "cli/json_value.h"
#include "resolve/checks.h"
#include "resolve/man.h"
#include "resolve/statements.h"

namespace platewright::cli {
namespace {

Json day(const std::optional<WrittenDate>& date) {
    return date ? Json(to_string(date->date)) : Json();
}

template <typename T>
Json number_or_null(const std::optional<T>& number) {
    return number ? Json(*number) : Json();
}

Json named(const Entry& entry) {
    const Named named = entry.named();
    return {{"name", named.name},
            {"title", text_or_null(named.title)},
            {"means", text_or_null(named.means)}};
}

template <typename T>
Json entries(const std::vector<T>& all) {
    Json array = Json::array();
    for (const T& each : all) {
        array.push_back(named(each));
    }
    return array;
}

/// What can be seen of any man of the regiment, by property.
Json regiment_of(const Uniform& man) {
    Json object = {{"number", number_or_null(man.facts.number)},
                   {"regiment", text_or_null(man.facts.regiment)},
                   {"class", text_or_null(man.facts.corps_class.name)}};
    Json look = Json::object();
    for (PropertyId id = 0; id < properties().size(); ++id) {
        if (man.speaks(id)) {
            look[std::string(properties()[id].key)] = man.word(id);
        }
    }
    object["look"] = std::move(look);
    return object;
}

Json wear_of(const Block& block) {
    Json object = Json::object();
    for (const auto& [id, written] : block.values) {
        object[std::string(properties()[id].key)] = written_form(written.value);
    }
    return object;
}

Json rules_of(const InForce& law) {
    Json array = Json::array();
    for (const RuleInForce& each : law.rules) {
        array.push_back({{"name", text_or_null(text_of(each.rule->name))},
                         {"wear", wear_of(each.rule->wear)},
                         {"why", text_or_null(text_of(each.rule->wear.grounds.why))}});
    }
    return array;
}

Json battalions_of(const InForce& law, const Establishment& sum) {
    Json array = Json::array();
    for (std::size_t i = 0; i < sum.battalions.size(); ++i) {
        Json companies = Json::object();
        for (const auto& [name, number] : law.battalions[i]->companies) {
            companies[name.text] = number;
        }
        array.push_back({{"name", sum.battalions[i].name},
                         {"companies", std::move(companies)},
                         {"men", number_or_null(sum.battalions[i].men)}});
    }
    return array;
}

Json companies_of(const InForce& law) {
    Json array = Json::array();
    for (const CompanyEntry& each : law.companies) {
        array.push_back(named(each));
        array.back()["men"] = number_or_null(each.men);
    }
    return array;
}

Json ranks_of(const InForce& law) {
    Json array = Json::array();
    for (const RankEntry& each : law.ranks) {
        array.push_back(named(each));
        array.back()["officer"] = each.officer;
        array.back()["like"] = each.like != nullptr ? Json(each.like->text) : Json();
    }
    return array;
}

Json service_of(const InForce& law) {
    Json array = Json::array();
    for (const ServiceInForce& each : law.service) {
        array.push_back({{"years", each.step->years},
                         {"more than", each.step->more_than},
                         {"wear", wear_of(each.step->wear)}});
    }
    return array;
}

}  // namespace

std::string establishment_in_json(const std::vector<SpecifiedRegulation>& editions,
                                  const Regiments& regiments) {
    std::vector<const SpecifiedRegulation*> all;
    all.reserve(editions.size());
    for (const SpecifiedRegulation& edition : editions) {
        all.push_back(&edition);
    }
    const InForce law = overlay(all, std::nullopt);
    const Establishment sum = establishment_of(law);
    Json object = Json::object();
    object["regulations"] = Json::array();
    for (const SpecifiedRegulation& edition : editions) {
        object["regulations"].push_back(
            {{"title", edition.title.text},
             {"in force from", day(edition.in_force_from)},
             {"until", day(edition.until)},
             {"source", text_or_null(text_of(edition.grounds.source))}});
    }
    object["classes"] = entries(law.classes);
    object["regiments"] = Json::array();
    for (const Uniform& man : regiments) {
        object["regiments"].push_back(regiment_of(man));
    }
    object["rules"] = rules_of(law);
    object["companies"] = companies_of(law);
    object["battalions"] = battalions_of(law, sum);
    object["men"] = law.battalions.empty() ? Json() : number_or_null(sum.men);
    object["strength"] = law.strength ? Json(law.strength->first) : Json();
    object["ranks"] = ranks_of(law);
    object["service"] = service_of(law);
    object["orders of dress"] = entries(law.orders);
    return object.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace platewright::cli
