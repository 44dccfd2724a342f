// SPDX-License-Identifier: MIT
// Problems for people and for scripts.
#include "cli/print.h"

#include <gtest/gtest.h>

#include <string>

#include "base/limits.h"
#include "cli/json.h"

namespace platewright::cli {
namespace {

/// A file with one error that has a second place and a hint.
struct Sample {
    Sample() {
        file = sources.add("é.yaml", "plate: x\ncoat: red\ncoat: blue\n");
        Diagnostic& problem =
            problems.error("read.duplicate-key", {file, 19, 23}, "'coat' is written twice");
        problem.labels.push_back({{file, 9, 13}, "first written here"});
        problem.hints.emplace_back("keep one of the two");
    }

    SourceMap sources;
    FileId file = 0;
    Diagnostics problems;
};

TEST(InWords, ShowsPlaceLineLabelAndHint) {
    const Sample sample;
    EXPECT_EQ(in_words(sample.problems, sample.sources, false),
              "é.yaml:3:1: error: 'coat' is written twice [read.duplicate-key]\n"
              "  coat: blue\n"
              "  ^^^^\n"
              "  é.yaml:2:1: first written here\n"
              "    coat: red\n"
              "    ^^^^\n"
              "  hint: keep one of the two\n"
              "1 error\n");
}

TEST(InWords, SaysNothingOfNoProblems) {
    EXPECT_EQ(in_words(Diagnostics(), SourceMap(), false), "");
}

TEST(InWords, NamesFilesWithoutAPlace) {
    Diagnostics problems;
    problems.file_error("cli.cannot-read", "a.yaml", "cannot be read: no such file");
    Diagnostic whole;
    whole.severity = Severity::warning;
    whole.code = "cli.bad-date";
    whole.message = "no date";
    problems.add(whole);
    EXPECT_EQ(in_words(problems, SourceMap(), false),
              "a.yaml: error: cannot be read: no such file [cli.cannot-read]\n"
              "platewright: warning: no date [cli.bad-date]\n"
              "1 error, 1 warning\n");
}

TEST(InWords, ColoursOnlyWhenAsked) {
    const Sample sample;
    EXPECT_EQ(in_words(sample.problems, sample.sources, false).find('\x1B'), std::string::npos);
    EXPECT_NE(in_words(sample.problems, sample.sources, true).find("\x1B[1;31merror:\x1B[0m"),
              std::string::npos);
}

TEST(InWords, KeepsControlCharactersOffTheTerminal) {
    SourceMap sources;
    const FileId file = sources.add("a\x1B[2J.yaml", "x\x1B[31m: y\n");
    Diagnostics problems;
    problems.error("read.unknown-key", {file, 0, 6}, "a plate has no key 'x\x1B[31m'")
        .hints.emplace_back("\x07");
    EXPECT_EQ(in_words(problems, sources, false).find_first_of("\x1B\x07"), std::string::npos);
}

TEST(InWords, ShowsAFewOfMany) {
    SourceMap sources;
    const FileId file = sources.add("x.yaml", "abc\n");
    Diagnostics problems;
    for (std::size_t i = 0; i < limits::kProblemsShown + 7; ++i) {
        problems.error("read.yaml", {file, 0, 1}, "problem " + std::to_string(i));
    }
    const std::string text = in_words(problems, sources, false);
    EXPECT_NE(text.find("\n57 errors, of which 7 are not shown\n"), std::string::npos);
    EXPECT_EQ(text.find("problem 50"), std::string::npos);
}

TEST(InJson, HasPlacesFromOneInCharacters) {
    SourceMap sources;
    const FileId file = sources.add("x.yaml", "é: {ü: y}\n");
    Diagnostics problems;
    problems.error("read.unknown-key", {file, 5, 7}, "a \"key\"").hints.emplace_back("a hint");
    EXPECT_EQ(
        in_json(problems, sources),
        "[\n  {\n    \"file\": \"x.yaml\",\n    \"line\": 1,\n    \"column\": 5,\n    \"end\": {\n"
        "      \"line\": 1,\n      \"column\": 6\n    },\n    \"severity\": \"error\",\n"
        "    \"code\": \"read.unknown-key\",\n    \"message\": \"a \\\"key\\\"\",\n    \"hints\": "
        "[\n"
        "      \"a hint\"\n    ],\n    \"labels\": []\n  }\n]\n");
}

TEST(InJson, IsAnArrayWithoutProblemsAndWithBrokenText) {
    EXPECT_EQ(in_json(Diagnostics(), SourceMap()), "[]\n");
    Diagnostics problems;
    problems.file_error("cli.cannot-read", "\xFF.yaml", "no");
    EXPECT_NE(in_json(problems, SourceMap()).find("\uFFFD.yaml"), std::string::npos);
}

}  // namespace
}  // namespace platewright::cli
