// SPDX-License-Identifier: MIT
// The JSON Schema and the reference page hold every row of the table.
#include "vocabulary/schema.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <nlohmann/json.hpp>
#include <regex>

#include "vocabulary/measure.h"
#include "vocabulary/phrases.h"
#include "vocabulary/property.h"
#include "vocabulary/records.h"

namespace platewright {
namespace {

using Json = nlohmann::ordered_json;

/// The full form of a group in the schema.
Json full_form(const Json& schema, std::string_view group) {
    const Json& place = schema.at("$defs").at("group-" + std::string(group));
    return place.contains("anyOf") ? place.at("anyOf").back() : place;
}

TEST(JsonSchema, IsOfTheDraftEditorsKnow) {
    const Json schema = Json::parse(json_schema());
    EXPECT_EQ(schema.at("$schema"), "https://json-schema.org/draft/2020-12/schema");
    const Json& plate = schema.at("$defs").at("a-plate");
    EXPECT_EQ(plate.at("anyOf").at(0).at("required"), Json::array({"plate"}));
    EXPECT_EQ(plate.at("additionalProperties"), false);
}

TEST(JsonSchema, HasEveryPropertyWithItsMeaning) {
    const Json schema = Json::parse(json_schema());
    for (const Property& row : properties()) {
        const Json form = full_form(schema, row.group());
        ASSERT_TRUE(form.at("properties").contains(std::string(row.name()))) << row.key;
        const Json& value = form.at("properties").at(std::string(row.name()));
        EXPECT_EQ(value.at("description"), std::string(row.meaning)) << row.key;
        EXPECT_EQ(form.at("additionalProperties"), false) << row.key;
    }
}

TEST(JsonSchema, HasNoKeyThatIsNotInTheTables) {
    const Json all = Json::parse(json_schema()).at("$defs");
    EXPECT_EQ(all.at("a-plate").at("properties").size(),
              groups().size() + keys_of(Record::plate).size() - 1);
    EXPECT_EQ(all.at("a-regulation").at("properties").size(), keys_of(Record::regulation).size());
    std::size_t names = 0;
    for (const std::string_view group : groups()) {
        const Json form = full_form(Json::parse(json_schema()), group);
        names += form.at("properties").size() - keys_of(Record::grounds).size();
    }
    EXPECT_EQ(names, properties().size());
}

TEST(JsonSchema, TellsTheKindsOfFileByTheirKeys) {
    const std::array keys = {
        "plate", "comparison", "handout", "chart", "workshop", "regiment", "regulation"};
    Json kind = Json::parse(json_schema());
    for (const char* key : keys) {
        EXPECT_EQ(kind.at("if").at("required"), Json::array({key}));
        const std::string name = key == std::string("workshop") ? "workshop-sheet" : key;
        EXPECT_EQ(kind.at("then"), Json({{"$ref", "#/$defs/a-" + name}})) << key;
        kind = Json(kind.at("else"));
    }
    EXPECT_EQ(kind, Json::parse(R"({"$ref": "#/$defs/a-plate"})"));
}

TEST(JsonSchema, HasEveryKeyOfEveryRecord) {
    const Json all = Json::parse(json_schema()).at("$defs");
    for (const RecordRow& row : record_rows()) {
        std::string name(row.called);
        std::ranges::replace(name, ' ', '-');
        const Json& group = row.or_text ? all.at(name).at("anyOf").back() : all.at(name);
        for (const Key* key : keys_of(row.record)) {
            ASSERT_TRUE(group.at("properties").contains(std::string(key->key))) << key->key;
        }
    }
}

TEST(JsonSchema, OffersShortFormsOnlyWhereThereAreSome) {
    const Json all = Json::parse(json_schema()).at("$defs");
    EXPECT_FALSE(all.at("group-figure").contains("anyOf"));
    EXPECT_EQ(all.at("group-pockets").at("anyOf").size(), 2U);
    EXPECT_EQ(all.at("group-collar").at("anyOf").size(), 3U);
}

TEST(JsonSchema, GivesWordsRangesAndNone) {
    const Json schema = Json::parse(json_schema());
    const Json collar = full_form(schema, "collar").at("properties").at("shape");
    EXPECT_EQ(collar.at("enum"),
              Json::array({"falling",
                           "standing",
                           "stand-and-fall",
                           "turned-down",
                           "upright",
                           "high-turned-down",
                           "none"}));
    const Json buttons = full_form(schema, "cuffs").at("properties").at("buttons");
    EXPECT_EQ(buttons.at("default"), 3);
    EXPECT_EQ(buttons.at("anyOf").at(0),
              Json::parse(R"({"type": "integer", "minimum": 0, "maximum": 6})"));
    EXPECT_EQ(buttons.at("anyOf").at(1), Json::parse(R"({"$ref": "#/$defs/none"})"));
}

bool matches(const Json& schema, const std::string& definition, const std::string& text) {
    const std::string pattern = schema.at("$defs").at(definition).at("pattern");
    return std::regex_search(text, std::regex(pattern));
}

TEST(JsonSchema, KnowsTheLookOfColoursAndLengths) {
    const Json schema = Json::parse(json_schema());
    for (const char* good : {"red", "#28385f", "as lapels.cloth"}) {
        EXPECT_TRUE(matches(schema, "colour", good)) << good;
    }
    for (const char* bad : {"", "#28385", "#28385f0"}) {
        EXPECT_FALSE(matches(schema, "colour", bad)) << bad;
    }
    for (const char* good : {"12 mm", "3 1/2 in", "3,5cm", "2 Zoll rhineland", "½ in"}) {
        EXPECT_TRUE(matches(schema, "length", good)) << good;
    }
    for (const char* bad : {"", "12", "mm", "3 1/2", "-3 mm"}) {
        EXPECT_FALSE(matches(schema, "length", bad)) << bad;
    }
}

TEST(ReferencePage, HasEveryRowAndUnit) {
    const std::string page = reference_page();
    for (const Property& row : properties()) {
        EXPECT_NE(page.find("| `" + std::string(row.name()) + "` | "), std::string::npos)
            << row.key;
        EXPECT_NE(page.find("| " + std::string(row.meaning) + " |\n"), std::string::npos)
            << row.key;
    }
    for (const std::string_view group : groups()) {
        EXPECT_NE(page.find("\n## " + std::string(group) + "\n"), std::string::npos) << group;
    }
    for (const LengthUnit& unit : length_units()) {
        EXPECT_NE(page.find("\n| `" + std::string(unit.name) + "` | "), std::string::npos);
    }
}

TEST(ReferencePage, HasEveryRecordAndPhrase) {
    const std::string page = reference_page();
    for (const RecordRow& row : record_rows()) {
        for (const Key& key : row.keys) {
            EXPECT_NE(page.find("| `" + std::string(key.key) + "` | "), std::string::npos);
            EXPECT_NE(page.find("| " + std::string(key.meaning) + " |\n"), std::string::npos);
        }
    }
    for (const Phrase& phrase : phrases()) {
        EXPECT_NE(page.find("| `the " + std::string(phrase.words) + "` | "), std::string::npos);
    }
}

TEST(ReferencePage, ShowsHowAGroupIsWrittenShort) {
    const std::string page = reference_page();
    EXPECT_NE(
        page.find(
            "## collar\n\nShort form: `collar: red` for `cloth`, `collar: falling` for `shape`.\n"),
        std::string::npos);
    EXPECT_NE(
        page.find(
            "| `shape` | `falling` (or `turned-down`), `standing` (or `upright`), `stand-and-fall` "
            "(or `high-turned-down`), `none` | `falling` | "),
        std::string::npos);
    EXPECT_NE(page.find("## figure\n\n| key |"), std::string::npos);
}

}  // namespace
}  // namespace platewright
