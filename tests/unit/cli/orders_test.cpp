// SPDX-License-Identifier: MIT
// A plate's regiment and regulations: what is loaded, in which order, and what can be wrong.
#include "cli/orders.h"

#include <gtest/gtest.h>

#include <map>

namespace platewright::cli {
namespace {

using Lines = std::vector<std::string>;
using Texts = std::map<std::string, std::string>;

/// Files in memory; counts how often each is read.
class FilesInMemory : public FileReader {
  public:
    explicit FilesInMemory(Texts texts) : texts_(std::move(texts)) {}

    [[nodiscard]] FileResult read(const std::string& path, std::size_t /*limit*/) const override {
        ++reads[path];
        const auto found = texts_.find(path);
        return found == texts_.end() ? FileResult{"", "no such file"}
                                     : FileResult{found->second, ""};
    }

    [[nodiscard]] std::vector<std::string> list(const std::string& /*folder*/,
                                                const std::string& /*ending*/) const override {
        return {};
    }

    mutable std::map<std::string, int> reads;

  private:
    Texts texts_;
};

/// A loader over files in memory, with all it reports.
struct Loading {
    explicit Loading(Texts texts) : files(std::move(texts)) {}

    std::shared_ptr<const Orders> of_plate(const std::string& text) {
        const FileId file = sources.add("plates/x.yaml", text);
        const auto plate = read_plate(sources, file, problems);
        return plate ? loader.of_plate(*plate, problems) : nullptr;
    }

    /// `code file:line:column`.
    Lines found() {
        problems.sort();
        Lines lines;
        for (const Diagnostic& problem : problems.all()) {
            const SourceMap::Place at = sources.place(problem.span->file, problem.span->begin);
            lines.push_back(problem.code + " " + sources.name(problem.span->file) + ":" +
                            std::to_string(at.line) + ":" + std::to_string(at.column));
        }
        return lines;
    }

    FilesInMemory files;
    SourceMap sources;
    Diagnostics problems;
    OrdersLoader loader{files, sources};
};

const Texts kArvenholt = {
    {"arvenholt/1784.yaml", "regulation: Old\n"},
    {"arvenholt/1788.yaml", "regulation: New\namends: 1784.yaml\n"},
    {"arvenholt/1789.yaml", "regulation: Newest\namends: 1788.yaml\n"},
    {"arvenholt/tannbruck.yaml", "regiment: Tannbruck\nregulation: [1784.yaml, 1789.yaml]\n"},
};

Lines titles(const std::vector<SpecifiedRegulation>& editions) {
    Lines all;
    for (const SpecifiedRegulation& each : editions) {
        all.push_back(each.title.text);
    }
    return all;
}

TEST(Orders, AreEmptyForAPlateThatStandsAlone) {
    Loading loading(Texts{});
    const auto orders = loading.of_plate("plate: x\nrank: private\n");
    ASSERT_TRUE(orders);
    EXPECT_TRUE(orders->regulations.empty());
    EXPECT_FALSE(orders->regiment);
}

TEST(Orders, WalkAmendmentsBackToTheBase) {
    Loading loading(kArvenholt);
    const auto orders = loading.of_plate("plate: x\nregiment: ../arvenholt/tannbruck.yaml\n");
    ASSERT_TRUE(orders);
    EXPECT_EQ(orders->regiment->name.text, "Tannbruck");
    ASSERT_EQ(orders->regulations.size(), 2U);
    EXPECT_EQ(titles(orders->regulations[0]), Lines{"Old"});
    EXPECT_EQ(titles(orders->regulations[1]), (Lines{"Old", "New", "Newest"}));
}

TEST(Orders, ReadEveryFileOnce) {
    Loading loading(kArvenholt);
    ASSERT_TRUE(loading.of_plate("plate: x\nregiment: ../arvenholt/tannbruck.yaml\n"));
    ASSERT_TRUE(loading.of_plate("plate: y\nregiment: ./../arvenholt/tannbruck.yaml\n"));
    ASSERT_TRUE(loading.of_plate("plate: z\nregulation: ../arvenholt/1788.yaml\n"));
    for (const auto& [path, times] : loading.files.reads) {
        EXPECT_EQ(times, 1) << path;
    }
    EXPECT_EQ(loading.files.reads.size(), 4U);
}

TEST(Orders, TakeANameOfTheSeriesWithARegulation) {
    Loading loading(kArvenholt);
    const auto orders =
        loading.of_plate("plate: x\nregiment: Tannbruck\nregulation: ../arvenholt/1784.yaml\n");
    ASSERT_TRUE(orders);
    EXPECT_FALSE(orders->regiment);
    EXPECT_EQ(orders->regulations.size(), 1U);
    EXPECT_FALSE(loading.of_plate("plate: x\nregiment: Tannbruck\n"));
    EXPECT_EQ(loading.found(), Lines{"cli.no-regulation plates/x.yaml:2:11"});
}

TEST(Orders, TellAMissingFileWhereItIsNamed) {
    Loading loading(Texts{{"plates/a.yaml", "regiment: A\nregulation: nowhere.yaml\n"}});
    EXPECT_FALSE(loading.of_plate("plate: x\nregiment: a.yaml\n"));
    EXPECT_EQ(loading.found(), Lines{"cli.cannot-read plates/a.yaml:2:13"});
}

TEST(Orders, RefuseAFileOfAnotherKind) {
    Loading loading(Texts{{"plates/a.yaml", "regulation: A\n"}});
    EXPECT_FALSE(loading.of_plate("plate: x\nregiment: a.yaml\n"));
    EXPECT_EQ(loading.found(), Lines{"cli.wrong-file plates/x.yaml:2:11"});
}

TEST(Orders, TellProblemsOfAFileWhereverItIsNeeded) {
    Loading loading(Texts{{"plates/a.yaml", "regiment: A\nnumber: x\n"}});
    EXPECT_FALSE(loading.of_plate("plate: x\nregiment: a.yaml\n"));
    loading.problems = {};
    EXPECT_FALSE(loading.of_plate("plate: y\nregiment: a.yaml\n"));
    EXPECT_EQ(loading.found(), Lines{"read.wrong-kind plates/a.yaml:2:9"});
}

TEST(Orders, FindCirclesOfAmendments) {
    Loading loading(Texts{{"plates/a.yaml", "regulation: A\namends: b.yaml\n"},
                          {"plates/b.yaml", "regulation: B\namends: c.yaml\n"},
                          {"plates/c.yaml", "regulation: C\namends: ./a.yaml\n"}});
    EXPECT_FALSE(loading.of_plate("plate: x\nregulation: a.yaml\n"));
    EXPECT_EQ(loading.found(), Lines{"resolve.circle plates/c.yaml:2:9"});
}

TEST(Orders, AreNotNamedTwice) {
    Loading loading(Texts{{"plates/a.yaml", "regiment: A\nregulation: r.yaml\n"},
                          {"plates/b.yaml", "regiment: B\n"},
                          {"plates/r.yaml", "regulation: R\n"}});
    EXPECT_FALSE(loading.of_plate("plate: x\nregiment: a.yaml\nregulation: r.yaml\n"));
    EXPECT_EQ(loading.found(), Lines{"cli.two-regulations plates/x.yaml:3:13"});
    const auto orders = loading.of_plate("plate: x\nregiment: b.yaml\nregulation: r.yaml\n");
    ASSERT_TRUE(orders);
    EXPECT_EQ(orders->regulations.size(), 1U);
}

TEST(Orders, AreBounded) {
    Texts texts;
    for (int i = 0; i < 30; ++i) {
        texts["plates/" + std::to_string(i) + ".yaml"] =
            "regulation: R\namends: " + std::to_string(i + 1) + ".yaml\n";
    }
    Loading loading(std::move(texts));
    EXPECT_FALSE(loading.of_plate("plate: x\nregulation: 0.yaml\n"));
    EXPECT_EQ(loading.found(), Lines{"cli.too-many-regulations plates/23.yaml:2:9"});
}

TEST(Orders, AreNotTooLongTogether) {
    Texts texts;
    for (int i = 0; i < 5; ++i) {
        std::string& text = texts["plates/" + std::to_string(i) + ".yaml"];
        text = "regulation: R\namends: " + std::to_string(i + 1) + ".yaml\nrules:\n";
        for (int rule = 0; rule < 150; ++rule) {
            text += "- {wear: {stock: red}}\n";
        }
    }
    Loading loading(std::move(texts));
    EXPECT_FALSE(loading.of_plate("plate: x\nregulation: 0.yaml\n"));
    EXPECT_EQ(loading.found(), Lines{"cli.too-many-regulations plates/2.yaml:2:9"});
}

TEST(Orders, OfAFileThatWasOpenedServeThoseWhoNameItLater) {
    Loading loading(kArvenholt);
    const FileId file = loading.sources.add("arvenholt/1784.yaml", "regulation: Opened\n");
    EXPECT_EQ(titles(loading.loader.of_regulation(file, loading.problems)), Lines{"Opened"});
    const auto orders = loading.of_plate("plate: x\nregulation: ../arvenholt/1784.yaml\n");
    ASSERT_TRUE(orders);
    EXPECT_EQ(titles(orders->regulations.front()), Lines{"Opened"});
    EXPECT_TRUE(loading.files.reads.empty());
}

TEST(Orders, OfARegimentThatWasOpenedHaveItsRegulations) {
    Loading loading(kArvenholt);
    const FileId file =
        loading.sources.add("arvenholt/x.yaml", "regiment: X\nregulation: 1788.yaml\n");
    const auto orders = loading.loader.of_regiment(file, loading.problems);
    ASSERT_TRUE(orders);
    EXPECT_EQ(titles(orders->regulations.front()), (Lines{"Old", "New"}));
}

}  // namespace
}  // namespace platewright::cli
