// SPDX-License-Identifier: MIT
// The tree of a file: exact places, and nothing lost in silence.
#include "read/tree.h"

#include <gtest/gtest.h>

#include "support.h"

namespace platewright {
namespace {

Lines problems_of_tree(const std::string& text) {
    Reading reading(text);
    static_cast<void>(read_tree(reading.sources, reading.file, reading.problems));
    return reading.found();
}

/// Every key and value with the bytes its place covers, depth first.
void list(const Item& item, const Reading& reading, Lines& to) {
    if (item.form == Item::Form::text) {
        to.push_back("text " + reading.words(item.span));
    }
    if (item.form == Item::Form::nothing) {
        to.push_back("nothing at " + std::to_string(item.span.begin));
    }
    for (const TreeEntry& entry : item.entries) {
        to.push_back("key " + reading.words(entry.key_span));
        list(entry.value, reading, to);
    }
    for (const Item& part : item.items) {
        list(part, reading, to);
    }
}

Lines pieces(const std::string& text) {
    Reading reading(text);
    const auto root = read_tree(reading.sources, reading.file, reading.problems);
    Lines lines = reading.found();
    if (root) {
        list(*root, reading, lines);
    }
    return lines;
}

TEST(ReadTree, CoversWhatWasWrittenByteForByte) {
    EXPECT_EQ(
        pieces("a: b c\n\"d\" : 'it''s'\ne: \"q\\\"x\"\n"),
        (Lines{"key a", "text b c", "key \"d\"", "text 'it''s'", "key e", "text \"q\\\"x\""}));
}

TEST(ReadTree, CoversLettersOfSeveralBytes) {
    EXPECT_EQ(pieces("é: 漢字 ü\nb: {ö: \"ß\"}\n"),
              (Lines{"key é", "text 漢字 ü", "key b", "key ö", "text \"ß\""}));
}

TEST(ReadTree, CoversTextsOfSeveralLines) {
    EXPECT_EQ(
        pieces("a: one\n  two\nb: |\n  x\n  y\nc: \"p\n  q\"\n"),
        (Lines{
            "key a", "text one\n  two", "key b", "text |\n  x\n  y", "key c", "text \"p\n  q\""}));
}

TEST(ReadTree, KeepsPlacesBehindAByteOrderMarkAndWithWindowsLineEnds) {
    EXPECT_EQ(pieces("\xEF\xBB\xBF"
                     "a: b\r\nc: d\r\n"),
              (Lines{"key a", "text b", "key c", "text d"}));
}

TEST(ReadTree, PutsAnEmptyValueJustBehindItsColonOrDash) {
    EXPECT_EQ(pieces("a:\nb: [x]\nc:\n  -\n"),
              (Lines{"key a", "nothing at 2", "key b", "text x", "key c", "nothing at 16"}));
}

TEST(ReadTree, TellsPlainFromQuoted) {
    Reading reading("a: 12\nb: \"12\"\n");
    const auto root = read_tree(reading.sources, reading.file, reading.problems);
    ASSERT_TRUE(root);
    EXPECT_FALSE(root->entries[0].value.quoted);
    EXPECT_TRUE(root->entries[1].value.quoted);
}

TEST(ReadTree, CoversGroupsWithTheirBraces) {
    Reading reading("a: {b: c, d: [e, f]} # g }\n");
    const auto root = read_tree(reading.sources, reading.file, reading.problems);
    ASSERT_TRUE(root);
    const Item& group = root->entries[0].value;
    EXPECT_EQ(reading.words(group.span), "{b: c, d: [e, f]}");
    EXPECT_EQ(reading.words(group.entries[1].value.span), "[e, f]");
}

TEST(ReadTree, KeepsTheFirstOfRepeatedKeysAndNamesBothPlaces) {
    Reading reading("a: 1\nb: 2\na: 3\n");
    const auto root = read_tree(reading.sources, reading.file, reading.problems);
    ASSERT_TRUE(root);
    EXPECT_EQ(root->entries.size(), 2U);
    ASSERT_EQ(reading.problems.all().size(), 1U);
    const Diagnostic& problem = reading.problems.all().front();
    EXPECT_EQ(problem.code, "read.duplicate-key");
    EXPECT_EQ(problem.span->begin, 10U);
    ASSERT_EQ(problem.labels.size(), 1U);
    EXPECT_EQ(problem.labels.front().span.begin, 0U);
}

TEST(ReadTree, RefusesWhatTheParserDropsInSilence) {
    EXPECT_EQ(problems_of_tree("a: \"never closed\n"), Lines{"read.yaml 1:4"});
    EXPECT_EQ(problems_of_tree("a: b\nc:d\n"), Lines{"read.no-colon 2:1"});
    EXPECT_EQ(problems_of_tree("a: b\nword\n"), Lines{"read.no-colon 2:1"});
    EXPECT_EQ(problems_of_tree("a: b\rc: d\r"),
              (Lines{"read.control-character 1:5", "read.control-character 1:10"}));
    EXPECT_EQ(problems_of_tree("a: b\n...\nc: d\n"), Lines{"read.several-documents 2:1"});
    EXPECT_EQ(problems_of_tree("a: b\n--- c\n"), Lines{"read.several-documents 2:1"});
    EXPECT_EQ(problems_of_tree(" a: b\nc: d\n"), Lines{"read.yaml 2:1"});
    EXPECT_EQ(problems_of_tree("? a\n: b\n"), Lines{"read.yaml 1:1"});
    EXPECT_EQ(problems_of_tree("[a]: b\n"), Lines{"read.yaml 1:1"});
    EXPECT_EQ(problems_of_tree("a: {b, c: d}\n"), Lines{"read.no-colon 1:5"});
}

TEST(ReadTree, AcceptsWhatIsHarmless) {
    EXPECT_EQ(problems_of_tree("---\na: b\n"), Lines{});
    EXPECT_EQ(problems_of_tree("# remark\n--- # another\na: b\n...\n# end\n"), Lines{});
    EXPECT_EQ(problems_of_tree("a: b # c\n\t\n  # d\n"), Lines{});
    EXPECT_EQ(problems_of_tree("{a: b}\n"), Lines{});
}

TEST(ReadTree, RefusesReferencesAndTags) {
    EXPECT_EQ(problems_of_tree("a: &x b\nc: *x\n"), (Lines{"read.alias 1:4", "read.alias 2:4"}));
    EXPECT_EQ(problems_of_tree("a: *never\n"), Lines{"read.alias 1:4"});
    EXPECT_EQ(problems_of_tree("a: !!str b\nc: !d {e: f}\ng: ! h\n"),
              (Lines{"read.tag 1:4", "read.tag 2:4", "read.tag 3:4"}));
    EXPECT_EQ(problems_of_tree("a: &x [b, c, d]\n"), Lines{"read.alias 1:4"});
    EXPECT_EQ(problems_of_tree("a: &x\n"), Lines{"read.alias 1:4"});
}

TEST(ReadTree, RefusesTabsInIndentationOnly) {
    EXPECT_EQ(problems_of_tree("a:\n\tb: c\n \td: e\n"), (Lines{"read.tab 2:1", "read.tab 3:2"}));
    EXPECT_EQ(problems_of_tree("a:\tb\nc: {d:\te}\n"), Lines{});
}

TEST(ReadTree, TellsARepeatedSlipAFewTimesOnly) {
    std::string text = "a:\n";
    for (int i = 0; i < 100; ++i) {
        text += "\tb" + std::to_string(i) + ": c\n";
    }
    EXPECT_EQ(problems_of_tree(text).size(), 5U);
}

TEST(ReadTree, GoesOnAfterAFault) {
    EXPECT_EQ(problems_of_tree("a: b: c\nd: {e: f\ng: \"h\ni: @j\nk: l\nk: m\n"),
              (Lines{"read.yaml 1:5",
                     "read.yaml 2:4",
                     "read.yaml 3:4",
                     "read.yaml 4:4",
                     "read.duplicate-key 6:1"}));
}

TEST(ReadTree, KeepsTheSoundEntriesBesideAFault) {
    Reading reading("a: b: c\nd: e\n");
    const auto root = read_tree(reading.sources, reading.file, reading.problems);
    ASSERT_TRUE(root);
    ASSERT_EQ(root->entries.size(), 1U);
    EXPECT_EQ(root->entries[0].key, "d");
}

TEST(ReadTree, WarnsOfARemarkThatLooksLikeText) {
    EXPECT_EQ(problems_of_tree("a: Company #3\nb: red # 3\nc: \"x #3\"\n"),
              Lines{"read.remark-in-value 1:12"});
}

TEST(ReadTree, RefusesFilesWithoutEntries) {
    EXPECT_EQ(problems_of_tree(""), Lines{"read.empty 1:1"});
    EXPECT_EQ(problems_of_tree("# only a remark\n"), Lines{"read.empty 1:1"});
    EXPECT_EQ(problems_of_tree("- a\n- b\n"), Lines{"read.wrong-kind 1:1"});
    EXPECT_EQ(problems_of_tree("words\n"), Lines{"read.no-colon 1:1"});
}

TEST(ReadTree, FindsTheFirstByteThatIsNotUtf8) {
    EXPECT_EQ(problems_of_tree("é: b\nü: \xFC\n"), Lines{"read.not-utf8 2:4"});
    EXPECT_EQ(problems_of_tree("a: \xC0\xAF\n"), Lines{"read.not-utf8 1:4"});
}

}  // namespace
}  // namespace platewright
