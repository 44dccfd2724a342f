// SPDX-License-Identifier: MIT
// Reading a decided uniform.
#include "resolve/uniform.h"

#include <gtest/gtest.h>

namespace platewright {
namespace {

Uniform with(Value value) {
    Uniform man;
    man.decided.push_back({std::move(value), {}});
    return man;
}

TEST(UniformWord, IsWhatAUserWouldWrite) {
    EXPECT_EQ(with(Absent{}).word(0), "none");
    EXPECT_EQ(with(Material{"red", {1, 2, 3}, false, ""}).word(0), "red");
    EXPECT_EQ(with(std::string("slashed")).word(0), "slashed");
    EXPECT_EQ(with(3).word(0), "3");
    EXPECT_EQ(with(Measure{12.7, "1/2 in"}).word(0), "1/2 in");
}

TEST(UniformMaterial, IsNothingWhereNothingIsWorn) {
    EXPECT_EQ(with(Absent{}).material(0), nullptr);
    const Uniform man = with(Material{"red", {1, 2, 3}, false, ""});
    ASSERT_NE(man.material(0), nullptr);
    EXPECT_EQ(man.material(0)->name, "red");
}

TEST(UniformCount, IsNoughtWhereNothingIsWorn) {
    EXPECT_EQ(with(Absent{}).count(0), 0);
    EXPECT_EQ(with(7).count(0), 7);
}

}  // namespace
}  // namespace platewright
