// SPDX-License-Identifier: MIT
// What is looked at from near: views with some of their parts alone, and the shapes of windows.
#pragma once

#include <string_view>

#include "base/geometry.h"
#include "compose/template.h"
#include "resolve/uniform.h"

namespace platewright::cli {

/// Width to height of the narrowest picture.
constexpr double kNarrowest = 0.64;

/// Neither a strip nor a slot: a frame with paper or more of the man beside it.
Rect proportioned(const Rect& frame);

/// A garment laid flat without its sleeves: beside a pocket they would be slivers of another
/// colour.
Template without_sleeves(const Template& flat);

/// The wearer's left arm alone: a strip of the skirts beside it would tell nothing.
Template left_arm_of(const Template& figure);

/// The view for a picture of that frame: without the skirts and arms that would only be strips at
/// its edge, beside a cuff or the corner of a turnback.
Template seen_near(std::string_view frame, const Template& view);

/// The musket alone and whole, laid across a broad tile: beside the man it is as long as he is.
Template laid_across(const Template& figure);

/// Whether what is seen of it is on that arm alone.
bool is_on_left_arm(PropertyId id, const Rect& frame);

/// Whether what he wears on his head stands higher than a cocked hat.
bool is_tall(const Uniform& man);

/// What looks alike stands together: of hats first the low ones, then caps; then what is on a low
/// hat, and its cockade.
int order_of(PropertyId id, const Uniform& man, const Rect& frame);

}  // namespace platewright::cli
