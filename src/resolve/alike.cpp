// SPDX-License-Identifier: MIT
// Whether the series tells the regiments apart.
#include <map>

#include "base/text.h"
#include "resolve/checks.h"
#include "resolve/judge.h"
#include "resolve/man.h"
#include "resolve/rules.h"
#include "vocabulary/condition.h"

namespace platewright {

namespace {

constexpr std::string_view kNumber = "buttons.number";

/// What can be seen of a regiment, property by property, the number on its buttons apart.
struct Look {
    std::string seen;
    std::string number;
};

Look look_of(const PlaceInForce& place, const InForce& law, const ColourBook& colours) {
    Man man;
    man.law = &law;
    man.place = &place;
    man.number = place.number;
    man.regiment = place.name.text != nullptr ? place.name.text->text : std::string();
    man.corps_class = place.corps_class.text != nullptr
                          ? find_entry(law.classes, place.corps_class.text->text)
                          : nullptr;
    man.day = law.day;
    Diagnostics unheard;
    const std::vector<Verdict> dressed = judge_with_rules(
        statements_of(man), man, OfRegiment{nullptr, man.number}, colours, unheard);
    const auto word = [&](PropertyId id) {
        return dressed[id].value ? word_of(*dressed[id].value) : std::string("none");
    };
    Look look;
    for (PropertyId id = 0; id < properties().size(); ++id) {
        const Property& row = properties()[id];
        const bool matters = row.work != Work::none || row.kind == Kind::words;
        if (row.key == kNumber) {
            look.number = word(id);
        } else if (matters && speaks(id, word)) {
            look.seen += std::string(row.key) + "=" + word(id) + "\n";
        }
    }
    return look;
}

}  // namespace

void check_alike(const InForce& law, const ColourBook& colours, Diagnostics& to) {
    std::map<std::string, std::vector<std::pair<const PlaceInForce*, std::string>>> seen;
    for (const PlaceInForce& place : law.places) {
        Look look = look_of(place, law, colours);
        auto& alike = seen[look.seen];
        for (const auto& [other, number] : alike) {
            if (place.alike && other->alike) {
                continue;
            }
            const bool numbered = number != look.number;
            Diagnostic& problem =
                numbered ? to.warning("resolve.place-taken",
                                      place.span,
                                      "only the number on the buttons tells " + place.called() +
                                          " from " + other->called())
                         : to.error("resolve.place-taken",
                                    place.span,
                                    other->called() + " and " + place.called() + " come out alike");
            problem.labels.push_back({other->span, "the other one"});
            problem.hints.emplace_back(
                numbered ? "if that is meant, leave it; else give one another colour, button metal "
                           "or 'shows:'"
                         : "give one another colour, button metal or 'shows:', or write 'buttons: "
                           "{number: the regiment's number}' under 'everyone:'");
        }
        alike.emplace_back(&place, std::move(look.number));
    }
}

}  // namespace platewright
