// SPDX-License-Identifier: MIT
// The tables of keys hang together.
#include "vocabulary/records.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <string>

#include "vocabulary/property.h"

namespace platewright {
namespace {

TEST(Records, HaveKeysThatDifferAndAreExplained) {
    for (const RecordRow& row : record_rows()) {
        std::set<std::string_view> seen;
        for (const Key* key : keys_of(row.record)) {
            EXPECT_TRUE(seen.insert(key->key).second) << row.called << ": " << key->key;
            EXPECT_FALSE(key->meaning.empty()) << row.called << ": " << key->key;
        }
    }
}

TEST(Records, ClashWithNoGroupButFigure) {
    for (const RecordRow& row : record_rows()) {
        for (const Key* key : keys_of(row.record)) {
            const bool is_group = std::ranges::find(groups(), key->key) != groups().end();
            EXPECT_EQ(row.groups && is_group, key->key == "figure") << key->key;
        }
    }
}

TEST(Records, GroundsClashWithNoNameInAGroup) {
    for (const Property& row : properties()) {
        EXPECT_EQ(find_key(Record::grounds, row.name()), nullptr) << row.key;
    }
}

TEST(Records, SayWhatTheirKeysHold) {
    for (const RecordRow& row : record_rows()) {
        for (const Key* key : keys_of(row.record)) {
            EXPECT_EQ(key->holds == Holds::choice, !key->choices.empty()) << key->key;
            const bool counted = key->holds == Holds::number || key->holds == Holds::numbers;
            EXPECT_EQ(counted, key->most > 0) << key->key;
        }
    }
}

TEST(Records, AreToldApartByTheirFirstKey) {
    EXPECT_EQ(record_row(Record::plate).keys.front().key, "plate");
    EXPECT_EQ(record_row(Record::regulation).keys.front().key, "regulation");
    EXPECT_EQ(record_row(Record::regiment).keys.front().key, "regiment");
}

}  // namespace
}  // namespace platewright
