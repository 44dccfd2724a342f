// SPDX-License-Identifier: MIT
// What tells two men apart from afar.
#include "cli/from_afar.h"

#include <gtest/gtest.h>

#include "support.h"

namespace platewright::cli {
namespace {

constexpr Colour kGreen{0x2b, 0x4c, 0x33};
constexpr Colour kWhite{0xee, 0xea, 0xe0};

/// A man in a coat of one colour, of which enough is seen.
struct Painted {
    Uniform uniform;
    Figure front;

    explicit Painted(Colour coat) {
        for (const Property& row : properties()) {
            Decided decided;
            decided.value = Absent{};
            decided.chain.emplace_back();
            if (row.key == "coat.cut") {
                decided.value = std::string("long");
            }
            uniform.decided.push_back(std::move(decided));
        }
        wear("coat.cloth", coat, {});
    }

    void wear(const std::string& key,
              Colour colour,
              const std::string& beneath,
              double area = 9e4) {
        uniform.decided[property_id(key)].value = Material{key, colour, false, ""};
        front.seen[key] = {area, {{{0, 0}, 30}}, beneath};
    }

    [[nodiscard]] SeenMan seen() const { return {uniform, front}; }
};

Apart to_all_eyes(const Painted& a, const Painted& b) {
    return from_afar(a.seen(), b.seen(), all_eyes().front());
}

TEST(FromAfarJudged, MenOfOneLookDoNotDiffer) {
    const Apart apart = to_all_eyes(Painted(kGreen), Painted(kGreen));
    EXPECT_EQ(apart.difference, 0);
    EXPECT_FALSE(apart.by);
}

TEST(FromAfarJudged, CoatsDifferAsTheirColoursDo) {
    const Apart apart = to_all_eyes(Painted(kGreen), Painted(kWhite));
    EXPECT_NEAR(apart.difference, delta_e_2000(to_lab_d65(kGreen), to_lab_d65(kWhite)), 1e-9);
    EXPECT_EQ(apart.by, property_id("coat.cloth"));
    EXPECT_FALSE(apart.only_first || apart.only_second);
}

// A white haversack on a white coat is not made out, whatever colour the other man's coat is.
TEST(FromAfarJudged, WhatOnlyOneHasIsHeldAgainstHisOwnCoat) {
    Painted with(kWhite);
    with.wear("haversack.cloth", kWhite, "coat.cloth");
    EXPECT_EQ(to_all_eyes(with, Painted(kWhite)).difference, 0);
    Painted on_green(kGreen);
    on_green.wear("haversack.cloth", kWhite, "coat.cloth");
    const Apart apart = to_all_eyes(Painted(kGreen), on_green);
    EXPECT_GT(apart.difference, 40);
    EXPECT_EQ(apart.by, property_id("haversack.cloth"));
    EXPECT_TRUE(apart.only_second);
    EXPECT_FALSE(apart.only_first);
}

// A plume stands against the sky: it is told from the hat it is fixed on.
TEST(FromAfarJudged, WhatLiesOnNothingIsHeldAgainstWhatItIsFixedOn) {
    Painted plumed(kGreen);
    Painted plain(kGreen);
    for (Painted* man : {&plumed, &plain}) {
        man->uniform.decided[property_id("hat.shape")].value = std::string("three-cornered");
        man->wear("hat.felt", {0x20, 0x20, 0x20}, {});
    }
    plumed.wear("hat.plume", kWhite, {});
    const Apart apart = to_all_eyes(plumed, plain);
    EXPECT_GT(apart.difference, 40);
    EXPECT_TRUE(apart.only_first);
}

TEST(FromAfarJudged, TooLittleIsNotMadeOut) {
    Painted with(kGreen);
    with.wear("haversack.cloth", kWhite, "coat.cloth", kLeastSeen - 1);
    EXPECT_EQ(to_all_eyes(with, Painted(kGreen)).difference, 0);
    with.wear("haversack.cloth", kWhite, "coat.cloth", kLeastSeen);
    EXPECT_GT(to_all_eyes(with, Painted(kGreen)).difference, 40);
    with.front.seen["haversack.cloth"].sites.front().room = kMinuteOfArc / 2 - 0.1;
    EXPECT_EQ(to_all_eyes(with, Painted(kGreen)).difference, 0);
}

}  // namespace
}  // namespace platewright::cli
