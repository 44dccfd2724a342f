// SPDX-License-Identifier: MIT
// What has a number on a recruit's figures.
#pragma once

#include <vector>

#include "compose/figure.h"
#include "layout/handout.h"
#include "resolve/uniform.h"

namespace platewright::cli {

/// The parts that are seen on the figure, in the order of dressing, and last the musket.
std::vector<HandoutPart> parts_of(const Uniform& man,
                                  const Figure& figure,
                                  const Captions& captions);

/// What is seen from behind and not from before.
std::vector<HandoutPart> parts_behind(const Uniform& man,
                                      const Figure& back,
                                      const Captions& captions,
                                      const std::vector<HandoutPart>& before);

/// A footnote on what these sheets do not name has no mark: nobody would find its fellow.
void forget_marks_not_printed(Handout& in);

/// Nobody knows every hatching: the name of each stands beside its sample.
void name_hatching(Handout& in);

/// Samples are coloured.
void forget_hatching(Handout& in);

}  // namespace platewright::cli
