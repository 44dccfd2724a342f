// SPDX-License-Identifier: MIT
// The kit list of a man: what his uniform asks for, and what his unit says of it.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "layout/handout.h"
#include "read/specified_sheets.h"
#include "resolve/uniform.h"

namespace platewright::cli {

/// A thing a man must have, with what may still be changed by his unit.
struct KitThing {
    HandoutItem item;
    KitStage stage = KitStage::first_muster;
    KitWay way = KitWay::buy;
    int quantity = 1;
    bool in_pairs = false;
    /// What a unit may call it besides its name: `hat` for a shako.
    std::string_view group;
    std::string_view called;
    /// Where it comes in the order of dressing; a unit's own things come last.
    std::size_t place = kLastPlace;

    static constexpr std::size_t kLastPlace = 1000;
};

/// All that a man wears and carries, in the order of dressing, with what it is made of. When it is
/// needed and how it is come by is common practice, no source.
std::vector<KitThing> kit_of(const Uniform& man);

/// Adds what another order of dress asks for besides `full` dress, trimmings of the same garments
/// too; `title`: of that order.
void add_kit(std::vector<KitThing>& to,
             const Uniform& full,
             const Uniform& man,
             const std::string& title);

/// What the unit says of its kit takes the place of what is usual; things of its own come last.
void merge_kit(std::vector<KitThing>& kit, const std::vector<KitItem>& written, Language language);

/// By stages, each in the order of dressing; a stage without things is left out.
std::vector<HandoutStage> stages_of(std::vector<KitThing> kit, Language language);

/// The costs together, by currency: "610 EUR"; says how many things besides have no price, borrowed
/// ones aside. Empty if none has.
std::string total_of(const std::vector<HandoutItem>& items, Language language);

}  // namespace platewright::cli
