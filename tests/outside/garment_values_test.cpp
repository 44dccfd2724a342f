// SPDX-License-Identifier: MIT
// Measures of real garments: stated on a plate, the tailor's drawings have them.
#include <gtest/gtest.h>

#include <fstream>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "base/files.h"
#include "cli/tailor.h"
#include "table.h"

namespace platewright::outside {
namespace {

/// A coat of which one measure is stated, drawn for a man of medium size.
class Coat {
  public:
    Coat(const std::string& property, const std::string& written) {
        std::map<std::string, std::string> groups{{"lapels", "cloth: buff"}};
        const std::size_t dot = property.find('.');
        std::string& group = groups[property.substr(0, dot)];
        group += (group.empty() ? "" : ", ") + property.substr(dot + 1) + ": " + written;
        std::string text = "plate: Coat\ncoat: {cloth: dark green, lining: buff}\n";
        for (const auto& [name, words] : groups) {
            text += name + ": {" + words + "}\n";
        }
        std::ofstream(testing::TempDir() + "stated-coat.yaml") << text;
        const FileId file = sources_.add(testing::TempDir() + "workshop.yaml",
                                         "workshop: Coat\nman: stated-coat.yaml\n");
        cli::Timings timings;
        const auto job = cli::prepare_tailor(workshop_, file, problems_, timings);
        work_ = job ? cli::tailor_work(workshop_, *job, Paper{}, Typesetter{}, problems_)
                    : std::nullopt;
    }

    [[nodiscard]] std::string problems() const {
        std::string told;
        for (const Diagnostic& each : problems_.all()) {
            told += each.code + ": " + each.message + "\n";
        }
        return told;
    }

    /// The dimension of that name on the placement drawings, or null.
    [[nodiscard]] const Dimension* drawn(const std::string& what) const {
        for (const PlacementView& view : work_ ? work_->sheets.placements : none_) {
            for (const Dimension& each : view.dimensions) {
                if (each.what == what) {
                    return &each;
                }
            }
        }
        return nullptr;
    }

  private:
    DiskReader files_;
    SourceMap sources_;
    Diagnostics problems_;
    cli::Workshop workshop_{files_, PLATEWRIGHT_SOURCE_DIR, sources_};
    std::optional<cli::TailorWork> work_;
    std::vector<PlacementView> none_;
};

TEST(Garments, AreDrawnAsPublished) {
    for (const Row& row : published("garments.csv")) {
        const double mm = std::stod(row[3]);
        const Coat coat(row[0], row[2]);
        const Dimension* drawn = coat.drawn(row[1]);
        ASSERT_NE(drawn, nullptr) << coat.problems();
        ASSERT_TRUE(drawn->stated) << row[1] << " of " << row[2];
        EXPECT_NEAR(drawn->stated->mm, mm, 1e-9) << row[4];
        EXPECT_EQ(drawn->stated->printed, row[2]);
        EXPECT_NEAR(drawn->mm(), mm, 0.05) << row[1] << " of " << row[2] << ": " << row[4];
    }
}

TEST(SizeRolls, AddUpToAHundred) {
    std::map<std::string, int> sums;
    for (const Row& row : published("size_rolls.csv")) {
        sums[row[0] + ", " + row[1]] += std::stoi(row[3]);
    }
    EXPECT_GT(sums.size(), 1U);
    for (const auto& [roll, sum] : sums) {
        EXPECT_EQ(sum, 100) << roll;
    }
}

}  // namespace
}  // namespace platewright::outside
