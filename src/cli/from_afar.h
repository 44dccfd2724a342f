// SPDX-License-Identifier: MIT
// Whether two men can be told apart from afar by the colours of their dress.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "base/colour.h"
#include "compose/figure.h"
#include "resolve/uniform.h"
#include "words/message.h"

namespace platewright::cli {

/// How far away they stand, and the length that is seen there under one minute of arc, mm: the
/// detail that an eye of visual acuity 1 just makes out. Source: ISO 8596, clauses 3 and 4.
inline constexpr double kAfar = 50'000;
inline constexpr double kMinuteOfArc = 14.5;

/// An area counts from ten squares of that; colours nearer than this look alike from afar; both
/// common practice, no source.
inline constexpr double kLeastSeen = 10 * kMinuteOfArc * kMinuteOfArc;
inline constexpr double kLookAlike = 10;

/// What becomes of a colour in some eyes, and what these are called.
struct Eyes {
    const Message* called = nullptr;
    std::function<Colour(Colour)> see;
};

/// All eyes, eyes in the dark, and those that lack one kind of cones.
std::vector<Eyes> all_eyes();

/// A man, and what is seen of him from the front.
struct SeenMan {
    const Uniform& uniform;
    const Figure& front;
};

/// How different two men look: the largest CIEDE2000 among all areas large and broad enough, and
/// the property it is of, if there is any difference.
struct Apart {
    double difference = 0;
    std::optional<PropertyId> by;
    /// Whether only the first or only the second has it; it is then held against what lies under it
    /// on himself.
    bool only_first = false;
    bool only_second = false;
};

/// Judged by some eyes.
Apart from_afar(const SeenMan& first, const SeenMan& second, const Eyes& eyes);

}  // namespace platewright::cli
