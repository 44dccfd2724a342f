// SPDX-License-Identifier: MIT
// The way of plates through all stages, with a reader that counts what is opened.
#include "cli/drawing.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <cstdlib>
#include <map>
#include <string>
#include <vector>

#include "files_over_disk.h"

namespace platewright::cli {
namespace {

using Files = test::FilesOverDisk;

struct DrawnFiles {
    DrawResult result;
    std::vector<std::string> codes;
    std::map<std::string, std::string> bytes;
};

DrawnFiles draw_with(const Files& files, const std::vector<std::string>& inputs, std::size_t jobs) {
    const std::string folder = testing::TempDir() + "drawing-" + std::to_string(getpid()) + "-" +
                               std::to_string(jobs) + "-";
    Outputs outputs{Format::svg, {}};
    for (const std::string& input : inputs) {
        outputs.files.push_back({input, folder + input + ".svg"});
    }
    SourceMap sources;
    Diagnostics problems;
    Workshop workshop(files, PLATEWRIGHT_SOURCE_DIR, sources);
    DrawSettings settings;
    settings.jobs = jobs;
    DrawnFiles drawn;
    drawn.result = draw_all(outputs, settings, files, workshop, sources, problems);
    for (const Diagnostic& problem : problems.all()) {
        drawn.codes.push_back(problem.code);
    }
    for (const std::string& path : drawn.result.written) {
        drawn.bytes[path.substr(folder.size())] = DiskReader().read(path, 10'000'000).text;
    }
    return drawn;
}

TEST(DrawAll, WritesTheSameBytesOnAnyNumberOfThreads) {
    Files files;
    std::vector<std::string> names;
    for (const char* colour : {"red", "dark green", "white", "dark blue", "black"}) {
        names.push_back(std::string(1, colour[0]) + std::to_string(names.size()));
        files.own[names.back()] =
            "plate: " + names.back() + "\ncoat: " + colour + "\nrank: corporal\n";
    }
    const DrawnFiles one = draw_with(files, names, 1);
    const DrawnFiles four = draw_with(files, names, 4);
    EXPECT_EQ(one.result.exit, ExitCode::done) << testing::PrintToString(one.codes);
    EXPECT_EQ(one.bytes.size(), names.size());
    EXPECT_EQ(one.bytes, four.bytes);
}

TEST(DrawAll, DrawsTheGoodBesideTheBad) {
    Files files;
    files.own["good"] = "plate: x\n";
    files.own["bad"] = "plate: x\ncoat: no such colour\n";
    const DrawnFiles drawn = draw_with(files, {"bad", "missing", "good"}, 2);
    EXPECT_EQ(drawn.result.exit, ExitCode::cannot_read_or_write);
    EXPECT_EQ(drawn.codes, (std::vector<std::string>{"resolve.unknown-colour", "cli.cannot-read"}));
    EXPECT_EQ(drawn.bytes.size(), 1U);
    EXPECT_TRUE(drawn.bytes.contains("good.svg"));
}

TEST(Workshop, OpensEveryFileOnceForAnyNumberOfPlates) {
    Files files;
    files.own["a"] = "plate: a\n";
    files.own["b"] = "plate: b\n";
    SourceMap sources;
    Diagnostics problems;
    Timings timings;
    Workshop workshop(files, PLATEWRIGHT_SOURCE_DIR, sources);
    for (const auto& [name, text] : files.own) {
        EXPECT_TRUE(workshop.prepare(sources.add(name, text), true, problems, timings));
    }
    std::map<std::string, int> times;
    for (const std::string& path : files.opened) {
        EXPECT_EQ(++times[path], 1) << path;
    }
    EXPECT_GE(files.opened.size(), 4U);
}

TEST(Workshop, OpensNoTemplateForACheck) {
    const Files files;
    SourceMap sources;
    Diagnostics problems;
    Timings timings;
    Workshop workshop(files, PLATEWRIGHT_SOURCE_DIR, sources);
    EXPECT_TRUE(workshop.prepare(sources.add("a", "plate: a\n"), false, problems, timings));
    for (const std::string& path : files.opened) {
        EXPECT_FALSE(path.ends_with(".svg")) << path;
    }
}

TEST(Workshop, TellsUnknownColoursBesideWhatCannotBeRead) {
    const Files files;
    SourceMap sources;
    Diagnostics problems;
    Timings timings;
    Workshop workshop(files, PLATEWRIGHT_SOURCE_DIR, sources);
    EXPECT_FALSE(workshop.prepare(
        sources.add("a", "plate: a\ncoat: no such colour\ncoot: x\n"), false, problems, timings));
    problems.sort();
    ASSERT_EQ(problems.all().size(), 2U);
    EXPECT_EQ(problems.all()[0].code, "resolve.unknown-colour");
    EXPECT_EQ(problems.all()[1].code, "read.unknown-key");
}

std::optional<std::int64_t> date_of(const char* written, std::size_t& problems) {
    if (written == nullptr) {
        ::unsetenv("SOURCE_DATE_EPOCH");
    } else {
        ::setenv("SOURCE_DATE_EPOCH", written, 1);
    }
    Diagnostics found;
    const auto date = creation_date(found);
    problems = found.all().size();
    ::unsetenv("SOURCE_DATE_EPOCH");
    return date;
}

TEST(CreationDate, ReadsWholeSecondsOnly) {
    std::size_t problems = 0;
    EXPECT_EQ(date_of(nullptr, problems), std::nullopt);
    EXPECT_EQ(problems, 0U);
    EXPECT_EQ(date_of("0", problems), 0);
    EXPECT_EQ(date_of("1700000000", problems), 1'700'000'000);
    EXPECT_EQ(problems, 0U);
    for (const char* wrong :
         {"-1", "1e9", "1.5", " 1", "1 ", "now", "0x10", "253402300800", "99999999999999999999"}) {
        EXPECT_EQ(date_of(wrong, problems), std::nullopt) << wrong;
        EXPECT_EQ(problems, 1U) << wrong;
    }
}

TEST(Timings, SumsByStageInOrder) {
    Timings first;
    first.measure("read", [] {});
    first.measure("write", [] {});
    Timings second;
    second.measure("read", [] {});
    first.add(second);
    const std::string text = first.in_words();
    EXPECT_EQ(text.find("read "), 0U);
    EXPECT_NE(text.find(" ms\nwrite "), std::string::npos);
    EXPECT_EQ(text.find("read ", 1), std::string::npos);
}

}  // namespace
}  // namespace platewright::cli
