// SPDX-License-Identifier: MIT
// The standard sizes that come with the figure.
#include <gtest/gtest.h>

#include "support.h"
#include "vocabulary/body.h"

namespace platewright::cli {
namespace {

TEST(StandardSizes, AreBelievedAndGrow) {
    Bench bench;
    const auto job = bench.workshop.prepare(SpecifiedPlate{}, false, bench.problems);
    ASSERT_TRUE(job);
    const auto sizes = bench.workshop.sizes_of(*job, bench.problems);
    ASSERT_TRUE(sizes);
    ASSERT_EQ(sizes->sizes.size(), 3U);
    for (std::size_t i = 0; i < sizes->sizes.size(); ++i) {
        const SpecifiedSizes::Size& size = sizes->sizes[i];
        EXPECT_TRUE(doubts_about(size.body).empty()) << size.name.text;
        for (std::size_t m = 0; i > 0 && m < kBodyMeasures; ++m) {
            EXPECT_GT(size.body.mm[m], sizes->sizes[i - 1].body.mm[m]) << size.name.text;
        }
    }
}

}  // namespace
}  // namespace platewright::cli
