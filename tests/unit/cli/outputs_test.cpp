// SPDX-License-Identifier: MIT
// Which file is written, and what is refused before anything is.
#include "cli/outputs.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace platewright::cli {
namespace {

/// `format: path, path`, or the message.
std::string plan(const std::vector<std::string>& inputs,
                 const std::string& out,
                 const std::string& format) {
    UsageProblem problem;
    const auto outputs = plan_outputs(inputs, out, format, problem);
    if (!outputs) {
        EXPECT_FALSE(problem.hint.empty());
        return problem.message;
    }
    std::string text = std::string(ending_of(outputs->format)) + ":";
    for (const Output& output : outputs->files) {
        text += " " + output.path;
    }
    return text;
}

TEST(PlanOutputs, NamesTheFileAfterTheInput) {
    EXPECT_EQ(plan({"a/b.c.yaml"}, "", ""), "pdf: b.c.pdf");
    EXPECT_EQ(plan({"a.yaml", "d/b.yaml"}, "", "svg"), "svg: a.svg b.svg");
    EXPECT_EQ(plan({"-"}, "", "png"), "png: plate.png");
}

TEST(PlanOutputs, TakesTheFormatFromTheEnding) {
    EXPECT_EQ(plan({"a.yaml"}, "x.svg", ""), "svg: x.svg");
    EXPECT_EQ(plan({"a.yaml"}, "x.PNG", ""), "png: x.PNG");
    EXPECT_EQ(plan({"a.yaml"}, "x.pdf", "svg"), "svg: x.pdf");
    EXPECT_EQ(plan({"a.yaml"}, "x", ""), "the format cannot be told from 'x'");
    EXPECT_EQ(plan({"a.yaml"}, "x.jpeg", ""), "the format cannot be told from 'x.jpeg'");
    EXPECT_EQ(plan({"a.yaml"}, "x.jpeg", "jpeg"), "'jpeg' is no format");
}

TEST(PlanOutputs, WritesIntoFolders) {
    EXPECT_EQ(plan({"a.yaml", "b.yaml"}, "/tmp", "svg"), "svg: /tmp/a.svg /tmp/b.svg");
    EXPECT_EQ(plan({"a.yaml"}, "sheets/", ""), "pdf: sheets/a.pdf");
}

TEST(PlanOutputs, WritesToStandardOutput) {
    EXPECT_EQ(plan({"a.yaml"}, "-", ""), "pdf: -");
    EXPECT_EQ(plan({"a.yaml", "b.yaml"}, "-", ""), "2 plates cannot all be written to '-'");
}

TEST(PlanOutputs, WritesNoTwoPlatesToOneFile) {
    EXPECT_EQ(plan({"a.yaml", "d/a.yaml"}, "", ""),
              "'a.yaml' and 'd/a.yaml' would both be written to 'a.pdf'");
    EXPECT_EQ(plan({"a.yaml", "a.yml"}, "/tmp/../tmp", "svg"),
              "'a.yaml' and 'a.yml' would both be written to '/tmp/../tmp/a.svg'");
    EXPECT_EQ(plan({"a.yaml", "b.yaml"}, "x.svg", ""), "2 plates cannot all be written to 'x.svg'");
}

TEST(PlanOutputs, WritesNoInputOver) {
    EXPECT_EQ(plan({"a.svg"}, "", "svg"),
              "'a.svg' is itself to be drawn and would be written over");
    EXPECT_EQ(plan({"d/../a.yaml", "b.yaml"}, "", ""), "pdf: a.pdf b.pdf");
}

}  // namespace
}  // namespace platewright::cli
