// SPDX-License-Identifier: MIT
// What lies and grows on etched ground, and the strokes it is made of.
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

#include "base/geometry.h"
#include "layout/layer.h"

namespace platewright::sheet {

/// The ink of the ground, thinner than that of the men.
inline constexpr Colour kGraver{0x54, 0x46, 0x35};

/// Irregular but always the same numbers from 0 to 1 for the same name (the MINSTD generator).
class Irregular {
  public:
    explicit Irregular(std::string_view name) {
        for (const char letter : name) {
            state_ = (state_ * 31 + static_cast<unsigned char>(letter)) % 2147483646 + 1;
        }
        next();
    }

    double next() {
        state_ = state_ * 48271 % 2147483647;
        return static_cast<double>(state_) / 2147483647.0;
    }

    double between(double low, double high) { return low + (high - low) * next(); }

  private:
    std::uint64_t state_ = 1784;
};

/// A smooth closed line through all points.
Path through(const std::vector<Point>& p);

/// A stroke of the graver, hardly bowed: it swells where it is pressed, nearer its one end or the
/// other. So fine, it needs no curves.
void add_cut(Path& path, Point from, Point to, double thickness, double bow);

/// Grass, no clump like another: so many blades, so tall, parting so far, leaning with the wind;
/// green is the colourist's.
void put_grass(Point root, double mm, Irregular& irregular, Layer& on);

/// A stone half in the earth, with its shaded side and what it casts to the right.
void put_stone(Point at, double mm, Irregular& irregular, Layer& on);

}  // namespace platewright::sheet
