// SPDX-License-Identifier: MIT
// The look of a sheet: inks, and sizes of type and space that all follow from two numbers.
#pragma once

#include <algorithm>
#include <string>

#include "base/colour.h"
#include "base/drawing.h"
#include "text/typesetter.h"

namespace platewright::sheet {

/// Warm laid paper, and the film of ink a copper plate leaves inside its edge.
inline constexpr Colour kPaper{0xf7, 0xf2, 0xe6};
inline constexpr Colour kPlateTone{0xf4, 0xee, 0xdf};
/// Printing ink, and the same thinned for what is read second. Both read on paper and plate tone
/// (contrast above 4.5).
inline constexpr Colour kInk{0x2a, 0x22, 0x1a};
inline constexpr Colour kSoftInk{0x5a, 0x4d, 0x3f};

/// The name of the press.
inline constexpr const char* kColophon = "Platewright";

/// 7 pt in mm: below this the small type of a page is hard to read.
inline constexpr double kSevenPoint = 7 * kInch / 72;

/// Where the baseline lies in a row of type, from its top, in ems.
inline constexpr double kBaseline = 0.86;

/// Sizes on one sheet, mm.
struct Style {
    /// 1 on A4: margins and furniture grow with the sheet.
    double unit = 1;
    /// Type of the key; all other type is a multiple.
    double body = 2.9;

    [[nodiscard]] double small() const {
        return std::max(body * 0.92, std::min(body, kSevenPoint));
    }

    [[nodiscard]] double leading() const { return body * 1.2; }

    [[nodiscard]] double small_leading() const { return small() * 1.19; }
};

/// Up to this size the face cut for small type is used, which is wider and sturdier.
inline constexpr double kSmallFaceUpTo = 3.4;

/// Upright type.
inline Type roman(double size) {
    return {size <= kSmallFaceUpTo ? Face::roman_small : Face::roman, size, 0};
}

/// Slanted type.
inline Type italic(double size) {
    return {size <= kSmallFaceUpTo ? Face::italic_small : Face::italic, size, 0};
}

/// The same with figures as high as capitals: for scales, measures and numbers that stand alone,
/// whose old-style 1 would be taken for a Roman one.
inline Type lining(Type type) {
    type.lining = true;
    return type;
}

/// Small capitals need air between the letters.
inline Type small_capitals(double size, double tracking = 0.07) {
    return {Face::small_caps, size, size * tracking};
}

/// Words of a drawing in that type; `degrees`: turned clockwise about `at`.
inline Text text_in(const Type& type,
                    const std::string& words,
                    Point at,
                    Colour colour,
                    Align align,
                    double degrees = 0) {
    return {words, at, type.face, type.size, type.tracking, colour, align, degrees, type.lining};
}

}  // namespace platewright::sheet
