// SPDX-License-Identifier: MIT
// What of a man's dress is worth a closer look.
#pragma once

#include <string_view>
#include <vector>

#include "resolve/uniform.h"

namespace platewright {

/// Whether he wears it for his rank or his years: a recruit does not.
bool is_earned(const Uniform& man, PropertyId id);

/// Marks may sit on either half of the sleeve: the frame that shows those of a group, `usual` where
/// it is none of the two halves.
std::string_view frame_of_marks(const Uniform& man, std::string_view group, std::string_view usual);

/// The frames of the templates (`cuff`, `hat`) that show what matters of him, what matters most
/// first: where he departs from what is ordered; where he wears the marks of his rank and service;
/// what his class, regiment or company has of its own, or his plate says of him alone; and shapes
/// that are ordered and are not the usual ones. Of equals the frame with more of it comes first,
/// then in the order of dressing. What nobody has said anything about is not among them.
std::vector<std::string_view> frames_that_matter(const Uniform& man);

}  // namespace platewright
