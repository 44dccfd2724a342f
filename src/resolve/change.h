// SPDX-License-Identifier: MIT
// What turns one man into another: a promotion, a transfer, another order of dress.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "resolve/uniform.h"

namespace platewright {

/// What has to be done.
enum class Deed {
    buy,        // a garment, or a thing to carry, that he does not have
    sew_on,     // onto what he has
    take_off,   // from what he has
    swap,       // one for another of its kind
    lay_aside,  // a garment or a thing
};

/// `buy`, `sew on` …, as headings.
std::string_view deed_name(Deed deed);

/// One thing of his dress that changes: the coat, the lapels, the rank marks, the plume.
struct Change {
    Deed deed = Deed::swap;
    /// `rank marks`.
    std::string_view thing;
    /// The property that shows whether it is there: `marks.cloth`.
    PropertyId head = 0;
    /// The properties of it that differ, in table order. For a thing that comes or goes, all that
    /// say something of it; where there only are more or fewer of the same, their number.
    std::vector<PropertyId> properties;
    /// What it is on (`coat`, `hat`, `musket`) is itself bought or laid aside: it comes or goes
    /// with that. Empty if not.
    std::string_view comes_with;
};

/// A thing that stays as it is; `on_new`: what it is on is bought, so that it has to be put on
/// that. Empty if not. `renewed`: what is sewn to it and does not stay: lapels on a coat, buttons
/// on a waistcoat.
struct Kept {
    std::string_view thing;
    std::string_view on_new;
    std::vector<std::string_view> renewed;
};

/// The difference between two men.
struct Comparison {
    /// By deed, then in the order of dressing.
    std::vector<Change> changes;
    /// Things that both wear and that stay as they are, in the order of dressing.
    std::vector<Kept> stays;
};

/// What `before` must do to be `after`. Captions and facts do not count, nor what is no work: his
/// skin, or the name of his facing colour.
Comparison compare(const Uniform& before, const Uniform& after);

/// A thing that passes from hand to hand as it is among some men: each party has two or more of
/// them, by their numbers, in order.
struct Shared {
    std::string_view thing;
    std::vector<std::vector<std::size_t>> parties;
};

/// What men could wear of each other's, in the order of dressing; what nobody shares is left out.
std::vector<Shared> shared_things(const std::vector<const Uniform*>& men);

/// How many of a thing a man carries in all: marks times sleeves, buttons of both lapels; 0 where
/// the table has no number for it.
int number_of(const Uniform& man, PropertyId head);

}  // namespace platewright
