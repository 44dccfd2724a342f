// SPDX-License-Identifier: MIT
// Published orders written as regulations, and what they must come to for single men. The sources
// stand in regulations/, in each file and above the table of expectations.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <fstream>
#include <string>
#include <vector>

#include "base/files.h"
#include "read/read.h"
#include "resolve/change.h"
#include "resolve/resolve.h"

namespace platewright::outside {
namespace {

const std::string kFolder = PLATEWRIGHT_SOURCE_DIR "/tests/outside/regulations/";
const std::string kPalettes = PLATEWRIGHT_SOURCE_DIR "/palettes/";

/// Columns of the table.
enum Column : std::size_t {
    files,
    regiment,
    corps_class,
    company,
    rank,
    years,
    order,
    as_of,
    property,
    value,
    columns
};

using Expectation = std::array<std::string, columns>;

std::vector<Expectation> expectations() {
    std::ifstream file(kFolder + "expectations.csv");
    std::vector<Expectation> rows;
    for (std::string line; std::getline(file, line);) {
        if (line.starts_with('#') || line.starts_with("files;")) {
            continue;
        }
        Expectation row;
        std::size_t column = 0;
        for (const char c : line) {
            if (c == ';') {
                ++column;
            } else {
                row.at(column) += c;
            }
        }
        EXPECT_EQ(column + 1, columns) << line;
        rows.push_back(row);
    }
    return rows;
}

/// One man as a plate would describe him.
std::string plate_of(const Expectation& man) {
    std::string text = "plate: A man\n";
    const std::array<std::pair<const char*, Column>, 7> keys{{{"regiment", regiment},
                                                              {"class", corps_class},
                                                              {"company", company},
                                                              {"rank", rank},
                                                              {"years of service", years},
                                                              {"order of dress", order},
                                                              {"as of", as_of}}};
    for (const auto& [key, column] : keys) {
        if (!man[column].empty()) {
            text += std::string(key) + ": " + man[column] + "\n";
        }
    }
    return text;
}

class Archive {
  public:
    Archive() {
        for (const std::string& name : disk_.list(kPalettes, ".yaml")) {
            if (auto palette = read_palette(sources_, open(kPalettes + name), problems_)) {
                palettes_.push_back(std::move(*palette));
            }
        }
    }

    std::optional<Uniform> dressed(const Expectation& man) {
        const FileId file = sources_.add("man.yaml", plate_of(man));
        const auto plate = read_plate(sources_, file, problems_);
        Orders orders;
        orders.regulations.emplace_back();
        std::string name;
        for (const char c : man[files] + " ") {
            if (c != ' ') {
                name += c;
                continue;
            }
            auto read = read_regulation(sources_, open(kFolder + name + ".yaml"), problems_);
            EXPECT_TRUE(read) << name;
            if (read) {
                orders.regulations.front().push_back(std::move(*read));
            }
            name.clear();
        }
        return plate ? resolve(*plate, orders, {}, palettes_, problems_) : std::nullopt;
    }

    [[nodiscard]] std::string problems() const {
        std::string all;
        for (const Diagnostic& problem : problems_.all()) {
            all += problem.message + " [" + problem.code + "]\n";
        }
        return all;
    }

  private:
    FileId open(const std::string& path) {
        return sources_.add(path, disk_.read(path, 1 << 20).text);
    }

    DiskReader disk_;
    SourceMap sources_;
    Diagnostics problems_;
    std::vector<SpecifiedPalette> palettes_;
};

TEST(PublishedOrders, ComeToWhatTheySay) {
    const std::vector<Expectation> rows = expectations();
    ASSERT_GT(rows.size(), 80U);
    for (const Expectation& man : rows) {
        Archive archive;
        const auto uniform = archive.dressed(man);
        ASSERT_TRUE(uniform) << man[files] << ", " << man[regiment] << " " << man[rank] << ":\n"
                             << archive.problems();
        EXPECT_EQ(uniform->word(property_id(man[property])), man[value])
            << man[files] << ": " << man[regiment] << " " << man[corps_class] << " " << man[company]
            << " " << man[rank] << " " << man[years] << " " << man[order] << " " << man[as_of]
            << ": " << man[property];
    }
}

TEST(PublishedOrders, AreInOrderThemselves) {
    for (const std::vector<std::string>& editions : {std::vector<std::string>{"us-1779", "us-1782"},
                                                     {"us-ranks-june-1780", "us-ranks-july-1780"},
                                                     {"us-service-1782"},
                                                     {"gb-1802"},
                                                     {"common-practice"}}) {
        DiskReader disk;
        SourceMap sources;
        Diagnostics problems;
        std::vector<SpecifiedPalette> palettes;
        for (const std::string& name : disk.list(kPalettes, ".yaml")) {
            const FileId file = sources.add(name, disk.read(kPalettes + name, 1 << 20).text);
            palettes.push_back(*read_palette(sources, file, problems));
        }
        std::vector<SpecifiedRegulation> chain;
        for (const std::string& name : editions) {
            const std::string path = kFolder + name + ".yaml";
            const FileId file = sources.add(path, disk.read(path, 1 << 20).text);
            chain.push_back(*read_regulation(sources, file, problems));
        }
        check_regulation(chain, palettes, problems);
        EXPECT_EQ(problems.error_count(), 0U)
            << editions.front() << ": "
            << (problems.all().empty() ? "" : problems.all().front().message);
    }
}

/// Six regiments of one colour, no two alike.
TEST(CommonPractice, SixRegimentsShareAColourAndNoTwoAreAlike) {
    std::vector<std::string> looks;
    for (const char* name :
         {"Aldermere", "Brackwater", "Corvane", "Dunmarch", "Estwick", "Farrowby"}) {
        Archive archive;
        Expectation man{
            "common-practice", name, "", "fusiliers", "private", "", "parade", "1787", "", ""};
        const auto uniform = archive.dressed(man);
        ASSERT_TRUE(uniform) << archive.problems();
        EXPECT_EQ(uniform->word(property_id("facings.cloth")), "sky blue");
        std::string look;
        for (const char* key : {"lapels.cloth", "cuffs.cloth", "buttons.metal"}) {
            look += uniform->word(property_id(key)) + "/";
        }
        EXPECT_EQ(std::ranges::count(looks, look), 0) << name;
        looks.push_back(look);
    }
}

/// A promotion needs a strip of lace and no new coat.
TEST(CommonPractice, FromPrivateToSergeantIsAStripOfLace) {
    Archive archive;
    Expectation man{
        "common-practice", "Aldermere", "", "fusiliers", "private", "", "parade", "1787", "", ""};
    const auto before = archive.dressed(man);
    man[rank] = "sergeant";
    const auto after = archive.dressed(man);
    ASSERT_TRUE(before && after) << archive.problems();
    const Comparison comparison = compare(*before, *after);
    ASSERT_EQ(comparison.changes.size(), 1U);
    EXPECT_EQ(comparison.changes.front().deed, Deed::sew_on);
    EXPECT_EQ(comparison.changes.front().thing, "rank marks");
    EXPECT_EQ(number_of(*after, comparison.changes.front().head), 2);
}

}  // namespace
}  // namespace platewright::outside
