// SPDX-License-Identifier: MIT
// The kit list: what a uniform asks for, what a unit says of it, what it costs together.
#include "cli/kit.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "base/files.h"
#include "cli/workshop.h"

namespace platewright::cli {
namespace {

/// The uniform of a plate written in the folder of the demonstration plates.
class Man {
  public:
    explicit Man(const std::string& text) {
        const FileId file = sources_.add(PLATEWRIGHT_SOURCE_DIR "/plates/man.yaml", text);
        const auto job = workshop_.prepare(file, false, problems_, timings_);
        uniform_ = job ? workshop_.uniform_of(*job, problems_) : std::nullopt;
    }

    [[nodiscard]] const Uniform& uniform() const { return uniform_.value(); }

  private:
    DiskReader files_;
    SourceMap sources_;
    Diagnostics problems_;
    Timings timings_;
    Workshop workshop_{files_, PLATEWRIGHT_SOURCE_DIR, sources_};
    std::optional<Uniform> uniform_;
};

const std::string kPrivate =
    "plate: A\ncoat: {cloth: dark green, lining: buff}\nlapels: buff\nbuttons: {metal: white}\n";

const KitThing* find(const std::vector<KitThing>& kit, const std::string& name) {
    const auto at =
        std::ranges::find(kit, name, [](const KitThing& thing) { return thing.item.name; });
    return at == kit.end() ? nullptr : &*at;
}

KitItem written(const std::string& name) {
    KitItem item;
    item.item.text = name;
    return item;
}

TEST(Kit, HoldsWhatAManWearsWithWhatItIsMadeOf) {
    const std::vector<KitThing> kit = kit_of(Man(kPrivate).uniform());
    const KitThing* coat = find(kit, "coat");
    ASSERT_NE(coat, nullptr);
    EXPECT_TRUE(coat->item.material.starts_with("dark green"));
    EXPECT_NE(coat->item.details.find("buff: lining, lapels, collar, cuffs"), std::string::npos);
    EXPECT_NE(coat->item.details.find("white metal: buttons"), std::string::npos);
    EXPECT_NE(find(kit, "hat, three-cornered"), nullptr);
    EXPECT_NE(find(kit, "gaiters, long"), nullptr);
    EXPECT_EQ(find(kit, "shirt")->item.material, "white");
    EXPECT_EQ(find(kit, "belts")->quantity, 2);
    EXPECT_EQ(find(kit, "stockings"), nullptr);
    EXPECT_EQ(find(kit, "musket"), nullptr);
}

TEST(Kit, CallsThingsByTheirSort) {
    const std::vector<KitThing> kit =
        kit_of(Man("plate: A\ncoat: jacket\nbreeches: overalls\nhat: forage-cap\nsword: hanger\n")
                   .uniform());
    for (const char* name : {"jacket", "overalls", "forage cap", "hanger"}) {
        EXPECT_NE(find(kit, name), nullptr) << name;
    }
}

TEST(Kit, SpeaksTheLanguageOfTheMan) {
    const std::vector<KitThing> kit = kit_of(Man(kPrivate + "language: de\n").uniform());
    EXPECT_NE(find(kit, "Rock"), nullptr);
    EXPECT_NE(find(kit, "Gamaschen, lang"), nullptr);
}

TEST(Kit, WhatTheUnitSaysTakesTheUsualPlace) {
    std::vector<KitThing> kit = kit_of(Man(kPrivate).uniform());
    KitItem hat = written("Hat");
    hat.cost = WrittenText{"90 EUR", {}};
    hat.stage = KitStage::later;
    hat.from = WrittenText{"the hatter", {}};
    KitItem spoon = written("horn spoon");
    spoon.quantity = {3, {}};
    const std::size_t before = kit.size();
    merge_kit(kit, {hat, spoon}, Language::english);
    EXPECT_EQ(kit.size(), before + 1);
    const KitThing* found = find(kit, "hat, three-cornered");
    ASSERT_NE(found, nullptr);
    EXPECT_EQ(found->item.cost, "90\u00a0EUR");
    EXPECT_EQ(found->item.note, "from the hatter");
    EXPECT_EQ(found->stage, KitStage::later);
    EXPECT_EQ(kit.back().item.name, "horn spoon");
    EXPECT_EQ(kit.back().quantity, 3);
}

TEST(Kit, OtherOrdersOfDressAddOnlyWhatIsNew) {
    const Man full(kPrivate);
    const Man fatigue(kPrivate + "hat: forage-cap\n");
    std::vector<KitThing> kit = kit_of(full.uniform());
    const std::size_t before = kit.size();
    add_kit(kit, full.uniform(), fatigue.uniform(), "fatigue dress");
    ASSERT_EQ(kit.size(), before + 1);
    EXPECT_EQ(kit.back().item.name, "forage cap");
    EXPECT_EQ(kit.back().item.note, "for fatigue dress");
    EXPECT_EQ(kit.back().stage, KitStage::later);
}

TEST(Kit, WhatIsPutOnTheSameHatForAnotherOrderIsToBeGot) {
    const Man full(kPrivate + "hat: {plume: white}\n");
    const Man field(kPrivate + "hat: {tuft: white}\n");
    std::vector<KitThing> kit = kit_of(full.uniform());
    add_kit(kit, full.uniform(), field.uniform(), "field dress");
    const KitThing* tuft = find(kit, "hat tuft");
    ASSERT_NE(tuft, nullptr);
    EXPECT_EQ(tuft->item.note, "for field dress");
    EXPECT_EQ(find(kit, "plume"), nullptr);
}

TEST(Kit, EachStageIsInTheOrderOfDressing) {
    const Man full(kPrivate);
    const Man walking(kPrivate + "gaiters: none\nstockings: {cloth: white}\n");
    std::vector<KitThing> kit = kit_of(full.uniform());
    add_kit(kit, full.uniform(), walking.uniform(), "walking out");
    merge_kit(kit, {written("horn spoon")}, Language::english);
    for (KitThing& thing : kit) {
        thing.stage = KitStage::season;
    }
    const std::vector<HandoutStage> stages = stages_of(kit, Language::english);
    ASSERT_EQ(stages.size(), 1U);
    const std::vector<HandoutItem>& items = stages.front().items;
    const auto stockings = std::ranges::find(items, "stockings", &HandoutItem::name);
    const auto gaiters = std::ranges::find(items, "gaiters, long", &HandoutItem::name);
    ASSERT_NE(gaiters, items.end());
    EXPECT_LT(stockings, gaiters);
    EXPECT_EQ(items.back().name, "horn spoon");
}

TEST(Kit, StagesStandInOrderAndWithoutEmptyOnes) {
    const std::vector<HandoutStage> stages =
        stages_of(kit_of(Man(kPrivate).uniform()), Language::english);
    ASSERT_EQ(stages.size(), 4U);
    EXPECT_EQ(stages[0].title, "Before the first muster");
    EXPECT_EQ(stages[3].title, "To be borrowed until then");
    EXPECT_TRUE(stages_of({}, Language::english).empty());
}

std::vector<HandoutItem> priced(const std::vector<std::string>& costs) {
    std::vector<HandoutItem> items;
    for (const std::string& cost : costs) {
        HandoutItem item;
        item.cost = cost;
        items.push_back(item);
    }
    return items;
}

TEST(Total, AddsUpByCurrency) {
    EXPECT_EQ(total_of(priced({"8 EUR", "45.50 EUR"}), Language::english), "53.50\u00a0EUR");
    EXPECT_EQ(total_of(priced({"8,25 EUR", "1,25 EUR"}), Language::german), "9,50\u00a0EUR");
    EXPECT_EQ(total_of(priced({"8 EUR", "2 GBP"}), Language::english), "8\u00a0EUR + 2\u00a0GBP");
}

TEST(Total, SaysWhatIsNotCounted) {
    EXPECT_EQ(total_of(priced({"8 EUR", ""}), Language::english),
              "8\u00a0EUR, and 1 thing without a price");
    EXPECT_EQ(total_of(priced({"", "8 EUR", ""}), Language::french),
              "8\u00a0EUR, et 2 objets sans prix");
    std::vector<HandoutItem> lent = priced({"8 EUR", ""});
    lent.back().way = "borrow";
    EXPECT_EQ(total_of(lent, Language::english), "8\u00a0EUR");
    EXPECT_EQ(total_of(priced({"by arrangement", "1.000.000"}), Language::english), "");
    EXPECT_EQ(total_of({}, Language::english), "");
}

// A recruit sews the marks of rank and service on when he has earned them.
TEST(Kit, ACoatHasNoMarksThatAreNotYetEarned) {
    const FileResult plate =
        DiskReader().read(PLATEWRIGHT_SOURCE_DIR "/plates/tannbruck-lance-corporal.yaml", 100'000);
    const std::vector<KitThing> kit = kit_of(Man(plate.text).uniform());
    const KitThing* coat = find(kit, "coat");
    ASSERT_NE(coat, nullptr);
    EXPECT_NE(coat->item.details.find("buttons"), std::string::npos);
    EXPECT_EQ(coat->item.details.find("marks"), std::string::npos);
}

}  // namespace
}  // namespace platewright::cli
