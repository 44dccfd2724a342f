// SPDX-License-Identifier: MIT
// Measures of real garments: stated on a plate, the tailor's drawings have them.
#include <gtest/gtest.h>

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "cli/tailor.h"
#include "files_over_disk.h"
#include "pattern/fit.h"
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
        files_.own["stated-coat.yaml"] = text;
        const FileId file =
            sources_.add("workshop.yaml", "workshop: Coat\nman: stated-coat.yaml\n");
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

    [[nodiscard]] std::vector<FinishedGirth> girths() const {
        return work_ ? finished_girths(work_->sheets.flats.front().flat, work_->body)
                     : std::vector<FinishedGirth>{};
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
    test::FilesOverDisk files_;
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

// "The Jacket Draft, Chest 100", Men's Tailoring, 1954 (translated at movsd.com/BespokeCutter): 12
// cm at the chest, 9 1/2 at the waist. The period's coat is cut closer than that fashion, but goes
// over a waistcoat.
TEST(Garments, AreCutNoLooserThanAJacketOf1954) {
    const std::map<BodyMeasure, double> most{{BodyMeasure::chest, 120}, {BodyMeasure::waist, 95}};
    std::size_t found = 0;
    for (const FinishedGirth& girth : Coat("lapels.width", "3 in").girths()) {
        if (const auto limit = most.find(girth.measure); limit != most.end()) {
            ++found;
            EXPECT_LE(girth.finished - girth.body, limit->second);
            EXPECT_GE(girth.finished - girth.body, limit->second / 2);
        }
    }
    EXPECT_EQ(found, most.size());
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
