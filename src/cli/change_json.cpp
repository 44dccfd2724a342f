// SPDX-License-Identifier: MIT
// The difference between two men for scripts.

#include "cli/change_words.h"
#include "cli/json_value.h"

namespace platewright::cli {
namespace {

/// What one man has of it; null where he has nothing.
Json value_of(const Uniform& man, PropertyId id) {
    return man.speaks(id) ? Json(man.word(id)) : Json();
}

Json change_of(const TwoMen& men, const Change& change) {
    Json object = Json::object();
    object["deed"] = deed_name(change.deed);
    object["thing"] = change.thing;
    object["words"] = change_in_words(men, change);
    object["comes with"] = text_or_null(change.comes_with);
    object["number"] = {{"from", number_of(men.before, change.head)},
                        {"to", number_of(men.after, change.head)}};
    object["properties"] = Json::array();
    for (const PropertyId id : change.properties) {
        object["properties"].push_back({{"property", properties()[id].key},
                                        {"from", value_of(men.before, id)},
                                        {"to", value_of(men.after, id)}});
    }
    return object;
}

}  // namespace

std::string comparison_in_json(const TwoMen& men, const Comparison& found) {
    Json object = Json::object();
    object["from"] = men.before.title;
    object["to"] = men.after.title;
    object["wish"] = text_or_null(men.wish);
    object["changes"] = Json::array();
    for (const Change& each : found.changes) {
        object["changes"].push_back(change_of(men, each));
    }
    object["stays"] = Json::array();
    for (const Kept& each : found.stays) {
        object["stays"].push_back({{"thing", each.thing}, {"on new", text_or_null(each.on_new)}});
    }
    return object.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace platewright::cli
